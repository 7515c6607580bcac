//! The worker's own body today, asked before somebody is moved. A draft about a lift waits behind it.

use super::judging;
use super::standing::Standing;
use super::{answering, forget_groups, leave_to_the_lift, next_page, open};
use crate::call::Call;
use crate::failure::Failure;
use crate::walk::answer::Answer;
use crate::walk::ids::QuestionId;
use crate::walk::page::Page;
use crate::walk::question::Group;
use crate::walk::questions::about;
use record::DraftPurpose;

/// Asks the questions about the body and the signs of today anew. `sign`: something is new or scary, so the
/// whole list of signs is asked at once.
///
/// # Errors
/// What the vault gives.
pub(crate) fn begin(call: &Call<'_>, sign: bool) -> Result<Page, Failure> {
    let mut standing = match Standing::load(call)? {
        Some(standing) => standing,
        None => Standing::begin(call, None)?,
    };
    forget_groups(&mut standing, &[Group::Body, Group::Signs]);
    standing.draft.purpose = DraftPurpose::Own;
    standing.draft.open_question = None;
    standing.draft.advice = None;
    standing.keep(call.vault()?)?;
    // Loaded again: for this purpose nothing about the body counts as kept.
    let mut standing = open(call)?;
    if sign && !standing.whole_list_due {
        standing
            .given
            .give(QuestionId::SignsToday, Answer::choice("yes"));
        standing.keep(call.vault()?)?;
    }
    match judging::judge_early(call, &standing)? {
        Some(_) => finish(call, standing),
        None => next_page(call, &standing),
    }
}

/// The next question; or, when an answer decides it or all are answered, back to the walk before a move.
///
/// # Errors
/// What the vault gives.
pub(super) fn go_on(
    call: &Call<'_>,
    mut standing: Standing,
    group: Group,
) -> Result<Page, Failure> {
    let may_end_it = group != Group::About || about::is_decided(&standing.walk());
    if may_end_it && judging::judge_early(call, &standing)?.is_some() {
        if group == Group::About {
            answering::keep_about_so_far(call, &mut standing, call.vault()?)?;
        }
        return finish(call, standing);
    }
    match standing.walk().stands_at() {
        Some(_) => next_page(call, &standing),
        None => finish(call, standing),
    }
}

/// Ends the questions about the worker. What was answered to the end is kept; the rest is forgotten.
///
/// # Errors
/// What writing the vault gives.
pub(super) fn finish(call: &Call<'_>, mut standing: Standing) -> Result<Page, Failure> {
    forget_groups(&mut standing, &[Group::About, Group::Body, Group::Signs]);
    leave_to_the_lift(call, standing)?;
    Ok(Page::Move)
}
