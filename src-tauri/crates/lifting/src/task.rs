//! One load from one place to another, as described. `None` means "not asked or not known".

use crate::naming::named;
use crate::quantity::{Centimetres, Degrees, Kilograms, Metres, Minutes, Repetitions};

named!(
    /// A height in words. In centimetres at a stature of 165 cm; scales with stature. House rule.
    HeightWord {
        /// On the floor, 0 cm.
        Floor = "floor",
        /// Mid shin, 20 cm.
        Shin = "shin",
        /// Knee, 45 cm.
        Knee = "knee",
        /// Waist, 95 cm.
        Waist = "waist",
        /// Chest, 125 cm.
        Chest = "chest",
        /// Overhead, 175 cm.
        Overhead = "overhead",
    }
);

named!(
    /// How far from the body the hands first grip, in words: 30, 45 and 63 cm. House rule; 63 cm is the
    /// largest reach of the NIOSH equation (Waters, Putz-Anderson & Garg 1994).
    ReachWord {
        /// 30 cm.
        Close = "close",
        /// 45 cm.
        Medium = "medium",
        /// 63 cm, arms nearly straight.
        Far = "far",
    }
);

named!(
    /// How well hands and load fit together (NIOSH 94-110, section 1.1 and table 6).
    Coupling {
        /// Good handles or cut-outs.
        Good = "good",
        /// Poor handles, or fingers can flex under the load.
        Fair = "fair",
        /// Bulky, sagging, sharp or hard to hold.
        Poor = "poor",
    }
);

/// A height above the floor, in words or measured.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Height {
    /// In words.
    Word(HeightWord),
    /// Measured.
    Measured(Centimetres),
}

/// A horizontal distance from mid-ankles to hands, in words or measured.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Reach {
    /// In words.
    Word(ReachWord),
    /// Measured.
    Measured(Centimetres),
}

/// What is known of the load's mass.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum LoadMass {
    /// Known: from a label, a scale, or lifted before.
    Known(Kilograms),
    /// Not known; a guess, judged at its upper end until tested.
    Untested {
        /// It is at least this.
        low: Option<Kilograms>,
        /// It is at most this. `None`: no idea.
        high: Option<Kilograms>,
    },
}

/// Another able person who is there now.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Helper {
    /// That person's own single-person limit. `None`: not known, so the helper does not count.
    pub own_limit: Option<Kilograms>,
}

/// One load from one place to another.
#[derive(Debug, Clone, PartialEq)]
pub struct Task {
    /// Its mass.
    pub mass: LoadMass,
    /// Whether it can be carried in parts.
    pub divisible: Option<bool>,
    /// Big, floppy, shifting, or without a good grip.
    pub awkward: Option<bool>,
    /// A person or an animal.
    pub living: bool,
    /// Where the hands first grip.
    pub start: Option<Height>,
    /// Where it is put down.
    pub end: Option<Height>,
    /// How far away it is at the first grip.
    pub reach: Option<Reach>,
    /// Twist of the trunk.
    pub twist: Option<Degrees>,
    /// How far it is carried.
    pub carry: Option<Metres>,
    /// Grip.
    pub coupling: Option<Coupling>,
    /// Whether it takes two hands.
    pub two_hands: Option<bool>,
    /// Width, side to side.
    pub width: Option<Centimetres>,
    /// Depth, front to back.
    pub depth: Option<Centimetres>,
    /// How many times.
    pub repetitions: Option<Repetitions>,
    /// Over how long.
    pub span: Option<Minutes>,
    /// Other able people there now.
    pub helpers: Vec<Helper>,
}

impl Task {
    /// A task of which only the mass is known.
    #[must_use]
    pub const fn of(mass: LoadMass) -> Self {
        Self {
            mass,
            divisible: None,
            awkward: None,
            living: false,
            start: None,
            end: None,
            reach: None,
            twist: None,
            carry: None,
            coupling: None,
            two_hands: None,
            width: None,
            depth: None,
            repetitions: None,
            span: None,
            helpers: Vec::new(),
        }
    }

    /// What each helper manages alone, of those who count: a helper whose limit is not known does not.
    pub fn known_helpers(&self) -> impl Iterator<Item = Kilograms> + '_ {
        self.helpers.iter().filter_map(|helper| helper.own_limit)
    }
}
