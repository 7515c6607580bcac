//! The walk before a move: start, answer, go back, the answer, and the text for the office.

use super::standing::MoveStanding;
use super::worker::{self, Today};
use crate::call::Call;
use crate::convert::moment;
use crate::failure::Failure;
use crate::moving::ids::MoveQuestion as Q;
use crate::moving::page::{
    MoveAdvicePage, MovePage, OwnPage, TRAINED, question_page, trained_page,
};
use crate::moving::{card, facts, office, options, request, text};
use crate::use_cases::Nothing;
use crate::walk::answer::Answer;
use crate::walk::wire::WireAnswer;
use door::ErrorCode;
use lifting::transfer::advice::{MoveAdvice, MoveOutcome};
use lifting::transfer::client::Move;
use lifting::transfer::{TransferRequest, advise};
use record::Worker;
use serde::{Deserialize, Serialize};
use std::collections::BTreeSet;
use vault::CarePersonId;

/// The command `move_start`.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct StartMove {
    person: i64,
    #[serde(rename = "move")]
    what: String,
}

/// Opens a new walk in place of any other.
///
/// # Errors
/// `not_found` for the person; `not_a_choice` for the move; what the vault gives.
pub(crate) fn move_start(call: &mut Call<'_>, asked: StartMove) -> Result<MovePage, Failure> {
    let what =
        Move::from_id(&asked.what).ok_or_else(|| Failure::at(ErrorCode::NotAChoice, "move"))?;
    let mut standing = MoveStanding::begin(call, CarePersonId(asked.person), what)?;
    standing.keep(call.vault()?)?;
    next_page(call, &mut standing)
}

/// The command `move_page`.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct OpenMovePage {
    #[serde(default)]
    question: Option<String>,
}

/// Opens a page of the walk: an earlier question, `harder`, or, without a name, where it stands.
///
/// # Errors
/// `no_draft`; `question_not_open`; what the vault gives.
pub(crate) fn move_page(call: &mut Call<'_>, asked: OpenMovePage) -> Result<MovePage, Failure> {
    let mut standing = MoveStanding::open(call)?;
    match asked.question.as_deref() {
        None => next_page(call, &mut standing),
        Some(TRAINED) => Ok(MovePage::Question(Box::new(trained_page(
            call.reader()?,
            standing.who(),
            &standing.walk(),
        )))),
        Some(id) => {
            let question = Q::from_id(id).filter(|one| may_open(&standing, *one));
            let question =
                question.ok_or_else(|| Failure::at(ErrorCode::QuestionNotOpen, "question"))?;
            page_of(call, &standing, question)
        }
    }
}

/// The command `move_answer`.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct GiveMoveAnswer {
    question: String,
    answer: WireAnswer,
}

/// Takes one answer and gives the next page.
///
/// # Errors
/// `no_draft`, `question_not_open`, `answer_not_offered`, those of [`WireAnswer::read`], and what the vault
/// gives. The walk then stays as it was.
pub(crate) fn move_answer(call: &mut Call<'_>, asked: GiveMoveAnswer) -> Result<MovePage, Failure> {
    let mut standing = MoveStanding::open(call)?;
    let answer = asked.answer.read()?;
    if asked.question == TRAINED {
        take_training(call, &mut standing, answer)?;
        return next_page(call, &mut standing);
    }
    let question = Q::from_id(&asked.question).filter(|one| may_open(&standing, *one));
    let question = question.ok_or_else(|| Failure::at(ErrorCode::QuestionNotOpen, "question"))?;
    let planned = standing.plan().is_some();
    let answer = options::accept(question, standing.what, planned, answer)?;
    standing.given.insert(question, answer);
    forget_what_hangs_on(&mut standing, question);
    standing.keep(call.vault()?)?;
    next_page(call, &mut standing)
}

/// A changed answer takes those back that no longer belong to the walk.
fn forget_what_hangs_on(standing: &mut MoveStanding, changed: Q) {
    if changed == Q::Same {
        let facts = |question: &Q| *question > Q::Same && *question != Q::Harder;
        standing.given.retain(|question, _| !facts(question));
    }
    if changed == Q::New {
        standing.given.remove(&Q::Signs);
    }
}

