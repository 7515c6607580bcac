//! Care plans on their way to a worker: what they say of each move of one person.

use minicbor::{Decode, Encode};

use crate::frame::{Keyed, Record};
use crate::{Day, Identity, Moment};

/// The care plans of one person, in one numbered version.
#[derive(Debug, Clone, PartialEq, Eq, Encode, Decode)]
#[cbor(map)]
pub struct PersonPlan {
    /// The same in all versions.
    #[n(1)]
    pub id: Identity,
    /// From 1.
    #[n(2)]
    pub version: u32,
    /// When this version was made.
    #[n(3)]
    pub made_at: Moment,
    /// The person's code. Not a name, unless the employer allows it.
    #[n(4)]
    pub code: String,
    /// Alias of the device that made it.
    #[n(5)]
    pub by: String,
    /// What it says, one entry a move; at least one.
    #[n(6)]
    pub moves: Vec<PlannedMove>,
}

/// What it says of one move.
#[derive(Debug, Clone, PartialEq, Eq, Encode, Decode)]
#[cbor(map)]
pub struct PlannedMove {
    /// Text id of the move.
    #[n(1)]
    pub what: String,
    /// Text ids of the ways it names; at least one. Naming the belt or a lift by hand allows it where sources
    /// differ.
    #[n(2)]
    pub ways: Vec<String>,
    /// Workers it asks for.
    #[n(3)]
    pub workers: Option<u32>,
    /// Text ids of the equipment that these ways take.
    #[n(4)]
    pub equipment: Vec<String>,
    /// Text id of who issued it.
    #[n(5)]
    pub issued_by: String,
    /// The day on it.
    #[n(6)]
    pub issued_on: Day,
    /// The last day on which it holds as it is.
    #[n(7)]
    pub review_on: Option<Day>,
}

/// Care plans that were sent or taken: enough to tell an older version, and another person's.
#[derive(Debug, Clone, PartialEq, Eq, Encode, Decode)]
#[cbor(map)]
pub struct PlanHead {
    /// The plan.
    #[n(1)]
    pub id: Identity,
    /// The newest version that was sent or taken.
    #[n(2)]
    pub version: u32,
    /// When that version was made.
    #[n(3)]
    pub made_at: Moment,
    /// The code in it.
    #[n(4)]
    pub code: String,
    /// What the sender was called here. `None`: made here, or under a code and not verified.
    #[n(5)]
    pub from: Option<String>,
    /// Whether it was made on this device.
    #[n(6)]
    pub is_own: bool,
}

impl Record for PersonPlan {
    const KIND: u32 = 25;
}

impl Keyed for PersonPlan {
    fn knows(path: &[u32]) -> bool {
        match path {
            [key] => (1..=6).contains(key),
            [6, inner @ ..] => PlannedMove::knows(inner),
            _ => false,
        }
    }
}

impl Keyed for PlannedMove {
    fn knows(path: &[u32]) -> bool {
        matches!(path, [1..=7])
    }
}

impl Keyed for PlanHead {
    fn knows(path: &[u32]) -> bool {
        matches!(path, [1..=6])
    }
}
