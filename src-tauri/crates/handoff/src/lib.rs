//! The hand-off: two devices pair, and sealed parcels pass between their screens and cameras.
//!
//! Which one do I need? [`DeviceKeys`] and [`Card`] are who a device is; [`Shown`] starts a pairing and
//! ends in a [`Pairing`]; [`seal`] and [`open`] work with one; [`seal_unpaired`] and [`open_unpaired`]
//! work without one; [`lay_out`] turns a parcel into QR symbols and [`Collector`] takes their texts back
//! to a parcel; [`read_grey`] and [`read_photo`] find a symbol in a picture. `docs/formats/handoff.md`
//! gives every byte.
//!
//! This crate sees bytes only: what a parcel carries, where pairings are kept and what is said to
//! people is for others. It has no clock and no randomness of its own: both come in from the caller.
//! What it reads was made by strangers, so everything is bounded and checked before use.

#![forbid(unsafe_code)]

pub mod base45;
mod card;
mod cbor;
mod device_keys;
mod frames;
mod guard;
mod pairing;
mod parcel;
mod random;
mod reading;
mod slow_hash;
mod symbol;
mod unpaired;
mod words;

pub use card::{Alias, AliasError, Card, CardError, KeyId, Role};
pub use device_keys::{DeviceKeys, KeysError};
pub use frames::{
    Collector, Density, FrameError, LayOutError, MOST_BYTES, Progress, Sequence, Showing, Taken,
    lay_out,
};
pub use pairing::{
    Agreed, By, CardChange, Compared, Offer, OfferError, PairError, Pairing, PairingError, Scanned,
    Shown, VALID_FOR_MS,
};
pub use parcel::{
    Freshness, InflateError, Kind, LONGEST_VALIDITY_MS, MOST_PAYLOAD, OpenError, Opened, Outgoing,
    Purpose, RecogniseError, Recognised, SealError, Seen, SeenError, derive_counter, inflate, open,
    recognise, seal,
};
pub use random::{NoRandomness, Random};
pub use reading::{ReadingError, read_grey, read_photo};
pub use symbol::{DrawError, Grey, QUIET_ZONE, Symbol};
pub use unpaired::{
    Code, CodeError, OpenUnpairedError, OpenedUnpaired, SealedUnpaired, open_unpaired,
    seal_unpaired,
};
pub use words::{ENGLISH, WordList};
