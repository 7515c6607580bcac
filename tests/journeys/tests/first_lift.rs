//! The main job, from an empty phone to a history that is there again after the app was closed.

use journeys::in_both_engines;
use journeys::person::{ABOUT, AN_EVERYDAY_BOX};
use journeys::phone::Phone;

in_both_engines!(first_lift_is_found_in_the_history_after_closing);

const PASSPHRASE: &str = "three tins of beans";

fn first_lift_is_found_in_the_history_after_closing(phone: &mut Phone) {
    phone.expect_screen("start");
    phone.picture("start");
    phone.first_start(PASSPHRASE);
    phone.picture("home-empty");

    phone.tap("#check-lift");
    let asked = phone.walk_to("advice", &[AN_EVERYDAY_BOX]);
    for question in ABOUT
        .iter()
        .filter(|id| AN_EVERYDAY_BOX.iter().any(|(known, _)| known == *id))
    {
        assert!(
            asked.iter().any(|id| id == question),
            "{question} is asked at the first lift"
        );
    }
    phone.picture("advice");
    phone.expect("outcome-mark");
    if let Some(visible) = phone.engine().shows_something() {
        assert!(visible, "the window on the screen is blank");
    }

    let after = phone.tap("#did");
    assert!(after.starts_with("after/"), "{after}");
    phone.tap("[data-answer='3']");
    phone.expect_screen("home");
    phone.picture("home");
    phone.expect("[data-entry]");

    phone.close();
    phone.start();
    phone.expect_screen("unlock");
    phone.unlock(PASSPHRASE);
    phone.expect_screen("home");
    phone.tap("a[href='#/history']");
    phone.picture("history");
    let entry = phone.tap("[data-entry]");
    assert!(entry.starts_with("history/"), "{entry}");
    phone.picture("entry");
    assert!(
        phone.words().contains('3'),
        "the pain that was told is shown: {}",
        phone.words()
    );
}
