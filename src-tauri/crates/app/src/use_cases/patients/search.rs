//! Finding a name by the beginnings of its words, whatever the case and the accents.

use unicode_normalization::UnicodeNormalization;
use unicode_normalization::char::is_combining_mark;

/// A name as it is compared and sorted: small letters without accents.
#[must_use]
pub(super) fn plain(text: &str) -> String {
    text.nfd()
        .filter(|sign| !is_combining_mark(*sign))
        .flat_map(char::to_lowercase)
        .collect()
}

/// Whether every word of what is looked for begins a word of the name. Both are [`plain`].
#[must_use]
pub(super) fn matches(name: &str, wanted: &str) -> bool {
    wanted
        .split_whitespace()
        .all(|wanted| name.split_whitespace().any(|word| word.starts_with(wanted)))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn words_are_found_by_their_beginning_without_case_or_accents() {
        let found = |name: &str, wanted: &str| matches(&plain(name), &plain(wanted));
        assert!(found("Blue Kettle", "ket"));
        assert!(found("Peñón Ártico", "ARTI pen"));
        assert!(found("Blue Kettle", ""));
        assert!(!found("Blue Kettle", "ettle"));
        assert!(!found("Blue Kettle", "blue lamp"));
    }
}
