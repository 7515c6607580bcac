//! Two phones: they pair, a plan goes over and is followed, a history comes back; and what is refused.

use journeys::engines::Kind;
use journeys::handing::pair;
use journeys::in_both_engines;
use journeys::person::{AN_EVERYDAY_BOX, Answer, Story};
use journeys::phone::Phone;

in_both_engines!(
    a_plan_goes_over_and_a_history_comes_back,
    a_care_plan_goes_from_the_office_to_a_worker,
    who_is_not_paired_needs_the_eight_words,
    what_is_meant_for_somebody_else_is_refused,
    without_a_camera_a_photo_or_a_file_will_do,
);

const PASSPHRASE: &str = "three tins of beans";

fn with_card(phone: &mut Phone, alias: &str) {
    phone.first_start(PASSPHRASE);
    phone.name_card(alias);
}

/// Gives a phone its card, and another one beside it: Blue Kettle and Green Ladder.
fn second_phone(first: &mut Phone, name: &'static str) -> Phone {
    let mut second = Phone::new(first.kind(), name);
    with_card(first, "Blue Kettle");
    with_card(&mut second, "Green Ladder");
    second
}

/// Makes a plan from a pattern and stands at its page.
fn make_plan(phone: &mut Phone, for_whom: &str) {
    phone.open("plans/new");
    phone.tap("[data-answer]");
    phone.type_in("#for", for_whom);
    phone.tap("#begin");
}

fn a_plan_goes_over_and_a_history_comes_back(clinician: &mut Phone) {
    let mut patient = second_phone(clinician, "the patient's phone");
    patient.open("home");
    patient.tap("#check-lift");
    patient.walk_to("advice", &[AN_EVERYDAY_BOX]);
    patient.tap("#did");
    patient.tap("#skip");
    pair(clinician, &mut patient);

    make_plan(clinician, "Green Ladder");
    clinician.tap("#give");
    clinician.expect_screen("hand/give/whom");
    clinician.tap("[data-answer]");
    clinician.picture("what-leaves");
    let plan = clinician.show_it();
    clinician.picture("plan-shown");
    clinician.tap("#done");

    patient.open("hand/scan/parcel");
    assert_eq!(patient.take_photos(&plan), "hand/question");
    patient.picture("question");
    assert!(patient.words().contains("Blue Kettle"));
    patient.tap("#yes");
    patient.expect_screen("plan");
    patient.picture("plan-followed");
    too_often_for_the_plan(&mut patient);
    patient.open("plan");
    practise(&mut patient);

    // The same plan once more is known already.
    patient.open("hand/scan/parcel");
    let said = patient.refused_photo(&plan);
    assert!(!said.is_empty());
    patient.picture("known-already");

    patient.open("hand/give");
    patient.tap("[data-answer=history]");
    patient.tap("[data-answer='90']");
    patient.tap("[data-answer=no]");
    patient.tap("[data-answer]");
    let history = patient.show_it();
    patient.tap("#done");

    clinician.open("hand/scan/parcel");
    assert_eq!(clinician.take_photos(&history), "hand/question");
    clinician.picture("history-question");
    assert!(clinician.words().contains("Green Ladder"));
    clinician.tap("#yes");
    clinician.picture("history-kept");
}

/// Three to ten times, where the plan allows five: asked in the plan's own number, and judged by it.
fn too_often_for_the_plan(patient: &mut Phone) {
    const A_FEW_TIMES: Story<'static> = &[("often", Answer::Pick("few"))];
    patient.open("home");
    patient.tap("#check-lift");
    patient.walk_to("often_in_plan", &[A_FEW_TIMES, AN_EVERYDAY_BOX]);
    patient.picture("more-than-the-plan-says");
    assert!(patient.words().contains("up to 5"));
    patient.give(Answer::Pick("more"));
    patient.walk_to("advice", &[AN_EVERYDAY_BOX]);
    patient.picture("too-often");
    assert!(patient.words().contains("5 in one go at most"));
    patient.open("walk/often_in_plan");
    patient.give(Answer::Pick("within"));
    patient.walk_to("advice", &[AN_EVERYDAY_BOX]);
    assert!(!patient.words().contains("5 in one go at most"));
    patient.tap("#did");
    patient.tap("#skip");
}

