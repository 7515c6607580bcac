//! The building blocks against the vectors of the documents that define them.
#![allow(clippy::unwrap_used, reason = "a test may stop at the first surprise")]

use argon2::{Algorithm, Argon2, AssociatedData, ParamsBuilder, Version};
use chacha20poly1305::aead::{Aead, KeyInit, Payload};
use chacha20poly1305::{XChaCha20Poly1305, XNonce};
use hkdf::Hkdf;
use hmac::{Hmac, Mac};
use sha2::Sha256;

fn hex(bytes: &[u8]) -> String {
    bytes.iter().map(|byte| format!("{byte:02x}")).collect()
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

/// draft-irtf-cfrg-xchacha-03, appendix A.3.1.
#[test]
fn xchacha20_poly1305() {
    let key: Vec<u8> = (0x80..=0x9f).collect();
    let nonce: [u8; 24] = std::array::from_fn(|at| 0x40 + u8::try_from(at).unwrap());
    let aad = [
        0x50, 0x51, 0x52, 0x53, 0xc0, 0xc1, 0xc2, 0xc3, 0xc4, 0xc5, 0xc6, 0xc7,
    ];
    let msg = b"Ladies and Gentlemen of the class of '99: If I could offer you only one tip for the future, \
        sunscreen would be it.";
    let sealed = XChaCha20Poly1305::new_from_slice(&key)
        .unwrap()
        .encrypt(&XNonce::from(nonce), Payload { msg, aad: &aad })
        .unwrap();
    assert_eq!(
        hex(&sealed),
        "bd6d179d3e83d43b9576579493c0e939572a1700252bfaccbed2902c21396cbb731c7f1b0b4aa6440bf3a82f4eda7e39\
         ae64c6708c54c216cb96b72e1213b4522f8c9ba40db5d945b11b69b982c1bb9e3f3fac2bc369488f76b2383565d3fff9\
         21f9664c97637da9768812f615c68b13b52ec0875924c1c7987947deafd8780acf49"
    );
}

/// RFC 5869, appendix A.3: no salt, no label.
#[test]
fn hkdf_sha256() {
    let mut okm = [0; 42];
    Hkdf::<Sha256>::new(None, &[0x0b; 22])
        .expand(&[], &mut okm)
        .unwrap();
    assert_eq!(
        hex(&okm),
        "8da4e775a563c18f715f802a063c5a31b8a11f5c5ee1879ec3454e5f3c738d2d9d201395faa4b61a96c8"
    );
}

/// RFC 4231, test case 2.
#[test]
fn hmac_sha256() {
    let mut mac = <Hmac<Sha256> as KeyInit>::new_from_slice(b"Jefe").unwrap();
    mac.update(b"what do ya want for nothing?");
    assert_eq!(
        hex(&mac.finalize().into_bytes()),
        "5bdcc146bf60754e6a042426089575c75a003f089d2739839dec58b964ec3843"
    );
}
