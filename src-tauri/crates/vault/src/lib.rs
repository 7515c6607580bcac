//! The encrypted store: one SQLCipher file, and key slots beside it.
//!
//! A random data key encrypts the file; the passphrase only wraps that key in a slot, so that changing
//! the passphrase never touches the file. `docs/formats/vault.md` gives every byte.
//!
//! This crate knows records and SQL. It has no clock and no randomness of its own: both come in from
//! the caller (SQLCipher draws its page nonces from the operating system itself).
//!
//! ```no_run
//! use vault::{Folder, Passphrase, Vault};
//!
//! let folder = Folder::new("/some/folder");
//! let vault = Vault::open(&folder, &Passphrase::new("a river under old snow".to_owned()))?;
//! let newest = vault.lifts().newest(&Default::default())?;
//! # Ok::<(), vault::VaultError>(())
//! ```

#![forbid(unsafe_code)]

mod atomic;
mod care_person;
mod check_in;
mod connection;
mod create;
mod current;
mod departure;
mod erase;
mod error;
mod folder;
mod followed;
mod keys;
mod lift;
mod lift_log;
mod migrate;
mod move_entry;
mod open;
mod opened;
mod pairing;
mod patient;
mod patient_note;
mod plan;
mod plan_version;
mod plan_why;
mod practice;
mod received;
mod row;
mod saved_task;
mod seen;
mod sent;
mod shift;
mod sign;
mod transact;

pub use care_person::{CarePeople, CarePersonId};
pub use check_in::CheckIns;
pub use current::Current;
pub use departure::{DepartureId, Departures, MOST_DEPARTURES};
pub use error::{Damage, ForeignFile, MissingFile, StorageFailure, VaultError};
pub use folder::{Folder, VaultState};
pub use followed::FollowedPlans;
pub use keys::{Cost, CostOutOfBounds, NoRandomness, Passphrase, Random};
pub use lift::{LiftFilter, LiftId, Lifts};
pub use move_entry::{MoveEntries, MoveEntryId};
pub use open::Vault;
pub use opened::Opened;
pub use pairing::Pairings;
pub use patient::{PatientId, Patients};
pub use patient_note::{PatientNoteId, PatientNotes};
pub use plan::{PlanId, Plans};
pub use plan_version::PlanVersions;
pub use plan_why::PlanWhys;
pub use practice::{PracticeId, PracticeLog};
pub use received::{ReceivedHistories, ReceivedId};
pub use saved_task::{SavedTaskId, SavedTasks};
pub use seen::SeenNumbers;
pub use sent::Sent;
pub use shift::{ShiftId, Shifts};
pub use sign::Signs;
