//! An HL7 FHIR R4 document (4.0.1): one bundle that other clinical software can take.
//!
//! A document bundle begins with its composition, has an identifier and a time, and every reference in it points into it
//! (hl7.org/fhir/R4/bundle.html, invariants bdl-7, -9, -10, -11). Pain is sent as a number under LOINC codes; what has no
//! code is sent as text, never under a code of our own making.

mod code;
mod document;
mod id;
mod observation;
mod plan;
mod practice;
mod text;

use super::Report;
use crate::failure::Failure;
use crate::walk::text::Reader;
use crate::world::World;
use id::Ids;
use serde_json::{Value, json};

/// The document as JSON text.
///
/// # Errors
/// `storage_failed` when no random numbers can be had for its identifiers.
pub(crate) fn bundle(
    report: &Report,
    reader: Reader<'_>,
    world: &dyn World,
) -> Result<String, Failure> {
    let practised = practice::told(report).count();
    let ids = Ids::make(world, report.told.len(), practised)?;
    let time = text::time(report.made);
    let mut entries = document::opening(report, reader, &ids);
    entries.extend(plan::all(report, reader, &ids));
    entries.extend(observation::all(report, reader, &ids));
    entries.extend(practice::all(report, reader, &ids));
    entries.push(document::provenance(report, &ids));
    let mut bundle = json!({
        "resourceType": "Bundle",
        "type": "document",
        "identifier": { "system": id::SYSTEM, "value": ids.bundle.url() },
        "timestamp": time,
        "entry": entries,
    });
    text::with_plain_spaces(&mut bundle);
    Ok(serde_json::to_string_pretty(&bundle).unwrap_or_default())
}

/// One entry of the bundle.
fn entry(id: &id::Id, resource: Value) -> Value {
    json!({ "fullUrl": id.url(), "resource": resource })
}
