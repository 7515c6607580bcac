//! A list of 2,048 words that stand for eleven bits each.
//!
//! The list is the English one of BIP-39, taken from the crate `bip39` 2.2.2, which is dedicated to the
//! public domain (CC0 1.0); the proposal's own list is under the MIT licence, M. Palatinus, P. Rusnak,
//! A. Voisine, S. Bowe, 2013. Four letters are enough to tell any two words apart.

/// Letters after which a word of the list can be no other.
const TELLING_LETTERS: usize = 4;

/// A list of words in alphabetical order.
pub struct WordList(&'static str);

/// The only list: the same words in every language of the app, since two people who compare them may
/// read different languages.
pub const ENGLISH: WordList = WordList(include_str!("english.txt"));

impl WordList {
    /// The word for a number of eleven bits.
    #[must_use]
    pub fn word(&self, index: u16) -> Option<&'static str> {
        self.0.lines().nth(usize::from(index))
    }

    /// The number of a word, written in full or with its first four letters; case does not matter.
    #[must_use]
    pub fn index(&self, written: &str) -> Option<u16> {
        let written = written.to_lowercase();
        let is_enough = written.chars().count() >= TELLING_LETTERS;
        self.0
            .lines()
            .position(|word| word == written || (is_enough && word.starts_with(&written)))
            .and_then(|at| u16::try_from(at).ok())
    }
}

/// `count` words from the first `count` × 11 bits of `bytes`, most significant bit first.
pub(crate) fn spell(bytes: &[u8], count: usize) -> Option<Vec<&'static str>> {
    (0..count)
        .map(|at| ENGLISH.word(eleven_bits(bytes, at)?))
        .collect()
}

/// The bytes whose bits are those of `indices`, eleven each; the last byte is filled up with zeros.
pub(crate) fn pack(indices: &[u16]) -> Vec<u8> {
    let bits = indices
        .iter()
        .flat_map(|index| (0..11).rev().map(move |bit| (index >> bit) & 1));
    let bits: Vec<u8> = bits.map(|bit| u8::from(bit == 1)).collect();
    bits.chunks(8)
        .map(|byte| byte.iter().fold(0, |sum, bit| (sum << 1) | bit) << (8 - byte.len()))
        .collect()
}

fn eleven_bits(bytes: &[u8], at: usize) -> Option<u16> {
    (at * 11..(at + 1) * 11).try_fold(0, |sum, bit| {
        let byte = bytes.get(bit / 8)?;
        Some((sum << 1) | u16::from((byte >> (7 - bit % 8)) & 1))
    })
}

#[cfg(test)]
mod tests {
    use std::collections::BTreeSet;

    use super::{ENGLISH, pack, spell};

    #[test]
    fn has_2048_words_in_order_that_differ_within_four_letters() {
        let words: Vec<_> = ENGLISH.0.lines().collect();
        assert_eq!(words.len(), 2048);
        assert!(words.is_sorted());
        let telling: BTreeSet<String> = words.iter().map(|w| w.chars().take(4).collect()).collect();
        assert_eq!(telling.len(), 2048);
        assert!(words.iter().all(|word| (3..=8).contains(&word.len())));
    }

    /// BIP-39's published vector: sixteen zero bytes begin with eleven times "abandon".
    #[test]
    fn bits_become_words_as_published() {
        assert_eq!(spell(&[0; 16], 11), Some(vec!["abandon"; 11]));
        assert_eq!(spell(&[0xff; 9], 6), Some(vec!["zoo"; 6]));
        // The vector 0x7f…7f begins: legal winner thank year wave sausage.
        let published = ["legal", "winner", "thank", "year", "wave", "sausage"];
        assert_eq!(spell(&[0x7f; 9], 6), Some(published.to_vec()));
        assert_eq!(spell(&[0; 8], 6), None, "66 bits do not fit in 64");
    }

    #[test]
    fn words_go_back_to_the_same_bits() {
        let bytes = [
            0x12, 0x34, 0x56, 0x78, 0x9a, 0xbc, 0xde, 0xf0, 0x0f, 0x1e, 0x2d,
        ];
        let words = spell(&bytes, 8).unwrap();
        let indices: Vec<_> = words.iter().map(|w| ENGLISH.index(w).unwrap()).collect();
        assert_eq!(pack(&indices), bytes);
    }

    #[test]
    fn four_letters_and_capitals_are_enough_and_three_are_not() {
        assert_eq!(ENGLISH.index("ZOO"), Some(2047));
        assert_eq!(ENGLISH.index("Aban"), Some(0));
        assert_eq!(ENGLISH.index("aba"), None);
        assert_eq!(
            ENGLISH.index("act"),
            ENGLISH.0.lines().position(|w| w == "act").map(|n| n as u16)
        );
        assert_eq!(ENGLISH.index("abandoned"), None);
        assert_eq!(ENGLISH.index(""), None);
    }
}
