//! The log of a plan as observations: practice as an activity, steps and flare-ups as answers.

use super::id::{Id, Ids};
use super::observation::component;
use super::{code, entry, text};
use crate::convert::practice::Noted;
use crate::report::Report;
use crate::use_cases::plan::lines::{limit, way_name};
use crate::walk::text::Reader;
use crate::words::{Arg, message_id};
use chrono::Days;
use record::{Practice, PracticeEvent};
use serde_json::{Value, json};

/// The entries of the log that a document tells, as the table does: not a step that was offered and left.
pub(super) fn told(report: &Report) -> impl Iterator<Item = &Noted> {
    let log = report.practice.iter().flat_map(|practised| &practised.log);
    log.filter(|noted| noted.event != PracticeEvent::OfferLeft)
}

/// An observation of each entry, and one for each pain that was told.
pub(super) fn all(report: &Report, reader: Reader<'_>, ids: &Ids) -> Vec<Value> {
    parts(report, ids)
        .map(|part| entry(part.id, part.resource(report, reader, ids)))
        .collect()
}

/// The section of the composition that tells them, each in a line; `None` without any.
pub(super) fn section(report: &Report, reader: Reader<'_>, ids: &Ids) -> Option<Value> {
    let references: Vec<Value> = parts(report, ids).map(|part| part.id.reference()).collect();
    let lines: Vec<String> = told(report)
        .map(|noted| {
            let day = reader.words.date_text(noted.at.date_naive());
            format!("{day}: {}", line(noted, reader))
        })
        .collect();
    (!references.is_empty()).then(|| {
        json!({
            "title": reader.words.text("report-title-practice"),
            "text": text::narrative(lines.iter().map(String::as_str)),
            "entry": references,
        })
    })
}

struct Part<'a> {
    id: &'a Id,
    noted: &'a Noted,
    what: What,
}

enum What {
    Entry,
    During(u8),
    NextMorning(u8),
}

fn parts<'a>(report: &'a Report, ids: &'a Ids) -> impl Iterator<Item = Part<'a>> {
    told(report)
        .zip(&ids.practice)
        .flat_map(|(noted, [own, during, morning])| {
            let part = |id, what| Part { id, noted, what };
            let pain = noted.pain.map(|pain| What::During(pain.rating()));
            let next = noted.morning.and_then(|morning| morning.pain);
            let next = next.map(|pain| What::NextMorning(pain.rating()));
            [
                Some(part(own, What::Entry)),
                pain.map(|what| part(during, what)),
                next.map(|what| part(morning, what)),
            ]
            .into_iter()
            .flatten()
        })
}

impl Part<'_> {
    fn resource(&self, report: &Report, reader: Reader<'_>, ids: &Ids) -> Value {
        let noted = self.noted;
        let is_practice = matches!(noted.event, PracticeEvent::Done | PracticeEvent::Left);
        let (category, mut resource) = match self.what {
            What::Entry if is_practice => (code::activity(), practice(report, noted, reader)),
            What::Entry => (code::survey(), step(noted, reader)),
            What::During(score) => {
                let at = text::time(noted.at);
                let pain = pain("report-pain-practising", at, score, reader);
                (code::survey(), pain)
            }
            What::NextMorning(score) => {
                let pain = pain("report-pain-next-morning", morning_of(noted), score, reader);
                (code::survey(), pain)
            }
        };
        if let Some(fields) = resource.as_object_mut() {
            for (name, value) in [
                ("resourceType", json!("Observation")),
                ("id", json!(self.id.text())),
                ("status", json!("final")),
                ("category", category),
                ("subject", ids.patient.reference()),
                ("device", ids.device.reference()),
            ] {
                fields.insert(name.to_owned(), value);
            }
        }
        resource
    }
}

