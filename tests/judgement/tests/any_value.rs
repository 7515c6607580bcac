//! Any JSON value in any field of `advise`: advice, or an error in that part of the command.

#![cfg(test)]

use door::{ErrorCode, answer, fields};
use proptest::prelude::*;
use serde_json::{Map, Value, json};

/// Parts of `advise` that stand in the command under their own name.
const PARTS: [&str; 5] = ["person", "object", "plan", "history", "recent"];

/// Codes that reading and checking may give.
const EXPECTED: [ErrorCode; 9] = [
    ErrorCode::UnknownField,
    ErrorCode::MissingField,
    ErrorCode::WrongType,
    ErrorCode::NotAChoice,
    ErrorCode::OutOfRange,
    ErrorCode::AnswerNeeded,
    ErrorCode::Contradiction,
    ErrorCode::TooLong,
    ErrorCode::NotBuilt,
];

fn request() -> Value {
    json!({
        "do": "advise", "task": "object", "person": {"flags": []}, "object": {}, "plan": {"valid": true},
        "history": {}, "recent": {},
    })
}

/// A part and one of its fields.
fn any_field() -> impl Strategy<Value = (&'static str, &'static str)> {
    let all: Vec<(&str, &str)> = fields()
        .into_iter()
        .filter(|(part, _)| PARTS.contains(part))
        .flat_map(|(part, fields)| fields.iter().map(move |field| (part, *field)))
        .collect();
    prop::sample::select(all)
}

/// Values of every kind, likely ones among them.
fn any_value() -> impl Strategy<Value = Value> {
    let words = [
        "floor",
        "knee",
        "close",
        "far",
        "good",
        "poor",
        "unknown",
        "yes",
        "no",
        "one_side",
        "flare",
        "volatile",
        "hinge",
        "squat",
        "upright",
        "pregnant",
        "hernia",
        "saddle_numb",
        "female",
        "80plus",
        "up",
        "",
    ];
    let leaf = prop_oneof![
        Just(Value::Null),
        any::<bool>().prop_map(Value::from),
        (-2i64..30).prop_map(Value::from),
        any::<i64>().prop_map(Value::from),
        (-5.0f64..400.0).prop_map(Value::from),
        any::<f64>().prop_map(Value::from),
        prop::sample::select(words.to_vec()).prop_map(Value::from),
        ".{0,12}".prop_map(Value::from),
    ];
    leaf.prop_recursive(3, 12, 4, |inner| {
        let keys = prop::sample::select(vec!["back", "floor", "moderate_from", "severe_from", "x"]);
        prop_oneof![
            prop::collection::vec(inner.clone(), 0..4).prop_map(Value::from),
            prop::collection::vec((keys, inner), 0..3).prop_map(|entries| {
                let entries = entries
                    .into_iter()
                    .map(|(key, value)| (key.to_owned(), value));
                Value::Object(entries.collect::<Map<_, _>>())
            }),
        ]
    })
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(4_000))]

    #[test]
    fn any_value_gets_advice_or_an_error_in_its_part(
        changes in prop::collection::vec((any_field(), any_value()), 1..5),
    ) {
        let mut request = request();
        for ((part, field), value) in &changes {
            request[*part][*field] = value.clone();
        }
        let reply: Value = serde_json::from_str(&answer(&request.to_string()).unwrap()).unwrap();
        let Some(error) = reply.get("error") else {
            prop_assert!(reply["ok"]["outcome"].is_string());
            return Ok(());
        };
        let code = error["code"].as_str().and_then(ErrorCode::from_id).unwrap();
        prop_assert!(EXPECTED.contains(&code), "{error}");
        let field = error["field"].as_str().unwrap();
        prop_assert!(changes.iter().any(|((part, _), _)| field.starts_with(&format!("{part}."))), "{error}");
    }
}
