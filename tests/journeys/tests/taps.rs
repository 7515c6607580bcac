//! How many touches a lift takes. The budgets are house rules: at most 15 for the day's first lift
//! (the questions about the person come once and do not count), at most 8 while the body's answers
//! are kept, at most 3 for a saved task; pain afterwards in at most 2.

#![allow(
    clippy::print_stdout,
    reason = "the counts are worth reading when the budget holds too"
)]

use journeys::in_both_engines;
use journeys::person::{AN_EVERYDAY_BOX, Answer};
use journeys::phone::Phone;

in_both_engines!(a_lift_keeps_to_its_budget_of_taps);

const PASSPHRASE: &str = "three tins of beans";

fn a_lift_keeps_to_its_budget_of_taps(phone: &mut Phone) {
    phone.first_start(PASSPHRASE);
    phone.count_taps_anew();
    phone.tap("#check-lift");
    phone.walk_to("what", &[AN_EVERYDAY_BOX]);
    let about = phone.taps() - 1;
    phone.walk_to("advice", &[AN_EVERYDAY_BOX]);
    let first = phone.taps() - about;
    println!("about the person: {about} taps, once; first lift of the day: {first}");
    assert!(first <= 15, "the first lift of the day takes {first} taps");

    phone.count_taps_anew();
    phone.tap("#did");
    phone.give(Answer::Pain(2));
    assert!(phone.taps() <= 2, "after the lift: {} taps", phone.taps());
    phone.expect_screen("home");

    phone.count_taps_anew();
    phone.tap("#check-lift");
    phone.walk_to("advice", &[AN_EVERYDAY_BOX]);
    println!("with today's body kept: {}", phone.taps());
    assert!(
        phone.taps() <= 8,
        "with today's body kept a lift takes {} taps",
        phone.taps()
    );

    phone.tap("#save");
    phone.type_in("#name", "Laundry basket");
    phone.tap("#keep");
    phone.expect_screen("advice");
    phone.tap("#did");
    phone.tap("#skip");
    phone.expect_screen("home");

    phone.count_taps_anew();
    phone.tap("[data-saved]");
    phone.walk_to("advice", &[AN_EVERYDAY_BOX]);
    phone.picture("saved-task-advice");
    println!("a saved task: {}", phone.taps());
    assert!(
        phone.taps() <= 3,
        "a saved task takes {} taps",
        phone.taps()
    );
}
