//! Breaking text into lines and finding each line's place.

use super::font::Face;
use super::{Modules, Sheet};

/// Space round the page, in points: what home printers leave blank is less.
pub(super) const MARGIN: f32 = 45.0;
/// Side of a module of a symbol, 0.42 mm, which a phone's camera sees well from where it is sharp; and the least
/// and the most that a symbol takes with its quiet zone, 55 and 79 mm. House rule.
const MODULE: f32 = 1.2;
const SYMBOL: (f32, f32) = (156.0, 225.0);
/// Height of the pictures where there is no symbol beside them, and the most of them. House rules.
const PICTURES: f32 = 130.0;
const MOST_PICTURES: usize = 3;
/// Space between pictures and symbol. House rule.
const GAP: f32 = 14.0;
/// Light modules round a symbol (ISO/IEC 18004).
pub(super) const QUIET: usize = 4;

/// Height of a line, in parts of the letters' size; the second where as much as can be must fit. House rule.
const LINE: f32 = 1.32;
const DENSE_LINE: f32 = 1.22;
const INDENT: f32 = 12.0;
/// Space after a heading on the line of its text, in parts of the letters' size.
const RUN_IN: f32 = 0.4;

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
    /// Lower left corner of the symbol, and its side.
    pub(super) symbol: Option<Square>,
    /// Where the pictures go, in the order of the sheet's.
    pub(super) figures: Vec<Room>,
}

/// A square on the page: its lower left corner and its side.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Square {
    pub(super) x: f32,
    pub(super) y: f32,
    pub(super) side: f32,
}

/// A rectangle on the page: its lower left corner, width and height.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Room {
    pub(super) x: f32,
    pub(super) y: f32,
    pub(super) width: f32,
    pub(super) height: f32,
}

/// A pen that goes down the page.
struct Pen {
    lines: Vec<Line>,
    y: f32,
    width: f32,
    /// Height of a line, in parts of the letters' size.
    line: f32,
}

impl Pen {
    /// Writes a paragraph, the first line with `mark` before it.
    fn write(&mut self, text: &str, face: Face, size: f32, mark: Option<&str>) {
        let indent = if mark.is_some() { INDENT } else { 0.0 };
        for (at, part) in broken(text, face, size, self.width - indent, 0.0)
            .into_iter()
            .enumerate()
        {
            self.y -= size * self.line;
            if let (Some(mark), 0) = (mark, at) {
                self.put(mark.to_owned(), face, size, MARGIN);
            }
            self.put(part, face, size, MARGIN + indent);
        }
    }

