//! The walk before a lift: questions, answers, order, pages.
//!
//! [`flow::Walk`] is the heart: a pure view of the answers so far that says which page comes next.
//! Questions are data, one file for each part in [`questions`]. [`view`] makes pages of both.

pub(crate) mod answer;
pub(crate) mod flow;
pub(crate) mod ids;
pub(crate) mod interruptions;
pub(crate) mod measure;
pub(crate) mod page;
pub(crate) mod question;
pub(crate) mod questions;
pub(crate) mod text;
pub(crate) mod view;
pub(crate) mod wire;
