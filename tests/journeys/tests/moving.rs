//! Before a move: a known person and move in at most four taps; a person who is not as the care plan says;
//! somebody on the floor. The budget of taps is a house rule.

#![allow(
    clippy::print_stdout,
    reason = "the counts are worth reading when the budget holds too"
)]

use journeys::in_both_engines;
use journeys::person::{A_STAND_AID, AN_EVERYDAY_BOX, Answer, Story};
use journeys::phone::Phone;

in_both_engines!(
    a_known_person_and_move_take_four_taps,
    not_as_planned_is_refused_and_told,
    on_the_floor_the_check_comes_first,
);

const PASSPHRASE: &str = "three tins of beans";

/// A new phone of a home-care worker who has told about themselves, and one person with a care plan.
fn a_worker(phone: &mut Phone) {
    phone.first_start_as("help", PASSPHRASE);
    phone.picture("home-of-a-worker-new");
    phone.write_down_somebody("boat", &mut |_, _| ());
    phone.tap("[data-move=bed_to_chair]");
    phone.move_to_answer(A_STAND_AID, &mut |_, _| ());
    // Never asked before: the questions about the worker come once.
    phone.expect_screen("move");
    assert!(!phone.has("#quick"), "nothing is known of the worker yet");
    phone.tap("#own");
    phone.walk_to("move", &[AN_EVERYDAY_BOX]);
    phone.expect("#done");
    phone.picture("move-answer");
    phone.tap("#done");
    phone.tap("#skip");
    phone.open("home");
}

fn a_known_person_and_move_take_four_taps(phone: &mut Phone) {
    a_worker(phone);
    phone.picture("home-of-a-worker");
    phone.count_taps_anew();
    phone.tap("[data-person=A1]");
    phone.tap("[data-move=bed_to_chair]");
    let asked = phone.move_to_answer(A_STAND_AID, &mut |phone, _| {
        phone.expect("[data-code=A1]");
    });
    println!("known person and move: {} taps, {asked:?}", phone.taps());
    assert!(phone.taps() <= 4, "{} taps: {asked:?}", phone.taps());
    phone.expect("[data-code=A1]");
    phone.expect("#done");
    for part in [
        "1 worker",
        "Stand aid",
        "Brakes on",
        "Look at this first",
        "Stop when",
    ] {
        assert!(phone.words().contains(part), "{part}: {}", phone.words());
    }
}

fn not_as_planned_is_refused_and_told(phone: &mut Phone) {
    a_worker(phone);
    phone.tap("[data-person=A1]");
    phone.tap("[data-move=bed_to_chair]");
    phone.move_to_answer(A_STAND_AID, &mut |_, _| ());
    phone.count_taps_anew();
    phone.tap("#differs");
    assert_eq!(phone.taps(), 1, "one tap to the text for the office");
    phone.expect_screen("report");
    phone.picture("report");
    let text = phone.run(
        "return document.getElementById('text').value;",
        &serde_json::Value::Null,
    );
    let text = text.as_str().unwrap_or_default();
    for fact in [
        "A1: From bed to chair",
        "I did not do this move",
        "They are not today as the care plan says",
    ] {
        assert!(text.contains(fact), "{fact}: {text}");
    }
    phone.tap("#said");
    phone.expect_screen("people");
    phone.open("shift");
    phone.picture("shift");
    assert!(phone.words().contains("Proof: "), "{}", phone.words());
    phone.tap("#hand-over");
    phone.tap("#erase");
    assert!(
        phone.words().contains("Proof: "),
        "a refusal is not erased silently"
    );
}

/// Somebody who slipped and is not hurt, and cannot get up. Invented.
const SLIPPED: Story<'static> = &[
    ("unhurt", Answer::Pick("unhurt")),
    ("new", Answer::Pick("nothing")),
    ("same", Answer::Pick("changed")),
    ("independent", Answer::Pick("no")),
    ("here", Answer::Tick(&["second"])),
];

fn on_the_floor_the_check_comes_first(phone: &mut Phone) {
    a_worker(phone);
    phone.tap("[data-person=A1]");
    assert_eq!(phone.tap("[data-move=floor_to_chair]"), "move/unhurt");
    phone.picture("floor");
    phone.move_to_answer(SLIPPED, &mut |_, _| ());
    phone.picture("floor-answer");
    assert!(
        !phone.has("#done"),
        "two workers without a hoist lift nobody from the floor"
    );
    assert!(
        phone
            .words()
            .contains("Never lift a person from the floor by hand"),
        "{}",
        phone.words()
    );
    phone.expect("#tell");
}
