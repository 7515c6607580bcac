//! A passphrase that shows itself to nobody and wipes itself.

use std::fmt;

use unicode_normalization::UnicodeNormalization;
use zeroize::{Zeroize, Zeroizing};

/// A passphrase, in Unicode normalisation form C, as UTF-8.
///
/// Form C makes "ñ" typed as one character or as "n" with a tilde the same passphrase (RFC 8265,
/// section 4.2, asks for the same of passwords). Nothing else is changed: spaces and case count.
pub struct Passphrase(Zeroizing<String>);

impl Passphrase {
    /// Takes the text over and wipes what it came in.
    #[must_use]
    pub fn new(mut text: String) -> Self {
        // Form C is at most three times as long (UAX #15); no growing means no stray copies.
        let mut composed = Zeroizing::new(String::with_capacity(text.len().saturating_mul(3)));
        composed.extend(text.nfc());
        text.zeroize();
        Self(composed)
    }

    /// Length in characters (Unicode scalar values).
    #[must_use]
    pub fn characters(&self) -> usize {
        self.0.chars().count()
    }

    pub(crate) fn bytes(&self) -> &[u8] {
        self.0.as_bytes()
    }
}

impl PartialEq for Passphrase {
    /// For the "type it again" check only: both sides are typed by the same person at the same time.
    fn eq(&self, other: &Self) -> bool {
        self.0 == other.0
    }
}

impl Eq for Passphrase {}

impl fmt::Debug for Passphrase {
    fn fmt(&self, formatter: &mut fmt::Formatter<'_>) -> fmt::Result {
        formatter.write_str("Passphrase(…)")
    }
}

#[cfg(test)]
mod tests {
    use super::Passphrase;

    #[test]
    fn an_accent_typed_in_two_ways_is_the_same_passphrase() {
        let one_character = Passphrase::new("mañana".to_owned());
        let letter_and_tilde = Passphrase::new("man\u{303}ana".to_owned());
        assert_eq!(one_character, letter_and_tilde);
        assert_eq!(letter_and_tilde.characters(), 6);
    }

    #[test]
    fn debug_shows_nothing_of_it() {
        assert_eq!(
            format!("{:?}", Passphrase::new("a river under old snow".to_owned())),
            "Passphrase(…)"
        );
    }
}
