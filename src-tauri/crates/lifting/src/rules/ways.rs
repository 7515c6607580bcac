//! Step 5. Each way: can it be done, and what does trade practice say for this body and this repetition?
//!
//! Each file function below reads like its row in the table of trade practice (common practice, no source).

use super::{conditions, plan};
use crate::advise::facts::{Band, Facts, LIGHT, Rated};
use crate::body::{BackState, Balance, Condition, Kneeling, Region};
use crate::reason::{Reason, ReasonId, Value};
use crate::way::Way;
use std::cmp::Ordering;

/// The free bend is for once or twice. Common practice, no source.
const FREE_BEND_TIMES: u32 = 2;

/// What a plan's word weighs: more than all of trade practice together. It moves a way among those that may come
/// first, and never past a bar. House rule.
const PLAN_FIRST: i32 = 100;

/// What is said of one way.
#[derive(Debug, Clone)]
pub struct Verdict {
    /// The way.
    pub way: Way,
    /// Why it may not be used; empty when it may.
    pub barred: Vec<Reason>,
    /// Why it may not come first; empty when it may.
    pub not_first: Vec<Reason>,
    /// What speaks for it, with the weight it has in the ranking.
    pub suits: Vec<(i32, ReasonId)>,
    /// Weight against it in the ranking.
    pub against: i32,
    /// How to do it today.
    pub notes: Vec<Reason>,
}

impl Verdict {
    fn of(way: Way) -> Self {
        Self {
            way,
            barred: Vec::new(),
            not_first: Vec::new(),
            suits: Vec::new(),
            against: 0,
            notes: Vec::new(),
        }
    }

    /// Whether it may be used at all.
    #[must_use]
    pub fn usable(&self) -> bool {
        self.barred.is_empty()
    }

    /// Whether it may come first.
    #[must_use]
    pub fn may_be_first(&self) -> bool {
        self.usable() && self.not_first.is_empty()
    }

    /// Its weight in the ranking; more is better.
    #[must_use]
    pub fn weight(&self) -> i32 {
        self.suits.iter().map(|(weight, _)| weight).sum::<i32>() - self.against
    }

    fn suits_if(&mut self, holds: bool, weight: i32, id: ReasonId) {
        if holds {
            self.suits.push((weight, id));
        }
    }

    fn against_if(&mut self, holds: bool, weight: i32) {
        if holds {
            self.against += weight;
        }
    }
}

/// Judges every way that comes into question for this task.
#[must_use]
pub fn judge(facts: &Facts<'_>) -> Vec<Verdict> {
    let mut verdicts: Vec<Verdict> = if facts.upright() {
        let mut upright = Verdict::of(Way::Upright);
        upright.notes.push(Reason::of(ReasonId::NoLowWayNeeded));
        vec![upright]
    } else {
        vec![
            hip_hinge(facts),
            squat(facts),
            half_kneeling_lunge(facts),
            free_bend(facts),
            golfers_lift(facts),
        ]
    };
    for verdict in &mut verdicts {
        verdict.suits_if(
            plan::prefers(facts, verdict.way),
            PLAN_FIRST,
            ReasonId::PlanPrefers,
        );
        if let Some(id) = plan::rules_out(facts, verdict.way) {
            verdict.barred.insert(0, Reason::of(id));
        }
        for row in conditions::rows(facts) {
            if let Some(id) = row.reason.filter(|_| row.bars.contains(&verdict.way)) {
                verdict.barred.push(Reason::of(id));
            }
            verdict.against_if(row.moves_back.contains(&verdict.way), 2);
        }
    }
    verdicts
}

/// Suits the most weight, knee pain, back pain up to moderate, long runs of light lifts. Not with a severe back.
fn hip_hinge(facts: &Facts<'_>) -> Verdict {
    let mut verdict = Verdict::of(Way::HipHinge);
    verdict.barred.extend(back_provoked(facts));
    verdict.not_first.extend(severe_hips(facts));
    verdict.suits_if(
        facts.worse_knee().band >= Band::Moderate,
        3,
        ReasonId::HingeEasesKnee,
    );
    verdict.suits_if(facts.heavy(), 2, ReasonId::HingeMovesMost);
    verdict.suits_if(facts.long_run(), 2, ReasonId::HingeLongRun);
    verdict.against -= 1;
    verdict
}

