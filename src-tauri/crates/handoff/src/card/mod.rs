//! A device's public identity.

mod alias;

use std::fmt;

use ed25519_dalek::VerifyingKey;
use minicbor::Encoder;
use sha2::{Digest, Sha256};

use crate::cbor::{Map, MapError};

pub use alias::{Alias, AliasError};

const SEALING_KEY: u64 = 1;
const SIGNING_KEY: u64 = 2;
const ALIAS: u64 = 3;
const ROLE: u64 = 4;

/// Bytes of a key id.
pub(crate) const KEY_ID_BYTES: usize = 8;

/// What a device is told apart by: the first eight bytes of SHA-256 over both public keys. Good for
/// finding, never for trusting: what is sealed and signed is bound to the whole keys.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct KeyId(pub [u8; KEY_ID_BYTES]);

impl KeyId {
    /// The id of a device with these public keys, X25519 first.
    pub(crate) fn of(keys: &[u8; 64]) -> Self {
        let digest = Sha256::digest(keys);
        let mut id = [0; KEY_ID_BYTES];
        id.iter_mut().zip(digest).for_each(|(to, from)| *to = from);
        Self(id)
    }
}

impl fmt::Debug for KeyId {
    fn fmt(&self, formatter: &mut fmt::Formatter<'_>) -> fmt::Result {
        formatter.write_str("KeyId(")?;
        for byte in self.0 {
            write!(formatter, "{byte:02x}")?;
        }
        formatter.write_str(")")
    }
}

/// What the holder of a device mostly does with the app, as they chose at first start.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[repr(u8)]
pub enum Role {
    /// Lifts for themselves.
    Lift = 1,
    /// Helps others move.
    Help = 2,
    /// Treats people.
    Treat = 3,
}

/// Public keys, alias and role of a device. Whoever holds one can seal to that device and check what it
/// signed. The keys are looked at when it is read: weak ones are refused.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Card {
    sealing_key: [u8; 32],
    signing_key: VerifyingKey,
    alias: Alias,
    role: Role,
}

/// Why bytes are not a card.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
#[non_exhaustive]
pub enum CardError {
    /// Not canonical, or a field is missing or of another type.
    #[error("not a card")]
    Malformed,
    /// A field that must be understood, or a role, that this version does not know.
    #[error("a card of a newer version")]
    Newer,
    /// A key that anyone could know the other half of, or no key at all.
    #[error("a weak key")]
    WeakKey,
    /// An alias that cannot be shown.
    #[error("alias: {0}")]
    Alias(AliasError),
}

impl Card {
    /// A card from its parts, as [`DeviceKeys`](crate::DeviceKeys) and reading make one.
    pub(crate) fn new(
        sealing_key: [u8; 32],
        signing_key: [u8; 32],
        alias: Alias,
        role: Role,
    ) -> Result<Self, CardError> {
        let signing_key = VerifyingKey::from_bytes(&signing_key).map_err(|_| CardError::WeakKey)?;
        // A point of small order gives the all-zero secret with every scalar (RFC 7748, section 6.1).
        let is_small = x25519_dalek::x25519([1; 32], sealing_key) == [0; 32];
        if is_small || signing_key.is_weak() {
            return Err(CardError::WeakKey);
        }
        Ok(Self {
            sealing_key,
            signing_key,
            alias,
            role,
        })
    }

    /// The canonical bytes: a map of X25519 key (1), Ed25519 key (2), alias (3) and role (4).
    #[must_use]
    pub fn to_bytes(&self) -> Vec<u8> {
        let mut encoder = Encoder::new(Vec::new());
        // Writing to a Vec cannot fail.
        let written = encoder.map(4).and_then(|e| {
            e.u64(SEALING_KEY)?.bytes(&self.sealing_key)?;
            e.u64(SIGNING_KEY)?.bytes(self.signing_key.as_bytes())?;
            e.u64(ALIAS)?.str(self.alias.as_str())?;
            e.u64(ROLE)?.u8(self.role as u8)?;
            Ok(())
        });
        debug_assert!(written.is_ok());
        encoder.into_writer()
    }

    /// Reads a card.
    ///
    /// # Errors
    /// See [`CardError`].
    pub fn from_bytes(bytes: &[u8]) -> Result<Self, CardError> {
        let map = Map::read(bytes, &[SEALING_KEY, SIGNING_KEY, ALIAS, ROLE])?;
        let alias = Alias::new(map.text(ALIAS)?).map_err(CardError::Alias)?;
        let role = match map.unsigned(ROLE)? {
            1 => Role::Lift,
            2 => Role::Help,
            3 => Role::Treat,
            _ => return Err(CardError::Newer),
        };
        Self::new(
            map.array(SEALING_KEY)?,
            map.array(SIGNING_KEY)?,
            alias,
            role,
        )
    }

    /// What this device is told apart by.
    #[must_use]
    pub fn key_id(&self) -> KeyId {
        KeyId::of(&self.keys())
    }

    /// What the holder calls themselves. Chosen by them: not a proof of who they are.
    #[must_use]
    pub fn alias(&self) -> &Alias {
        &self.alias
    }

    /// What the holder mostly does with the app.
    #[must_use]
    pub fn role(&self) -> Role {
        self.role
    }

    /// The X25519 public key.
    pub(crate) fn sealing_key(&self) -> &[u8; 32] {
        &self.sealing_key
    }

    /// The Ed25519 public key.
    pub(crate) fn signing_key(&self) -> &VerifyingKey {
        &self.signing_key
    }

    /// Both public keys, as they are bound into parcels.
    pub(crate) fn keys(&self) -> [u8; 64] {
        let mut keys = [0; 64];
        let both = self.sealing_key.iter().chain(self.signing_key.as_bytes());
        keys.iter_mut().zip(both).for_each(|(to, from)| *to = *from);
        keys
    }
}

impl From<MapError> for CardError {
    fn from(error: MapError) -> Self {
        match error {
            MapError::MustUnderstand => Self::Newer,
            MapError::NotCanonical | MapError::Field => Self::Malformed,
        }
    }
}
