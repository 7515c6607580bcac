//! The list of what left this device. What is written in it is written with the act, never afterwards by memory.

pub(crate) mod list;
pub(crate) mod tell;

use crate::call::Call;
use crate::convert::moment::{still_holds, to_record};
use crate::failure::Failure;
use chrono::{DateTime, Duration, FixedOffset};
use record::{Departure, DepartureHow, DepartureWhat, Moment, Seal};
use vault::{DepartureId, Vault, VaultError};

/// The same thing that leaves in another way within this time is one entry with two ways. House rule: the time for
/// which a thing stays on the screen.
const ONE_ACT: Duration = Duration::minutes(10);

/// What leaves, before it is known when and how.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(crate) struct Leaving {
    /// What it is.
    pub(crate) what: DepartureWhat,
    /// Who can open it; `None`: everybody.
    pub(crate) seal: Option<Seal>,
    /// What the other is called here.
    pub(crate) to: Option<String>,
    /// Whom it is about.
    pub(crate) about: Option<String>,
    /// Its version.
    pub(crate) version: Option<u32>,
    /// From how many days.
    pub(crate) days: Option<u32>,
    /// Whether names of things are in it.
    pub(crate) with_notes: Option<bool>,
    /// How many entries are in it.
    pub(crate) entries: Option<u32>,
}

impl Leaving {
    /// Something that leaves in the open, about nobody else.
    #[must_use]
    pub(crate) const fn of(what: DepartureWhat) -> Self {
        Self {
            what,
            seal: None,
            to: None,
            about: None,
            version: None,
            days: None,
            with_notes: None,
            entries: None,
        }
    }

    fn is_of(&self, kept: &Departure) -> bool {
        self.entry(kept.at, kept.how.clone()) == *kept
    }

    fn entry(&self, at: Moment, how: Vec<DepartureHow>) -> Departure {
        Departure {
            at,
            what: self.what,
            how,
            seal: self.seal,
            to: self.to.clone(),
            about: self.about.clone(),
            version: self.version,
            days: self.days,
            with_notes: self.with_notes,
            entries: self.entries,
        }
    }
}

/// An entry that was just written, and what stood there before.
#[derive(Debug, Clone)]
pub(crate) struct Noted {
    id: DepartureId,
    before: Option<Departure>,
}

/// Writes down that something leaves now. Joins the newest entry when that is of the same thing, in the same minutes.
///
/// # Errors
/// What the vault gives.
pub(crate) fn note(
    vault: &Vault,
    now: DateTime<FixedOffset>,
    leaving: &Leaving,
    how: DepartureHow,
) -> Result<Noted, VaultError> {
    vault.together(|vault| {
        let newest = vault.departures().newest(None, 1)?.pop();
        if let Some((id, before)) = newest
            && leaving.is_of(&before)
            && still_holds(before.at, now, ONE_ACT)
        {
            let mut joined = before.clone();
            if !joined.how.contains(&how) {
                joined.how.push(how);
                vault.departures().save(id, &joined)?;
            }
            return Ok(Noted {
                id,
                before: Some(before),
            });
        }
        let id = vault
            .departures()
            .add(&leaving.entry(to_record(now), vec![how]))?;
        Ok(Noted { id, before: None })
    })
}

/// Writes down that a file leaves now, and remembers the entry in case the file cannot be written.
///
/// # Errors
/// As [`note`].
pub(crate) fn note_file(call: &mut Call<'_>, leaving: &Leaving) -> Result<(), Failure> {
    let now = call.now;
    let (vault, exchange) = call.exchange()?;
    exchange.noted = Some(note(vault, now, leaving, DepartureHow::Saved)?);
    Ok(())
}

/// The file that was noted last could not be written: it did not leave.
///
/// # Errors
/// `locked`; what the vault gives.
pub(crate) fn take_back(call: &mut Call<'_>) -> Result<(), Failure> {
    let (vault, exchange) = call.exchange()?;
    if let Some(Noted { id, before }) = exchange.noted.take() {
        match before {
            Some(before) => vault.departures().save(id, &before)?,
            None => vault.departures().remove(id)?,
        };
    }
    Ok(())
}

/// Takes the code of a person who is helped out of the list, when they are taken off their own.
///
/// # Errors
/// What the vault gives.
pub(crate) fn forget_code(vault: &Vault, code: &str) -> Result<(), VaultError> {
    for (id, mut kept) in vault.departures().newest(None, u32::MAX)? {
        let is_care = matches!(kept.what, DepartureWhat::CarePlan | DepartureWhat::Office);
        if is_care && kept.about.as_deref() == Some(code) {
            kept.about = None;
            vault.departures().save(id, &kept)?;
        }
    }
    Ok(())
}
