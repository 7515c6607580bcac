//! What can leave the phone in the open: a note, a table, a document for clinical software. Made from plain facts, so
//! that each form says the same.

mod csv;
mod fhir;
mod gather;
mod note;
mod page;
mod plan;
mod practice;
mod received;
mod sheet;

pub(crate) use csv::table;
pub(crate) use fhir::bundle;
pub(crate) use gather::{date_of, gather};
pub(crate) use note::{Passage, date_text, note, passages};
pub(crate) use page::page;
pub(crate) use practice::Practised;
pub(crate) use received::gather_received;
pub(crate) use sheet::{Figure, Modules, Paper, Sheet};

use chrono::{DateTime, FixedOffset, NaiveDate};
use lifting::review::Review;
use record::{Outcome, Plan, Way};

/// The facts that leave.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Report {
    /// Whose it is, by the name they have here; `None`: of whoever uses this phone.
    pub(crate) of: Option<String>,
    /// When it was made.
    pub(crate) made: DateTime<FixedOffset>,
    /// The first day it looks at; `None` for everything.
    pub(crate) since: Option<NaiveDate>,
    /// Lifts and decisions against, oldest first.
    pub(crate) told: Vec<Told>,
    /// What they say together.
    pub(crate) review: Review,
    /// The plan behind them.
    pub(crate) plan: Option<Plan>,
    /// Practice with the plan, if one was followed.
    pub(crate) practice: Option<Practised>,
}

/// One lift, or a decision against one.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Told {
    /// When, in the time of that place.
    pub(crate) at: DateTime<FixedOffset>,
    /// What, in the words of that day.
    pub(crate) title: String,
    /// The advice that was shown.
    pub(crate) advised: Outcome,
    /// The version of the rules behind it; empty where it was not handed over.
    pub(crate) rules: String,
    /// Whether it was done.
    pub(crate) done: bool,
    /// The way, if it was told.
    pub(crate) way: Option<Way>,
    /// The way that was shown first.
    pub(crate) first: Option<Way>,
    /// Whether an aid or help was advised first; `None`: not told.
    pub(crate) aid_first: Option<bool>,
    /// Lowest and highest mass it may have had, in grams; the same when it was known.
    pub(crate) mass_g: Option<(u32, u32)>,
    /// How many times.
    pub(crate) times: u32,
    /// Pain before it, 0 to 10.
    pub(crate) before: Before,
    /// Worst pain while lifting, 0 to 10.
    pub(crate) during: Option<u8>,
    /// Pain the next morning, 0 to 10.
    pub(crate) next_morning: Option<u8>,
    /// Whether it was a flare-up day.
    pub(crate) flare: bool,
}

/// Pain before a lift, 0 to 10, region by region; `None` where it was not told.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub(crate) struct Before {
    pub(crate) back: Option<u8>,
    pub(crate) knee_left: Option<u8>,
    pub(crate) knee_right: Option<u8>,
    pub(crate) hip_left: Option<u8>,
    pub(crate) hip_right: Option<u8>,
    pub(crate) shoulders: Option<u8>,
}

impl Before {
    /// The regions with their ids, in a fixed order.
    pub(crate) const fn regions(self) -> [(&'static str, Option<u8>); 6] {
        [
            ("back", self.back),
            ("knee_left", self.knee_left),
            ("knee_right", self.knee_right),
            ("hip_left", self.hip_left),
            ("hip_right", self.hip_right),
            ("shoulders", self.shoulders),
        ]
    }

    /// The worst of them.
    pub(crate) fn worst(self) -> Option<u8> {
        self.regions()
            .into_iter()
            .filter_map(|(_, pain)| pain)
            .max()
    }
}
