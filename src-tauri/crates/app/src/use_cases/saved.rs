//! Tasks that come again, under a name.

use super::Nothing;
use super::history::answers_of;
use super::keep::Kept;
use super::walk::open;
use crate::call::Call;
use crate::convert::{draft, task};
use crate::failure::Failure;
use crate::walk::answer::Answers;
use crate::walk::flow::{Purpose, Walk};
use crate::walk::question::Group;
use crate::walk::questions::question;
use door::ErrorCode;
use record::SavedTask;
use serde::{Deserialize, Serialize};
use vault::{LiftId, SavedTaskId};

/// Most characters of a name. House rule.
const LONGEST_NAME: usize = 40;
/// Most saved tasks. House rule: more would be a list to search, not a tap.
const MOST_SAVED: usize = 50;

/// The command `saved_keep`.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct KeepTask {
    name: String,
    from: From,
}

/// Where the task comes from.
#[derive(Debug, Deserialize, Serialize)]
#[serde(untagged)]
pub(crate) enum From {
    /// An entry of the history.
    Lift(i64),
    /// The word `draft`.
    Word(String),
}

/// Keeps the task of the draft or of an entry under a name.
///
/// # Errors
/// `missing_field` for an empty name, `too_long`, `not_a_choice` for another word than `draft`, `no_draft`,
/// `answer_needed` when the task was not described to the end, `not_found`; `out_of_range` when there are too
/// many; what the vault gives.
pub(crate) fn saved_keep(call: &mut Call<'_>, asked: KeepTask) -> Result<Kept, Failure> {
    let name = asked.name.split_whitespace().collect::<Vec<_>>().join(" ");
    if name.is_empty() {
        return Err(Failure::at(ErrorCode::MissingField, "name"));
    }
    if name.chars().count() > LONGEST_NAME {
        return Err(Failure::at(ErrorCode::TooLong, "name"));
    }
    let vault = call.vault()?;
    if vault.saved_tasks().all()?.len() >= MOST_SAVED {
        return Err(Failure::at(ErrorCode::OutOfRange, "name"));
    }
    let answers = match asked.from {
        From::Word(word) if word == "draft" => {
            let standing = open(call)?;
            let mut answers = standing.kept.clone();
            answers.take_over(&standing.given);
            answers
        }
        From::Word(_) => return Err(Failure::at(ErrorCode::NotAChoice, "from")),
        From::Lift(id) => {
            let lift = vault.lifts().find(LiftId(id))?;
            let lift = lift.ok_or_else(|| Failure::at(ErrorCode::NotFound, "from"))?;
            answers_of(&lift, call.reader()?.units)
        }
    };
    let answers: Answers = answers
        .iter()
        .filter(|(id, _)| question(*id).group == Group::Task)
        .map(|(id, answer)| (id, answer.clone()))
        .collect();
    let kept = Answers::default();
    let walk = Walk {
        purpose: Purpose::Lift,
        given: &answers,
        kept: &kept,
        whole_list_due: false,
        times_a_bout: None,
    };
    if !walk.is_complete(Group::Task) {
        return Err(Failure::at(ErrorCode::AnswerNeeded, "from"));
    }
    let task = SavedTask {
        name,
        task: task::to_record(&walk),
        answers: draft::to_record(&answers),
    };
    Ok(Kept {
        id: vault.saved_tasks().add(&task)?.0,
    })
}

/// The command `saved_drop`.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct DropTask {
    id: i64,
}

/// Removes a saved task. What was lifted under it stays in the history.
///
/// # Errors
/// `not_found`; what the vault gives.
pub(crate) fn saved_drop(call: &mut Call<'_>, asked: DropTask) -> Result<Nothing, Failure> {
    if call.vault()?.saved_tasks().remove(SavedTaskId(asked.id))? {
        Ok(Nothing {})
    } else {
        Err(Failure::at(ErrorCode::NotFound, "id"))
    }
}
