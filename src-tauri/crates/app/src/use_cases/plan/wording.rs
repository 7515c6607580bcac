//! Sentences that travel, as this reader sees them.

use crate::words::Words;
use record::Wording;

/// What the ids of sentences that may travel begin with: a sender cannot make anything else be shown.
const OURS: &str = "plan-";

/// The sentence in the reader's language, or as it was typed. `None` for one that this version does not know.
#[must_use]
pub(crate) fn text(wording: &Wording, words: &Words) -> Option<String> {
    match wording {
        Wording::Ours(id) => (id.starts_with(OURS) && words.has(id)).then(|| words.text(id)),
        Wording::Typed(text) => Some(text.clone()),
    }
}

/// Every sentence that can be shown.
#[must_use]
pub(crate) fn texts(wordings: &[Wording], words: &Words) -> Vec<String> {
    wordings
        .iter()
        .filter_map(|wording| text(wording, words))
        .collect()
}
