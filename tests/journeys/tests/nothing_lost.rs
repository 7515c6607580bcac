//! The phone ends the app in the middle, and nothing that was answered is lost.

use journeys::in_both_engines;
use journeys::person::{AN_EVERYDAY_BOX, Answer, Story};
use journeys::phone::Phone;

in_both_engines!(
    a_killed_app_finds_its_draft_again,
    back_and_change_keep_the_other_answers,
    an_advice_is_still_there_after_a_kill,
);

const PASSPHRASE: &str = "three tins of beans";

fn a_killed_app_finds_its_draft_again(phone: &mut Phone) {
    phone.first_start(PASSPHRASE);
    phone.tap("#check-lift");
    phone.walk_to("back_state", &[AN_EVERYDAY_BOX]);
    phone.kill();

    phone.start();
    phone.unlock(PASSPHRASE);
    phone.expect_screen("home");
    phone.picture("home-with-draft");
    phone.tap("#go-on");
    phone.expect_screen("walk/back_state");
    let asked = phone.walk_to("check", &[AN_EVERYDAY_BOX]);
    assert_eq!(
        asked.first().map(String::as_str),
        Some("back_state"),
        "{asked:?}"
    );
    for question in ["what", "mass", "start", "back"] {
        phone.expect(&format!("[data-change='{question}']"));
    }
}

fn back_and_change_keep_the_other_answers(phone: &mut Phone) {
    phone.first_start(PASSPHRASE);
    phone.tap("#check-lift");
    phone.walk_to("reach", &[AN_EVERYDAY_BOX]);
    phone.tap("#back");
    phone.expect_screen("walk/start");
    phone.expect("[data-answer='floor'][data-chosen]");
    phone.give(Answer::Pick("knee"));
    phone.expect_screen("walk/reach");

    const HEAVIER: Story<'static> = &[("mass", Answer::Pick("water_bucket"))];
    phone.walk_to("check", &[AN_EVERYDAY_BOX]);
    phone.picture("check");
    let before = phone.words();
    phone.tap("[data-change='mass']");
    phone.expect_screen("walk/mass");
    phone.expect("[data-answer='six_pack'][data-chosen]");
    let asked = phone.walk_to("check", &[HEAVIER]);
    assert_eq!(asked, ["mass"], "only the changed question is asked again");
    assert_ne!(phone.words(), before);
    phone.expect("[data-change='start']");
}

fn an_advice_is_still_there_after_a_kill(phone: &mut Phone) {
    phone.first_start(PASSPHRASE);
    phone.tap("#check-lift");
    phone.walk_to("advice", &[AN_EVERYDAY_BOX]);
    let headline = phone.run(
        "return document.querySelector('#main h1').innerText;",
        &serde_json::Value::Null,
    );
    phone.kill();
    phone.start();
    phone.unlock(PASSPHRASE);
    phone.tap("#go-on");
    phone.expect_screen("advice");
    let again = phone.run(
        "return document.querySelector('#main h1').innerText;",
        &serde_json::Value::Null,
    );
    assert_eq!(headline, again);
}
