//! Between answers, the judgement and the records. The only place where their types meet.

pub(crate) mod about;
pub(crate) mod advice;
pub(crate) mod advice_back;
pub(crate) mod body;
pub(crate) mod draft;
pub(crate) mod figures;
pub(crate) mod history;
pub(crate) mod mass;
pub(crate) mod moment;
pub(crate) mod often;
pub(crate) mod person;
pub(crate) mod plan;
pub(crate) mod practice;
pub(crate) mod task;
