//! The frame around every record: kind, layout version, keys that must be understood, body.
//!
//! `[kind, major, must, body]`. `must` is a list of paths; a path is a list of map keys from the body
//! inwards (lists are stepped through without a key of their own). A reader that does not know a path
//! in `must` refuses the record; unknown keys outside it are skipped.

use minicbor::{Decode, Decoder, Encode, Encoder};

use crate::{RecordError, canonical};

/// Layout version written and the newest one read.
pub const MAJOR: u32 = 1;

/// Longest record read or written, in bytes (house rule: far above the largest real lift, about 4 KiB).
pub const MAX_BYTES: usize = 64 * 1024;

/// A kind of record with frozen bytes.
pub trait Record: Sized + Encode<()> + for<'b> Decode<'b, ()> + Keyed {
    /// Number of this kind, fixed for ever.
    const KIND: u32;

    /// The canonical bytes of this record.
    ///
    /// # Errors
    /// [`RecordError::TooLong`] over [`MAX_BYTES`].
    fn to_bytes(&self) -> Result<Vec<u8>, RecordError> {
        let mut encoder = Encoder::new(Vec::new());
        let written = encoder
            .array(4)
            .and_then(|e| e.u32(Self::KIND))
            .and_then(|e| e.u32(MAJOR))
            .and_then(|e| e.array(0))
            .and_then(|e| e.encode(self));
        if written.is_err() {
            return Err(RecordError::NotThisShape);
        }
        let bytes = encoder.into_writer();
        if bytes.len() > MAX_BYTES {
            Err(RecordError::TooLong)
        } else {
            Ok(bytes)
        }
    }

    /// Reads a record of this kind.
    ///
    /// # Errors
    /// Anything that is not the whole, canonical, understood record: see [`RecordError`].
    fn from_bytes(bytes: &[u8]) -> Result<Self, RecordError> {
        read(bytes, Self::KIND, Self::knows)
    }
}

/// Reads a body out of the frame of a record of this kind: all of it, or, for a type that reads fewer keys, a part.
///
/// # Errors
/// See [`RecordError`].
pub(crate) fn read<T: for<'b> Decode<'b, ()>>(
    bytes: &[u8],
    wanted: u32,
    knows: fn(&[u32]) -> bool,
) -> Result<T, RecordError> {
    if bytes.len() > MAX_BYTES {
        return Err(RecordError::TooLong);
    }
    canonical::check(bytes)?;
    let mut decoder = Decoder::new(bytes);
    let parts = decoder.array().map_err(refuse)?;
    let found = decoder.u32().map_err(refuse)?;
    let major = decoder.u32().map_err(refuse)?;
    if major > MAJOR {
        return Err(RecordError::Newer { major });
    }
    if major != MAJOR || parts != Some(4) {
        return Err(RecordError::NotThisShape);
    }
    if found != wanted {
        return Err(RecordError::OtherKind { wanted, found });
    }
    let must: Vec<Vec<u32>> = decoder.decode().map_err(refuse)?;
    if must.iter().all(|path| knows(path)) {
        decoder.decode().map_err(refuse)
    } else {
        Err(RecordError::MustUnderstand)
    }
}

/// Which keys a map type knows.
pub trait Keyed {
    /// Whether every step of `path` is a key this version reads.
    fn knows(path: &[u32]) -> bool;
}

fn refuse(error: minicbor::decode::Error) -> RecordError {
    if error.is_unknown_variant() {
        RecordError::CodeUnknown
    } else {
        RecordError::NotThisShape
    }
}
