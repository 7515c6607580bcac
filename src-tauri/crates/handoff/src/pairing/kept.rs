//! A confirmed pairing, as it is kept.

use minicbor::Encoder;

use super::check_words::PAIRING_ID_BYTES;
use crate::card::{Card, KeyId};
use crate::cbor::Map;

const CARD: u64 = 1;
const MINE: u64 = 2;
const ID: u64 = 3;
const AT: u64 = 4;

/// Two devices whose people have compared the check words. The only type that can seal.
///
/// ```compile_fail
/// # fn f(compared: handoff::Compared, keys: handoff::DeviceKeys, what: handoff::Outgoing<'_>) {
/// // Nobody has agreed yet, so there is nothing to seal with.
/// handoff::seal(&compared, &keys, &what, &mut |_: &mut [u8]| Ok(()));
/// # }
/// ```
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Pairing {
    mine: KeyId,
    theirs: Card,
    id: [u8; PAIRING_ID_BYTES],
    at_ms: i64,
}

/// Bytes that are not a kept pairing.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
#[error("not a pairing")]
pub struct PairingError;

impl Pairing {
    pub(crate) fn new(mine: KeyId, theirs: Card, id: [u8; PAIRING_ID_BYTES], at_ms: i64) -> Self {
        Self {
            mine,
            theirs,
            id,
            at_ms,
        }
    }

    /// The other device's card, as it was when they were paired.
    #[must_use]
    pub fn theirs(&self) -> &Card {
        &self.theirs
    }

    /// This device, as it was then. After a new install it differs, and the pairing is of no use.
    #[must_use]
    pub fn mine(&self) -> KeyId {
        self.mine
    }

    /// What this pairing is told apart by; the same on both devices, known to nobody who was not there.
    #[must_use]
    pub fn id(&self) -> &[u8; PAIRING_ID_BYTES] {
        &self.id
    }

    /// When both agreed, in milliseconds since 1970.
    #[must_use]
    pub fn at_ms(&self) -> i64 {
        self.at_ms
    }

    /// The canonical bytes, for the vault: a map of card (1), own key id (2), id (3), time (4).
    #[must_use]
    pub fn to_bytes(&self) -> Vec<u8> {
        let mut encoder = Encoder::new(Vec::new());
        // Writing to a Vec cannot fail.
        let written = encoder.map(4).and_then(|e| {
            e.u64(CARD)?.bytes(&self.theirs.to_bytes())?;
            e.u64(MINE)?.bytes(&self.mine.0)?;
            e.u64(ID)?.bytes(&self.id)?;
            e.u64(AT)?.i64(self.at_ms)?;
            Ok(())
        });
        debug_assert!(written.is_ok());
        encoder.into_writer()
    }

    /// Takes a pairing back from the vault. Bytes from anywhere else must never come here: what they
    /// say was confirmed by nobody.
    ///
    /// # Errors
    /// [`PairingError`] for anything that [`to_bytes`](Self::to_bytes) does not write.
    pub fn from_bytes(bytes: &[u8]) -> Result<Self, PairingError> {
        let map = Map::read(bytes, &[CARD, MINE, ID, AT]).map_err(|_| PairingError)?;
        let theirs = map.bytes(CARD).map_err(|_| PairingError)?;
        Ok(Self {
            theirs: Card::from_bytes(theirs).map_err(|_| PairingError)?,
            mine: KeyId(map.array(MINE).map_err(|_| PairingError)?),
            id: map.array(ID).map_err(|_| PairingError)?,
            at_ms: map.signed(AT).map_err(|_| PairingError)?,
        })
    }
}
