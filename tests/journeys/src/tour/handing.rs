//! The pages that hand plans and histories over, on one phone: the other one is two pictures of its screen.

use std::path::PathBuf;

use super::Look;
use crate::binaries::root;
use crate::phone::Phone;

/// The offer of an invented phone named Blue Kettle.
const OFFER: &str = "offer.png";
/// The offer of another invented phone with the same name.
const OFFER_OF_A_NEW_PHONE: &str = "offer_new_phone.png";

/// A line of a plan of each kind: a text, a day, a weight, a number, one of several, some of several, yes or no.
const PLAN_FIELDS: [&str; 7] = [
    "notes",
    "review_on",
    "ceiling_floor",
    "grace_weeks",
    "next_morning",
    "preferred",
    "locked",
];

/// Through all of them; ends at home.
pub(super) fn handing_over(phone: &mut Phone, look: Look<'_>) {
    pairing(phone, look);
    people(phone, look);
    treated(phone, look);
    making_a_plan(phone, look);
    giving(phone, look);
    taking_in(phone, look);
    phone.open("what-left");
    look(phone, "what-left-much");
    phone.open_all();
    phone.touch("#clear");
    phone.wait_until("an empty list", |phone| !phone.has(".gone"));
    look(phone, "what-left-none");
    phone.open("home");
}

fn pairing(phone: &mut Phone, look: Look<'_>) {
    phone.open("hand");
    look(phone, "hand");
    phone.open("hand/people");
    look(phone, "hand-people-nobody");
    phone.open("hand/pair");
    phone.expect_screen("hand/card");
    look(phone, "hand-card");
    phone.type_in("#alias", "Green Ladder");
    phone.tap("#keep");
    phone.expect_screen("hand/pair");
    look(phone, "hand-pair");
    phone.tap("#scan");
    phone.expect_no_camera();
    look(phone, "hand-scan-pair");
    phone.take_photo(&picture(OFFER), "hand/pair");
    look(phone, "hand-pair-scanned");
    phone.tap("#compare");
    look(phone, "hand-compare");
    phone.tap_in_vain("#agree");
    look(phone, "hand-compare-problem");
    phone.touch("input[value=same]");
    phone.touch("input[value=other]");
    phone.tap("#agree");
    look(phone, "hand-paired");

    phone.open("hand/pair");
    phone.tap("#scan");
    phone.take_photo(&picture(OFFER_OF_A_NEW_PHONE), "hand/pair");
    phone.tap("#compare");
    phone.expect("#go-on");
    look(phone, "hand-warning");
    phone.tap("#stop");
    phone.expect_screen("hand");
}

fn people(phone: &mut Phone, look: Look<'_>) {
    phone.open("hand/people");
    look(phone, "hand-people");
    phone.tap("[data-pairing]");
    phone.open_all();
    look(phone, "hand-person");
}

fn treated(phone: &mut Phone, look: Look<'_>) {
    phone.open("patients");
    look(phone, "patients-none");
    phone.tap("#add");
    look(phone, "patients-new");
    phone.type_in("#alias", "Quiet Lantern");
    phone.tap("#keep");
    phone.tap("#note");
    look(phone, "patient-note");
    phone.type_in("#text", "Likes mornings.");
    phone.tap("#keep-note");
    phone.open_all();
    look(phone, "patient");
    phone.tap("#make");
    look(phone, "patient-plan");
    phone.open("patients");
    phone.type_in("#find", "lan");
    phone.expect("[data-patient]");
    look(phone, "patients");
}