/// Suits a severe or easily provoked back, more than a trifle, few times. Not with a severe knee, nor long runs.
fn squat(facts: &Facts<'_>) -> Verdict {
    let mut verdict = Verdict::of(Way::Squat);
    verdict.barred.extend(severe_knees(facts));
    verdict.not_first.extend(long_run(facts));
    verdict.suits_if(facts.back_provoked(), 3, ReasonId::SquatForBack);
    verdict.suits_if(
        !facts.light() && !facts.long_run(),
        2,
        ReasonId::SquatFewLifts,
    );
    verdict.against_if(facts.worse_knee().band >= Band::Moderate, 3);
    verdict.against_if(facts.bulky, 2);
    verdict
}

/// Suits a load not known, hard to hold or heavy, and a severe back. Not for long runs, nor where kneeling is out.
fn half_kneeling_lunge(facts: &Facts<'_>) -> Verdict {
    let mut verdict = Verdict::of(Way::HalfKneelingLunge);
    verdict.barred.extend(kneeling(facts, &mut verdict.notes));
    if facts.too_high_to_kneel() {
        verdict
            .barred
            .push(Reason::of(ReasonId::TooHighToKneel).with("start", Value::Length(facts.start)));
    }
    verdict.not_first.extend(long_run(facts));
    verdict.suits_if(!facts.tested && !facts.light(), 4, ReasonId::LungeToTest);
    verdict.suits_if(facts.bulky && !facts.light(), 3, ReasonId::LungeToHug);
    verdict.suits_if(facts.back_provoked(), 2, ReasonId::LungeForBack);
    verdict.suits_if(facts.heavy(), 1, ReasonId::LungeStudiesDiffer);
    verdict.against_if(facts.worse_knee().band >= Band::Moderate, 1);
    verdict.against_if(facts.balance == Balance::Poor, 1);
    verdict
}

/// Suits once or twice with 0 to 2.3 kg, and severe knees. Not with a severe back, heavier, or many times.
fn free_bend(facts: &Facts<'_>) -> Verdict {
    let mut verdict = Verdict::of(Way::FreeBend);
    verdict.barred.extend(back_provoked(facts));
    verdict.barred.extend(over_light(facts));
    if facts.repetitions.count() > FREE_BEND_TIMES {
        verdict.barred.push(
            Reason::of(ReasonId::MoreThanTwice).with("times", Value::Count(facts.repetitions)),
        );
    }
    verdict.not_first.extend(severe_hips(facts));
    verdict.suits_if(true, 2, ReasonId::FreeBendLight);
    verdict.suits_if(facts.worse_knee().severe(), 3, ReasonId::HingeEasesKnee);
    verdict.against_if(facts.back.band >= Band::Moderate, 4);
    verdict
}

/// Suits something light in one hand, sore knees, long runs of light lifts. Not with unsteady balance.
fn golfers_lift(facts: &Facts<'_>) -> Verdict {
    let mut verdict = Verdict::of(Way::GolfersLift);
    verdict.barred.extend(balance_not_good(facts));
    verdict.barred.extend(over_light(facts));
    if facts.two_hands {
        verdict.barred.push(Reason::of(ReasonId::NeedsTwoHands));
    }
    match (facts.hip_left.severe(), facts.hip_right.severe()) {
        (true, true) => verdict.barred.push(Reason::of(ReasonId::NoHipToStandOn)),
        (true, false) => verdict
            .notes
            .push(Reason::of(ReasonId::StandOn).with("region", Value::Region(Region::HipRight))),
        (false, true) => verdict
            .notes
            .push(Reason::of(ReasonId::StandOn).with("region", Value::Region(Region::HipLeft))),
        (false, false) => {}
    }
    verdict.suits_if(true, 1, ReasonId::GolferLight);
    verdict.suits_if(facts.long_run(), 2, ReasonId::GolferLongRun);
    verdict.suits_if(
        facts.worse_knee().band >= Band::Moderate,
        2,
        ReasonId::HingeEasesKnee,
    );
    verdict
}

