use super::*;
use crate::error::ErrorCode;
use serde::Deserialize;
use serde_json::json;

#[derive(Debug, PartialEq, Deserialize)]
#[serde(deny_unknown_fields)]
struct Parcel {
    mass: f64,
    pieces: Option<u8>,
    #[serde(default)]
    labels: Vec<Label>,
    grip: Option<Grip>,
    answer: Option<Answer>,
}

#[derive(Debug, PartialEq, Deserialize)]
#[serde(deny_unknown_fields)]
struct Label {
    text: String,
}

#[derive(Debug, PartialEq, Deserialize)]
#[serde(rename_all = "snake_case")]
enum Grip {
    Good,
    Poor,
}

#[derive(Debug, PartialEq, Deserialize)]
#[serde(rename_all = "snake_case")]
enum Answer {
    Choice(String),
    Pain(u8),
}

fn parcel(value: Value) -> Result<Parcel, (ErrorCode, String)> {
    let Value::Object(body) = value else {
        panic!("a test body is an object")
    };
    read(body).map_err(|error| (error.code, error.field.unwrap_or_default()))
}

fn fault(value: Value) -> (ErrorCode, String) {
    parcel(value).unwrap_err()
}

fn at(code: ErrorCode, field: &str) -> (ErrorCode, String) {
    (code, field.to_owned())
}

#[test]
fn a_whole_body_is_read() {
    let body = json!({"mass": 2, "pieces": 3, "labels": [{"text": "a"}], "grip": "poor", "answer": {"pain": 4}});
    let parcel = parcel(body).unwrap();
    assert!((parcel.mass - 2.0).abs() < 1e-12);
    assert_eq!(parcel.pieces, Some(3));
    assert_eq!(parcel.grip, Some(Grip::Poor));
    assert_eq!(parcel.answer, Some(Answer::Pain(4)));
}

#[test]
fn null_and_missing_both_mean_not_asked() {
    assert_eq!(
        parcel(json!({"mass": 1, "pieces": null})),
        parcel(json!({"mass": 1}))
    );
}

#[test]
fn an_unknown_field_is_named_with_its_path() {
    assert_eq!(
        fault(json!({"mass": 1, "colour": 2})),
        at(ErrorCode::UnknownField, "colour")
    );
    assert_eq!(
        fault(json!({"mass": 1, "labels": [{"text": "a"}, {"text": "a", "size": 1}]})),
        at(ErrorCode::UnknownField, "labels[1].size")
    );
}

#[test]
fn a_missing_field_is_named_with_its_path() {
    assert_eq!(fault(json!({})), at(ErrorCode::MissingField, "mass"));
    assert_eq!(
        fault(json!({"mass": 1, "labels": [{}]})),
        at(ErrorCode::MissingField, "labels[0].text")
    );
}

#[test]
fn a_wrong_type_is_named_with_its_path() {
    assert_eq!(
        fault(json!({"mass": "1"})),
        at(ErrorCode::WrongType, "mass")
    );
    assert_eq!(
        fault(json!({"mass": null})),
        at(ErrorCode::WrongType, "mass")
    );
    assert_eq!(
        fault(json!({"mass": 1, "labels": {}})),
        at(ErrorCode::WrongType, "labels")
    );
    assert_eq!(
        fault(json!({"mass": 1, "labels": ["a"]})),
        at(ErrorCode::WrongType, "labels[0]")
    );
    assert_eq!(
        fault(json!({"mass": 1, "grip": 3})),
        at(ErrorCode::WrongType, "grip")
    );
}

#[test]
fn the_fields_of_an_object_are_not_taken_from_a_list() {
    assert_eq!(
        fault(json!({"mass": 1, "labels": [["a"]]})),
        at(ErrorCode::WrongType, "labels[0]")
    );
}

#[test]
fn a_word_outside_the_list_is_not_a_choice() {
    assert_eq!(
        fault(json!({"mass": 1, "grip": "firm"})),
        at(ErrorCode::NotAChoice, "grip")
    );
    assert_eq!(
        fault(json!({"mass": 1, "grip": "Good"})),
        at(ErrorCode::NotAChoice, "grip")
    );
}

#[test]
fn whole_numbers_refuse_fractions_and_what_does_not_fit() {
    assert_eq!(
        parcel(json!({"mass": 1, "pieces": 5.0})).unwrap().pieces,
        Some(5)
    );
    assert_eq!(
        fault(json!({"mass": 1, "pieces": 5.5})),
        at(ErrorCode::WrongType, "pieces")
    );
    assert_eq!(
        fault(json!({"mass": 1, "pieces": 256})),
        at(ErrorCode::OutOfRange, "pieces")
    );
    assert_eq!(
        fault(json!({"mass": 1, "pieces": -1})),
        at(ErrorCode::OutOfRange, "pieces")
    );
    assert_eq!(
        fault(json!({"mass": 1, "pieces": -1.0})),
        at(ErrorCode::OutOfRange, "pieces")
    );
    assert_eq!(
        fault(json!({"mass": 1, "pieces": 1e300})),
        at(ErrorCode::OutOfRange, "pieces")
    );
}

#[test]
fn an_object_with_one_key_can_be_one_of_several_shapes() {
    let answer = |value: Value| json!({"mass": 1, "answer": value});
    assert_eq!(
        parcel(answer(json!({"choice": "floor"}))).unwrap().answer,
        Some(Answer::Choice("floor".to_owned()))
    );
    assert_eq!(
        fault(answer(json!({"pain": 999}))),
        at(ErrorCode::OutOfRange, "answer.pain")
    );
    assert_eq!(
        fault(answer(json!({"smell": 1}))),
        at(ErrorCode::UnknownField, "answer.smell")
    );
    assert_eq!(
        fault(answer(json!("smell"))),
        at(ErrorCode::NotAChoice, "answer")
    );
    assert_eq!(
        fault(answer(json!("pain"))),
        at(ErrorCode::WrongType, "answer")
    );
    assert_eq!(fault(answer(json!({}))), at(ErrorCode::WrongType, "answer"));
    assert_eq!(
        fault(answer(json!({"pain": 1, "choice": "a"}))),
        at(ErrorCode::WrongType, "answer")
    );
}

#[test]
fn no_value_reaches_the_message() {
    let Value::Object(body) = json!({"mass": "grey heron wades", "grip": "grey heron wades"})
    else {
        panic!()
    };
    let error = read::<Parcel>(body).unwrap_err();
    assert!(!error.to_json_line().contains("heron"));
}
