//! A plan goes over, ten days pass, the history comes back, is looked at, and the next version goes over. What the look back
//! says is worked out once more here, from the table that the app exports.

use std::collections::BTreeSet;

use journeys::engines::Setting;
use journeys::handing::pair;
use journeys::in_both_engines;
use journeys::person::{AN_EVERYDAY_BOX, Answer};
use journeys::phone::Phone;
use serde_json::Value;

in_both_engines!(ten_days_between_two_versions_of_a_plan);

const PASSPHRASE: &str = "three tins of beans";
const DAYS: u32 = 10;

/// Pain while lifting, day by day. Invented.
const PAIN: [u8; 10] = [4, 4, 3, 5, 3, 3, 2, 3, 2, 2];

fn ten_days_between_two_versions_of_a_plan(clinician: &mut Phone) {
    let mut patient = Phone::new(clinician.kind(), "the patient's phone of ten days");
    for (phone, alias) in [
        (&mut *clinician, "Blue Kettle"),
        (&mut patient, "Green Ladder"),
    ] {
        phone.first_start(PASSPHRASE);
        phone.name_card(alias);
    }
    pair(clinician, &mut patient);
    clinician.open("patients/new");
    clinician.type_in("#alias", "Green Ladder");
    clinician.tap("#keep");
    clinician.tap("#make");
    clinician.tap("[data-answer]");
    let editing = clinician.screen();
    hand_plan(clinician, &mut patient);

    for day in 0..DAYS {
        if day > 0 {
            move_clock(&mut patient, day);
            good_morning(&mut patient);
        }
        a_lift(&mut patient, day);
    }
    move_clock(&mut patient, DAYS);
    good_morning(&mut patient);
    patient.open("hand/give");
    patient.tap("[data-answer=history]");
    patient.tap("[data-answer='90']");
    patient.tap("[data-answer=no]");
    patient.tap("[data-answer]");
    let history = patient.show_it();

    move_clock(clinician, DAYS);
    clinician.open("hand/scan/parcel");
    assert_eq!(clinician.take_photos(&history), "hand/question");
    clinician.tap("#yes");
    clinician.open("hand/people");
    clinician.tap("[data-pairing]");
    clinician.tap("#history");
    clinician.open_all();
    clinician.picture("look-back");
    expect_the_table_to_agree(clinician);

    clinician.open(&editing);
    clinician.tap("[data-change='ceiling']");
    clinician.clear("#number");
    clinician.type_in("#number", "12");
    clinician.tap("#continue");
    hand_plan(clinician, &mut patient);
    patient.picture("second-version");
    let words = patient.words();
    assert!(
        words.contains("Version 2") && words.contains("12 kg"),
        "{words}"
    );
}

/// From the page of a plan to the patient's page of the plan.
fn hand_plan(clinician: &mut Phone, patient: &mut Phone) {
    clinician.tap("#give");
    clinician.tap("[data-answer]");
    let plan = clinician.show_it();
    clinician.tap("#done");
    patient.open("hand/scan/parcel");
    assert_eq!(patient.take_photos(&plan), "hand/question");
    patient.tap("#yes");
    patient.expect_screen("plan");
}

fn move_clock(phone: &mut Phone, days_ahead: u32) {
    phone.close();
    phone.set_up(Setting {
        days_ahead,
        ..Setting::default()
    });
    phone.start();
    phone.unlock(PASSPHRASE);
    phone.expect_screen("home");
}

/// Answers for yesterday's lift, if home asks.
fn good_morning(phone: &mut Phone) {
    phone.tap("[data-morning]");
    phone.give(Answer::Pain(2));
    while phone.screen() != "home" {
        phone.tap("[data-answer]");
    }
}

fn a_lift(phone: &mut Phone, day: u32) {
    if phone.screen() != "home" {
        phone.open("home");
    }
    phone.tap("#check-lift");
    phone.walk_to("advice", &[AN_EVERYDAY_BOX]);
    phone.tap("#did");
    let pain = PAIN.get(usize::try_from(day).unwrap_or(0)).copied();
    phone.give(Answer::Pain(pain.unwrap_or(2)));
    phone.expect_screen("home");
}

/// Counts, days, kilograms and times of the look back against sums over the rows of the table (RFC 4180).
fn expect_the_table_to_agree(phone: &mut Phone) {
    let look_back = phone.words();
    let (lifted, counted) = weeks_of(phone);
    phone.tap("#take-out");
    phone.tap("#out-csv");
    phone.touch("#make");
    phone.expect("#made");
    let table = phone.run(
        "return document.getElementById('made').value;",
        &Value::Null,
    );
    let mut reader = csv::Reader::from_reader(table.as_str().unwrap_or_default().as_bytes());
    let Ok(head) = reader.headers().cloned() else {
        phone.fail("the table has no head");
    };
    let column = |row: &csv::StringRecord, name: &str| {
        let place = head.iter().position(|title| title == name);
        place
            .and_then(|place| row.get(place))
            .unwrap_or_default()
            .to_owned()
    };
    let (mut done, mut left, mut kilograms, mut times) = (0, 0, 0.0, 0);
    let mut days = BTreeSet::new();
    let mut during = Vec::new();
    for row in reader.records() {
        let Ok(row) = row else {
            phone.fail("a row of the table cannot be read");
        };
        days.insert(column(&row, "at").chars().take(10).collect::<String>());
        if column(&row, "decision") != "done" {
            left += 1;
            continue;
        }
        done += 1;
        let count: u32 = column(&row, "times").parse().unwrap_or(0);
        let mass: f64 = column(&row, "mass_high_kg").parse().unwrap_or(0.0);
        times += count;
        kilograms += mass * f64::from(count);
        during.push(column(&row, "during_nrs"));
    }
    assert_eq!((done, left, days.len()), (10, 0, 10));
    assert_eq!(during, PAIN.map(|pain| pain.to_string()));
    let counts = format!(
        "{done} done and {left} decided against, on {} days",
        days.len()
    );
    assert!(look_back.contains(&counts), "{counts}\n{look_back}");
    assert_eq!(counted, times, "times of all weeks");
    // Each of two or three weeks is shown in whole kilograms.
    assert!(
        (lifted - kilograms).abs() <= 1.5,
        "{lifted} kg and {kilograms} kg"
    );
}

/// The numbers that stand behind the picture of the weeks: kilograms and times, a pair a week.
const WEEKS: &str = r"
const rows = [...document.querySelectorAll('table')].flatMap((table) => [...table.tBodies[0].rows]);
const weeks = rows.filter((row) => row.cells.length === 3 && /kg/.test(row.cells[1].textContent));
return weeks.map((row) => [1, 2].map((at) => Number.parseFloat(row.cells[at].textContent)));";

/// Their sums.
fn weeks_of(phone: &Phone) -> (f64, u32) {
    let weeks = phone.run(WEEKS, &Value::Null);
    let weeks = weeks.as_array().cloned().unwrap_or_default();
    assert!((2..=3).contains(&weeks.len()), "{weeks:?}");
    let sum = |at: usize| -> f64 { weeks.iter().filter_map(|week| week.get(at)?.as_f64()).sum() };
    let Some(times) = format!("{:.0}", sum(1)).parse().ok() else {
        phone.fail("the weeks are no numbers");
    };
    (sum(0), times)
}
