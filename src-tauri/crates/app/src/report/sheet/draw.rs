//! The file: one page, two typefaces, one stream of text in reading order.

use super::Sheet;
use super::figure::{DARK, Figure, HEAD, Stroke};
use super::font::{Face, encode};
use super::lines::{Line, Page, Room, squares};
use pdf_writer::types::LineCapStyle;
use pdf_writer::{Content, Finish, Name, Pdf, Rect, Ref, Str, TextStr};

const PLAIN: Name<'_> = Name(b"F1");
const BOLD: Name<'_> = Name(b"F2");

/// The whole file.
pub(super) fn pdf(sheet: &Sheet, (width, height): (f32, f32), page: &Page) -> Vec<u8> {
    let [catalog, pages, page_id, plain, bold, content, info] = [1, 2, 3, 4, 5, 6, 7].map(Ref::new);
    let mut pdf = Pdf::new();
    let mut root = pdf.catalog(catalog);
    root.pages(pages).lang(TextStr(sheet.language));
    root.viewer_preferences().display_doc_title(true);
    root.finish();
    pdf.document_info(info)
        .title(TextStr(&sheet.title))
        .creator(TextStr("Heftwell"));
    pdf.pages(pages).kids([page_id]).count(1);
    let mut leaf = pdf.page(page_id);
    leaf.media_box(Rect::new(0.0, 0.0, width, height))
        .parent(pages)
        .contents(content);
    leaf.resources().fonts().pair(PLAIN, plain).pair(BOLD, bold);
    leaf.finish();
    for (id, name) in [(plain, "Helvetica"), (bold, "Helvetica-Bold")] {
        pdf.type1_font(id)
            .base_font(Name(name.as_bytes()))
            .encoding_predefined(Name(b"WinAnsiEncoding"));
    }
    pdf.stream(content, &drawing(sheet, page));
    pdf.finish()
}

fn drawing(sheet: &Sheet, page: &Page) -> Vec<u8> {
    let mut content = Content::new();
    for line in &page.lines {
        write(&mut content, line);
    }
    for (figure, room) in sheet.figures.iter().zip(&page.figures) {
        draw(&mut content, figure, *room);
    }
    if let (Some((modules, _)), Some(place)) = (&sheet.symbol, page.symbol) {
        for (x, y, side) in squares(modules, place) {
            content.rect(x, y, side, side);
        }
        content.fill_nonzero();
    }
    content.finish().into_vec()
}

fn write(content: &mut Content, line: &Line) {
    let face = match line.face {
        Face::Plain => PLAIN,
        Face::Bold => BOLD,
    };
    content
        .begin_text()
        .set_font(face, line.size)
        .next_line(line.x, line.y)
        .show(Str(&encode(&line.text)))
        .end_text();
}

/// A figure as large as its room allows, on a line for the ground.
fn draw(content: &mut Content, figure: &Figure, room: Room) {
    let (left, foot, right, top) = figure.extent();
    let scale = (room.width / (right - left)).min(room.height / (top - foot));
    let place = |(x, y): (f32, f32)| (room.x + (x - left) * scale, room.y + (y - foot) * scale);
    content
        .save_state()
        .set_line_cap(LineCapStyle::RoundCap)
        .set_line_width(0.6)
        .set_stroke_gray(DARK);
    let (ground_left, ground) = place((left, 0.0));
    content
        .move_to(ground_left, ground)
        .line_to(place((right, 0.0)).0, ground)
        .stroke();
    let (near, behind): (Vec<&Stroke>, Vec<&Stroke>) = figure
        .strokes
        .iter()
        .partition(|stroke| stroke.grey <= DARK);
    limbs(content, &behind, scale, place);
    let (corner, (wide, high)) = figure.load;
    let (x, y) = place(corner);
    content
        .set_stroke_gray(DARK)
        .set_line_width(1.2)
        .set_fill_gray(0.93)
        .rect(x, y, wide * scale, high * scale)
        .fill_nonzero_and_stroke();
    limbs(content, &near, scale, place);
    // A line of no length with round ends is a disc.
    let (x, y) = place(figure.head);
    content
        .set_stroke_gray(DARK)
        .set_line_width(2.0 * HEAD * scale)
        .move_to(x, y)
        .line_to(x, y)
        .stroke();
    content.restore_state();
}

fn limbs(
    content: &mut Content,
    strokes: &[&Stroke],
    scale: f32,
    place: impl Fn((f32, f32)) -> (f32, f32),
) {
    for stroke in strokes {
        let ((x0, y0), (x1, y1)) = (place(stroke.from), place(stroke.to));
        content
            .set_stroke_gray(stroke.grey)
            .set_line_width(stroke.thick * scale)
            .move_to(x0, y0)
            .line_to(x1, y1)
            .stroke();
    }
}
