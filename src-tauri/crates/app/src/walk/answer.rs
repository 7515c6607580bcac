//! One answer to one question, and all answers given so far.

use super::ids::QuestionId;
use super::interruptions::InterruptionId;
use std::collections::{BTreeMap, BTreeSet};

/// The unit of a number that was typed.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum NumberUnit {
    /// Kilograms.
    Kilograms,
    /// Pounds (avoirdupois).
    Pounds,
    /// Centimetres.
    Centimetres,
    /// Inches.
    Inches,
    /// Weeks.
    Weeks,
}

impl NumberUnit {
    /// The id on the wire.
    #[must_use]
    pub(crate) const fn id(self) -> &'static str {
        match self {
            Self::Kilograms => "kg",
            Self::Pounds => "lb",
            Self::Centimetres => "cm",
            Self::Inches => "in",
            Self::Weeks => "weeks",
        }
    }

    /// The unit with this id.
    #[must_use]
    pub(crate) fn from_id(id: &str) -> Option<Self> {
        match id {
            "kg" => Some(Self::Kilograms),
            "lb" => Some(Self::Pounds),
            "cm" => Some(Self::Centimetres),
            "in" => Some(Self::Inches),
            "weeks" => Some(Self::Weeks),
            _ => None,
        }
    }
}

/// Grams in one pound (international yard and pound agreement, 1959: 0.45359237 kg exactly).
pub(crate) const GRAMS_PER_POUND: f64 = 453.592_37;
/// Millimetres in one inch (same agreement: 25.4 mm exactly).
pub(crate) const MILLIMETRES_PER_INCH: f64 = 25.4;

/// A number with its unit, in thousandths so that what was typed is kept to the digit.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) struct Number {
    /// Thousandths of the unit.
    pub(crate) thousandths: u32,
    /// The unit.
    pub(crate) unit: NumberUnit,
}

impl Number {
    /// From a decimal number, rounded to thousandths. `None` when negative, not a number or over four million.
    #[must_use]
    pub(crate) fn from_decimal(value: f64, unit: NumberUnit) -> Option<Self> {
        let scaled = (value * 1000.0).round();
        if (0.0..=4.0e9).contains(&scaled) {
            #[allow(
                clippy::cast_possible_truncation,
                clippy::cast_sign_loss,
                reason = "range checked above"
            )]
            let thousandths = scaled as u32;
            Some(Self { thousandths, unit })
        } else {
            None
        }
    }

    /// The number in its own unit.
    #[must_use]
    pub(crate) fn value(self) -> f64 {
        f64::from(self.thousandths) / 1000.0
    }

    /// The mass in grams, rounded up so that no load is taken lighter than it was said to be. `None`: no mass.
    #[must_use]
    pub(crate) fn grams(self) -> Option<u32> {
        match self.unit {
            NumberUnit::Kilograms => Some(self.thousandths),
            NumberUnit::Pounds => {
                let grams = (f64::from(self.thousandths) / 1000.0 * GRAMS_PER_POUND).ceil();
                #[allow(
                    clippy::cast_possible_truncation,
                    clippy::cast_sign_loss,
                    reason = "at most 1.95e9"
                )]
                let grams = grams as u32;
                Some(grams)
            }
            NumberUnit::Centimetres | NumberUnit::Inches | NumberUnit::Weeks => None,
        }
    }

    /// The length in millimetres, to the nearest. `None`: no length.
    #[must_use]
    pub(crate) fn millimetres(self) -> Option<u32> {
        let millimetres = match self.unit {
            NumberUnit::Centimetres => self.value() * 10.0,
            NumberUnit::Inches => self.value() * MILLIMETRES_PER_INCH,
            NumberUnit::Kilograms | NumberUnit::Pounds | NumberUnit::Weeks => return None,
        };
        #[allow(
            clippy::cast_possible_truncation,
            clippy::cast_sign_loss,
            reason = "at most 1.1e8"
        )]
        let whole = millimetres.round() as u32;
        Some(whole)
    }
}

/// One answer.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(crate) enum Answer {
    /// One of the options.
    Choice(String),
    /// Any of the options; empty means "none of these".
    Choices(BTreeSet<String>),
    /// Pain, 0 to 10.
    Pain(u8),
    /// A number with its unit.
    Number(Number),
    /// "I'm not sure".
    NotSure,
}

impl Answer {
    /// A choice by its id.
    #[must_use]
    pub(crate) fn choice(id: &str) -> Self {
        Self::Choice(id.to_owned())
    }

    /// A set of choices by their ids.
    #[must_use]
    pub(crate) fn choices<'a>(ids: impl IntoIterator<Item = &'a str>) -> Self {
        Self::Choices(ids.into_iter().map(str::to_owned).collect())
    }
}

