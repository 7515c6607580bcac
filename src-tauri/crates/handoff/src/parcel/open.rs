//! Opening what a paired device sealed.

use ed25519_dalek::Signature;
use hpke::{Deserializable, OpModeR, setup_receiver};
use zeroize::Zeroizing;

use super::content::{Content, ContentError, digest};
use super::header::{Header, Kind, Purpose, RecogniseError};
use super::paired::{Aead, Bound, ENC_BYTES, Kdf, Kem, ROUTE_BYTES, SIGNATURE_BYTES, info, route};
use crate::card::{KEY_ID_BYTES, KeyId};
use crate::device_keys::DeviceKeys;
use crate::pairing::Pairing;

/// A parcel that is whole, for this device, from a paired device and in time. Whether it is new is for
/// [`Seen`](super::Seen) to say.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Opened {
    /// What it carries.
    pub purpose: Purpose,
    /// The device that sealed it.
    pub sender: KeyId,
    /// The pairing it came through.
    pub pairing_id: [u8; 16],
    /// Its number.
    pub counter: u64,
    /// When it was sealed, by the sender's clock, in milliseconds since 1970.
    pub issued_at_ms: i64,
    /// When it stops being accepted.
    pub expires_at_ms: i64,
    /// What this content is told apart from another by.
    pub digest: [u8; 32],
    /// The bytes that were handed over.
    pub payload: Zeroizing<Vec<u8>>,
}

/// Why a parcel was not opened. Nothing of it was used.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
#[non_exhaustive]
pub enum OpenError {
    /// Not something this app made.
    #[error("not one of ours")]
    Foreign,
    /// Made by a newer version; this one must be brought up to date to read it.
    #[error("made by a newer version")]
    Newer,
    /// Ends too early.
    #[error("ends too early")]
    Truncated,
    /// Changed on the way.
    #[error("damaged")]
    Damaged,
    /// Ours, but not a parcel between paired devices: an offer to pair, or one that a code opens.
    #[error("not a parcel between paired devices")]
    OtherKind,
    /// Sealed to another device.
    #[error("for another device")]
    WrongRecipient,
    /// For this device, through a pairing that it does not have (any more).
    #[error("from a device that is not paired")]
    UnknownSender,
    /// Whole by its checksum, and yet not what the sender sealed: tampered with, or forged.
    #[error("not authentic")]
    NotAuthentic,
    /// From the sender, and past its time.
    #[error("expired")]
    Expired,
    /// From the sender, and longer than this app takes.
    #[error("too long")]
    TooLong,
    /// From the sender, and not readable: a fault in the sender's app.
    #[error("not readable")]
    Unreadable,
}

/// Opens a parcel that one of `pairings` sealed to `keys`. `now_ms` is the time since 1970 in
/// milliseconds.
///
/// # Errors
/// See [`OpenError`].
pub fn open(
    bytes: &[u8],
    keys: &DeviceKeys,
    pairings: &[Pairing],
    now_ms: i64,
) -> Result<Opened, OpenError> {
    let (header, body) = Header::read(bytes)?;
    if header.kind != Kind::Paired {
        return Err(OpenError::OtherKind);
    }
    let purpose = header.purpose()?;
    let parts = Parts::read(body).ok_or(OpenError::Damaged)?;
    let own_keys = keys.public_keys();
    if KeyId::of(&own_keys) != parts.recipient {
        return Err(OpenError::WrongRecipient);
    }
    let pairing = pairings
        .iter()
        .find(|pairing| {
            pairing.mine() == parts.recipient && route(pairing.id(), parts.enc) == parts.route
        })
        .ok_or(OpenError::UnknownSender)?;
    let bound = Bound {
        header: &header,
        route: parts.route,
        recipient: parts.recipient,
        sender_keys: pairing.theirs().keys(),
        recipient_keys: own_keys,
        pairing_id: *pairing.id(),
    };
    let inside = decrypt(&parts, keys, &bound)?;
    let (signature, content) = inside
        .split_first_chunk::<SIGNATURE_BYTES>()
        .ok_or(OpenError::NotAuthentic)?;
    pairing
        .theirs()
        .signing_key()
        .verify_strict(
            &bound.to_be_signed(content),
            &Signature::from_bytes(signature),
        )
        .map_err(|_| OpenError::NotAuthentic)?;
    let digest = digest(content);
    let content = Content::from_bytes(content)?;
    if now_ms >= content.expires_at_ms {
        return Err(OpenError::Expired);
    }
    Ok(Opened {
        purpose,
        sender: pairing.theirs().key_id(),
        pairing_id: *pairing.id(),
        counter: content.counter,
        issued_at_ms: content.issued_at_ms,
        expires_at_ms: content.expires_at_ms,
        digest,
        payload: content.payload,
    })
}

fn decrypt(
    parts: &Parts<'_>,
    keys: &DeviceKeys,
    bound: &Bound<'_>,
) -> Result<Zeroizing<Vec<u8>>, OpenError> {
    let opening = Zeroizing::new(keys.opening().to_bytes());
    let secret = <Kem as hpke::Kem>::PrivateKey::from_bytes(opening.as_slice())
        .map_err(|_| OpenError::NotAuthentic)?;
    let enc = <Kem as hpke::Kem>::EncappedKey::from_bytes(parts.enc)
        .map_err(|_| OpenError::NotAuthentic)?;
    let mut context = setup_receiver::<Aead, Kdf, Kem>(
        &OpModeR::Base,
        &secret,
        &enc,
        &info(bound.header, parts.recipient),
    )
    .map_err(|_| OpenError::NotAuthentic)?;
    context
        .open(parts.sealed, &bound.associated_data())
        .map(Zeroizing::new)
        .map_err(|_| OpenError::NotAuthentic)
}

/// The clear parts of the body.
struct Parts<'b> {
    recipient: KeyId,
    route: [u8; ROUTE_BYTES],
    enc: &'b [u8; ENC_BYTES],
    sealed: &'b [u8],
}

impl<'b> Parts<'b> {
    fn read(body: &'b [u8]) -> Option<Self> {
        let (recipient, rest) = body.split_first_chunk::<KEY_ID_BYTES>()?;
        let (route, rest) = rest.split_first_chunk()?;
        let (enc, sealed) = rest.split_first_chunk()?;
        Some(Self {
            recipient: KeyId(*recipient),
            route: *route,
            enc,
            sealed,
        })
    }
}

impl From<RecogniseError> for OpenError {
    fn from(error: RecogniseError) -> Self {
        match error {
            RecogniseError::Foreign => Self::Foreign,
            RecogniseError::Newer => Self::Newer,
            RecogniseError::Truncated => Self::Truncated,
            RecogniseError::Damaged => Self::Damaged,
        }
    }
}

impl From<ContentError> for OpenError {
    fn from(error: ContentError) -> Self {
        match error {
            ContentError::Newer => Self::Newer,
            ContentError::TooLong => Self::TooLong,
            ContentError::Malformed => Self::Unreadable,
        }
    }
}
