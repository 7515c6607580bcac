//! Changes in words.

use super::build::Reader;
use super::model::CardChange;
use crate::words::{Arg, Rounding, message_id};
use lifting::advise::advice::{Outcome, Ranked};
use lifting::advise::change::{Change, ChangeStep};
use lifting::quantity::Centimetres;

/// Id of a change of several steps.
const TOGETHER: &str = "together";
/// Less than this the model cannot tell. House rule.
const LEAST_TOLD: f64 = 0.1;
/// The stature for which the places below hold; they scale with stature. House rule.
const PLACE_STATURE_CM: f64 = 165.0;
/// Where on the body a height is, by its lower edge at a stature of 165 cm. House rule: halfway between
/// the heights in words (floor 0, shin 20, knee 45, waist 95, chest 125 cm), with the hip between knee and waist.
const PLACES: [(f64, &str); 7] = [
    (140.0, "place-head"),
    (110.0, "place-chest"),
    (85.0, "place-waist"),
    (62.0, "place-hip"),
    (32.0, "place-knee"),
    (10.0, "place-shin"),
    (0.0, "place-floor"),
];

/// Changes that are enough, each with what comes after it. Where the task is not for today, the app is
/// asked again afterwards: no way is named.
pub(super) fn of(outcome: &Outcome, reader: &Reader<'_>) -> Vec<CardChange> {
    let names_ways = matches!(outcome, Outcome::LiftWithChange { .. });
    outcome
        .changes()
        .iter()
        .map(|change| {
            let steps = steps(change, names_ways, reader);
            CardChange {
                kind: kind(change),
                text: text(&steps, reader),
                steps,
                then: if names_ways {
                    let then = then(&change.ways, reader);
                    match eases(change, reader) {
                        Some(eases) => format!("{then} {eases}"),
                        None => then,
                    }
                } else {
                    reader.words.text("change-then-again")
                },
            }
        })
        .collect()
}

fn kind(change: &Change) -> &'static str {
    match change.steps.as_slice() {
        [step] => step.id(),
        _ => TOGETHER,
    }
}

/// Where several things have to change and the app is asked again afterwards, no weight is named yet.
fn steps(change: &Change, names_ways: bool, reader: &Reader<'_>) -> Vec<String> {
    let steps = in_order_of_doing(change);
    let weight_told = names_ways || steps.len() == 1;
    steps
        .iter()
        .map(|step| step_text(step, weight_told, reader))
        .collect()
}

/// The steps as somebody would do them: nothing is moved before its weight is known, a load is packed before
/// it is put higher, and one stands close to where it is in the end.
pub(super) fn in_order_of_doing(change: &Change) -> Vec<ChangeStep> {
    let mut steps = change.steps.clone();
    steps.sort_by_key(|step| match step {
        ChangeStep::FindMass { .. } => 0,
        ChangeStep::Split { .. } | ChangeStep::Lighten { .. } => 1,
        ChangeStep::BetterGrip => 2,
        ChangeStep::RaiseStart { .. }
        | ChangeStep::RaiseEnd { .. }
        | ChangeStep::LowerEnd { .. } => 3,
        ChangeStep::BringCloser { .. } => 4,
        _ => 5,
    });
    steps
}

fn text(steps: &[String], reader: &Reader<'_>) -> String {
    match steps {
        [only] => only.clone(),
        several => {
            let values = [("steps", Arg::Text(several.join(" ")))];
            reader
                .words
                .format(&message_id("change", TOGETHER), &values)
        }
    }
}

fn step_text(step: &ChangeStep, weight_told: bool, reader: &Reader<'_>) -> String {
    let (words, units) = (reader.words, reader.units);
    let mass = |mass: lifting::quantity::Kilograms| {
        Arg::Text(words.mass(mass.value(), units, Rounding::Down))
    };
    let length =
        |length: Centimetres, rounding| Arg::Text(words.length(length.value(), units, rounding));
    let values: Vec<(&str, Arg)> = match *step {
        ChangeStep::FindMass { .. } if !weight_told => vec![("limit", "none".into())],
        ChangeStep::FindMass { go_on_up_to } => vec![("limit", mass(go_on_up_to))],
        ChangeStep::BringCloser { to } => vec![("to", length(to, Rounding::Down))],
        ChangeStep::RaiseStart { to } | ChangeStep::RaiseEnd { to } => {
            vec![
                ("to", length(to, Rounding::Up)),
                ("place", place(to, reader)),
            ]
        }
        ChangeStep::LowerEnd { to } => {
            vec![
                ("to", length(to, Rounding::Down)),
                ("place", place(to, reader)),
            ]
        }
        ChangeStep::Split { parts, each, .. } => {
            vec![("parts", parts.into()), ("each", mass(each))]
        }
        ChangeStep::Lighten { to } => vec![("to", mass(to))],
        ChangeStep::ShortenBout { to } => vec![("to", words.times(to.count()).into())],
        ChangeStep::CarryInStages { to } => {
            vec![(
                "to",
                words.distance(to.value(), units, Rounding::Down).into(),
            )]
        }
        ChangeStep::BetterGrip
        | ChangeStep::TurnFeet
        | ChangeStep::SecondPerson { .. }
        | ChangeStep::ThreePeople { .. } => Vec::new(),
    };
    words.format(&message_id("change", step.id()), &values)
}

fn place(height: Centimetres, reader: &Reader<'_>) -> Arg {
    let stature = reader
        .stature
        .map_or(PLACE_STATURE_CM, |stature| stature.value());
    let at_165 = height.value() * PLACE_STATURE_CM / stature;
    let id = PLACES
        .iter()
        .find(|(from, _)| at_165 >= *from)
        .map_or("place-floor", |(_, id)| *id);
    reader.words.text(id).into()
}

/// How much less the back would have to hold by the model, in steps of 5 %; nothing where it is hardly less.
fn eases(change: &Change, reader: &Reader<'_>) -> Option<String> {
    let less = 1.0 - change.back?.value();
    if less < LEAST_TOLD {
        return None;
    }
    let percent = (less * 20.0).floor() * 5.0;
    let values = [("percent", reader.words.number(percent).into())];
    Some(reader.words.format("change-eases", &values))
}

fn then(ways: &Ranked, reader: &Reader<'_>) -> String {
    let words = reader.words;
    let mut names: Vec<String> = ways.iter().map(|way| words.way_in_sentence(way)).collect();
    let last = names.pop().unwrap_or_default();
    let list = if names.is_empty() {
        last
    } else {
        let first = names.join(", ");
        words.format("list-or", &[("first", first.into()), ("last", last.into())])
    };
    words.format("change-then", &[("ways", list.into())])
}