    /// Writes a paragraph that begins with its heading, on the same line.
    fn run_in(&mut self, heading: &str, text: &str, size: f32) {
        let heading = format!("{heading}:");
        let taken = Face::Bold.width(&heading, size) + size * RUN_IN;
        for (at, part) in broken(text, Face::Plain, size, self.width, taken)
            .into_iter()
            .enumerate()
        {
            self.y -= size * self.line;
            let indent = if at == 0 { taken } else { 0.0 };
            if at == 0 {
                self.put(heading.clone(), Face::Bold, size, MARGIN);
            }
            self.put(part, Face::Plain, size, MARGIN + indent);
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

/// How a page is filled.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Style {
    /// Size of the running text, in points.
    pub(super) size: f32,
    /// Pictures on it.
    pub(super) figures: usize,
    /// Whether a heading stands on the line of its text: much more fits so.
    pub(super) is_dense: bool,
}

/// The page filled so; `None` when it does not fit.
pub(super) fn lay_out(sheet: &Sheet, (width, height): (f32, f32), style: Style) -> Option<Page> {
    let Style { size, figures, .. } = style;
    let mut pen = Pen {
        lines: Vec::new(),
        y: height - MARGIN,
        width: width - 2.0 * MARGIN,
        line: if style.is_dense { DENSE_LINE } else { LINE },
    };
    pen.write(&sheet.title, Face::Bold, size * 1.7, None);
    pen.skip(size * 0.4);
    for line in &sheet.lead {
        pen.write(line, Face::Plain, size, None);
    }
    for (heading, lines) in &sheet.sections {
        match lines.as_slice() {
            [line] if style.is_dense => {
                pen.skip(size * 0.4);
                pen.run_in(heading, line, size);
            }
            lines => {
                pen.skip(size * 0.8);
                pen.write(heading, Face::Bold, size * 1.15, None);
                for line in lines {
                    pen.write(line, Face::Plain, size, Some("•"));
                }
            }
        }
    }
    let (figures, symbol) = match &sheet.symbol {
        Some((modules, caption)) if figures == 0 => {
            let symbol = beside(&mut pen, sheet, modules, caption, size);
            (Vec::new(), Some(symbol))
        }
        _ => {
            let (figures, symbol) = band(&mut pen, sheet, size, figures.min(MOST_PICTURES));
            pen.skip(size * 0.8);
            foot(&mut pen, sheet, size);
            (figures, symbol)
        }
    };
    (pen.y >= MARGIN).then_some(Page {
        lines: pen.lines,
        symbol,
        figures,
    })
}

fn foot(pen: &mut Pen, sheet: &Sheet, size: f32) {
    for line in &sheet.foot {
        pen.write(line, Face::Plain, size * 0.85, None);
    }
}

fn side_of(modules: &Modules) -> f32 {
    ((modules.side + 2 * QUIET) as f32 * MODULE).clamp(SYMBOL.0, SYMBOL.1)
}

/// Without pictures, all that comes after the sections stands at the left of the symbol: the most text fits so.
fn beside(pen: &mut Pen, sheet: &Sheet, modules: &Modules, caption: &str, size: f32) -> Square {
    let side = side_of(modules);
    pen.skip(size * 0.8);
    let (top, whole) = (pen.y, pen.width);
    pen.width = whole - side - GAP;
    pen.write(caption, Face::Plain, size, None);
    pen.skip(size * 0.8);
    foot(pen, sheet, size);
    pen.width = whole;
    pen.y = pen.y.min(top - side);
    Square {
        x: MARGIN + whole - side,
        y: top - side,
        side,
    }
}

/// Pictures from the left, the symbol at the right, the symbol's words under both.
fn band(pen: &mut Pen, sheet: &Sheet, size: f32, figures: usize) -> (Vec<Room>, Option<Square>) {
    let side = sheet.symbol.as_ref().map(|(modules, _)| side_of(modules));
    let pictured = sheet.figures.iter().take(figures);
    let named = if figures == 0 { 0.0 } else { size * LINE };
    let high = match (side, figures) {
        (None, 0) => return (Vec::new(), None),
        (Some(side), 0) => side,
        (Some(side), _) => side.max(PICTURES),
        (None, _) => PICTURES,
    };
    pen.skip(size * 1.4 + high);
    let wide = pen.width - side.map_or(0.0, |side| side + GAP);
    let each = wide / figures.max(1) as f32;
    let mut rooms = Vec::new();
    for (at, figure) in pictured.enumerate() {
        let x = MARGIN + at as f32 * each;
        pen.put(figure.caption.clone(), Face::Bold, size, x);
        rooms.push(Room {
            x,
            y: pen.y + named,
            width: each - GAP,
            height: high - named,
        });
    }
    let symbol = side.map(|side| Square {
        x: MARGIN + pen.width - side,
        y: pen.y,
        side,
    });
    if let Some((_, caption)) = &sheet.symbol {
        pen.skip(size * 0.3);
        pen.write(caption, Face::Plain, size, None);
    }
    (rooms, symbol)
}

/// A text in lines no wider than `width`, of which the first has `taken` less. A word that is too wide alone stays whole: it
/// is seen, not lost.
fn broken(text: &str, face: Face, size: f32, width: f32, taken: f32) -> Vec<String> {
    let mut lines: Vec<String> = Vec::new();
    let mut line = String::new();
    for word in text.split(' ').filter(|word| !word.is_empty()) {
        let longer = if line.is_empty() {
            word.to_owned()
        } else {
            format!("{line} {word}")
        };
        let room = if lines.is_empty() {
            width - taken
        } else {
            width
        };
        if line.is_empty() || face.width(&longer, size) <= room {
            line = longer;
        } else {
            lines.push(std::mem::replace(&mut line, word.to_owned()));
        }
    }
    lines.push(line);
    lines
}

/// The dark squares of a symbol as rectangles (x, y, side), y from the foot of the page.
pub(super) fn squares(modules: &Modules, at: Square) -> Vec<(f32, f32, f32)> {
    let across = modules.side + 2 * QUIET;
    let side = at.side / across as f32;
    let place = |at: usize| (at + QUIET) as f32 * side;
    modules
        .dark
        .iter()
        .enumerate()
        .filter(|(_, dark)| **dark)
        .filter_map(|(at, _)| Some((at.checked_rem(modules.side)?, at.checked_div(modules.side)?)))
        .map(|(column, row)| {
            (
                at.x + place(column),
                at.y + at.side - place(row) - side,
                side,
            )
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn no_line_is_wider_than_it_may_be_and_no_word_is_lost() {
        let text = "Keep it close. Stop if pain jumps, legs feel odd, or you feel dizzy.";
        let lines = broken(text, Face::Plain, 12.0, 120.0, 40.0);
        assert!(lines.len() > 2);
        assert!(
            lines
                .iter()
                .all(|line| Face::Plain.width(line, 12.0) <= 120.0)
        );
        assert!(Face::Plain.width(&lines[0], 12.0) <= 80.0);
        assert_eq!(lines.join(" "), text);
    }

    #[test]
    fn a_symbol_keeps_its_quiet_zone() {
        let modules = Modules {
            side: 2,
            dark: vec![true, false, false, true],
        };
        let whole = Square {
            x: 0.0,
            y: 0.0,
            side: 150.0,
        };
        let side = 15.0;
        let expected = [(4.0, 5.0), (5.0, 4.0)];
        for ((x, y, _), (column, row)) in squares(&modules, whole).into_iter().zip(expected) {
            assert!(
                (x - column * side).abs() < 1e-3 && (y - row * side).abs() < 1e-3,
                "{x} {y}"
            );
        }
    }
}
