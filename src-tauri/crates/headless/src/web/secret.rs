//! Random words that only this program and one browser know.

use std::fmt;

use app::{RandomnessError, SystemWorld, World};

/// 256 random bits, written as 64 hexadecimal digits. Never shown by `Debug`.
#[derive(Clone)]
pub(crate) struct Secret(String);

impl Secret {
    /// A new one from the system's randomness.
    ///
    /// # Errors
    /// When the system has none to give.
    pub(crate) fn new() -> Result<Self, RandomnessError> {
        let mut bytes = [0_u8; 32];
        SystemWorld.fill_random(&mut bytes)?;
        Ok(Self(
            bytes.iter().map(|byte| format!("{byte:02x}")).collect(),
        ))
    }

    /// Whether `other` is the same word; the time taken tells nothing about where they differ.
    pub(crate) fn matches(&self, other: &str) -> bool {
        let (ours, theirs) = (self.0.as_bytes(), other.as_bytes());
        ours.len() == theirs.len()
            && ours
                .iter()
                .zip(theirs)
                .fold(0, |differ, (a, b)| differ | (a ^ b))
                == 0
    }

    /// The word itself.
    pub(crate) fn word(&self) -> &str {
        &self.0
    }
}

impl fmt::Debug for Secret {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("Secret")
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn only_the_whole_word_matches() {
        let (one, two) = (Secret::new().unwrap(), Secret::new().unwrap());
        assert_eq!(one.word().len(), 64);
        assert!(one.matches(one.word()));
        assert!(!one.matches(two.word()));
        assert!(!one.matches(one.word().split_at(63).0));
        assert!(!one.matches(&format!("{}0", one.word())));
        assert!(!one.matches(""));
    }
}
