//! Values that go into a message.

use fluent_bundle::FluentValue;

/// A value for a variable of a message.
#[derive(Debug, Clone, PartialEq)]
pub enum Arg {
    /// Words, already in the reader's language.
    Text(String),
    /// A number: shown with at most one decimal, and able to choose a plural form.
    Number(f64),
}

impl Arg {
    /// Words from anything that can be written.
    #[must_use]
    pub fn text(words: impl Into<String>) -> Self {
        Self::Text(words.into())
    }

    /// A count.
    #[must_use]
    pub fn count(count: u32) -> Self {
        Self::Number(f64::from(count))
    }

    pub(super) fn to_fluent(&self) -> FluentValue<'_> {
        match self {
            Self::Text(words) => FluentValue::from(words.as_str()),
            Self::Number(number) => FluentValue::from(*number),
        }
    }
}

impl From<&str> for Arg {
    fn from(words: &str) -> Self {
        Self::Text(words.to_owned())
    }
}

impl From<String> for Arg {
    fn from(words: String) -> Self {
        Self::Text(words)
    }
}

impl From<f64> for Arg {
    fn from(number: f64) -> Self {
        Self::Number(number)
    }
}

impl From<u32> for Arg {
    fn from(count: u32) -> Self {
        Self::count(count)
    }
}

impl From<u8> for Arg {
    fn from(count: u8) -> Self {
        Self::count(u32::from(count))
    }
}
