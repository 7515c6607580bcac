//! The one entry: a line in, a line out.

use crate::call::{Call, State};
use crate::commands;
use crate::device::{self, Device};
use crate::failure::Failure;
use crate::session::Session;
use crate::taken::{self, Taken, TakenJson};
use crate::use_cases::departure;
use crate::use_cases::handoff::taking;
use crate::words::{Language, Words};
use crate::world::World;
use chrono::{DateTime, FixedOffset};
use door::{ErrorCode, Parsed};
use serde_json::{Value, json};
use std::path::{Path, PathBuf};
use std::sync::{Mutex, MutexGuard, PoisonError};
use std::{fs, io};
use vault::{Cost, Folder, Vault};

/// The app's folder cannot be used.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
pub enum AppError {
    /// It cannot be made or entered.
    #[error("the app's folder cannot be used: {0}")]
    Folder(std::io::ErrorKind),
}

/// The app behind its screens. Shared by every window and thread; commands run one after the other.
pub struct App {
    world: Box<dyn World>,
    folder: Folder,
    cost: Cost,
    state: Mutex<State>,
}

impl App {
    /// Opens the app's folder and makes it if need be. Opens no vault yet; an erase that was stopped half way
    /// is carried through.
    ///
    /// # Errors
    /// [`AppError::Folder`].
    pub fn open(folder: &Path, world: Box<dyn World>) -> Result<Self, AppError> {
        Self::open_at_cost(folder, world, Cost::STANDARD)
    }

    /// As [`open`](Self::open), with another cost of making a passphrase slot: for tests and slow phones.
    ///
    /// # Errors
    /// [`AppError::Folder`].
    pub fn open_at_cost(
        folder: &Path,
        world: Box<dyn World>,
        cost: Cost,
    ) -> Result<Self, AppError> {
        let refused = |error: std::io::Error| AppError::Folder(error.kind());
        let mut builder = fs::DirBuilder::new();
        builder.recursive(true);
        #[cfg(unix)]
        std::os::unix::fs::DirBuilderExt::mode(&mut builder, 0o700);
        builder.create(folder).map_err(refused)?;
        // What cannot be removed now is tried again at the next start; until then the folder counts as empty.
        let _ = Vault::finish_erase(&Folder::new(folder));
        let device = device::load(folder).map_err(refused)?;
        let words = Words::load(device.language);
        let state = State {
            device,
            words,
            session: Session::Locked,
        };
        Ok(Self {
            world,
            folder: Folder::new(folder),
            cost,
            state: Mutex::new(state),
        })
    }

    /// Answers one JSON line with one JSON line. Failures are replies of the form `{"error":…}`.
    #[must_use]
    pub fn answer(&self, line: &str) -> String {
        let now = self.world.now();
        let mut state = self.state();
        state.session.lock_if_idle(self.world.uptime());
        self.reply(&mut state, line, now)
    }

    /// Takes a picture or a file of the scan screen, and answers with one JSON line as [`answer`](Self::answer)
    /// does. Looking for a symbol takes its time and holds nobody up.
    #[must_use]
    pub fn take(&self, taken: Taken<'_>) -> String {
        let may = self.with_call(taking::must_scan);
        let reply = may
            .and_then(|()| taken::look(&taken))
            .and_then(|found| self.with_call(|call| taking::take(call, found)));
        match reply {
            Ok(reply) => door::ok_line(&reply),
            Err(failure) => failure.to_line(&self.state().words),
        }
    }

    /// As [`take`](Self::take), for bridges without raw bodies: one JSON object with `kind`, `width`, `height`
    /// and the bytes as `base64`.
    #[must_use]
    pub fn take_json(&self, body: &[u8]) -> String {
        let may = self.with_call(taking::must_scan);
        let read = may
            .and_then(|()| TakenJson::read(body))
            .and_then(|json| Ok((json.bytes()?, json)));
        match read {
            Ok((bytes, json)) => self.take(json.around(&bytes)),
            Err(failure) => failure.to_line(&self.state().words),
        }
    }

    /// Lets `write` keep the sealed file of what is shown, given its name and bytes, and replies with where
    /// it is: `{"path"}`. What asks for the file fails as `show_file` does; a file that cannot be written, with
    /// `disk_full` or `storage_failed`.
    #[must_use]
    pub fn save_file(
        &self,
        show: &str,
        write: impl FnOnce(&str, &[u8]) -> io::Result<PathBuf>,
    ) -> String {
        self.save(&json!({ "do": "show_file", "show": show }), write)
    }

