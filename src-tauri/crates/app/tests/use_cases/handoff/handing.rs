//! A plan goes one way, is followed, and a history comes back the other.

use super::screens::{
    Picture, asked_about, frames, history_for, look, pair, plan, plan_for, shown, taken,
};
use crate::phone::TestPhone;
use crate::script::Script;
use serde_json::{Value, json};

struct Visit {
    clinician: TestPhone,
    patient: TestPhone,
    pairing: String,
}

fn visit() -> Visit {
    let clinician = TestPhone::of("surgery", "treat", "Blue Kettle");
    let patient = TestPhone::of("orchard", "lift", "Green Ladder");
    let pairing = pair(&clinician, &patient);
    Visit {
        clinician,
        patient,
        pairing,
    }
}

fn now(phone: &TestPhone) -> Value {
    phone.ask(json!({"do": "plan_now"}))["plan"].take()
}

fn set(phone: &TestPhone, plan: &Value, field: &str, value: Value) {
    phone.ask(json!({"do": "plan_set", "id": plan, "field": field, "value": value}));
}

#[test]
fn a_plan_fits_in_one_symbol_and_is_asked_about_before_it_is_followed() {
    let Visit {
        clinician,
        patient,
        pairing,
    } = visit();
    let id = plan(&clinician, "sore_back", "Green Ladder");
    let show = clinician.ask(plan_for(&id, &pairing));
    assert_eq!(show["frames"], 1, "{show}");
    assert_eq!(show["to_text"], "Only Green Ladder can open it.");
    assert_eq!(show["code"], false);
    let pictures = frames(&clinician, &show, 0, 1);

    let question = asked_about(&patient, &pictures);
    assert_eq!(question["title"], "Use this plan?");
    assert_eq!(
        question["text"],
        "A plan from Blue Kettle for Green Ladder, version 1."
    );
    assert_eq!(question["warnings"], json!([]));
    assert!(question["facts"].to_string().contains("At most 10"));
    assert_eq!(now(&patient), json!(null), "recognising is not acting");

    let accepted = patient.ask(json!({"do": "parcel_accept"}));
    assert_eq!(accepted["to"], "#/plan");
    let followed = now(&patient);
    assert_eq!(followed["title"], "A back that aches");
    assert_eq!(followed["from"], "From Blue Kettle");
    assert_eq!(followed["version_text"], "Version 1, 25 November 2026");
    assert_eq!(
        followed["review_text"],
        "Look at it again by 23 December 2026"
    );
    assert_eq!(followed["expired"], false);
    assert_eq!(patient.refused(json!({"do": "parcel_accept"})), "no_parcel");
}

#[test]
fn a_plan_that_was_left_changes_nothing_and_can_be_scanned_again() {
    let Visit {
        clinician,
        patient,
        pairing,
    } = visit();
    let id = plan(&clinician, "sore_back", "Green Ladder");
    let pictures = shown(&clinician, plan_for(&id, &pairing));
    asked_about(&patient, &pictures);
    let said = patient.ask(json!({"do": "parcel_decline"}))["said"].clone();
    assert_eq!(said, "It was left. Nothing was changed.");
    assert_eq!(now(&patient), json!(null));
    taken(&patient, &pictures);
    assert!(now(&patient).is_object());
}

#[test]
fn advice_obeys_the_plan() {
    let Visit {
        clinician,
        patient,
        pairing,
    } = visit();
    // 6 kg from the floor, a back of 3: without a plan there is a way.
    let before = patient.walk(&Script::ordinary(), None).page;
    assert_eq!(before["card"]["outcome"], "lift");
    assert_eq!(before["card"]["heaviest_text"], json!(null));
    assert_eq!(before["card"]["plan_text"], json!(null));
    patient.ask(json!({"do": "walk_drop"}));

    let id = plan(&clinician, "sore_back", "Green Ladder");
    set(&clinician, &id, "preferred", json!(["lunge"]));
    set(&clinician, &id, "practice_way", json!("lunge"));
    set(
        &clinician,
        &id,
        "not_allowed",
        json!(["hinge", "free_bend", "squat"]),
    );
    taken(&patient, &shown(&clinician, plan_for(&id, &pairing)));

    let after = patient.walk(&Script::ordinary(), None).page;
    let ways: Vec<&str> = after["card"]["ways"]
        .as_array()
        .expect("ways")
        .iter()
        .filter_map(|way| way["way"].as_str())
        .collect();
    assert!(
        !ways.contains(&"hinge") && !ways.contains(&"squat"),
        "{ways:?}"
    );
    let text = after["card"]["plan_text"]
        .as_str()
        .expect("whose plan it is");
    assert_eq!(
        text,
        "Your plan: A back that aches. From Blue Kettle. Up to 5 lifts in one go. Up to 4 goes a day."
    );
    assert_eq!(ways.first(), Some(&"lunge"), "the plan puts it first");
    patient.ask(json!({"do": "walk_drop"}));

    // 10 kg from the floor is over the 6 kg that the plan allows there.
    let heavy = Script::ordinary().but("mass", json!({"choice": "water_bucket"}));
    let over = patient.walk(&heavy, None).page;
    assert_eq!(over["card"]["outcome"], "do_not_lift", "{over}");
    assert!(
        over["card"]["reasons"]
            .to_string()
            .contains("over_plan_ceiling")
    );
    patient.ask(json!({"do": "walk_drop"}));

    patient.ask(json!({"do": "plan_stop"}));
    assert_eq!(now(&patient), json!(null));
    let free = patient.walk(&heavy, None).page;
    assert!(
        !free["card"]["reasons"]
            .to_string()
            .contains("over_plan_ceiling")
    );
}

