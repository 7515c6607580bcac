//! A new passphrase, and erasing all notes: both ask for the passphrase, and say what they do.

use journeys::in_both_engines;
use journeys::person::AN_EVERYDAY_BOX;
use journeys::phone::Phone;

in_both_engines!(a_new_passphrase_opens_the_notes, erased_notes_are_gone);

const OLD: &str = "three tins of beans";
const NEW: &str = "eleven quiet lanterns";

fn a_new_passphrase_opens_the_notes(phone: &mut Phone) {
    phone.first_start(OLD);
    phone.open("settings");
    phone.tap("#passphrase");
    phone.tap_in_vain("#keep");
    phone.type_in("#old", "three tins of peas!");
    phone.type_in("#new", NEW);
    phone.type_in("#again", NEW);
    let problem = phone.tap_in_vain("#keep");
    assert!(!problem.contains("peas"), "{problem}");
    phone.picture("wrong");
    phone.clear("#old");
    phone.type_in("#old", OLD);
    phone.tap("#keep");
    phone.expect_screen("home");
    phone.picture("changed");

    phone.tap("#lock");
    phone.type_in("#passphrase", OLD);
    phone.tap_in_vain("#open");
    phone.clear("#passphrase");
    phone.unlock(NEW);
    phone.expect_screen("home");
}

fn erased_notes_are_gone(phone: &mut Phone) {
    phone.first_start(OLD);
    phone.tap("#check-lift");
    phone.walk_to("advice", &[AN_EVERYDAY_BOX]);
    phone.tap("#did");
    phone.tap("#skip");
    phone.open("settings");
    phone.tap("#erase");
    phone.picture("what-is-lost");
    phone.type_in("#passphrase", "three tins of peas!");
    phone.tap_in_vain("#erase");
    phone.clear("#passphrase");
    phone.type_in("#passphrase", OLD);
    phone.touch("#erase");
    phone.wait_until("the first page", |phone| phone.has("#begin"));
    assert!(!phone.folder().join("vault.db").exists());

    phone.first_start(NEW);
    phone.expect_screen("home");
    assert!(!phone.has("lift-entry"));
}
