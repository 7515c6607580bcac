//! One page for the fridge or the chart: a PDF (ISO 32000) with text that can be read out and searched.
//!
//! The letters become as small as the page asks for, down to what can still be read; what does not fit then is refused, never
//! cut off.

mod draw;
mod figure;
mod font;
mod lines;

use thiserror::Error;

pub(crate) use figure::Figure;
use lines::Style;

/// A sheet of paper.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Paper {
    A4,
    Letter,
}

impl Paper {
    /// Width and height in points: ISO 216 A4 is 210 × 297 mm, letter is 8.5 × 11 inches.
    const fn points(self) -> (f32, f32) {
        match self {
            Self::A4 => (595.28, 841.89),
            Self::Letter => (612.0, 792.0),
        }
    }
}

/// What stands on the page.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Sheet {
    /// Its language, such as `en`.
    pub(crate) language: &'static str,
    /// Heading of the page, and title of the file.
    pub(crate) title: String,
    /// Lines under it.
    pub(crate) lead: Vec<String>,
    /// Headings, each with its lines.
    pub(crate) sections: Vec<(String, Vec<String>)>,
    /// Pictures of ways to lift, side by side; three at most are drawn.
    pub(crate) figures: Vec<Figure>,
    /// A symbol to scan, with what it is.
    pub(crate) symbol: Option<(Modules, String)>,
    /// Small print at the foot.
    pub(crate) foot: Vec<String>,
}

/// The dark and light squares of a symbol, row by row, without its quiet zone.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(crate) struct Modules {
    /// Squares a side.
    pub(crate) side: usize,
    /// Dark squares.
    pub(crate) dark: Vec<bool>,
}

/// It does not fit on one page in letters that can be read.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Error)]
#[error("it does not fit on one page")]
pub(crate) struct TooLong;

/// Sizes of the running text that are tried, in points, largest first. House rule.
const SIZES: [f32; 8] = [12.5, 12.0, 11.5, 11.0, 10.5, 10.0, 9.5, 9.0];

impl Sheet {
    /// The page as a PDF file. What does not fit as it should loses its pictures, then the space round its headings, and
    /// never anything that is written.
    ///
    /// # Errors
    /// [`TooLong`].
    pub(crate) fn to_pdf(&self, paper: Paper) -> Result<Vec<u8>, TooLong> {
        let fitting = |figures: usize, is_dense: bool| {
            SIZES.iter().find_map(|size| {
                let style = Style {
                    size: *size,
                    figures,
                    is_dense,
                };
                lines::lay_out(self, paper.points(), style)
            })
        };
        fitting(self.figures.len(), false)
            .or_else(|| fitting(0, false))
            .or_else(|| fitting(0, true))
            .map(|page| draw::pdf(self, paper.points(), &page))
            .ok_or(TooLong)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn sheet(lines: usize) -> Sheet {
        Sheet {
            language: "en",
            title: "Plan".to_owned(),
            lead: vec!["For Green Ladder".to_owned()],
            sections: vec![(
                "Limits".to_owned(),
                vec!["Up to 8 kg from the floor.".to_owned(); lines],
            )],
            figures: Vec::new(),
            symbol: None,
            foot: vec!["This helps you choose.".to_owned()],
        }
    }

    #[test]
    fn a_page_is_a_pdf_of_either_paper() {
        for (paper, size) in [(Paper::A4, "595.28 841.89"), (Paper::Letter, "612 792")] {
            let bytes = sheet(5).to_pdf(paper).unwrap();
            assert!(bytes.starts_with(b"%PDF-1."));
            assert!(String::from_utf8_lossy(&bytes).contains(size), "{paper:?}");
        }
    }

    #[test]
    fn what_does_not_fit_is_refused_and_not_cut_off() {
        assert!(sheet(40).to_pdf(Paper::A4).is_ok());
        assert_eq!(sheet(400).to_pdf(Paper::A4), Err(TooLong));
    }

    #[test]
    fn many_headings_move_into_the_lines_of_their_texts_before_anything_is_refused() {
        let one = ("Limits".to_owned(), vec!["Up to 8 kg.".to_owned()]);
        let mut many = sheet(1);
        // 27 headings with a line each take more than 297 mm even in the smallest letters; without lines of their own, less.
        many.sections = vec![one; 27];
        assert_eq!(
            lines::lay_out(
                &many,
                Paper::A4.points(),
                Style {
                    size: 9.0,
                    figures: 0,
                    is_dense: false
                }
            ),
            None
        );
        assert!(many.to_pdf(Paper::A4).is_ok());
    }
}
