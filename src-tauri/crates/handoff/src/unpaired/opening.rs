//! Opening with a code that was told.

use chacha20poly1305::XNonce;
use chacha20poly1305::aead::{Aead, Payload};
use zeroize::Zeroizing;

use super::{Code, NONCE_BYTES, SALT_BYTES, bound, cipher};
use crate::parcel::{Content, ContentError, Header, Kind, Purpose, RecogniseError, digest};

/// A parcel that a code opened. **Who sealed it is not verified**: anybody can make a code.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct OpenedUnpaired {
    /// What it carries.
    pub purpose: Purpose,
    /// When it was sealed, by the sender's clock, in milliseconds since 1970.
    pub issued_at_ms: i64,
    /// When it stops being accepted.
    pub expires_at_ms: i64,
    /// What this content is told apart from another by: the same parcel twice has the same.
    pub digest: [u8; 32],
    /// The bytes that were handed over.
    pub payload: Zeroizing<Vec<u8>>,
}

/// Why a parcel was not opened. Nothing of it was used.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
#[non_exhaustive]
pub enum OpenUnpairedError {
    /// Not something this app made.
    #[error("not one of ours")]
    Foreign,
    /// Made by a newer version.
    #[error("made by a newer version")]
    Newer,
    /// Ends too early.
    #[error("ends too early")]
    Truncated,
    /// Changed on the way.
    #[error("damaged")]
    Damaged,
    /// Ours, but not one that a code opens.
    #[error("not a parcel that a code opens")]
    OtherKind,
    /// Not this parcel's code; or the parcel was tampered with, which cannot be told apart.
    #[error("not this parcel's code")]
    WrongCode,
    /// Past its time.
    #[error("expired")]
    Expired,
    /// Longer than this app takes.
    #[error("too long")]
    TooLong,
    /// Opened, and not readable.
    #[error("not readable")]
    Unreadable,
    /// 64 MiB to try the code could not be had.
    #[error("not enough memory")]
    Memory,
}

/// Opens a parcel with the code that belongs to it. Takes a while: 64 MiB and three passes of Argon2id.
///
/// # Errors
/// See [`OpenUnpairedError`].
pub fn open_unpaired(
    bytes: &[u8],
    code: &Code,
    now_ms: i64,
) -> Result<OpenedUnpaired, OpenUnpairedError> {
    let (header, body) = Header::read(bytes)?;
    if header.kind != Kind::Unpaired {
        return Err(OpenUnpairedError::OtherKind);
    }
    let purpose = header.purpose()?;
    let damaged = OpenUnpairedError::Damaged;
    let (salt, rest) = body.split_first_chunk::<SALT_BYTES>().ok_or(damaged)?;
    let (nonce, sealed) = rest.split_first_chunk::<NONCE_BYTES>().ok_or(damaged)?;
    let content = cipher(code, salt)
        .map_err(|_| OpenUnpairedError::Memory)?
        .decrypt(
            &XNonce::from(*nonce),
            Payload {
                msg: sealed,
                aad: &bound(&header, salt),
            },
        )
        .map(Zeroizing::new)
        .map_err(|_| OpenUnpairedError::WrongCode)?;
    let digest = digest(&content);
    let content = Content::from_bytes(&content)?;
    if now_ms >= content.expires_at_ms {
        return Err(OpenUnpairedError::Expired);
    }
    Ok(OpenedUnpaired {
        purpose,
        issued_at_ms: content.issued_at_ms,
        expires_at_ms: content.expires_at_ms,
        digest,
        payload: content.payload,
    })
}

impl From<RecogniseError> for OpenUnpairedError {
    fn from(error: RecogniseError) -> Self {
        match error {
            RecogniseError::Foreign => Self::Foreign,
            RecogniseError::Newer => Self::Newer,
            RecogniseError::Truncated => Self::Truncated,
            RecogniseError::Damaged => Self::Damaged,
        }
    }
}

impl From<ContentError> for OpenUnpairedError {
    fn from(error: ContentError) -> Self {
        match error {
            ContentError::Newer => Self::Newer,
            ContentError::TooLong => Self::TooLong,
            ContentError::Malformed => Self::Unreadable,
        }
    }
}
