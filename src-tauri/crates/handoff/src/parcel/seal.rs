//! Sealing to a paired device: pack, sign, encrypt.

use ed25519_dalek::Signer;
use hpke::{Deserializable, OpModeS, Serializable, setup_sender_with_rng};
use zeroize::Zeroizing;

use super::content::{Content, MOST_PAYLOAD};
use super::header::{Header, Kind, Purpose, frame_up};
use super::paired::{Aead, Bound, CLEAR_BYTES, Kdf, Kem, SIGNATURE_BYTES, TAG_BYTES, info, route};
use crate::card::KeyId;
use crate::device_keys::DeviceKeys;
use crate::pairing::Pairing;
use crate::random::{Random, Remembering};

/// What is to be handed over.
#[derive(Debug, Clone, Copy)]
pub struct Outgoing<'p> {
    /// What it carries.
    pub purpose: Purpose,
    /// Its number, above every number sealed so far to this pairing: see
    /// [`derive_counter`](super::derive_counter).
    pub counter: u64,
    /// When it is sealed, in milliseconds since 1970.
    pub issued_at_ms: i64,
    /// When it stops being accepted; after `issued_at_ms`, by at most
    /// [`LONGEST_VALIDITY_MS`](super::LONGEST_VALIDITY_MS).
    pub expires_at_ms: i64,
    /// The bytes, at most [`MOST_PAYLOAD`](super::MOST_PAYLOAD).
    pub payload: &'p [u8],
}

/// Why nothing was sealed.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
#[non_exhaustive]
pub enum SealError {
    /// The pairing was made with other keys than these, before a new install. Pair again.
    #[error("the pairing belongs to other keys")]
    OtherKeys,
    /// The payload is over the bound.
    #[error("too long")]
    TooLong,
    /// It would expire before it begins, or too late.
    #[error("times out of bounds")]
    Times,
    /// No random numbers.
    #[error("no random numbers")]
    Randomness,
    /// The cipher refused.
    #[error("the cipher refused")]
    Cipher,
}

/// Seals `what` to the other device of `pairing`.
///
/// # Errors
/// See [`SealError`].
pub fn seal(
    pairing: &Pairing,
    keys: &DeviceKeys,
    what: &Outgoing<'_>,
    random: &mut Random<'_>,
) -> Result<Vec<u8>, SealError> {
    if KeyId::of(&keys.public_keys()) != pairing.mine() {
        return Err(SealError::OtherKeys);
    }
    let content = pack(what)?.to_bytes();
    let sealed = SIGNATURE_BYTES + content.len() + TAG_BYTES;
    let header = Header::make(Kind::Paired, what.purpose as u8, CLEAR_BYTES + sealed)
        .ok_or(SealError::TooLong)?;
    let recipient = pairing.theirs().key_id();
    let recipient_key = <Kem as hpke::Kem>::PublicKey::from_bytes(pairing.theirs().sealing_key())
        .map_err(|_| SealError::Cipher)?;
    let mut chance = Remembering::new(random);
    let (enc, mut context) = setup_sender_with_rng::<Aead, Kdf, Kem>(
        &OpModeS::Base,
        &recipient_key,
        &info(&header, recipient),
        &mut chance,
    )
    .map_err(|_| SealError::Cipher)?;
    if chance.failed() {
        return Err(SealError::Randomness);
    }
    let enc = enc.to_bytes();
    let bound = Bound {
        header: &header,
        route: route(pairing.id(), &enc),
        recipient,
        sender_keys: keys.public_keys(),
        recipient_keys: pairing.theirs().keys(),
        pairing_id: *pairing.id(),
    };
    let signature = keys
        .signing()
        .sign(&bound.to_be_signed(&content))
        .to_bytes();
    let inside = Zeroizing::new([&signature[..], &content].concat());
    let sealed = context
        .seal(&inside, &bound.associated_data())
        .map_err(|_| SealError::Cipher)?;
    let body = [&recipient.0[..], &bound.route, &enc, &sealed].concat();
    frame_up(Kind::Paired, what.purpose as u8, &body).ok_or(SealError::TooLong)
}

/// The content to be sealed, with its bounds checked.
pub(crate) fn pack(what: &Outgoing<'_>) -> Result<Content, SealError> {
    if what.payload.len() > MOST_PAYLOAD {
        return Err(SealError::TooLong);
    }
    if !Content::has_sound_times(what.issued_at_ms, what.expires_at_ms) {
        return Err(SealError::Times);
    }
    Ok(Content {
        counter: what.counter,
        issued_at_ms: what.issued_at_ms,
        expires_at_ms: what.expires_at_ms,
        payload: Zeroizing::new(what.payload.to_vec()),
    })
}
