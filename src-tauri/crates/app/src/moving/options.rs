//! What each question offers, and which answers it takes.

use super::ids::MoveQuestion;
use crate::walk::answer::Answer;
use crate::walk::question::AnswerRefused;
use lifting::transfer::client::{ClientSign, Move};
use lifting::transfer::equipment::Equipment;
use lifting::transfer::limit::Hindrance;
use lifting::transfer::moves::equipment_of;

/// The option that stands for a second worker, and for a third beside the second.
pub(crate) const SECOND: &str = "second";
/// See [`SECOND`].
pub(crate) const THIRD: &str = "third";

/// Bands of the person's mass with the upper end in grams. House rule; the last is what more is taken as.
pub(crate) const BANDS: [(&str, u32); 9] = [
    ("up_45", 45_000),
    ("up_55", 55_000),
    ("up_65", 65_000),
    ("up_75", 75_000),
    ("up_90", 90_000),
    ("up_105", 105_000),
    ("up_120", 120_000),
    ("up_135", 135_000),
    ("more", 250_000),
];

/// Shares of the person's mass that staff say they lift. The words stand for these shares. House rule.
pub(crate) const SHARES: [(&str, u32); 3] = [("tenth", 100), ("quarter", 250), ("half", 500)];

/// What can differ from a care plan.
pub(crate) const DIFFERENCES: [&str; 8] = [
    "legs",
    "follows",
    "arms",
    "pain",
    "lines",
    "weight",
    "place",
    "something",
];

/// Equipment that a worker has to be trained on. The rest needs no training (house rule).
pub(crate) const TRAINING: [Equipment; 8] = [
    Equipment::Hoist,
    Equipment::StandAid,
    Equipment::Belt,
    Equipment::SlideBoard,
    Equipment::SlideSheet,
    Equipment::LateralAid,
    Equipment::CarHoist,
    Equipment::LimbSling,
];

/// How a question is answered.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(crate) enum Offer {
    /// One of these.
    One(Vec<&'static str>),
    /// Any of these, or none.
    Any(Vec<&'static str>),
}

impl Offer {
    /// The ids, in order.
    #[must_use]
    pub(crate) fn ids(&self) -> &[&'static str] {
        match self {
            Self::One(ids) | Self::Any(ids) => ids,
        }
    }
}

/// What a question offers for this move. `planned`: a care plan covers it.
#[must_use]
pub(crate) fn offer(question: MoveQuestion, what: Move, planned: bool) -> Offer {
    use MoveQuestion as Q;
    let one = |ids: &[&'static str]| Offer::One(ids.to_vec());
    match question {
        Q::Unhurt => one(&["unhurt", "hurt", "not_looked"]),
        Q::New => one(&["nothing", "in_them", "they_say_no", "in_me"]),
        Q::Signs => Offer::Any(ClientSign::ALL.iter().map(|sign| sign.id()).collect()),
        Q::Same if planned => one(&["as_planned", "missing", "differs"]),
        Q::Same => one(&["as_noted", "missing", "changed"]),
        Q::Differs => Offer::Any(DIFFERENCES.to_vec()),
        Q::Limb => one(&["leg", "arm"]),
        Q::Independent | Q::Arms | Q::Reclines => one(&["yes", "no"]),
        Q::Able => one(&["fully", "partly", "not"]),
        Q::Legs => one(&["full", "part", "none"]),
        Q::Follows => one(&["yes", "unsure", "no"]),
        Q::Help => one(&[
            "none",
            "steady_only",
            "tenth",
            "quarter",
            "half",
            "unpredictable",
        ]),
        Q::Mass => Offer::One(BANDS.iter().map(|(id, _)| *id).collect()),
        Q::Hold => one(&["up_1_min", "up_2_min", "longer"]),
        Q::Here => Offer::Any(
            [SECOND, THIRD]
                .into_iter()
                .chain(equipment_of(what).iter().map(|piece| piece.id()))
                .collect(),
        ),
        Q::Harder => Offer::Any(Hindrance::ALL.iter().map(|one| one.id()).collect()),
    }
}

/// Whether "not sure" is offered.
#[must_use]
pub(crate) const fn not_sure(question: MoveQuestion) -> bool {
    use MoveQuestion as Q;
    matches!(
        question,
        Q::New
            | Q::Independent
            | Q::Able
            | Q::Legs
            | Q::Arms
            | Q::Help
            | Q::Mass
            | Q::Hold
            | Q::Reclines
    )
}

/// Takes an answer that the question offers.
///
/// # Errors
/// [`AnswerRefused::NotOffered`].
pub(crate) fn accept(
    question: MoveQuestion,
    what: Move,
    planned: bool,
    answer: Answer,
) -> Result<Answer, AnswerRefused> {
    let offered = offer(question, what, planned);
    let has = |id: &str| offered.ids().contains(&id);
    let taken = match (&answer, &offered) {
        (Answer::NotSure, _) => not_sure(question),
        (Answer::Choice(id), Offer::One(_)) => has(id),
        (Answer::Choices(ids), Offer::Any(_)) => ids.iter().all(|id| has(id)),
        _ => false,
    };
    if taken {
        Ok(answer)
    } else {
        Err(AnswerRefused::NotOffered)
    }
}
