//! The walk before a lift: start, answer, go back, check, advice.

pub(crate) mod answering;
pub(crate) mod cards;
pub(crate) mod figure;
pub(crate) mod judging;
pub(crate) mod own;
mod refuse;
pub(crate) mod standing;

use super::Nothing;
use crate::call::Call;
use crate::convert::draft::GO_ON;
use crate::failure::Failure;
use crate::walk::answer::Answer;
use crate::walk::flow::Step;
use crate::walk::ids::QuestionId;
use crate::walk::page::Page;
use crate::walk::question::Group;
use crate::walk::questions::{about, question};
use crate::walk::view;
use crate::walk::wire::WireAnswer;
use door::ErrorCode;
use record::DraftPurpose;
use serde::Deserialize;
use standing::Standing;
use vault::SavedTaskId;

/// The command `walk_start`.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct Start {
    #[serde(default)]
    saved: Option<i64>,
}

/// Opens a new draft in place of any other, for a saved task or from the first question.
///
/// # Errors
/// `not_found` for a saved task that is not there; what the vault gives.
pub(crate) fn start(call: &mut Call<'_>, asked: Start) -> Result<Page, Failure> {
    let saved = asked.saved.map(SavedTaskId);
    if let Some(id) = saved {
        let found = call.vault()?.saved_tasks().find(id)?;
        found.ok_or_else(|| Failure::at(ErrorCode::NotFound, "saved"))?;
    }
    let mut standing = Standing::begin(call, saved)?;
    if let Some(advice) = judging::judge_early(call, &standing)? {
        return judging::keep_advice(call, &mut standing, &advice);
    }
    standing.keep(call.vault()?)?;
    next_page(call, &standing)
}

/// The command `walk_page`.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct OpenPage {
    #[serde(default)]
    question: Option<String>,
}

/// Opens a page of the draft: an earlier question, `check`, or, without a name, where the draft stands.
///
/// # Errors
/// `no_draft`; `question_not_open` for a page that this walk does not have or not yet.
pub(crate) fn page(call: &mut Call<'_>, asked: OpenPage) -> Result<Page, Failure> {
    let mut standing = open(call)?;
    let not_open = || Failure::at(ErrorCode::QuestionNotOpen, "question");
    match asked.question.as_deref() {
        None => where_it_stands(call, &mut standing),
        Some(view::CHECK) => {
            if standing.walk().stands_at().is_some() {
                return Err(not_open());
            }
            standing.draft.open_question = None;
            standing.draft.advice = None;
            standing.keep(call.vault()?)?;
            next_page(call, &standing)
        }
        Some(id) => {
            let step = Step::from_id(id).ok_or_else(not_open)?;
            if !may_open(&standing, step) {
                return Err(not_open());
            }
            // Noted, so that an app that is killed here opens here again.
            standing.draft.open_question = Some(id.to_owned());
            standing.keep(call.vault()?)?;
            page_of(call, &standing, Some(step))
        }
    }
}

/// A page may be opened when it was answered, or when it is the next one.
fn may_open(standing: &Standing, step: Step) -> bool {
    let walk = standing.walk();
    let is_there = walk.steps().contains(&step);
    let was_answered = matches!(step, Step::Question(id) if walk.has(id));
    is_there && (was_answered || walk.stands_at() == Some(step))
}

/// The command `walk_answer`.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct GiveAnswer {
    question: String,
    answer: WireAnswer,
}

/// Takes one answer and gives the next page.
///
/// # Errors
/// `no_draft`, `question_not_open`, `answer_not_offered`, `out_of_range`, those of [`WireAnswer::read`],
/// and what the vault gives. The draft then stays as it was.
pub(crate) fn answer(call: &mut Call<'_>, asked: GiveAnswer) -> Result<Page, Failure> {
    let mut standing = open(call)?;
    let answer = asked.answer.read()?;
    let step = Step::from_id(&asked.question).filter(|step| may_open(&standing, *step));
    match step.ok_or_else(|| Failure::at(ErrorCode::QuestionNotOpen, "question"))? {
        Step::Interruption(interruption) => {
            if answer != Answer::choice(GO_ON) {
                return Err(Failure::at(ErrorCode::AnswerNotOffered, "answer"));
            }
            standing.given.confirm(interruption);
            standing.draft.open_question = None;
            standing.keep(call.vault()?)?;
            next_page(call, &standing)
        }
        Step::Question(id) => answer_question(call, standing, id, answer),
    }
}

fn answer_question(
    call: &mut Call<'_>,
    mut standing: Standing,
    id: QuestionId,
    answer: Answer,
) -> Result<Page, Failure> {
    let lists = [QuestionId::SignsFull, QuestionId::SignsFlare];
    if lists.contains(&id) && answer == Answer::NotSure {
        // Nobody is advised on a guess about a sign. The list stays open, so that it can still be answered.
        standing.draft.open_question = Some(id.id().to_owned());
        standing.keep(call.vault()?)?;
        return Ok(refuse::unsure_sign(call.reader()?, id));
    }
    if id == QuestionId::What && answer == Answer::choice("living") {
        call.vault()?.draft().clear()?;
        return Ok(refuse::living(call.reader()?));
    }
    answering::take(call, &mut standing, id, answer)?;
    let group = question(id).group;
    if standing.draft.purpose == DraftPurpose::About {
        return match standing.walk().stands_at() {
            Some(_) => next_page(call, &standing),
            None => finish_about(call, standing),
        };
    }
    if standing.draft.purpose == DraftPurpose::Own {
        return own::go_on(call, standing, group);
    }
    // Whatever the answer: with a sign open the walk ends here, never on the page to look answers over.
    let may_end_it = group != Group::About || about::is_decided(&standing.walk());
    if may_end_it && let Some(advice) = judging::judge_early(call, &standing)? {
        if group == Group::About {
            answering::keep_about_so_far(call, &mut standing, call.vault()?)?;
        }
        return judging::keep_advice(call, &mut standing, &advice);
    }
    next_page(call, &standing)
}