#[test]
fn with_a_plan_the_days_number_is_shown_and_never_above_the_level_in_practice() {
    let Visit {
        clinician,
        patient,
        pairing,
    } = visit();
    // The pattern practises with 4 kg and allows 6 kg from the floor.
    let id = plan(&clinician, "sore_back", "Green Ladder");
    taken(&patient, &shown(&clinician, plan_for(&id, &pairing)));
    let light = Script::ordinary().but("mass", json!({"choice": "two_bottles"}));
    let page = patient.walk(&light, None).page;
    let text = page["card"]["heaviest_text"].as_str().expect("a number");
    assert!(text.contains("4\u{a0}kg"), "{text}");
    patient.ask(json!({"do": "walk_drop"}));

    set(&clinician, &id, "practice_way", json!("none"));
    taken(&patient, &shown(&clinician, plan_for(&id, &pairing)));
    let page = patient.walk(&light, None).page;
    assert_eq!(
        page["card"]["heaviest_text"],
        json!(null),
        "the level is not known"
    );
}

#[test]
fn past_its_day_a_plan_says_so_and_its_limits_stay_for_the_grace() {
    let Visit {
        clinician,
        patient,
        pairing,
    } = visit();
    let id = plan(&clinician, "sore_back", "Green Ladder");
    taken(&patient, &shown(&clinician, plan_for(&id, &pairing)));
    let heavy = Script::ordinary().but("mass", json!({"choice": "water_bucket"}));

    patient.later(29 * 24 * 60);
    let followed = now(&patient);
    assert_eq!(followed["expired"], true);
    assert!(
        followed["note"]
            .as_str()
            .is_some_and(|note| note.contains("4\u{a0}weeks"))
    );
    let page = patient.walk(&heavy, None).page;
    assert_eq!(page["card"]["outcome"], "do_not_lift");
    assert!(page["card"]["reasons"].to_string().contains("plan_expired"));
    patient.ask(json!({"do": "walk_drop"}));

    patient.later(29 * 24 * 60);
    let page = patient.walk(&heavy, None).page;
    assert_eq!(
        page["card"]["outcome"], "refuse",
        "too old to advise on: {page}"
    );
}

#[test]
fn a_later_version_says_how_much_newer_it_is() {
    let Visit {
        clinician,
        patient,
        pairing,
    } = visit();
    let id = plan(&clinician, "sore_back", "Green Ladder");
    let first = shown(&clinician, plan_for(&id, &pairing));
    let again = shown(&clinician, plan_for(&id, &pairing));
    taken(&patient, &first);
    assert!(
        look(&patient, &again)["text"]
            .as_str()
            .is_some_and(|text| text.starts_with("You follow this plan already")),
        "nothing was changed in between, so it is the same version"
    );
    for phone in [&clinician, &patient] {
        phone.later(9 * 24 * 60);
    }
    set(&clinician, &id, "ceiling", json!(12));
    let question = asked_about(&patient, &shown(&clinician, plan_for(&id, &pairing)));
    assert_eq!(
        question["text"],
        "A plan from Blue Kettle for Green Ladder, version 2. It is 9 days newer than yours."
    );
    patient.ask(json!({"do": "parcel_accept"}));
    assert_eq!(now(&patient)["version_text"], "Version 2, 4 December 2026");
}

#[test]
fn what_leaves_is_said_before_anything_is_sealed() {
    let Visit {
        patient, pairing, ..
    } = visit();
    let history =
        |do_it: &str| json!({"do": do_it, "what": "history", "since_days": 90, "to": pairing});
    assert_eq!(patient.refused(history("show_summary")), "nothing_to_show");
    patient.lift(&Script::ordinary());
    let summary = patient.ask(history("show_summary"));
    assert_eq!(
        summary["leaves"],
        json!([
            "1 lift, 25 November 2026.",
            "None of them was left.",
            "Nobody said how it felt.",
            "No names of things.",
            "Your name for others: Green Ladder",
        ])
    );
    assert_eq!(summary["to_text"], "Only Blue Kettle can open it.");
    let with_names = patient.ask(json!({
        "do": "show_summary", "what": "history", "since_days": null, "notes": true, "to": pairing,
    }));
    assert!(
        with_names["leaves"]
            .to_string()
            .contains("The name of each thing.")
    );
}

