//! What is noted of a patient when something passes between their phone and this one.

use crate::failure::Failure;
use record::{Day, Identity, Moment, Patient};
use vault::{PatientId, Vault, VaultError};

/// Notes that something came from a phone or went to it, and when the plan that went is to be looked at again. The phone is
/// that of whoever alone has the pairing's name on the list and no phone yet; else somebody new is put there by that name. A
/// pairing that is gone changes nothing.
///
/// # Errors
/// What the vault gives.
pub(crate) fn note_seen(
    vault: &Vault,
    pairing: Identity,
    at: Moment,
    review_on: Option<Day>,
) -> Result<(), VaultError> {
    let Some(paired) = vault.pairings().find(pairing)? else {
        return Ok(());
    };
    let patients = vault.patients();
    let (id, patient) = match patients.by_pairing(pairing)? {
        Some(found) => found,
        None => match named(vault, &paired.name)? {
            Named::One(id, patient) if patient.pairing.is_none() => {
                let pairing = Some(pairing);
                (id, Patient { pairing, ..patient })
            }
            _ => {
                let patient = begin(paired.name, at, Some(pairing));
                (patients.add(&patient)?, patient)
            }
        },
    };
    patients.save(
        id,
        &Patient {
            seen_at: Some(at),
            review_on: review_on.or(patient.review_on),
            ..patient
        },
    )?;
    Ok(())
}

/// Whoever had the one phone has the other now.
///
/// # Errors
/// What the vault gives.
pub(crate) fn new_phone(vault: &Vault, old: Identity, new: Identity) -> Result<(), VaultError> {
    let Some((id, patient)) = vault.patients().by_pairing(old)? else {
        return Ok(());
    };
    let patient = Patient {
        pairing: Some(new),
        ..patient
    };
    vault.patients().save(id, &patient).map(drop)
}

/// A patient who was just put on the list.
#[must_use]
pub(super) fn begin(alias: String, since: Moment, pairing: Option<Identity>) -> Patient {
    Patient {
        alias,
        since,
        pairing,
        seen_at: None,
        review_on: None,
    }
}

/// Who has a name on the list.
enum Named {
    Nobody,
    One(PatientId, Patient),
    Several,
}

fn named(vault: &Vault, alias: &str) -> Result<Named, VaultError> {
    let mut found = vault.patients().all()?;
    found.retain(|(_, patient)| patient.alias == alias);
    Ok(match (found.pop(), found.is_empty()) {
        (None, _) => Named::Nobody,
        (Some((id, patient)), true) => Named::One(id, patient),
        (Some(_), false) => Named::Several,
    })
}

/// Puts plans that are nobody's yet to whom they are for, by name; whoever is not on the list is put there. A name that several
/// have decides nothing: such a plan stays among the plans alone.
///
/// # Errors
/// What the vault gives.
pub(super) fn adopt(vault: &Vault, now: Moment) -> Result<(), Failure> {
    let loose = vault.patients().loose_plans()?;
    if loose.is_empty() {
        return Ok(());
    }
    vault.together(|vault| {
        for id in loose {
            let Some(plan) = vault.plans().find(id)? else {
                continue;
            };
            let patient = match named(vault, &plan.whom)? {
                Named::One(patient, _) => patient,
                Named::Nobody => vault.patients().add(&begin(plan.whom, now, None))?,
                Named::Several => continue,
            };
            vault.patients().link(id, patient)?;
        }
        Ok(())
    })?;
    Ok(())
}
