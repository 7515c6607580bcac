//! Looking back at years, and finding one of thousands: the app's own commands, with the vault open, beside reading
//! the same rows out of the vault.

use app::{App, RandomnessError, World};
use chrono::{DateTime, FixedOffset};
use record::{BackToUsual, CheckIn, CheckInKind, Day, Moment, Pain, Patient};
use serde_json::{Value, json};
use std::path::Path;
use std::time::Duration;
use vault::{Cost, Folder, LiftFilter, LiftId, Passphrase, Vault};

use crate::clock::{median_ratio, tell, tell_ratio, try_time};
use crate::store::{fixed_bytes, lift};
use crate::trouble::Trouble;

/// Five years and a half of ten lifts a day.
const LIFTS: i64 = 20_000;
/// A lift every so many minutes of the invented years: ten a day.
const EVERY_MS: i64 = 144 * 60 * 1000;
/// As many as a clinician's list may hold.
const PEOPLE: i64 = 2_000;
const ROUNDS: usize = 15;
/// Of every invented vault here.
pub(crate) const PASSPHRASE: &str = "seven invented words on a bench today";
const NAME: &str = "the app";

/// Measures.
///
/// # Errors
/// What the vault, the app or the disk gives.
pub(crate) fn measure() -> Result<(), Trouble> {
    let place = tempfile::tempdir()?;
    fill(place.path())?;
    let vault = open_vault(place.path())?;
    let app = open_app(place.path())?;
    let all = json!({ "do": "look_back" }).to_string();
    let quarter = json!({ "do": "look_back", "since_days": 90 }).to_string();
    let (mut looks, mut lifts, mut recent) = (Vec::new(), Vec::new(), Vec::new());
    for _ in 0..ROUNDS {
        lifts.push(try_time(|| read_lifts(&vault))?);
        looks.push(try_time(|| ask(&app, &all))?);
        recent.push(try_time(|| ask(&app, &quarter))?);
    }
    println!("{LIFTS} lifts, each with two looks back, over five years and a half");
    tell("read the lifts alone, whole", &lifts);
    tell("look back at all of it", &looks);
    tell("look back at 90 days", &recent);
    tell_ratio(
        "look back at all to reading the lifts",
        median_ratio(&looks, &lifts),
    );
    find_people(&vault, &app)
}

/// What the list asks as somebody types a name, a letter at a time.
fn find_people(vault: &Vault, app: &App) -> Result<(), Trouble> {
    let (mut keys, mut reads) = (Vec::new(), Vec::new());
    for _ in 0..ROUNDS {
        for typed in ["", "q", "qu", "qui", "quie", "quiet l"] {
            let line = json!({ "do": "patients", "find": typed }).to_string();
            reads.push(try_time(|| vault.patients().all())?);
            keys.push(try_time(|| ask(app, &line))?);
        }
    }
    println!("{PEOPLE} people on the list");
    tell("read all of them", &reads);
    tell("what one key asks for", &keys);
    tell_ratio("a key to reading all", median_ratio(&keys, &reads));
    Ok(())
}

fn fill(folder: &Path) -> Result<(), Trouble> {
    let folder = Folder::new(folder);
    let passphrase = Passphrase::new(PASSPHRASE.to_owned());
    let vault = Vault::create_at_cost(&folder, &passphrase, Cost::FLOOR, &mut fixed_bytes)?;
    vault.together(|vault| {
        for number in 0..LIFTS {
            let mut kept = lift::numbered(number);
            kept.at = at(number);
            kept.body.at = kept.at;
            kept.body.back = Pain::new(score(number, 9));
            let id = vault.lifts().add(&kept)?;
            look(vault, id, CheckInKind::During, number)?;
            look(vault, id, CheckInKind::NextMorning, number)?;
        }
        for number in 0..PEOPLE {
            vault.patients().add(&person(number))?;
        }
        Ok(())
    })?;
    vault.settle()?;
    Ok(())
}

/// Somebody invented; one in eight is to be looked at again.
fn person(number: i64) -> Patient {
    const FIRST: [&str; 8] = [
        "Quiet", "Blue", "Ámbar", "Green", "Still", "Warm", "Old", "Ñandú",
    ];
    const SECOND: [&str; 5] = ["Lantern", "Kettle", "Ladder", "River", "Lamp"];
    let one_of = |names: &[&'static str], at: i64| {
        let place = usize::try_from(at).unwrap_or(0) % names.len();
        names.get(place).copied().unwrap_or_default()
    };
    Patient {
        alias: format!(
            "{} {} {number}",
            one_of(&FIRST, number),
            one_of(&SECOND, number / 8)
        ),
        since: at(0),
        pairing: None,
        seen_at: Some(at(number)),
        review_on: (number % 8 == 0).then_some(Day(20_000)),
    }
}

/// The last one is an hour before "now".
fn at(number: i64) -> Moment {
    Moment {
        at_ms: NOW_MS - 3_600_000 - (LIFTS - 1 - number) * EVERY_MS,
        offset_min: 60,
    }
}

fn look(
    vault: &Vault,
    id: LiftId,
    kind: CheckInKind,
    number: i64,
) -> Result<(), vault::VaultError> {
    vault.check_ins().add(
        id,
        &CheckIn {
            kind,
            at: at(number),
            pain: Pain::new(score(number, 7)),
            back_to_usual: (kind == CheckInKind::NextMorning).then_some(BackToUsual::Yes),
            skipped: false,
        },
    )
}

/// A score that goes up and down.
fn score(number: i64, round: i64) -> u8 {
    u8::try_from((number * 7 / 3) % round).unwrap_or(0)
}

fn open_vault(folder: &Path) -> Result<Vault, Trouble> {
    let passphrase = Passphrase::new(PASSPHRASE.to_owned());
    Ok(Vault::open(&Folder::new(folder), &passphrase)?)
}

/// The app on an invented vault, open.
///
/// # Errors
/// What the app gives.
pub(crate) fn open_app(folder: &Path) -> Result<App, Trouble> {
    let app = App::open_at_cost(folder, Box::new(Still), Cost::FLOOR)?;
    let unlock = json!({ "do": "unlock", "passphrase": PASSPHRASE });
    ask(&app, &unlock.to_string())?;
    Ok(app)
}

fn read_lifts(vault: &Vault) -> Result<usize, Trouble> {
    let filter = LiftFilter {
        limit: u32::MAX,
        ..LiftFilter::default()
    };
    Ok(vault.lifts().newest(&filter)?.len())
}

/// Asks the app; an error is none of what is measured.
///
/// # Errors
/// [`Trouble::Answer`] when it refuses.
pub(crate) fn ask(app: &App, line: &str) -> Result<String, Trouble> {
    let reply = app.answer(line);
    let read: Value = serde_json::from_str(&reply).map_err(|_| Trouble::Answer(NAME))?;
    if read.get("ok").is_some() {
        Ok(reply)
    } else {
        Err(Trouble::Answer(NAME))
    }
}

/// 25 November 2026, 09:12 in Berlin.
const NOW_MS: i64 = 1_795_594_320_000;

/// A world in which no time passes, and where nothing is secret.
struct Still;

impl World for Still {
    fn now(&self) -> DateTime<FixedOffset> {
        DateTime::from_timestamp_millis(NOW_MS)
            .unwrap_or_default()
            .fixed_offset()
    }

    fn uptime(&self) -> Duration {
        Duration::from_secs(3600)
    }

    fn fill_random(&self, bytes: &mut [u8]) -> Result<(), RandomnessError> {
        fixed_bytes(bytes).map_err(|_| RandomnessError)
    }
}
