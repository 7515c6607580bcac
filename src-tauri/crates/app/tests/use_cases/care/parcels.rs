//! Care plans from phone to phone: an office writes one down, a worker takes it, and the next move follows it.

use super::{choice, ids, plan, somebody, walk, worker};
use crate::handoff::screens::{Picture, asked_about, file, pair, refusal, shown, taken};
use crate::phone::TestPhone;
use chrono::Duration;
use handoff::{Outgoing, Purpose, seal_unpaired};
use record::{Identity, Moment, PersonPlan, PlannedMove, Record};
use serde_json::{Value, json};

pub(super) struct Team {
    pub(super) office: TestPhone,
    worker: TestPhone,
    pairing: String,
    /// The person's number on the office's phone.
    pub(super) person: i64,
}

/// An office that wrote down a care plan for A7, and a worker who is paired with it.
pub(super) fn team() -> Team {
    let office = TestPhone::of("office", "treat", "Blue Kettle");
    let worker = worker("bicycle").called("Green Ladder");
    let pairing = pair(&office, &worker);
    let person = somebody(&office, "A7");
    office.ask(json!({
        "do": "care_plan_keep", "person": person, "move": "bed_to_chair", "ways": ["stand_pivot_belt"], "workers": 1,
        "issued_by": "therapist", "issued_on": "2026-11-20", "review_on": "2027-02-20",
    }));
    plan(&office, person, "up_in_bed", &["slide_sheet_two"], None);
    Team {
        office,
        worker,
        pairing,
        person,
    }
}

impl Team {
    fn give(&self, person: i64) -> Value {
        json!({"do": "show", "what": "care_plan", "person": person, "to": self.pairing})
    }

    pub(super) fn shown(&self) -> Vec<Picture> {
        shown(&self.office, self.give(self.person))
    }

    fn days(&self, days: i64) {
        for phone in [&self.office, &self.worker] {
            phone.set_clock_by(Duration::days(days));
        }
    }
}

/// Everything of care that a refusal must leave as it is.
pub(super) fn state(phone: &TestPhone) -> Vec<Value> {
    let people = phone.ask(json!({"do": "people"}));
    let ids: Vec<Value> = people["people"]
        .as_array()
        .expect("people")
        .iter()
        .map(|one| one["id"].clone())
        .collect();
    std::iter::once(people)
        .chain(
            ids.iter()
                .map(|id| phone.ask(json!({"do": "person", "id": id}))),
        )
        .collect()
}

#[track_caller]
fn refused(phone: &TestPhone, pictures: &[Picture]) -> String {
    let before = state(phone);
    let text = refusal(phone, pictures);
    assert_eq!(phone.refused(json!({"do": "parcel_accept"})), "no_parcel");
    assert_eq!(state(phone), before);
    text
}

#[track_caller]
fn says(text: &str, start: &str) {
    assert!(text.starts_with(start), "{text}");
}

#[test]
fn a_worker_takes_a_care_plan_and_the_next_move_follows_it() {
    let team = team();
    let summary = team.office.ask(json!({
        "do": "show_summary", "what": "care_plan", "person": team.person, "to": team.pairing,
    }));
    assert_eq!(summary["leaves"][0], "The care plan for A7, version 1");
    let question = asked_about(&team.worker, &team.shown());
    assert_eq!(question["purpose"], "care_plan");
    assert_eq!(question["title"], "Use this care plan?");
    assert_eq!(
        question["text"],
        "A care plan for A7, from Blue Kettle, version 1."
    );
    let facts = question["facts"].to_string();
    assert!(
        facts.contains("New here. They will be written down."),
        "{facts}"
    );
    assert!(
        facts.contains("Allowed by this plan where sources differ"),
        "{facts}"
    );
    assert_eq!(question["warnings"], json!([]));
    assert_eq!(
        state(&team.worker)[0]["people"],
        json!([]),
        "asked, not taken"
    );
    let accepted = team.worker.ask(json!({"do": "parcel_accept"}));
    let id = state(&team.worker)[0]["people"][0]["id"]
        .as_i64()
        .expect("an id");
    assert_eq!(accepted["to"], format!("#/care/{id}"));
    assert_eq!(accepted["said"], "The care plan is kept.");
    let answers = [
        ("new", choice("nothing")),
        ("same", choice("as_planned")),
        ("legs", choice("part")),
        ("follows", choice("yes")),
        ("help", choice("steady_only")),
    ];
    let (page, _, _) = walk(&team.worker, id, "bed_to_chair", &answers);
    assert_eq!(ids(&page, "ways"), ["stand_pivot_belt"]);
    assert!(ids(&page, "reasons").contains(&"belt_by_plan"));
    // And never again after the last day on it.
    team.days(88);
    let row = team.worker.ask(json!({"do": "person", "id": id}))["moves"].take();
    assert!(row.to_string().contains("Past its date"), "{row}");
}