/// The next morning has a date and no time of day: the one on which it was told, or else the day after.
fn morning_of(noted: &Noted) -> String {
    let told = noted.morning.and_then(|morning| morning.at);
    let day = told.map(|at| at.date_naive());
    day.or_else(|| noted.at.date_naive().checked_add_days(Days::new(1)))
        .unwrap_or_default()
        .to_string()
}

fn pain(name: &str, when: String, score: u8, reader: Reader<'_>) -> Value {
    let name = reader.words.text(name);
    let line = format!("{name}: {score}");
    json!({
        "code": code::pain(&name),
        "effectiveDateTime": when,
        "valueInteger": score,
        "text": text::narrative([line.as_str()]),
    })
}

/// What was practised, or left: with which way and how much, and, when done, the sets and times that the plan of that day asks
/// for. How many were done is not told.
fn practice(report: &Report, noted: &Noted, reader: Reader<'_>) -> Value {
    let words = reader.words;
    let decision = words.text(match noted.event {
        PracticeEvent::Done => "entry-done",
        _ => "entry-left",
    });
    let of = |id: &str, name: &str, value: Value| component(&words.text(id), name, value);
    let mut components = vec![of("report-part-decision", "valueString", json!(decision))];
    if let Some(way) = noted.way {
        let name = json!(way_name(way, reader));
        components.push(of("report-part-way", "valueString", name));
    }
    if let Some(grams) = noted.grams {
        let mass = code::kilograms(grams);
        components.push(of("report-part-mass", "valueQuantity", mass));
    }
    if let Some(planned) = planned(report, noted) {
        for (id, number) in [
            ("report-part-sets", planned.sets),
            ("report-part-times-set", planned.times),
        ] {
            components.push(of(id, "valueInteger", json!(number)));
        }
    }
    resource(noted, "report-title-practice", components, reader)
}

/// A step that was taken, or a flare-up, with the level from then on.
fn step(noted: &Noted, reader: Reader<'_>) -> Value {
    let level = noted.grams.map(|grams| {
        let name = reader.words.text("report-part-level");
        component(&name, "valueQuantity", code::kilograms(grams))
    });
    let code = match noted.event {
        PracticeEvent::Flare => "report-part-flare",
        _ => "report-part-step",
    };
    resource(noted, code, level.into_iter().collect(), reader)
}

fn resource(noted: &Noted, code: &str, components: Vec<Value>, reader: Reader<'_>) -> Value {
    let line = line(noted, reader);
    let mut resource = json!({
        "code": code::uncoded(&reader.words.text(code)),
        "effectiveDateTime": text::time(noted.at),
        "valueString": line,
        "text": text::narrative([line.as_str()]),
    });
    // A list must not be empty in JSON (hl7.org/fhir/R4/json.html).
    if let (Some(fields), false) = (resource.as_object_mut(), components.is_empty()) {
        fields.insert("component".to_owned(), Value::Array(components));
    }
    resource
}

/// What the plan asks for of what was done: known where the version is the one at hand, and the way is in it once.
fn planned<'a>(report: &'a Report, noted: &Noted) -> Option<&'a Practice> {
    let plan = report.plan.as_ref();
    let plan = plan.filter(|plan| plan.version == noted.version)?;
    let mut of_way = plan
        .practice
        .iter()
        .filter(|practice| Some(practice.way) == noted.way);
    let found = of_way.next().filter(|_| of_way.next().is_none());
    found.filter(|_| noted.event == PracticeEvent::Done)
}

/// The entry in one line, as the log shows it.
fn line(noted: &Noted, reader: Reader<'_>) -> String {
    let words = reader.words;
    let way = noted.way.map_or_else(
        || words.text("plan-log-practice"),
        |way| way_name(way, reader),
    );
    let mass = noted.grams.map_or_else(
        || words.text("plan-log-no-level"),
        |grams| limit(grams, reader),
    );
    let args = [("way", Arg::text(way)), ("mass", Arg::text(mass))];
    words.format(&message_id("plan-log", noted.event.id()), &args)
}
