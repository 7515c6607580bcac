//! What a hand-over holds in memory while it goes on. Nothing of it is kept: it goes when the app locks.

mod inbox;
mod shows;
mod trying;

use crate::use_cases::departure::Noted;
use handoff::Collector;

pub(crate) use inbox::{Carried, Inbox, Parcel, Proof};
pub(crate) use shows::{Show, Shows};
pub(crate) use trying::{PairStep, PairingTry};

/// Everything that is under way.
#[derive(Default)]
pub(crate) struct Exchange {
    /// The scan screen, while it is open.
    pub(crate) scan: Option<Scan>,
    /// The pairing being tried.
    pub(crate) pairing: Option<PairingTry>,
    /// A parcel that came in and was neither accepted nor declined.
    pub(crate) inbox: Option<Inbox>,
    /// What is being shown.
    pub(crate) shows: Shows,
    /// The entry of the list of what left that was written last for a file.
    pub(crate) noted: Option<Noted>,
}

/// What the scan screen is open for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Wanted {
    /// Another device's offer to pair.
    Pair,
    /// A parcel.
    Parcel,
}

/// The screen to go on with.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Next {
    /// Compare check words.
    Compare,
    /// Type the code.
    Code,
    /// Decide on a parcel.
    Accept,
}

/// An open scan screen.
pub(crate) struct Scan {
    /// What for.
    pub(crate) wanted: Wanted,
    /// Symbols that are in.
    pub(crate) collector: Collector,
    /// Set once something whole was taken: later pictures change nothing.
    pub(crate) whole: Option<Next>,
}

impl Scan {
    /// A screen that was just opened.
    #[must_use]
    pub(crate) fn open(wanted: Wanted) -> Self {
        Self {
            wanted,
            collector: Collector::new(),
            whole: None,
        }
    }
}

impl Wanted {
    /// What the screens call it.
    #[must_use]
    pub(crate) fn from_id(id: &str) -> Option<Self> {
        match id {
            "pair" => Some(Self::Pair),
            "parcel" => Some(Self::Parcel),
            _ => None,
        }
    }
}

impl Next {
    /// What the screens call it.
    #[must_use]
    pub(crate) const fn id(self) -> &'static str {
        match self {
            Self::Compare => "compare",
            Self::Code => "code",
            Self::Accept => "accept",
        }
    }
}
