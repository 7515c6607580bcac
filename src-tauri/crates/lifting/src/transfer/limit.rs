//! How much of a person one worker may take by hand.
//!
//! 35 lb (15.9 kg) for each worker under the best conditions (`waters_2007`). What lowers it is published,
//! by how much is not: for one condition we take the two-hand figure for holding limbs, 10.1 kg, and for one
//! hand or several conditions the one-hand figure, 5.03 kg (`aorn_2011`). House rule.

use crate::naming::named;
use crate::quantity::Kilograms;

/// The published limit for one worker: 35 lb.
pub const BEST: Kilograms = Kilograms::clamped(15.9);
/// Two hands, held up to two minutes.
pub const TWO_HANDS_HELD: Kilograms = Kilograms::clamped(10.1);
/// One hand, held up to two minutes.
pub const ONE_HAND_HELD: Kilograms = Kilograms::clamped(5.03);
/// Longest hold the figures are for, in minutes (`aorn_2011`).
pub const LONGEST_HOLD_MIN: f64 = 2.0;
/// Longer than this counts as a hold, in minutes (`aorn_2011`).
pub const SHORT_HOLD_MIN: f64 = 1.0;

named!(
    /// A condition under which the limit is lower (`waters_2007`).
    Hindrance {
        /// Arms stretched out.
        ArmsExtended = "arms_extended",
        /// Near the floor.
        NearFloor = "near_floor",
        /// The worker sits or kneels.
        SittingOrKneeling = "sitting_or_kneeling",
        /// Trunk twisted, or the load off to one side.
        Twisted = "twisted",
        /// One hand only.
        OneHand = "one_hand",
        /// Hands above the shoulder.
        AboveShoulder = "above_shoulder",
        /// Little room.
        TightSpace = "tight_space",
        /// A shift of more than 8 hours.
        LongShift = "long_shift",
    }
);

named!(
    /// What lowered the limit.
    LoweredBy {
        /// Arms stretched out.
        ArmsExtended = "arms_extended",
        /// Near the floor.
        NearFloor = "near_floor",
        /// The worker sits or kneels.
        SittingOrKneeling = "sitting_or_kneeling",
        /// Trunk twisted, or the load off to one side.
        Twisted = "twisted",
        /// One hand only.
        OneHand = "one_hand",
        /// Hands above the shoulder.
        AboveShoulder = "above_shoulder",
        /// Little room.
        TightSpace = "tight_space",
        /// A shift of more than 8 hours.
        LongShift = "long_shift",
        /// Held for more than a minute, or nobody knows how long.
        LongHold = "long_hold",
        /// The worker's back hurts moderately or more, or is easily provoked.
        OwnBack = "own_back",
        /// A knee or hip of the worker hurts severely, or the knees were not asked about.
        OwnLegs = "own_legs",
        /// The worker's bones are weak, or the spine was broken once.
        OwnBones = "own_bones",
        /// The worker is pregnant.
        OwnPregnancy = "own_pregnancy",
    }
);

impl From<Hindrance> for LoweredBy {
    fn from(hindrance: Hindrance) -> Self {
        match hindrance {
            Hindrance::ArmsExtended => Self::ArmsExtended,
            Hindrance::NearFloor => Self::NearFloor,
            Hindrance::SittingOrKneeling => Self::SittingOrKneeling,
            Hindrance::Twisted => Self::Twisted,
            Hindrance::OneHand => Self::OneHand,
            Hindrance::AboveShoulder => Self::AboveShoulder,
            Hindrance::TightSpace => Self::TightSpace,
            Hindrance::LongShift => Self::LongShift,
        }
    }
}

/// The limit for one worker, with what lowered it.
#[derive(Debug, Clone, PartialEq)]
pub struct ManualLimit {
    /// The most one worker may take of a person.
    pub each: Kilograms,
    /// What lowered it, in order.
    pub lowered_by: Vec<LoweredBy>,
}

impl ManualLimit {
    /// The limit under these conditions; a ceiling of the worker's own plan holds besides.
    #[must_use]
    pub fn under(mut lowered_by: Vec<LoweredBy>, own_ceiling: Option<Kilograms>) -> Self {
        lowered_by.sort();
        lowered_by.dedup();
        let figure = match lowered_by.as_slice() {
            [] => BEST,
            [LoweredBy::OneHand] => ONE_HAND_HELD,
            [_] => TWO_HANDS_HELD,
            _ => ONE_HAND_HELD,
        };
        Self {
            each: own_ceiling.map_or(figure, |ceiling| figure.at_most(ceiling)),
            lowered_by,
        }
    }

    /// Workers needed for this load: load ÷ limit, rounded up. `None`: no number is enough.
    #[must_use]
    pub fn workers_for(&self, load: Kilograms) -> Option<u32> {
        if load.value() <= 0.0 {
            return Some(0);
        }
        // A few hundred at most: a load of up to 400 kg, a limit of grams is given up.
        (1..=100).find(|count| f64::from(*count) * self.each.value() >= load.value())
    }
}