#[test]
fn a_newer_one_says_by_how_much_and_what_it_changes() {
    let team = team();
    taken(&team.worker, &team.shown());
    team.days(2);
    plan(
        &team.office,
        team.person,
        "bed_to_chair",
        &["hoist_two"],
        Some(2),
    );
    team.office
        .ask(json!({"do": "care_plan_drop", "person": team.person, "move": "up_in_bed"}));
    let question = asked_about(&team.worker, &team.shown());
    assert_eq!(
        question["text"],
        "A care plan for A7, from Blue Kettle, version 2. It is 2 days newer than yours."
    );
    assert_eq!(
        question["warnings"],
        json!(["It no longer says anything about: Up the bed"])
    );
    team.worker.ask(json!({"do": "parcel_accept"}));
    let person = state(&team.worker).remove(1);
    assert_eq!(person["moves"][0]["what"], "bed_to_chair");
    assert!(
        person["moves"][0]["note"]
            .as_str()
            .expect("a line")
            .contains("Workers: 2")
    );
    assert_eq!(person["moves"][1]["planned"], false);
}

#[test]
fn what_is_older_the_same_or_seen_before_is_refused_and_changes_nothing() {
    let team = team();
    let first = team.shown();
    team.days(1);
    let second = team.shown();
    taken(&team.worker, &second);
    says(
        &refused(&team.worker, &first),
        "This care plan is older than yours",
    );
    says(&refused(&team.worker, &second), "You have this already");
    team.days(1);
    taken(&team.worker, &team.shown());
    says(&refused(&team.worker, &second), "You took this once before");
}

#[test]
fn plans_of_several_people_are_taken_in_any_order() {
    let team = team();
    let other = somebody_else(&team.office, "B2");
    let first = team.shown();
    let second = shown(&team.office, team.give(other));
    taken(&team.worker, &second);
    taken(&team.worker, &first);
    says(&refused(&team.worker, &first), "You took this once before");
    says(&refused(&team.worker, &second), "You have this already");
    assert_eq!(state(&team.worker).len(), 3, "both are there");
}

fn somebody_else(office: &TestPhone, code: &str) -> i64 {
    let kept = office.ask(json!({"do": "person_keep", "code": code, "picture": "boat"}));
    let id = kept["id"].as_i64().expect("an id");
    plan(office, id, "car", &["stand_by"], None);
    id
}

#[test]
fn a_person_who_is_known_by_this_code_gets_it_and_a_newer_plan_of_theirs_stays() {
    let team = team();
    let here = somebody(&team.worker, "a7");
    plan(&team.worker, here, "bed_to_chair", &["stand_aid"], None);
    team.worker.ask(json!({
        "do": "care_plan_keep", "person": here, "move": "up_in_bed", "ways": ["hoist_two"], "workers": 2,
        "issued_by": "nurse", "issued_on": "2026-11-24",
    }));
    let question = asked_about(&team.worker, &team.shown());
    assert!(
        question["facts"]
            .to_string()
            .contains("a7 is on this phone")
    );
    assert_eq!(
        question["warnings"],
        json!([
            "It takes the place of what you have for: From bed to chair",
            "You have a newer plan for this. Yours stays: Up the bed",
        ])
    );
    let accepted = team.worker.ask(json!({"do": "parcel_accept"}));
    assert_eq!(accepted["to"], format!("#/care/{here}"));
    let plan = |what| {
        team.worker
            .ask(json!({"do": "care_plan", "person": here, "move": what}))["plan"]
            .take()
    };
    assert_eq!(plan("bed_to_chair")["ways"], json!(["stand_pivot_belt"]));
    assert_eq!(plan("up_in_bed")["ways"], json!(["hoist_two"]));
}

#[test]
fn only_what_was_written_down_here_and_still_holds_is_handed_over() {
    let team = team();
    taken(&team.worker, &team.shown());
    let id = state(&team.worker)[0]["people"][0]["id"].clone();
    let give = json!({"do": "show_summary", "what": "care_plan", "person": id, "to": null});
    assert_eq!(team.worker.refused(give), "nothing_to_show");
    let person = team.worker.ask(json!({"do": "person", "id": id}));
    assert_eq!(person["gives"], false);
    team.days(88);
    assert_eq!(
        team.office.refused(team.give(team.person)),
        "plan_contradiction at person"
    );
    assert_eq!(
        team.office
            .refused(json!({"do": "show", "what": "care_plan", "to": null})),
        "missing_field at person"
    );
    assert_eq!(team.office.refused(team.give(99)), "not_found at person");
}

