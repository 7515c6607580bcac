//! How heavy a thing is, or is thought to be.

use minicbor::{Decode, Encode};

/// Mass of a load in grams: known, or only guessed.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Encode, Decode)]
#[cbor(flat)]
pub enum Mass {
    /// Weighed, read from a label or otherwise known.
    #[n(1)]
    Known {
        /// Grams.
        #[n(0)]
        grams: u32,
    },
    /// Not tested yet: somewhere between two guesses.
    #[n(2)]
    Untested {
        /// Lower guess, grams; 0 when there is none.
        #[n(0)]
        low_grams: u32,
        /// Upper guess, grams: what it is judged by.
        #[n(1)]
        high_grams: u32,
    },
    /// Not known at all.
    #[n(3)]
    Unknown,
}
