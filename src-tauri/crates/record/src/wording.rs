//! A sentence that travels: one the app has in every language, or one that somebody typed.

use minicbor::{Decode, Encode};

/// What is said, so that a reader of another language sees it in theirs where that can be.
#[derive(Debug, Clone, PartialEq, Eq, Encode, Decode)]
#[cbor(flat)]
pub enum Wording {
    /// The text id of a sentence of the app. A reader that does not know it shows nothing.
    #[n(1)]
    Ours(#[n(0)] String),
    /// A text as it was typed, in whatever language.
    #[n(2)]
    Typed(#[n(0)] String),
}
