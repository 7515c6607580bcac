//! The file: one page, two typefaces, one stream of text in reading order.

use super::Sheet;
use super::font::{Face, encode};
use super::lines::{Line, Page, squares};
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
    if let (Some((modules, _)), Some(corner)) = (&sheet.symbol, page.symbol) {
        for (x, y, side) in squares(modules, corner) {
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
