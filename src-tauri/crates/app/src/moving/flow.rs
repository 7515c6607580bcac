//! The order of the walk before a move: answers so far in, next question out. Pure.

use super::ids::MoveQuestion;
use crate::walk::answer::Answer;
use lifting::transfer::client::Move;
use lifting::transfer::moves::{is_limb, is_seated};
use record::CarePlan;
use std::collections::BTreeMap;

use MoveQuestion as Q;

/// Answers by question.
pub(crate) type Given = BTreeMap<MoveQuestion, Answer>;

/// A walk as it stands.
#[derive(Debug, Clone, Copy)]
pub(crate) struct MoveWalk<'a> {
    /// The move.
    pub(crate) what: Move,
    /// What the care plan says of it, if it says anything.
    pub(crate) plan: Option<&'a CarePlan>,
    /// Answers given in this walk.
    pub(crate) given: &'a Given,
    /// What was noted of the person before. It holds once it was confirmed for today.
    pub(crate) kept: &'a Given,
}

impl<'a> MoveWalk<'a> {
    /// The answer that holds.
    #[must_use]
    pub(crate) fn answer(&self, question: MoveQuestion) -> Option<&'a Answer> {
        self.given.get(&question).or_else(|| {
            let holds = match self.given.get(&Q::Same) {
                Some(Answer::Choice(id)) if id == "missing" => question != Q::Here,
                Some(Answer::Choice(id)) => id == "as_planned" || id == "as_noted",
                _ => false,
            };
            holds.then(|| self.kept.get(&question)).flatten()
        })
    }

    /// Whether this option was chosen.
    #[must_use]
    pub(crate) fn chose(&self, question: MoveQuestion, option: &str) -> bool {
        matches!(self.answer(question), Some(Answer::Choice(chosen)) if chosen == option)
    }

    /// Whether the answer is one of these.
    fn chose_any(&self, question: MoveQuestion, options: &[&str]) -> bool {
        options.iter().any(|option| self.chose(question, option))
    }

    /// Whether the question was answered with something else than this option.
    fn not(&self, question: MoveQuestion, option: &str) -> bool {
        self.answer(question).is_some() && !self.chose(question, option)
    }

    /// Whether the person is not today as the care plan says.
    #[must_use]
    pub(crate) fn differs_from_plan(&self) -> bool {
        self.plan.is_some() && self.chose(Q::Same, "differs")
    }

    /// Whether an answer ends the walk: what is left to ask can change nothing.
    #[must_use]
    pub(crate) fn is_ended(&self) -> bool {
        let new_signs =
            matches!(self.answer(Q::Signs), Some(Answer::Choices(ticked)) if !ticked.is_empty());
        self.what == Move::Catch
            || (self.what == Move::FloorToChair && self.not(Q::Unhurt, "unhurt"))
            || new_signs
            || self.chose(Q::New, "they_say_no")
            || (self.differs_from_plan() && self.given.contains_key(&Q::Differs))
    }

    /// Whether a question belongs to this walk, by the answers so far.
    #[must_use]
    pub(crate) fn asks(&self, question: MoveQuestion) -> bool {
        match question {
            Q::Unhurt => self.what == Move::FloorToChair,
            Q::New => self.what != Move::Catch,
            Q::Signs => {
                self.chose(Q::New, "in_them") || self.answer(Q::New) == Some(&Answer::NotSure)
            }
            Q::Same => self.asks_same(),
            Q::Differs => self.differs_from_plan(),
            // Asked on demand only.
            Q::Harder => self.given.contains_key(&Q::Harder),
            _ => !self.differs_from_plan() && self.asks_fact(question),
        }
    }

    /// What is known before the walk is confirmed. What was told in the walk itself needs no confirming.
    fn asks_same(&self) -> bool {
        let told = self.given.keys().any(|question| *question > Q::Differs);
        self.what != Move::Catch
            && (self.plan.is_some()
                || self.given.contains_key(&Q::Same)
                || (!told && !self.kept.is_empty()))
    }

    /// What the rows of the move need to know.
    fn asks_fact(&self, question: MoveQuestion) -> bool {
        match self.what {
            Move::Catch => false,
            Move::FloorToChair => match question {
                Q::Independent => true,
                Q::Follows => self.chose(Q::Independent, "yes"),
                Q::Here => self.not(Q::Independent, "yes") || self.not(Q::Follows, "yes"),
                _ => false,
            },
            Move::HoldLimb => {
                matches!(question, Q::Limb | Q::Follows | Q::Mass | Q::Hold | Q::Here)
            }
            what if is_seated(what) => self.asks_seated(question),
            what if is_limb(what) => match question {
                Q::Able => true,
                Q::Follows | Q::Mass | Q::Here => self.not(Q::Able, "fully"),
                _ => false,
            },
            what => self.asks_in_bed(question, what),
        }
    }

    fn asks_seated(&self, question: MoveQuestion) -> bool {
        let follows = self.chose(Q::Follows, "yes");
        let part = self.chose(Q::Legs, "part");
        match question {
            Q::Legs => true,
            Q::Follows | Q::Here => self.not(Q::Legs, "full"),
            Q::Arms => follows && self.not(Q::Legs, "full") && (!part || self.names("slide_board")),
            Q::Help => follows && part,
            Q::Mass => part && self.chose_any(Q::Help, &["tenth", "quarter", "half"]),
            _ => false,
        }
    }

    fn asks_in_bed(&self, question: MoveQuestion, what: Move) -> bool {
        let helps = self.chose(Q::Able, "partly");
        let guided = matches!(what, Move::UpInChair | Move::SitUp);
        let by_hand = what == Move::UpInChair && self.names("manual_lift");
        match question {
            Q::Able => true,
            Q::Follows => guided && helps,
            Q::Arms => guided && helps && self.chose(Q::Follows, "yes"),
            Q::Help => by_hand && helps,
            Q::Reclines => what == Move::UpInChair && self.not(Q::Able, "fully"),
            Q::Mass => self.not(Q::Able, "fully") && (!guided || by_hand),
            Q::Here => self.not(Q::Able, "fully"),
            _ => false,
        }
    }

    /// Whether the care plan names this way.
    fn names(&self, way: &str) -> bool {
        self.plan
            .is_some_and(|plan| plan.ways.iter().any(|named| named == way))
    }

    /// The first question without an answer. `None`: nothing is left to ask.
    #[must_use]
    pub(crate) fn stands_at(&self) -> Option<MoveQuestion> {
        if self.is_ended() {
            return None;
        }
        Q::ALL
            .iter()
            .copied()
            .find(|question| self.asks(*question) && self.answer(*question).is_none())
    }

    /// The questions asked in this walk, in order: those answered in it, and the next one.
    #[must_use]
    pub(crate) fn own(&self) -> Vec<MoveQuestion> {
        let next = self.stands_at();
        Q::ALL
            .iter()
            .copied()
            .filter(|question| {
                self.asks(*question)
                    && (self.given.contains_key(question) || Some(*question) == next)
            })
            .collect()
    }

    /// The question asked before this one in this walk.
    #[must_use]
    pub(crate) fn before(&self, question: Option<MoveQuestion>) -> Option<MoveQuestion> {
        self.own()
            .into_iter()
            .rfind(|other| Some(*other) != question && question.is_none_or(|at| *other < at))
    }
}
