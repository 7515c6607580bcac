//! Pages that ask "is that right?" when answers are possible but unlikely together. They are never errors:
//! whoever says yes goes on, and the advice is judged on the careful side. All pairs are house rules.

use super::answer::Answer;
use super::flow::Walk;
use super::ids::QuestionId;
use super::questions::body::RATED;

/// An unlikely pair.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub(crate) enum InterruptionId {
    /// Something small enough for one hand, and over 10 kg.
    SmallHeavy,
    /// A typed mass over 60 kg.
    VeryHeavy,
    /// More than ten lifts of 20 kg or more.
    ManyHeavy,
    /// A flare-up, and back pain 0.
    FlarePain0,
    /// Pain 10 in the back and in both knees.
    AllTen,
}

/// Something small that is heavier than this is asked about, in grams. House rule.
const SMALL_UP_TO_GRAMS: u32 = 10_000;
/// A typed mass above this is asked about, in grams. House rule.
const TYPED_UP_TO_GRAMS: u32 = 60_000;
/// Many lifts of this mass or more are asked about, in grams. House rule.
const MANY_FROM_GRAMS: u32 = 20_000;

impl InterruptionId {
    /// Every interruption.
    pub(crate) const ALL: &'static [Self] = &[
        Self::SmallHeavy,
        Self::VeryHeavy,
        Self::ManyHeavy,
        Self::FlarePain0,
        Self::AllTen,
    ];

    /// The stable id.
    #[must_use]
    pub(crate) const fn id(self) -> &'static str {
        match self {
            Self::SmallHeavy => "small_heavy",
            Self::VeryHeavy => "very_heavy",
            Self::ManyHeavy => "many_heavy",
            Self::FlarePain0 => "flare_pain_0",
            Self::AllTen => "all_ten",
        }
    }

    /// The interruption with this id.
    #[must_use]
    pub(crate) fn from_id(id: &str) -> Option<Self> {
        Self::ALL
            .iter()
            .copied()
            .find(|interruption| interruption.id() == id)
    }

    /// The questions whose answers are unlikely together; "change" opens the first.
    #[must_use]
    pub(crate) const fn concerns(self) -> &'static [QuestionId] {
        match self {
            Self::SmallHeavy => &[
                QuestionId::Mass,
                QuestionId::What,
                QuestionId::MassNumber,
                QuestionId::MassGuess,
            ],
            Self::VeryHeavy => &[QuestionId::MassNumber, QuestionId::Mass],
            Self::ManyHeavy => &[
                QuestionId::Often,
                QuestionId::Mass,
                QuestionId::MassNumber,
                QuestionId::MassGuess,
            ],
            Self::FlarePain0 => &[QuestionId::Back, QuestionId::BackState],
            Self::AllTen => &[
                QuestionId::Back,
                QuestionId::KneeLeft,
                QuestionId::KneeRight,
            ],
        }
    }

    /// The question after which it is shown.
    #[must_use]
    pub(crate) const fn after(self) -> QuestionId {
        match self {
            Self::SmallHeavy | Self::VeryHeavy => QuestionId::MassGuess,
            Self::ManyHeavy => QuestionId::Often,
            Self::FlarePain0 => QuestionId::BackState,
            Self::AllTen => QuestionId::KneeRight,
        }
    }

    /// Whether the answers so far are unlikely together, and at least one of them was given in this walk.
    #[must_use]
    pub(crate) fn is_met(self, walk: &Walk<'_>) -> bool {
        let given_now = self
            .concerns()
            .iter()
            .any(|question| walk.given.has(*question));
        given_now && self.is_unlikely(walk)
    }

    fn is_unlikely(self, walk: &Walk<'_>) -> bool {
        let heavier_than = |grams: u32| walk.highest_grams().is_some_and(|highest| highest > grams);
        let pain =
            |question: QuestionId, score: u8| walk.answer(question) == Some(&Answer::Pain(score));
        match self {
            Self::SmallHeavy => {
                walk.chose(QuestionId::What, "small") && heavier_than(SMALL_UP_TO_GRAMS)
            }
            Self::VeryHeavy => walk.asks(QuestionId::MassNumber) && heavier_than(TYPED_UP_TO_GRAMS),
            Self::ManyHeavy => {
                let many = ["some_fast", "some_slow", "many_fast", "many_slow"];
                many.iter()
                    .any(|often| walk.chose(QuestionId::Often, often))
                    && heavier_than(MANY_FROM_GRAMS - 1)
            }
            Self::FlarePain0 => {
                walk.chose(QuestionId::BackState, "flare") && pain(QuestionId::Back, 0)
            }
            Self::AllTen => RATED.iter().take(3).all(|region| pain(*region, 10)),
        }
    }
}
