//! The one-time code.

use std::fmt;

use zeroize::{Zeroize, Zeroizing};

use crate::random::{NoRandomness, Random, make_bytes};
use crate::words::{ENGLISH, pack, spell};

/// Words of a code: 88 bits.
const WORDS: usize = 8;
/// The bits as bytes, none left over.
const BYTES: usize = 11;

/// Eight words of the list, made here. Wiped from memory when dropped.
pub struct Code(Zeroizing<[u8; BYTES]>);

/// Why a text is no code. Neither says anything about the parcel.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
#[non_exhaustive]
pub enum CodeError {
    /// Not eight words.
    #[error("not eight words")]
    Count,
    /// A word that is not in the list; counted from 1.
    #[error("word {0} is not in the list")]
    Word(usize),
}

impl Code {
    /// A fresh code.
    pub(super) fn make(random: &mut Random<'_>) -> Result<Self, NoRandomness> {
        Ok(Self(Zeroizing::new(make_bytes(random)?)))
    }

    /// Reads a typed code: eight words with spaces, commas, dots or hyphens between them, in any case,
    /// in full or with their first four letters.
    ///
    /// # Errors
    /// See [`CodeError`].
    pub fn typed(text: &str) -> Result<Self, CodeError> {
        let words: Vec<&str> = text
            .split(|c: char| c.is_whitespace() || matches!(c, ',' | '.' | '-'))
            .filter(|word| !word.is_empty())
            .collect();
        if words.len() != WORDS {
            return Err(CodeError::Count);
        }
        let mut indices = Zeroizing::new([0_u16; WORDS]);
        for (at, (index, word)) in indices.iter_mut().zip(&words).enumerate() {
            *index = ENGLISH.index(word).ok_or(CodeError::Word(at + 1))?;
        }
        let mut packed = pack(indices.as_slice());
        let bytes = packed.as_slice().try_into().map_err(|_| CodeError::Count);
        packed.zeroize();
        Ok(Self(Zeroizing::new(bytes?)))
    }

    /// The words, to be read aloud.
    #[must_use]
    pub fn words(&self) -> Vec<&'static str> {
        spell(self.0.as_slice(), WORDS).unwrap_or_default()
    }

    pub(super) fn bytes(&self) -> &[u8; BYTES] {
        &self.0
    }
}

impl fmt::Debug for Code {
    fn fmt(&self, formatter: &mut fmt::Formatter<'_>) -> fmt::Result {
        formatter.write_str("Code(…)")
    }
}

#[cfg(test)]
mod tests {
    use super::{Code, CodeError};

    fn fresh() -> Code {
        Code::make(&mut |bytes: &mut [u8]| {
            bytes.iter_mut().zip(9..).for_each(|(byte, n)| *byte = n);
            Ok(())
        })
        .unwrap()
    }

    #[test]
    fn what_is_read_aloud_can_be_typed_in_many_ways() {
        let code = fresh();
        let words = code.words();
        assert_eq!(words.len(), 8);
        let four: Vec<String> = words.iter().map(|w| w.chars().take(4).collect()).collect();
        for typed in [
            words.join(" "),
            words.join("-"),
            format!("  {} \n", words.join(", ").to_uppercase()),
            four.join(" "),
        ] {
            assert_eq!(
                Code::typed(&typed).unwrap().bytes(),
                code.bytes(),
                "{typed}"
            );
        }
    }

    #[test]
    fn says_which_word_is_not_in_the_list() {
        let mut words = fresh().words();
        words[2] = "heftwell";
        assert_eq!(
            Code::typed(&words.join(" ")).err(),
            Some(CodeError::Word(3))
        );
        assert_eq!(
            Code::typed(&words[..7].join(" ")).err(),
            Some(CodeError::Count)
        );
        assert_eq!(Code::typed("").err(), Some(CodeError::Count));
    }

    #[test]
    fn debug_shows_nothing() {
        assert_eq!(format!("{:?}", fresh()), "Code(…)");
    }
}
