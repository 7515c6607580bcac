//! A plan day by day: practice in two taps, a step that is offered, a flare-up, and what comes back to the clinician.
//! The pattern `sore_back`: at most 10 kg, 6 kg from the floor; practice 4 kg; two good days, then 0.5 kg more; hold from
//! pain 4, a step back above 5.

use super::screens::{history_for, pair, plan, plan_for, shown, taken};
use crate::phone::TestPhone;
use crate::script::Script;
use serde_json::{Value, json};

pub(super) struct Visit {
    pub(super) clinician: TestPhone,
    pub(super) patient: TestPhone,
    pub(super) pairing: String,
}

/// A visit after which the patient follows a plan; `change` is set in it first.
pub(super) fn visit(change: &[(&str, Value)]) -> Visit {
    let clinician = TestPhone::of("surgery", "treat", "Blue Kettle");
    let patient = TestPhone::of("orchard", "lift", "Green Ladder");
    let pairing = pair(&clinician, &patient);
    let id = plan(&clinician, "sore_back", "Green Ladder");
    for (field, value) in change {
        clinician.ask(json!({"do": "plan_set", "id": id, "field": field, "value": value}));
    }
    taken(&patient, &shown(&clinician, plan_for(&id, &pairing)));
    Visit {
        clinician,
        patient,
        pairing,
    }
}

pub(super) fn patient() -> TestPhone {
    visit(&[]).patient
}

pub(super) fn day(phone: &TestPhone) -> Value {
    phone.ask(json!({"do": "plan_now"}))["plan"]["day"].take()
}

pub(super) fn practise(phone: &TestPhone, pain: u8) -> Value {
    phone.ask(json!({"do": "practice_keep", "item": 0, "done": true, "pain": pain}))
}

/// Practice today, and the answer of the next morning.
pub(super) fn a_day(phone: &TestPhone, pain: u8, usual: &str) {
    practise(phone, pain);
    phone.later(24 * 60);
    phone.ask(json!({"do": "morning", "id": null, "pain": 1, "back_to_usual": usual}));
}

#[test]
fn without_a_plan_there_is_nothing_to_practise() {
    let phone = TestPhone::set_up("orchard");
    assert_eq!(phone.ask(json!({"do": "home"}))["plan"], json!(null));
    let keep = json!({"do": "practice_keep", "item": 0, "done": true});
    assert_eq!(phone.refused(keep), "unknown_plan");
    assert_eq!(phone.refused(json!({"do": "flare_start"})), "unknown_plan");
    let step = json!({"do": "step_answer", "step": "step_up", "take": true});
    assert_eq!(phone.refused(step), "unknown_plan");
    assert_eq!(
        phone.ask(json!({"do": "practice_list"}))["entries"],
        json!([])
    );
}

#[test]
fn the_home_screen_says_whose_plan_how_much_and_until_when() {
    let phone = patient();
    assert_eq!(
        phone.ask(json!({"do": "home"}))["plan"],
        json!([
            "Your plan: A back that aches. From Blue Kettle.",
            "At most 10\u{a0}kg. At most 6\u{a0}kg from the floor.",
            "Look at it again by 23 December 2026",
        ])
    );
    let day = day(&phone);
    assert_eq!(day["practice"][0]["name"], "Squat");
    assert_eq!(
        day["practice"][0]["text"],
        "With 4\u{a0}kg: 2 sets of 6, 3 days a week."
    );
    assert_eq!(day["practice"][0]["today"], json!(null));
    assert_eq!(day["step"]["text"], "Stay at 4\u{a0}kg for now.");
    assert_eq!(
        day["step"]["need"],
        "2 more good days, and you may try 0.5\u{a0}kg more."
    );
    assert_eq!(day["step"]["offer"], json!(null));
}

