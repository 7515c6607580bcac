//! The page of one patient.

use super::changes::changes;
use super::find;
use super::list::{is_due, text};
use super::seen::adopt;
use crate::call::Call;
use crate::convert::moment::{from_record, to_record};
use crate::convert::plan::to_day;
use crate::failure::Failure;
use crate::use_cases::handoff::hex;
use crate::use_cases::plan::lines::title;
use crate::use_cases::plan::wording;
use crate::words::Arg;
use record::Plan;
use serde::{Deserialize, Serialize};
use vault::PlanId;

/// A command that names a patient.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct OfPatient {
    pub(super) id: i64,
}

/// The reply of `patient`.
#[derive(Debug, Serialize)]
pub(crate) struct Page {
    id: i64,
    alias: String,
    text: String,
    due: bool,
    /// The pairing of their phone, if it is known.
    pairing: Option<String>,
    histories_text: String,
    plans: Vec<PlanView>,
    notes: Vec<NoteView>,
}

#[derive(Debug, Serialize)]
struct PlanView {
    id: i64,
    title: String,
    versions: Vec<VersionView>,
}

#[derive(Debug, Serialize)]
struct VersionView {
    title: String,
    changes: Vec<String>,
    /// Why it is so, as the person was told.
    why: Option<String>,
    /// Why it is so, where the person was not told: it stays on this device.
    why_private: Option<String>,
}

#[derive(Debug, Serialize)]
struct NoteView {
    id: i64,
    day_text: String,
    text: String,
}

/// Everything about one patient: plans with their versions, how many histories came, notes.
///
/// # Errors
/// `not_found` at `id`; what the vault gives.
pub(crate) fn patient(call: &mut Call<'_>, asked: OfPatient) -> Result<Page, Failure> {
    let (id, patient) = find(call, asked.id)?;
    let vault = call.vault()?;
    adopt(vault, to_record(call.now))?;
    let words = &call.state.words;
    let today = to_day(call.now.date_naive());
    let came = match patient.pairing {
        Some(pairing) => vault.received().of(Some(pairing))?.len(),
        None => 0,
    };
    let came = u32::try_from(came).unwrap_or(u32::MAX);
    let mut plans = Vec::new();
    for plan in vault.patients().plans(id)? {
        plans.extend(plan_view(call, plan)?);
    }
    let notes = vault.patient_notes().of(id)?;
    let still_paired = match patient.pairing {
        Some(pairing) => vault.pairings().find(pairing)?.is_some(),
        None => false,
    };
    Ok(Page {
        id: id.0,
        text: text(&patient, today, words),
        due: is_due(&patient, today),
        pairing: patient
            .pairing
            .filter(|_| still_paired)
            .map(|pairing| hex(&pairing.0)),
        histories_text: words.format("patients-histories", &[("count", came.into())]),
        plans,
        notes: notes
            .into_iter()
            .map(|(id, note)| NoteView {
                id: id.0,
                day_text: words.date_text(from_record(note.at).date_naive()),
                text: note.text,
            })
            .collect(),
        alias: patient.alias,
    })
}

fn plan_view(call: &Call<'_>, id: PlanId) -> Result<Option<PlanView>, Failure> {
    let reader = call.reader()?;
    let vault = call.vault()?;
    let Some(plan) = vault.plans().find(id)? else {
        return Ok(None);
    };
    let versions = vault.plan_versions().of(id)?;
    let mut views = Vec::new();
    let mut before: Option<&Plan> = None;
    for version in &versions {
        let day = Arg::text(
            reader
                .words
                .date_text(from_record(version.made_at).date_naive()),
        );
        let title = [("version", version.version.into()), ("day", day)];
        views.push(VersionView {
            title: reader.words.format("plan-version", &title),
            changes: before.map_or_else(Vec::new, |before| changes(before, version, reader)),
            why: version
                .why
                .as_ref()
                .and_then(|why| wording::text(why, reader.words)),
            why_private: vault
                .plan_whys()
                .find(id, version.version)?
                .map(|note| note.text),
        });
        before = Some(version);
    }
    // The newest first, as it is read.
    views.reverse();
    Ok(Some(PlanView {
        id: id.0,
        title: title(&plan, reader),
        versions: views,
    }))
}
