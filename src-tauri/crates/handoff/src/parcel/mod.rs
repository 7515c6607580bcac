//! Parcels: what is sealed and handed over.
//!
//! Which one do I need? [`recognise`] says what bytes are without opening them; [`seal`] and [`open`]
//! work between paired devices; [`Seen`] judges whether what was opened is new.

mod content;
mod freshness;
mod header;
mod inflate;
mod open;
mod paired;
mod seal;

pub(crate) use content::{Content, ContentError, digest};
pub use content::{LONGEST_VALIDITY_MS, MOST_PAYLOAD};
pub use freshness::{Freshness, Seen, SeenError, derive_counter};
pub(crate) use header::{Header, frame_up};
pub use header::{Kind, Purpose, RecogniseError, Recognised, recognise};
pub use inflate::{InflateError, inflate};
pub use open::{OpenError, Opened, open};
pub(crate) use seal::pack;
pub use seal::{Outgoing, SealError, seal};
