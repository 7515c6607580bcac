//! Real pointers and real keys, as the engines themselves deliver them.

use journeys::in_both_engines;
use journeys::phone::Phone;
use serde_json::{Value, json};

in_both_engines!(the_first_pages_by_pointer, the_first_pages_by_keys_alone,);

const PASSPHRASE: &str = "three tins of beans";
const TAB: char = '\u{E004}';
const ENTER: char = '\u{E007}';

fn the_first_pages_by_pointer(phone: &mut Phone) {
    for (selector, screen) in [
        ("#begin", "start/use"),
        ("[data-answer=lift]", "start/units"),
        ("[data-answer=kg]", "start/passphrase"),
    ] {
        phone.point_at(selector, screen);
    }
    phone.type_in("#passphrase", PASSPHRASE);
    phone.type_in("#again", PASSPHRASE);
    phone.point_at("#keep", "home");
    phone.point_at("#check-lift", "walk/signs_full");
    phone.point_at("#none", "walk/age");
    phone.point_at("#back", "walk/signs_full");
}

fn the_first_pages_by_keys_alone(phone: &mut Phone) {
    for (selector, screen) in [
        ("#begin", "start/use"),
        ("[data-answer=lift]", "start/units"),
        ("[data-answer=kg]", "start/passphrase"),
    ] {
        tab_to(phone, selector);
        press(phone, ENTER);
        phone.expect_screen(screen);
        phone.expect(FOCUSED_HEADING);
    }
    tab_to(phone, "#passphrase");
    type_keys(phone, PASSPHRASE);
    tab_to(phone, "#again");
    type_keys(phone, PASSPHRASE);
    press(phone, ENTER);
    phone.expect_screen("home");
    phone.expect(FOCUSED_HEADING);
    tab_to(phone, "#check-lift");
    press(phone, ENTER);
    phone.expect_screen("walk/signs_full");
    phone.expect(FOCUSED_HEADING);
}

/// A new page says its name to a screen reader: its heading has the focus.
const FOCUSED_HEADING: &str = "#main h1:focus";

fn press(phone: &Phone, key: char) {
    phone.must("a key", phone.engine().session().press(key));
}

fn type_keys(phone: &Phone, words: &str) {
    for letter in words.chars() {
        press(phone, letter);
    }
}

/// Presses Tab until the element has the focus, and checks that the focus can be seen.
fn tab_to(phone: &Phone, selector: &str) {
    for _ in 0..40 {
        press(phone, TAB);
        let there = "return document.activeElement?.matches(arguments[0]) ?? false;";
        if phone.run(there, &json!(selector)) == json!(true) {
            let seen = r"
                const style = getComputedStyle(document.activeElement);
                return style.outlineStyle !== 'none' && parseFloat(style.outlineWidth) >= 2 || style.boxShadow !== 'none';";
            assert_eq!(
                phone.run(seen, &Value::Null),
                json!(true),
                "the focus on {selector} cannot be seen"
            );
            return;
        }
    }
    phone.fail(&format!("Tab does not lead to {selector}"));
}