/// Answers given so far, and interruptions that were answered with "go on".
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub(crate) struct Answers {
    answers: BTreeMap<QuestionId, Answer>,
    confirmed: BTreeSet<InterruptionId>,
}

impl Answers {
    /// The answer to one question.
    #[must_use]
    pub(crate) fn of(&self, question: QuestionId) -> Option<&Answer> {
        self.answers.get(&question)
    }

    /// Whether this question was answered.
    #[must_use]
    pub(crate) fn has(&self, question: QuestionId) -> bool {
        self.answers.contains_key(&question)
    }

    /// Keeps an answer. A changed answer takes back every "go on" that rested on the old one.
    pub(crate) fn give(&mut self, question: QuestionId, answer: Answer) {
        if self.answers.get(&question) != Some(&answer) {
            self.confirmed
                .retain(|interruption| !interruption.concerns().contains(&question));
        }
        self.answers.insert(question, answer);
    }

    /// Forgets an answer.
    pub(crate) fn forget(&mut self, question: QuestionId) {
        self.answers.remove(&question);
        self.confirmed
            .retain(|interruption| !interruption.concerns().contains(&question));
    }

    /// Notes that an interruption was answered with "go on".
    pub(crate) fn confirm(&mut self, interruption: InterruptionId) {
        self.confirmed.insert(interruption);
    }

    /// Whether an interruption was answered with "go on".
    #[must_use]
    pub(crate) fn is_confirmed(&self, interruption: InterruptionId) -> bool {
        self.confirmed.contains(&interruption)
    }

    /// All answers, in the order of asking.
    pub(crate) fn iter(&self) -> impl Iterator<Item = (QuestionId, &Answer)> {
        self.answers
            .iter()
            .map(|(question, answer)| (*question, answer))
    }

    /// All interruptions that were answered with "go on".
    pub(crate) fn confirmations(&self) -> impl Iterator<Item = InterruptionId> + '_ {
        self.confirmed.iter().copied()
    }

    /// Whether nothing was answered yet.
    #[must_use]
    pub(crate) fn is_empty(&self) -> bool {
        self.answers.is_empty() && self.confirmed.is_empty()
    }

    /// Takes over every answer of `other`; its answers win.
    pub(crate) fn take_over(&mut self, other: &Self) {
        for (question, answer) in other.iter() {
            self.answers.insert(question, answer.clone());
        }
        self.confirmed.extend(other.confirmed.iter().copied());
    }
}

impl FromIterator<(QuestionId, Answer)> for Answers {
    fn from_iter<I: IntoIterator<Item = (QuestionId, Answer)>>(answers: I) -> Self {
        Self {
            answers: answers.into_iter().collect(),
            confirmed: BTreeSet::new(),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_typed_number_keeps_its_digits() {
        let typed = Number::from_decimal(6.5, NumberUnit::Kilograms).unwrap();
        assert_eq!(typed.thousandths, 6500);
        assert_eq!(typed.value().to_string(), "6.5");
    }

    #[test]
    fn pounds_are_taken_as_grams_rounded_up() {
        // 5 lb = 2267.96185 g.
        let typed = Number::from_decimal(5.0, NumberUnit::Pounds).unwrap();
        assert_eq!(typed.grams(), Some(2268));
    }

    #[test]
    fn a_length_is_taken_in_millimetres_and_a_mass_is_none() {
        // 66 in = 1676.4 mm.
        let inches = Number::from_decimal(66.0, NumberUnit::Inches).unwrap();
        assert_eq!(inches.millimetres(), Some(1676));
        let centimetres = Number::from_decimal(167.5, NumberUnit::Centimetres).unwrap();
        assert_eq!(centimetres.millimetres(), Some(1675));
        assert_eq!(centimetres.grams(), None);
        let pounds = Number::from_decimal(5.0, NumberUnit::Pounds).unwrap();
        assert_eq!(pounds.millimetres(), None);
    }

    #[test]
    fn impossible_numbers_are_not_taken() {
        for value in [-0.1, f64::NAN, f64::INFINITY, 5.0e6] {
            assert_eq!(Number::from_decimal(value, NumberUnit::Kilograms), None);
        }
    }

    #[test]
    fn a_changed_answer_takes_back_the_go_on_that_rested_on_it() {
        let mut answers = Answers::default();
        answers.give(QuestionId::Back, Answer::Pain(0));
        answers.give(QuestionId::BackState, Answer::choice("flare"));
        answers.confirm(InterruptionId::FlarePain0);

        answers.give(QuestionId::Back, Answer::Pain(0));
        assert!(
            answers.is_confirmed(InterruptionId::FlarePain0),
            "the same answer again changes nothing"
        );

        answers.give(QuestionId::Back, Answer::Pain(1));
        assert!(!answers.is_confirmed(InterruptionId::FlarePain0));
    }
}