fn back_provoked(facts: &Facts<'_>) -> Vec<Reason> {
    let mut reasons = Vec::new();
    if !facts.back.asked {
        reasons.push(Reason::of(ReasonId::BackNotAsked));
    } else if facts.back.severe() {
        reasons.push(Reason::of(ReasonId::BackSevere).with("pain", Value::Pain(facts.back.score)));
    }
    match facts.back_state {
        BackState::Volatile if facts.person.back_state.is_some() => {
            reasons.push(Reason::of(ReasonId::BackVolatile));
        }
        BackState::Volatile if facts.back.asked => {
            reasons.push(Reason::of(ReasonId::BackStateNotAsked));
        }
        BackState::Flare => reasons.push(Reason::of(ReasonId::BackFlare)),
        BackState::Volatile | BackState::Steady => {}
    }
    reasons
}

fn severe_knees(facts: &Facts<'_>) -> Vec<Reason> {
    [
        (Region::KneeLeft, facts.knee_left),
        (Region::KneeRight, facts.knee_right),
    ]
    .into_iter()
    .filter(|(_, knee)| knee.severe())
    .map(|(region, knee)| {
        let id = if knee.asked {
            ReasonId::KneeSevere
        } else {
            ReasonId::KneeNotAsked
        };
        let reason = Reason::of(id).with("region", Value::Region(region));
        if knee.asked {
            reason.with("pain", Value::Pain(knee.score))
        } else {
            reason
        }
    })
    .collect()
}

fn severe_hips(facts: &Facts<'_>) -> Vec<Reason> {
    [
        (Region::HipLeft, facts.hip_left),
        (Region::HipRight, facts.hip_right),
    ]
    .into_iter()
    .filter(|(_, hip)| hip.severe())
    .map(|(region, hip)| {
        Reason::of(ReasonId::HipSevere)
            .with("region", Value::Region(region))
            .with("pain", Value::Pain(hip.score))
    })
    .collect()
}

/// Which knee may be on the ground: never a severe one.
fn kneeling(facts: &Facts<'_>, notes: &mut Vec<Reason>) -> Option<Reason> {
    if facts.kneeling == Kneeling::No {
        let asked = facts.person.can_kneel.is_some();
        return Some(Reason::of(if asked {
            ReasonId::CannotKneel
        } else {
            ReasonId::KneelNotAsked
        }));
    }
    if facts.knee_left.severe() && facts.knee_right.severe() {
        return Some(Reason::of(ReasonId::NoKneeToKneelOn));
    }
    if facts.kneeling == Kneeling::OneSide {
        // It is not asked which side: the person knows it, and only two knees that may kneel make it certain.
        let sure = !facts.knee_left.severe() && !facts.knee_right.severe();
        return (!sure).then(|| Reason::of(ReasonId::KneelSideNotKnown));
    }
    if facts.has(Condition::KneeReplacementRecent) {
        return None; // barred by its row
    }
    if let Some(better) = better_knee(facts) {
        notes.push(Reason::of(ReasonId::KneelOn).with("region", Value::Region(better)));
    }
    None
}

/// The knee that is not severe, else the one with less pain; `None` when they are alike. A plan may set bands
/// for one knee only, so that the lower number is the severe one.
fn better_knee(facts: &Facts<'_>) -> Option<Region> {
    let rank = |knee: Rated| (knee.severe(), knee.score);
    match rank(facts.knee_left).cmp(&rank(facts.knee_right)) {
        Ordering::Greater => Some(Region::KneeRight),
        Ordering::Less => Some(Region::KneeLeft),
        Ordering::Equal => None,
    }
}

fn balance_not_good(facts: &Facts<'_>) -> Option<Reason> {
    let id = match (facts.balance, facts.person.balance) {
        (Balance::Good, _) => return None,
        (_, None) => ReasonId::BalanceNotAsked,
        (_, Some(Balance::Good)) => ReasonId::FellLastYear,
        (_, Some(Balance::Fair | Balance::Poor)) => ReasonId::BalanceNotGood,
    };
    Some(Reason::of(id))
}

fn over_light(facts: &Facts<'_>) -> Option<Reason> {
    if facts.light() {
        return None;
    }
    let reason = Reason::of(ReasonId::OverLight).with("max", Value::Mass(LIGHT));
    Some(match facts.mass {
        Some(mass) => reason.with("mass", Value::Mass(mass)),
        None => reason,
    })
}

fn long_run(facts: &Facts<'_>) -> Option<Reason> {
    facts
        .long_run()
        .then(|| Reason::of(ReasonId::LongRun).with("times", Value::Count(facts.repetitions)))
}
