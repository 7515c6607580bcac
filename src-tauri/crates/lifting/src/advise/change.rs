//! Changes to a task. Each listed change is enough alone: applied, the same judgement says `Lift`.

use super::advice::Ranked;
use crate::quantity::{Centimetres, Degrees, Kilograms, Metres, NewtonMetres, Repetitions};
use crate::task::{Coupling, Height, LoadMass, Reach, Task};

/// One thing to change about a task.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum ChangeStep {
    /// Find out the mass: tip a corner, slide it, read the label, open it. Go on only up to `go_on_up_to`.
    FindMass {
        /// The heaviest mass at which the judgement says `Lift`.
        go_on_up_to: Kilograms,
    },
    /// Bring it closer before lifting.
    BringCloser {
        /// Reach from mid-ankles to hands.
        to: Centimetres,
    },
    /// A bag, strap or blanket, so that it has a grip and holds together.
    BetterGrip,
    /// Turn the feet instead of the trunk.
    TurnFeet,
    /// Have the start raised.
    RaiseStart {
        /// Height of the hands.
        to: Centimetres,
    },
    /// Put it down higher.
    RaiseEnd {
        /// Height of the hands.
        to: Centimetres,
    },
    /// Put it down lower.
    LowerEnd {
        /// Height of the hands.
        to: Centimetres,
    },
    /// In parts.
    Split {
        /// Number of parts.
        parts: u32,
        /// Mass of the heaviest part.
        each: Kilograms,
        /// Lifts there are then: as many times more as there are parts. `None` where it was not said how often.
        lifts: Option<Repetitions>,
    },
    /// Take some out.
    Lighten {
        /// What may stay in.
        to: Kilograms,
    },
    /// Fewer at a time.
    ShortenBout {
        /// Lifts in one bout.
        to: Repetitions,
    },
    /// Rest on the way.
    CarryInStages {
        /// Longest stretch.
        to: Metres,
    },
    /// Two together; each is judged at three quarters of the mass, which is what two thirds of the sum
    /// of two equal limits comes to.
    SecondPerson {
        /// The mass at which one's own part is judged.
        judged_at: Kilograms,
    },
    /// Three together, where two are not enough; each is judged at two thirds of the mass, which is what half of
    /// the sum of three equal limits comes to.
    ThreePeople {
        /// The mass at which one's own part is judged.
        judged_at: Kilograms,
    },
}

impl ChangeStep {
    /// The stable id.
    #[must_use]
    pub const fn id(&self) -> &'static str {
        match self {
            Self::FindMass { .. } => "find_mass",
            Self::BringCloser { .. } => "bring_closer",
            Self::BetterGrip => "better_grip",
            Self::TurnFeet => "turn_feet",
            Self::RaiseStart { .. } => "raise_start",
            Self::RaiseEnd { .. } => "raise_end",
            Self::LowerEnd { .. } => "lower_end",
            Self::Split { .. } => "split_load",
            Self::Lighten { .. } => "lighten",
            Self::ShortenBout { .. } => "shorten_bout",
            Self::CarryInStages { .. } => "carry_in_stages",
            Self::SecondPerson { .. } => "second_person",
            Self::ThreePeople { .. } => "three_people",
        }
    }

    /// Every id, for texts and their tests.
    pub const IDS: &'static [&'static str] = &[
        "find_mass",
        "bring_closer",
        "better_grip",
        "turn_feet",
        "raise_start",
        "raise_end",
        "lower_end",
        "split_load",
        "lighten",
        "shorten_bout",
        "carry_in_stages",
        "second_person",
        "three_people",
    ];

    /// The task after this change.
    #[must_use]
    pub fn apply(&self, task: &Task) -> Task {
        let mut changed = task.clone();
        match *self {
            Self::FindMass { go_on_up_to } => changed.mass = LoadMass::Known(go_on_up_to),
            Self::BringCloser { to } => changed.reach = Some(Reach::Measured(to)),
            Self::BetterGrip => {
                changed.awkward = Some(false);
                changed.coupling = Some(Coupling::Fair);
            }
            Self::TurnFeet => changed.twist = Some(Degrees::clamped(0.0)),
            Self::RaiseStart { to } => changed.start = Some(Height::Measured(to)),
            Self::RaiseEnd { to } | Self::LowerEnd { to } => {
                changed.end = Some(Height::Measured(to));
            }
            Self::Split { each, lifts, .. } => {
                changed.mass = LoadMass::Known(each);
                changed.awkward = Some(false);
                changed.coupling = Some(Coupling::Fair);
                changed.repetitions = lifts.or(changed.repetitions);
            }
            Self::Lighten { to } => changed.mass = LoadMass::Known(to),
            Self::ShortenBout { to } => changed.repetitions = Some(to),
            Self::CarryInStages { to } => changed.carry = Some(to),
            Self::SecondPerson { judged_at } | Self::ThreePeople { judged_at } => {
                changed.mass = LoadMass::Known(judged_at);
                changed.awkward = Some(false);
                changed.coupling = Some(Coupling::Fair);
            }
        }
        changed
    }
}

/// The largest modelled back moment once changed, as a share of the one now: 0.8 is a fifth less. An estimate; it
/// explains, and orders changes that are equally little trouble, and decides nothing.
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd)]
pub struct BackShare(f64);

impl BackShare {
    /// What is left of a moment (both N·m). `None` when there was none to ease.
    #[must_use]
    pub fn left(after: NewtonMetres, now: NewtonMetres) -> Option<Self> {
        (now.value() > 0.0).then(|| Self((after.value() / now.value()).max(0.0)))
    }

    /// The share, 0 or more.
    #[must_use]
    pub const fn value(self) -> f64 {
        self.0
    }
}

/// A change that is enough: one step, or several together.
#[derive(Debug, Clone, PartialEq)]
pub struct Change {
    /// The steps, to be done together. Never empty.
    pub steps: Vec<ChangeStep>,
    /// Ways for the task once changed.
    pub ways: Ranked,
    /// What the model finds left for the back; `None` where it was not asked or sees no difference.
    pub back: Option<BackShare>,
}

impl Change {
    /// A change of which the model was not asked.
    #[must_use]
    pub const fn of(steps: Vec<ChangeStep>, ways: Ranked) -> Self {
        Self {
            steps,
            ways,
            back: None,
        }
    }

    /// The task after all steps.
    #[must_use]
    pub fn apply(&self, task: &Task) -> Task {
        self.steps
            .iter()
            .fold(task.clone(), |task, step| step.apply(&task))
    }
}
