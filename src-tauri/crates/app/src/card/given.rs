//! An advice as the card needs it: given just now, or kept long ago and read back with the limit and the
//! rules of that day.

use super::RULE_VERSION;
use lifting::advise::advice::{Advice, Alternative, Caution, Outcome, RuledOut};
use lifting::quantity::Kilograms;
use lifting::reason::{Reason, ReasonId, Value};

/// What is to be shown.
#[derive(Debug, Clone, PartialEq)]
pub struct Given {
    /// What to do.
    pub outcome: Outcome,
    /// Ways that may not be used, with reasons.
    pub ruled_out: Vec<RuledOut>,
    /// What to heed, most serious first.
    pub cautions: Vec<Caution>,
    /// Other ways to get it done, in the order to offer them.
    pub alternatives: Vec<Alternative>,
    /// Every reason met on the way.
    pub reasons: Vec<Reason>,
    /// The published limit for healthy adults; 0 where it does not cover the task, `None` where no lift was judged.
    pub limit: Option<Kilograms>,
    /// The most for that day, with a plan whose level in practice was known.
    pub heaviest: Option<Kilograms>,
    /// Which rules gave it.
    pub rule_version: String,
}

impl From<&Advice> for Given {
    fn from(advice: &Advice) -> Self {
        Self {
            outcome: advice.outcome.clone(),
            ruled_out: advice.ruled_out.clone(),
            cautions: advice.cautions.clone(),
            alternatives: advice.alternatives.clone(),
            reasons: advice.reasons.clone(),
            limit: advice
                .limit
                .as_ref()
                .map(|limit| Kilograms::from(limit.governing_rwl())),
            heaviest: advice.heaviest_today,
            rule_version: RULE_VERSION.to_owned(),
        }
    }
}

impl Given {
    /// Where the mass is only guessed, everything that follows from its upper end is said with "may".
    pub(super) fn marked_where_guessed(mut self) -> Self {
        if self
            .reasons
            .iter()
            .any(|reason| reason.id == ReasonId::MassUnknown)
        {
            // An index of 3 or more is said of the lower end, and holds for all of the guess.
            let upper_end = |reason: &&mut Reason| reason.id != ReasonId::IndexOverThree;
            for reason in self.reasons.iter_mut().filter(upper_end) {
                reason.values.push(("guess", Value::Id("yes")));
            }
        }
        self
    }
}
