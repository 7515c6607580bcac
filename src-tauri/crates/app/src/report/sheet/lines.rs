//! Breaking text into lines and finding each line's place.

use super::font::Face;
use super::{Modules, Sheet};

/// Space round the page, in points: what home printers leave blank is less.
pub(super) const MARGIN: f32 = 45.0;
/// Side of a symbol with its quiet zone: 55 mm, so that a module of version 25 is 0.44 mm. House rule.
pub(super) const SYMBOL: f32 = 156.0;
/// Light modules round a symbol (ISO/IEC 18004).
pub(super) const QUIET: usize = 4;

const LINE: f32 = 1.32;
const INDENT: f32 = 12.0;

/// One line of text at its place; y counts from the foot of the page.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Line {
    pub(super) face: Face,
    pub(super) size: f32,
    pub(super) x: f32,
    pub(super) y: f32,
    pub(super) text: String,
}

/// Everything on the page at its place, in reading order.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Page {
    pub(super) lines: Vec<Line>,
    /// Lower left corner of the symbol.
    pub(super) symbol: Option<(f32, f32)>,
}

/// A pen that goes down the page.
struct Pen {
    lines: Vec<Line>,
    y: f32,
    width: f32,
}

impl Pen {
    /// Writes a paragraph, the first line with `mark` before it.
    fn write(&mut self, text: &str, face: Face, size: f32, mark: Option<&str>) {
        let indent = if mark.is_some() { INDENT } else { 0.0 };
        for (at, part) in broken(text, face, size, self.width - indent)
            .into_iter()
            .enumerate()
        {
            self.y -= size * LINE;
            if let (Some(mark), 0) = (mark, at) {
                self.put(mark.to_owned(), face, size, MARGIN);
            }
            self.put(part, face, size, MARGIN + indent);
        }
    }

    fn put(&mut self, text: String, face: Face, size: f32, x: f32) {
        self.lines.push(Line {
            face,
            size,
            x,
            y: self.y,
            text,
        });
    }

    fn skip(&mut self, space: f32) {
        self.y -= space;
    }
}

/// The page with running text of this size; `None` when it does not fit.
pub(super) fn lay_out(sheet: &Sheet, (width, height): (f32, f32), size: f32) -> Option<Page> {
    let mut pen = Pen {
        lines: Vec::new(),
        y: height - MARGIN,
        width: width - 2.0 * MARGIN,
    };
    pen.write(&sheet.title, Face::Bold, size * 1.7, None);
    pen.skip(size * 0.4);
    for line in &sheet.lead {
        pen.write(line, Face::Plain, size, None);
    }
    for (heading, lines) in &sheet.sections {
        pen.skip(size * 0.8);
        pen.write(heading, Face::Bold, size * 1.15, None);
        for line in lines {
            pen.write(line, Face::Plain, size, Some("•"));
        }
    }
    let symbol = sheet.symbol.as_ref().map(|(_, caption)| {
        pen.skip(size * 0.8);
        pen.write(caption, Face::Plain, size, None);
        pen.skip(SYMBOL + size * 0.4);
        (MARGIN, pen.y)
    });
    pen.skip(size * 0.8);
    for line in &sheet.foot {
        pen.write(line, Face::Plain, size * 0.85, None);
    }
    (pen.y >= MARGIN).then_some(Page {
        lines: pen.lines,
        symbol,
    })
}

/// A text in lines no wider than `width`. A word that is too wide alone stays whole: it is seen, not lost.
fn broken(text: &str, face: Face, size: f32, width: f32) -> Vec<String> {
    let mut lines = Vec::new();
    let mut line = String::new();
    for word in text.split(' ').filter(|word| !word.is_empty()) {
        let longer = if line.is_empty() {
            word.to_owned()
        } else {
            format!("{line} {word}")
        };
        if line.is_empty() || face.width(&longer, size) <= width {
            line = longer;
        } else {
            lines.push(std::mem::replace(&mut line, word.to_owned()));
        }
    }
    lines.push(line);
    lines
}

/// The dark squares of a symbol as rectangles (x, y, side), y from the foot of the page.
pub(super) fn squares(modules: &Modules, (x, y): (f32, f32)) -> Vec<(f32, f32, f32)> {
    let across = modules.side + 2 * QUIET;
    let side = SYMBOL / across as f32;
    let place = |at: usize| (at + QUIET) as f32 * side;
    modules
        .dark
        .iter()
        .enumerate()
        .filter(|(_, dark)| **dark)
        .filter_map(|(at, _)| Some((at.checked_rem(modules.side)?, at.checked_div(modules.side)?)))
        .map(|(column, row)| (x + place(column), y + SYMBOL - place(row) - side, side))
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn no_line_is_wider_than_it_may_be_and_no_word_is_lost() {
        let text = "Keep it close. Stop if pain jumps, legs feel odd, or you feel dizzy.";
        let lines = broken(text, Face::Plain, 12.0, 120.0);
        assert!(lines.len() > 2);
        assert!(
            lines
                .iter()
                .all(|line| Face::Plain.width(line, 12.0) <= 120.0)
        );
        assert_eq!(lines.join(" "), text);
    }

    #[test]
    fn a_symbol_keeps_its_quiet_zone() {
        let modules = Modules {
            side: 2,
            dark: vec![true, false, false, true],
        };
        let side = SYMBOL / 10.0;
        let expected = [(4.0, 5.0), (5.0, 4.0)];
        for ((x, y, _), (column, row)) in squares(&modules, (0.0, 0.0)).into_iter().zip(expected) {
            assert!(
                (x - column * side).abs() < 1e-3 && (y - row * side).abs() < 1e-3,
                "{x} {y}"
            );
        }
    }
}
