//! The question about care plans that came in.

use super::question::{Question, fact, newer, unverified};
use crate::call::Call;
use crate::convert::moment;
use crate::exchange::Parcel;
use crate::failure::Failure;
use crate::moving::plan_age::is_old;
use crate::moving::text::{move_name, plan_line};
use crate::use_cases::care::sending::as_kept;
use crate::use_cases::care::taking::{self, Taking};
use crate::use_cases::plan::following::LineView;
use crate::walk::text::Reader;
use crate::words::{Arg, message_id};
use door::ErrorCode;
use lifting::transfer::client::Move;
use lifting::transfer::moves::by_exception;
use lifting::transfer::way::PeopleWay;
use record::PersonPlan;

/// Asks about care plans of one person.
///
/// # Errors
/// `no_parcel` when they are not taken any more; what the vault gives.
pub(super) fn about_care(
    call: &Call<'_>,
    parcel: &Parcel,
    plan: &PersonPlan,
) -> Result<Question, Failure> {
    let reader = call.reader()?;
    let words = reader.words;
    let at = moment::to_record(call.now);
    let taken = taking::weigh(call.vault()?, plan, parcel.proof.name(), at)?;
    let taken = taken.map_err(|says| Failure::new(ErrorCode::NoParcel).saying(says))?;
    let args = [
        ("from", Arg::text(parcel.proof.name().unwrap_or(&plan.by))),
        ("code", Arg::text(plan.code.as_str())),
        ("version", plan.version.into()),
    ];
    let mut text = words.format("handoff-question-care", &args);
    let had = taken.had.as_ref();
    if let Some(newer) = had.and_then(|had| newer(had.made_at, plan.made_at, reader)) {
        text.push(' ');
        text.push_str(&newer);
    }
    let made = words.date_text(moment::from_record(plan.made_at).date_naive());
    let known = match taken.id {
        Some(_) => words.format(
            "handoff-care-known",
            &[("code", Arg::text(taken.person.code.as_str()))],
        ),
        None => words.text("handoff-care-new"),
    };
    let mut facts = vec![
        fact(reader, "handoff-fact-person", known),
        fact(reader, "handoff-fact-made", made),
    ];
    facts.extend(moves(call, plan, reader));
    if let Some(allowed) = exceptions(plan, reader) {
        facts.push(fact(reader, "handoff-fact-allows", allowed));
    }
    let mut warnings = unverified(parcel, reader);
    warnings.extend(of_taking(call, plan, &taken, parcel.proof.name(), reader));
    Ok(Question {
        purpose: "care_plan",
        title: words.text("handoff-question-care-title"),
        text,
        facts,
        warnings,
        yes: words.text("handoff-question-plan-yes"),
        no: words.text("handoff-question-no"),
    })
}

/// What it says, a line a move.
fn moves(call: &Call<'_>, plan: &PersonPlan, reader: Reader<'_>) -> Vec<LineView> {
    let today = call.now.date_naive();
    let lines = plan.moves.iter().map(|one| LineView {
        label: move_name(reader, &one.what),
        text: plan_line(reader, &as_kept(plan, one), today),
    });
    lines.collect()
}

/// What it allows although sources differ.
fn exceptions(plan: &PersonPlan, reader: Reader<'_>) -> Option<String> {
    let mut allowed = Vec::new();
    for one in &plan.moves {
        let Some(what) = Move::from_id(&one.what) else {
            continue;
        };
        let ways = one.ways.iter().filter_map(|way| PeopleWay::from_id(way));
        for way in ways.filter(|way| by_exception(what, *way)) {
            let way = reader.words.text(&message_id("way", way.id()));
            let args = [
                ("label", Arg::Text(move_name(reader, &one.what))),
                ("text", Arg::Text(way)),
            ];
            allowed.push(reader.words.format("care-line", &args));
        }
    }
    (!allowed.is_empty()).then(|| allowed.join("; "))
}

fn of_taking(
    call: &Call<'_>,
    plan: &PersonPlan,
    taken: &Taking,
    from: Option<&str>,
    reader: Reader<'_>,
) -> Vec<String> {
    let words = reader.words;
    let named = |id: &str, moves: &[Move]| {
        let names: Vec<String> = moves
            .iter()
            .map(|what| move_name(reader, what.id()))
            .collect();
        let args = [("moves", Arg::Text(names.join("; ")))];
        (!moves.is_empty()).then(|| words.format(id, &args))
    };
    let had = taken.had.as_ref();
    let other = had.and_then(|had| had.from.as_deref());
    let other = other.filter(|had| Some(*had) != from).map(|had| {
        let args = [("from", Arg::text(had))];
        words.format("handoff-warning-care-sender", &args)
    });
    let today = call.now.date_naive();
    let is_past = |one: &&record::PlannedMove| is_old(&as_kept(plan, one), today);
    let old = plan.moves.iter().find(is_past);
    [
        other,
        taken
            .is_crossed
            .then(|| words.text("handoff-warning-crossed")),
        old.map(|_| words.text("handoff-warning-care-old")),
        named("handoff-warning-care-replaced", &taken.replaced),
        named("handoff-warning-care-stays", &taken.stays),
        named("handoff-warning-care-gone", &taken.gone),
    ]
    .into_iter()
    .flatten()
    .collect()
}
