//! One load from one place to another.

use minicbor::{Decode, Encode};

use crate::Mass;
use crate::codes::codes;
use crate::frame::{Keyed, Record};

/// What is to be lifted, from where, and how often. `None` means not asked, never zero and never "no".
#[derive(Debug, Clone, Default, PartialEq, Eq, Encode, Decode)]
#[cbor(map)]
pub struct Task {
    /// Kind of thing, a text id such as `box`.
    #[n(1)]
    pub what: Option<String>,
    /// How heavy it is.
    #[n(2)]
    pub mass: Option<Mass>,
    /// Big, floppy, shifting, or without a good grip.
    #[n(3)]
    pub awkward: Option<bool>,
    /// Where the hands first grip, in words.
    #[n(4)]
    pub start: Option<HeightWord>,
    /// Where the hands first grip, millimetres above the floor.
    #[n(5)]
    pub start_mm: Option<u32>,
    /// Where it is set down, in words.
    #[n(6)]
    pub end: Option<HeightWord>,
    /// Where the hands let go, millimetres above the floor.
    #[n(7)]
    pub end_mm: Option<u32>,
    /// How far from the body at the first grip, in words.
    #[n(8)]
    pub reach: Option<ReachWord>,
    /// Hands to mid-ankle at the first grip, horizontally, millimetres.
    #[n(9)]
    pub reach_mm: Option<u32>,
    /// Trunk turned from straight ahead, degrees.
    #[n(10)]
    pub twist_deg: Option<u16>,
    /// Carried how far, millimetres.
    #[n(11)]
    pub carry_mm: Option<u32>,
    /// How many lifts.
    #[n(12)]
    pub reps: Option<u32>,
    /// Over how many minutes.
    #[n(13)]
    pub span_min: Option<u32>,
    /// Other able people there now.
    #[n(14)]
    pub helpers: Option<u32>,
    /// Each helper's own single-person limit, grams; those known.
    #[n(15)]
    pub helper_max_g: Option<Vec<u32>>,
    /// Needs both hands.
    #[n(16)]
    pub two_hands: Option<bool>,
    /// Width of the load, millimetres.
    #[n(17)]
    pub width_mm: Option<u32>,
    /// Depth of the load, away from the body, millimetres.
    #[n(18)]
    pub depth_mm: Option<u32>,
    /// Can be carried in parts.
    #[n(19)]
    pub divisible: Option<bool>,
    /// How good the grip is.
    #[n(20)]
    pub coupling: Option<Coupling>,
    /// How often, as the text id of the answer, such as `some_slow`.
    #[n(21)]
    pub often: Option<String>,
}

impl Record for Task {
    const KIND: u32 = 1;
}

impl Keyed for Task {
    fn knows(path: &[u32]) -> bool {
        matches!(path, [1..=21])
    }
}

codes! {
    /// A height in words.
    HeightWord {
        /// On the floor.
        Floor = 1 "floor",
        /// About shin height.
        Shin = 2 "shin",
        /// About knee height.
        Knee = 3 "knee",
        /// About waist height.
        Waist = 4 "waist",
        /// About chest height.
        Chest = 5 "chest",
        /// Above the head.
        Overhead = 6 "overhead",
    }
}

codes! {
    /// A distance from the body in words.
    ReachWord {
        /// Against the body.
        Close = 1 "close",
        /// Elbows bent.
        Medium = 2 "medium",
        /// Arms nearly straight.
        Far = 3 "far",
    }
}

codes! {
    /// Grip, in the words of the NIOSH equation.
    Coupling {
        /// Handles or a wrap-round grip.
        Good = 1 "good",
        /// Handles or a grip that is less than good.
        Fair = 2 "fair",
        /// Bulky, slippery, sagging or sharp.
        Poor = 3 "poor",
    }
}
