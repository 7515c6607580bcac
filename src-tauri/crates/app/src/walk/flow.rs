//! The order of the walk: answers so far in, next step out. Pure: no clock, no store, no words.

use super::answer::{Answer, Answers};
use super::ids::QuestionId;
use super::interruptions::InterruptionId;
use super::question::Group;
use super::questions::question;
use crate::convert::mass;

/// What a walk is for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Purpose {
    /// Advice on one lift.
    Lift,
    /// The questions about the person, asked again from the settings.
    About,
    /// The worker's own body today, before somebody is moved.
    Own,
}

/// One page to answer.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Step {
    /// A question.
    Question(QuestionId),
    /// "Is that right?"
    Interruption(InterruptionId),
}

impl Step {
    /// The stable id.
    #[must_use]
    pub(crate) const fn id(self) -> &'static str {
        match self {
            Self::Question(question) => question.id(),
            Self::Interruption(interruption) => interruption.id(),
        }
    }

    /// The step with this id.
    #[must_use]
    pub(crate) fn from_id(id: &str) -> Option<Self> {
        QuestionId::from_id(id)
            .map(Self::Question)
            .or_else(|| InterruptionId::from_id(id).map(Self::Interruption))
    }
}

/// Where a question stands among those of its walk.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) struct Place {
    /// Its number, from 1.
    pub(crate) at: usize,
    /// How many there are, as far as can be told by now.
    pub(crate) of: usize,
}

/// A walk as it stands.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Walk<'a> {
    /// What it is for.
    pub(crate) purpose: Purpose,
    /// Answers given in this walk. They win over kept ones.
    pub(crate) given: &'a Answers,
    /// Answers kept from before that still hold: about the person, the body today, a saved task.
    pub(crate) kept: &'a Answers,
    /// Whether the whole list of warning signs is due.
    pub(crate) whole_list_due: bool,
    /// Most lifts in one go, where a plan that is followed says so.
    pub(crate) times_a_bout: Option<u32>,
}

impl<'a> Walk<'a> {
    /// The answer that holds for a question.
    #[must_use]
    pub(crate) fn answer(&self, question: QuestionId) -> Option<&'a Answer> {
        self.given.of(question).or_else(|| self.kept.of(question))
    }

    /// Whether a question has an answer that holds.
    #[must_use]
    pub(crate) fn has(&self, question: QuestionId) -> bool {
        self.answer(question).is_some()
    }

    /// Whether this option of a question was chosen.
    #[must_use]
    pub(crate) fn chose(&self, question: QuestionId, option: &str) -> bool {
        matches!(self.answer(question), Some(Answer::Choice(chosen)) if chosen == option)
    }

    /// Whether this option is among those ticked.
    #[must_use]
    pub(crate) fn ticked(&self, question: QuestionId, option: &str) -> bool {
        matches!(self.answer(question), Some(Answer::Choices(ticked)) if ticked.contains(option))
    }

    /// Whether a question was answered with "I'm not sure".
    #[must_use]
    pub(crate) fn is_not_sure(&self, question: QuestionId) -> bool {
        self.answer(question) == Some(&Answer::NotSure)
    }

    /// Whether the walk is for a lift.
    #[must_use]
    pub(crate) fn is_for_a_lift(&self) -> bool {
        self.purpose == Purpose::Lift
    }

    /// Whether the walk asks about the body and the signs of today.
    #[must_use]
    pub(crate) fn is_about_today(&self) -> bool {
        matches!(self.purpose, Purpose::Lift | Purpose::Own)
    }

    /// Whether a question belongs to this walk, answered or not.
    #[must_use]
    pub(crate) fn asks(&self, id: QuestionId) -> bool {
        (question(id).asked)(self)
    }

    /// The heaviest the load can be by the answers so far, in grams. `None`: not asked yet, or no upper end.
    #[must_use]
    pub(crate) fn highest_grams(&self) -> Option<u32> {
        mass::of(self).and_then(|mass| mass.highest_grams())
    }

    /// All pages of this walk in order, answered or not, with those whose answer was kept.
    #[must_use]
    pub(crate) fn steps(&self) -> Vec<Step> {
        let mut steps = Vec::new();
        for id in QuestionId::ALL {
            if self.asks(*id) {
                steps.push(Step::Question(*id));
            }
            steps.extend(
                InterruptionId::ALL
                    .iter()
                    .filter(|interruption| interruption.after() == *id && interruption.is_met(self))
                    .map(|interruption| Step::Interruption(*interruption)),
            );
        }
        steps
    }

    /// Where the walk stands: the first page without an answer. `None`: all are answered.
    #[must_use]
    pub(crate) fn stands_at(&self) -> Option<Step> {
        self.steps().into_iter().find(|step| match step {
            Step::Question(question) => !self.has(*question),
            Step::Interruption(interruption) => !self.given.is_confirmed(*interruption),
        })
    }

    /// The page before this one among those of this walk; pages whose answer was kept are passed over.
    #[must_use]
    pub(crate) fn before(&self, step: Option<Step>) -> Option<Step> {
        let steps = self.steps();
        let until = match step {
            Some(step) => steps.iter().position(|other| *other == step)?,
            None => steps.len(),
        };
        steps
            .into_iter()
            .take(until)
            .rev()
            .find(|other| match other {
                Step::Question(question) => self.is_own(*question),
                Step::Interruption(_) => false,
            })
    }

    /// Where a question stands among those of this walk.
    #[must_use]
    pub(crate) fn place(&self, id: QuestionId) -> Place {
        let own: Vec<QuestionId> = QuestionId::ALL
            .iter()
            .copied()
            .filter(|other| *other == id || (self.asks(*other) && self.is_own(*other)))
            .collect();
        let at = own
            .iter()
            .position(|other| *other == id)
            .map_or(own.len(), |index| index + 1);
        Place { at, of: own.len() }
    }

    /// Whether a question is asked in this walk rather than kept from before.
    #[must_use]
    pub(crate) fn is_own(&self, question: QuestionId) -> bool {
        self.given.has(question) || !self.kept.has(question)
    }

    /// Whether every question of a group is answered.
    #[must_use]
    pub(crate) fn is_complete(&self, group: Group) -> bool {
        QuestionId::ALL
            .iter()
            .filter(|id| question(**id).group == group && self.asks(**id))
            .all(|id| self.has(*id))
    }
}

/// Whether a walk is for a lift: the condition of questions that every lift asks.
#[must_use]
pub(crate) fn for_a_lift(walk: &Walk<'_>) -> bool {
    walk.is_for_a_lift()
}

/// Whether a walk asks about today: the condition of questions about the body.
#[must_use]
pub(crate) fn about_today(walk: &Walk<'_>) -> bool {
    walk.is_about_today()
}
