//! Sealing under a fresh code.

use chacha20poly1305::XNonce;
use chacha20poly1305::aead::{Aead, Payload};

use super::{Code, NONCE_BYTES, SALT_BYTES, TAG_BYTES, bound, cipher};
use crate::parcel::{Header, Kind, Outgoing, SealError, frame_up, pack};
use crate::random::{NoRandomness, Random, make_bytes};

/// A parcel and the code that opens it. The code goes another way than the parcel, and is used once.
#[derive(Debug)]
pub struct SealedUnpaired {
    /// The bytes of the parcel.
    pub parcel: Vec<u8>,
    /// What opens it.
    pub code: Code,
}

/// Seals `what` under a code made for it. Its counter is carried along and proves nothing.
///
/// # Errors
/// [`SealError::TooLong`], [`SealError::Times`], [`SealError::Randomness`], [`SealError::Cipher`].
pub fn seal_unpaired(
    what: &Outgoing<'_>,
    random: &mut Random<'_>,
) -> Result<SealedUnpaired, SealError> {
    let without = |NoRandomness| SealError::Randomness;
    let content = pack(what)?.to_bytes();
    let code = Code::make(random).map_err(without)?;
    let salt: [u8; SALT_BYTES] = make_bytes(random).map_err(without)?;
    let nonce: [u8; NONCE_BYTES] = make_bytes(random).map_err(without)?;
    let length = SALT_BYTES + NONCE_BYTES + content.len() + TAG_BYTES;
    let purpose = what.purpose as u8;
    let header = Header::make(Kind::Unpaired, purpose, length).ok_or(SealError::TooLong)?;
    let sealed = cipher(&code, &salt)
        .map_err(|_| SealError::Cipher)?
        .encrypt(
            &XNonce::from(nonce),
            Payload {
                msg: &content,
                aad: &bound(&header, &salt),
            },
        )
        .map_err(|_| SealError::Cipher)?;
    let body = [&salt[..], &nonce, &sealed].concat();
    let parcel = frame_up(Kind::Unpaired, purpose, &body).ok_or(SealError::TooLong)?;
    Ok(SealedUnpaired { parcel, code })
}
