//! The two typefaces every reader of PDF brings along, and how wide their letters are.
//!
//! Widths: Adobe Font Metrics of Helvetica and Helvetica-Bold, in thousandths of the size, by code of WinAnsiEncoding
//! (ISO 32000-1, annex D). `tests/interop` compares them with those of another library.

/// A typeface.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Face {
    Plain,
    Bold,
}

impl Face {
    /// How wide a text is at a size, in points.
    pub(super) fn width(self, text: &str, size: f32) -> f32 {
        let widths = match self {
            Self::Plain => &PLAIN,
            Self::Bold => &BOLD,
        };
        let thousandths: u32 = encode(text)
            .iter()
            .filter_map(|code| widths.get(usize::from(*code).checked_sub(FIRST)?))
            .map(|width| u32::from(*width))
            .sum();
        thousandths as f32 / 1000.0 * size
    }
}

/// A text in WinAnsiEncoding. A letter that it lacks becomes a question mark: better seen than dropped.
pub(super) fn encode(text: &str) -> Vec<u8> {
    text.chars().map(code).collect()
}

fn code(letter: char) -> u8 {
    let special = SPECIAL.iter().find(|(known, _)| *known == letter);
    match (special, u32::from(letter)) {
        (Some((_, code)), _) => *code,
        (None, plain @ (0x20..=0x7e | 0xa0..=0xff)) => u8::try_from(plain).unwrap_or(b'?'),
        (None, _) => b'?',
    }
}

/// Letters between 0x80 and 0x9F, where the code is not that of Unicode.
const SPECIAL: [(char, u8); 9] = [
    ('€', 0x80),
    ('…', 0x85),
    ('‘', 0x91),
    ('’', 0x92),
    ('“', 0x93),
    ('”', 0x94),
    ('•', 0x95),
    ('–', 0x96),
    ('—', 0x97),
];

/// The code of the first width.
const FIRST: usize = 32;

#[rustfmt::skip]
const PLAIN: [u16; 224] = [
    278, 278, 355, 556, 556, 889, 667, 191, 333, 333, 389, 584, 278, 333, 278, 278,
    556, 556, 556, 556, 556, 556, 556, 556, 556, 556, 278, 278, 584, 584, 584, 556,
    1015, 667, 667, 722, 722, 667, 611, 778, 722, 278, 500, 667, 556, 833, 722, 778,
    667, 778, 722, 667, 611, 722, 667, 944, 667, 667, 611, 278, 278, 278, 469, 556,
    333, 556, 556, 500, 556, 556, 278, 556, 556, 222, 222, 500, 222, 833, 556, 556,
    556, 556, 333, 500, 278, 556, 500, 722, 500, 500, 500, 334, 260, 334, 584, 350,
    556, 350, 222, 556, 333, 1000, 556, 556, 333, 1000, 667, 333, 1000, 350, 611, 350,
    350, 222, 222, 333, 333, 350, 556, 1000, 333, 1000, 500, 333, 944, 350, 500, 667,
    278, 333, 556, 556, 556, 556, 260, 556, 333, 737, 370, 556, 584, 333, 737, 333,
    400, 584, 333, 333, 333, 556, 537, 278, 333, 333, 365, 556, 834, 834, 834, 611,
    667, 667, 667, 667, 667, 667, 1000, 722, 667, 667, 667, 667, 278, 278, 278, 278,
    722, 722, 778, 778, 778, 778, 778, 584, 778, 722, 722, 722, 722, 667, 667, 611,
    556, 556, 556, 556, 556, 556, 889, 500, 556, 556, 556, 556, 278, 278, 278, 278,
    556, 556, 556, 556, 556, 556, 556, 584, 611, 556, 556, 556, 556, 500, 556, 500,
];

#[rustfmt::skip]
const BOLD: [u16; 224] = [
    278, 333, 474, 556, 556, 889, 722, 238, 333, 333, 389, 584, 278, 333, 278, 278,
    556, 556, 556, 556, 556, 556, 556, 556, 556, 556, 333, 333, 584, 584, 584, 611,
    975, 722, 722, 722, 722, 667, 611, 778, 722, 278, 556, 722, 611, 833, 722, 778,
    667, 778, 722, 667, 611, 722, 667, 944, 667, 667, 611, 333, 278, 333, 584, 556,
    333, 556, 611, 556, 611, 556, 333, 611, 611, 278, 278, 556, 278, 889, 611, 611,
    611, 611, 389, 556, 333, 611, 556, 778, 556, 556, 500, 389, 280, 389, 584, 350,
    556, 350, 278, 556, 500, 1000, 556, 556, 333, 1000, 667, 333, 1000, 350, 611, 350,
    350, 278, 278, 500, 500, 350, 556, 1000, 333, 1000, 556, 333, 944, 350, 500, 667,
    278, 333, 556, 556, 556, 556, 280, 556, 333, 737, 370, 556, 584, 333, 737, 333,
    400, 584, 333, 333, 333, 611, 556, 278, 333, 333, 365, 556, 834, 834, 834, 611,
    722, 722, 722, 722, 722, 722, 1000, 722, 667, 667, 667, 667, 278, 278, 278, 278,
    722, 722, 778, 778, 778, 778, 778, 584, 778, 722, 722, 722, 722, 667, 667, 611,
    556, 556, 556, 556, 556, 556, 889, 556, 556, 556, 556, 556, 278, 278, 278, 278,
    611, 611, 611, 611, 611, 611, 611, 584, 611, 611, 611, 611, 611, 556, 611, 556,
];

#[cfg(test)]
mod tests {
    use super::*;

    /// Adobe Font Metrics, Helvetica: H 556+166 = 722, e 556, f 278, t 278.
    #[test]
    fn a_word_is_as_wide_as_its_letters() {
        let expected = (722.0 + 556.0 + 278.0 + 278.0) / 1000.0 * 10.0;
        assert!((Face::Plain.width("Heft", 10.0) - expected).abs() < 1e-4);
    }

    #[test]
    fn letters_of_both_languages_are_there() {
        assert_eq!(encode("ñáé¿½–"), [0xf1, 0xe1, 0xe9, 0xbf, 0xbd, 0x96]);
        assert_eq!(encode("\u{a0}→"), [0xa0, b'?']);
    }
}
