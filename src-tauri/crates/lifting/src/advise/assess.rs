//! Steps 3 to 6 for one task, without the search for changes: what stands against it, and which ways are left.

use super::advice::Ranked;
use super::facts::Facts;
use super::ranking;
use super::request::Request;
use crate::limits::niosh::TaskLimit;
use crate::reason::Reason;
use crate::rules::ways::Verdict;
use crate::rules::{plan, task, ways};
use crate::way::Way;

/// What one task comes to.
#[derive(Debug, Clone)]
pub(crate) struct Assessment {
    /// Reasons not to lift it as it stands.
    pub(crate) against: Vec<Reason>,
    /// Reasons to change it first.
    pub(crate) change_first: Vec<Reason>,
    /// Ways left, ranked; `None` when none may come first.
    pub(crate) ways: Option<Ranked>,
    /// Whether ways are left, but none that may come first.
    pub(crate) second_best: bool,
    /// Every way's verdict.
    pub(crate) verdicts: Vec<Verdict>,
    /// Ways that yielded to an equal one for variety.
    pub(crate) yielded: Vec<Reason>,
    /// Reasons of plan and task.
    pub(crate) reasons: Vec<Reason>,
    /// The published limit.
    pub(crate) limit: TaskLimit,
    /// Over the guideline weight.
    pub(crate) over_guide: bool,
}

impl Assessment {
    /// The ways, when it may be lifted as it stands.
    pub(crate) fn lift(&self) -> Option<&Ranked> {
        self.lift_once_changed()
            .filter(|_| self.change_first.is_empty())
    }

    /// The ways, when at most reasons to change it first stand against it.
    pub(crate) fn lift_once_changed(&self) -> Option<&Ranked> {
        self.ways.as_ref().filter(|_| self.against.is_empty())
    }
}

/// Assesses one task by rules alone.
pub(crate) fn assess(request: &Request, facts: &Facts<'_>) -> Assessment {
    assess_with(request, facts, |_| None)
}

/// Assesses one task for the request's person, plan and habits. `modelled` may order ways that are equal by
/// trade rules; it changes nothing else.
pub(crate) fn assess_with(
    request: &Request,
    facts: &Facts<'_>,
    modelled: impl Fn(Way) -> Option<(f64, f64)>,
) -> Assessment {
    let plan = plan::check(facts);
    let task = task::check(facts);
    let verdicts = ways::judge(facts);
    let ranked = ranking::rank(&verdicts, &request.recent, modelled);
    let against: Vec<Reason> = plan.against.iter().chain(&task.against).cloned().collect();
    let reasons = plan
        .notes
        .into_iter()
        .chain(task.notes)
        .chain(against.iter().cloned())
        .chain(task.change_first.iter().cloned())
        .collect();
    Assessment {
        second_best: ranked.ways.is_none() && verdicts.iter().any(Verdict::usable),
        ways: ranked.ways,
        yielded: ranked.yielded,
        change_first: task.change_first,
        limit: task.limit,
        over_guide: task.over_guide,
        against,
        verdicts,
        reasons,
    }
}