#[test]
fn practice_takes_two_taps_and_can_be_taken_back() {
    let phone = patient();
    let kept = practise(&phone, 2);
    assert_eq!(
        day(&phone)["practice"][0]["today"],
        "Noted today. Worst pain: 2 out of 10."
    );
    let list = phone.ask(json!({"do": "practice_list"}));
    assert_eq!(list["entries"][0]["text"], "Squat, 4\u{a0}kg");
    assert_eq!(list["entries"][0]["when_text"], "Today, 9:12");
    phone.ask(json!({"do": "practice_undo", "id": kept["id"]}));
    assert_eq!(day(&phone)["practice"][0]["today"], json!(null));
    phone.ask(json!({"do": "practice_keep", "item": 0, "done": false}));
    assert_eq!(day(&phone)["practice"][0]["today"], "Left for today.");
    let kept = practise(&phone, 2);
    phone.later(11);
    assert_eq!(
        phone.refused(json!({"do": "practice_undo", "id": kept["id"]})),
        "not_found at id"
    );
    for (command, refused) in [
        (
            json!({"do": "practice_keep", "item": 1, "done": true}),
            "not_found at item",
        ),
        (
            json!({"do": "practice_keep", "item": 0, "done": true, "pain": 11}),
            "out_of_range at pain",
        ),
        (
            json!({"do": "practice_keep", "item": 0, "done": false, "pain": 1}),
            "contradiction at pain",
        ),
    ] {
        assert_eq!(phone.refused(command), refused);
    }
}

#[test]
fn two_good_days_bring_an_offer_and_a_step_taken_is_the_level() {
    let mut phone = patient();
    a_day(&phone, 2, "yes");
    assert_eq!(
        day(&phone)["step"]["need"],
        "One more good day, and you may try 0.5\u{a0}kg more."
    );
    assert_eq!(
        phone.refused(json!({"do": "step_answer", "step": "step_up", "take": true})),
        "question_not_open at step"
    );
    practise(&phone, 3);
    assert_eq!(
        day(&phone)["step"]["offer"],
        json!(null),
        "the next morning counts too"
    );
    phone.later(24 * 60);
    phone.ask(json!({"do": "morning", "id": null, "pain": 0, "back_to_usual": "yes"}));
    let step = day(&phone)["step"].take();
    assert_eq!(step["text"], "You may try 0.5\u{a0}kg more: 4.5\u{a0}kg.");
    assert_eq!(step["offer"]["step"], "step_up");
    assert_eq!(
        phone.refused(json!({"do": "step_answer", "step": "step_down", "take": true})),
        "question_not_open at step"
    );
    phone.ask(json!({"do": "step_answer", "step": "step_up", "take": true}));
    phone.kill_and_unlock();
    let day = day(&phone);
    assert_eq!(day["step"]["text"], "Stay at 4.5\u{a0}kg for now.");
    assert_eq!(day["step"]["offer"], json!(null));
    assert!(day["practice"][0]["text"].to_string().contains("4.5"));
    let script = Script::ordinary().but("mass", json!({"choice": "bottle"}));
    let card = phone.walk(&script, None).page["card"].take();
    assert_eq!(
        card["heaviest_text"],
        "With the plan, at most 4.5\u{a0}kg today."
    );
}

#[test]
fn an_offer_that_is_left_comes_back_after_more_practice() {
    let phone = patient();
    a_day(&phone, 2, "yes");
    a_day(&phone, 2, "yes");
    phone.ask(json!({"do": "step_answer", "step": "step_up", "take": false}));
    let step = day(&phone)["step"].take();
    assert_eq!(step["offer"], json!(null));
    assert!(step["why"].to_string().contains("You left the step"));
    phone.later(60);
    a_day(&phone, 2, "yes");
    assert_eq!(day(&phone)["step"]["offer"]["step"], "step_up");
}

#[test]
fn strong_pain_offers_a_step_down_at_once() {
    let phone = patient();
    practise(&phone, 6);
    let step = day(&phone)["step"].take();
    assert_eq!(step["text"], "Go one step down for now: 3.5\u{a0}kg.");
    assert!(step["why"].to_string().contains("Pain reached 6 of 10"));
    phone.ask(json!({"do": "step_answer", "step": "step_down", "take": true}));
    assert_eq!(day(&phone)["step"]["text"], "Stay at 3.5\u{a0}kg for now.");
}

