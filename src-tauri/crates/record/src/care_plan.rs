//! What a care plan says of one move, and where it came from.

use minicbor::{Decode, Encode};

use crate::codes::codes;
use crate::frame::Keyed;
use crate::{Identity, Moment};

/// The care plan for one move of one person.
#[derive(Debug, Clone, PartialEq, Eq, Encode, Decode)]
#[cbor(map)]
pub struct CarePlan {
    /// Text ids of the ways it names; at least one.
    #[n(1)]
    pub ways: Vec<String>,
    /// Workers it asks for.
    #[n(2)]
    pub workers: Option<u32>,
    /// Text ids of the equipment that these ways take.
    #[n(3)]
    pub equipment: Vec<String>,
    /// Text id of who issued it.
    #[n(4)]
    pub issued_by: String,
    /// The day on it, in days since 1970-01-01; may be negative.
    #[n(5)]
    pub issued_day: i32,
    /// When it was taken in.
    #[n(6)]
    pub entered_at: Moment,
    /// How it came.
    #[n(7)]
    pub came_by: CameBy,
    /// The last day on which it holds as it is, in days since 1970-01-01. `None`: it does not say.
    #[n(8)]
    pub review_day: Option<i32>,
    /// The plan that came with the parcel, for one that came in a parcel.
    #[n(9)]
    pub plan_id: Option<Identity>,
}

impl Keyed for CarePlan {
    fn knows(path: &[u32]) -> bool {
        matches!(path, [1..=9])
    }
}

codes! {
    /// How a care plan came into the app.
    CameBy {
        /// Typed in from paper.
        Typed = 1 "typed",
        /// In a sealed parcel of a paired device.
        Parcel = 2 "parcel",
    }
}