fn take_training(
    call: &Call<'_>,
    standing: &mut MoveStanding,
    answer: Answer,
) -> Result<(), Failure> {
    let Answer::Choices(ids) = answer else {
        return Err(Failure::at(ErrorCode::AnswerNotOffered, "answer"));
    };
    super::trained::keep(call, ids.iter().cloned().collect(), "answer")?;
    standing.trained = Some(ids);
    Ok(())
}

/// A question may be opened when it was answered, when it is the next one, or when it makes an answer stricter.
fn may_open(standing: &MoveStanding, question: Q) -> bool {
    let walk = standing.walk();
    walk.own().contains(&question) || (question == Q::Harder && walk.stands_at().is_none())
}

/// Gives the walk up. What was noted of the person stays.
///
/// # Errors
/// What the vault gives.
pub(crate) fn move_drop(call: &mut Call<'_>, _: Nothing) -> Result<Nothing, Failure> {
    call.vault()?.move_draft().clear()?;
    Ok(Nothing {})
}

fn page_of(call: &Call<'_>, standing: &MoveStanding, question: Q) -> Result<MovePage, Failure> {
    let none = BTreeSet::new();
    Ok(MovePage::Question(Box::new(question_page(
        call.reader()?,
        standing.who(),
        &standing.walk(),
        question,
        call.now.date_naive(),
        standing.trained.as_ref().unwrap_or(&none),
    ))))
}

/// Where the walk stands: a question, the worker first, or the answer.
fn next_page(call: &Call<'_>, standing: &mut MoveStanding) -> Result<MovePage, Failure> {
    let today = worker::today(call)?;
    let (request, advice) = judge(standing, &today);
    // A sign of the worker, or a worker who cannot be advised: nothing else is asked.
    let own_end = is_own_end(standing, &advice);
    if !own_end {
        if standing.walk().chose(Q::New, "in_me") {
            return own_page(call, standing, &today, true);
        }
        let next = standing.walk().stands_at();
        if standing.trained.is_none() && needs_training(standing, next) {
            let page = trained_page(call.reader()?, standing.who(), &standing.walk());
            return Ok(MovePage::Question(Box::new(page)));
        }
        if let Some(question) = next {
            return page_of(call, standing, question);
        }
        if !standing.walk().is_ended() && !today.is_asked {
            return own_page(call, standing, &today, false);
        }
    }
    note(call, standing)?;
    let reader = call.reader()?;
    Ok(MovePage::Advice(Box::new(MoveAdvicePage {
        person: standing.who(),
        what: standing.what.id(),
        move_text: text::move_name(reader, standing.what.id()),
        planned: standing.plan().is_some(),
        card: card::card(reader, &request, &advice),
        back: standing.walk().before(None).map(Q::id),
    })))
}

/// Whether it has to be known what the worker is trained on: equipment is asked for next, or is there by the
/// care plan or by a note.
fn needs_training(standing: &MoveStanding, next: Option<Q>) -> bool {
    let there = request::there(&standing.walk());
    let counts = there.iter().any(|piece| options::TRAINING.contains(piece));
    next == Some(Q::Here) || (next.is_none() && counts && !standing.walk().is_ended())
}

/// Whether the worker, and not the person, ends it.
fn is_own_end(standing: &MoveStanding, advice: &MoveAdvice) -> bool {
    match &advice.outcome {
        MoveOutcome::Refuse => true,
        MoveOutcome::SeekCare { .. } => !standing.walk().is_ended(),
        _ => false,
    }
}

/// What was answered about the person is noted for the next time, once all of it is there.
fn note(call: &Call<'_>, standing: &mut MoveStanding) -> Result<(), Failure> {
    if standing.walk().is_ended() || standing.walk().stands_at().is_some() {
        return Ok(());
    }
    let mut person = standing.person.clone();
    facts::note(&mut person, &standing.walk(), moment::to_record(call.now));
    if person != standing.person {
        call.vault()?.care_people().save(standing.id, &person)?;
    }
    Ok(())
}

