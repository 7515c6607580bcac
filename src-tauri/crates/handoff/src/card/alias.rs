//! What the holder of a device calls themselves.

use unicode_normalization::{UnicodeNormalization, is_nfc};

/// 1 to 40 characters in Unicode normalisation form C, without control characters or characters that
/// turn the direction of writing, and without spaces at either end.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Alias(String);

/// Why a text is no alias.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
#[non_exhaustive]
pub enum AliasError {
    /// Nothing, or more than 40 characters.
    #[error("empty or too long")]
    Length,
    /// A character that is not shown, or that changes how others are shown.
    #[error("a character that is not shown")]
    Character,
    /// Not in form C, or with spaces at an end: the same alias would have two spellings.
    #[error("not in its plain form")]
    Form,
}

impl Alias {
    /// Most characters of an alias (house rule: one line on a narrow screen).
    pub const LONGEST: usize = 40;

    /// Takes an alias that is already in its plain form.
    ///
    /// # Errors
    /// See [`AliasError`].
    pub fn new(text: &str) -> Result<Self, AliasError> {
        if text.trim() != text || !is_nfc(text) {
            return Err(AliasError::Form);
        }
        if !(1..=Self::LONGEST).contains(&text.chars().count()) {
            return Err(AliasError::Length);
        }
        if text.chars().any(is_hidden) {
            return Err(AliasError::Character);
        }
        Ok(Self(text.to_owned()))
    }

    /// Brings typed text to its plain form and takes it.
    ///
    /// # Errors
    /// See [`AliasError`].
    pub fn typed(text: &str) -> Result<Self, AliasError> {
        Self::new(&text.trim().nfc().collect::<String>())
    }

    /// The text.
    #[must_use]
    pub fn as_str(&self) -> &str {
        &self.0
    }

    /// Whether people would take both for the same name: case and runs of spaces do not count.
    #[must_use]
    pub fn sounds_like(&self, other: &Self) -> bool {
        let plain = |alias: &Self| {
            let words: Vec<String> = alias
                .0
                .nfkc()
                .collect::<String>()
                .split_whitespace()
                .map(str::to_lowercase)
                .collect();
            words.join(" ")
        };
        plain(self) == plain(other)
    }
}

/// Control characters, line and paragraph separators, joiners and direction marks (Unicode, general
/// categories Cc, Zl, Zp and the format characters of Bidi_Control and zero width).
fn is_hidden(character: char) -> bool {
    character.is_control()
        || matches!(character,
            '\u{00ad}' | '\u{061c}' | '\u{180e}' | '\u{200b}'..='\u{200f}' | '\u{2028}'..='\u{202e}'
            | '\u{2060}'..='\u{206f}' | '\u{feff}' | '\u{fff9}'..='\u{fffb}' | '\u{e0000}'..='\u{e007f}')
}

#[cfg(test)]
mod tests {
    use super::{Alias, AliasError};

    #[test]
    fn typed_text_is_brought_to_one_spelling() {
        let typed = Alias::typed("  Man\u{303}ana 3 ").unwrap();
        assert_eq!(typed.as_str(), "Mañana 3");
        assert_eq!(Alias::new("Mañana 3"), Ok(typed));
    }

    #[test]
    fn refuses_what_cannot_be_shown_as_it_is() {
        assert_eq!(Alias::new(""), Err(AliasError::Length));
        assert_eq!(Alias::new(&"a".repeat(41)), Err(AliasError::Length));
        assert!(Alias::new(&"ñ".repeat(40)).is_ok());
        assert_eq!(Alias::new(" Ada"), Err(AliasError::Form));
        assert_eq!(Alias::new("Man\u{303}ana"), Err(AliasError::Form));
        assert_eq!(Alias::new("A\u{202e}da"), Err(AliasError::Character));
        assert_eq!(Alias::new("A\nda"), Err(AliasError::Character));
        assert_eq!(Alias::new("A\u{200b}da"), Err(AliasError::Character));
    }

    #[test]
    fn case_and_spaces_do_not_make_another_name() {
        let one = Alias::typed("Physio  North").unwrap();
        assert!(one.sounds_like(&Alias::typed("physio north").unwrap()));
        assert!(!one.sounds_like(&Alias::typed("physio south").unwrap()));
    }
}
