//! What the user has chosen once.

use minicbor::{Decode, Encode};

use crate::codes::codes;
use crate::frame::{Keyed, Record};

/// Choices that set the screens, not the advice.
#[derive(Debug, Clone, PartialEq, Eq, Encode, Decode)]
#[cbor(map)]
pub struct Settings {
    /// What the app is mostly used for: sets the home screen.
    #[n(1)]
    pub used_for: UsedFor,
    /// Unit that weights are shown in.
    #[n(2)]
    pub units: Units,
}

impl Record for Settings {
    const KIND: u32 = 4;
}

impl Keyed for Settings {
    fn knows(path: &[u32]) -> bool {
        matches!(path, [1..=2])
    }
}

codes! {
    /// What the app is mostly used for.
    UsedFor {
        /// Lifting for oneself.
        Lift = 1 "lift",
        /// Helping others move.
        Help = 2 "help",
        /// Treating people.
        Treat = 3 "treat",
    }
}

codes! {
    /// Unit that weights are shown in.
    Units {
        /// Kilograms.
        Kg = 1 "kg",
        /// Pounds.
        Lb = 2 "lb",
    }
}
