//! What a clinician has set for one person.

use minicbor::{Decode, Encode};

use crate::codes::codes;
use crate::frame::{Keyed, Record};
use crate::{Day, HeightWord, Identity, Moment, Pain, Way, Wording};

/// A plan, in one of its versions. A limit that is `None` is not set, never zero.
#[derive(Debug, Clone, PartialEq, Eq, Encode, Decode)]
#[cbor(map)]
pub struct Plan {
    /// The plan, the same in all its versions.
    #[n(1)]
    pub id: Identity,
    /// The version, from 1; a later one is higher.
    #[n(2)]
    pub version: u32,
    /// When this version was made.
    #[n(3)]
    pub made_at: Moment,
    /// Whom it is for, by the name used between the two.
    #[n(4)]
    pub whom: String,
    /// Who made it, by their own name.
    #[n(5)]
    pub by: String,
    /// What it is called.
    #[n(6)]
    pub title: Wording,
    /// Text id of the pattern it began as.
    #[n(7)]
    pub pattern: Option<String>,
    /// The last day on which it holds as it is.
    #[n(8)]
    pub review_on: Day,
    /// Weeks after that day during which its limits stay.
    #[n(9)]
    pub grace_weeks: u32,
    /// Most mass for any lift, grams.
    #[n(10)]
    pub ceiling_g: Option<u32>,
    /// Most mass by the height where a lift starts.
    #[n(11)]
    pub ceilings: Vec<Ceiling>,
    /// Most lifts in one go.
    #[n(12)]
    pub times_a_bout: Option<u32>,
    /// Most goes in a day.
    #[n(13)]
    pub bouts_a_day: Option<u32>,
    /// No lifting while any rated region hurts more than this.
    #[n(14)]
    pub pain_ceiling: Option<Pain>,
    /// What must hold the next morning.
    #[n(15)]
    pub next_morning: Option<NextMorning>,
    /// What is said of ways to lift; a way that is not named may be used.
    #[n(16)]
    pub ways: Vec<PlanWay>,
    /// What to think of while lifting.
    #[n(17)]
    pub cues: Vec<Wording>,
    /// What to practise.
    #[n(18)]
    pub practice: Vec<Practice>,
    /// How to go on.
    #[n(19)]
    pub progression: Progression,
    /// Where pain bands begin for this person.
    #[n(20)]
    pub bands: Vec<Bands>,
    /// Anything else.
    #[n(21)]
    pub notes: Vec<Wording>,
    /// Why this version is as it is, if that is told.
    #[n(22)]
    pub why: Option<Wording>,
    /// What to do in a flare-up, step by step; `None`: the plan does not say.
    #[n(23)]
    pub flare: Option<Vec<Wording>>,
    /// Whom to call and when, as it was typed; `None`: the plan does not say.
    #[n(24)]
    pub call: Option<String>,
}

impl Plan {
    /// The first version of a plan that sets nothing yet: for nobody, from nobody, without a name, to be looked at again on
    /// the first day of 1970.
    #[must_use]
    pub const fn blank(id: Identity, made_at: Moment) -> Self {
        Self {
            id,
            version: 1,
            made_at,
            whom: String::new(),
            by: String::new(),
            title: Wording::Typed(String::new()),
            pattern: None,
            review_on: Day(0),
            grace_weeks: 0,
            ceiling_g: None,
            ceilings: Vec::new(),
            times_a_bout: None,
            bouts_a_day: None,
            pain_ceiling: None,
            next_morning: None,
            ways: Vec::new(),
            cues: Vec::new(),
            practice: Vec::new(),
            progression: Progression {
                step_g: None,
                good_days: None,
                hold_from: None,
                back_over: None,
                is_locked: false,
            },
            bands: Vec::new(),
            notes: Vec::new(),
            why: None,
            flare: None,
            call: None,
        }
    }
}

/// A ceiling for lifts from one height.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Encode, Decode)]
#[cbor(map)]
pub struct Ceiling {
    /// Where the lift starts.
    #[n(1)]
    pub start: HeightWord,
    /// Most mass, grams.
    #[n(2)]
    pub grams: u32,
}

/// What a plan says of one way to lift.
#[derive(Debug, Clone, PartialEq, Eq, Encode, Decode)]
#[cbor(map)]
pub struct PlanWay {
    /// The way.
    #[n(1)]
    pub way: Way,
    /// Whether it is to be used.
    #[n(2)]
    pub standing: WayStanding,
    /// Why.
    #[n(3)]
    pub why: Option<Wording>,
}

/// Something to practise.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Encode, Decode)]
#[cbor(map)]
pub struct Practice {
    /// In which way.
    #[n(1)]
    pub way: Way,
    /// With how much: the level in practice, grams.
    #[n(2)]
    pub grams: u32,
    /// How many sets.
    #[n(3)]
    pub sets: u32,
    /// How often in each set.
    #[n(4)]
    pub times: u32,
    /// On how many days a week.
    #[n(5)]
    pub days_a_week: u32,
}

/// When to go a step up, to hold, and to go a step back.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq, Encode, Decode)]
#[cbor(map)]
pub struct Progression {
    /// One step, grams.
    #[n(1)]
    pub step_g: Option<u32>,
    /// Good days in a row before a step up.
    #[n(2)]
    pub good_days: Option<u32>,
    /// Pain while lifting from which to hold.
    #[n(3)]
    pub hold_from: Option<Pain>,
    /// Pain while lifting above which to go a step back.
    #[n(4)]
    pub back_over: Option<Pain>,
    /// Steps are for the clinician to allow.
    #[n(5)]
    pub is_locked: bool,
}

/// Where moderate and severe begin in one region.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Encode, Decode)]
#[cbor(map)]
pub struct Bands {
    /// The region.
    #[n(1)]
    pub region: Region,
    /// The lowest score called moderate.
    #[n(2)]
    pub moderate_from: Pain,
    /// The lowest score called severe.
    #[n(3)]
    pub severe_from: Pain,
}

impl Record for Plan {
    const KIND: u32 = 13;
}

impl Keyed for Plan {
    fn knows(path: &[u32]) -> bool {
        match path {
            [key] => (1..=24).contains(key),
            [11, key] => (1..=2).contains(key),
            [16 | 20, key] => (1..=3).contains(key),
            [18 | 19, key] => (1..=5).contains(key),
            _ => false,
        }
    }
}

codes! {
    /// Whether a way is to be used.
    WayStanding {
        /// First choice where it serves.
        Preferred = 1 "preferred",
        /// May be used.
        Allowed = 2 "allowed",
        /// Not to be used.
        NotAllowed = 3 "not_allowed",
    }
}

codes! {
    /// What must hold the next morning.
    NextMorning {
        /// Pain is back to usual.
        BackToUsual = 1 "back_to_usual",
        /// Pain is no worse than the morning before.
        NoWorse = 2 "no_worse",
    }
}

codes! {
    /// A region that can hurt.
    Region {
        /// Back.
        Back = 1 "back",
        /// Left knee.
        KneeLeft = 2 "knee_left",
        /// Right knee.
        KneeRight = 3 "knee_right",
        /// Left hip.
        HipLeft = 4 "hip_left",
        /// Right hip.
        HipRight = 5 "hip_right",
        /// Both shoulders together.
        Shoulders = 6 "shoulders",
    }
}