#[test]
fn a_history_comes_back_and_is_kept_for_the_person() {
    let Visit {
        clinician,
        patient,
        pairing,
    } = visit();
    let id = plan(&clinician, "sore_back", "Green Ladder");
    taken(&patient, &shown(&clinician, plan_for(&id, &pairing)));
    let light = Script::ordinary().but("mass", json!({"choice": "two_bottles"}));
    for _ in 0..3 {
        let lift = patient.lift(&light);
        patient.ask(json!({"do": "lift_pain", "id": lift, "pain": 3}));
        patient.later(24 * 60);
        clinician.later(24 * 60);
    }
    let question = asked_about(&clinician, &shown(&patient, history_for(90, &pairing)));
    assert_eq!(question["title"], "Take in this history?");
    assert_eq!(question["text"], "A history from Green Ladder.");
    let holds = question["facts"][1]["text"]
        .as_str()
        .expect("what it holds");
    assert!(
        holds.starts_with("3 lifts, 25 November 2026 to 27 November 2026."),
        "{holds}"
    );
    assert!(holds.contains("version 1"), "{holds}");
    let accepted = clinician.ask(json!({"do": "parcel_accept"}));
    assert_eq!(accepted["to"], format!("#/person/{pairing}"));

    // Only the last two days.
    let question = asked_about(&clinician, &shown(&patient, history_for(2, &pairing)));
    let holds = question["facts"][1]["text"]
        .as_str()
        .expect("what it holds");
    assert!(holds.starts_with("2 lifts, 26 November 2026 to"), "{holds}");
}

#[test]
fn a_long_history_goes_as_a_sequence_in_any_order_and_with_losses() {
    let Visit {
        clinician,
        patient,
        pairing,
    } = visit();
    for times in 0_u32..48 {
        // Nothing repeats, so that it does not pack away to nothing.
        let mixed = times * times * 7919 % 1009;
        let script = Script::ordinary()
            .but("mass", json!({"choice": "type_it"}))
            .but(
                "mass_number",
                json!({"number": f64::from(mixed % 70 + 5) / 10.0, "unit": "kg"}),
            )
            .but("back", json!({"pain": mixed % 4}))
            .but("knee_left", json!({"pain": mixed / 7 % 5}))
            .but("knee_right", json!({"pain": mixed / 11 % 5}));
        let lift = patient.lift(&script);
        patient.ask(json!({"do": "lift_pain", "id": lift, "pain": mixed / 13 % 6}));
        patient.later(i64::from(241 + mixed));
    }
    clinician.set_clock_by(patient.now() - clinician.now());
    let show = patient.ask(json!({
        "do": "show", "what": "history", "notes": true, "to": pairing, "density": "coarse",
    }));
    assert_eq!(show["frames"], json!(null), "an endless sequence: {show}");
    let need = show["need"].as_u64().expect("a number");
    assert!(need > 1);
    // From the middle of the stream, every other frame lost, some twice.
    let seen: Vec<Picture> = frames(&patient, &show, 100, 16)
        .into_iter()
        .step_by(2)
        .collect();
    clinician.ask(json!({"do": "scan_start", "for": "parcel"}));
    let mut reply = Value::Null;
    for picture in seen.iter().flat_map(|picture| [picture, picture]) {
        reply = clinician.scan(picture);
        if reply["state"] == "whole" {
            break;
        }
        assert_eq!(reply["state"], "part", "{reply}");
        assert_eq!(reply["need"], need);
    }
    assert_eq!(reply["next"], "accept", "{need} were needed: {reply}");
    assert_eq!(
        clinician.scan(&seen[0])["state"],
        "whole",
        "later pictures change nothing"
    );
    clinician.ask(json!({"do": "parcel_accept"}));
}

#[test]
fn what_is_shown_is_gone_after_the_lock_and_when_it_is_ended() {
    let Visit {
        clinician, pairing, ..
    } = visit();
    let id = plan(&clinician, "sore_back", "Green Ladder");
    let show = clinician.ask(plan_for(&id, &pairing));
    let frames = json!({"do": "show_frames", "show": show["show"], "from": 0, "count": 1});
    clinician.ask(frames.clone());
    clinician.ask(json!({"do": "show_end", "show": show["show"]}));
    assert_eq!(clinician.refused(frames), "unknown_show at show");
    let show = clinician.ask(plan_for(&id, &pairing));
    clinician.ask(json!({"do": "lock"}));
    clinician.unlock();
    let frames = json!({"do": "show_frames", "show": show["show"], "from": 0, "count": 1});
    assert_eq!(clinician.refused(frames), "unknown_show at show");
}

#[test]
fn a_screen_that_shows_by_itself_locks_like_any_other() {
    let Visit {
        clinician, pairing, ..
    } = visit();
    let id = plan(&clinician, "sore_back", "Green Ladder");
    let show = clinician.ask(plan_for(&id, &pairing));
    let frames = json!({"do": "show_frames", "show": show["show"], "from": 0, "count": 1});
    for _ in 0..3 {
        clinician.wait(chrono::Duration::seconds(50));
        clinician.ask(frames.clone());
    }
    clinician.wait(chrono::Duration::seconds(50));
    assert_eq!(clinician.refused(frames), "locked");
}
