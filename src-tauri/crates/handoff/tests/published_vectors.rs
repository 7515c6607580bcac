//! The building blocks against the vectors of the documents that define them. Base45 and the word list
//! have theirs beside the code.
#![cfg(test)]

mod support;

use argon2::{Algorithm, Argon2, AssociatedData, ParamsBuilder, Version};
use ed25519_dalek::{Signature, Signer, SigningKey};
use hpke::aead::ChaCha20Poly1305;
use hpke::kdf::HkdfSha256;
use hpke::kem::X25519HkdfSha256;
use hpke::{Deserializable, Kem, OpModeR, OpModeS, Serializable, setup_receiver};
use support::{bytes, hex};

/// Hands out the bytes the RFC's sender drew, and then nothing.
struct Drawn(Vec<u8>);

impl rand_core::TryRng for Drawn {
    type Error = std::convert::Infallible;
    fn try_next_u32(&mut self) -> Result<u32, Self::Error> {
        panic!("the key pair is drawn as bytes")
    }
    fn try_next_u64(&mut self) -> Result<u64, Self::Error> {
        panic!("the key pair is drawn as bytes")
    }
    fn try_fill_bytes(&mut self, to: &mut [u8]) -> Result<(), Self::Error> {
        assert_eq!(to.len(), self.0.len(), "drawn once, in one piece");
        to.copy_from_slice(&self.0);
        Ok(())
    }
}

impl rand_core::TryCryptoRng for Drawn {}

/// RFC 9180, appendix A.2.1: DHKEM(X25519, HKDF-SHA256), HKDF-SHA256, ChaCha20Poly1305, base mode,
/// sequence numbers 0 and 1.
#[test]
fn hpke_base() {
    type Secret = <X25519HkdfSha256 as Kem>::PrivateKey;
    type Public = <X25519HkdfSha256 as Kem>::PublicKey;
    type Enc = <X25519HkdfSha256 as Kem>::EncappedKey;
    let info = bytes("4f6465206f6e2061204772656369616e2055726e");
    let ikm_e = bytes("909a9b35d3dc4713a5e72a4da274b55d3d3821a37e5d099e74a647db583a904b");
    let enc = bytes("1afa08d3dec047a643885163f1180476fa7ddb54c6a8029ea33f95796bf2ac4a");
    let secret = bytes("8057991eef8f1f1af18f4a9491d16a1ce333f695d4db8e38da75975c4478e0fb");
    let public = bytes("4310ee97d88cc1f088a5576c77ab0cf5c3ac797f3d95139c6c84b5429c59662a");
    let plain = b"Beauty is truth, truth beauty";
    let sealed = bytes(
        "1c5250d8034ec2b784ba2cfd69dbdb8af406cfe3ff938e131f0def8c8b60b4db
         21993c62ce81883d2dd1b51a28",
    );

    let secret = Secret::from_bytes(&secret).unwrap();
    let mut receiver = setup_receiver::<ChaCha20Poly1305, HkdfSha256, X25519HkdfSha256>(
        &OpModeR::Base,
        &secret,
        &Enc::from_bytes(&enc).unwrap(),
        &info,
    )
    .unwrap();
    assert_eq!(receiver.open(&sealed, b"Count-0").unwrap(), plain);

    let public = Public::from_bytes(&public).unwrap();
    let (made, mut sender) = hpke::setup_sender_with_rng::<
        ChaCha20Poly1305,
        HkdfSha256,
        X25519HkdfSha256,
    >(&OpModeS::Base, &public, &info, &mut Drawn(ikm_e))
    .unwrap();
    assert_eq!(made.to_bytes().to_vec(), enc);
    assert_eq!(sender.seal(plain, b"Count-0").unwrap(), sealed);
}

/// RFC 8032, section 7.1, test 3.
#[test]
fn ed25519() {
    let secret = bytes("c5aa8df43f9f837bedb7442f31dcb7b166d38535076f094b85ce3a2e0b4458f7");
    let public = "fc51cd8e6218a1a38da47ed00230f0580816ed13ba3303ac5deb911548908025";
    let signature = "6291d657deec24024827e69c3abe01a30ce548a284743a445e3680d7db5ac3ac\
                     18ff9b538d16f290ae67f760984dc6594a7c15e9716ed28dc027beceea1ec40a";
    let key = SigningKey::from_bytes(&secret.try_into().unwrap());
    assert_eq!(hex(key.verifying_key().as_bytes()), public);
    assert_eq!(hex(&key.sign(&[0xaf, 0x82]).to_bytes()), signature);
    let signature = Signature::from_slice(&bytes(signature)).unwrap();
    key.verifying_key()
        .verify_strict(&[0xaf, 0x82], &signature)
        .unwrap();
    assert!(
        key.verifying_key()
            .verify_strict(&[0xaf, 0x83], &signature)
            .is_err()
    );
}

/// RFC 7748, section 5.2, first vector.
#[test]
fn x25519() {
    let scalar = bytes("a546e36bf0527c9d3b16154b82465edd62144c0ac1fc5a18506a2244ba449ac4");
    let point = bytes("e6db6867583030db3594c1a424b15f7c726624ec26b3353b10a903a6d0ab1c4c");
    let product = x25519_dalek::x25519(scalar.try_into().unwrap(), point.try_into().unwrap());
    assert_eq!(
        hex(&product),
        "c3da55379de9c6908e94ea4df28d084f32eccf03491c71f754b4075577a28552"
    );
}

/// RFC 9106, section 5.3.
#[test]
fn argon2id() {
    let params = ParamsBuilder::new()
        .m_cost(32)
        .t_cost(3)
        .p_cost(4)
        .data(AssociatedData::new(&[4; 12]).unwrap())
        .output_len(32)
        .build()
        .unwrap();
    let mut tag = [0; 32];
    Argon2::new_with_secret(&[3; 8], Algorithm::Argon2id, Version::V0x13, params)
        .unwrap()
        .hash_password_into(&[1; 32], &[2; 16], &mut tag)
        .unwrap();
    assert_eq!(
        hex(&tag),
        "0d640df58d78766c08c037a34a8b53c9d01ef0452d75b65eb52520e96b01e659"
    );
}

/// The check value of CRC-32/ISO-HDLC, the CRC of ISO/IEC 3309 and of RFC 1952, section 8.
#[test]
fn crc32() {
    assert_eq!(crc32fast::hash(b"123456789"), 0xcbf4_3926);
}
