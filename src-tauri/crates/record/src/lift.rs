//! A lift that was done, or decided against.

use minicbor::{Decode, Encode};

use crate::frame::{Keyed, Record};
use crate::{Advice, BodyToday, Moment, Task, Way};

/// One entry of the history.
#[derive(Debug, Clone, PartialEq, Eq, Encode, Decode)]
#[cbor(map)]
pub struct Lift {
    /// When it was kept.
    #[n(1)]
    pub at: Moment,
    /// Short title in the user's language of that day.
    #[n(2)]
    pub title: String,
    /// What was to be lifted.
    #[n(3)]
    pub task: Task,
    /// The body at that time.
    #[n(4)]
    pub body: BodyToday,
    /// The advice that was shown.
    #[n(5)]
    pub advice: Advice,
    /// Done (`true`) or left (`false`).
    #[n(6)]
    pub done: bool,
    /// The way used, if done.
    #[n(7)]
    pub way: Option<Way>,
    /// Text id of what was done instead, if left.
    #[n(8)]
    pub instead: Option<String>,
}

impl Record for Lift {
    const KIND: u32 = 6;
}

impl Keyed for Lift {
    fn knows(path: &[u32]) -> bool {
        match path {
            [key] => (1..=8).contains(key),
            [3, inner @ ..] => Task::knows(inner),
            [4, inner @ ..] => BodyToday::knows(inner),
            [5, inner @ ..] => Advice::knows(inner),
            _ => false,
        }
    }
}
