//! Text that must not be seen or left behind in memory.

use serde::de::{Deserialize, Deserializer, Error, Visitor};
use std::fmt;
use vault::Passphrase;

/// A passphrase as it came in over the wire. Shows itself to nobody, wipes itself.
pub(crate) struct Secret(Passphrase);

impl Secret {
    /// The passphrase.
    #[must_use]
    pub(crate) const fn passphrase(&self) -> &Passphrase {
        &self.0
    }
}

impl fmt::Debug for Secret {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("Secret(…)")
    }
}

impl<'de> Deserialize<'de> for Secret {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        deserializer.deserialize_string(SecretVisitor)
    }
}

struct SecretVisitor;

impl Visitor<'_> for SecretVisitor {
    type Value = Secret;

    fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("a text")
    }

    fn visit_str<E: Error>(self, text: &str) -> Result<Secret, E> {
        Ok(Secret(Passphrase::new(text.to_owned())))
    }

    /// Takes the text over instead of copying it, so that what was parsed is wiped too.
    fn visit_string<E: Error>(self, text: String) -> Result<Secret, E> {
        Ok(Secret(Passphrase::new(text)))
    }
}
