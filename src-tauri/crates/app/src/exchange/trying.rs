//! A pairing that is not one yet.

use handoff::{Alias, Compared, Role, Scanned, Shown};
use record::Identity;

/// This device's offer, and how far it went with the other one.
pub(crate) struct PairingTry {
    /// The offer that is shown. It stays, so that a bad scan can be tried again.
    pub(crate) shown: Shown,
    /// The name on it.
    pub(crate) alias: Alias,
    /// The role on it.
    pub(crate) role: Role,
    /// How far it went.
    pub(crate) step: PairStep,
}

/// How far a pairing went.
pub(crate) enum PairStep {
    /// Nothing was scanned yet.
    Waiting,
    /// The other's offer was read.
    Scanned(Box<Scanned>),
    /// The check words are on the screen.
    Compared {
        /// The words, and whom they are with.
        compared: Box<Compared>,
        /// What must be said loudly, in words.
        warning: Option<String>,
        /// Pairings that this one takes the place of.
        replaces: Vec<Identity>,
    },
}
