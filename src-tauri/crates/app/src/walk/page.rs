//! Pages as they go over the wire.

use super::wire::WireAnswer;
use crate::card::AdviceCard;
use serde::Serialize;

/// One page of the walk.
#[derive(Debug, Clone, Serialize)]
#[serde(tag = "page", rename_all = "snake_case")]
pub(crate) enum Page {
    /// A question.
    Question(QuestionPage),
    /// "Is that right?"
    Interruption(InterruptionPage),
    /// All answers to look over.
    Check(CheckPage),
    /// The advice.
    Advice(AdvicePage),
    /// No advice can be given here; who can.
    Refuse(RefusePage),
    /// Nothing more to ask; go home.
    Done,
    /// Nothing more to ask about the worker; the walk before a move goes on.
    Move,
}

/// A question.
#[derive(Debug, Clone, Serialize)]
pub(crate) struct QuestionPage {
    /// The question.
    pub(crate) question: QuestionView,
    /// Where it stands.
    pub(crate) place: PlaceView,
    /// The page before it: a question's id, `check`, or none.
    pub(crate) back: Option<String>,
    /// What the walk is about.
    pub(crate) title_bar: String,
}

/// The question itself.
#[derive(Debug, Clone, Serialize)]
pub(crate) struct QuestionView {
    /// Its id.
    pub(crate) id: &'static str,
    /// `choice`, `choices`, `pain` or `number`.
    pub(crate) kind: &'static str,
    /// The question in words.
    pub(crate) title: String,
    /// How to answer it.
    pub(crate) hint: Option<String>,
    /// Why it is asked.
    pub(crate) why: Option<String>,
    /// Its options; empty for pain and numbers.
    pub(crate) options: Vec<OptionView>,
    /// What was answered before.
    pub(crate) value: Option<WireAnswer>,
    /// Whether "I'm not sure" is offered.
    pub(crate) not_sure: bool,
    /// What the button says instead, where "I'm not sure" is not what it means.
    pub(crate) not_sure_text: Option<String>,
    /// The number that is asked for.
    pub(crate) number: Option<NumberView>,
    /// `task`, `body`, `about` or `signs`.
    pub(crate) group: &'static str,
}

/// An option.
#[derive(Debug, Clone, Serialize)]
pub(crate) struct OptionView {
    /// Its id.
    pub(crate) id: &'static str,
    /// Its words.
    pub(crate) label: String,
    /// A remark.
    pub(crate) note: Option<String>,
    /// The name of its picture.
    pub(crate) picture: Option<&'static str>,
}

/// A number that is asked for.
#[derive(Debug, Clone, Serialize)]
pub(crate) struct NumberView {
    /// Its unit.
    pub(crate) unit: &'static str,
    /// The smallest taken.
    pub(crate) min: f64,
    /// The largest taken.
    pub(crate) max: f64,
    /// The step offered.
    pub(crate) step: f64,
    /// The label of the field.
    pub(crate) label: String,
}

/// Where a question stands.
#[derive(Debug, Clone, Copy, Serialize)]
pub(crate) struct PlaceView {
    /// Its number, from 1.
    pub(crate) at: usize,
    /// How many there are, as far as can be told by now.
    pub(crate) of: usize,
}

/// "Is that right?"
#[derive(Debug, Clone, Serialize)]
pub(crate) struct InterruptionPage {
    /// Its id.
    pub(crate) id: &'static str,
    /// What was noticed.
    pub(crate) title: String,
    /// More about it.
    pub(crate) text: String,
    /// The button that goes on.
    pub(crate) go_on: String,
    /// The button that changes an answer.
    pub(crate) change: String,
    /// The question that "change" opens.
    pub(crate) question: &'static str,
    /// The page before it.
    pub(crate) back: Option<String>,
    /// What the walk is about.
    pub(crate) title_bar: String,
}

/// All answers to look over.
#[derive(Debug, Clone, Serialize)]
pub(crate) struct CheckPage {
    /// The heading.
    pub(crate) title: String,
    /// The answers.
    pub(crate) rows: Vec<Row>,
    /// The button.
    pub(crate) button: String,
    /// The page before it.
    pub(crate) back: Option<String>,
}

/// One answer in words.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub(crate) struct Row {
    /// The question that "change" opens.
    pub(crate) question: &'static str,
    /// What was asked, in short.
    pub(crate) label: String,
    /// What was answered.
    pub(crate) text: String,
}

/// The advice.
#[derive(Debug, Clone, Serialize)]
pub(crate) struct AdvicePage {
    /// The card.
    pub(crate) card: AdviceCard,
    /// The saved task it was asked for.
    pub(crate) saved: Option<i64>,
}

/// No advice can be given here; who can.
#[derive(Debug, Clone, Serialize)]
pub(crate) struct RefusePage {
    /// The heading.
    pub(crate) title: String,
    /// Why, one sentence each.
    pub(crate) text: Vec<String>,
    /// Who can help.
    pub(crate) who: Vec<Who>,
    /// The page before it.
    pub(crate) back: Option<String>,
}

/// Somebody who can help.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub(crate) struct Who {
    /// The id.
    pub(crate) id: String,
    /// Who, in words.
    pub(crate) text: String,
}
