//! A tour of every screen, so that a check can be made on each of them.

mod handing;

use crate::person::{A_STAND_AID, AN_EVERYDAY_BOX, Answer, MUCH_TO_TELL, Story};
use crate::phone::Phone;

/// What to do on each screen; given its name.
pub type Look<'a> = &'a mut dyn FnMut(&mut Phone, &str);

const PASSPHRASE: &str = "three tins of beans";

/// A back that flares up and a leg that has gone numb. Invented.
const AN_EMERGENCY: Story<'static> = &[
    ("back", Answer::Pain(9)),
    ("back_state", Answer::Pick("flare")),
    ("signs_flare", Answer::Tick(&["saddle_numb"])),
];

/// Somebody asks about lifting a child. Invented.
const A_CHILD: Story<'static> = &[("what", Answer::Pick("living"))];

/// A leg of a light person, held for a moment. Invented.
const A_LIGHT_LEG: Story<'static> = &[
    ("new", Answer::Pick("nothing")),
    ("same", Answer::Pick("as_noted")),
    ("limb", Answer::Pick("leg")),
    ("mass", Answer::Pick("up_55")),
    ("hold", Answer::Pick("up_1_min")),
    ("here", Answer::Tick(&["adjustable_bed"])),
];

/// Hips and shoulders hurt as well. Invented.
const MORE_HURTS: Story<'static> = &[(
    "other",
    Answer::Tick(&["hip_left", "hip_right", "shoulders"]),
)];

/// Takes a new phone through every screen, and `look`s at each.
pub fn every_screen(phone: &mut Phone, look: Look<'_>) {
    first_pages(phone, look);
    first_lift(phone, look);
    kept_things(phone, look);
    moving_people(phone, look);
    much_to_tell(phone, look);
    refusal(phone, look);
    emergency(phone, look);
    handing::handing_over(phone, look);
    locked_pages(phone, look);
}

/// The first start of a new phone, as far as home.
pub fn first_pages(phone: &mut Phone, look: Look<'_>) {
    look(phone, "start");
    phone.tap("#begin");
    look(phone, "start-use");
    phone.tap("[data-answer=lift]");
    look(phone, "start-units");
    phone.tap("[data-answer=kg]");
    look(phone, "start-passphrase");
    phone.type_in("#passphrase", PASSPHRASE);
    phone.type_in("#again", "three tins of peas?");
    phone.tap_in_vain("#keep");
    look(phone, "start-passphrase-problem");
    phone.clear("#again");
    phone.type_in("#again", PASSPHRASE);
    phone.tap("#keep");
    look(phone, "home-new");
}

fn first_lift(phone: &mut Phone, look: Look<'_>) {
    phone.tap("#check-lift");
    phone.walk_showing("advice", &[AN_EVERYDAY_BOX], look);
    phone.open_all();
    look(phone, "advice");
    phone.tap("#compare");
    look(phone, "compare");
    phone.tap("#back");
    phone.tap("#save");
    look(phone, "save");
    phone.type_in("#name", "Laundry basket");
    phone.tap("#keep");
    phone.tap("#did");
    look(phone, "after");
    phone.tap("[data-answer='2']");
    look(phone, "home-kept");
}

fn kept_things(phone: &mut Phone, look: Look<'_>) {
    phone.tap("[data-saved]");
    phone.open("home");
    look(phone, "home-full");
    phone.tap("#check-lift");
    look(phone, "fresh");
    phone.open("morning/1");
    look(phone, "morning");
    phone.tap("[data-answer='1']");
    look(phone, "morning-usual");
    phone.open("history");
    phone.open_all();
    look(phone, "history");
    phone.tap("#look-back");
    phone.open_all();
    look(phone, "look-back");
    phone.tap("#take-out");
    look(phone, "take-out");
    phone.tap("#out-note");
    phone.touch("#make");
    look(phone, "take-out-note");
    phone.open("what-left");
    phone.open_all();
    look(phone, "what-left");
    phone.open("history");
    phone.tap("[data-entry]");
    phone.open_all();
    look(phone, "entry");
    phone.open("settings");
    look(phone, "settings");
    phone.tap("[data-change='units']");
    look(phone, "settings-units");
    phone.open("keys/passphrase");
    look(phone, "keys-passphrase");
    phone.open("keys/erase");
    look(phone, "keys-erase");
    phone.open("history/999");
    look(phone, "error");
}

