//! The reply of `advise`, in the shape that never changes.

use super::change::{ChangeReply, change_reply};
use crate::task_limit::limit_value;
use lifting::advise::advice::{Advice, Caution, HowSoon, Outcome, Urgency};
use lifting::body::Person;
use lifting::loads::summary::WayLoads;
use lifting::progress::Proposal;
use lifting::reason::{Reason, Value as Argument};
use lifting::rules::warning_signs;
use lifting::way::Way;
use serde::Serialize;
use serde_json::{Map, Value, json};

/// Gives the sentences that belong to reasons. The door itself has none; `app` has them in Fluent.
pub trait Texts {
    /// The sentence of a reason, if there is one.
    fn reason(&self, reason: &Reason) -> Option<String>;
}

/// No sentences: ids speak for themselves.
#[derive(Debug, Clone, Copy, Default)]
pub struct NoTexts;

impl Texts for NoTexts {
    fn reason(&self, _reason: &Reason) -> Option<String> {
        None
    }
}

/// What `advise` answers. All words are ids; numbers are unrounded.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct AdviceReply {
    /// The outcome's id; `None` for the task `progress`.
    pub outcome: Option<&'static str>,
    /// How soon somebody should be told or seen.
    pub urgency: &'static str,
    /// Ways offered, best first.
    pub ways: Vec<&'static str>,
    /// Ways that may not be used.
    pub ruled_out: Vec<RuledOutReply>,
    /// What to heed, most serious first.
    pub cautions: Vec<&'static str>,
    /// Other ways to get it done, in the order to offer them.
    pub alternatives: Vec<&'static str>,
    /// Changes, each enough alone, smallest first.
    pub changes: Vec<ChangeReply>,
    /// Every reason met.
    pub reasons: Vec<ReasonReply>,
    /// The step proposed; only for the task `progress`.
    pub progress: Option<&'static str>,
    /// The heaviest load for today, in kg.
    pub heaviest_today_kg: Option<f64>,
    /// The published limit for healthy adults, as one task of `task_limit`.
    pub limit: Option<Value>,
    /// Modelled joint loads of the ways offered. They rank and explain; they decide nothing.
    pub loads: Vec<LoadsReply>,
}

/// A way that may not be used, with the ids of the reasons.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct RuledOutReply {
    /// The way.
    pub way: &'static str,
    /// Ids of reasons.
    pub because: Vec<&'static str>,
}

/// A reason with everything needed to show where it comes from.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct ReasonReply {
    /// Which rule speaks.
    pub id: &'static str,
    /// The step of the judgement, 1 to 7.
    pub step: u8,
    /// Whose rule it is.
    pub authority: &'static str,
    /// A source id, `house_rule` or `common_practice`.
    pub source: &'static str,
    /// How sure it is.
    pub sure: &'static str,
    /// Its values by name; a name ends in the unit: `max_kg`, `start_cm`.
    pub args: Map<String, Value>,
    /// Its sentence; `None` at the door.
    pub text: Option<String>,
}

/// What the posture model finds for one way: the largest values along it.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct LoadsReply {
    /// The way.
    pub way: &'static str,
    /// Extensor moment at L5/S1, N·m.
    pub moment_l5s1_nm: f64,
    /// Compression at L5/S1, N.
    pub compression_n: f64,
    /// Shear at L5/S1, N.
    pub shear_n: f64,
    /// Extensor moment of the left knee, N·m.
    pub knee_left_nm: f64,
    /// Extensor moment of the right knee, N·m.
    pub knee_right_nm: f64,
    /// Extensor moment of the left hip, N·m.
    pub hip_left_nm: f64,
    /// Extensor moment of the right hip, N·m.
    pub hip_right_nm: f64,
    /// Energy of one lift, kcal.
    pub energy_kcal_per_lift: f64,
}

