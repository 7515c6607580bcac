//! What is noted of a patient when something passes between their phone and this one.

use crate::failure::Failure;
use record::{Day, Identity, Moment, Patient};
use vault::Vault;

/// Notes that something came from a phone or went to it, and when the plan that went is to be looked at again. Whoever is not
/// on the list yet is put there, by the name that the pairing has here. A pairing that is gone changes nothing.
///
/// # Errors
/// What the vault gives.
pub(crate) fn note_seen(
    vault: &Vault,
    pairing: Identity,
    at: Moment,
    review_on: Option<Day>,
) -> Result<(), vault::VaultError> {
    let Some(paired) = vault.pairings().find(pairing)? else {
        return Ok(());
    };
    let patients = vault.patients();
    let (id, patient) = match patients.by_pairing(pairing)? {
        Some(found) => found,
        None => {
            let patient = begin(paired.name, at, Some(pairing));
            (patients.add(&patient)?, patient)
        }
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
pub(crate) fn new_phone(
    vault: &Vault,
    old: Identity,
    new: Identity,
) -> Result<(), vault::VaultError> {
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

/// Puts plans that are nobody's yet to whom they are for, by name; whoever is not on the list is put there.
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
            let all = vault.patients().all()?;
            let known = all.iter().find(|(_, patient)| patient.alias == plan.whom);
            let patient = match known {
                Some((patient, _)) => *patient,
                None => vault.patients().add(&begin(plan.whom, now, None))?,
            };
            vault.patients().link(id, patient)?;
        }
        Ok(())
    })?;
    Ok(())
}
