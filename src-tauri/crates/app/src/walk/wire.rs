//! Answers as they go over the wire: exactly one of five shapes.

use super::answer::{Answer, Number, NumberUnit};
use crate::failure::Failure;
use door::ErrorCode;
use serde::{Deserialize, Serialize};
use std::collections::BTreeSet;

/// One answer on the wire: `{"choice":…}`, `{"choices":[…]}`, `{"pain":…}`, `{"number":…,"unit":…}` or
/// `{"not_sure":true}`.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct WireAnswer {
    /// The id of one option.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(crate) choice: Option<String>,
    /// The ids of any options; an empty list is "none of these".
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(crate) choices: Option<Vec<String>>,
    /// A pain score, 0 to 10.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(crate) pain: Option<u8>,
    /// A number.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(crate) number: Option<f64>,
    /// Its unit: `kg`, `lb`, `cm`, `in` or `weeks`.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(crate) unit: Option<String>,
    /// "I'm not sure".
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(crate) not_sure: Option<bool>,
}

impl WireAnswer {
    /// The answer, if it has exactly one shape.
    ///
    /// # Errors
    /// `missing_field` for none, `contradiction` for several, `missing_field` or `not_a_choice` at the
    /// unit, `out_of_range` at the number, `not_a_choice` for `not_sure: false`.
    pub(crate) fn read(self) -> Result<Answer, Failure> {
        let Self {
            choice,
            choices,
            pain,
            number,
            unit,
            not_sure,
        } = self;
        let shapes = [
            choice.is_some(),
            choices.is_some(),
            pain.is_some(),
            number.is_some(),
            not_sure.is_some(),
        ];
        match shapes.iter().filter(|is_there| **is_there).count() {
            0 => return Err(Failure::at(ErrorCode::MissingField, "answer")),
            1 => {}
            _ => return Err(Failure::at(ErrorCode::Contradiction, "answer")),
        }
        if unit.is_some() && number.is_none() {
            return Err(Failure::at(ErrorCode::Contradiction, "answer.unit"));
        }
        match (choice, choices, pain, number, not_sure) {
            (Some(id), ..) => Ok(Answer::Choice(id)),
            (_, Some(ids), ..) => Ok(Answer::Choices(ids.into_iter().collect::<BTreeSet<_>>())),
            (_, _, Some(score), ..) => Ok(Answer::Pain(score)),
            (_, _, _, Some(number), _) => {
                let unit =
                    unit.ok_or_else(|| Failure::at(ErrorCode::MissingField, "answer.unit"))?;
                let unit = NumberUnit::from_id(&unit)
                    .ok_or_else(|| Failure::at(ErrorCode::NotAChoice, "answer.unit"))?;
                Number::from_decimal(number, unit)
                    .map(Answer::Number)
                    .ok_or_else(|| Failure::at(ErrorCode::OutOfRange, "answer"))
            }
            (.., Some(true)) => Ok(Answer::NotSure),
            _ => Err(Failure::at(ErrorCode::NotAChoice, "answer.not_sure")),
        }
    }
}

impl From<&Answer> for WireAnswer {
    fn from(answer: &Answer) -> Self {
        let nothing = Self::default();
        match answer {
            Answer::Choice(id) => Self {
                choice: Some(id.clone()),
                ..nothing
            },
            Answer::Choices(ids) => Self {
                choices: Some(ids.iter().cloned().collect()),
                ..nothing
            },
            Answer::Pain(score) => Self {
                pain: Some(*score),
                ..nothing
            },
            Answer::Number(number) => Self {
                number: Some(number.value()),
                unit: Some(number.unit.id().to_owned()),
                ..nothing
            },
            Answer::NotSure => Self {
                not_sure: Some(true),
                ..nothing
            },
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn read(json: &str) -> Result<Answer, Failure> {
        serde_json::from_str::<WireAnswer>(json).unwrap().read()
    }

    #[test]
    fn each_shape_is_read_and_written_alike() {
        for json in [
            r#"{"choice":"floor"}"#,
            r#"{"choices":["hip_left","shoulders"]}"#,
            r#"{"choices":[]}"#,
            r#"{"pain":3}"#,
            r#"{"number":6.5,"unit":"kg"}"#,
            r#"{"not_sure":true}"#,
        ] {
            let answer = read(json).unwrap();
            assert_eq!(
                serde_json::to_string(&WireAnswer::from(&answer)).unwrap(),
                json
            );
        }
    }

    #[test]
    fn no_shape_and_two_shapes_are_refused() {
        assert_eq!(
            read("{}"),
            Err(Failure::at(ErrorCode::MissingField, "answer"))
        );
        assert_eq!(
            read(r#"{"choice":"a","pain":3}"#),
            Err(Failure::at(ErrorCode::Contradiction, "answer"))
        );
        assert_eq!(
            read(r#"{"pain":3,"unit":"kg"}"#),
            Err(Failure::at(ErrorCode::Contradiction, "answer.unit"))
        );
        assert_eq!(
            read(r#"{"not_sure":false}"#),
            Err(Failure::at(ErrorCode::NotAChoice, "answer.not_sure"))
        );
    }

    #[test]
    fn a_number_needs_its_unit() {
        assert_eq!(
            read(r#"{"number":6}"#),
            Err(Failure::at(ErrorCode::MissingField, "answer.unit"))
        );
        assert_eq!(
            read(r#"{"number":6,"unit":"stone"}"#),
            Err(Failure::at(ErrorCode::NotAChoice, "answer.unit"))
        );
        assert_eq!(
            read(r#"{"number":-1,"unit":"kg"}"#),
            Err(Failure::at(ErrorCode::OutOfRange, "answer"))
        );
    }
}
