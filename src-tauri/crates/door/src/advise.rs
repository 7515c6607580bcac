//! The command `advise`: one person, one task, one day in; one advice out.

mod change;
mod history;
mod object;
mod person;
mod plan;
mod reply;
mod request;
mod transfer;
mod transfer_reply;

pub use change::{ChangeReply, StepReply, change_reply};
pub use reply::{
    AdviceReply, LoadsReply, NoTexts, ReasonReply, RuledOutReply, Texts, advice_reply,
    proposal_reply, reason_replies,
};
pub use transfer_reply::move_reply;

pub(crate) use object::ObjectWire;
pub(crate) use person::PersonWire;

use crate::error::DoorError;
use crate::fields::{PartFields, fields_of};
use crate::read::read;
use request::{AdviseWire, Asked};
use serde_json::{Map, Value};

/// The fields of the command and of its parts.
pub(crate) fn fields() -> Vec<PartFields> {
    let mut parts = vec![
        ("advise", fields_of::<AdviseWire>()),
        ("person", fields_of::<PersonWire>()),
        ("object", fields_of::<ObjectWire>()),
        ("history", fields_of::<history::HistoryWire>()),
        ("recent", fields_of::<history::RecentWire>()),
        ("transfer", fields_of::<transfer::TransferWire>()),
    ];
    parts.extend(plan::fields());
    parts
}

/// Answers the command.
///
/// # Errors
/// What [`read`] gives, and `out_of_range`, `missing_field`, `answer_needed`, `contradiction`,
/// and `too_long` (a note, a sign) with the field's path.
pub(crate) fn advise(
    body: Map<String, Value>,
    texts: &dyn Texts,
) -> Result<AdviceReply, DoorError> {
    Ok(match read::<AdviseWire>(body)?.checked()? {
        Asked::Lift(request) => advice_reply(&lifting::advise::advise(&request), texts),
        Asked::Transfer(request) => move_reply(&lifting::transfer::advise(&request), texts),
        Asked::Progress {
            person,
            plan,
            history,
        } => {
            let proposal = lifting::progress::propose(&person, plan.as_deref(), &history);
            proposal_reply(&person, &proposal, texts)
        }
    })
}

#[cfg(test)]
#[path = "advise_tests.rs"]
mod tests;
