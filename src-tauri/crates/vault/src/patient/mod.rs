//! Whom a clinician treats, and whose plan is whose.

use record::{Identity, Patient, Record};
use rusqlite::{Connection, OptionalExtension};

use crate::transact::transact;
use crate::{PlanId, VaultError, row};

/// Names one patient; never used twice.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct PatientId(pub i64);

/// Access to the patients.
pub struct Patients<'v> {
    connection: &'v Connection,
}

impl<'v> Patients<'v> {
    pub(crate) fn new(connection: &'v Connection) -> Self {
        Self { connection }
    }

    /// Keeps a new patient. On return it is on the disk.
    ///
    /// # Errors
    /// [`VaultError::TooLong`], [`VaultError::DiskFull`]; [`VaultError::Storage`], also if the pairing is another
    /// patient's.
    pub fn add(&self, patient: &Patient) -> Result<PatientId, VaultError> {
        let bytes = patient.to_bytes()?;
        transact(self.connection, |connection| {
            connection
                .prepare_cached(include_str!("add.sql"))?
                .execute((column(patient), bytes))?;
            Ok(PatientId(connection.last_insert_rowid()))
        })
    }

    /// Keeps a patient as they stand now. Returns whether they were there.
    ///
    /// # Errors
    /// As [`add`](Self::add).
    pub fn save(&self, id: PatientId, patient: &Patient) -> Result<bool, VaultError> {
        let bytes = patient.to_bytes()?;
        transact(self.connection, |connection| {
            Ok(connection
                .prepare_cached(include_str!("save.sql"))?
                .execute((id.0, column(patient), bytes))?
                > 0)
        })
    }

    /// The patient with this id, if there is one.
    ///
    /// # Errors
    /// [`VaultError::Damaged`], [`VaultError::Newer`], [`VaultError::Storage`].
    pub fn find(&self, id: PatientId) -> Result<Option<Patient>, VaultError> {
        row::find(self.connection, include_str!("find.sql"), [id.0])
    }

    /// The patient whose phone is paired so, if one is.
    ///
    /// # Errors
    /// [`VaultError::Damaged`], [`VaultError::Newer`], [`VaultError::Storage`].
    pub fn by_pairing(
        &self,
        pairing: Identity,
    ) -> Result<Option<(PatientId, Patient)>, VaultError> {
        let found = row::all(
            self.connection,
            include_str!("by_pairing.sql"),
            [pairing.0],
            |found| Ok((PatientId(found.get(0)?), row::record(found, 1)?)),
        )?;
        Ok(found.into_iter().next())
    }

    /// Every patient, in the order in which they were put on the list.
    ///
    /// # Errors
    /// [`VaultError::Damaged`], [`VaultError::Newer`], [`VaultError::Storage`].
    pub fn all(&self) -> Result<Vec<(PatientId, Patient)>, VaultError> {
        row::all(self.connection, include_str!("all.sql"), [], |found| {
            Ok((PatientId(found.get(0)?), row::record(found, 1)?))
        })
    }

    /// Removes a patient with their notes. Their plans stay. Returns whether there was one.
    ///
    /// # Errors
    /// [`VaultError::DiskFull`], [`VaultError::Storage`].
    pub fn remove(&self, id: PatientId) -> Result<bool, VaultError> {
        transact(self.connection, |connection| {
            Ok(connection
                .prepare_cached(include_str!("remove.sql"))?
                .execute([id.0])?
                > 0)
        })
    }

    /// Notes whose plan it is.
    ///
    /// # Errors
    /// [`VaultError::DiskFull`]; [`VaultError::Storage`], also if there is no such plan or patient.
    pub fn link(&self, plan: PlanId, patient: PatientId) -> Result<(), VaultError> {
        transact(self.connection, |connection| {
            connection
                .prepare_cached(include_str!("link.sql"))?
                .execute((plan.0, patient.0))?;
            Ok(())
        })
    }

    /// Whose plan it is, if that is noted.
    ///
    /// # Errors
    /// [`VaultError::Storage`].
    pub fn of_plan(&self, plan: PlanId) -> Result<Option<PatientId>, VaultError> {
        let found: Option<i64> = self
            .connection
            .prepare_cached(include_str!("of_plan.sql"))?
            .query_row([plan.0], |row| row.get(0))
            .optional()?;
        Ok(found.map(PatientId))
    }

    /// The plans of a patient, the newest first.
    ///
    /// # Errors
    /// [`VaultError::Storage`].
    pub fn plans(&self, id: PatientId) -> Result<Vec<PlanId>, VaultError> {
        row::all(
            self.connection,
            include_str!("plans.sql"),
            [id.0],
            |found| Ok(PlanId(found.get(0)?)),
        )
    }

    /// Plans that are nobody's yet, oldest first.
    ///
    /// # Errors
    /// [`VaultError::Storage`].
    pub fn loose_plans(&self) -> Result<Vec<PlanId>, VaultError> {
        row::all(
            self.connection,
            include_str!("loose_plans.sql"),
            [],
            |found| Ok(PlanId(found.get(0)?)),
        )
    }
}

/// The bytes of the pairing, none for none.
fn column(patient: &Patient) -> &[u8] {
    patient.pairing.as_ref().map_or(&[], |pairing| &pairing.0)
}
