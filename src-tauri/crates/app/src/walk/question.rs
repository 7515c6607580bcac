//! What a question is: data, so that the order, the options and the pages all come from one place.

use super::answer::Answer;
use super::flow::Walk;
use super::measure::Measure;
use thiserror::Error;

/// Which part of the walk a question belongs to.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Group {
    /// Warning signs.
    Signs,
    /// The person, kept for weeks.
    About,
    /// The thing to lift.
    Task,
    /// The body today, kept for hours.
    Body,
}

impl Group {
    /// The id on the wire.
    #[must_use]
    pub(crate) const fn id(self) -> &'static str {
        match self {
            Self::Signs => "signs",
            Self::About => "about",
            Self::Task => "task",
            Self::Body => "body",
        }
    }
}

/// Where the words of an option come from.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Label {
    /// A text of its own.
    Own,
    /// "As heavy as" a mass in grams.
    AsHeavyAs(u32),
    /// The plain question of a warning sign.
    Sign,
}

/// A short remark under an option.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Note {
    /// None.
    None,
    /// A mass in grams, shown in the user's unit.
    Mass(u32),
    /// "Up to" a mass in grams.
    UpTo(u32),
    /// "More than" a mass in grams.
    Over(u32),
}

/// One thing that can be chosen.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) struct Choice {
    /// Its stable id.
    pub(crate) id: &'static str,
    /// Its words.
    pub(crate) label: Label,
    /// The remark under it.
    pub(crate) note: Note,
    /// Whether there is a picture, named like the option.
    pub(crate) picture: bool,
}

impl Choice {
    /// A choice in words only.
    #[must_use]
    pub(crate) const fn words(id: &'static str) -> Self {
        Self {
            id,
            label: Label::Own,
            note: Note::None,
            picture: false,
        }
    }

    /// A warning sign.
    #[must_use]
    pub(crate) const fn sign(id: &'static str) -> Self {
        Self {
            id,
            label: Label::Sign,
            note: Note::None,
            picture: false,
        }
    }

    /// A guess at a mass in grams.
    #[must_use]
    pub(crate) const fn as_heavy_as(id: &'static str, grams: u32) -> Self {
        Self {
            id,
            label: Label::AsHeavyAs(grams),
            note: Note::None,
            picture: false,
        }
    }

    /// A choice with a picture.
    #[must_use]
    pub(crate) const fn pictured(id: &'static str) -> Self {
        Self {
            id,
            label: Label::Own,
            note: Note::None,
            picture: true,
        }
    }

    /// The same choice with a remark.
    #[must_use]
    pub(crate) const fn with_note(self, note: Note) -> Self {
        Self { note, ..self }
    }
}

/// How a question is answered.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Kind {
    /// One of these; one tap answers and goes on.
    Choice(&'static [Choice]),
    /// Any of these, or none.
    Choices(&'static [Choice]),
    /// A pain score, 0 to 10.
    Pain,
    /// A number.
    Number(Measure),
}

impl Kind {
    /// The id on the wire.
    #[must_use]
    pub(crate) const fn id(self) -> &'static str {
        match self {
            Self::Choice(_) => "choice",
            Self::Choices(_) => "choices",
            Self::Pain => "pain",
            Self::Number(_) => "number",
        }
    }

    /// The options; empty for pain and numbers.
    #[must_use]
    pub(crate) const fn options(self) -> &'static [Choice] {
        match self {
            Self::Choice(options) | Self::Choices(options) => options,
            Self::Pain | Self::Number(_) => &[],
        }
    }
}

/// A question.
#[derive(Clone, Copy)]
pub(crate) struct Question {
    /// Its part of the walk.
    pub(crate) group: Group,
    /// How it is answered.
    pub(crate) kind: Kind,
    /// Whether "I'm not sure" is offered.
    pub(crate) not_sure: bool,
    /// Whether it is asked in this walk, given the answers so far.
    pub(crate) asked: fn(&Walk<'_>) -> bool,
}

/// Why an answer was not taken.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Error)]
pub(crate) enum AnswerRefused {
    /// The question does not offer this.
    #[error("the question does not offer this answer")]
    NotOffered,
    /// The number is outside the range.
    #[error("the number is outside the range")]
    OutOfRange,
}

impl Question {
    /// Takes an answer that this question offers.
    ///
    /// # Errors
    /// [`AnswerRefused`] when it is not one of the options, of another kind, or out of range.
    pub(crate) fn accept(&self, answer: Answer) -> Result<Answer, AnswerRefused> {
        let offers = |id: &str| self.kind.options().iter().any(|option| option.id == id);
        match (&answer, self.kind) {
            (Answer::NotSure, _) if self.not_sure => Ok(answer),
            (Answer::Choice(id), Kind::Choice(_)) if offers(id) => Ok(answer),
            (Answer::Choices(ids), Kind::Choices(_)) if ids.iter().all(|id| offers(id)) => {
                Ok(answer)
            }
            (Answer::Pain(score), Kind::Pain) => {
                if *score <= 10 {
                    Ok(answer)
                } else {
                    Err(AnswerRefused::OutOfRange)
                }
            }
            (Answer::Number(number), Kind::Number(measure)) => {
                let (min, max, _) = measure
                    .range(number.unit)
                    .ok_or(AnswerRefused::NotOffered)?;
                if (min..=max).contains(&number.value()) {
                    Ok(answer)
                } else {
                    Err(AnswerRefused::OutOfRange)
                }
            }
            _ => Err(AnswerRefused::NotOffered),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::super::answer::{Number, NumberUnit};
    use super::super::ids::QuestionId;
    use super::super::questions::question;
    use super::*;

    fn kilograms(value: f64) -> Answer {
        Answer::Number(Number::from_decimal(value, NumberUnit::Kilograms).unwrap())
    }

    #[test]
    fn a_question_takes_what_it_offers() {
        let start = question(QuestionId::Start);
        assert!(start.accept(Answer::choice("floor")).is_ok());
        assert_eq!(
            start.accept(Answer::choice("cellar")),
            Err(AnswerRefused::NotOffered)
        );
        assert_eq!(
            start.accept(Answer::Pain(3)),
            Err(AnswerRefused::NotOffered)
        );
    }

    #[test]
    fn numbers_outside_the_range_are_refused_by_range_not_by_kind() {
        let mass = question(QuestionId::MassNumber);
        assert!(mass.accept(kilograms(6.5)).is_ok());
        assert_eq!(mass.accept(kilograms(0.0)), Err(AnswerRefused::OutOfRange));
        assert_eq!(
            mass.accept(kilograms(200.1)),
            Err(AnswerRefused::OutOfRange)
        );
        let weeks = Answer::Number(Number::from_decimal(3.0, NumberUnit::Weeks).unwrap());
        assert_eq!(mass.accept(weeks), Err(AnswerRefused::NotOffered));
    }

    #[test]
    fn pain_is_a_whole_number_up_to_ten() {
        let back = question(QuestionId::Back);
        assert!(back.accept(Answer::Pain(10)).is_ok());
        assert_eq!(
            back.accept(Answer::Pain(11)),
            Err(AnswerRefused::OutOfRange)
        );
    }
}
