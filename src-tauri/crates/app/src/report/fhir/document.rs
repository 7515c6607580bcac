//! The frame of the document: composition, patient, device, provenance.

use super::id::Ids;
use super::{code, entry, text};
use crate::card::RULE_VERSION;
use crate::report::Report;
use crate::report::note::sentences;
use crate::walk::text::Reader;
use serde_json::{Value, json};

const APP: &str = "Heftwell";

/// Composition first, then patient and device.
pub(super) fn opening(report: &Report, reader: Reader<'_>, ids: &Ids) -> Vec<Value> {
    vec![
        entry(&ids.composition, composition(report, reader, ids)),
        entry(&ids.patient, patient(report, reader, ids)),
        entry(&ids.device, device(report, ids)),
    ]
}

fn composition(report: &Report, reader: Reader<'_>, ids: &Ids) -> Value {
    let words = reader.words;
    let title = words.text("report-document-title");
    let said = sentences(report, reader);
    let limits = words.text("report-note-limits");
    let mut history = json!({
        "title": words.text("report-section-history"),
        "text": text::narrative(said.iter().map(String::as_str)),
    });
    let entries: Vec<Value> = super::observation::references(report, ids);
    if let (Some(section), false) = (history.as_object_mut(), entries.is_empty()) {
        section.insert("entry".to_owned(), Value::Array(entries));
    }
    let mut sections = vec![history];
    sections.extend(super::practice::section(report, reader, ids));
    sections.extend(super::plan::section(report, reader, ids));
    sections.push(json!({
        "title": words.text("report-section-limits"),
        "text": text::narrative([limits.as_str()]),
    }));
    json!({
        "resourceType": "Composition",
        "id": ids.composition.text(),
        "status": "final",
        "type": code::progress_note(&title),
        "subject": ids.patient.reference(),
        "date": text::time(report.made),
        "author": [ids.patient.reference(), ids.device.reference()],
        "title": title,
        "text": text::narrative([title.as_str(), limits.as_str()]),
        "section": sections,
    })
}

/// The person who told it: whose phone it is, without a name, or the name that somebody has here.
fn patient(report: &Report, reader: Reader<'_>, ids: &Ids) -> Value {
    let holder = report
        .of
        .clone()
        .unwrap_or_else(|| reader.words.text("report-holder"));
    json!({
        "resourceType": "Patient",
        "id": ids.patient.text(),
        "text": text::narrative([holder.as_str()]),
        "identifier": [{ "system": super::id::SYSTEM, "value": ids.patient.url() }],
    })
}

fn device(report: &Report, ids: &Ids) -> Value {
    let app = env!("CARGO_PKG_VERSION");
    let rules = report.told.last().map(|told| told.rules.as_str());
    let rules = rules
        .filter(|rules| !rules.is_empty())
        .unwrap_or(RULE_VERSION);
    let line = format!("{APP} {app}, {rules}");
    json!({
        "resourceType": "Device",
        "id": ids.device.text(),
        "text": text::narrative([line.as_str()]),
        "deviceName": [{ "name": APP, "type": "user-friendly-name" }],
        "version": [
            { "type": { "text": "app" }, "value": app },
            { "type": { "text": "rules" }, "value": rules },
        ],
    })
}

/// Which program put the document together, and from whose answers.
pub(super) fn provenance(report: &Report, ids: &Ids) -> Value {
    let line = format!("{APP} {}", env!("CARGO_PKG_VERSION"));
    let resource = json!({
        "resourceType": "Provenance",
        "id": ids.provenance.text(),
        "text": text::narrative([line.as_str()]),
        "target": [ids.composition.reference()],
        "recorded": text::time(report.made),
        "agent": [{
            "type": code::assembler(),
            "who": ids.device.reference(),
            "onBehalfOf": ids.patient.reference(),
        }],
    });
    entry(&ids.provenance, resource)
}