/// Drops the draft. Answers about the person and the body that were complete stay kept, and so do signs.
///
/// # Errors
/// What the vault gives.
pub(crate) fn drop_it(call: &mut Call<'_>, _: Nothing) -> Result<Nothing, Failure> {
    let Some(standing) = Standing::load(call)? else {
        return Ok(Nothing {});
    };
    match standing.draft.purpose {
        DraftPurpose::About => drop(finish_about(call, standing)?),
        DraftPurpose::Own => drop(own::finish(call, standing)?),
        DraftPurpose::Lift => call.vault()?.draft().clear()?,
    }
    Ok(Nothing {})
}

/// From the check page to the advice.
///
/// # Errors
/// `no_draft`; `question_not_open` while a question is unanswered; what the vault gives.
pub(crate) fn confirm(call: &mut Call<'_>, _: Nothing) -> Result<Page, Failure> {
    let mut standing = open(call)?;
    let is_answered = standing.walk().stands_at().is_none();
    if !is_answered || standing.draft.purpose != DraftPurpose::Lift {
        return Err(Failure::new(ErrorCode::QuestionNotOpen));
    }
    let advice = judging::judge(call, &standing)?;
    judging::keep_advice(call, &mut standing, &advice)
}

/// Asks the questions about the person again. A draft about a lift waits behind it.
///
/// # Errors
/// What the vault gives.
pub(crate) fn about_start(call: &mut Call<'_>, _: Nothing) -> Result<Page, Failure> {
    let mut standing = match Standing::load(call)? {
        Some(standing) => standing,
        None => Standing::begin(call, None)?,
    };
    answering::ask_about_again(&mut standing);
    standing.keep(call.vault()?)?;
    // Loaded again: for this purpose nothing about the person counts as kept.
    next_page(call, &open(call)?)
}

/// Ends the questions about the person; goes back to the lift that waits, if there is one.
fn finish_about(call: &Call<'_>, mut standing: Standing) -> Result<Page, Failure> {
    forget_groups(&mut standing, &[Group::About]);
    leave_to_the_lift(call, standing)?;
    Ok(Page::Done)
}

/// Forgets the answers of these groups.
fn forget_groups(standing: &mut Standing, groups: &[Group]) {
    for id in QuestionId::ALL
        .iter()
        .filter(|id| groups.contains(&question(**id).group))
    {
        standing.given.forget(*id);
    }
}

/// A draft about a lift that waited comes to the front again; without one, the draft ends.
fn leave_to_the_lift(call: &Call<'_>, mut standing: Standing) -> Result<(), Failure> {
    if standing.given.is_empty() && standing.draft.saved_task.is_none() {
        call.vault()?.draft().clear()?;
    } else {
        standing.draft.purpose = DraftPurpose::Lift;
        standing.draft.advice = None;
        standing.draft.open_question = None;
        standing.keep(call.vault()?)?;
    }
    Ok(())
}

/// The open draft.
///
/// # Errors
/// `no_draft`; what the vault gives.
pub(crate) fn open(call: &Call<'_>) -> Result<Standing, Failure> {
    Standing::load(call)?.ok_or_else(|| Failure::new(ErrorCode::NoDraft))
}

fn where_it_stands(call: &Call<'_>, standing: &mut Standing) -> Result<Page, Failure> {
    if standing.draft.advice.is_some() {
        // Judged again rather than read: the same answers give the same advice, with every figure.
        let early = judging::judge_early(call, standing)?;
        let advice = match early {
            Some(advice) => advice,
            None if standing.walk().stands_at().is_some() => {
                // A sign was cleared meanwhile: the advice that ended the walk no longer does.
                standing.draft.advice = None;
                standing.keep(call.vault()?)?;
                return next_page(call, standing);
            }
            None => judging::judge(call, standing)?,
        };
        return judging::keep_advice(call, standing, &advice);
    }
    let noted = standing
        .draft
        .open_question
        .as_deref()
        .and_then(Step::from_id);
    match noted.filter(|step| may_open(standing, *step)) {
        Some(step) => page_of(call, standing, Some(step)),
        None => next_page(call, standing),
    }
}

fn next_page(call: &Call<'_>, standing: &Standing) -> Result<Page, Failure> {
    page_of(call, standing, standing.walk().stands_at())
}

fn page_of(call: &Call<'_>, standing: &Standing, step: Option<Step>) -> Result<Page, Failure> {
    let remembered = &standing.remembered;
    Ok(view::page(
        &standing.walk(),
        step,
        remembered,
        call.reader()?,
    ))
}