#[test]
fn locked_steps_offer_nothing() {
    let phone = visit(&[("locked", json!(true))]).patient;
    a_day(&phone, 2, "yes");
    a_day(&phone, 2, "yes");
    let step = day(&phone)["step"].take();
    assert_eq!(step["offer"], json!(null));
    assert!(step["why"].to_string().contains("unlocks the next step"));
    practise(&phone, 7);
    let step = day(&phone)["step"].take();
    assert_eq!(step["offer"], json!(null));
    assert!(step["why"].to_string().contains("Ask your clinician"));
}

#[test]
fn the_level_stops_at_the_ceiling() {
    let phone = visit(&[("ceiling_floor", json!(4.2))]).patient;
    a_day(&phone, 1, "yes");
    a_day(&phone, 1, "yes");
    let step = day(&phone)["step"].take();
    assert_eq!(
        step["offer"],
        json!(null),
        "half a kilogram more would pass 4.2 kg"
    );
    assert!(step["why"].to_string().contains("4.2"), "{step}");
    assert_eq!(step["need"], json!(null));
}

#[test]
fn a_flare_up_halves_the_level_holds_for_the_day_and_is_judged() {
    let phone = patient();
    phone.lift(&Script::ordinary().but("mass", json!({"choice": "bottle"})));
    let kept = phone.ask(json!({"do": "flare_start"}));
    assert!(kept["id"].is_i64());
    assert_eq!(phone.refused(json!({"do": "flare_start"})), "contradiction");
    let home = phone.ask(json!({"do": "home"}));
    assert_eq!(home["plan"][1], "A flare-up today: at most 2\u{a0}kg.");
    assert_eq!(home["body_kept"], json!(null), "the body is asked anew");
    let today = day(&phone);
    assert_eq!(today["flare"]["today"], true);
    assert_eq!(today["flare"]["often"], json!(null));
    assert_eq!(today["step"]["offer"], json!(null));
    // 4 kg, above the level of today and below the ceiling of the plan.
    let script = Script::ordinary().but("mass", json!({"choice": "two_bottles"}));
    let walked = phone.walk(&script, None);
    assert!(walked.met.contains(&"back".to_owned()));
    assert!(
        !walked.met.contains(&"back_state".to_owned()),
        "told already"
    );
    assert!(walked.met.contains(&"signs_flare".to_owned()));
    let card = &walked.page["card"];
    assert_eq!(card["outcome"], "do_not_lift");
    assert!(
        card["why"].to_string().contains("2\u{a0}kg"),
        "{}",
        card["why"]
    );
    // The next day the ceiling is the plan's own again; the level stays down.
    phone.later(24 * 60);
    let home = phone.ask(json!({"do": "home"}));
    assert_eq!(
        home["plan"][1],
        "At most 10\u{a0}kg. At most 6\u{a0}kg from the floor."
    );
    assert_eq!(day(&phone)["step"]["text"], "Stay at 2\u{a0}kg for now.");
    phone.ask(json!({"do": "flare_start"}));
    assert!(
        day(&phone)["flare"]["often"]
            .to_string()
            .contains("second flare-up")
    );
    assert_eq!(
        day(&phone)["step"]["text"],
        "A flare-up today: at most 1.5\u{a0}kg."
    );
}

/// The clinician's own steps stand in place of ours, in the order given; a place left empty closes up.
#[test]
fn what_to_do_in_a_flare_up_is_the_clinicians_to_say() {
    let steps = |phone: &TestPhone| day(phone)["flare"]["steps"].take();
    assert_eq!(steps(&patient())[0], "Look at the warning signs first.");
    let phone = visit(&[
        ("flare_1", json!("Lie down for ten minutes.")),
        ("flare_2", json!("Walk round the house.")),
        ("flare_3", json!("Ring me.")),
        ("flare_2", json!("")),
    ])
    .patient;
    assert_eq!(
        steps(&phone),
        json!(["Lie down for ten minutes.", "Ring me."])
    );
    let lines = phone.ask(json!({"do": "plan_now"}))["plan"]["lines"].take();
    assert!(
        lines
            .to_string()
            .contains("Lie down for ten minutes. Ring me.")
    );
}

