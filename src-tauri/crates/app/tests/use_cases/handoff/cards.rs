//! A device's own card.

use crate::phone::TestPhone;
use serde_json::json;

#[test]
fn nobody_has_to_type_a_real_name() {
    let phone = TestPhone::set_up("orchard");
    let card = phone.ask(json!({"do": "card"}));
    assert_eq!(card["alias"], json!(null));
    assert_eq!(card["role"], "lifts");
    let suggested = card["suggest"].as_str().expect("a name");
    assert_eq!(suggested.split(' ').count(), 2, "{suggested}");
    let card = phone.ask(json!({"do": "card_set", "alias": suggested}));
    assert_eq!(card["alias"], suggested);
}

#[test]
fn the_role_is_what_the_app_is_used_for() {
    let phone = TestPhone::set_up("harbour");
    for (used_for, role) in [("treat", "treats"), ("help", "helps"), ("lift", "lifts")] {
        phone.ask(json!({"do": "settings_set", "use": used_for}));
        assert_eq!(phone.ask(json!({"do": "card"}))["role"], role);
    }
}

#[test]
fn a_name_is_brought_to_its_plain_form_or_refused() {
    let phone = TestPhone::set_up("orchard");
    let set = |alias: &str| json!({"do": "card_set", "alias": alias});
    assert_eq!(phone.ask(set("  Blue Kettle "))["alias"], "Blue Kettle");
    assert_eq!(phone.refused(set("  ")), "alias_length at alias");
    assert_eq!(phone.refused(set(&"x".repeat(41))), "alias_length at alias");
    // A right-to-left override (U+202E) would turn what follows around.
    assert_eq!(
        phone.refused(set("Blue\u{202e}Kettle")),
        "alias_character at alias"
    );
    assert_eq!(phone.ask(json!({"do": "card"}))["alias"], "Blue Kettle");
}

#[test]
fn without_a_name_there_is_no_pairing() {
    let phone = TestPhone::set_up("orchard");
    assert_eq!(phone.refused(json!({"do": "pair_start"})), "alias_needed");
}

#[test]
fn keys_are_made_once_and_outlive_a_kill() {
    let mut phone = TestPhone::set_up("orchard").called("Blue Kettle");
    let before = phone.ask(json!({"do": "pair_start"}))["symbol"]["size"].clone();
    phone.kill_and_unlock();
    assert_eq!(phone.ask(json!({"do": "card"}))["alias"], "Blue Kettle");
    assert_eq!(
        phone.ask(json!({"do": "pair_start"}))["symbol"]["size"],
        before
    );
}