/// The reply for an advice.
#[must_use]
pub fn advice_reply(advice: &Advice, texts: &dyn Texts) -> AdviceReply {
    let ruled_out = advice.ruled_out.iter().map(|out| RuledOutReply {
        way: out.way.id(),
        because: out.because.iter().map(|reason| reason.id()).collect(),
    });
    AdviceReply {
        outcome: Some(advice.outcome.id()),
        urgency: advice.outcome.urgency().id(),
        ways: way_ids(advice.outcome.ways()),
        ruled_out: ruled_out.collect(),
        cautions: advice.cautions.iter().map(|caution| caution.id()).collect(),
        alternatives: advice.alternatives.iter().map(|other| other.id()).collect(),
        changes: advice.outcome.changes().iter().map(change_reply).collect(),
        reasons: reason_replies(&advice.reasons, texts),
        progress: None,
        heaviest_today_kg: advice.heaviest_today.map(|mass| mass.value()),
        limit: advice.limit.as_ref().map(limit_value),
        loads: advice.loads.iter().map(loads_reply).collect(),
    }
}

/// The reply for a proposed step. An open warning sign keeps its urgency here too.
#[must_use]
pub fn proposal_reply(person: &Person, proposal: &Proposal, texts: &dyn Texts) -> AdviceReply {
    let care = warning_signs::check(person).map(|(how_soon, _)| how_soon);
    let caution = care.map(|how_soon| match how_soon {
        HowSoon::Emergency => Caution::EmergencyNow,
        HowSoon::SameDay => Caution::SameDayAdvice,
    });
    let urgency = care.map_or(Urgency::None, |how_soon| {
        Outcome::SeekCare { how_soon }.urgency()
    });
    AdviceReply {
        outcome: None,
        urgency: urgency.id(),
        ways: Vec::new(),
        ruled_out: Vec::new(),
        cautions: caution.iter().map(|caution| caution.id()).collect(),
        alternatives: Vec::new(),
        changes: Vec::new(),
        reasons: reason_replies(&proposal.reasons, texts),
        progress: Some(proposal.progress.id()),
        heaviest_today_kg: None,
        limit: None,
        loads: Vec::new(),
    }
}

/// Reasons as they go on the wire.
#[must_use]
pub fn reason_replies(reasons: &[Reason], texts: &dyn Texts) -> Vec<ReasonReply> {
    let reply = |reason: &Reason| ReasonReply {
        id: reason.id.id(),
        step: reason.id.step(),
        authority: reason.id.authority().id(),
        source: reason.id.source(),
        sure: reason.id.sure().id(),
        args: reason
            .values
            .iter()
            .map(|(name, value)| argument(name, *value))
            .collect(),
        text: texts.reason(reason),
    };
    reasons.iter().map(reply).collect()
}

fn loads_reply(loads: &WayLoads) -> LoadsReply {
    LoadsReply {
        way: loads.way.id(),
        moment_l5s1_nm: loads.moment_l5s1.value(),
        compression_n: loads.compression.value(),
        shear_n: loads.shear.value(),
        knee_left_nm: loads.knee_left.value(),
        knee_right_nm: loads.knee_right.value(),
        hip_left_nm: loads.hip_left.value(),
        hip_right_nm: loads.hip_right.value(),
        energy_kcal_per_lift: loads.energy.value(),
    }
}

pub(super) fn way_ids(ways: impl IntoIterator<Item = Way>) -> Vec<&'static str> {
    ways.into_iter().map(Way::id).collect()
}

/// A value under its name with the unit behind it.
fn argument(name: &str, value: Argument) -> (String, Value) {
    let plain = |value: Value| (name.to_owned(), value);
    let with = |unit: &str, number: f64| (format!("{name}_{unit}"), json!(number));
    match value {
        Argument::Mass(mass) => with("kg", mass.value()),
        Argument::Length(length) => with("cm", length.value()),
        Argument::Distance(distance) => with("m", distance.value()),
        Argument::Force(force) => with("n", force.value()),
        Argument::Weeks(weeks) => with("weeks", weeks.value()),
        Argument::Count(count) => plain(json!(count.count())),
        Argument::Pain(score) => plain(json!(score.value())),
        Argument::Ratio(ratio) => plain(json!(ratio)),
        Argument::Region(region) => plain(json!(region.id())),
        Argument::Way(way) => plain(json!(way.id())),
        Argument::Sign(sign) => plain(json!(sign.id())),
        Argument::Id(id) => plain(json!(id)),
    }
}
