//! People as they go over the wire.

use super::plan_age::is_old;
use super::text;
use crate::walk::text::Reader;
use chrono::NaiveDate;
use lifting::transfer::client::Move;
use record::CarePerson;
use serde::Serialize;

/// Pictures that a person can be told by, in the order of offering. Drawn by us; none means anything.
pub(crate) const PICTURES: [&str; 16] = [
    "kettle", "leaf", "boat", "star", "house", "sun", "key", "cup", "tree", "bird", "fish", "moon",
    "bell", "pear", "kite", "lamp",
];

/// Who it is about: on top of every page of the walk.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub(crate) struct Who {
    /// The person's id.
    pub(crate) id: i64,
    /// The code.
    pub(crate) code: String,
    /// The picture.
    pub(crate) picture: String,
}

impl Who {
    /// From what is kept.
    #[must_use]
    pub(crate) fn of(id: i64, person: &CarePerson) -> Self {
        Self {
            id,
            code: person.code.clone(),
            picture: person.picture.clone(),
        }
    }
}

/// A move that can be chosen for a person.
#[derive(Debug, Clone, Serialize)]
pub(crate) struct MoveRow {
    /// The move's id; also the name of its picture.
    pub(crate) what: &'static str,
    /// Its name.
    pub(crate) text: String,
    /// What the care plan says, or since when it is noted.
    pub(crate) note: Option<String>,
    /// Whether a care plan covers it.
    pub(crate) planned: bool,
    /// Said when that plan is past its date.
    pub(crate) old: Option<String>,
}

/// The moves, those with a care plan or a note first, each group in its own order.
#[must_use]
pub(crate) fn moves(reader: Reader<'_>, person: &CarePerson, today: NaiveDate) -> Vec<MoveRow> {
    let mut rows: Vec<MoveRow> = Move::ALL
        .iter()
        .map(|what| {
            let noted = super::facts::noted(person, *what);
            MoveRow {
                what: what.id(),
                text: text::move_name(reader, what.id()),
                note: noted.and_then(|noted| text::move_line(reader, noted, today)),
                planned: noted.is_some_and(|noted| noted.plan.is_some()),
                old: noted
                    .and_then(|noted| noted.plan.as_ref())
                    .filter(|plan| is_old(plan, today))
                    .map(|_| reader.words.text("care-plan-old-short")),
            }
        })
        .collect();
    // The sort keeps the order of the moves among those that are alike.
    rows.sort_by_key(|row| (!row.planned, row.note.is_none()));
    rows
}
