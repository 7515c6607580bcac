//! The question about a parcel that came in: recognising is one step, acting another.

use super::opening::{Order, TypedCode, crossing, with_code};
use super::summary::history_lines;
use crate::call::Call;
use crate::convert::moment::from_record;
use crate::convert::plan::days_over;
use crate::exchange::{Carried, Inbox, Parcel};
use crate::failure::Failure;
use crate::use_cases::Nothing;
use crate::use_cases::plan::following::{LineView, from_text, views};
use crate::use_cases::plan::lines::{lines, review, title};
use crate::walk::text::Reader;
use crate::words::Arg;
use chrono::DateTime;
use door::ErrorCode;
use record::{Followed, History, Moment, Plan};
use serde::Serialize;

/// The question, ready to be shown.
#[derive(Debug, Serialize)]
pub(crate) struct Question {
    pub(super) purpose: &'static str,
    pub(super) title: String,
    pub(super) text: String,
    pub(super) facts: Vec<LineView>,
    pub(super) warnings: Vec<String>,
    pub(super) yes: String,
    pub(super) no: String,
}

/// Opens a parcel with its code, and asks about it.
///
/// # Errors
/// See [`with_code`].
pub(crate) fn parcel_code(call: &mut Call<'_>, typed: TypedCode) -> Result<Question, Failure> {
    with_code(call, &typed)?;
    ask(call)
}

/// Asks about the parcel that waits.
///
/// # Errors
/// `no_parcel`; what the vault gives.
pub(crate) fn parcel_question(call: &mut Call<'_>, _: Nothing) -> Result<Question, Failure> {
    ask(call)
}

fn ask(call: &mut Call<'_>) -> Result<Question, Failure> {
    let (_, exchange) = call.exchange()?;
    // Taken out while it is looked at, since words and vault are looked into as well.
    let inbox = exchange.inbox.take();
    let question = match &inbox {
        Some(Inbox::Open(parcel)) => of(call, parcel),
        _ => Err(Failure::new(ErrorCode::NoParcel)),
    };
    let (_, exchange) = call.exchange()?;
    exchange.inbox = inbox;
    question
}

fn of(call: &Call<'_>, parcel: &Parcel) -> Result<Question, Failure> {
    match &parcel.carried {
        Carried::Plan(plan) => about_plan(call, parcel, plan),
        Carried::History(history) => about_history(call, parcel, history),
        Carried::Care(plan) => super::question_care::about_care(call, parcel, plan),
    }
}

fn about_plan(call: &Call<'_>, parcel: &Parcel, plan: &Plan) -> Result<Question, Failure> {
    let reader = call.reader()?;
    let words = reader.words;
    let now = call.vault()?.followed().active()?;
    let had = call.vault()?.followed().newest_of(plan.id)?;
    let args = [
        ("from", Arg::text(parcel.proof.name().unwrap_or(&plan.by))),
        ("whom", Arg::text(plan.whom.as_str())),
        ("version", plan.version.into()),
    ];
    let mut text = words.format("handoff-question-plan", &args);
    if let Some(newer) = newer_text(had.as_ref(), plan, reader) {
        text.push(' ');
        text.push_str(&newer);
    }
    let made = words.date_text(from_record(plan.made_at).date_naive());
    let mut facts = vec![
        fact(reader, "handoff-fact-title", title(plan, reader)),
        fact(reader, "handoff-fact-made", made),
        fact(reader, "handoff-fact-review", review(plan, reader)),
    ];
    facts.extend(views(lines(plan, reader)));
    let mut warnings = unverified(parcel, reader);
    warnings.extend(plan_warnings(
        call,
        plan,
        now.as_ref(),
        had.as_ref(),
        reader,
    )?);
    Ok(Question {
        purpose: "plan",
        title: words.text("handoff-question-plan-title"),
        text,
        facts,
        warnings,
        yes: words.text("handoff-question-plan-yes"),
        no: words.text("handoff-question-no"),
    })
}

/// How much newer it is than the version that was taken up last.
fn newer_text(had: Option<&Followed>, plan: &Plan, reader: Reader<'_>) -> Option<String> {
    newer(had?.plan.made_at, plan.made_at, reader)
}

/// How much newer one moment is than another, in words; `None` when it is not.
pub(super) fn newer(had: Moment, made_at: Moment, reader: Reader<'_>) -> Option<String> {
    let age = from_record(made_at).signed_duration_since(from_record(had));
    let days = u32::try_from(age.num_days()).ok()?;
    Some(match days {
        0 => reader.words.text("handoff-question-newer-today"),
        days => reader
            .words
            .format("handoff-question-newer", &[("days", days.into())]),
    })
}

fn plan_warnings(
    call: &Call<'_>,
    plan: &Plan,
    now: Option<&Followed>,
    had: Option<&Followed>,
    reader: Reader<'_>,
) -> Result<Vec<String>, Failure> {
    let words = reader.words;
    let mut warnings = Vec::new();
    if let Some(other) = now.filter(|now| now.plan.id != plan.id) {
        let from = Arg::text(from_text(other, reader));
        let title = Arg::text(title(&other.plan, reader));
        warnings.push(words.format(
            "handoff-warning-takes-place",
            &[("title", title), ("from", from)],
        ));
    }
    let device = call.vault()?.device().load()?;
    if let Some(mine) = device.and_then(|device| device.alias)
        && mine.to_lowercase() != plan.whom.to_lowercase()
    {
        let args = [
            ("whom", Arg::text(plan.whom.as_str())),
            ("mine", Arg::text(mine)),
        ];
        warnings.push(words.format("handoff-warning-other-name", &args));
    }
    if had.is_some_and(|had| crossing(had, plan) == Order::Crossed) {
        warnings.push(words.text("handoff-warning-crossed"));
    }
    if days_over(plan.review_on, call.now) > 0 {
        warnings.push(words.text("handoff-warning-overdue"));
    }
    Ok(warnings)
}

fn about_history(call: &Call<'_>, parcel: &Parcel, history: &History) -> Result<Question, Failure> {
    let reader = call.reader()?;
    let words = reader.words;
    let from = parcel.proof.name().unwrap_or(&history.from);
    let issued = DateTime::from_timestamp_millis(parcel.issued_at_ms).unwrap_or_default();
    let issued = issued.with_timezone(call.now.offset());
    let made = words.date_text(issued.date_naive());
    let mut facts = vec![fact(reader, "handoff-fact-made", made)];
    let leaves = history_lines(history, reader).join(" ");
    facts.push(fact(reader, "handoff-fact-holds", leaves));
    Ok(Question {
        purpose: "history",
        title: words.text("handoff-question-history-title"),
        text: words.format("handoff-question-history", &[("from", Arg::text(from))]),
        facts,
        warnings: unverified(parcel, reader),
        yes: words.text("handoff-question-history-yes"),
        no: words.text("handoff-question-no"),
    })
}

pub(super) fn unverified(parcel: &Parcel, reader: Reader<'_>) -> Vec<String> {
    match parcel.proof.name() {
        Some(_) => Vec::new(),
        None => vec![reader.words.text("handoff-warning-unverified")],
    }
}

pub(super) fn fact(reader: Reader<'_>, label: &str, text: String) -> LineView {
    LineView {
        label: reader.words.text(label),
        text,
    }
}
