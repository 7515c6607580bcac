//! Drawing a QR symbol: modules, grey picture, PNG, SVG path.

mod picture;

use qrcode::bits::Bits;
use qrcode::{Color, EcLevel, QrCode, Version};

pub use picture::Grey;

/// White modules on each side (ISO/IEC 18004, section 9.1).
pub const QUIET_ZONE: usize = 4;

/// Why a symbol was not drawn.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
#[non_exhaustive]
pub enum DrawError {
    /// The text does not fit.
    #[error("too long")]
    TooLong,
    /// A character that is not in the alphanumeric set.
    #[error("a character that does not go into a symbol")]
    Character,
    /// The picture would be too large, or could not be written.
    #[error("no picture of this size")]
    Picture,
}

/// A symbol as its square of modules, without the quiet zone.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Symbol {
    text: String,
    version: u8,
    side: usize,
    dark: Vec<bool>,
}

impl Symbol {
    /// The smallest symbol at level M for `text`, up to version `largest`. One symbol stands still, so
    /// what cannot be read is looked at again; level M mends dirt and glare on paper.
    ///
    /// # Errors
    /// [`DrawError::TooLong`], [`DrawError::Character`].
    pub fn single(text: &str, largest: u8) -> Result<Self, DrawError> {
        check(text)?;
        (1..=largest.min(40))
            .find_map(|version| draw(text, version, EcLevel::M))
            .ok_or(DrawError::TooLong)
    }

    /// A symbol of one version at level L, for a sequence: all have the same size on the screen, and the
    /// erasure code mends what is lost.
    ///
    /// # Errors
    /// [`DrawError::TooLong`], [`DrawError::Character`].
    pub fn of_sequence(text: &str, version: u8) -> Result<Self, DrawError> {
        check(text)?;
        draw(text, version, EcLevel::L).ok_or(DrawError::TooLong)
    }

    /// What it says.
    #[must_use]
    pub fn text(&self) -> &str {
        &self.text
    }

    /// Version, 1 to 40.
    #[must_use]
    pub fn version(&self) -> u8 {
        self.version
    }

    /// Modules on a side, without the quiet zone: 17 + 4 × version.
    #[must_use]
    pub fn side(&self) -> usize {
        self.side
    }

    /// Rows of modules from the top, `true` for dark.
    pub fn rows(&self) -> impl Iterator<Item = &[bool]> {
        self.dark.chunks(self.side)
    }
}

fn check(text: &str) -> Result<(), DrawError> {
    let is_known = |c: char| {
        c.is_ascii_digit()
            || c.is_ascii_uppercase()
            || matches!(c, ' ' | '$' | '%' | '*' | '+' | '-' | '.' | '/' | ':')
    };
    if text.chars().all(is_known) {
        Ok(())
    } else {
        Err(DrawError::Character)
    }
}

/// Draws in alphanumeric mode whatever the text: scanners that hand over text keep it as it is.
fn draw(text: &str, version: u8, level: EcLevel) -> Option<Symbol> {
    let mut bits = Bits::new(Version::Normal(i16::from(version)));
    bits.push_alphanumeric_data(text.as_bytes()).ok()?;
    bits.push_terminator(level).ok()?;
    let code = QrCode::with_bits(bits, level).ok()?;
    Some(Symbol {
        text: text.to_owned(),
        version,
        side: code.width(),
        dark: code
            .to_colors()
            .into_iter()
            .map(|color| color == Color::Dark)
            .collect(),
    })
}
