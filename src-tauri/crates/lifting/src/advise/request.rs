//! What is asked.

use crate::body::Person;
use crate::plan::Plan;
use crate::progress::History;
use crate::task::Task;
use crate::way::Way;
use std::collections::BTreeMap;

/// How often each way was used in the last two weeks.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct RecentUse(pub BTreeMap<Way, u32>);

impl RecentUse {
    /// Fewer lifts than this say nothing about habit. House rule.
    const ENOUGH: u32 = 4;

    /// Whether this way was used for most of them.
    #[must_use]
    pub fn mostly(&self, way: Way) -> bool {
        let total: u32 = self
            .0
            .values()
            .fold(0, |sum, count| sum.saturating_add(*count));
        let used = self.0.get(&way).copied().unwrap_or(0);
        total >= Self::ENOUGH && used > total / 2
    }
}

/// One question: this person, this task, this day.
#[derive(Debug, Clone, PartialEq)]
pub struct Request {
    /// Who would lift, and how they are today.
    pub person: Person,
    /// What is to be lifted.
    pub task: Task,
    /// The clinician's plan, if there is one.
    pub plan: Option<Plan>,
    /// The last sessions, if known.
    pub history: Option<History>,
    /// Ways used lately.
    pub recent: RecentUse,
    /// Goes of lifting done today, as far as they are known; a go nobody noted cannot be counted.
    pub bouts_today: u32,
}

impl Request {
    /// A question without plan or history.
    #[must_use]
    pub const fn new(person: Person, task: Task) -> Self {
        Self {
            person,
            task,
            plan: None,
            history: None,
            recent: RecentUse(BTreeMap::new()),
            bouts_today: 0,
        }
    }
}
