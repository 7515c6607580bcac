//! `docs/commands.md` is held to the code: every command stands there, and every example on the page is sent,
//! in order, to one phone. A reply must be as written; `"…"` in it stands for anything.
#![allow(
    clippy::expect_used,
    clippy::indexing_slicing,
    clippy::panic,
    reason = "a test may stop at the first surprise"
)]

#[path = "use_cases/phone.rs"]
mod phone;

use phone::TestPhone;
use serde_json::Value;
use std::collections::BTreeSet;

const PAGE: &str = include_str!("../../../../docs/commands.md");

/// A line before an example that lets a day pass.
const A_DAY_LATER: &str = "<!-- a day later -->";

/// What stands for anything in a reply.
const ANYTHING: &str = "…";

#[test]
fn every_command_has_a_section() {
    let sections: BTreeSet<&str> = PAGE
        .lines()
        .filter_map(|line| line.strip_prefix("### `")?.strip_suffix('`'))
        .collect();
    for name in app::command_names() {
        assert!(sections.contains(name), "{name} has no section");
    }
    for name in sections {
        assert!(
            app::command_names().any(|known| known == name),
            "{name} is no command"
        );
    }
}

#[test]
fn every_command_has_an_example() {
    let shown: BTreeSet<String> = steps()
        .iter()
        .filter_map(|step| match step {
            Step::Example { request, .. } => {
                let command: Value = serde_json::from_str(request).ok()?;
                command["do"].as_str().map(str::to_owned)
            }
            Step::ADayLater => None,
        })
        .collect();
    for name in app::command_names() {
        assert!(shown.contains(name), "{name} has no example");
    }
}

#[test]
fn every_example_is_answered_as_written() {
    let phone = TestPhone::new("orchard");
    let mut sent = 0;
    let mut different = Vec::new();
    for step in steps() {
        match step {
            Step::ADayLater => phone.later(24 * 60),
            Step::Example { request, reply } => {
                let answered = phone.line(&request);
                let expected: Value = serde_json::from_str(&reply)
                    .unwrap_or_else(|error| panic!("{error} in the reply to {request}"));
                let actual: Value = serde_json::from_str(&answered).expect("a reply is JSON");
                if let Err(difference) = compare(&expected, &actual, "") {
                    different.push(format!("{request}\n{difference}\nanswered {answered}"));
                }
                sent += 1;
            }
        }
    }
    assert!(
        different.is_empty(),
        "of {sent} examples: {}",
        different.join("\n\n")
    );
}

enum Step {
    Example { request: String, reply: String },
    ADayLater,
}

/// The examples in order: in each block of JSON, lines go in pairs of request and reply.
fn steps() -> Vec<Step> {
    let mut steps = Vec::new();
    let mut lines = PAGE.lines();
    while let Some(line) = lines.next() {
        if line == A_DAY_LATER {
            steps.push(Step::ADayLater);
        } else if line == "```json" {
            let block: Vec<&str> = lines.by_ref().take_while(|line| *line != "```").collect();
            for pair in block.chunks(2) {
                let [request, reply] = pair else {
                    panic!("a request without a reply: {pair:?}")
                };
                steps.push(Step::Example {
                    request: (*request).to_owned(),
                    reply: (*reply).to_owned(),
                });
            }
        }
    }
    steps
}

/// Whether a reply is as written. A key `…` means that there are more, a last item `…` likewise.
fn compare(expected: &Value, actual: &Value, path: &str) -> Result<(), String> {
    match (expected, actual) {
        (Value::String(text), _) if text == ANYTHING => Ok(()),
        (Value::Object(expected), Value::Object(actual)) => {
            let open = expected.contains_key(ANYTHING);
            for (key, value) in expected.iter().filter(|(key, _)| *key != ANYTHING) {
                let found = actual
                    .get(key)
                    .ok_or(format!("{path}.{key} is not answered"))?;
                compare(value, found, &format!("{path}.{key}"))?;
            }
            match actual.keys().find(|key| !expected.contains_key(*key)) {
                Some(key) if !open => Err(format!("{path}.{key} is not written")),
                _ => Ok(()),
            }
        }
        (Value::Array(expected), Value::Array(actual)) => {
            let open = expected.last().is_some_and(|last| last == ANYTHING);
            let written = expected.len() - usize::from(open);
            if actual.len() < written || (!open && actual.len() > written) {
                return Err(format!("{path} has {} items", actual.len()));
            }
            for (at, (value, found)) in expected.iter().zip(actual).take(written).enumerate() {
                compare(value, found, &format!("{path}[{at}]"))?;
            }
            Ok(())
        }
        (expected, actual) if expected == actual => Ok(()),
        _ => Err(format!(
            "{path}: {expected} is written, {actual} is answered"
        )),
    }
}
