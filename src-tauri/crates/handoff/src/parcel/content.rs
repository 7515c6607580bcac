//! What is inside a sealed parcel: number, times and the packed payload.

use minicbor::Encoder;
use sha2::{Digest, Sha256};
use zeroize::Zeroizing;

use super::inflate::{InflateError, deflate, inflate};
use crate::cbor::{Map, MapError};

/// Most bytes of a payload, before packing and after unpacking (house rule).
pub const MOST_PAYLOAD: usize = 256 * 1024;

/// Longest time a parcel may be valid, in milliseconds: 400 days (house rule: a printed plan until its
/// yearly review).
pub const LONGEST_VALIDITY_MS: i64 = 400 * 24 * 60 * 60 * 1000;

const COUNTER: u64 = 1;
const ISSUED: u64 = 2;
const EXPIRES: u64 = 3;
const PAYLOAD: u64 = 4;

/// The parts, in clear.
pub(crate) struct Content {
    pub(crate) counter: u64,
    pub(crate) issued_at_ms: i64,
    pub(crate) expires_at_ms: i64,
    pub(crate) payload: Zeroizing<Vec<u8>>,
}

/// Why what was opened cannot be read.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum ContentError {
    /// A field that must be understood and is not.
    Newer,
    /// More than [`MOST_PAYLOAD`] bytes.
    TooLong,
    /// Anything else.
    Malformed,
}

impl Content {
    /// Whether the times make sense: it ends after it begins, within [`LONGEST_VALIDITY_MS`].
    pub(crate) fn has_sound_times(issued_at_ms: i64, expires_at_ms: i64) -> bool {
        expires_at_ms
            .checked_sub(issued_at_ms)
            .is_some_and(|valid| (1..=LONGEST_VALIDITY_MS).contains(&valid))
    }

    /// The canonical bytes: a map of counter (1), issued (2), expires (3), packed payload (4).
    pub(crate) fn to_bytes(&self) -> Zeroizing<Vec<u8>> {
        let packed = deflate(&self.payload);
        // Room for all of it at once: growing would leave copies behind.
        let mut encoder = Encoder::new(Vec::with_capacity(packed.len() + 64));
        // Writing to a Vec cannot fail.
        let written = encoder.map(4).and_then(|e| {
            e.u64(COUNTER)?.u64(self.counter)?;
            e.u64(ISSUED)?.i64(self.issued_at_ms)?;
            e.u64(EXPIRES)?.i64(self.expires_at_ms)?;
            e.u64(PAYLOAD)?.bytes(&packed)?;
            Ok(())
        });
        debug_assert!(written.is_ok());
        Zeroizing::new(encoder.into_writer())
    }

    pub(crate) fn from_bytes(bytes: &[u8]) -> Result<Self, ContentError> {
        let map = Map::read(bytes, &[COUNTER, ISSUED, EXPIRES, PAYLOAD])?;
        let packed = map.bytes(PAYLOAD)?;
        let payload = inflate(packed, MOST_PAYLOAD)?;
        let content = Self {
            counter: map.unsigned(COUNTER)?,
            issued_at_ms: map.signed(ISSUED)?,
            expires_at_ms: map.signed(EXPIRES)?,
            payload,
        };
        if Self::has_sound_times(content.issued_at_ms, content.expires_at_ms) {
            Ok(content)
        } else {
            Err(ContentError::Malformed)
        }
    }
}

/// What one content is told apart from another by.
pub(crate) fn digest(bytes: &[u8]) -> [u8; 32] {
    Sha256::digest(bytes).into()
}

impl From<MapError> for ContentError {
    fn from(error: MapError) -> Self {
        match error {
            MapError::MustUnderstand => Self::Newer,
            MapError::NotCanonical | MapError::Field => Self::Malformed,
        }
    }
}

impl From<InflateError> for ContentError {
    fn from(error: InflateError) -> Self {
        match error {
            InflateError::TooLong => Self::TooLong,
            InflateError::Malformed => Self::Malformed,
        }
    }
}
