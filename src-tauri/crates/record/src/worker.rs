//! What the user has told about themselves as somebody who moves people.

use minicbor::{Decode, Encode};

use crate::frame::{Keyed, Record};

/// The user as a worker. It stays on the device.
#[derive(Debug, Clone, PartialEq, Eq, Default, Encode, Decode)]
#[cbor(map)]
pub struct Worker {
    /// Text ids of the equipment they are trained on; empty: asked, none.
    #[n(1)]
    pub trained: Option<Vec<String>>,
}

impl Record for Worker {
    const KIND: u32 = 22;
}

impl Keyed for Worker {
    fn knows(path: &[u32]) -> bool {
        matches!(path, [1])
    }
}
