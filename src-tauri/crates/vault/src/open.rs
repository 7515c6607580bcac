//! An open vault.

use record::{About, BodyToday, Device, Draft, MoveDraft, Settings, Worker};
use rusqlite::Connection;

use crate::keys::{self, Cost, DataKey, LogKey, Passphrase, Random, VAULT_ID_BYTES};
use crate::{
    CarePeople, CheckIns, Current, Damage, Departures, Folder, FollowedPlans, ForeignFile, Lifts,
    MissingFile, MoveEntries, Opened, Pairings, PatientNotes, Patients, PlanVersions, PlanWhys,
    Plans, PracticeLog, ReceivedHistories, SavedTasks, SeenNumbers, Sent, Shifts, Signs,
    VaultError, VaultState, atomic, connection, create, erase, lift_log, migrate, transact,
};

/// An open vault. Dropping it closes the file and wipes the keys.
pub struct Vault {
    connection: Connection,
    folder: Folder,
    log_key: LogKey,
}

impl Vault {
    /// What is in a folder, without opening anything.
    ///
    /// # Errors
    /// [`VaultError::Storage`] if the folder cannot be looked into.
    pub fn state(folder: &Folder) -> Result<VaultState, VaultError> {
        folder.state()
    }

    /// Makes a vault at the standard cost and leaves it open. The folder is made if need be.
    ///
    /// # Errors
    /// [`VaultError::Exists`] if there is one, [`VaultError::Randomness`], [`VaultError::DiskFull`],
    /// [`VaultError::Storage`].
    pub fn create(
        folder: &Folder,
        passphrase: &Passphrase,
        random: &mut Random<'_>,
    ) -> Result<Self, VaultError> {
        Self::create_at_cost(folder, passphrase, Cost::STANDARD, random)
    }

    /// As [`create`](Self::create), at a chosen cost: for phones on which the standard one takes too long.
    ///
    /// # Errors
    /// As [`create`](Self::create).
    pub fn create_at_cost(
        folder: &Folder,
        passphrase: &Passphrase,
        cost: Cost,
        random: &mut Random<'_>,
    ) -> Result<Self, VaultError> {
        create::create(folder, passphrase, cost, random)
    }

    /// Opens the vault in a folder, and checks every page and the chain over the lifts.
    ///
    /// # Errors
    /// Each in its own kind: a wrong passphrase, a missing, damaged, foreign or newer file, a full disk,
    /// failing storage. Nothing is changed by a failed open.
    pub fn open(folder: &Folder, passphrase: &Passphrase) -> Result<Self, VaultError> {
        if folder.state()? == VaultState::Absent || !atomic::exists(&folder.database())? {
            return Err(VaultError::Missing(MissingFile::Database));
        }
        let slots = keys::load(folder)?;
        let key = slots.open(passphrase)?;
        let vault = Self::open_with_key(folder, &key, slots.vault_id())?;
        // A copy that cannot be brought back now can be at the next open; this one is whole.
        let _ = keys::restore_copies(folder, &slots);
        Ok(vault)
    }

    pub(crate) fn open_with_key(
        folder: &Folder,
        key: &DataKey,
        vault_id: &[u8; VAULT_ID_BYTES],
    ) -> Result<Self, VaultError> {
        let path = folder.database();
        let salt = connection::read_salt(&path)?;
        // The key is the right one, its slot's tag says so. A first page that does not come out under it
        // is another vault's if it begins differently, else ours and damaged.
        let connection =
            connection::open(&path, &key.derive_database_key()).map_err(|error| match error {
                VaultError::Damaged(Damage::Page) if salt != *vault_id => {
                    VaultError::Foreign(ForeignFile::Database)
                }
                error => error,
            })?;
        connection::check_pages(&connection)?;
        migrate::check_mark(&connection)?;
        migrate::upgrade(&connection, folder, migrate::STEPS)?;
        let log_key = key.derive_log_key();
        lift_log::check(&connection, &log_key)?;
        Ok(Self {
            connection,
            folder: folder.clone(),
            log_key,
        })
    }

    /// Whether a passphrase opens the vault in a folder. Reads the slots only.
    ///
    /// # Errors
    /// [`VaultError::WrongPassphrase`] if it does not; else as for [`open`](Self::open).
    pub fn check_passphrase(folder: &Folder, passphrase: &Passphrase) -> Result<(), VaultError> {
        keys::load(folder)?.open(passphrase).map(drop)
    }

    /// Erases the vault in a folder for good: the key slots first, then every file of the database. No vault
    /// of this folder may be open. A folder without a vault is no error.
    ///
    /// # Errors
    /// [`VaultError::Storage`] if a file cannot be overwritten or removed. The folder then counts as empty
    /// all the same, and [`finish_erase`](Self::finish_erase) or the next [`create`](Self::create) goes on.
    pub fn erase(folder: &Folder) -> Result<(), VaultError> {
        erase::erase(folder)
    }

    /// Carries through an erase that was stopped half way; does nothing if none was asked for.
    ///
    /// # Errors
    /// As for [`erase`](Self::erase).
    pub fn finish_erase(folder: &Folder) -> Result<(), VaultError> {
        erase::finish(folder)
    }

    /// Puts a new passphrase in place of the old one. Only the slots are written: the database is not touched.
    ///
    /// # Errors
    /// [`VaultError::WrongPassphrase`] if `old` is not the one in force; then nothing is changed.
    pub fn change_passphrase(
        &mut self,
        old: &Passphrase,
        new: &Passphrase,
        random: &mut Random<'_>,
    ) -> Result<(), VaultError> {
        self.change_passphrase_at_cost(old, new, Cost::STANDARD, random)
    }

