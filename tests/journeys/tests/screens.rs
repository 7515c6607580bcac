//! Every screen, in both engines: can everybody read and reach what is on it?
//!
//! The audit's rules are those of WCAG 2.2 at levels A and AA as axe-core checks them. 320 CSS
//! pixels (success criterion 1.4.10) and text at twice its size (1.4.4) are measured by us.

use std::collections::BTreeSet;

use journeys::engines::{Kind, SIZE, Setting};
use journeys::in_both_engines;
use journeys::phone::Phone;
use journeys::tour::{every_screen, first_pages};
use serde_json::Value;

in_both_engines!(
    everybody_can_read_and_reach_what_is_on_any_screen,
    the_audit_finds_nothing_serious_in_dark_colours,
    the_checks_find_what_is_wrong,
);

/// The narrowest page that everything must fit, in CSS pixels (WCAG 2.2, 1.4.10).
const NARROW: u32 = 320;

/// The name of the module that drew the screen.
const SCREEN: &str =
    "return import('/flow/place.js').then((place) => place.findRoute(location.hash)?.screen);";

/// The names of all modules that draw screens.
const ALL_SCREENS: &str =
    "return import('/flow/place.js').then((place) => place.ROUTES.map(([, screen]) => screen));";

/// One tour, and on each screen: the audit, 320 pixels, text at twice its size.
fn everybody_can_read_and_reach_what_is_on_any_screen(phone: &mut Phone) {
    let mut seen = BTreeSet::new();
    every_screen(phone, &mut |phone, name| {
        seen.insert(
            phone
                .ask_later(SCREEN)
                .as_str()
                .unwrap_or_default()
                .to_owned(),
        );
        phone.picture(name);
        phone.expect_accessible(name);
        phone.set_width(NARROW);
        phone.picture(&format!("{name}-narrow"));
        phone.expect_nothing_cut(name);
        phone.set_width(SIZE.0);
        phone.double_text(true);
        phone.picture(&format!("{name}-double"));
        phone.expect_nothing_cut(name);
        phone.double_text(false);
    });
    let all = phone.ask_later(ALL_SCREENS);
    let all = all.as_array().cloned().unwrap_or_default();
    let all: BTreeSet<String> = all
        .iter()
        .filter_map(|id| id.as_str().map(str::to_owned))
        .collect();
    assert!(!all.is_empty());
    assert_eq!(all, seen, "the tour leads through every screen there is");
}

/// Dark colours are other colours: their contrast is audited too. They are the same style sheets in both
/// engines; in the window only the first screens are looked at, to see that it follows the system.
fn the_audit_finds_nothing_serious_in_dark_colours(phone: &mut Phone) {
    phone.close();
    phone.set_up(Setting {
        dark: true,
        ..Setting::default()
    });
    phone.start();
    phone.expect_dark();
    let mut look = |phone: &mut Phone, name: &str| {
        phone.picture(name);
        phone.expect_accessible(name);
    };
    match phone.kind() {
        Kind::Browser => every_screen(phone, &mut look),
        Kind::Window => first_pages(phone, &mut look),
    }
}

/// A check that cannot fail proves nothing: each of these faults must be found.
fn the_checks_find_what_is_wrong(phone: &mut Phone) {
    assert_eq!(phone.what_is_cut(), Vec::<String>::new());
    assert_eq!(phone.audit(), Vec::<String>::new());
    let faults: [(&str, &str); 5] = [
        (
            "sticks out",
            "node.textContent = 'wide'; node.style.width = '2000px';",
        ),
        (
            "is cut",
            "node.textContent = 'tall enough to be cut by its box'; node.style.height = '6px'; node.style.overflow = 'hidden';",
        ),
        (
            "is too small",
            "const small = document.createElement('button'); small.textContent = '.'; small.style.cssText = 'padding:0;border:0;min-height:0;min-width:0;width:8px;height:8px'; node.append(small);",
        ),
        ("\"image-alt\"", "node.append(new Image(40, 40));"),
        (
            "\"color-contrast\"",
            "node.textContent = 'pale'; node.style.color = '#777'; node.style.background = '#888';",
        ),
    ];
    for (expected, fault) in faults {
        let script = format!(
            "const node = document.createElement('div'); node.id = 'fault'; document.getElementById('main').append(node); {fault}"
        );
        phone.run(&script, &Value::Null);
        let found = [phone.what_is_cut(), phone.audit()].concat().join("\n");
        assert!(found.contains(expected), "{expected} is not found: {found}");
        phone.run("document.getElementById('fault').remove();", &Value::Null);
    }
}
