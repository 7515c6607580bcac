//! A task that comes again, such as the laundry basket.

use minicbor::{Decode, Encode};

use crate::frame::{Keyed, Record};
use crate::{Answered, Task};

/// A task kept under a name.
#[derive(Debug, Clone, PartialEq, Eq, Encode, Decode)]
#[cbor(map)]
pub struct SavedTask {
    /// The user's name for it.
    #[n(1)]
    pub name: String,
    /// What is lifted, from where, how often.
    #[n(2)]
    pub task: Task,
    /// The answers it came from, to start the next walk with.
    #[n(3)]
    pub answers: Vec<Answered>,
}

impl Record for SavedTask {
    const KIND: u32 = 10;
}

impl Keyed for SavedTask {
    fn knows(path: &[u32]) -> bool {
        match path {
            [key] => (1..=3).contains(key),
            [2, inner @ ..] => Task::knows(inner),
            _ => false,
        }
    }
}
