//! Lifts and pain as observations.

use super::id::{Id, Ids};
use super::{code, entry, text};
use crate::report::{Report, Told};
use crate::walk::text::Reader;
use crate::words::message_id;
use chrono::{DateTime, Days, FixedOffset, SecondsFormat};
use serde_json::{Value, json};

/// One observation of a lift, and one for each pain that was told.
pub(super) fn all(report: &Report, reader: Reader<'_>, ids: &Ids) -> Vec<Value> {
    parts(report, ids)
        .into_iter()
        .map(|part| entry(part.id, part.resource(reader, ids)))
        .collect()
}

/// References to all of them, in the same order.
pub(super) fn references(report: &Report, ids: &Ids) -> Vec<Value> {
    parts(report, ids)
        .into_iter()
        .map(|part| part.id.reference())
        .collect()
}

struct Part<'a> {
    id: &'a Id,
    told: &'a Told,
    what: What,
}

enum What {
    Lift,
    Pain { kind: &'static str, score: u8 },
}

fn parts<'a>(report: &'a Report, ids: &'a Ids) -> Vec<Part<'a>> {
    let mut parts = Vec::new();
    for (told, [lift, before, during, morning]) in report.told.iter().zip(&ids.lifts) {
        parts.push(Part {
            id: lift,
            told,
            what: What::Lift,
        });
        let pains = [
            (before, "before", told.before.worst()),
            (during, "during", told.during),
            (morning, "next_morning", told.next_morning),
        ];
        for (id, kind, score) in pains {
            if let Some(score) = score {
                let what = What::Pain { kind, score };
                parts.push(Part { id, told, what });
            }
        }
    }
    parts
}

impl Part<'_> {
    fn resource(&self, reader: Reader<'_>, ids: &Ids) -> Value {
        let mut resource = match self.what {
            What::Lift => lift(self.told, reader),
            What::Pain { kind, score } => pain(self.told, kind, score, reader),
        };
        if let Some(fields) = resource.as_object_mut() {
            for (name, value) in [
                ("resourceType", json!("Observation")),
                ("id", json!(self.id.text())),
                ("status", json!("final")),
                ("category", code::survey()),
                ("subject", ids.patient.reference()),
                ("device", ids.device.reference()),
            ] {
                fields.insert(name.to_owned(), value);
            }
        }
        resource
    }
}

fn pain(told: &Told, kind: &'static str, score: u8, reader: Reader<'_>) -> Value {
    let name = reader.words.text(&message_id("report-pain", kind));
    let line = format!("{name}: {score}");
    json!({
        "code": code::pain(&name),
        "effectiveDateTime": when(told.at, kind),
        "valueInteger": score,
        "text": text::narrative([line.as_str()]),
    })
}

/// The next morning has a date and no time of day.
fn when(at: DateTime<FixedOffset>, kind: &str) -> String {
    if kind == "next_morning" {
        let next = at.date_naive().checked_add_days(Days::new(1));
        return next.unwrap_or_default().to_string();
    }
    at.to_rfc3339_opts(SecondsFormat::Secs, false)
}

/// A part of an observation: what it is in words, and its value under the name of its type.
pub(super) fn component(text: &str, name: &str, value: Value) -> Value {
    let mut component = json!({ "code": code::uncoded(text) });
    if let Some(fields) = component.as_object_mut() {
        fields.insert(name.to_owned(), value);
    }
    component
}

fn lift(told: &Told, reader: Reader<'_>) -> Value {
    let words = reader.words;
    let decision = words.text(if told.done {
        "entry-done"
    } else {
        "entry-left"
    });
    let advised = words.text(&message_id("entry", told.advised.id()));
    let component =
        |id: &str, (name, value): (&str, Value)| component(&words.text(id), name, value);
    let mut components = vec![
        component("report-part-decision", ("valueString", json!(decision))),
        component("report-part-advised", ("valueString", json!(advised))),
        component("report-part-times", ("valueInteger", json!(told.times))),
    ];
    if let Some(way) = told.way {
        let name = words.text(&message_id("way", way.id()));
        components.push(component("report-part-way", ("valueString", json!(name))));
    }
    if let Some((low, high)) = told.mass_g {
        let value = if low == high {
            ("valueQuantity", code::kilograms(low))
        } else {
            let range = json!({ "low": code::kilograms(low), "high": code::kilograms(high) });
            ("valueRange", range)
        };
        components.push(component("report-part-mass", value));
    }
    let line = format!("{}. {decision}. {advised}.", told.title);
    json!({
        "code": code::uncoded(&words.text("report-part-lift")),
        "effectiveDateTime": text::time(told.at),
        "valueString": told.title,
        "component": components,
        "text": text::narrative([line.as_str()]),
    })
}
