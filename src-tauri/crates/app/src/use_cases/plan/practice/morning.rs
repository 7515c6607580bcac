//! The morning after practice. Asked where no lift of that day is asked about: how it is this morning is one answer.

use crate::convert::moment::from_record;
use chrono::{DateTime, Days, FixedOffset};
use record::{MorningAfter, PracticeEntry, PracticeEvent};
use vault::{PracticeId, Vault, VaultError};

/// Writes the answer to all practice of yesterday that waits for one; whether there was any.
///
/// # Errors
/// What the vault gives.
pub(crate) fn tell(
    vault: &Vault,
    now: DateTime<FixedOffset>,
    morning: MorningAfter,
) -> Result<bool, VaultError> {
    let waiting = waiting(vault, now)?;
    vault.together(|vault| {
        for (id, entry) in &waiting {
            let told = PracticeEntry {
                morning: Some(morning),
                ..entry.clone()
            };
            vault.practice().save(*id, &told)?;
        }
        Ok(!waiting.is_empty())
    })
}

/// Practice of yesterday whose morning was not asked about yet.
///
/// # Errors
/// What reading the vault gives.
pub(crate) fn waiting(
    vault: &Vault,
    now: DateTime<FixedOffset>,
) -> Result<Vec<(PracticeId, PracticeEntry)>, VaultError> {
    let yesterday = now.date_naive().checked_sub_days(Days::new(1));
    let mut log = vault.practice().all()?;
    log.retain(|(_, entry)| {
        entry.event == PracticeEvent::Done
            && entry.morning.is_none()
            && Some(from_record(entry.at).date_naive()) == yesterday
    });
    Ok(log)
}
