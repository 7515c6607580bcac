//! Taking one answer: what it changes in the draft, and what is kept beyond it.

use super::standing::Standing;
use crate::call::Call;
use crate::convert::{about, body, moment};
use crate::failure::Failure;
use crate::walk::answer::{Answer, Answers};
use crate::walk::ids::QuestionId;
use crate::walk::question::Group;
use crate::walk::questions::question;
use record::{DraftPurpose, OpenSign};
use vault::{Vault, VaultError};

/// Takes an answer into the draft and keeps everything that follows from it, all or nothing.
///
/// # Errors
/// `answer_not_offered` or `out_of_range`; what writing the vault gives.
pub(crate) fn take(
    call: &Call<'_>,
    standing: &mut Standing,
    id: QuestionId,
    answer: Answer,
) -> Result<(), Failure> {
    let answer = question(id).accept(answer)?;
    standing.given.give(id, answer);
    standing.draft.advice = None;
    standing.draft.open_question = None;
    let vault = call.vault()?;
    vault.together(|vault| {
        match question(id).group {
            Group::Signs => {
                raise_signs(call, standing, id, vault)?;
                keep_body(call, standing, vault)?;
            }
            Group::Body => {
                // With the body told anew, the short list of signs that went with it is asked anew.
                standing.kept.forget(QuestionId::SignsFlare);
                keep_body(call, standing, vault)?;
            }
            Group::About => keep_about(call, standing, vault)?,
            Group::Task => {}
        }
        standing.keep(vault)
    })?;
    Ok(())
}

/// A ticked sign is open from now on, whatever becomes of the draft.
fn raise_signs(
    call: &Call<'_>,
    standing: &mut Standing,
    id: QuestionId,
    vault: &Vault,
) -> Result<(), VaultError> {
    let now = moment::to_record(call.now);
    if let Some(Answer::Choices(ticked)) = standing.given.of(id) {
        for sign in ticked {
            vault.signs().raise(&OpenSign {
                sign: sign.clone(),
                raised_at: now,
                cleared: None,
            })?;
        }
        if id == QuestionId::SignsFull {
            standing.about.signs_asked_at = Some(now);
            vault.about().save(&standing.about)?;
        }
    }
    Ok(())
}

/// The body is kept as soon as all of it was answered. With one answer changed, the rest is as old as before.
fn keep_body(call: &Call<'_>, standing: &Standing, vault: &Vault) -> Result<(), VaultError> {
    let walk = standing.walk();
    if !walk.is_complete(Group::Body) {
        return Ok(());
    }
    let before = standing.body.as_ref();
    let at = before.map_or(moment::to_record(call.now), |body| body.at);
    let lists = [QuestionId::SignsFull, QuestionId::SignsFlare];
    let signs = signs_in(&lists, &standing.given).or_else(|| match is_told_now(standing) {
        true => None,
        false => before.and_then(|body| body.signs.clone()),
    });
    vault.body_today().save(&body::to_record(&walk, at, signs))
}

/// Whether anything about the body was told in this walk.
pub(crate) fn is_told_now(standing: &Standing) -> bool {
    let mut given = standing.given.iter();
    given.any(|(id, _)| question(id).group == Group::Body)
}

/// Signs ticked in this walk; `None` when they were not asked.
#[must_use]
pub(crate) fn signs_said(given: &Answers) -> Option<Vec<String>> {
    let asked = [
        QuestionId::SignsToday,
        QuestionId::SignsFull,
        QuestionId::SignsFlare,
    ];
    signs_in(&asked, given)
}

fn signs_in(lists: &[QuestionId], given: &Answers) -> Option<Vec<String>> {
    if !lists.iter().any(|id| given.has(*id)) {
        return None;
    }
    let ticked = lists.iter().filter_map(|id| match given.of(*id) {
        Some(Answer::Choices(ticked)) => Some(ticked.iter().cloned()),
        _ => None,
    });
    Some(ticked.flatten().collect())
}

/// The person is kept as soon as all of it was answered.
fn keep_about(call: &Call<'_>, standing: &mut Standing, vault: &Vault) -> Result<(), VaultError> {
    if !standing.walk().is_complete(Group::About) {
        return Ok(());
    }
    keep_about_so_far(call, standing, vault)
}

/// Keeps the person by what was answered; the rest counts as passed over. For who cannot be advised here:
/// they are not asked the rest, and not the same again at the next lift.
///
/// # Errors
/// What writing the vault gives.
pub(crate) fn keep_about_so_far(
    call: &Call<'_>,
    standing: &mut Standing,
    vault: &Vault,
) -> Result<(), VaultError> {
    let walk = standing.walk();
    let now = moment::to_record(call.now);
    standing.about = about::to_record(&walk, &standing.about, now);
    vault.about().save(&standing.about)
}

/// Forgets the answers about the person, so that they are asked again.
pub(crate) fn ask_about_again(standing: &mut Standing) {
    for id in QuestionId::ALL
        .iter()
        .filter(|id| question(**id).group == Group::About)
    {
        standing.given.forget(*id);
    }
    standing.draft.purpose = DraftPurpose::About;
    standing.draft.open_question = None;
}
