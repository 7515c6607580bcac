//! What the vault costs over a plain, unencrypted database of the same library and the same rows.

pub(crate) mod lift;
mod plain;

use std::path::Path;

use rusqlite::Connection;
use vault::{Folder, NoRandomness, Passphrase, Vault, VaultError};

use crate::clock::{median, median_ratio, tell, tell_ratio, try_time};
use crate::trouble::Trouble;

/// Lifts in both before anything is timed.
const LIFTS: i64 = 20_000;
/// An opening takes a good part of a second, so fewer.
const OPENINGS: usize = 9;
/// Lifts added, and pages of history read.
const ROUNDS: usize = 200;

/// Measures opening, adding one lift, and reading the newest thirty.
///
/// # Errors
/// What the vault, the plain database or the disk gives.
pub(crate) fn measure() -> Result<(), Trouble> {
    let place = tempfile::tempdir()?;
    let folder = Folder::new(place.path().join("vault"));
    let path = place.path().join("plain.db");
    fill_vault(&folder)?;
    plain::fill(&path, LIFTS)?;
    println!("{LIFTS} lifts in both");
    let mut openings = Openings::default();
    for _ in 0..OPENINGS {
        openings.add(&folder, &path)?;
    }
    openings.tell();
    let vault = Vault::open(&folder, &passphrase())?;
    let plain = plain::open(&path)?;
    adding(&vault, &plain)?;
    reading(&vault, &plain)
}

fn fill_vault(folder: &Folder) -> Result<(), Trouble> {
    let vault = Vault::create(folder, &passphrase(), &mut fixed_bytes)?;
    vault.together(|vault| {
        for number in 0..LIFTS {
            vault.lifts().add(&lift::numbered(number))?;
        }
        Ok(())
    })?;
    vault.settle()?;
    Ok(())
}

/// Nothing here is secret, and the time taken does not depend on the bytes.
#[allow(clippy::unnecessary_wraps, reason = "the shape the vault asks for")]
pub(crate) fn fixed_bytes(bytes: &mut [u8]) -> Result<(), NoRandomness> {
    for (place, byte) in bytes.iter_mut().enumerate() {
        *byte = u8::try_from(place % 251).unwrap_or(0);
    }
    Ok(())
}

fn passphrase() -> Passphrase {
    Passphrase::new("seven invented words on a bench today".to_owned())
}

/// Times of opening, one of each kind in turn.
#[derive(Default)]
struct Openings {
    vault: Vec<f64>,
    key: Vec<f64>,
    plain: Vec<f64>,
    checked: Vec<f64>,
}

impl Openings {
    fn add(&mut self, folder: &Folder, path: &Path) -> Result<(), Trouble> {
        self.plain.push(try_time(|| plain::open(path))?);
        self.checked.push(try_time(|| plain::open_checked(path))?);
        self.vault
            .push(try_time(|| Vault::open(folder, &passphrase()))?);
        // A wrong passphrase is found once the key is derived, and before the file is touched.
        self.key.push(try_time(|| refused(folder))?);
        Ok(())
    }

    fn tell(&self) {
        tell("open: vault, all checks", &self.vault);
        tell("open: of which deriving the key (Argon2id)", &self.key);
        tell("open: plain", &self.plain);
        tell("open: plain, with SQLite's quick_check", &self.checked);
        let rest: Vec<f64> = self
            .vault
            .iter()
            .zip(&self.key)
            .map(|(all, key)| all - key)
            .collect();
        tell_ratio(
            "open: vault to plain",
            median_ratio(&self.vault, &self.plain),
        );
        tell_ratio(
            "open: vault without the key to checked plain",
            median_ratio(&rest, &self.checked),
        );
        tell_ratio(
            "open: deriving the key to all of it",
            median(&self.key) / median(&self.vault),
        );
    }
}

fn refused(folder: &Folder) -> Result<(), Trouble> {
    let wrong = Passphrase::new("seven other words on a bench today".to_owned());
    match Vault::open(folder, &wrong) {
        Err(VaultError::WrongPassphrase) => Ok(()),
        Err(error) => Err(error.into()),
        Ok(_) => Err(Trouble::Answer("the vault")),
    }
}

fn adding(vault: &Vault, plain: &Connection) -> Result<(), Trouble> {
    let (mut ours, mut theirs) = (Vec::new(), Vec::new());
    for number in (LIFTS..).take(ROUNDS) {
        let lift = lift::numbered(number);
        theirs.push(try_time(|| plain::add(plain, &lift))?);
        ours.push(try_time(|| vault.lifts().add(&lift))?);
    }
    tell("add one lift: vault, on the disk", &ours);
    tell("add one lift: plain, on the disk", &theirs);
    tell_ratio("add one lift: vault to plain", median_ratio(&ours, &theirs));
    Ok(())
}

fn reading(vault: &Vault, plain: &Connection) -> Result<(), Trouble> {
    let (mut ours, mut theirs) = (Vec::new(), Vec::new());
    for _ in 0..ROUNDS {
        theirs.push(try_time(|| plain::newest(plain))?);
        ours.push(try_time(|| vault.lifts().newest(&Default::default()))?);
    }
    let same = vault
        .lifts()
        .newest(&Default::default())?
        .into_iter()
        .map(|(_, lift)| lift)
        .eq(plain::newest(plain)?);
    if !same {
        return Err(Trouble::Answer("the plain database"));
    }
    tell("read the newest 30: vault", &ours);
    tell("read the newest 30: plain", &theirs);
    tell_ratio(
        "read the newest 30: vault to plain",
        median_ratio(&ours, &theirs),
    );
    Ok(())
}
