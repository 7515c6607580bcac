//! What a plan says of how often binds the advice: lifts in one go, goes in a day.

use super::screens::{pair, plan, plan_for, shown, taken};
use crate::phone::TestPhone;
use crate::script::Script;
use serde_json::{Value, json};

/// A phone that follows a plan of five lifts in one go and four goes a day.
fn with_a_plan() -> TestPhone {
    let clinician = TestPhone::of("surgery", "treat", "Blue Kettle");
    let patient = TestPhone::of("orchard", "lift", "Green Ladder");
    let pairing = pair(&clinician, &patient);
    let id = plan(&clinician, "sore_back", "Green Ladder");
    taken(&patient, &shown(&clinician, plan_for(&id, &pairing)));
    patient
}

fn card(phone: &TestPhone, script: &Script) -> Value {
    phone.walk(script, None).page["card"].take()
}

#[test]
fn more_than_the_plan_allows_in_one_go_is_not_for_one_go() {
    let patient = with_a_plan();
    let once = card(&patient, &Script::ordinary());
    assert_eq!(once["outcome"], "lift");
    patient.ask(json!({"do": "walk_drop"}));

    let few = |in_plan: &str| {
        Script::ordinary()
            .but("often", json!({"choice": "few"}))
            .but("often_in_plan", json!({"choice": in_plan}))
    };
    let more = card(&patient, &few("more"));
    assert_eq!(more["outcome"], "do_not_lift", "{more}");
    assert_eq!(more["why"], "Because your plan says 5 in one go at most.");
    let changes = more["changes"].to_string().replace('\u{a0}', " ");
    assert!(changes.contains("Lift 5 times at most."), "{changes}");
    patient.ask(json!({"do": "walk_drop"}));

    let within = card(&patient, &few("within"));
    assert_eq!(within["outcome"], "lift", "{within}");
}

#[test]
fn it_is_asked_with_the_plans_own_number_and_only_where_it_is_open() {
    let patient = with_a_plan();
    let met = |script: &Script| {
        let walked = patient.walk(script, None);
        patient.ask(json!({"do": "walk_drop"}));
        walked.met.iter().any(|id| id == "often_in_plan")
    };
    let few = Script::ordinary()
        .but("often", json!({"choice": "few"}))
        .but("often_in_plan", json!({"choice": "within"}));
    assert!(met(&few));
    assert!(!met(
        &Script::ordinary().but("often", json!({"choice": "twice"}))
    ));

    patient.walk(&few, None);
    let page = patient.ask(json!({"do": "walk_page", "question": "often_in_plan"}));
    assert_eq!(
        page["question"]["title"],
        "Your plan says up to 5 in one go. Will it be more?"
    );
    patient.ask(json!({"do": "walk_drop"}));

    patient.ask(json!({"do": "plan_stop"}));
    assert!(!met(&few), "no plan, no question");
}

#[test]
fn once_the_goes_of_a_day_are_noted_the_rest_is_for_tomorrow() {
    let patient = with_a_plan();
    for done in 0..4 {
        let card = card(&patient, &Script::ordinary());
        assert_eq!(card["outcome"], "lift", "after {done}: {card}");
        let noted = card["plan_text"].as_str().unwrap_or_default();
        assert_eq!(
            noted.contains(&format!("{done} noted today.")),
            done > 0,
            "{noted}"
        );
        patient.ask(json!({"do": "lift_keep", "done": true, "way": "squat"}));
        patient.later(10);
    }
    let fifth = card(&patient, &Script::ordinary());
    assert_eq!(fifth["outcome"], "do_not_lift", "{fifth}");
    assert_eq!(
        fifth["why"],
        "Because your plan says 4 goes a day at most, and today's are done."
    );
    assert_eq!(fifth["changes"], json!([]));
    patient.ask(json!({"do": "lift_keep", "done": false, "instead": "leave_it"}));

    patient.later(24 * 60);
    patient.unlock();
    let next_day = card(&patient, &Script::ordinary());
    assert_eq!(next_day["outcome"], "lift", "{next_day}");
}
