//! Parcels for somebody who is not paired: sealed under a one-time code that is read aloud.
//!
//! The symbol may be photographed, so whoever has the picture can try codes for as long as they like.
//! The code is made here, never by a person: eight words, 88 random bits, each try at the cost of
//! Argon2id with 64 MiB and three passes. Every parcel gets a code of its own.

mod code;
mod opening;
mod sealing;

pub use code::{Code, CodeError};
pub use opening::{OpenUnpairedError, OpenedUnpaired, open_unpaired};
pub use sealing::{SealedUnpaired, seal_unpaired};

use chacha20poly1305::XChaCha20Poly1305;
use chacha20poly1305::aead::KeyInit;

use crate::parcel::Header;
use crate::slow_hash::{NoMemory, slow_hash};

const DOMAIN: &[u8] = b"heftwell handoff 1 code";
const SALT_BYTES: usize = 16;
const NONCE_BYTES: usize = 24;
const TAG_BYTES: usize = 16;

/// The cipher that `code` gives with `salt`.
fn cipher(code: &Code, salt: &[u8; SALT_BYTES]) -> Result<XChaCha20Poly1305, NoMemory> {
    let key = slow_hash(code.bytes(), salt)?;
    XChaCha20Poly1305::new_from_slice(key.as_slice()).map_err(|_| NoMemory)
}

/// The associated data: domain, clear head, salt.
fn bound(header: &Header, salt: &[u8; SALT_BYTES]) -> Vec<u8> {
    [DOMAIN, &header.bytes, salt].concat()
}
