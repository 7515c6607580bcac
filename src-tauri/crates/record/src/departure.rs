//! What left this device: what it was, how it left and to whom. Never what was in it.

use minicbor::{Decode, Encode};

use crate::Moment;
use crate::codes::codes;
use crate::frame::{Keyed, Record};

/// One thing that left. It stays on this device: nothing that is handed over or taken out holds one.
#[derive(Debug, Clone, PartialEq, Eq, Encode, Decode)]
#[cbor(map)]
pub struct Departure {
    /// When it left first.
    #[n(1)]
    pub at: Moment,
    /// What left.
    #[n(2)]
    pub what: DepartureWhat,
    /// The ways in which it left, in the order in which they came.
    #[n(3)]
    pub how: Vec<DepartureHow>,
    /// Who can open it. Left out: everybody, it left in the open.
    #[n(4)]
    pub seal: Option<Seal>,
    /// What the other was called here, if it was for somebody who is paired.
    #[n(5)]
    pub to: Option<String>,
    /// Whom it is about: the alias in a plan, the code in a care plan, the name of whose history it is. Left out: the
    /// user, or nobody.
    #[n(6)]
    pub about: Option<String>,
    /// The version of a plan or of care plans.
    #[n(7)]
    pub version: Option<u32>,
    /// From how many days. Left out: from the beginning, or it has no days.
    #[n(8)]
    pub days: Option<u32>,
    /// Whether names of things went along with a history.
    #[n(9)]
    pub with_notes: Option<bool>,
    /// How many entries of a history or of a log were in it.
    #[n(10)]
    pub entries: Option<u32>,
}

impl Record for Departure {
    const KIND: u32 = 26;
}

impl Keyed for Departure {
    fn knows(path: &[u32]) -> bool {
        matches!(path, [1..=10])
    }
}

codes! {
    /// What left.
    DepartureWhat {
        /// A plan, sealed.
        Plan = 1 "plan",
        /// A history, sealed.
        History = 2 "history",
        /// Care plans of one person, sealed.
        CarePlan = 3 "care_plan",
        /// A plan on a page of paper.
        PlanPage = 4 "plan_page",
        /// A look back as a note to paste.
        Note = 5 "note",
        /// A look back as a page.
        Page = 6 "page",
        /// A look back as a table (CSV).
        Table = 7 "table",
        /// A look back as an HL7 FHIR document.
        Document = 8 "document",
        /// The log of a shift.
        Shift = 9 "shift",
        /// A text about one move, for the office.
        Office = 10 "office",
        /// The card of this device: its name and its public keys.
        Card = 11 "card",
    }
}

codes! {
    /// How it left.
    DepartureHow {
        /// Shown on the screen for somebody else, or to be copied by hand.
        Shown = 1 "shown",
        /// Saved as a file outside the app.
        Saved = 2 "saved",
        /// Copied for another app.
        Copied = 3 "copied",
        /// Handed to another app.
        Shared = 4 "shared",
        /// Given to a printer.
        Printed = 5 "printed",
        /// The user said that it was handed over.
        Told = 6 "told",
    }
}

codes! {
    /// Who can open what left.
    Seal {
        /// One paired device alone.
        Device = 1 "device",
        /// Whoever has the eight words.
        Code = 2 "code",
    }
}
