//! How an experienced therapist would judge: every case of `tests/reference/vignettes.toml` about a thing,
//! about moving a person, or about the next step in a plan, asked as JSON through the door. The file's header states the seven
//! rules; a case passes when all of them hold.

#![cfg(test)]

use serde::Deserialize;
use serde_json::{Map, Value, json};

const FILE: &str = include_str!("../../reference/vignettes.toml");

/// The parts of a case that are asked.
const PARTS: [&str; 5] = ["person", "object", "transfer", "plan", "history"];

#[derive(Deserialize)]
struct Vignettes {
    schema_version: u32,
    case: Vec<Case>,
}

#[derive(Deserialize)]
struct Case {
    id: String,
    title: String,
    task: String,
    expect: Expect,
    #[serde(flatten)]
    rest: Map<String, Value>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Expect {
    outcome_ok: Vec<String>,
    first_ok: Vec<String>,
    never_first: Vec<String>,
    never_offer: Vec<String>,
    must_show: Vec<String>,
    alternatives_any: Vec<String>,
    urgency_ok: Vec<String>,
    #[serde(default)]
    progress_ok: Vec<String>,
}

impl Case {
    fn command(&self) -> Value {
        let mut command = json!({"do": "advise", "task": self.task});
        for part in PARTS {
            if let Some(value) = self.rest.get(part) {
                command[part] = value.clone();
            }
        }
        command
    }

    /// The rules that do not hold, in words.
    fn broken(&self, advice: &Value) -> Vec<String> {
        let expect = &self.expect;
        let outcome = text(&advice["outcome"]);
        let ways = texts(&advice["ways"]);
        let mut broken = Vec::new();
        if self.task == "progress" {
            demand(
                &mut broken,
                7,
                expect.progress_ok.contains(&text(&advice["progress"])),
                &advice["progress"],
            );
        } else {
            demand(
                &mut broken,
                1,
                expect.outcome_ok.contains(&outcome),
                &advice["outcome"],
            );
            let lifts = outcome == "lift" || outcome == "lift_with_change";
            if let (true, Some(first)) = (lifts, ways.first()) {
                let accepted = expect.first_ok.is_empty() || expect.first_ok.contains(first);
                demand(
                    &mut broken,
                    2,
                    accepted && !expect.never_first.contains(first),
                    &advice["ways"],
                );
            }
            demand(&mut broken, 2, lifts != ways.is_empty(), &advice["ways"]);
            let offered = offered(advice, &outcome);
            let barred = offered.iter().any(|way| expect.never_offer.contains(way));
            demand(&mut broken, 3, !barred, &json!(offered));
            let others = texts(&advice["alternatives"]);
            let some = expect
                .alternatives_any
                .iter()
                .any(|other| others.contains(other));
            let skipped = outcome != "do_not_lift" || expect.alternatives_any.is_empty();
            demand(&mut broken, 5, skipped || some, &advice["alternatives"]);
        }
        let cautions = texts(&advice["cautions"]);
        let shown = expect
            .must_show
            .iter()
            .all(|caution| cautions.contains(caution));
        demand(&mut broken, 4, shown, &advice["cautions"]);
        demand(
            &mut broken,
            6,
            expect.urgency_ok.contains(&text(&advice["urgency"])),
            &advice["urgency"],
        );
        broken
    }
}

/// Ways offered in any position. With `lift_with_change` those for the changed task count too; with
/// `do_not_lift` they do not.
fn offered(advice: &Value, outcome: &str) -> Vec<String> {
    let mut offered = texts(&advice["ways"]);
    if outcome == "lift_with_change" {
        for change in advice["changes"].as_array().into_iter().flatten() {
            offered.extend(texts(&change["ways"]));
        }
    }
    offered
}

fn demand(broken: &mut Vec<String>, rule: u8, holds: bool, found: &Value) {
    if !holds {
        broken.push(format!("rule {rule}, found {found}"));
    }
}

fn text(value: &Value) -> String {
    value.as_str().unwrap_or("null").to_owned()
}

fn texts(value: &Value) -> Vec<String> {
    value.as_array().into_iter().flatten().map(text).collect()
}

fn cases() -> Vec<Case> {
    let vignettes: Vignettes = toml::from_str(FILE).unwrap();
    assert_eq!(vignettes.schema_version, 1);
    vignettes.case
}

fn reply(case: &Case) -> Value {
    serde_json::from_str(&door::answer(&case.command().to_string()).unwrap()).unwrap()
}

#[test]
fn an_experienced_therapist_would_accept_the_advice() {
    let mut failed = Vec::new();
    let mut asked = 0;
    for case in cases().iter() {
        asked += 1;
        let reply = reply(case);
        let broken = match reply.get("ok") {
            Some(advice) => case.broken(advice),
            None => vec![format!("no advice: {reply}")],
        };
        let verdict = if broken.is_empty() {
            "accepted"
        } else {
            "NOT accepted"
        };
        let first = &reply["ok"]["ways"][0];
        println!(
            "{} {verdict}: {} → {}, first {first}",
            case.id, case.title, reply["ok"]["outcome"]
        );
        for rule in broken {
            println!("    {rule}; expected: {}", expected(case));
            failed.push(format!("{}: {rule}", case.id));
        }
    }
    println!("{asked} cases asked");
    assert!(asked >= 17, "the file lost cases");
    assert!(failed.is_empty(), "\n{}", failed.join("\n"));
}

fn expected(case: &Case) -> Value {
    let expect = &case.expect;
    json!({
        "outcome": expect.outcome_ok, "first": expect.first_ok, "never_first": expect.never_first,
        "never": expect.never_offer, "must_show": expect.must_show, "alternatives": expect.alternatives_any,
        "urgency": expect.urgency_ok, "progress": expect.progress_ok,
    })
}

#[test]
fn the_same_question_gets_the_same_answer() {
    for case in cases().iter() {
        assert_eq!(reply(case), reply(case), "{}", case.id);
    }
}

#[test]
fn every_change_listed_gives_a_plain_lift_once_it_is_made() {
    for case in cases().iter().filter(|case| case.task == "object") {
        let reply = reply(case);
        for change in reply["ok"]["changes"].as_array().into_iter().flatten() {
            let mut command = case.command();
            for (key, value) in change["set"].as_object().unwrap() {
                command["object"][key] = value.clone();
            }
            let after: Value =
                serde_json::from_str(&door::answer(&command.to_string()).unwrap()).unwrap();
            assert_eq!(
                after["ok"]["outcome"],
                json!("lift"),
                "{} {change} {after}",
                case.id
            );
        }
    }
}
