//! A parcel that came in, between recognising and accepting.

use handoff::{Opened, OpenedUnpaired};
use record::{History, Paired, PersonPlan, Plan};

/// What came in.
pub(crate) enum Inbox {
    /// The bytes of a parcel under a code that was not typed yet.
    Sealed(Vec<u8>),
    /// Open, and waiting for the person's word.
    Open(Box<Parcel>),
}

/// A parcel that was opened and understood.
pub(crate) struct Parcel {
    /// What it carries.
    pub(crate) carried: Carried,
    /// Who vouches for it.
    pub(crate) proof: Proof,
    /// When it was sealed, by the sender's clock, in milliseconds since 1970.
    pub(crate) issued_at_ms: i64,
}

/// What a parcel carries.
pub(crate) enum Carried {
    /// A plan.
    Plan(Box<Plan>),
    /// A history.
    History(History),
    /// Care plans of one person.
    Care(PersonPlan),
}

/// Who vouches for a parcel.
pub(crate) enum Proof {
    /// A paired device.
    Paired {
        /// It.
        paired: Paired,
        /// What was opened, without its payload.
        opened: Opened,
    },
    /// Nobody: whoever knew the code.
    Code(OpenedUnpaired),
}

impl Proof {
    /// What the sender is called here, if they are verified.
    #[must_use]
    pub(crate) fn name(&self) -> Option<&str> {
        match self {
            Self::Paired { paired, .. } => Some(&paired.name),
            Self::Code(_) => None,
        }
    }
}
