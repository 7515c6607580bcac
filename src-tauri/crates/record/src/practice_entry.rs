//! What somebody did about the plan that is followed: practice, steps taken, flare-ups.

use minicbor::{Decode, Encode};

use crate::codes::codes;
use crate::frame::{Keyed, Record};
use crate::{BackToUsual, Identity, Moment, Pain, Way};

/// One entry of the log of a plan.
#[derive(Debug, Clone, PartialEq, Eq, Encode, Decode)]
#[cbor(map)]
pub struct PracticeEntry {
    /// When it was kept.
    #[n(1)]
    pub at: Moment,
    /// The plan that was followed.
    #[n(2)]
    pub plan: Identity,
    /// Its version.
    #[n(3)]
    pub version: u32,
    /// What it is.
    #[n(4)]
    pub event: PracticeEvent,
    /// The way that was practised.
    #[n(5)]
    pub way: Option<Way>,
    /// Practice: with how much. A step or a flare-up: the level from then on. Grams.
    #[n(6)]
    pub grams: Option<u32>,
    /// Worst pain while practising, if it was told.
    #[n(7)]
    pub pain: Option<Pain>,
    /// How it was the next morning, once that was asked.
    #[n(8)]
    pub morning: Option<MorningAfter>,
}

/// How it was the morning after practice. Neither pain nor "back to usual": it was asked and passed over.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Encode, Decode)]
#[cbor(map)]
pub struct MorningAfter {
    /// When it was answered.
    #[n(1)]
    pub at: Moment,
    /// Pain, if it was told.
    #[n(2)]
    pub pain: Option<Pain>,
    /// Back to usual, if it was told.
    #[n(3)]
    pub back_to_usual: Option<BackToUsual>,
}

impl Record for PracticeEntry {
    const KIND: u32 = 17;
}

impl Keyed for PracticeEntry {
    fn knows(path: &[u32]) -> bool {
        match path {
            [key] => (1..=8).contains(key),
            [8, key] => (1..=3).contains(key),
            _ => false,
        }
    }
}

codes! {
    /// What an entry of the log of a plan is.
    PracticeEvent {
        /// Practice that was done.
        Done = 1 "done",
        /// Practice that was left for that day.
        Left = 2 "left",
        /// One step up was taken.
        StepUp = 3 "step_up",
        /// One step down was taken.
        StepDown = 4 "step_down",
        /// A step that was offered was left.
        OfferLeft = 5 "offer_left",
        /// A flare-up began.
        Flare = 6 "flare",
    }
}
