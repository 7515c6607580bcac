//! Changes on the wire: what to change, the ways that serve then, and the object's fields after it.

use super::reply::way_ids;
use lifting::advise::change::{BackShare, Change, ChangeStep};
use lifting::quantity::Repetitions;
use serde::Serialize;
use serde_json::{Map, Value, json};

/// The kind of a change that has several steps.
const COMBINED: &str = "combined";

/// A change that is enough alone.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct ChangeReply {
    /// What to do; for several steps together it is `combined`.
    #[serde(flatten)]
    pub step: StepReply,
    /// The steps of a combined change, to be done together.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub steps: Vec<StepReply>,
    /// Ways for the task once changed, best first.
    pub ways: Vec<&'static str>,
    /// Largest modelled back moment once changed, as a share of the one now; it explains and decides nothing.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub back_moment_share: Option<f64>,
    /// Fields of `object` to overwrite to ask about the changed task; `null` takes a field away.
    pub set: Map<String, Value>,
}

/// One thing to change, with its amounts.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct StepReply {
    /// What to do.
    pub kind: &'static str,
    /// Its amounts by name: `to_cm`, `to_kg`, `parts`, …
    #[serde(flatten)]
    pub amounts: Map<String, Value>,
}

/// A change as it goes on the wire.
#[must_use]
pub fn change_reply(change: &Change) -> ChangeReply {
    let ways = way_ids(change.ways.iter());
    let back_moment_share = change.back.map(BackShare::value);
    let set = change.steps.iter().flat_map(fields_after).collect();
    let mut steps: Vec<StepReply> = change.steps.iter().map(step_reply).collect();
    match (steps.len(), steps.pop()) {
        (1, Some(step)) => ChangeReply {
            step,
            steps,
            ways,
            back_moment_share,
            set,
        },
        (_, last) => {
            steps.extend(last);
            ChangeReply {
                step: StepReply {
                    kind: COMBINED,
                    amounts: Map::new(),
                },
                steps,
                ways,
                back_moment_share,
                set,
            }
        }
    }
}

fn step_reply(step: &ChangeStep) -> StepReply {
    let amounts = match *step {
        ChangeStep::FindMass { go_on_up_to } => {
            object(&[("go_on_up_to_kg", json!(go_on_up_to.value()))])
        }
        ChangeStep::BringCloser { to }
        | ChangeStep::RaiseStart { to }
        | ChangeStep::RaiseEnd { to }
        | ChangeStep::LowerEnd { to } => object(&[("to_cm", json!(to.value()))]),
        ChangeStep::BetterGrip | ChangeStep::TurnFeet => Map::new(),
        ChangeStep::Split { parts, each, lifts } => {
            let mut amounts = object(&[("parts", json!(parts)), ("each_kg", json!(each.value()))]);
            amounts.extend(repetitions(lifts));
            amounts
        }
        ChangeStep::Lighten { to } => object(&[("to_kg", json!(to.value()))]),
        ChangeStep::ShortenBout { to } => object(&[("to_reps", json!(to.count()))]),
        ChangeStep::CarryInStages { to } => object(&[("to_m", json!(to.value()))]),
        ChangeStep::SecondPerson { judged_at } | ChangeStep::ThreePeople { judged_at } => {
            object(&[("judged_at_kg", json!(judged_at.value()))])
        }
    };
    StepReply {
        kind: step.id(),
        amounts,
    }
}

/// The object's fields after a step: the same as [`ChangeStep::apply`] does to a task.
fn fields_after(step: &ChangeStep) -> Map<String, Value> {
    match *step {
        ChangeStep::FindMass { go_on_up_to: mass } | ChangeStep::Lighten { to: mass } => {
            known(mass.value())
        }
        ChangeStep::BringCloser { to } => {
            object(&[("reach", Value::Null), ("reach_cm", json!(to.value()))])
        }
        ChangeStep::BetterGrip => grip(),
        ChangeStep::TurnFeet => object(&[("twist_deg", json!(0.0))]),
        ChangeStep::RaiseStart { to } => object(&[
            ("start_height", Value::Null),
            ("start_height_cm", json!(to.value())),
        ]),
        ChangeStep::RaiseEnd { to } | ChangeStep::LowerEnd { to } => {
            object(&[("end_height_cm", json!(to.value()))])
        }
        ChangeStep::Split { each, lifts, .. } => known(each.value())
            .into_iter()
            .chain(grip())
            .chain(repetitions(lifts))
            .collect(),
        ChangeStep::SecondPerson { judged_at: mass }
        | ChangeStep::ThreePeople { judged_at: mass } => {
            known(mass.value()).into_iter().chain(grip()).collect()
        }
        ChangeStep::ShortenBout { to } => object(&[("reps", json!(to.count()))]),
        ChangeStep::CarryInStages { to } => object(&[("carry_m", json!(to.value()))]),
    }
}

fn known(mass_kg: f64) -> Map<String, Value> {
    object(&[
        ("mass_known", json!(true)),
        ("mass_kg", json!(mass_kg)),
        ("guess_low_kg", Value::Null),
        ("guess_high_kg", Value::Null),
    ])
}

/// How often it is lifted then; nothing where that is not known.
fn repetitions(lifts: Option<Repetitions>) -> Map<String, Value> {
    lifts.map_or_else(Map::new, |lifts| object(&[("reps", json!(lifts.count()))]))
}

fn grip() -> Map<String, Value> {
    object(&[("awkward", json!(false)), ("coupling", json!("fair"))])
}

fn object(fields: &[(&str, Value)]) -> Map<String, Value> {
    fields
        .iter()
        .map(|(name, value)| ((*name).to_owned(), value.clone()))
        .collect()
}

#[cfg(test)]
#[path = "change_tests.rs"]
mod tests;
