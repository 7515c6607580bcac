//! Somebody tells a warning sign, asks about a child, or answers what is hardly possible.

use journeys::in_both_engines;
use journeys::person::{AN_EVERYDAY_BOX, Answer, Story};
use journeys::phone::Phone;

in_both_engines!(
    an_emergency_sign_ends_the_walk_and_stays_until_it_is_cleared,
    a_child_is_no_load_and_somebody_else_is_named,
    an_unlikely_pair_is_asked_about_and_can_be_changed,
    who_leaves_it_says_what_they_did_instead,
);

const PASSPHRASE: &str = "three tins of beans";

fn an_emergency_sign_ends_the_walk_and_stays_until_it_is_cleared(phone: &mut Phone) {
    const NUMB: Story<'static> = &[("signs_full", Answer::Tick(&["saddle_numb"]))];
    phone.first_start(PASSPHRASE);
    phone.tap("#check-lift");
    phone.walk_to("advice", &[NUMB, AN_EVERYDAY_BOX]);
    phone.picture("emergency");
    assert!(phone.has("emergency-card"));
    assert!(
        !phone.has("advice-card, [data-way], #did"),
        "an emergency has no way to lift"
    );

    phone.tap("#read");
    phone.expect_screen("home");
    phone.expect("#sign-clear");
    phone.kill();
    phone.start();
    phone.unlock(PASSPHRASE);
    phone.expect("#sign-clear");
    phone.tap("#sign-clear");
    phone.picture("clear");
    assert!(
        !phone.has("[data-clear='saddle_numb me']"),
        "nobody clears an emergency alone"
    );
    phone.tap("[data-clear='saddle_numb clinician']");
    phone.expect_screen("home");
    assert!(!phone.has("#sign-clear"));
}

fn a_child_is_no_load_and_somebody_else_is_named(phone: &mut Phone) {
    const A_CHILD: Story<'static> = &[("what", Answer::Pick("living"))];
    phone.first_start(PASSPHRASE);
    phone.tap("#check-lift");
    phone.walk_to("refuse", &[A_CHILD, AN_EVERYDAY_BOX]);
    phone.picture("refuse");
    phone.expect("who-list li");
    assert!(!phone.has("[data-way], #did"));
    phone.tap("#close");
    phone.expect_screen("home");
}

fn an_unlikely_pair_is_asked_about_and_can_be_changed(phone: &mut Phone) {
    const CALM_FLARE: Story<'static> = &[
        ("back", Answer::Pain(0)),
        ("back_state", Answer::Pick("flare")),
    ];
    phone.first_start(PASSPHRASE);
    phone.tap("#check-lift");
    phone.walk_to("ask/flare_pain_0", &[CALM_FLARE, AN_EVERYDAY_BOX]);
    phone.picture("asked");
    phone.tap("#change");
    phone.expect_screen("walk/back");
    phone.give(Answer::Pain(6));
    let asked = phone.walk_to("check", &[AN_EVERYDAY_BOX]);
    assert!(
        !asked.contains(&"back_state".to_owned()),
        "only what is missing is asked: {asked:?}"
    );
}

fn who_leaves_it_says_what_they_did_instead(phone: &mut Phone) {
    const TOO_MUCH: Story<'static> = &[
        ("mass", Answer::Pick("heavier")),
        ("reach", Answer::Pick("far")),
        ("back", Answer::Pain(8)),
    ];
    phone.first_start(PASSPHRASE);
    phone.tap("#check-lift");
    phone.walk_to(
        "advice",
        &[
            TOO_MUCH,
            &[("signs_flare", Answer::NoneOfThese)],
            AN_EVERYDAY_BOX,
        ],
    );
    phone.picture("advice");
    phone.expect("[data-id]");
    assert_eq!(phone.tap("#left"), "left");
    phone.picture("left");
    phone.tap("[data-answer]");
    phone.expect_screen("home");
    phone.expect("[data-entry]");
    phone.tap("#undo");
    phone.expect_screen("home");
    assert!(!phone.has("[data-entry]"), "what was undone is gone");
}