fn own_page(
    call: &Call<'_>,
    standing: &MoveStanding,
    today: &Today,
    sign: bool,
) -> Result<MovePage, Failure> {
    let reader = call.reader()?;
    let words = reader.words;
    let lines = if sign {
        vec![words.text("care-own-sign-text")]
    } else {
        vec![words.text("care-own-text"), words.text("care-own-private")]
    };
    let walk = standing.walk();
    Ok(MovePage::Own(OwnPage {
        person: standing.who(),
        move_text: text::move_name(reader, standing.what.id()),
        title: words.text(if sign { "care-own-sign" } else { "care-own" }),
        text: lines,
        quick: (today.may_be_quick && !sign).then(|| words.text("care-own-quick")),
        sign,
        back: if sign {
            Some(Q::New.id())
        } else {
            walk.before(None).map(Q::id)
        },
    }))
}

/// The judgement on a walk.
pub(crate) fn judge(standing: &MoveStanding, today: &Today) -> (TransferRequest, MoveAdvice) {
    let none = BTreeSet::new();
    let trained = standing.trained.as_ref().unwrap_or(&none);
    let request = TransferRequest {
        worker: today.person.clone(),
        plan: today.plan.clone(),
        moving: request::transfer(&standing.walk(), trained, today.date),
    };
    let advice = advise(&request);
    (request, advice)
}

/// The reply of `move_report`.
#[derive(Debug, Serialize)]
pub(crate) struct Report {
    person: crate::moving::people::Who,
    move_text: String,
    title: String,
    lines: Vec<String>,
    text: String,
    /// Whether the move was not offered: the entry of the log is then a refusal.
    refused: bool,
}

/// The command `move_refuse`.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct Refuse {
    why: String,
}

/// In one tap from the answer to the text for the office: the person is not as the care plan says, or what the
/// answer needs is not there today.
///
/// # Errors
/// `no_draft`; `not_a_choice`; `question_not_open` for `differs` without a care plan; what the vault gives.
pub(crate) fn move_refuse(call: &mut Call<'_>, asked: Refuse) -> Result<Report, Failure> {
    let mut standing = MoveStanding::open(call)?;
    let (same, question) = match asked.why.as_str() {
        "differs" => ("differs", Q::Differs),
        "missing" => ("missing", Q::Here),
        _ => return Err(Failure::at(ErrorCode::NotAChoice, "why")),
    };
    if question == Q::Differs && standing.plan().is_none() {
        return Err(Failure::new(ErrorCode::QuestionNotOpen));
    }
    standing.given.insert(Q::Same, Answer::choice(same));
    standing.given.insert(question, Answer::choices([]));
    standing.keep(call.vault()?)?;
    move_report(call, Nothing {})
}

/// The text for the office about the walk at hand: facts, to be looked over before it leaves.
///
/// # Errors
/// `no_draft`; what the vault gives.
pub(crate) fn move_report(call: &mut Call<'_>, _: Nothing) -> Result<Report, Failure> {
    let standing = MoveStanding::open(call)?;
    let (_, advice) = judge(&standing, &worker::today(call)?);
    let lines = report_lines(call, &standing)?;
    let reader = call.reader()?;
    Ok(Report {
        person: standing.who(),
        move_text: text::move_name(reader, standing.what.id()),
        title: reader.words.text("care-office-title"),
        refused: !matches!(advice.outcome, MoveOutcome::GoAhead { .. }),
        text: lines.join("\n"),
        lines,
    })
}

/// The lines of the text.
///
/// # Errors
/// What the vault gives.
pub(crate) fn report_lines(
    call: &Call<'_>,
    standing: &MoveStanding,
) -> Result<Vec<String>, Failure> {
    let (_, advice) = judge(standing, &worker::today(call)?);
    let none = BTreeSet::new();
    let about = office::About {
        code: &standing.person.code,
        walk: &standing.walk(),
        advice: &advice,
        trained: standing.trained.as_ref().unwrap_or(&none),
        now: call.now,
    };
    Ok(office::lines(call.reader()?, &about))
}

/// The worker's record with this training.
#[must_use]
pub(crate) fn worker_of(trained: Vec<String>) -> Worker {
    Worker {
        trained: Some(trained),
    }
}
