//! What a use case has to work with during one command.

use crate::device::{self, Device};
use crate::exchange::Exchange;
use crate::failure::Failure;
use crate::session::Session;
use crate::walk::text::Reader;
use crate::words::{Language, Units, Words};
use crate::world::World;
use chrono::{DateTime, FixedOffset};
use record::Settings;
use vault::{Cost, Folder, Vault};

/// What the app holds between commands.
pub(crate) struct State {
    /// The language and wrong tries.
    pub(crate) device: Device,
    /// Words in that language.
    pub(crate) words: Words,
    /// The vault, when it is open.
    pub(crate) session: Session,
}

/// One command being answered.
pub(crate) struct Call<'a> {
    /// The time of the command.
    pub(crate) now: DateTime<FixedOffset>,
    /// The outside world.
    pub(crate) world: &'a dyn World,
    /// Where the vault lies.
    pub(crate) folder: &'a Folder,
    /// How much work one try at the passphrase costs.
    pub(crate) cost: Cost,
    /// What is held between commands.
    pub(crate) state: &'a mut State,
}

impl Call<'_> {
    /// The open vault.
    ///
    /// # Errors
    /// `locked`.
    pub(crate) fn vault(&self) -> Result<&Vault, Failure> {
        self.state.session.vault()
    }

    /// The open vault, with what a hand-over holds in memory.
    ///
    /// # Errors
    /// `locked`.
    pub(crate) fn exchange(&mut self) -> Result<(&Vault, &mut Exchange), Failure> {
        self.state.session.exchange()
    }

    /// The user's settings.
    ///
    /// # Errors
    /// `locked`, or what reading the vault gives.
    pub(crate) fn settings(&self) -> Result<Settings, Failure> {
        let kept = self.vault()?.settings().load()?;
        Ok(kept.unwrap_or(Settings {
            used_for: record::UsedFor::Lift,
            units: record::Units::Kg,
        }))
    }

    /// Words and units of the user.
    ///
    /// # Errors
    /// As [`settings`](Self::settings).
    pub(crate) fn reader(&self) -> Result<Reader<'_>, Failure> {
        let units = match self.settings()?.units {
            record::Units::Kg => Units::Kilograms,
            record::Units::Lb => Units::Pounds,
        };
        Ok(Reader {
            words: &self.state.words,
            units,
        })
    }

    /// Changes what is kept beside the vault.
    ///
    /// # Errors
    /// `disk_full` or `storage_failed`; then nothing is changed.
    pub(crate) fn keep_device(&mut self, device: Device) -> Result<(), Failure> {
        device::save(self.folder.path(), device)?;
        self.state.device = device;
        Ok(())
    }

    /// Speaks another language from now on.
    ///
    /// # Errors
    /// As [`keep_device`](Self::keep_device).
    pub(crate) fn speak(&mut self, language: Language) -> Result<(), Failure> {
        self.keep_device(Device {
            language,
            ..self.state.device
        })?;
        self.state.words = Words::load(language);
        Ok(())
    }
}
