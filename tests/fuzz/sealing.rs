//! Seals any content as a paired device would, by hand, from docs/formats/handoff.md: between the two devices of
//! `tests/vectors/handoff/frozen/paired_by_an_independent_sealer.toml`, as a care plan.

use std::convert::Infallible;

use ed25519_dalek::{Signer, SigningKey};
use hpke::rand_core::{TryCryptoRng, TryRng};
use hpke::{Deserializable, Kem, OpModeS, Serializable, setup_sender_with_rng};
use sha2::{Digest, Sha256};

type X25519 = hpke::kem::X25519HkdfSha256;

const PAIRING_ID: [u8; 16] = [0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15];

/// The parcel.
pub(crate) fn seal(content: &[u8]) -> Vec<u8> {
    let sender = public_keys(1);
    let to = public_keys(2);
    let id = &Sha256::digest(to)[..8];
    let total = (14 + 48 + 64 + content.len() + 16) as u32;
    let head = [b"HWHO\x01\x02\x03".as_slice(), &total.to_be_bytes()[1..]].concat();
    let key = <X25519 as Kem>::PublicKey::from_bytes(&to[..32]).expect("a key");
    let info = [b"heftwell handoff 1 seal".as_slice(), &head, id].concat();
    let (enc, mut context) = setup_sender_with_rng::<
        hpke::aead::ChaCha20Poly1305,
        hpke::kdf::HkdfSha256,
        X25519,
    >(&OpModeS::Base, &key, &info, &mut Nines)
    .expect("a sender");
    let enc = enc.to_bytes();
    let route = Sha256::new()
        .chain_update(b"heftwell handoff 1 route")
        .chain_update(PAIRING_ID)
        .chain_update(enc)
        .finalize();
    let bound = [&head, id, &route[..8], &sender, &to, &PAIRING_ID].concat();
    let signed = [b"heftwell handoff 1 signature".as_slice(), &bound, content].concat();
    let signature = SigningKey::from_bytes(&[1; 32]).sign(&signed).to_bytes();
    let inside = [&signature[..], content].concat();
    let sealed = context.seal(&inside, &bound).expect("sealed");
    let mut parcel = [&head, id, &route[..8], &enc[..], &sealed].concat();
    parcel.extend(crc32fast::hash(&parcel).to_be_bytes());
    parcel
}

/// Both public keys of a device whose secrets are 64 times this byte.
fn public_keys(secret: u8) -> [u8; 64] {
    let opening = <X25519 as Kem>::PrivateKey::from_bytes(&[secret; 32]).expect("a key");
    let sealing = <X25519 as Kem>::sk_to_pk(&opening).to_bytes();
    let signing = SigningKey::from_bytes(&[secret; 32])
        .verifying_key()
        .to_bytes();
    let mut both = [0; 64];
    both[..32].copy_from_slice(&sealing);
    both[32..].copy_from_slice(&signing);
    both
}

/// The same bytes each time: a run can be repeated.
struct Nines;

impl TryRng for Nines {
    type Error = Infallible;

    fn try_next_u32(&mut self) -> Result<u32, Infallible> {
        Ok(0x0909_0909)
    }

    fn try_next_u64(&mut self) -> Result<u64, Infallible> {
        Ok(0x0909_0909_0909_0909)
    }

    fn try_fill_bytes(&mut self, bytes: &mut [u8]) -> Result<(), Infallible> {
        bytes.fill(9);
        Ok(())
    }
}

impl TryCryptoRng for Nines {}
