//! Questions, options and answers in words.

use super::answer::{Answer, MILLIMETRES_PER_INCH, Number, NumberUnit};
use super::ids::QuestionId;
use super::interruptions::InterruptionId;
use super::question::{Choice, Label, Note};
use super::questions::question;
use crate::words::{Rounding, Units, Words, message_id};

/// Words and units of one reader.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Reader<'a> {
    /// Words in their language.
    pub(crate) words: &'a Words,
    /// Their units.
    pub(crate) units: Units,
}

/// The id of a message about a question: `question-back-state`, with `-hint`, `-why`, `-row` or an option's
/// id after it.
#[must_use]
pub(crate) fn word_id(question: QuestionId, part: Option<&str>) -> String {
    let id = message_id("question", question.id());
    match part {
        Some(part) => message_id(&id, part),
        None => id,
    }
}

/// The id of a message of an interruption.
#[must_use]
pub(crate) fn interruption_word_id(interruption: InterruptionId, part: &str) -> String {
    message_id(&message_id("interruption", interruption.id()), part)
}

impl Reader<'_> {
    /// The question itself.
    #[must_use]
    pub(crate) fn title(&self, question: QuestionId) -> String {
        self.words.text(&word_id(question, None))
    }

    /// A message about the question that not every question has.
    #[must_use]
    pub(crate) fn optional(&self, question: QuestionId, part: &str) -> Option<String> {
        let id = word_id(question, Some(part));
        self.words.has(&id).then(|| self.words.text(&id))
    }

    /// The short label on the check page.
    #[must_use]
    pub(crate) fn row_label(&self, question: QuestionId) -> String {
        self.words.text(&word_id(question, Some("row")))
    }

    /// An option.
    #[must_use]
    pub(crate) fn option(&self, question: QuestionId, option: &Choice) -> String {
        match option.label {
            Label::Own => self.words.text(&word_id(question, Some(option.id))),
            Label::AsHeavyAs(grams) => self.with_mass("answer-as-heavy-as", grams),
            Label::Sign => self.words.text(&message_id("sign", option.id)),
        }
    }

    /// The remark under an option.
    #[must_use]
    pub(crate) fn note(&self, question: QuestionId, option: &Choice) -> Option<String> {
        match option.note {
            Note::None => self.optional(question, &format!("{}-note", option.id)),
            Note::Mass(grams) => Some(self.mass(grams)),
            Note::UpTo(grams) => Some(self.with_mass("mass-up-to", grams)),
            Note::Over(grams) => Some(self.with_mass("mass-over", grams)),
        }
    }

    /// A mass in the reader's unit.
    #[must_use]
    pub(crate) fn mass(&self, grams: u32) -> String {
        self.words
            .mass(f64::from(grams) / 1000.0, self.units, Rounding::Nearest)
    }

    /// A message with one mass in it.
    #[must_use]
    pub(crate) fn with_mass(&self, id: &str, grams: u32) -> String {
        self.words.format(id, &[("mass", self.mass(grams).into())])
    }

    /// A pain score.
    #[must_use]
    pub(crate) fn pain(&self, score: u8) -> String {
        self.words.format("answer-pain", &[("pain", score.into())])
    }

    /// An answer in words.
    #[must_use]
    pub(crate) fn answer(&self, id: QuestionId, answer: &Answer) -> String {
        let options = question(id).kind.options();
        let named = |chosen: &str| {
            options
                .iter()
                .find(|option| option.id == chosen)
                .map_or_else(
                    || self.words.text("answer-not-known"),
                    |option| self.option(id, option),
                )
        };
        match answer {
            Answer::Choice(chosen) => named(chosen),
            Answer::Choices(chosen) if chosen.is_empty() => self.words.text("answer-none"),
            Answer::Choices(chosen) => {
                let listed = options.iter().filter(|option| chosen.contains(option.id));
                listed
                    .map(|option| self.option(id, option))
                    .collect::<Vec<_>>()
                    .join("; ")
            }
            Answer::Pain(score) => self.pain(*score),
            Answer::Number(number) => self.number(*number),
            Answer::NotSure if self.words.has(&word_id(id, Some("not-sure"))) => {
                self.words.text("answer-not-said")
            }
            Answer::NotSure => self.words.text("answer-not-sure"),
        }
    }

    /// A number that was typed: a mass or a stature in the reader's unit, or weeks.
    #[must_use]
    pub(crate) fn number(&self, number: Number) -> String {
        match number.unit {
            NumberUnit::Kilograms => self
                .words
                .mass(number.value(), self.units, Rounding::Nearest),
            NumberUnit::Pounds => {
                let kilograms = number.value() * crate::words::KILOGRAMS_PER_POUND;
                self.words.mass(kilograms, self.units, Rounding::Nearest)
            }
            NumberUnit::Centimetres => self.words.stature(number.value(), self.units),
            NumberUnit::Inches => self
                .words
                .stature(number.value() * MILLIMETRES_PER_INCH / 10.0, self.units),
            NumberUnit::Weeks => self.words.weeks(number.value()),
        }
    }
}
