//! How hard a text is to read, by published formulas.
//!
//! English: grade level of Flesch and Kincaid (Kincaid, Fishburne, Rogers & Chissom 1975), a school year.
//! Spanish: lecturabilidad of Fernández Huerta (1959), with words per sentence as corrected by Law (2011):
//! 90 to 100 very easy, 80 to 90 easy (fifth year of school), 70 to 80 rather easy (sixth).

use super::syllables;
use app::words::Language;
use std::collections::BTreeSet;

/// A long word that cannot be said otherwise; it does not count when syllables are averaged.
#[derive(Debug, Default)]
pub(crate) struct FieldTerms(pub(crate) BTreeSet<String>);

impl FieldTerms {
    /// From `words/field_terms.txt`: a line each, `en term` or `es term`.
    pub(crate) fn of(language: Language) -> Self {
        let path = concat!(env!("CARGO_MANIFEST_DIR"), "/words/field_terms.txt");
        let text = std::fs::read_to_string(path).expect("the list of field terms");
        let prefix = format!("{} ", language.id());
        Self(
            text.lines()
                .filter_map(|line| line.strip_prefix(&prefix))
                .map(str::to_owned)
                .collect(),
        )
    }
}

/// What a text measures.
#[derive(Debug, Clone, Copy, Default)]
pub(crate) struct Measure {
    pub(crate) sentences: usize,
    pub(crate) words: usize,
    /// Words that are not field terms, and their syllables.
    counted: usize,
    syllables: usize,
}

impl Measure {
    /// Measures texts together.
    pub(crate) fn of<'a>(
        texts: impl Iterator<Item = &'a str>,
        language: Language,
        terms: &FieldTerms,
    ) -> Self {
        let mut sum = Self::default();
        for sentence in texts.flat_map(sentences) {
            sum.sentences += 1;
            for word in words(sentence) {
                sum.words += 1;
                if !terms.0.contains(&word.to_lowercase()) {
                    sum.counted += 1;
                    sum.syllables += syllables::of(word, language);
                }
            }
        }
        sum
    }

    fn words_per_sentence(self) -> f64 {
        self.words as f64 / self.sentences.max(1) as f64
    }

    fn syllables_per_word(self) -> f64 {
        self.syllables as f64 / self.counted.max(1) as f64
    }

    /// Flesch-Kincaid grade level.
    pub(crate) fn grade(self) -> f64 {
        0.39 * self.words_per_sentence() + 11.8 * self.syllables_per_word() - 15.59
    }

    /// Lecturabilidad of Fernández Huerta.
    pub(crate) fn lecturabilidad(self) -> f64 {
        206.84 - 60.0 * self.syllables_per_word() - 1.02 * self.words_per_sentence()
    }

    /// Whether it is easy enough for its language, and its figure.
    pub(crate) fn easy(self, language: Language) -> (bool, f64) {
        match language {
            Language::English => (self.grade() <= 6.0, self.grade()),
            Language::Spanish => (self.lecturabilidad() >= 80.0, self.lecturabilidad()),
        }
    }
}

/// Sentences: a full stop, question or exclamation mark, or the end of a line ends one.
pub(crate) fn sentences(text: &str) -> impl Iterator<Item = &str> {
    text.lines()
        .flat_map(|line| line.split_inclusive(['.', '!', '?']))
        .filter(|sentence| words(sentence).next().is_some())
}

/// Words: what stands between blanks and has a letter or figure.
pub(crate) fn words(text: &str) -> impl Iterator<Item = &str> {
    text.split([' ', '\n', '\u{a0}', '/'])
        .map(|word| word.trim_matches(|letter: char| !letter.is_alphanumeric()))
        .filter(|word| !word.is_empty())
}