/// Two taps note practice; a wrong one is taken back; a flare-up is told in one; home says all of it.
fn practise(patient: &mut Phone) {
    patient.tap("[data-item='0']");
    patient.picture("practice");
    patient.tap("[data-answer='2']");
    patient.expect_screen("plan");
    patient.picture("practice-noted");
    patient.touch("#undo");
    patient.wait_until("the entry taken back", |phone| !phone.has("#undo"));
    patient.tap("[data-item='0']");
    patient.tap("[data-answer='6']");
    patient.expect("#step-take");
    patient.picture("step-offered");
    patient.touch("#step-leave");
    patient.wait_until("no offer any more", |phone| !phone.has("#step-take"));
    patient.touch("#flare");
    patient.expect("#signs");
    patient.picture("flare-told");
    patient.tap("#log");
    patient.picture("practice-so-far");
    patient.open("home");
    patient.expect("#plan");
    patient.picture("home-with-a-plan");
    assert!(patient.words().contains("A flare-up today"));
}

fn a_care_plan_goes_from_the_office_to_a_worker(office: &mut Phone) {
    let mut worker = second_phone(office, "the worker's phone");
    pair(office, &mut worker);
    office.open("people");
    office.write_down_somebody("boat", &mut |_, _| ());
    office.picture("care-plan-typed");
    office.tap("#give");
    office.expect_screen("hand/give/whom");
    office.tap("[data-answer]");
    office.picture("care-plan-leaves");
    let plan = office.show_it();
    office.picture("care-plan-shown");
    office.tap("#done");

    worker.open("hand/scan/parcel");
    assert_eq!(worker.take_photos(&plan), "hand/question");
    worker.picture("care-plan-question");
    assert!(worker.words().contains("Blue Kettle"));
    worker.tap("#yes");
    worker.picture("care-plan-taken");
    worker.open("people");
    worker.tap("[data-person]");
    worker.picture("care-plan-person");
    assert!(worker.words().contains("Stand aid"));
    worker.tap("[data-move=bed_to_chair]");
    worker.picture("care-plan-move");
}

fn who_is_not_paired_needs_the_eight_words(clinician: &mut Phone) {
    let mut patient = second_phone(clinician, "the patient's phone");
    make_plan(clinician, "Green Ladder");
    clinician.tap("#give");
    clinician.tap("[data-answer=nobody]");
    let plan = clinician.show_it();
    assert!(!clinician.has(".big-words"), "shown only on a tap");
    clinician.touch("#code");
    clinician.expect(".big-words");
    let words = clinician.big_words();
    assert_eq!(words.len(), 8);
    clinician.picture("eight-words");

    patient.open("hand/scan/parcel");
    assert_eq!(patient.take_photos(&plan), "hand/code");
    patient.type_in("#code", "eight words that are not the right ones");
    patient.tap_in_vain("#open");
    patient.picture("wrong-words");
    patient.clear("#code");
    patient.type_in("#code", &words.join(" ").to_uppercase());
    patient.tap("#open");
    patient.expect_screen("hand/question");
    patient.expect(".note--stop");
    patient.picture("not-paired");
    patient.tap("#no");
    patient.open("plan");
    patient.expect("#take");
}

fn what_is_meant_for_somebody_else_is_refused(clinician: &mut Phone) {
    let mut patient = second_phone(clinician, "the patient's phone");
    pair(clinician, &mut patient);
    make_plan(clinician, "Green Ladder");
    clinician.tap("#give");
    clinician.tap("[data-answer]");
    let plan = clinician.show_it();

    let mut stranger = Phone::new(clinician.kind(), "a stranger's phone");
    with_card(&mut stranger, "Quiet Lantern");
    stranger.open("hand/scan/parcel");
    let said = stranger.refused_photo(&plan);
    stranger.picture("refused");
    assert!(!said.is_empty());
    stranger.open("hand/pair");
    stranger.tap("#scan");
    let other = stranger.refused_photo(&plan);
    assert_ne!(said, other, "a plan is no offer to pair");
}

fn without_a_camera_a_photo_or_a_file_will_do(phone: &mut Phone) {
    with_card(phone, "Blue Kettle");
    make_plan(phone, "Green Ladder");
    phone.tap("#give");
    phone.tap("[data-answer=nobody]");
    phone.show_it();
    phone.open_all();
    if phone.kind() == Kind::Window {
        phone.touch("#save-file");
        phone.wait_until("where the file is", |phone| phone.words().contains(".heft"));
        phone.picture("saved");
        let files = phone.saved_files();
        let [file] = files.as_slice() else {
            phone.fail(&format!("one saved file, and not {files:?}"));
        };
        phone.open("hand/scan/parcel");
        phone.expect_no_camera();
        phone.picture("no-camera");
        phone.choose_file("#file", file);
        phone.expect_screen("hand/code");
    } else {
        phone.open("hand/scan/parcel");
        phone.expect_no_camera();
        phone.picture("no-camera");
    }
}
