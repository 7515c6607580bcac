//! The whole app in Spanish: no English left, commas in numbers, and it still fits.

use std::collections::BTreeMap;

use journeys::engines::Kind;
use journeys::in_both_engines;
use journeys::person::{AN_EVERYDAY_BOX, Answer, Story};
use journeys::phone::Phone;
use journeys::tour::every_screen;
use serde_json::{Value, json};

in_both_engines!(
    every_screen_speaks_spanish_and_fits,
    numbers_are_typed_and_shown_with_a_comma,
    the_language_is_kept_and_can_be_changed_while_locked,
);

const PASSPHRASE: &str = "tres latas de frijoles";

/// Every text node and label of a screen, as a person sees or hears it.
const TEXTS: &str = r"
const texts = new Set();
const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
for (let text = walker.nextNode(); text; text = walker.nextNode()) {
  if (!text.parentElement.closest('script, [lang]:not(html)')) texts.add(text.data.trim());
}
for (const node of document.querySelectorAll('[aria-label]')) texts.add(node.getAttribute('aria-label'));
return [...texts].filter((text) => /[a-z]{3}/i.test(text));";

fn every_screen_speaks_spanish_and_fits(phone: &mut Phone) {
    // The texts are the same in both engines: one of them is enough to compare.
    let english = match phone.kind() {
        Kind::Browser => every_text_in_english(),
        Kind::Window => BTreeMap::new(),
    };
    phone.tap("[data-language=es]");
    phone.set_width(320);
    every_screen(phone, &mut |phone, name| {
        phone.picture(name);
        assert_eq!(
            phone.run("return document.documentElement.lang;", &Value::Null),
            json!("es")
        );
        phone.expect_nothing_cut(name);
        let texts = phone.run(TEXTS, &Value::Null);
        let texts = texts.as_array().cloned().unwrap_or_default();
        assert!(!texts.is_empty(), "{name} has no words");
        let english = english.get(name).cloned().unwrap_or_default();
        let same: Vec<&Value> = texts.iter().filter(|text| english.contains(text)).collect();
        let is_file = |text: &Value| text.as_str().is_some_and(|text| text.starts_with(FILE));
        let named =
            |text: &&&Value| !is_file(text) && !ALIKE.iter().any(|alike| ***text == json!(alike));
        let left: Vec<_> = same.iter().filter(named).collect();
        assert!(left.is_empty(), "on {name} this is still English: {left:?}");
    });
}

fn every_text_in_english() -> BTreeMap<String, Vec<Value>> {
    let mut english = BTreeMap::new();
    let mut other = Phone::new(Kind::Browser, "english");
    every_screen(&mut other, &mut |other, name| {
        let texts = other.run(TEXTS, &Value::Null);
        let texts = texts.as_array().cloned().unwrap_or_default();
        english.insert(name.to_owned(), texts);
    });
    english
}

/// What is the same in both languages: the app's name, a name that somebody gave, and so on.
const ALIKE: [&str; 10] = [
    "Heftwell",
    "Laundry basket",
    "No",
    "Plan",
    "Blue Kettle",
    "Green Ladder",
    "Quiet Lantern",
    "Likes mornings.",
    "555 0100, mornings",
    "Works at night.",
];

/// How the names of files begin.
const FILE: &str = "heftwell-";

fn numbers_are_typed_and_shown_with_a_comma(phone: &mut Phone) {
    const TYPED: Story<'static> = &[
        ("mass", Answer::Pick("type_it")),
        ("mass_number", Answer::Number("6,5")),
    ];
    phone.tap("[data-language=es]");
    phone.first_start(PASSPHRASE);
    phone.tap("#check-lift");
    phone.walk_to("check", &[TYPED, AN_EVERYDAY_BOX]);
    phone.picture("check");
    let words = phone.words();
    assert!(words.contains("6,5 kg"), "{words}");
    assert!(!words.contains("6.5"), "{words}");
}

fn the_language_is_kept_and_can_be_changed_while_locked(phone: &mut Phone) {
    let language = |phone: &Phone| phone.run("return document.documentElement.lang;", &Value::Null);
    phone.tap("[data-language=es]");
    phone.first_start(PASSPHRASE);
    phone.close();
    phone.start();
    phone.expect_screen("unlock");
    assert_eq!(language(phone), json!("es"));
    phone.tap("[data-language=en]");
    assert_eq!(language(phone), json!("en"));
    phone.unlock(PASSPHRASE);
    phone.expect_screen("home");
    assert_eq!(language(phone), json!("en"));
}
