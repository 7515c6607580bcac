//! Who this device is to others.

use minicbor::{Decode, Encode};

use crate::frame::{Keyed, Record};
use crate::{Moment, SecretBytes};

/// The secret keys of this device, and what its holder is called on others.
#[derive(Debug, Clone, PartialEq, Eq, Encode, Decode)]
#[cbor(map)]
pub struct Device {
    /// Both secret keys, 64 bytes, as the hand-off writes them.
    #[n(1)]
    pub keys: SecretBytes,
    /// What the holder calls themselves; `None` until they have said.
    #[n(2)]
    pub alias: Option<String>,
    /// When the keys were made.
    #[n(3)]
    pub made_at: Moment,
}

impl Record for Device {
    const KIND: u32 = 11;
}

impl Keyed for Device {
    fn knows(path: &[u32]) -> bool {
        matches!(path, [1..=3])
    }
}
