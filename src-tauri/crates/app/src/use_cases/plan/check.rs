//! Plans that contradict themselves. They are neither made here nor taken from others.

use super::ways;
use record::{Plan, Way, WayStanding};
use std::collections::BTreeSet;

/// What cannot both hold.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Contradiction {
    /// A way is to be preferred and is ruled out.
    PreferredAndRuledOut,
    /// What is to be practised is ruled out.
    PracticeRuledOut,
    /// One way is practised twice: the log could not tell one from the other.
    PracticeTwice,
    /// Practice is heavier than the ceiling.
    PracticeOverCeiling,
    /// One step is larger than the ceiling.
    StepOverCeiling,
    /// A ceiling for one height is above the one for any lift.
    HeightOverCeiling,
    /// A step back comes before the hold.
    BackBeforeHold,
    /// Severe begins no later than moderate, or moderate at no pain.
    BandsOutOfOrder,
}

impl Contradiction {
    /// The id of the sentence for it.
    #[must_use]
    pub(crate) const fn says(self) -> &'static str {
        match self {
            Self::PreferredAndRuledOut => "plan-against-preferred",
            Self::PracticeRuledOut => "plan-against-practice-way",
            Self::PracticeTwice => "plan-against-practice-twice",
            Self::PracticeOverCeiling => "plan-against-practice-load",
            Self::StepOverCeiling => "plan-against-step",
            Self::HeightOverCeiling => "plan-against-height",
            Self::BackBeforeHold => "plan-against-back",
            Self::BandsOutOfOrder => "plan-against-bands",
        }
    }
}

/// The first thing in a plan that contradicts another.
#[must_use]
pub(crate) fn contradiction(plan: &Plan) -> Option<Contradiction> {
    let is_preferred_too = |way| ways::has(plan, way, WayStanding::Preferred);
    let over = |grams: u32| most(plan).is_some_and(|most| grams > most);
    let progression = plan.progression;
    let found = [
        (
            ways::of(plan, WayStanding::NotAllowed).any(is_preferred_too),
            Contradiction::PreferredAndRuledOut,
        ),
        (
            plan.practice
                .iter()
                .any(|practice| ways::has(plan, practice.way, WayStanding::NotAllowed)),
            Contradiction::PracticeRuledOut,
        ),
        (is_practised_twice(plan), Contradiction::PracticeTwice),
        (
            plan.ceiling_g
                .is_some_and(|most| plan.ceilings.iter().any(|one| one.grams > most)),
            Contradiction::HeightOverCeiling,
        ),
        (
            plan.practice.iter().any(|practice| over(practice.grams)),
            Contradiction::PracticeOverCeiling,
        ),
        (
            progression.step_g.is_some_and(over),
            Contradiction::StepOverCeiling,
        ),
        (
            progression
                .hold_from
                .zip(progression.back_over)
                .is_some_and(|(hold, back)| hold.rating() > back.rating().saturating_add(1)),
            Contradiction::BackBeforeHold,
        ),
        (
            plan.bands.iter().any(|bands| {
                bands.moderate_from.rating() == 0 || bands.moderate_from >= bands.severe_from
            }),
            Contradiction::BandsOutOfOrder,
        ),
    ];
    found
        .into_iter()
        .find_map(|(is_so, contradiction)| is_so.then_some(contradiction))
}

fn is_practised_twice(plan: &Plan) -> bool {
    let ways: BTreeSet<Way> = plan.practice.iter().map(|practice| practice.way).collect();
    ways.len() < plan.practice.len()
}

/// The most that a plan allows from anywhere.
fn most(plan: &Plan) -> Option<u32> {
    let by_height = plan.ceilings.iter().map(|ceiling| ceiling.grams).max();
    plan.ceiling_g.or(by_height)
}
