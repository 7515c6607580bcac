//! What can be seen and done without the passphrase: little, but the warning signs always.

use journeys::in_both_engines;
use journeys::person::AN_EVERYDAY_BOX;
use journeys::phone::Phone;
use serde_json::json;

in_both_engines!(
    a_wrong_passphrase_opens_nothing,
    warning_signs_can_be_read_while_locked,
    locked_pages_cannot_be_reached_by_their_address,
);

const PASSPHRASE: &str = "three tins of beans";

fn a_wrong_passphrase_opens_nothing(phone: &mut Phone) {
    phone.expect_screen("start");
    phone.tap("#begin");
    phone.tap("[data-answer=help]");
    phone.tap("[data-answer=lb]");
    phone.type_in("#passphrase", "short");
    phone.type_in("#again", "short");
    phone.tap_in_vain("#keep");
    phone.picture("too-short");
    phone.close();
    phone.start();
    phone.first_start(PASSPHRASE);

    phone.tap("#lock");
    phone.expect_screen("unlock");
    phone.type_in("#passphrase", "three tins of peas!");
    let problem = phone.tap_in_vain("#open");
    phone.picture("wrong");
    assert!(!problem.contains("peas"), "{problem}");
    phone.expect_screen("unlock");

    phone.clear("#passphrase");
    phone.unlock(PASSPHRASE);
    phone.expect_screen("home");
}

fn warning_signs_can_be_read_while_locked(phone: &mut Phone) {
    phone.first_start(PASSPHRASE);
    phone.tap("#lock");
    phone.tap("#signs");
    phone.expect_screen("signs");
    phone.picture("signs");
    for sign in ["saddle_numb", "chest_breath", "fever_unwell"] {
        phone.expect(&format!("[data-sign='{sign}']"));
    }
    phone.tap("#back");
    phone.expect_screen("unlock");
}

fn locked_pages_cannot_be_reached_by_their_address(phone: &mut Phone) {
    phone.first_start(PASSPHRASE);
    phone.tap("#check-lift");
    phone.walk_to("advice", &[AN_EVERYDAY_BOX]);
    phone.tap("#did");
    phone.tap("#skip");
    phone.tap("#lock");
    for page in [
        "home",
        "history",
        "history/1",
        "advice",
        "settings",
        "walk/back",
    ] {
        phone.run("location.hash = '#/' + arguments[0];", &json!(page));
        phone.expect_screen("unlock");
        phone.expect("#open");
        assert!(
            !phone.has("[data-entry], advice-card, .check-rows"),
            "{page}"
        );
    }
}
