//! The plan behind the history, as a care plan with its goals.

use super::id::{Id, Ids};
use super::{code, entry, text};
use crate::convert::moment::from_record;
use crate::convert::plan::to_date;
use crate::report::Report;
use crate::use_cases::plan::lines::{limit, lines, title};
use crate::walk::text::Reader;
use crate::words::Arg;
use record::Plan;
use serde_json::{Value, json};

/// The care plan, then its goals; nothing without a plan.
pub(super) fn all(report: &Report, reader: Reader<'_>, ids: &Ids) -> Vec<Value> {
    let Some(plan) = &report.plan else {
        return Vec::new();
    };
    let goals = goals(plan, reader, ids);
    let mut entries = vec![entry(
        &ids.plan,
        care_plan(report, plan, &goals, reader, ids),
    )];
    entries.extend(
        goals
            .into_iter()
            .map(|goal| entry(goal.id, goal.resource(plan, ids))),
    );
    entries
}

/// The section of the composition that tells the plan; `None` without one.
pub(super) fn section(report: &Report, reader: Reader<'_>, ids: &Ids) -> Option<Value> {
    let plan = report.plan.as_ref()?;
    let told = told(plan, reader);
    Some(json!({
        "title": reader.words.text("report-section-plan"),
        "text": text::narrative(told.iter().map(String::as_str)),
        "entry": [ids.plan.reference()],
    }))
}

fn told(plan: &Plan, reader: Reader<'_>) -> Vec<String> {
    let head = [
        ("title", Arg::text(title(plan, reader))),
        ("by", Arg::text(plan.by.as_str())),
        ("version", plan.version.into()),
    ];
    let mut told = vec![reader.words.format("report-plan-of", &head)];
    let parts = lines(plan, reader).into_iter();
    told.extend(parts.map(|line| format!("{}: {}", line.label, line.text)));
    told
}

/// A plan past its review date may hold or not (hl7.org/fhir/R4/valueset-request-status.html).
fn status(report: &Report, plan: &Plan) -> &'static str {
    if to_date(plan.review_on) < report.made.date_naive() {
        "unknown"
    } else {
        "active"
    }
}

fn care_plan(
    report: &Report,
    plan: &Plan,
    goals: &[Goal<'_>],
    reader: Reader<'_>,
    ids: &Ids,
) -> Value {
    let told = told(plan, reader);
    let activity: Vec<Value> = lines(plan, reader)
        .into_iter()
        .map(|line| {
            let description = format!("{}: {}", line.label, line.text);
            json!({ "detail": { "status": "in-progress", "description": description } })
        })
        .collect();
    let mut resource = json!({
        "resourceType": "CarePlan",
        "id": ids.plan.text(),
        "text": text::narrative(told.iter().map(String::as_str)),
        "status": status(report, plan),
        "intent": "plan",
        "title": title(plan, reader),
        "description": told.first(),
        "subject": ids.patient.reference(),
        "period": {
            "start": text::time(from_record(plan.made_at)),
            "end": to_date(plan.review_on).to_string(),
        },
        "created": text::time(from_record(plan.made_at)),
    });
    // A list must not be empty in JSON (hl7.org/fhir/R4/json.html).
    if let Some(fields) = resource.as_object_mut() {
        let goals: Vec<Value> = goals.iter().map(|goal| goal.id.reference()).collect();
        for (name, list) in [("goal", goals), ("activity", activity)] {
            if !list.is_empty() {
                fields.insert(name.to_owned(), Value::Array(list));
            }
        }
    }
    resource
}

/// What the plan asks to keep to.
struct Goal<'a> {
    id: &'a Id,
    text: String,
    measure: String,
    detail: (&'static str, Value),
}

fn goals<'a>(plan: &Plan, reader: Reader<'_>, ids: &'a Ids) -> Vec<Goal<'a>> {
    let words = reader.words;
    let [for_mass, for_pain] = &ids.goals;
    let mass = plan.ceiling_g.map(|grams| {
        let mut quantity = code::kilograms(grams);
        if let Some(fields) = quantity.as_object_mut() {
            fields.insert("comparator".to_owned(), json!("<="));
        }
        Goal {
            id: for_mass,
            text: words.format("report-goal-mass", &[("mass", limit(grams, reader).into())]),
            measure: words.text("report-part-mass"),
            detail: ("detailQuantity", quantity),
        }
    });
    let pain = plan.pain_ceiling.map(|pain| Goal {
        id: for_pain,
        text: words.format("plan-pain-ceiling", &[("pain", pain.rating().into())]),
        measure: words.text("report-pain-before"),
        detail: (
            "detailRange",
            json!({ "low": { "value": 0 }, "high": { "value": pain.rating() } }),
        ),
    });
    mass.into_iter().chain(pain).collect()
}

impl Goal<'_> {
    fn resource(&self, plan: &Plan, ids: &Ids) -> Value {
        let (name, value) = &self.detail;
        // Invariant gol-1: a detail needs its measure.
        let mut target = json!({
            "measure": code::uncoded(&self.measure),
            "dueDate": to_date(plan.review_on).to_string(),
        });
        if let Some(fields) = target.as_object_mut() {
            fields.insert((*name).to_owned(), value.clone());
        }
        json!({
            "resourceType": "Goal",
            "id": self.id.text(),
            "text": text::narrative([self.text.as_str()]),
            "lifecycleStatus": "active",
            "description": code::uncoded(&self.text),
            "subject": ids.patient.reference(),
            "startDate": from_record(plan.made_at).date_naive().to_string(),
            "target": [target],
        })
    }
}
