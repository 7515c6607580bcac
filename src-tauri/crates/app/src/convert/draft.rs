//! Answers as a draft or a saved task keeps them.

use crate::walk::answer::{Answer, Answers, Number, NumberUnit};
use crate::walk::flow::Step;
use crate::walk::questions::question;
use record::{Answered, Pain, Unit};

/// The answer of an interruption that was passed.
pub(crate) const GO_ON: &str = "go_on";

/// All answers and every "go on", in the order of asking.
#[must_use]
pub(crate) fn to_record(answers: &Answers) -> Vec<Answered> {
    let given = answers.iter().filter_map(|(question, answer)| {
        Some(Answered {
            question: question.id().to_owned(),
            answer: kept(answer)?,
        })
    });
    let confirmed = answers.confirmations().map(|interruption| Answered {
        question: interruption.id().to_owned(),
        answer: record::Answer::Choice(GO_ON.to_owned()),
    });
    given.chain(confirmed).collect()
}

/// One answer as it is kept. `None`: it cannot be kept.
#[must_use]
pub(crate) fn kept(answer: &Answer) -> Option<record::Answer> {
    Some(match answer {
        Answer::Choice(id) => record::Answer::Choice(id.clone()),
        Answer::Choices(ids) => record::Answer::Choices(ids.iter().cloned().collect()),
        Answer::Pain(score) => record::Answer::Pain(Pain::new(*score)?),
        Answer::Number(number) => record::Answer::Number {
            thousandths: i64::from(number.thousandths),
            unit: match number.unit {
                NumberUnit::Kilograms => Unit::Kg,
                NumberUnit::Pounds => Unit::Lb,
                NumberUnit::Centimetres => Unit::Cm,
                NumberUnit::Inches => Unit::Inch,
                NumberUnit::Weeks => Unit::Weeks,
            },
        },
        Answer::NotSure => record::Answer::NotSure,
    })
}

/// Answers from a record. An answer that this version's questions do not offer is left out, so that the
/// question is asked again.
#[must_use]
pub(crate) fn from_record(answered: &[Answered]) -> Answers {
    let mut answers = Answers::default();
    for one in answered {
        match Step::from_id(&one.question) {
            Some(Step::Question(id)) => {
                if let Some(Ok(answer)) =
                    read(&one.answer).map(|answer| question(id).accept(answer))
                {
                    answers.give(id, answer);
                }
            }
            Some(Step::Interruption(_)) | None => {}
        }
    }
    // After the answers, since a changed answer takes a "go on" back.
    for one in answered {
        if let Some(Step::Interruption(interruption)) = Step::from_id(&one.question) {
            answers.confirm(interruption);
        }
    }
    answers
}

/// A kept answer. `None`: this version does not know its unit.
#[must_use]
pub(crate) fn read(answer: &record::Answer) -> Option<Answer> {
    Some(match answer {
        record::Answer::Choice(id) => Answer::Choice(id.clone()),
        record::Answer::Choices(ids) => Answer::Choices(ids.iter().cloned().collect()),
        record::Answer::Pain(pain) => Answer::Pain(pain.rating()),
        record::Answer::Number { thousandths, unit } => Answer::Number(Number {
            thousandths: u32::try_from(*thousandths).ok()?,
            unit: match unit {
                Unit::Kg => NumberUnit::Kilograms,
                Unit::Lb => NumberUnit::Pounds,
                Unit::Cm => NumberUnit::Centimetres,
                Unit::Inch => NumberUnit::Inches,
                Unit::Weeks => NumberUnit::Weeks,
                _ => return None,
            },
        }),
        record::Answer::NotSure => Answer::NotSure,
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::walk::ids::QuestionId;
    use crate::walk::interruptions::InterruptionId;

    #[test]
    fn a_draft_gives_back_every_answer_and_every_go_on() {
        let mut answers: Answers = [
            (QuestionId::Mass, Answer::choice("type_it")),
            (
                QuestionId::MassNumber,
                Answer::Number(Number::from_decimal(6.5, NumberUnit::Pounds).unwrap()),
            ),
            (QuestionId::Back, Answer::Pain(0)),
            (QuestionId::BackState, Answer::choice("flare")),
            (QuestionId::SignsFull, Answer::choices([])),
            (QuestionId::Kneel, Answer::NotSure),
        ]
        .into_iter()
        .collect();
        answers.confirm(InterruptionId::FlarePain0);
        assert_eq!(from_record(&to_record(&answers)), answers);
    }

    #[test]
    fn an_answer_that_is_no_longer_offered_is_asked_again() {
        let old = vec![Answered {
            question: "start".to_owned(),
            answer: record::Answer::Choice("cellar".to_owned()),
        }];
        assert!(from_record(&old).is_empty());
    }
}
