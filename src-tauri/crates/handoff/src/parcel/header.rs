//! The clear head of everything that is handed over, and the checksum at its end.
//!
//! `magic 4 | major 1 | kind 1 | purpose 1 | length 3 | body | CRC-32 4`. Magic, major and the place of
//! the checksum are the same in every version, so damage is never taken for a newer version. The
//! checksum tells damage from tampering; it proves nothing.

use crate::card::{KEY_ID_BYTES, KeyId};

const MAGIC: &[u8; 4] = b"HWHO";
/// Format major version written, and the newest one read.
const MAJOR: u8 = 1;
/// Bytes before the body.
const HEADER_BYTES: usize = 10;
const CHECKSUM_BYTES: usize = 4;

/// What the bytes are.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[repr(u8)]
pub enum Kind {
    /// An offer to pair.
    Offer = 1,
    /// A parcel sealed to a paired device.
    Paired = 2,
    /// A parcel sealed under a one-time code.
    Unpaired = 3,
}

/// What a parcel carries. Bound in, so that one cannot be passed off as the other.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
#[repr(u8)]
pub enum Purpose {
    /// A plan for a person who lifts.
    Plan = 1,
    /// A history for whoever made the plan.
    History = 2,
    /// A plan for helping somebody else move.
    CarePlan = 3,
}

/// What bytes turned out to be, before anything is opened.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Recognised {
    /// An offer to pair.
    Offer,
    /// A parcel sealed to the device with this key id.
    Paired {
        /// What it carries.
        purpose: Purpose,
        /// Whom it is for.
        recipient: KeyId,
    },
    /// A parcel that a one-time code opens.
    Unpaired {
        /// What it carries.
        purpose: Purpose,
    },
}

/// Why bytes are not something that can be opened here.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
#[non_exhaustive]
pub enum RecogniseError {
    /// Not something this app made.
    #[error("not one of ours")]
    Foreign,
    /// Made by a newer version; this one must be brought up to date to read it.
    #[error("made by a newer version")]
    Newer,
    /// Ends too early.
    #[error("ends too early")]
    Truncated,
    /// Changed on the way, or bytes follow after the end.
    #[error("damaged")]
    Damaged,
}

/// The clear head.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Header {
    pub(crate) kind: Kind,
    pub(crate) purpose: u8,
    pub(crate) bytes: [u8; HEADER_BYTES],
}

impl Purpose {
    /// The purpose with this code.
    #[must_use]
    pub fn from_code(code: u8) -> Option<Self> {
        [Self::Plan, Self::History, Self::CarePlan]
            .into_iter()
            .find(|purpose| *purpose as u8 == code)
    }
}

impl Header {
    /// A head for a body of `body` bytes.
    pub(crate) fn make(kind: Kind, purpose: u8, body: usize) -> Option<Self> {
        let length = u32::try_from(HEADER_BYTES + body + CHECKSUM_BYTES).ok()?;
        let [0, high, middle, low] = length.to_be_bytes() else {
            return None;
        };
        let [m, a, g, i] = *MAGIC;
        Some(Self {
            kind,
            purpose,
            bytes: [m, a, g, i, MAJOR, kind as u8, purpose, high, middle, low],
        })
    }

    /// Checks head and checksum, and gives the body in between.
    pub(crate) fn read(bytes: &[u8]) -> Result<(Self, &[u8]), RecogniseError> {
        if bytes.len() < MAGIC.len() && !bytes.is_empty() && MAGIC.starts_with(bytes) {
            return Err(RecogniseError::Truncated);
        }
        if !bytes.starts_with(MAGIC) {
            return Err(RecogniseError::Foreign);
        }
        let (head, _) = bytes
            .split_first_chunk::<HEADER_BYTES>()
            .ok_or(RecogniseError::Truncated)?;
        let [_, _, _, _, major, kind, purpose, high, middle, low] = *head;
        let (covered, checksum) = bytes
            .split_last_chunk::<CHECKSUM_BYTES>()
            .ok_or(RecogniseError::Truncated)?;
        if crc32fast::hash(covered).to_be_bytes() != *checksum {
            let length = u32::from_be_bytes([0, high, middle, low]);
            let is_short = major == MAJOR && usize::try_from(length).is_ok_and(|l| bytes.len() < l);
            return Err(if is_short {
                RecogniseError::Truncated
            } else {
                RecogniseError::Damaged
            });
        }
        let kind = match (major, kind) {
            (MAJOR, 1) => Kind::Offer,
            (MAJOR, 2) => Kind::Paired,
            (MAJOR, 3) => Kind::Unpaired,
            (0, _) => return Err(RecogniseError::Damaged),
            _ => return Err(RecogniseError::Newer),
        };
        let body = covered
            .get(HEADER_BYTES..)
            .ok_or(RecogniseError::Truncated)?;
        let made = Self::make(kind, purpose, body.len()).ok_or(RecogniseError::Damaged)?;
        if made.bytes == *head {
            Ok((made, body))
        } else {
            Err(RecogniseError::Damaged)
        }
    }

    /// What the parcel carries.
    pub(crate) fn purpose(&self) -> Result<Purpose, RecogniseError> {
        Purpose::from_code(self.purpose).ok_or(RecogniseError::Newer)
    }
}

/// Head, body and checksum together; `None` if the length does not fit in three bytes.
pub(crate) fn frame_up(kind: Kind, purpose: u8, body: &[u8]) -> Option<Vec<u8>> {
    let header = Header::make(kind, purpose, body.len())?;
    let mut bytes = [&header.bytes[..], body].concat();
    bytes.extend(crc32fast::hash(&bytes).to_be_bytes());
    Some(bytes)
}

/// Says what `bytes` are, without keys.
///
/// # Errors
/// See [`RecogniseError`].
pub fn recognise(bytes: &[u8]) -> Result<Recognised, RecogniseError> {
    let (header, body) = Header::read(bytes)?;
    match header.kind {
        Kind::Offer if header.purpose == 0 => Ok(Recognised::Offer),
        Kind::Offer => Err(RecogniseError::Newer),
        Kind::Paired => {
            let recipient = body
                .first_chunk::<KEY_ID_BYTES>()
                .ok_or(RecogniseError::Damaged)?;
            Ok(Recognised::Paired {
                purpose: header.purpose()?,
                recipient: KeyId(*recipient),
            })
        }
        Kind::Unpaired => Ok(Recognised::Unpaired {
            purpose: header.purpose()?,
        }),
    }
}