    /// Lets `write` keep the history in a form, as [`save_file`](Self::save_file) does with a sealed file. What asks
    /// for it fails as `report_make` does.
    #[must_use]
    pub fn save_report(
        &self,
        asked: &str,
        write: impl FnOnce(&str, &[u8]) -> io::Result<PathBuf>,
    ) -> String {
        let Ok(Value::Object(mut command)) = serde_json::from_str(asked) else {
            return Failure::new(ErrorCode::WrongType).to_line(&self.state().words);
        };
        command.insert("do".to_owned(), json!("report_make"));
        command.insert("how".to_owned(), json!("saved"));
        self.save(&Value::Object(command), write)
    }

    fn save(
        &self,
        command: &Value,
        write: impl FnOnce(&str, &[u8]) -> io::Result<PathBuf>,
    ) -> String {
        let reply = self.answer(&command.to_string());
        let Some((name, bytes)) = taken::read_file(&reply) else {
            return reply;
        };
        match write(&name, &bytes) {
            Ok(path) => door::ok_line(&json!({ "path": path.display().to_string() })),
            Err(error) => {
                // If that fails too the entry stays: the list may say too much, never too little.
                let _ = self.with_call(departure::take_back);
                Failure::from(error).to_line(&self.state().words)
            }
        }
    }

    /// Whether the scan screen is open, so that the camera may be let in.
    #[must_use]
    pub fn scanning(&self) -> bool {
        let mut state = self.state();
        state.session.lock_if_idle(self.world.uptime());
        state.session.is_scanning()
    }

    fn with_call<T>(
        &self,
        work: impl FnOnce(&mut Call<'_>) -> Result<T, Failure>,
    ) -> Result<T, Failure> {
        let now = self.world.now();
        let mut state = self.state();
        state.session.lock_if_idle(self.world.uptime());
        work(&mut Call {
            now,
            world: self.world.as_ref(),
            folder: &self.folder,
            cost: self.cost,
            state: &mut state,
        })
    }

    /// Answers a line as if it came at another time, which may be long past: for invented demo data.
    pub(crate) fn answer_at(&self, line: &str, at: DateTime<FixedOffset>) -> String {
        let mut state = self.state();
        self.reply(&mut state, line, at)
    }

    /// The time now.
    pub(crate) fn now(&self) -> DateTime<FixedOffset> {
        self.world.now()
    }

    /// The language of the words.
    pub(crate) fn language(&self) -> Language {
        self.state().words.language()
    }

    /// Notes that what is in the folder is invented.
    ///
    /// # Errors
    /// When the note cannot be written.
    pub(crate) fn mark_as_demo(&self) -> Result<(), Failure> {
        let mut state = self.state();
        let device = Device {
            demo: true,
            ..state.device
        };
        device::save(self.folder.path(), device)?;
        state.device = device;
        Ok(())
    }

    fn reply(&self, state: &mut State, line: &str, now: DateTime<FixedOffset>) -> String {
        let mut call = Call {
            now,
            world: self.world.as_ref(),
            folder: &self.folder,
            cost: self.cost,
            state,
        };
        let reply = door::parse_line(line).map_err(Failure::from);
        let reply = reply.and_then(|parsed| answer_parsed(&mut call, parsed));
        reply.unwrap_or_else(|failure| failure.to_line(&call.state.words))
    }

    /// Locks the vault if nobody has used it for too long. For a timer, and for when the app goes to the
    /// background or comes back.
    pub fn lock(&self) {
        let now = self.world.uptime();
        self.state().session.lock_if_idle(now);
    }

    /// Locks the vault at once. For the end of the program.
    pub fn lock_now(&self) {
        self.state().session.lock();
    }

    /// What is held between commands. A thread that stopped in the middle of a command leaves nothing half
    /// done: what is kept is in the vault, and its changes are whole or not there.
    fn state(&self) -> MutexGuard<'_, State> {
        self.state.lock().unwrap_or_else(PoisonError::into_inner)
    }
}

fn answer_parsed(call: &mut Call<'_>, parsed: Parsed) -> Result<String, Failure> {
    if let Some(command) = commands::find(&parsed.name) {
        if !command.while_locked {
            call.vault()?;
        }
        let reply = (command.run)(call, parsed.body);
        if command.counts_as_use {
            let now = call.world.uptime();
            call.state.session.touch(now);
        }
        return reply;
    }
    if !door::COMMANDS.contains(&parsed.name.as_str()) {
        return Err(Failure::at(ErrorCode::UnknownCommand, door::COMMAND_FIELD));
    }
    // Advice needs to know the plan's limits, and they are in the vault.
    call.vault()?;
    let now = call.world.uptime();
    call.state.session.touch(now);
    crate::advice_line::answer(parsed, call.reader()?)
}
