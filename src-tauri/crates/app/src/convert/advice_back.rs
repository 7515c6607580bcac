//! A kept advice read back, so that it can be shown again as it was given.
//!
//! Ids and figures that this version does not know are left out: an old advice is shown as far as it can be.

use super::figures;
use lifting::advise::advice::{Advice, Alternative, Caution, HowSoon, Outcome, Ranked, RuledOut};
use lifting::advise::change::{Change, ChangeStep};
use lifting::quantity::{Centimetres, Kilograms, Metres, Repetitions};
use lifting::reason::{Reason, ReasonId};
use lifting::way::Way;
use record::{Arg, Urgency};

/// The advice as it was given. Its published limit is not among what is read back: only the figure that
/// governed was kept, see [`record::Advice::limit`].
#[must_use]
pub(crate) fn from_record(kept: &record::Advice) -> Advice {
    Advice {
        outcome: outcome(kept),
        ruled_out: kept.ruled_out.iter().map(ruled_out).collect(),
        cautions: kept
            .cautions
            .iter()
            .filter_map(|id| Caution::from_id(id))
            .collect(),
        alternatives: kept
            .alternatives
            .iter()
            .filter_map(|id| Alternative::from_id(id))
            .collect(),
        reasons: kept.reasons.iter().filter_map(reason).collect(),
        heaviest_today: kept.heaviest_g.map(kilograms),
        limit: None,
        loads: Vec::new(),
    }
}

/// A way as the judgement names it.
#[must_use]
pub(crate) const fn way(way: record::Way) -> Way {
    match way {
        record::Way::Upright => Way::Upright,
        record::Way::Hinge => Way::HipHinge,
        record::Way::Squat => Way::Squat,
        record::Way::Lunge => Way::HalfKneelingLunge,
        record::Way::FreeBend => Way::FreeBend,
        record::Way::Golfer => Way::GolfersLift,
    }
}

/// An advice to lift without a way, which no version writes, is shown as one not to lift.
fn outcome(kept: &record::Advice) -> Outcome {
    let changes: Vec<Change> = kept.changes.iter().filter_map(change).collect();
    let do_not_lift = |changes| Outcome::DoNotLift {
        changes,
        tell_clinician: kept.urgency == Urgency::Routine,
    };
    match kept.outcome {
        record::Outcome::Lift => match ranked(&kept.ways) {
            Some(ways) => Outcome::Lift { ways },
            None => do_not_lift(changes),
        },
        record::Outcome::LiftWithChange => match ranked(&kept.ways) {
            Some(ways) => Outcome::LiftWithChange { ways, changes },
            None => do_not_lift(changes),
        },
        record::Outcome::DoNotLift => do_not_lift(changes),
        record::Outcome::SeekCare => Outcome::SeekCare {
            how_soon: match kept.urgency {
                Urgency::Emergency => HowSoon::Emergency,
                Urgency::None | Urgency::Routine | Urgency::SameDay => HowSoon::SameDay,
            },
        },
        record::Outcome::Refuse => Outcome::Refuse,
    }
}

fn ranked(ways: &[record::Way]) -> Option<Ranked> {
    Ranked::from_list(&ways.iter().copied().map(way).collect::<Vec<_>>())
}

fn ruled_out(kept: &record::RuledOut) -> RuledOut {
    RuledOut {
        way: way(kept.way),
        because: kept
            .because
            .iter()
            .filter_map(|id| ReasonId::from_id(id))
            .collect(),
    }
}

fn reason(kept: &record::Reason) -> Option<Reason> {
    Some(Reason {
        id: ReasonId::from_id(&kept.id)?,
        values: kept.args.iter().filter_map(figures::to_value).collect(),
    })
}

/// A change of which one step is not known is left out whole: the rest of it would not be enough.
fn change(kept: &record::Change) -> Option<Change> {
    let steps = if kept.kind == figures::TOGETHER {
        kept.steps
            .iter()
            .map(|step| read_step(&step.kind, &step.args))
            .collect::<Option<Vec<_>>>()?
    } else {
        vec![read_step(&kept.kind, &kept.args)?]
    };
    Some(Change::of(steps, ranked(&kept.ways)?))
}

fn read_step(kind: &str, args: &[Arg]) -> Option<ChangeStep> {
    let number = |name: &str| {
        let arg = args.iter().find(|arg| arg.name == name)?;
        match arg.value {
            record::Value::Integer(number) => u32::try_from(number).ok(),
            record::Value::Text(_) => None,
        }
    };
    let mass = |name: &str| number(name).map(kilograms);
    let length = || number("to_mm").map(|mm| Centimetres::clamped(f64::from(mm) / 10.0));
    Some(match kind {
        "find_mass" => ChangeStep::FindMass {
            go_on_up_to: mass("go_on_up_to_g")?,
        },
        "bring_closer" => ChangeStep::BringCloser { to: length()? },
        "better_grip" => ChangeStep::BetterGrip,
        "turn_feet" => ChangeStep::TurnFeet,
        "raise_start" => ChangeStep::RaiseStart { to: length()? },
        "raise_end" => ChangeStep::RaiseEnd { to: length()? },
        "lower_end" => ChangeStep::LowerEnd { to: length()? },
        "split_load" => ChangeStep::Split {
            parts: number("parts")?,
            each: mass("each_g")?,
            lifts: number("to_times").and_then(|times| Repetitions::new(times).ok()),
        },
        "lighten" => ChangeStep::Lighten { to: mass("to_g")? },
        "shorten_bout" => ChangeStep::ShortenBout {
            to: Repetitions::new(number("to_times")?).ok()?,
        },
        "carry_in_stages" => ChangeStep::CarryInStages {
            to: Metres::clamped(f64::from(number("to_mm")?) / 1000.0),
        },
        "second_person" => ChangeStep::SecondPerson {
            judged_at: mass("judged_at_g")?,
        },
        "three_people" => ChangeStep::ThreePeople {
            judged_at: mass("judged_at_g")?,
        },
        _ => return None,
    })
}

fn kilograms(grams: u32) -> Kilograms {
    Kilograms::clamped(f64::from(grams) / 1000.0)
}

#[cfg(test)]
#[path = "advice_tests.rs"]
mod tests;
