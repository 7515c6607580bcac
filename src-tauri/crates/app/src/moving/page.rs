//! Pages of the walk before a move, as they go over the wire.

use super::card::MoveCard;
use super::flow::MoveWalk;
use super::ids::MoveQuestion as Q;
use super::options::{Offer, TRAINING, not_sure, offer};
use super::people::Who;
use super::text;
use crate::walk::page::{OptionView, PlaceView, QuestionView};
use crate::walk::text::Reader;
use crate::walk::wire::WireAnswer;
use chrono::NaiveDate;
use lifting::transfer::equipment::Equipment;
use serde::Serialize;
use std::collections::BTreeSet;

/// The id under which the training is asked.
pub(crate) const TRAINED: &str = "trained";

/// What to look at when somebody is on the floor.
const LOOK: [&str; 4] = [
    "care-unhurt-look-1",
    "care-unhurt-look-2",
    "care-unhurt-look-3",
    "care-unhurt-look-4",
];

/// One page.
#[derive(Debug, Clone, Serialize)]
#[serde(tag = "page", rename_all = "snake_case")]
pub(crate) enum MovePage {
    /// A question.
    Question(Box<MoveQuestionPage>),
    /// The worker is asked about today first.
    Own(OwnPage),
    /// The answer.
    Advice(Box<MoveAdvicePage>),
}

/// A question.
#[derive(Debug, Clone, Serialize)]
pub(crate) struct MoveQuestionPage {
    /// Who it is about.
    pub(crate) person: Who,
    /// The move in words.
    pub(crate) move_text: String,
    /// The question.
    pub(crate) question: QuestionView,
    /// What is to be confirmed, a line each.
    pub(crate) facts: Vec<String>,
    /// Where it stands.
    pub(crate) place: PlaceView,
    /// The question before it.
    pub(crate) back: Option<&'static str>,
}

/// The worker first.
#[derive(Debug, Clone, Serialize)]
pub(crate) struct OwnPage {
    /// Who it is about.
    pub(crate) person: Who,
    /// The move in words.
    pub(crate) move_text: String,
    /// The heading.
    pub(crate) title: String,
    /// Why, and that it stays private.
    pub(crate) text: Vec<String>,
    /// What one tap says at once; absent when the questions have to be gone through.
    pub(crate) quick: Option<String>,
    /// Whether the whole list of signs comes first.
    pub(crate) sign: bool,
    /// The question before it.
    pub(crate) back: Option<&'static str>,
}

/// The answer.
#[derive(Debug, Clone, Serialize)]
pub(crate) struct MoveAdvicePage {
    /// Who it is about.
    pub(crate) person: Who,
    /// The move's id.
    pub(crate) what: &'static str,
    /// The move in words.
    pub(crate) move_text: String,
    /// Whether a care plan covers it.
    pub(crate) planned: bool,
    /// The card.
    pub(crate) card: MoveCard,
    /// The question before it.
    pub(crate) back: Option<&'static str>,
}

/// The page of a question.
#[must_use]
pub(crate) fn question_page(
    reader: Reader<'_>,
    person: Who,
    walk: &MoveWalk<'_>,
    question: Q,
    today: NaiveDate,
    trained: &BTreeSet<String>,
) -> MoveQuestionPage {
    let own = walk.own();
    let at = own.iter().position(|other| *other == question);
    let planned = walk.plan.is_some();
    let title = match (question, planned) {
        (Q::Same, true) => reader.words.text("care-same-planned"),
        _ => reader.words.text(&text::word_id(question, None)),
    };
    MoveQuestionPage {
        move_text: text::move_name(reader, walk.what.id()),
        facts: match question {
            Q::Same => text::noted_lines(reader, walk, today),
            Q::Unhurt => LOOK.iter().map(|id| reader.words.text(id)).collect(),
            _ => Vec::new(),
        },
        question: QuestionView {
            id: question.id(),
            kind: match offer(question, walk.what, planned) {
                Offer::One(_) => "choice",
                Offer::Any(_) => "choices",
            },
            title,
            hint: optional(reader, question, "hint"),
            why: optional(reader, question, "why"),
            options: offer(question, walk.what, planned)
                .ids()
                .iter()
                .map(|id| OptionView {
                    id,
                    label: text::option(reader, question, id),
                    note: untrained(reader, question, id, trained),
                    picture: None,
                })
                .collect(),
            value: walk.answer(question).map(WireAnswer::from),
            not_sure: not_sure(question),
            not_sure_text: None,
            number: None,
            group: "move",
        },
        place: PlaceView {
            at: at.map_or(own.len(), |at| at + 1),
            of: own.len(),
        },
        back: walk.before(Some(question)).map(Q::id),
        person,
    }
}

fn optional(reader: Reader<'_>, question: Q, part: &str) -> Option<String> {
    let id = text::word_id(question, Some(part));
    reader.words.has(&id).then(|| reader.words.text(&id))
}

/// Equipment that may not be used is marked where it is ticked.
fn untrained(
    reader: Reader<'_>,
    question: Q,
    id: &str,
    trained: &BTreeSet<String>,
) -> Option<String> {
    if question != Q::Here {
        return optional(reader, question, &format!("{id}-note"));
    }
    let needs = Equipment::from_id(id).is_some_and(|piece| TRAINING.contains(&piece));
    (needs && !trained.contains(id)).then(|| reader.words.text("care-untrained"))
}

/// The page that asks what the worker is trained on.
#[must_use]
pub(crate) fn trained_page(
    reader: Reader<'_>,
    person: Who,
    walk: &MoveWalk<'_>,
) -> MoveQuestionPage {
    let own = walk.own();
    MoveQuestionPage {
        person,
        move_text: text::move_name(reader, walk.what.id()),
        facts: Vec::new(),
        question: trained_question(reader, None),
        place: PlaceView {
            at: own.len(),
            of: own.len(),
        },
        back: walk.before(walk.stands_at()).map(Q::id),
    }
}

/// The question about training.
#[must_use]
pub(crate) fn trained_question(
    reader: Reader<'_>,
    kept: Option<&BTreeSet<String>>,
) -> QuestionView {
    QuestionView {
        id: TRAINED,
        kind: "choices",
        title: reader.words.text("care-trained"),
        hint: Some(reader.words.text("care-trained-hint")),
        why: None,
        options: TRAINING
            .iter()
            .map(|piece| OptionView {
                id: piece.id(),
                label: text::equipment_name(reader, piece.id()),
                note: None,
                picture: None,
            })
            .collect(),
        value: kept.map(|ids| WireAnswer {
            choices: Some(ids.iter().cloned().collect()),
            ..WireAnswer::default()
        }),
        not_sure: false,
        not_sure_text: None,
        number: None,
        group: "move",
    }
}
