//! What can be wrong with the bytes of a record.

/// Why bytes are not a record of the kind asked for, or why a record cannot be written.
///
/// No variant carries text from the record: an error may be logged, a record may not.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
#[non_exhaustive]
pub enum RecordError {
    /// An integer code that this version does not know, for example a way to lift added later.
    #[error("a code this version does not know")]
    CodeUnknown,
    /// The same key twice in one map.
    #[error("the same key twice in one map")]
    KeyTwice,
    /// Not canonical CBOR: wrong key order, a number in a long form, a float, a tag, an indefinite length.
    #[error("not canonical: {0}")]
    NotCanonical(&'static str),
    /// Canonical CBOR, but not what this kind of record holds: a field is missing or of another type.
    #[error("a field is missing or of another type")]
    NotThisShape,
    /// A record of another kind.
    #[error("a record of kind {found} where kind {wanted} was asked for")]
    OtherKind {
        /// The kind asked for.
        wanted: u32,
        /// The kind in the bytes.
        found: u32,
    },
    /// Written by a newer version with another layout.
    #[error("written by a newer version (layout {major})")]
    Newer {
        /// Major version in the bytes, above [`MAJOR`](crate::MAJOR).
        major: u32,
    },
    /// The writer marked a key as one the reader must understand, and this version does not know it.
    #[error("written by a newer version (a key that must be understood)")]
    MustUnderstand,
    /// The bytes end before the record does.
    #[error("ends too early")]
    Short,
    /// Over [`MAX_BYTES`](crate::MAX_BYTES).
    #[error("too long")]
    TooLong,
    /// Bytes follow after the record.
    #[error("bytes follow after the record")]
    Trailing,
}