#[test]
fn under_a_code_it_is_not_verified_and_says_so() {
    let team = team();
    let show = team.office.ask(json!({
        "do": "show", "what": "care_plan", "person": team.person, "to": null,
    }));
    let words = team
        .office
        .ask(json!({"do": "show_code", "show": show["show"]}))["words"]
        .take();
    let words: Vec<&str> = words
        .as_array()
        .expect("words")
        .iter()
        .filter_map(Value::as_str)
        .collect();
    let question = with_code(&team.worker, &file(&team.office, &show), &words.join(" "));
    let question = &question["ok"];
    assert!(
        question["warnings"][0]
            .as_str()
            .expect("a warning")
            .contains("eight words")
    );
    team.worker.ask(json!({"do": "parcel_accept"}));
    assert_eq!(state(&team.worker).len(), 2);
}

/// Takes a file under a code in; gives the whole reply to the code.
fn with_code(phone: &TestPhone, bytes: &[u8], words: &str) -> Value {
    phone.ask(json!({"do": "scan_start", "for": "parcel"}));
    let reply = phone.take("file", 0, 0, bytes);
    assert_eq!(reply["ok"]["next"], "code", "{reply}");
    phone.ask(json!({"do": "scan_stop"}));
    let line = json!({"do": "parcel_code", "code": words}).to_string();
    serde_json::from_str(&phone.line(&line)).expect("a reply is JSON")
}

/// Hands in a payload as a care plan under a code; gives the whole reply.
pub(super) fn hand_in(phone: &TestPhone, payload: &[u8]) -> Value {
    let now = phone.now().timestamp_millis();
    let what = Outgoing {
        purpose: Purpose::CarePlan,
        counter: 1,
        issued_at_ms: now,
        expires_at_ms: now + 1000,
        payload,
    };
    let mut at = 0_u8;
    let sealed = seal_unpaired(&what, &mut |bytes| {
        bytes.fill_with(|| {
            at = at.wrapping_add(1);
            at
        });
        Ok(())
    });
    let sealed = sealed.expect("sealed");
    with_code(phone, &sealed.parcel, &sealed.code.words().join(" "))
}

fn version(code: &str, version: u32, days: i64) -> PersonPlan {
    PersonPlan {
        id: Identity([4; 16]),
        version,
        // 25 November 2026, 8:12 UTC.
        made_at: Moment {
            at_ms: 1_795_594_320_000 + days * 24 * 60 * 60 * 1000,
            offset_min: 60,
        },
        code: code.to_owned(),
        by: "Blue Kettle".to_owned(),
        moves: vec![PlannedMove {
            what: "car".to_owned(),
            ways: vec!["stand_by".to_owned()],
            workers: None,
            equipment: Vec::new(),
            issued_by: "office".to_owned(),
            issued_on: record::Day(20_777),
            review_on: None,
        }],
    }
}

#[test]
fn a_plan_that_was_for_another_person_before_is_refused() {
    let phone = worker("bicycle");
    let take = |plan: &PersonPlan| hand_in(&phone, &plan.to_bytes().expect("bytes"));
    assert!(take(&version("A7", 2, 0))["ok"].is_object());
    phone.ask(json!({"do": "parcel_accept"}));
    let before = state(&phone);
    let refused = |plan: &PersonPlan, start: &str| {
        let reply = take(plan);
        says(
            reply["error"]["message"].as_str().expect("a sentence"),
            start,
        );
        assert_eq!(phone.refused(json!({"do": "parcel_accept"})), "no_parcel");
        assert_eq!(state(&phone), before);
    };
    refused(
        &version("B2", 3, 0),
        "This care plan was for another person before",
    );
    refused(&version("A7", 1, -1), "This care plan is older than yours");
    refused(&version("A7", 2, 0), "This was taken once before");
    // Number and day say different things: taken, with a warning.
    let crossed = take(&version("A7", 1, 1));
    assert!(
        crossed["ok"]["warnings"].to_string().contains("do not fit"),
        "{crossed}"
    );
    // A code that the worker changed stays the worker's.
    phone.ask(json!({"do": "parcel_decline"}));
    let id = before[0]["people"][0]["id"].clone();
    phone.ask(json!({"do": "person_keep", "id": id, "code": "C3", "picture": "cup"}));
    let renamed = take(&version("A7", 3, 1));
    assert!(
        renamed["ok"]["facts"]
            .to_string()
            .contains("C3 is on this phone"),
        "{renamed}"
    );
}

#[test]
fn a_plan_of_ones_own_is_not_taken_back() {
    let team = team();
    let show = team.office.ask(json!({
        "do": "show", "what": "care_plan", "person": team.person, "to": null,
    }));
    let words = team
        .office
        .ask(json!({"do": "show_code", "show": show["show"]}))["words"]
        .take();
    let words: Vec<&str> = words
        .as_array()
        .expect("words")
        .iter()
        .filter_map(Value::as_str)
        .collect();
    let bytes = file(&team.office, &show);
    let reply = with_code(&team.office, &bytes, &words.join(" "));
    says(
        reply["error"]["message"].as_str().expect("a sentence"),
        "This care plan was made on this phone",
    );
}
