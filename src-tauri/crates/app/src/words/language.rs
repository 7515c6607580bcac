//! The languages there are words for.

/// A language of the app.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Language {
    /// English.
    English,
    /// Spanish.
    Spanish,
}

impl Language {
    /// Every language, in the order in which they are offered.
    pub const ALL: &'static [Self] = &[Self::English, Self::Spanish];

    /// The tag used on the wire and on the page (BCP 47).
    #[must_use]
    pub const fn id(self) -> &'static str {
        match self {
            Self::English => "en",
            Self::Spanish => "es",
        }
    }

    /// Its own name, in itself.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::English => "English",
            Self::Spanish => "Español",
        }
    }

    /// The language with this tag.
    #[must_use]
    pub fn from_id(id: &str) -> Option<Self> {
        Self::ALL
            .iter()
            .copied()
            .find(|language| language.id() == id)
    }

    /// The character between whole number and decimals.
    #[must_use]
    pub const fn decimal_mark(self) -> char {
        match self {
            Self::English => '.',
            Self::Spanish => ',',
        }
    }
}
