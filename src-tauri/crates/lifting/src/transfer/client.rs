//! The person who is moved, as far as was asked. `None` means "not asked or not known", which is judged on
//! the careful side; see [`super::facts`].

use crate::naming::named;
use crate::quantity::{Minutes, quantity};
use std::collections::BTreeSet;

use super::equipment::Equipment;
use super::limit::Hindrance;
use super::way::PeopleWay;

quantity!(
    /// The mass of the person who is moved. The range is what a person may weigh. House rule.
    ClientMass, "body mass", "kg", 3.0 ..= 400.0
);
quantity!(
    /// The share of the person's mass that staff bear.
    Share, "share", "", 0.0 ..= 1.0
);

named!(
    /// How much weight the person takes on the legs.
    WeightBearing {
        /// All of it.
        Full = "full",
        /// Part of it.
        Part = "part",
        /// None of it.
        None = "none",
    }
);

named!(
    /// Whether the person follows simple steps.
    Follows {
        /// Yes.
        Yes = "yes",
        /// Not sure, or it varies. Counts as no.
        Unsure = "unsure",
        /// No.
        No = "no",
    }
);

named!(
    /// What help staff give with this move.
    Help {
        /// None is needed.
        None = "none",
        /// A steadying hand; nothing is lifted.
        SteadyOnly = "steady_only",
        /// Staff lift some of the person.
        SomeLift = "some_lift",
        /// It changes from moment to moment.
        Unpredictable = "unpredictable",
    }
);

named!(
    /// How far the person can help with moves in bed, in a chair, or from bed to another surface.
    Ability {
        /// Does it alone.
        Fully = "fully",
        /// Helps partly.
        Partly = "partly",
        /// Cannot help.
        Not = "not",
    }
);

named!(
    /// A limb that is held.
    Limb {
        /// A leg.
        Leg = "leg",
        /// An arm.
        Arm = "arm",
    }
);

named!(
    /// A new sign of the person. How soon each needs care: [`super::signs`].
    ClientSign {
        /// New pain in hip, groin or thigh: perhaps broken.
        NewHipPain = "new_hip_pain",
        /// A knock on the head.
        HeadKnock = "head_knock",
        /// New pain in neck or back after a fall or blow.
        NeckPain = "neck_pain",
        /// A limb has an odd shape.
        OddShape = "odd_shape",
        /// Bleeds a lot.
        Bleeding = "bleeding",
        /// Severe new pain.
        SeverePain = "severe_pain",
        /// Does not wake up, or passed out.
        PassedOut = "passed_out",
        /// A fit.
        Fit = "fit",
        /// Face droop, weak arm, odd speech.
        StrokeSigns = "stroke_signs",
        /// Chest pain.
        ChestPain = "chest_pain",
        /// Short of breath.
        Breathless = "breathless",
        /// Sleepy, hard to rouse.
        Drowsy = "drowsy",
        /// Confused.
        Confused = "confused",
        /// Dizzy.
        Dizzy = "dizzy",
        /// Weaker than before.
        Weaker = "weaker",
        /// Fell since the last visit.
        Fell = "fell",
        /// Fever, or feels very ill.
        Fever = "fever",
        /// Resists the move.
        Resists = "resists",
        /// A wound, sore or swelling that is new.
        NewWound = "new_wound",
        /// Any other new sign, in words.
        Other = "other",
    }
);

named!(
    /// A move of a person.
    Move {
        /// From bed to a chair.
        BedToChair = "bed_to_chair",
        /// From a chair to bed.
        ChairToBed = "chair_to_bed",
        /// From a chair to the toilet.
        ChairToToilet = "chair_to_toilet",
        /// From the toilet to a chair.
        ToiletToChair = "toilet_to_chair",
        /// From chair to chair.
        ChairToChair = "chair_to_chair",
        /// From a chair to a wheelchair, or back.
        ChairToWheelchair = "chair_to_wheelchair",
        /// Into or out of a car.
        Car = "car",
        /// Up the bed.
        UpInBed = "up_in_bed",
        /// Turning in bed.
        TurnInBed = "turn_in_bed",
        /// Sitting up from lying.
        SitUp = "sit_up",
        /// Up or back in a chair.
        UpInChair = "up_in_chair",
        /// Lying, sideways to another surface.
        Lateral = "lateral",
        /// Up from the floor.
        FloorToChair = "floor_to_chair",
        /// Holding a leg or an arm.
        HoldLimb = "hold_limb",
        /// Putting on stockings.
        Stockings = "stockings",
        /// Putting on shoes.
        Shoes = "shoes",
        /// Washing low down.
        WashLow = "wash_low",
        /// Catching somebody who falls.
        Catch = "catch",
    }
);

/// What the care plan says of this move.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub enum CarePlan {
    /// There is none for this move, or nobody asked.
    #[default]
    None,
    /// The person is not today as it says.
    DiffersToday,
    /// It covers the move.
    Covers {
        /// Ways it names; when present, no other may be used. The belt and a lift by hand between two are
        /// unlocked by naming them.
        ways: Option<BTreeSet<PeopleWay>>,
        /// Workers it asks for.
        workers: Option<u32>,
        /// It is past its review date, or has none and is old. What it rules out and the workers it asks for
        /// hold; what it unlocks does not. House rule, as for a plan of lifting past its date.
        is_old: bool,
    },
}

/// The move, as described.
#[derive(Debug, Clone, PartialEq)]
pub struct Transfer {
    /// Which move.
    pub what: Move,
    /// The person's mass.
    pub mass: Option<ClientMass>,
    /// Weight on the legs.
    pub weight_bearing: Option<WeightBearing>,
    /// Follows simple steps.
    pub follows: Option<Follows>,
    /// Strong in both arms.
    pub arms_strong: Option<bool>,
    /// How far the person can help.
    pub able: Option<Ability>,
    /// What help staff give.
    pub help: Option<Help>,
    /// The share of the mass that staff bear; wins over `help`.
    pub staff_share: Option<Share>,
    /// Which limb is held.
    pub limb: Option<Limb>,
    /// How long it is held in one go.
    pub hold: Option<Minutes>,
    /// The chair reclines.
    pub chair_reclines: Option<bool>,
    /// Gets up from the floor alone.
    pub independent: Option<bool>,
    /// On the floor: checked, and not hurt.
    pub unhurt: Option<bool>,
    /// Wants it. Only a plain no counts.
    pub agrees: Option<bool>,
    /// Signs that are new; empty means none known.
    pub signs: BTreeSet<ClientSign>,
    /// Equipment that is there, works, and that the worker is trained on.
    pub equipment: BTreeSet<Equipment>,
    /// Trained workers there now, with this one. Not asked: this one alone.
    pub workers: Option<u32>,
    /// What makes it harder on the hands.
    pub hindrances: BTreeSet<Hindrance>,
    /// What the care plan says.
    pub care_plan: CarePlan,
}

impl Transfer {
    /// A move of which nothing else was asked.
    #[must_use]
    pub const fn of(what: Move) -> Self {
        Self {
            what,
            mass: None,
            weight_bearing: None,
            follows: None,
            arms_strong: None,
            able: None,
            help: None,
            staff_share: None,
            limb: None,
            hold: None,
            chair_reclines: None,
            independent: None,
            unhurt: None,
            agrees: None,
            signs: BTreeSet::new(),
            equipment: BTreeSet::new(),
            workers: None,
            hindrances: BTreeSet::new(),
            care_plan: CarePlan::None,
        }
    }
}
