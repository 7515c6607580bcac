//! The move with everything that is missing taken on the careful side. House rules unless a source is named.

use super::client::{
    Ability, CarePlan, ClientMass, Follows, Help, Move, Share, Transfer, WeightBearing,
};
use super::equipment::Equipment;
use super::limit::{Hindrance, LoweredBy, ManualLimit};
use super::worker::Worker;
use crate::quantity::Kilograms;

/// 200 lb: more workers from here in bed and sideways (`osha_3182`).
pub const LB_200: f64 = 90.72;
/// 300 lb: height and rated load have to be known (`va_care_form`).
pub const LB_300: f64 = 136.08;

/// How much of the person staff bear.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Borne {
    /// Nothing: none needed, or a steadying hand.
    Nothing,
    /// This much, over all workers.
    Load(Kilograms),
    /// A known share of a mass that is not known.
    ShareOfUnknown,
    /// Nobody said.
    NotAsked,
    /// Staff lift, and nobody knows how much.
    Unknown,
}

/// A move, resolved.
#[derive(Debug, Clone)]
pub struct MoveFacts<'a> {
    /// The move as described.
    pub moving: &'a Transfer,
    /// The worker as judged.
    pub worker: &'a Worker,
    /// Weight on the legs; not known is none.
    pub legs: WeightBearing,
    /// Follows simple steps; anything but yes is no.
    pub follows: bool,
    /// Strong arms; not known is no.
    pub arms: bool,
    /// How far the person can help.
    pub able: Ability,
    /// How much staff bear.
    pub borne: Borne,
    /// Trained workers there; not asked is one.
    pub workers: u32,
    /// Workers who may bear a part of a person today: all, less this one when the body says so.
    pub bearers: u32,
    /// The limit for one worker.
    pub limit: ManualLimit,
}

impl<'a> MoveFacts<'a> {
    /// Resolves a move.
    #[must_use]
    pub fn of(moving: &'a Transfer, worker: &'a Worker) -> Self {
        let workers = moving.workers.unwrap_or(1);
        let away = u32::from(!worker.bears_nothing.is_empty());
        Self {
            moving,
            worker,
            legs: moving.weight_bearing.unwrap_or(WeightBearing::None),
            follows: moving.follows == Some(Follows::Yes),
            arms: moving.arms_strong.unwrap_or(false),
            able: able(moving),
            borne: borne(moving),
            workers,
            bearers: workers.saturating_sub(away),
            limit: limit(moving, worker),
        }
    }

    /// Whether this equipment is there.
    #[must_use]
    pub fn has(&self, equipment: Equipment) -> bool {
        self.moving.equipment.contains(&equipment)
    }

    /// Whether help changes from moment to moment: then staff must count on none (`va_care_form`).
    #[must_use]
    pub fn unpredictable(&self) -> bool {
        self.moving.help == Some(Help::Unpredictable)
    }

    /// Whether staff do more than stand by or steady.
    #[must_use]
    pub fn lifted(&self) -> bool {
        matches!(self.moving.help, Some(Help::SomeLift | Help::Unpredictable))
            || self
                .moving
                .staff_share
                .is_some_and(|share| share.value() > 0.0)
    }

    /// Whether the person weighs this much or more, or nobody knows.
    #[must_use]
    pub fn weighs(&self, kilograms: f64) -> bool {
        self.moving
            .mass
            .is_none_or(|mass| mass.value() >= kilograms)
    }

    /// Whether the person weighs more than this, or nobody knows.
    #[must_use]
    pub fn weighs_more_than(&self, kilograms: f64) -> bool {
        self.moving.mass.is_none_or(|mass| mass.value() > kilograms)
    }

    /// Whether the care plan covers this move and its date has not passed: what it unlocks counts.
    #[must_use]
    pub fn unlocks(&self) -> bool {
        matches!(
            self.moving.care_plan,
            CarePlan::Covers { is_old: false, .. }
        )
    }

    /// Whether a care plan past its date covers this move.
    #[must_use]
    pub fn plan_is_old(&self) -> bool {
        matches!(self.moving.care_plan, CarePlan::Covers { is_old: true, .. })
    }
}

fn borne(moving: &Transfer) -> Borne {
    match (moving.staff_share, moving.help) {
        (Some(share), _) if share.value() <= 0.0 => Borne::Nothing,
        (Some(share), _) => moving
            .mass
            .map_or(Borne::ShareOfUnknown, |mass| Borne::Load(part(mass, share))),
        (None, Some(Help::None | Help::SteadyOnly)) => Borne::Nothing,
        (None, Some(Help::SomeLift | Help::Unpredictable)) => Borne::Unknown,
        (None, None) => Borne::NotAsked,
    }
}

fn part(mass: ClientMass, share: Share) -> Kilograms {
    Kilograms::clamped(mass.value() * share.value())
}

/// The least of what the answers say. Without any, legs, arms and following stand in.
fn able(moving: &Transfer) -> Ability {
    let by_help = moving.help.map(|help| match help {
        Help::None => Ability::Fully,
        Help::SteadyOnly | Help::SomeLift => Ability::Partly,
        Help::Unpredictable => Ability::Not,
    });
    let said = match (moving.able, by_help) {
        (Some(able), Some(help)) => able.max(help),
        (Some(able), None) => able,
        (None, Some(help)) => help,
        (None, None) => from_the_rest(moving),
    };
    let follows = moving.follows == Some(Follows::Yes);
    let by_share = match moving.staff_share.map(Share::value) {
        Some(share) if share >= 1.0 => Ability::Not,
        Some(share) if share > 0.0 => Ability::Partly,
        _ => Ability::Fully,
    };
    match said.max(by_share) {
        Ability::Partly if !follows => Ability::Not,
        able => able,
    }
}

fn from_the_rest(moving: &Transfer) -> Ability {
    let arms = moving.arms_strong == Some(true);
    match moving.weight_bearing {
        _ if moving.follows != Some(Follows::Yes) => Ability::Not,
        Some(WeightBearing::Full) if arms => Ability::Fully,
        Some(WeightBearing::Full | WeightBearing::Part) => Ability::Partly,
        _ if arms => Ability::Partly,
        _ => Ability::Not,
    }
}

fn limit(moving: &Transfer, worker: &Worker) -> ManualLimit {
    let mut lowered: Vec<LoweredBy> = moving
        .hindrances
        .iter()
        .map(|hindrance| LoweredBy::from(*hindrance))
        .chain(worker.lowers.iter().copied())
        .collect();
    match moving.what {
        Move::Car => lowered.push(Hindrance::TightSpace.into()),
        Move::Stockings | Move::Shoes | Move::WashLow => {
            lowered.extend([LoweredBy::NearFloor, LoweredBy::OneHand]);
        }
        Move::HoldLimb => {
            let short = moving
                .hold
                .is_some_and(|hold| hold.value() <= super::limit::SHORT_HOLD_MIN);
            if !short {
                lowered.push(LoweredBy::LongHold);
            }
        }
        _ => {}
    }
    ManualLimit::under(lowered, worker.own_ceiling)
}
