//! What sealing and opening between paired devices have in common: what is bound in, and the route.
//!
//! Body of a paired parcel: `recipient key id 8 | route 8 | encapsulated key 32 | sealed`.
//! Inside the seal: `signature 64 | content`.

use hpke::aead::ChaCha20Poly1305;
use hpke::kdf::HkdfSha256;
use hpke::kem::X25519HkdfSha256;
use sha2::{Digest, Sha256};

use super::header::Header;
use crate::card::{KEY_ID_BYTES, KeyId};

/// The suite of RFC 9180: DHKEM(X25519, HKDF-SHA256), HKDF-SHA256, ChaCha20-Poly1305.
pub(crate) type Aead = ChaCha20Poly1305;
/// See [`Aead`].
pub(crate) type Kdf = HkdfSha256;
/// See [`Aead`].
pub(crate) type Kem = X25519HkdfSha256;

/// Bytes of the encapsulated key.
pub(crate) const ENC_BYTES: usize = 32;
/// Bytes of the route.
pub(crate) const ROUTE_BYTES: usize = 8;
/// Bytes of an authentication tag.
pub(crate) const TAG_BYTES: usize = 16;
/// Bytes of a signature.
pub(crate) const SIGNATURE_BYTES: usize = 64;
/// Bytes of the body before what is sealed.
pub(crate) const CLEAR_BYTES: usize = KEY_ID_BYTES + ROUTE_BYTES + ENC_BYTES;

const INFO: &[u8] = b"heftwell handoff 1 seal";
const SIGNED: &[u8] = b"heftwell handoff 1 signature";
const ROUTE: &[u8] = b"heftwell handoff 1 route";

/// HPKE's `info`: domain, clear head, recipient.
pub(crate) fn info(header: &Header, recipient: KeyId) -> Vec<u8> {
    [INFO, &header.bytes, &recipient.0].concat()
}

/// Which pairing a parcel belongs to, in a form that only its two devices can tell. A photo of the screen
/// shows for whom a parcel is, not from whom.
pub(crate) fn route(pairing_id: &[u8; 16], enc: &[u8]) -> [u8; ROUTE_BYTES] {
    let digest = Sha256::new()
        .chain_update(ROUTE)
        .chain_update(pairing_id)
        .chain_update(enc)
        .finalize();
    let mut route = [0; ROUTE_BYTES];
    route
        .iter_mut()
        .zip(digest)
        .for_each(|(to, from)| *to = from);
    route
}

/// What the seal binds in beside the content: clear head with purpose, recipient, route, both parties'
/// whole public keys, pairing.
pub(crate) struct Bound<'b> {
    pub(crate) header: &'b Header,
    pub(crate) route: [u8; ROUTE_BYTES],
    pub(crate) recipient: KeyId,
    pub(crate) sender_keys: [u8; 64],
    pub(crate) recipient_keys: [u8; 64],
    pub(crate) pairing_id: [u8; 16],
}

impl Bound<'_> {
    /// HPKE's associated data.
    pub(crate) fn associated_data(&self) -> Vec<u8> {
        [
            &self.header.bytes[..],
            &self.recipient.0,
            &self.route,
            &self.sender_keys,
            &self.recipient_keys,
            &self.pairing_id,
        ]
        .concat()
    }

    /// What is signed: domain, all that is bound in, content.
    pub(crate) fn to_be_signed(&self, content: &[u8]) -> zeroize::Zeroizing<Vec<u8>> {
        zeroize::Zeroizing::new([SIGNED, &self.associated_data(), content].concat())
    }
}
