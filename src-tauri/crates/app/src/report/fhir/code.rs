//! Codes of published systems. LOINC is used under its licence (loinc.org/license): free, with this notice.

use serde_json::{Value, json};

const LOINC: &str = "http://loinc.org";
const UCUM: &str = "http://unitsofmeasure.org";

/// "Pain severity - 0-10 verbal numeric rating [Score] - Reported" and "Pain severity - Reported". The number goes along,
/// not an answer code.
pub(super) fn pain(text: &str) -> Value {
    json!({
        "coding": [
            { "system": LOINC, "code": "72514-3", "display": "Pain severity - 0-10 verbal numeric rating [Score] - Reported" },
            { "system": LOINC, "code": "38208-5", "display": "Pain severity - Reported" },
        ],
        "text": text,
    })
}

/// "Progress note". From memory.
pub(super) fn progress_note(text: &str) -> Value {
    json!({ "coding": [{ "system": LOINC, "code": "11506-3", "display": "Progress note" }], "text": text })
}

/// What has no code: text alone.
pub(super) fn uncoded(text: &str) -> Value {
    json!({ "text": text })
}

/// The category of answers to questions (hl7.org/fhir/R4/valueset-observation-category.html).
pub(super) fn survey() -> Value {
    json!([{ "coding": [{
        "system": "http://terminology.hl7.org/CodeSystem/observation-category", "code": "survey",
    }] }])
}

/// The category of what somebody does to keep or gain strength (hl7.org/fhir/R4/valueset-observation-category.html).
pub(super) fn activity() -> Value {
    json!([{ "coding": [{
        "system": "http://terminology.hl7.org/CodeSystem/observation-category", "code": "activity",
    }] }])
}

/// Who assembled something (hl7.org/fhir/R4/valueset-provenance-agent-type.html).
pub(super) fn assembler() -> Value {
    json!({ "coding": [{
        "system": "http://terminology.hl7.org/CodeSystem/provenance-participant-type", "code": "assembler",
    }] })
}

/// A mass in kilograms.
pub(super) fn kilograms(grams: u32) -> Value {
    json!({ "value": f64::from(grams) / 1000.0, "unit": "kg", "system": UCUM, "code": "kg" })
}
