//! Somebody whom the user helps to move: a code and a picture, never a name, and what is known of each move.

use minicbor::{Decode, Encode};

use crate::codes::codes;
use crate::frame::{Keyed, Record};
use crate::{CarePlan, Moment, PlanHead};

/// A care person. What is `None` was not asked, or nobody knew.
#[derive(Debug, Clone, PartialEq, Eq, Encode, Decode)]
#[cbor(map)]
pub struct CarePerson {
    /// The code that the user gave. Not a name, unless the employer allows it.
    #[n(1)]
    pub code: String,
    /// Id of the picture that the user chose.
    #[n(2)]
    pub picture: String,
    /// When the person was written down.
    #[n(3)]
    pub since: Moment,
    /// Weight on the legs.
    #[n(4)]
    pub legs: Option<WeightBearing>,
    /// Whether they follow simple steps.
    #[n(5)]
    pub follows: Option<Follows>,
    /// Strong in both arms.
    #[n(6)]
    pub arms_strong: Option<bool>,
    /// Upper end of the band of their mass, grams.
    #[n(7)]
    pub mass_g: Option<u32>,
    /// Text ids of equipment that is there and works; empty: asked, none.
    #[n(8)]
    pub equipment: Option<Vec<String>>,
    /// When any of this was last told.
    #[n(9)]
    pub noted_at: Option<Moment>,
    /// What is known of each move, one entry a move.
    #[n(10)]
    pub moves: Vec<CareMove>,
    /// Care plans of this person that were sent or taken.
    #[n(11)]
    pub plans: Option<Vec<PlanHead>>,
}

impl Record for CarePerson {
    const KIND: u32 = 18;
}

impl Keyed for CarePerson {
    fn knows(path: &[u32]) -> bool {
        match path {
            [key] => (1..=11).contains(key),
            [10, inner @ ..] => CareMove::knows(inner),
            [11, inner @ ..] => PlanHead::knows(inner),
            _ => false,
        }
    }
}

/// What is known of one move of one person.
#[derive(Debug, Clone, PartialEq, Eq, Encode, Decode)]
#[cbor(map)]
pub struct CareMove {
    /// Text id of the move.
    #[n(1)]
    pub what: String,
    /// How far they can help.
    #[n(2)]
    pub able: Option<Ability>,
    /// What help staff give.
    #[n(3)]
    pub help: Option<Help>,
    /// Share of their mass that staff bear, thousandths.
    #[n(4)]
    pub share_permille: Option<u32>,
    /// Trained workers who are there for it, with the user.
    #[n(5)]
    pub workers: Option<u32>,
    /// Which limb is held.
    #[n(6)]
    pub limb: Option<Limb>,
    /// For how long it is held in one go.
    #[n(7)]
    pub hold: Option<Hold>,
    /// The chair reclines.
    #[n(8)]
    pub chair_reclines: Option<bool>,
    /// When any of this was last told.
    #[n(9)]
    pub noted_at: Option<Moment>,
    /// What the care plan says.
    #[n(10)]
    pub plan: Option<CarePlan>,
}

impl CareMove {
    /// A move of which nothing is known.
    #[must_use]
    pub const fn of(what: String) -> Self {
        Self {
            what,
            able: None,
            help: None,
            share_permille: None,
            workers: None,
            limb: None,
            hold: None,
            chair_reclines: None,
            noted_at: None,
            plan: None,
        }
    }
}

impl Keyed for CareMove {
    fn knows(path: &[u32]) -> bool {
        match path {
            [key] => (1..=10).contains(key),
            [10, inner @ ..] => CarePlan::knows(inner),
            _ => false,
        }
    }
}

codes! {
    /// How much weight a person takes on the legs.
    WeightBearing {
        /// All of it.
        Full = 1 "full",
        /// Part of it.
        Part = 2 "part",
        /// None of it.
        None = 3 "none",
    }
}

codes! {
    /// Whether a person follows simple steps.
    Follows {
        /// Yes.
        Yes = 1 "yes",
        /// Not sure, or it varies.
        Unsure = 2 "unsure",
        /// No.
        No = 3 "no",
    }
}

codes! {
    /// How far a person can help with a move.
    Ability {
        /// Does it alone.
        Fully = 1 "fully",
        /// Helps partly.
        Partly = 2 "partly",
        /// Cannot help.
        Not = 3 "not",
    }
}

codes! {
    /// What help staff give with a move.
    Help {
        /// None.
        None = 1 "none",
        /// A steadying hand.
        SteadyOnly = 2 "steady_only",
        /// Staff lift some of the person.
        SomeLift = 3 "some_lift",
        /// It changes from moment to moment.
        Unpredictable = 4 "unpredictable",
    }
}

codes! {
    /// A limb that is held.
    Limb {
        /// A leg.
        Leg = 1 "leg",
        /// An arm.
        Arm = 2 "arm",
    }
}

codes! {
    /// How long a limb is held in one go.
    Hold {
        /// Up to a minute.
        Minute = 1 "up_1_min",
        /// Up to two minutes.
        TwoMinutes = 2 "up_2_min",
        /// Longer.
        Longer = 3 "longer",
    }
}
