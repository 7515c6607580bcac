use super::*;

fn fault(line: &str) -> (ErrorCode, Option<String>) {
    let error = parse_line(line).expect_err("the line was taken");
    (error.code, error.field)
}

fn at(code: ErrorCode, field: &str) -> (ErrorCode, Option<String>) {
    (code, Some(field.to_owned()))
}

#[test]
fn a_line_is_a_name_and_a_body() {
    let parsed = parse_line(r#"{"do":"advise","task":"object"}"#).unwrap();
    assert_eq!(parsed.name, "advise");
    assert_eq!(
        Value::Object(parsed.body),
        serde_json::json!({"task": "object"})
    );
}

#[test]
fn space_around_the_object_does_not_matter() {
    assert_eq!(parse_line(" {\"do\" : \"pose\"}\r\n").unwrap().name, "pose");
}

#[test]
fn the_name_must_be_there_and_a_text() {
    assert_eq!(fault("{}"), at(ErrorCode::MissingField, "do"));
    assert_eq!(fault(r#"{"do":null}"#), at(ErrorCode::WrongType, "do"));
    assert_eq!(
        fault(r#"{"do":["advise"]}"#),
        at(ErrorCode::WrongType, "do")
    );
}

#[test]
fn a_key_given_twice_is_refused_with_its_path() {
    assert_eq!(
        fault(r#"{"do":"a","do":"b"}"#),
        at(ErrorCode::DuplicateKey, "do")
    );
    assert_eq!(
        fault(r#"{"do":"a","x":{"y":1,"y":2}}"#),
        at(ErrorCode::DuplicateKey, "x.y")
    );
    assert_eq!(
        fault(r#"{"do":"a","x":[{},{"y":1,"y":1}]}"#),
        at(ErrorCode::DuplicateKey, "x[1].y")
    );
}

#[test]
fn the_same_key_written_in_two_ways_is_still_the_same_key() {
    assert_eq!(
        fault(r#"{"do":"a","x":1,"\u0078":2}"#),
        at(ErrorCode::DuplicateKey, "x")
    );
}

#[test]
fn a_key_may_come_again_in_another_object() {
    assert!(parse_line(r#"{"do":"a","x":{"y":1},"z":{"y":1},"y":[{"y":1},{"y":1}]}"#).is_ok());
}

#[test]
fn what_is_not_one_json_value_is_bad() {
    for line in [
        "",
        " ",
        "{",
        "nul",
        "{} {}",
        "{'do':1}",
        "\u{feff}{}",
        r#"{"a":01}"#,
        r#"{"a":NaN}"#,
        r#"{"a":1e999}"#,
    ] {
        assert_eq!(fault(line), (ErrorCode::BadJson, None), "{line}");
    }
}

#[test]
fn what_is_not_an_object_is_named_so() {
    for line in ["[]", "1", "null", "\"do\"", "true"] {
        assert_eq!(fault(line), (ErrorCode::NotAnObject, None), "{line}");
    }
}

#[test]
fn depth_is_bounded() {
    let nested = |depth: usize| {
        format!(
            r#"{{"do":"a","x":{}{}}}"#,
            "[".repeat(depth),
            "]".repeat(depth)
        )
    };
    assert!(parse_line(&nested(MAX_DEPTH - 1)).is_ok());
    assert_eq!(fault(&nested(MAX_DEPTH)), (ErrorCode::BadJson, None));
    assert_eq!(fault(&nested(30_000)), (ErrorCode::BadJson, None));
}

#[test]
fn length_is_bounded() {
    let padded = |bytes: usize| format!(r#"{{"do":"a","x":"{}"}}"#, "y".repeat(bytes - 17));
    assert!(parse_line(&padded(MAX_LINE_BYTES)).is_ok());
    assert_eq!(
        fault(&padded(MAX_LINE_BYTES + 1)),
        (ErrorCode::TooLong, None)
    );
}

#[test]
fn debug_does_not_print_the_body() {
    let parsed = parse_line(r#"{"do":"unlock","passphrase":"grey heron wades"}"#).unwrap();
    assert!(!format!("{parsed:?}").contains("heron"));
}
