//! Words for the door's own commands where there is no vault, and so no user with a language of their own.

use crate::words::{Language, Units, Words};
use door::Texts;
use lifting::reason::Reason;

/// Sentences for the reasons of the door's replies, in one language and in one unit of mass.
#[derive(Debug)]
pub struct Sentences {
    words: Words,
    units: Units,
}

impl Sentences {
    /// Loads the words.
    #[must_use]
    pub fn new(language: Language, units: Units) -> Self {
        Self {
            words: Words::load(language),
            units,
        }
    }
}

impl Texts for Sentences {
    fn reason(&self, reason: &Reason) -> Option<String> {
        Some(self.words.reason(reason, self.units))
    }
}
