//! The history on one page.

use super::Report;
use super::note::{self, passages};
use super::sheet::{Paper, Sheet, TooLong};
use crate::walk::text::Reader;

/// The page as a PDF file.
///
/// # Errors
/// [`TooLong`].
pub(crate) fn page(report: &Report, reader: Reader<'_>, paper: Paper) -> Result<Vec<u8>, TooLong> {
    let words = reader.words;
    let sheet = Sheet {
        language: words.language().id(),
        title: words.text("report-page-title"),
        lead: vec![
            words.format(
                "report-page-made",
                &[("day", note::date_text(words, report.made.date_naive()))],
            ),
            note::told_by(report, words),
        ],
        sections: passages(report, reader)
            .into_iter()
            .map(|passage| (passage.title, passage.sentences))
            .collect(),
        figures: Vec::new(),
        symbol: None,
        foot: vec![words.text("report-note-limits")],
    };
    sheet.to_pdf(paper)
}
