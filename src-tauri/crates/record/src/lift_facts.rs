//! What a look back needs of a lift: the record without its reasons, for reading thousands at once.

use minicbor::Decode;

use crate::frame::{Keyed, Record, read};
use crate::{BodyToday, Lift, Mass, Moment, Outcome, RecordError, Way};

/// The figures of a lift. Read from the bytes of a [`Lift`], never written.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct LiftFacts {
    /// When it was kept.
    pub at: Moment,
    /// Short title in the user's language of that day.
    pub title: String,
    /// How heavy it was.
    pub mass: Option<Mass>,
    /// How many lifts.
    pub reps: Option<u32>,
    /// The body at that time.
    pub body: BodyToday,
    /// What the advice came to.
    pub outcome: Outcome,
    /// The way that was shown first.
    pub advised: Option<Way>,
    /// Text ids of the cautions shown.
    pub cautions: Vec<String>,
    /// Version of the rules that gave it.
    pub rule_version: String,
    /// Done (`true`) or left (`false`).
    pub done: bool,
    /// The way used, if done.
    pub way: Option<Way>,
}

impl LiftFacts {
    /// Reads the figures out of a lift's bytes. The whole of them is checked to be canonical; of the advice, only
    /// what is needed is read.
    ///
    /// # Errors
    /// As [`Record::from_bytes`].
    pub fn from_bytes(bytes: &[u8]) -> Result<Self, RecordError> {
        let part: LiftPart = read(bytes, Lift::KIND, Lift::knows)?;
        Ok(Self {
            at: part.at,
            title: part.title,
            mass: part.task.mass,
            reps: part.task.reps,
            body: part.body,
            outcome: part.advice.outcome,
            advised: part.advice.ways.first().copied(),
            cautions: part.advice.cautions,
            rule_version: part.advice.rule_version,
            done: part.done,
            way: part.way,
        })
    }
}

/// The keys of [`Lift`] that are read; the others are skipped.
#[derive(Decode)]
#[cbor(map)]
struct LiftPart {
    #[n(1)]
    at: Moment,
    #[n(2)]
    title: String,
    #[n(3)]
    task: TaskPart,
    #[n(4)]
    body: BodyToday,
    #[n(5)]
    advice: AdvicePart,
    #[n(6)]
    done: bool,
    #[n(7)]
    way: Option<Way>,
}

/// As [`LiftPart`], of [`crate::Task`].
#[derive(Decode)]
#[cbor(map)]
struct TaskPart {
    #[n(2)]
    mass: Option<Mass>,
    #[n(12)]
    reps: Option<u32>,
}

/// As [`LiftPart`], of [`crate::Advice`].
#[derive(Decode)]
#[cbor(map)]
struct AdvicePart {
    #[n(1)]
    outcome: Outcome,
    #[n(3)]
    ways: Vec<Way>,
    #[n(5)]
    cautions: Vec<String>,
    #[n(11)]
    rule_version: String,
}
