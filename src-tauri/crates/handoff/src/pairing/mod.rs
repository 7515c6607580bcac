//! Pairing: two devices show each other an offer, both people compare six words, both agree.
//!
//! ```text
//! Shown --scan--> Scanned --compare--> Compared --agree, agree--> Pairing
//! ```
//! Each step is a type of its own. Only the last one can seal, so a pairing that nobody has confirmed
//! cannot send anything. All but the last live in memory only and are void five minutes after the offer
//! was first shown.

mod check_words;
mod kept;
mod offer;
mod steps;

pub use kept::{Pairing, PairingError};
pub use offer::{Offer, OfferError};
pub use steps::{Agreed, By, CardChange, Compared, PairError, Scanned, Shown, VALID_FOR_MS};