    /// As [`change_passphrase`](Self::change_passphrase), at a chosen cost.
    ///
    /// # Errors
    /// As [`change_passphrase`](Self::change_passphrase).
    pub fn change_passphrase_at_cost(
        &mut self,
        old: &Passphrase,
        new: &Passphrase,
        cost: Cost,
        random: &mut Random<'_>,
    ) -> Result<(), VaultError> {
        let slots = keys::load(&self.folder)?;
        let key = slots.open(old)?;
        keys::save(
            &self.folder,
            &slots.with_passphrase(&key, new, cost, random)?,
        )
    }

    /// Runs several changes as one: all are kept, or, if `change` fails, none.
    ///
    /// # Errors
    /// Whatever `change` returns, or the failure to keep it.
    pub fn together<T>(
        &self,
        change: impl FnOnce(&Self) -> Result<T, VaultError>,
    ) -> Result<T, VaultError> {
        transact::transact(&self.connection, |_| change(self))
    }

    /// Brings everything into the main file and empties the log. For when the app goes to the background.
    ///
    /// # Errors
    /// [`VaultError::DiskFull`], [`VaultError::Storage`]. What was kept stays kept either way.
    pub fn settle(&self) -> Result<(), VaultError> {
        connection::checkpoint(&self.connection)
    }

    /// The history of lifts.
    #[must_use]
    pub fn lifts(&self) -> Lifts<'_> {
        Lifts::new(&self.connection, &self.log_key)
    }

    /// Looks back at lifts.
    #[must_use]
    pub fn check_ins(&self) -> CheckIns<'_> {
        CheckIns::new(&self.connection)
    }

    /// Tasks kept under a name.
    #[must_use]
    pub fn saved_tasks(&self) -> SavedTasks<'_> {
        SavedTasks::new(&self.connection)
    }

    /// People who are helped to move.
    #[must_use]
    pub fn care_people(&self) -> CarePeople<'_> {
        CarePeople::new(&self.connection)
    }

    /// The log of moving people.
    #[must_use]
    pub fn move_entries(&self) -> MoveEntries<'_> {
        MoveEntries::new(&self.connection)
    }

    /// The shifts that the log is handed over in.
    #[must_use]
    pub fn shifts(&self) -> Shifts<'_> {
        Shifts::new(&self.connection)
    }

    /// The walk before a move that is not finished.
    #[must_use]
    pub fn move_draft(&self) -> Current<'_, MoveDraft> {
        Current::new(&self.connection)
    }

    /// The user as somebody who moves people.
    #[must_use]
    pub fn worker(&self) -> Current<'_, Worker> {
        Current::new(&self.connection)
    }

    /// Warning signs.
    #[must_use]
    pub fn signs(&self) -> Signs<'_> {
        Signs::new(&self.connection)
    }

    /// The walk through the questions that is not finished.
    #[must_use]
    pub fn draft(&self) -> Current<'_, Draft> {
        Current::new(&self.connection)
    }

    /// The body as last answered.
    #[must_use]
    pub fn body_today(&self) -> Current<'_, BodyToday> {
        Current::new(&self.connection)
    }

    /// About the person.
    #[must_use]
    pub fn about(&self) -> Current<'_, About> {
        Current::new(&self.connection)
    }

    /// The user's settings.
    #[must_use]
    pub fn settings(&self) -> Current<'_, Settings> {
        Current::new(&self.connection)
    }

    /// The keys of this device and its name.
    #[must_use]
    pub fn device(&self) -> Current<'_, Device> {
        Current::new(&self.connection)
    }

    /// Devices that this one is paired with.
    #[must_use]
    pub fn pairings(&self) -> Pairings<'_> {
        Pairings::new(&self.connection)
    }

    /// Numbers used in parcels.
    #[must_use]
    pub fn sent(&self) -> Sent<'_> {
        Sent::new(&self.connection)
    }

    /// Numbers accepted from others.
    #[must_use]
    pub fn seen(&self) -> SeenNumbers<'_> {
        SeenNumbers::new(&self.connection)
    }

    /// What was opened with a code.
    #[must_use]
    pub fn opened(&self) -> Opened<'_> {
        Opened::new(&self.connection)
    }

    /// Plans made here.
    #[must_use]
    pub fn plans(&self) -> Plans<'_> {
        Plans::new(&self.connection)
    }

    /// Versions of plans made here that were handed over.
    #[must_use]
    pub fn plan_versions(&self) -> PlanVersions<'_> {
        PlanVersions::new(&self.connection)
    }

    /// Why versions are as they are, where the person is not told.
    #[must_use]
    pub fn plan_whys(&self) -> PlanWhys<'_> {
        PlanWhys::new(&self.connection)
    }

    /// Whom a clinician treats.
    #[must_use]
    pub fn patients(&self) -> Patients<'_> {
        Patients::new(&self.connection)
    }

    /// Notes about them.
    #[must_use]
    pub fn patient_notes(&self) -> PatientNotes<'_> {
        PatientNotes::new(&self.connection)
    }

    /// What left this device.
    #[must_use]
    pub fn departures(&self) -> Departures<'_> {
        Departures::new(&self.connection)
    }

    /// Plans followed here.
    #[must_use]
    pub fn followed(&self) -> FollowedPlans<'_> {
        FollowedPlans::new(&self.connection)
    }

    /// What was done about the plan that is followed.
    #[must_use]
    pub fn practice(&self) -> PracticeLog<'_> {
        PracticeLog::new(&self.connection)
    }

    /// Histories of others.
    #[must_use]
    pub fn received(&self) -> ReceivedHistories<'_> {
        ReceivedHistories::new(&self.connection)
    }
}

#[cfg(test)]
#[path = "open_tests.rs"]
mod tests;
