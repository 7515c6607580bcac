//! From pixel to pixel: one phone's screen is filmed as a hand-held camera would see it, and the other
//! phone's live camera reads the film. Both phones are Chromium with a phone's measures; the film is made by
//! `tests/handoff_peers/film.py` from pictures of the screen.
//!
//! It needs Python with a few packages, so it is not among the plain journeys: `cargo xtask test --only
//! pixels` runs two legs with fixed seeds, `cargo xtask pixels` all of them.

#![allow(
    clippy::panic,
    clippy::print_stdout,
    clippy::disallowed_methods,
    reason = "a test stops at the first surprise; how long a leg takes is worth reading and decides nothing"
)]

use std::process::Command;
use std::time::Instant;

use journeys::binaries::root;
use journeys::engines::{FILM, Kind, Setting};
use journeys::handing::{Symbols, pair, read_words_and_agree};
use journeys::phone::Phone;

const PASSPHRASE: &str = "three tins of beans";

/// Fills every field of the plan that is shown that takes typed words. Letters from a generator by D. H. Lehmer with a
/// fixed start, so that deflate finds nothing to shorten.
const LONG_NOTES: &str = r"
const { ask } = await import('/backend.js');
const id = Number(location.hash.split('/').pop());
let seed = 20261128;
const letters = (count) => Array.from({ length: count }, () => {
  seed = (seed * 48271) % 2147483647;
  return 'abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789 '[seed % 63];
}).join('').trim();
await ask('plan_set', { id, field: 'notes', value: letters(700) });
await ask('plan_set', { id, field: 'why', value: letters(200) });
for (const at of [1, 2, 3]) await ask('plan_set', { id, field: `cue_${at}`, value: letters(200) });
for (const at of [1, 2, 3]) await ask('plan_set', { id, field: `flare_${at}`, value: letters(60) });
await ask('plan_set', { id, field: 'call', value: letters(60) });
return 'done';";

/// How a film is made.
#[derive(Debug, Clone, Copy)]
struct Shot {
    /// Of the noise, the hand and the light.
    seed: u32,
    /// The share of frames from which nothing can be read.
    loss: f64,
    /// How much of blur, noise, moire and uneven light; 1 is the "combined" case.
    hard: f64,
}

const MILD: Shot = Shot {
    seed: 1,
    loss: 0.2,
    hard: 1.0,
};

#[test]
#[ignore = "needs Python with packages: see the top of this file"]
fn two_legs() {
    let (mut clinician, mut patient) = two_phones();
    pair(&mut clinician, &mut patient);
    plan_leg(&mut clinician, &mut patient, MILD);
    history_leg(&mut patient, &mut clinician, Shot { seed: 2, ..MILD });
}

#[test]
#[ignore = "takes minutes: see the top of this file"]
fn every_leg() {
    let (mut clinician, mut patient) = two_phones();
    pairing_leg(&mut clinician, &mut patient, MILD);
    for (seed, loss, hard) in [
        (11, 0.0, 1.0),
        (12, 0.2, 1.0),
        (13, 0.4, 1.0),
        (14, 0.2, 1.3),
    ] {
        let shot = Shot { seed, loss, hard };
        plan_leg(&mut clinician, &mut patient, shot);
        history_leg(&mut patient, &mut clinician, shot);
    }
}

fn two_phones() -> (Phone, Phone) {
    let mut clinician = started("pixels-clinician", false);
    clinician.first_start(PASSPHRASE);
    clinician.name_card("Blue Kettle");
    // Some weeks of invented lifts, in an open vault.
    let mut patient = started("pixels-patient", true);
    patient.expect_screen("home");
    patient.name_card("Green Ladder");
    (clinician, patient)
}

fn started(name: &'static str, demo: bool) -> Phone {
    let mut phone = Phone::switched_off(Kind::Browser, name);
    phone.set_up(Setting {
        camera: true,
        demo,
        ..Setting::default()
    });
    phone.start();
    phone
}

/// Each camera reads the other's offer, and both show the same words.
fn pairing_leg(one: &mut Phone, other: &mut Phone, shot: Shot) {
    one.open("hand/pair");
    other.open("hand/pair");
    let (ones, others) = (one.look_at_symbols(1), other.look_at_symbols(1));
    film(one, &others, shot);
    film(
        other,
        &ones,
        Shot {
            seed: shot.seed + 1,
            ..shot
        },
    );
    for phone in [&mut *one, &mut *other] {
        let began = Instant::now();
        phone.tap("#scan");
        phone.expect_screen("hand/pair");
        println!("offer read in {:.1} s", began.elapsed().as_secs_f64());
    }
    let words = [one, other].map(read_words_and_agree);
    assert_eq!(words[0], words[1]);
}

fn plan_leg(from: &mut Phone, to: &mut Phone, shot: Shot) {
    from.open("plans/new");
    from.tap("[data-answer]");
    from.type_in("#for", "Green Ladder");
    from.tap("#begin");
    // Long notes of letters at random: too much for one symbol.
    from.ask_later(LONG_NOTES);
    from.tap("#give");
    from.tap("[data-answer]");
    from.tap("#show");
    let shown = from.look_at_symbols(24);
    assert!(shown.count() > 1, "a plan with long notes is a sequence");
    read_by_camera(to, &shown, shot, "a plan");
    from.tap("#done");
}

fn history_leg(from: &mut Phone, to: &mut Phone, shot: Shot) {
    from.open("hand/give");
    from.tap("[data-answer=history]");
    from.tap("[data-answer='90']");
    from.tap("[data-answer=no]");
    from.tap("[data-answer]");
    from.tap("#show");
    let shown = from.look_at_symbols(24);
    read_by_camera(to, &shown, shot, "a history");
    from.tap("#done");
}

/// Lets the camera look until all of it is in, and takes it.
fn read_by_camera(phone: &mut Phone, shown: &Symbols, shot: Shot, what: &str) {
    film(phone, shown, shot);
    let began = Instant::now();
    phone.open("hand/scan/parcel");
    phone.expect_screen("hand/question");
    println!(
        "{what} in {} symbols, {shot:?}: read in {:.1} s",
        shown.count(),
        began.elapsed().as_secs_f64()
    );
    phone.settled();
    phone.picture("read-by-camera");
    phone.tap("#yes");
}

/// Puts the film of another phone's screen before this phone's camera.
fn film(phone: &Phone, shown: &Symbols, shot: Shot) {
    let Some(python) = std::env::var_os("HEFTWELL_PEERS") else {
        panic!("HEFTWELL_PEERS names the Python to use")
    };
    let output = Command::new(python)
        .arg(root().join("tests/handoff_peers/film.py"))
        .arg(shown.folder())
        .arg(phone.engine().home().join(FILM))
        .args(["--seed", &shot.seed.to_string()])
        .args(["--loss", &shot.loss.to_string()])
        .args(["--hard", &shot.hard.to_string()])
        .output();
    match output {
        Ok(output) if output.status.success() => {}
        Ok(output) => panic!("{}", String::from_utf8_lossy(&output.stderr)),
        Err(error) => panic!("the film: {error}"),
    }
}