fn making_a_plan(phone: &mut Phone, look: Look<'_>) {
    phone.open("plan");
    look(phone, "plan-none");
    phone.open("plans");
    look(phone, "plans-none");
    phone.open("plans/new");
    look(phone, "plans-new");
    phone.tap("[data-answer]");
    look(phone, "plans-new-whom");
    phone.type_in("#for", "Green Ladder");
    phone.tap("#begin");
    look(phone, "plans-edit");
    phone.touch("[data-day=bad]");
    phone.expect("[data-day=bad][aria-pressed=true]");
    look(phone, "plans-edit-bad-day");
    let page = phone.screen();
    own_parts(phone, look);
    for field in PLAN_FIELDS {
        phone.tap(&format!("[data-change='{field}']"));
        look(phone, &format!("plans-field-{field}"));
        phone.open(&page);
    }
    phone.tap("#paper");
    look(phone, "plan-on-paper-whom");
    phone.tap("[data-answer]");
    phone.touch("#make");
    phone.expect("#save");
    look(phone, "plan-on-paper");
    phone.open("plans");
    look(phone, "plans");
}

/// What a pattern leaves open: pain numbers of the person's own, a second thing to practise, whom to call, a reason that
/// stays here. The number is invented.
fn own_parts(phone: &mut Phone, look: Look<'_>) {
    phone.tap("[data-change=bands_for]");
    phone.touch("#tick-0");
    look(phone, "plans-field-bands");
    phone.tap("#continue");
    phone.tap("[data-change=severe_back]");
    look(phone, "plans-field-band");
    phone.tap("#back");
    phone.tap("[data-change=practice_way_2]");
    look(phone, "plans-field-practice");
    phone.tap("[data-answer=hinge]");
    for (field, words) in [
        ("call", "555 0100, mornings"),
        ("why_private", "Works at night."),
    ] {
        phone.tap(&format!("[data-change={field}]"));
        phone.type_in("#plain", words);
        look(phone, &format!("plans-field-{field}"));
        phone.tap("#continue");
    }
}

fn giving(phone: &mut Phone, look: Look<'_>) {
    phone.open("hand/give");
    look(phone, "hand-give");
    phone.tap("[data-answer=history]");
    look(phone, "hand-give-when");
    phone.tap("[data-answer='90']");
    look(phone, "hand-give-notes");
    phone.tap("[data-answer=no]");
    look(phone, "hand-give-whom");
    phone.tap("[data-answer]");
    look(phone, "hand-give-leaves");
    phone.tap("#show");
    phone.open_all();
    look(phone, "hand-show");
}

/// The plan just made comes back to this phone, as from somebody who is not paired.
fn taking_in(phone: &mut Phone, look: Look<'_>) {
    phone.open("hand/give");
    phone.tap("[data-answer]:not([data-answer=history]):not([data-answer=new])");
    phone.tap("[data-answer=nobody]");
    let shown = phone.show_it();
    phone.touch("#code");
    phone.expect(".big-words");
    look(phone, "hand-show-words");
    let words = phone.big_words().join(" ");
    phone.open_all();
    phone.tap("#larger");
    look(phone, "hand-show-many");

    phone.open("hand/scan/parcel");
    phone.expect_no_camera();
    look(phone, "hand-scan");
    phone.refused_photo_of(&picture(OFFER));
    look(phone, "hand-scan-problem");
    phone.take_photos(&shown);
    phone.expect_screen("hand/code");
    look(phone, "hand-code");
    phone.type_in("#code", "not these eight words at all my friend");
    phone.tap_in_vain("#open");
    look(phone, "hand-code-problem");
    phone.clear("#code");
    phone.type_in("#code", &words);
    phone.tap("#open");
    look(phone, "hand-question");
    phone.tap("#yes");
    phone.expect_screen("plan");
    phone.open_all();
    look(phone, "plan");
    following(phone, look);
}

/// The pages of a plan that is followed: practice, a flare-up, what was noted.
fn following(phone: &mut Phone, look: Look<'_>) {
    phone.tap("[data-item='0']");
    look(phone, "plan-practice");
    phone.tap("[data-answer='6']");
    phone.expect("#step-take");
    look(phone, "plan-offer");
    phone.touch("#flare");
    phone.expect("#signs");
    look(phone, "plan-in-a-flare");
    phone.tap("#log");
    look(phone, "plan-log");
    phone.open("home");
    look(phone, "home-with-plan");
    phone.open("plan");
}

fn picture(name: &str) -> PathBuf {
    root().join("tests/journeys/pictures").join(name)
}
