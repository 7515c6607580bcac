//! Sentences for the replies of the wire's own commands.

use super::{Units, Words};
use lifting::reason::Reason;

/// Reasons in the reader's language and units, for [`door::answer_parsed`].
#[derive(Debug, Clone, Copy)]
pub struct WireTexts<'a> {
    /// Words in the reader's language.
    pub words: &'a Words,
    /// The reader's units.
    pub units: Units,
}

impl door::Texts for WireTexts<'_> {
    fn reason(&self, reason: &Reason) -> Option<String> {
        Some(self.words.reason(reason, self.units))
    }
}