/// The walk before a move, on a phone whose owner has answered about themselves.
fn moving_people(phone: &mut Phone, look: Look<'_>) {
    phone.open("people");
    look(phone, "people-none");
    phone.write_down_somebody("boat", look);
    look(phone, "person");
    phone.tap("[data-move=bed_to_chair]");
    phone.move_to_answer(A_STAND_AID, look);
    phone.open_all();
    look(phone, "move-answer");
    phone.tap("#wrong");
    look(phone, "move-stop");
    phone.tap("#log");
    look(phone, "moved-near");
    phone.touch("input[value=legs_give]");
    phone.tap("#continue");
    look(phone, "people");
    phone.tap("[data-person]");
    phone.tap("[data-move=bed_to_chair]");
    phone.move_to_answer(A_STAND_AID, &mut |_, _| ());
    phone.tap("#done");
    look(phone, "moved");
    phone.tap("#skip");
    phone.tap("[data-person]");
    phone.tap("[data-move=bed_to_chair]");
    phone.move_to_answer(A_STAND_AID, &mut |_, _| ());
    phone.tap("#differs");
    look(phone, "report");
    phone.tap("#back");
    phone.open_all();
    look(phone, "move-refused");
    phone.tap("#tell");
    phone.tap("#said");
    low_work(phone, look);
    on_the_floor(phone, look);
    phone.open("care-code/1");
    look(phone, "person-code");
    phone.open("trained");
    look(phone, "trained");
    phone.open("shift");
    look(phone, "shift");
    phone.tap("#hand-over");
    phone.open_all();
    look(phone, "shift-handed-over");
}

fn low_work(phone: &mut Phone, look: Look<'_>) {
    phone.tap("[data-person]");
    phone.tap("[data-move=hold_limb]");
    phone.move_to_answer(A_LIGHT_LEG, look);
    phone.open_all();
    look(phone, "move-answer-leg");
    phone.tap("#harder");
    look(phone, "move-harder");
    phone.open("people");
}

fn on_the_floor(phone: &mut Phone, look: Look<'_>) {
    phone.tap("[data-person]");
    phone.tap("[data-move=floor_to_chair]");
    look(phone, "move-floor");
    phone.tap("[data-answer=hurt]");
    look(phone, "move-emergency");
    phone.open("people");
}

fn much_to_tell(phone: &mut Phone, look: Look<'_>) {
    phone.open("settings");
    phone.tap("#about");
    phone.walk_showing("home", &[MUCH_TO_TELL], look);
    assert_eq!(phone.tap("#check-lift"), "fresh/none");
    phone.tap("#fresh");
    phone.walk_showing("mass_number", &[MUCH_TO_TELL], look);
    phone.type_in("#number", "a lot");
    phone.tap_in_vain("#continue");
    look(phone, "walk-mass_number-problem");
    phone.walk_showing("check", &[MUCH_TO_TELL], look);
    phone.tap("[data-change='other']");
    phone.walk_showing("advice", &[MORE_HURTS, MUCH_TO_TELL], look);
    look(phone, "advice-careful");
    if phone.tap("#left") == "left" {
        look(phone, "left");
        phone.tap("#left-only");
    }
    phone.expect_screen("home");
}

fn refusal(phone: &mut Phone, look: Look<'_>) {
    phone.tap("#check-lift");
    phone.walk_to("refuse", &[A_CHILD, AN_EVERYDAY_BOX]);
    look(phone, "refuse");
    phone.tap("#close");
}

fn emergency(phone: &mut Phone, look: Look<'_>) {
    phone.tap("#check-lift");
    phone.walk_to("check", &[AN_EVERYDAY_BOX, MUCH_TO_TELL]);
    phone.tap("[data-change='back']");
    phone.give(Answer::Pain(9));
    phone.walk_showing(
        "advice",
        &[AN_EMERGENCY, AN_EVERYDAY_BOX, MUCH_TO_TELL],
        look,
    );
    look(phone, "emergency");
    phone.tap("#read");
    phone.expect_screen("home");
    look(phone, "home-with-sign");
    phone.open("sign-clear");
    look(phone, "sign-clear");
    phone.open("home");
}

fn locked_pages(phone: &mut Phone, look: Look<'_>) {
    phone.tap("#lock");
    look(phone, "unlock");
    phone.type_in("#passphrase", "something else");
    phone.tap_in_vain("#open");
    look(phone, "unlock-problem");
    phone.tap("#signs");
    look(phone, "signs");
}