#[test]
fn a_plan_past_its_day_says_so_everywhere_and_offers_no_step_up() {
    let phone = patient();
    a_day(&phone, 1, "yes");
    a_day(&phone, 1, "yes");
    phone.later(30 * 24 * 60);
    let past = "This plan is past its day.";
    let home = phone.ask(json!({"do": "home"}));
    assert!(home["plan"][2].to_string().contains(past));
    let now = phone.ask(json!({"do": "plan_now"}))["plan"].take();
    assert_eq!(now["expired"], true);
    assert!(now["note"].to_string().contains(past));
    assert_eq!(now["day"]["step"]["offer"], json!(null));
    assert_eq!(now["day"]["step"]["need"], json!(null));
    let script = Script::ordinary().but("mass", json!({"choice": "bottle"}));
    let card = phone.walk(&script, None).page["card"].take();
    assert!(card["plan_text"].to_string().contains(past));
}

/// One answer a morning: asked of the lift where there was one, and it holds for what was practised on that day.
#[test]
fn the_next_morning_is_asked_once() {
    let phone = patient();
    let asked = |phone: &TestPhone| phone.ask(json!({"do": "home"}))["morning"].take();
    practise(&phone, 2);
    phone.later(24 * 60);
    assert_eq!(asked(&phone)[0]["id"], json!(null));
    assert_eq!(
        asked(&phone)[0]["text"],
        "Yesterday: Squat. How is it today?"
    );
    phone.ask(json!({"do": "morning", "id": null, "pain": 1, "back_to_usual": "yes"}));
    assert_eq!(asked(&phone), json!([]));
    assert_eq!(phone.refused(json!({"do": "morning"})), "not_found at id");
    practise(&phone, 2);
    let lift = phone.lift(&Script::ordinary().but("mass", json!({"choice": "bottle"})));
    phone.later(24 * 60);
    assert_eq!(asked(&phone)[0]["id"], lift);
    phone.ask(json!({"do": "morning", "id": lift, "pain": 1, "back_to_usual": "yes"}));
    assert_eq!(asked(&phone), json!([]));
    assert_eq!(
        day(&phone)["step"]["offer"]["step"],
        "step_up",
        "both mornings are known"
    );
}

#[test]
fn the_clinician_sees_what_the_patient_sees() {
    let Visit {
        clinician,
        patient,
        pairing,
    } = visit(&[]);
    let lift = patient.lift(&Script::ordinary().but("mass", json!({"choice": "bottle"})));
    a_day(&patient, 2, "yes");
    patient.ask(json!({"do": "morning", "id": lift, "pain": 1}));
    a_day(&patient, 3, "yes");
    clinician.later(2 * 24 * 60);
    let summary = patient
        .ask(json!({"do": "show_summary", "what": "history", "since_days": 90, "to": pairing}));
    assert!(
        summary["leaves"]
            .to_string()
            .contains("2 notes about practice")
    );
    taken(&clinician, &shown(&patient, history_for(90, &pairing)));
    let back = |phone: &TestPhone, of: Option<&str>| {
        let back = phone.ask(json!({"do": "look_back", "of": of}));
        let passages = back["passages"].as_array().expect("passages").clone();
        let wanted = |passage: &Value| passage["id"] == "practice" || passage["id"] == "progress";
        passages.into_iter().filter(wanted).collect::<Vec<Value>>()
    };
    let own = back(&patient, None);
    assert_eq!(own, back(&clinician, Some(&pairing)));
    assert_eq!(
        own[0]["sentences"][0],
        "Practised 2 times on 2 days. The level is 4\u{a0}kg now."
    );
    assert_eq!(
        own[1]["sentences"],
        json!([
            "The plan's rule proposes one step up, from 4\u{a0}kg to 4.5\u{a0}kg.",
            "Good practice days in a row: 2 of 2. Most pain while practising: 3. Settled by next morning: yes.",
            "The last times went well, and you felt as usual by next morning.",
        ])
    );
    let table = |phone: &TestPhone, of: Option<&str>| {
        let made = phone.ask(json!({"do": "report_make", "form": "csv", "of": of}));
        made["text"].as_str().expect("a table").to_owned()
    };
    let practised = ",,practised,,squat,4,4,,,,,,,,,3,1,,";
    assert!(table(&clinician, Some(&pairing)).contains(practised));
    let row = table(&patient, None);
    assert!(row.contains(practised), "{row}");
}
