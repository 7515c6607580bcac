//! The walk before somebody is moved: questions, their order, pages, the card, and the text for the office.
//!
//! What a care plan says, and what is known of the person, is confirmed with one tap and not asked again.

pub(crate) mod card;
pub(crate) mod facts;
pub(crate) mod flow;
pub(crate) mod ids;
pub(crate) mod office;
pub(crate) mod options;
mod own_load;
pub(crate) mod page;
pub(crate) mod people;
pub(crate) mod plan_age;
pub(crate) mod request;
pub(crate) mod text;
