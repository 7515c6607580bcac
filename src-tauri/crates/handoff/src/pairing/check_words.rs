//! The six words both screens show, and the id of the pairing.
//!
//! Whoever stands between the two screens and replaces both cards may choose keys and numbers freely, so
//! they look for any pair of offers that gives the same words on both sides: a birthday search. Over a
//! plain hash, 66 bits fall in seconds. Here each try costs Argon2id with 64 MiB and three passes, some
//! 2³⁴ tries are needed, and after five minutes the fresh numbers are void.

use sha2::{Digest, Sha256};
use zeroize::Zeroizing;

use super::Offer;
use crate::slow_hash::{NoMemory, slow_hash};
use crate::words::spell;

const DOMAIN: &[u8] = b"heftwell handoff 1 pairing";
/// Words shown: 66 bits.
pub(crate) const WORDS: usize = 6;
/// Bytes of a pairing's id.
pub(crate) const PAIRING_ID_BYTES: usize = 16;

/// What both sides derive from both offers.
pub(crate) struct Derived {
    pub(crate) words: [&'static str; WORDS],
    pub(crate) pairing_id: [u8; PAIRING_ID_BYTES],
}

/// The same on both devices, whichever scanned first: the smaller offer comes first.
pub(crate) fn derive(one: &Offer, other: &Offer) -> Result<Derived, NoMemory> {
    let (one, other) = (one.signed_part(), other.signed_part());
    let (first, second) = if one <= other {
        (one, other)
    } else {
        (other, one)
    };
    let digest = |offer: &[u8]| Sha256::digest(offer);
    let salt = Sha256::new()
        .chain_update(DOMAIN)
        .chain_update(digest(&first))
        .chain_update(digest(&second))
        .finalize();
    let secret = Zeroizing::new([first, second].concat());
    let hash = slow_hash(&secret, &salt)?;
    let (for_words, id) = hash.split_last_chunk().ok_or(NoMemory)?;
    let words = spell(for_words, WORDS).ok_or(NoMemory)?;
    Ok(Derived {
        words: words.try_into().map_err(|_| NoMemory)?,
        pairing_id: *id,
    })
}
