//! A table for a spreadsheet: one row a lift, then one an entry of the log of the plan, RFC 4180, in UTF-8. Names of columns and ids are the same in every
//! language, so that whoever computes with it need not translate.

use super::{Report, Told};
use crate::convert::practice::Noted;
use csv::{Terminator, Writer, WriterBuilder};
use record::{Pain, PracticeEvent};

const COLUMNS: [&str; 20] = [
    "at",
    "title",
    "decision",
    "advised",
    "way",
    "mass_low_kg",
    "mass_high_kg",
    "times",
    "before_back_nrs",
    "before_knee_left_nrs",
    "before_knee_right_nrs",
    "before_hip_left_nrs",
    "before_hip_right_nrs",
    "before_shoulders_nrs",
    "before_worst_nrs",
    "during_nrs",
    "next_morning_nrs",
    "flare",
    "rules",
    "made",
];

/// The table as text. Empty cells are "not told", never zero.
#[must_use]
pub(crate) fn table(report: &Report) -> String {
    let mut writer = WriterBuilder::new()
        .terminator(Terminator::CRLF)
        .from_writer(Vec::new());
    let made = report.made.to_rfc3339();
    let written = rows(&mut writer, report, &made);
    // Writing to memory does not fail; a table that is cut short would be worse than none.
    match (written, writer.into_inner()) {
        (Ok(()), Ok(bytes)) => String::from_utf8(bytes).unwrap_or_default(),
        _ => String::new(),
    }
}

fn rows(writer: &mut Writer<Vec<u8>>, report: &Report, made: &str) -> Result<(), csv::Error> {
    writer.write_record(COLUMNS)?;
    for told in &report.told {
        writer.write_record(cells(told, made))?;
    }
    let practised = report.practice.iter();
    for noted in practised.flat_map(|practised| &practised.log) {
        if let Some(cells) = practice_cells(noted, made) {
            writer.write_record(cells)?;
        }
    }
    Ok(())
}

fn cells(told: &Told, made: &str) -> Vec<String> {
    let number = |value: Option<u8>| value.map(|value| value.to_string()).unwrap_or_default();
    let kilograms = |grams: Option<u32>| {
        grams
            .map(|grams| (f64::from(grams) / 1000.0).to_string())
            .unwrap_or_default()
    };
    let mut cells = vec![
        told.at.to_rfc3339(),
        harmless(&told.title),
        if told.done { "done" } else { "left" }.to_owned(),
        told.advised.id().to_owned(),
        told.way.map(|way| way.id().to_owned()).unwrap_or_default(),
        kilograms(told.mass_g.map(|(low, _)| low)),
        kilograms(told.mass_g.map(|(_, high)| high)),
        told.times.to_string(),
    ];
    cells.extend(told.before.regions().map(|(_, pain)| number(pain)));
    cells.extend([
        number(told.before.worst()),
        number(told.during),
        number(told.next_morning),
        if told.flare { "yes" } else { "no" }.to_owned(),
        told.rules.clone(),
        made.to_owned(),
    ]);
    cells
}

/// A row of the log of the plan: its mass is what was practised with, or the level from then on.
fn practice_cells(noted: &Noted, made: &str) -> Option<Vec<String>> {
    let decision = match noted.event {
        PracticeEvent::Done => "practised",
        PracticeEvent::Left => "practice_left",
        PracticeEvent::StepUp => "step_up",
        PracticeEvent::StepDown => "step_down",
        PracticeEvent::Flare => "flare",
        PracticeEvent::OfferLeft => return None,
    };
    let score = |pain: Option<Pain>| pain.map(|pain| pain.rating().to_string());
    let kilograms = noted.grams.map(|grams| f64::from(grams) / 1000.0);
    let kilograms = kilograms.map(|mass| mass.to_string()).unwrap_or_default();
    let morning = noted.morning.and_then(|morning| morning.pain);
    let cell = |column: &str| match column {
        "at" => noted.at.to_rfc3339(),
        "decision" => decision.to_owned(),
        "way" => noted.way.map(|way| way.id().to_owned()).unwrap_or_default(),
        "mass_low_kg" | "mass_high_kg" => kilograms.clone(),
        "during_nrs" => score(noted.pain).unwrap_or_default(),
        "next_morning_nrs" => score(morning).unwrap_or_default(),
        "flare" if noted.event == PracticeEvent::Flare => "yes".to_owned(),
        "made" => made.to_owned(),
        _ => String::new(),
    };
    Some(COLUMNS.map(cell).to_vec())
}

/// Text that a spreadsheet takes for text: a cell that begins like a formula is run by some programs (OWASP, CSV
/// injection).
fn harmless(text: &str) -> String {
    if text.starts_with(['=', '+', '-', '@', '\t', '\r']) {
        format!("'{text}")
    } else {
        text.to_owned()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_cell_that_begins_like_a_formula_is_made_harmless() {
        assert_eq!(harmless("=1+1"), "'=1+1");
        assert_eq!(harmless("@home"), "'@home");
        assert_eq!(harmless("Box, 10 kg"), "Box, 10 kg");
    }
}
