//! Holding a leg or an arm, stockings, shoes, washing low down.
//!
//! Load: a leg is 15.7 % and an arm 5.1 % of the mass (`limb_mass`); of somebody who sits, shank and foot,
//! 6.1 % (`dempster_winter`: 0.0465 + 0.0145). By hand within the limit (`waters_2007`, `aorn_2011`), and only
//! when the worker's own lifting figures for that height allow it. NIOSH's equation does not cover people: its
//! two-handed standing figure is the most we go by.

use super::bed::hoist;
use crate::advise::{Request, judge};
use crate::body::Person;
use crate::plan::Plan;
use crate::quantity::{Kilograms, Repetitions};
use crate::reason::{Reason, ReasonId, Value};
use crate::task::{Height, HeightWord, LoadMass, Reach, ReachWord, Task};
use crate::transfer::client::{Ability, Help, Limb, Move};
use crate::transfer::equipment::Equipment;
use crate::transfer::facts::MoveFacts;
use crate::transfer::limit::{Hindrance, LONGEST_HOLD_MIN};
use crate::transfer::verdict::Verdict;
use crate::transfer::way::PeopleWay;

/// A whole leg as a share of body mass.
const LEG: f64 = 0.157;
/// A whole arm as a share of body mass.
const ARM: f64 = 0.051;
/// Shank and foot as a share of body mass.
const SHANK_AND_FOOT: f64 = 0.061;
/// Bends while washing low down. House rule.
const WASH_BENDS: u32 = 10;
/// Bends for stockings or shoes, one for each foot. House rule.
const DRESS_BENDS: u32 = 2;

pub(super) fn rows(facts: &MoveFacts<'_>, person: &Person, plan: Option<&Plan>) -> Vec<Verdict> {
    let mut rows = vec![alone(facts), by_hand(facts, person, plan)];
    if facts.moving.what == Move::HoldLimb {
        rows.push(hoist(facts).with(facts, &[Equipment::LimbSling]));
    }
    rows
}

/// Only who needs no help holds the limb, or dresses and washes, alone; standing and walking say nothing of it.
fn alone(facts: &MoveFacts<'_>) -> Verdict {
    let said = facts.moving.able.is_some() || facts.moving.help == Some(Help::None);
    Verdict::new(PeopleWay::StandBy, ReasonId::StandBySuits)
        .bar_if(!said || facts.able != Ability::Fully, ReasonId::CannotAlone)
}

fn by_hand(facts: &MoveFacts<'_>, person: &Person, plan: Option<&Plan>) -> Verdict {
    let mut hand = Verdict::new(PeopleWay::ManualLift, ReasonId::HoldSuits)
        .workers(facts, 1)
        .bar_if(facts.unpredictable(), ReasonId::HelpUnpredictable)
        .bar_if(!facts.follows, ReasonId::LimitNeedsFollowing);
    let Some(load) = load(facts) else {
        hand.bar(Reason::of(ReasonId::ClientMassNotKnown));
        return hand;
    };
    if rested(facts) {
        hand.equipment.push(Equipment::FootStool);
    } else {
        hand.figures.push(
            Reason::of(ReasonId::LimbMass)
                .with("share", Value::Mass(load))
                .with("what", Value::Id(held(facts))),
        );
        hand = hand.bearers(facts, 1).within_limit(facts, load);
    }
    let too_long = facts
        .moving
        .hold
        .is_some_and(|hold| hold.value() > LONGEST_HOLD_MIN);
    hand.bar_if(
        too_long && facts.moving.what == Move::HoldLimb,
        ReasonId::HeldTooLong,
    )
    .bar_if(
        !own_posture_allows(facts, person, plan, load),
        ReasonId::LowWorkTooMuch,
    )
}

/// The foot rests on a stool: nothing is held.
fn rested(facts: &MoveFacts<'_>) -> bool {
    facts.moving.what != Move::HoldLimb && facts.has(Equipment::FootStool)
}

fn held(facts: &MoveFacts<'_>) -> &'static str {
    match (facts.moving.what, facts.moving.limb) {
        (Move::HoldLimb, Some(Limb::Arm)) => "arm",
        (Move::HoldLimb, _) => "leg",
        _ => "lower_leg",
    }
}

/// What is held, over all workers. `None`: the mass is not known.
fn load(facts: &MoveFacts<'_>) -> Option<Kilograms> {
    if rested(facts) {
        return Some(Kilograms::clamped(0.0));
    }
    let limb = match held(facts) {
        "arm" => ARM,
        "leg" => LEG,
        _ => SHANK_AND_FOOT,
    };
    let share = facts.moving.staff_share.map_or(limb, |share| share.value());
    let mass = facts.moving.mass?;
    Some(Kilograms::clamped(mass.value() * share))
}

/// The worker's own lift of this part at this height, judged like any other: only a plain lift is allowed.
fn own_posture_allows(
    facts: &MoveFacts<'_>,
    person: &Person,
    plan: Option<&Plan>,
    load: Kilograms,
) -> bool {
    own_lifts(facts, person, plan, load).iter().any(is_plain)
}

fn is_plain(own: &Request) -> bool {
    judge(own).outcome.permissiveness() == 3
}

/// What this work is for the worker, as a lift of a thing: at the height where it is a plain lift, or at the
/// lowest. For explaining, and for the figures of the model. `None`: nothing is held, or its mass is not known.
pub(super) fn own_lift(
    facts: &MoveFacts<'_>,
    person: &Person,
    plan: Option<&Plan>,
) -> Option<Request> {
    let lifts = own_lifts(facts, person, plan, load(facts)?);
    let plain = lifts.iter().find(|own| is_plain(own)).cloned();
    plain.or_else(|| lifts.into_iter().next())
}

/// The same work at each height where it can be done.
fn own_lifts(
    facts: &MoveFacts<'_>,
    person: &Person,
    plan: Option<&Plan>,
    load: Kilograms,
) -> Vec<Request> {
    let each = Kilograms::clamped(load.value() / f64::from(facts.bearers.max(1)));
    let bends = match facts.moving.what {
        Move::WashLow => WASH_BENDS,
        Move::Stockings | Move::Shoes => DRESS_BENDS,
        _ => 1,
    };
    let raised = facts.has(Equipment::AdjustableBed);
    let heights: &[HeightWord] = match (facts.moving.what, raised) {
        (Move::HoldLimb, true) => &[HeightWord::Knee, HeightWord::Waist],
        (Move::HoldLimb, false) => &[HeightWord::Knee],
        (_, true) => &[HeightWord::Shin, HeightWord::Knee],
        (_, false) => &[HeightWord::Shin],
    };
    // The published limit is for a load held close; low down the arms reach out.
    let stretched = facts.moving.hindrances.contains(&Hindrance::ArmsExtended);
    let reach = match facts.moving.what {
        Move::HoldLimb if !stretched => ReachWord::Close,
        _ => ReachWord::Medium,
    };
    let lifts = heights.iter().map(|height| {
        let at = Some(Height::Word(*height));
        let task = Task {
            awkward: Some(false),
            start: at,
            end: at,
            reach: Some(Reach::Word(reach)),
            repetitions: Some(Repetitions::of(bends)),
            ..Task::of(LoadMass::Known(each))
        };
        let mut own = Request::new(person.clone(), task);
        own.plan = plan.cloned();
        own
    });
    lifts.collect()
}
