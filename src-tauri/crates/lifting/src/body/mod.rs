//! The person who would lift, and how the body is today. Everything optional: `None` means "not asked
//! or not known", which the judgement takes on the careful side (see [`crate::advise::careful`]).

pub mod segments;

use crate::naming::named;
use crate::quantity::{BodyMass, PainScore, Stature, Weeks};
use std::collections::BTreeSet;

named!(
    /// Age in bands.
    AgeBand {
        /// Under 16 years.
        Under16 = "under16",
        /// 16 to 39 years.
        From16 = "16-39",
        /// 40 to 64 years.
        From40 = "40-64",
        /// 65 to 79 years.
        From65 = "65-79",
        /// 80 years and over.
        From80 = "80plus",
    }
);

named!(
    /// Sex, for published figures that differ by it.
    Sex {
        /// Female.
        Female = "female",
        /// Male.
        Male = "male",
    }
);

named!(
    /// How the back behaves today, apart from the number.
    BackState {
        /// No surprises.
        Steady = "steady",
        /// Catches or changes without warning.
        Volatile = "volatile",
        /// The person says today is a flare-up.
        Flare = "flare",
    }
);

named!(
    /// Balance today.
    Balance {
        /// Steady on one leg.
        Good = "good",
        /// Steady on two legs, not on one.
        Fair = "fair",
        /// Needs a hand on something.
        Poor = "poor",
    }
);

named!(
    /// Whether the person can kneel.
    Kneeling {
        /// On either knee.
        Yes = "yes",
        /// On one side only.
        OneSide = "one_side",
        /// Not at all.
        No = "no",
    }
);

named!(
    /// Left or right.
    Side {
        /// Left.
        Left = "left",
        /// Right.
        Right = "right",
    }
);

named!(
    /// A body region whose pain is rated.
    Region {
        /// The back.
        Back = "back",
        /// The left knee.
        KneeLeft = "knee_left",
        /// The right knee.
        KneeRight = "knee_right",
        /// The left hip.
        HipLeft = "hip_left",
        /// The right hip.
        HipRight = "hip_right",
        /// The shoulders.
        Shoulders = "shoulders",
    }
);

named!(
    /// A known standing condition. Each has a row in [`crate::rules::conditions`].
    Condition {
        /// Weak bones.
        Osteoporosis = "osteoporosis",
        /// A past fracture of the spine.
        PastSpineFracture = "past_spine_fracture",
        /// Pregnant, without complications.
        Pregnant = "pregnant",
        /// Pregnant, and told of complications.
        PregnancyComplicated = "pregnancy_complicated",
        /// A knee replaced, healed.
        KneeReplacementOld = "knee_replacement_old",
        /// A knee replaced lately.
        KneeReplacementRecent = "knee_replacement_recent",
        /// A hip replaced.
        HipReplacement = "hip_replacement",
        /// Hip osteoarthritis.
        HipOsteoarthritis = "hip_osteoarthritis",
        /// Knee osteoarthritis.
        KneeOsteoarthritis = "knee_osteoarthritis",
        /// Surgery on the low back lately.
        LumbarSurgeryRecent = "lumbar_surgery_recent",
        /// A hernia of groin or belly.
        Hernia = "hernia",
    }
);

named!(
    /// A warning sign, new in the last two weeks or getting worse. Tiers: [`crate::rules::warning_signs`].
    WarningSign {
        /// Numb or tingling where a saddle would touch.
        SaddleNumb = "saddle_numb",
        /// Bladder or bowel trouble.
        BladderBowel = "bladder_bowel",
        /// Both legs weak, numb or painful.
        BothLegsWeak = "both_legs_weak",
        /// One leg clearly getting weaker.
        OneLegWeaker = "one_leg_weaker",
        /// Began with a bad fall, crash or blow.
        MajorTrauma = "major_trauma",
        /// A small fall or lift, then strong pain, with weak bones, steroids or over 70.
        MinorTraumaFragile = "minor_trauma_fragile",
        /// Fever, shivers or feeling very ill.
        FeverUnwell = "fever_unwell",
        /// Past cancer and a new kind of pain.
        CancerHistory = "cancer_history",
        /// Losing weight without trying.
        WeightLoss = "weight_loss",
        /// Pain that never eases, even at night.
        NightPain = "night_pain",
        /// One joint hot, red, very swollen.
        HotJoint = "hot_joint",
        /// A knee stuck.
        LockedKnee = "locked_knee",
        /// Cannot take four steps on that leg.
        NoWeightBear = "no_weight_bear",
        /// One calf swollen, sore, warm.
        CalfSwollen = "calf_swollen",
        /// Chest pain, short of breath, sweating and sick.
        ChestBreath = "chest_breath",
        /// Dizzy, faint, about to pass out.
        DizzyFaint = "dizzy_faint",
        /// Face droop, weak arm, odd speech, sudden confusion.
        StrokeSigns = "stroke_signs",
        /// A very sore lump in groin or belly, or being sick with it.
        HerniaBad = "hernia_bad",
        /// Surgery on back, hip, knee or belly in the last three months.
        PostOpRecent = "post_op_recent",
    }
);

/// Pain right now in each region, 0 to 10.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct PainToday {
    /// The back.
    pub back: Option<PainScore>,
    /// The left knee.
    pub knee_left: Option<PainScore>,
    /// The right knee.
    pub knee_right: Option<PainScore>,
    /// The left hip.
    pub hip_left: Option<PainScore>,
    /// The right hip.
    pub hip_right: Option<PainScore>,
    /// The shoulders, the worse one.
    pub shoulders: Option<PainScore>,
}

impl PainToday {
    /// The rating of one region, if it was asked.
    #[must_use]
    pub const fn of(&self, region: Region) -> Option<PainScore> {
        match region {
            Region::Back => self.back,
            Region::KneeLeft => self.knee_left,
            Region::KneeRight => self.knee_right,
            Region::HipLeft => self.hip_left,
            Region::HipRight => self.hip_right,
            Region::Shoulders => self.shoulders,
        }
    }
}

/// The person who would lift, as far as was asked. Warning signs are not optional: nobody is advised
/// before they were asked.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Person {
    /// Age band.
    pub age: Option<AgeBand>,
    /// Sex.
    pub sex: Option<Sex>,
    /// Stature.
    pub stature: Option<Stature>,
    /// Body mass.
    pub mass: Option<BodyMass>,
    /// Pain now.
    pub pain: PainToday,
    /// How the back behaves.
    pub back_state: Option<BackState>,
    /// Balance.
    pub balance: Option<Balance>,
    /// A fall in the last year.
    pub fell_last_year: Option<bool>,
    /// Kneeling.
    pub can_kneel: Option<Kneeling>,
    /// Warning signs that are true now; empty means asked, and none.
    pub signs: BTreeSet<WarningSign>,
    /// Known conditions; empty means none known.
    pub conditions: BTreeSet<Condition>,
    /// Weeks of pregnancy.
    pub pregnancy: Option<Weeks>,
    /// Weeks since surgery.
    pub since_surgery: Option<Weeks>,
}
