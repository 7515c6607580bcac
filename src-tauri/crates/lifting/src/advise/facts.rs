//! The request with everything that is missing taken on the careful side.
//!
//! Each default below is a house rule unless a source is named; an answer always wins over a default.

mod measures;
mod pace;
mod pain;

pub use measures::knuckle_height;
pub use pain::{Band, Rated, Standing};

use super::request::Request;
use crate::body::{AgeBand, BackState, Balance, Condition, Kneeling, Person, Region};
use crate::plan::Plan;
use crate::quantity::{Centimetres, Kilograms, Metres, PainScore, Repetitions};
use crate::task::{Coupling, Height, HeightWord, LoadMass, Task};
use measures::{
    DEFAULT_END_CM, SHORT_STATURE_CM, TALL_STATURE_CM, height, height_of_word, longer_reach,
    pregnant, reach, stature_cm,
};
use pace::{hours, per_minute};
use pain::{back_state, balance, bands, rated, standing};

/// A trifle: 0 to 2.3 kg (0 to 5 lb). Common practice, no source.
pub const LIGHT: Kilograms = Kilograms::clamped(2.3);
/// From here a load counts as heavy when ways are ranked. House rule.
pub const HEAVY: Kilograms = Kilograms::clamped(10.0);
/// Shoulder height as a fraction of stature (ANSUR II: 0.820).
const SHOULDER: f64 = 0.82;
/// Middle of the lower leg as a fraction of stature (half of knee height, ANSUR II: 0.28).
const MID_SHIN: f64 = 0.14;
/// Highest grip for a half-kneel, as a fraction of stature: about the hip of somebody kneeling. House rule.
const HALF_KNEEL_TOP: f64 = 0.30;
/// More bends than this in an hour are a long run. House rule.
const LONG_RUN: f64 = 10.0;
/// Wider than this is bulky. House rule: about the span of both forearms.
const BULKY_WIDTH_CM: f64 = 75.0;

/// A request, resolved.
#[derive(Debug, Clone)]
pub struct Facts<'a> {
    /// The person as asked.
    pub person: &'a Person,
    /// The task as described.
    pub task: &'a Task,
    /// The plan, if there is one.
    pub plan: Option<&'a Plan>,
    /// Whether it holds.
    pub standing: Standing,
    /// Back pain.
    pub back: Rated,
    /// How the back behaves.
    pub back_state: BackState,
    /// Left knee.
    pub knee_left: Rated,
    /// Right knee.
    pub knee_right: Rated,
    /// Left hip; not asked is not limiting.
    pub hip_left: Rated,
    /// Right hip; not asked is not limiting.
    pub hip_right: Rated,
    /// Shoulders; not asked is not limiting.
    pub shoulders: Rated,
    /// Balance; not asked is poor, and a fall lowers good to fair.
    pub balance: Balance,
    /// Kneeling; not asked is no.
    pub kneeling: Kneeling,
    /// The mass judged by. `None`: not known and not guessed.
    pub mass: Option<Kilograms>,
    /// Whether the mass is known.
    pub tested: bool,
    /// Height of the first grip.
    pub start: Centimetres,
    /// Height where it is put down.
    pub end: Centimetres,
    /// Horizontal reach.
    pub reach: Centimetres,
    /// Grip.
    pub coupling: Coupling,
    /// Big, floppy, shifting, no grip, or very wide.
    pub bulky: bool,
    /// Takes two hands.
    pub two_hands: bool,
    /// How many times.
    pub repetitions: Repetitions,
    /// Lifts per minute for the equation.
    pub per_minute: f64,
    /// Hours of lifting for the equation.
    pub hours: f64,
    /// Goes of lifting done today.
    pub bouts_today: u32,
}

impl<'a> Facts<'a> {
    /// Resolves a request for one task.
    #[must_use]
    pub fn of(request: &'a Request, task: &'a Task) -> Self {
        let person = &request.person;
        let plan = request.plan.as_ref();
        let standing = standing(plan);
        let bands = |region| bands(plan, standing, region);
        let or_severe = |region: Region| {
            rated(
                person.pain.of(region),
                bands(region).severe_from,
                bands(region),
            )
        };
        let or_none =
            |region: Region| rated(person.pain.of(region), PainScore::NONE, bands(region));
        let start = height(
            person,
            task.start.unwrap_or(Height::Word(HeightWord::Floor)),
        );
        let end = task.end.map_or_else(
            || start.at_least(Centimetres::clamped(DEFAULT_END_CM)),
            |end| height(person, end),
        );
        let awkward = task.awkward.unwrap_or(true);
        let repetitions = task
            .repetitions
            .unwrap_or(Repetitions::of(LONG_RUN as u32 + 1));
        Self {
            person,
            task,
            plan,
            standing,
            back: or_severe(Region::Back),
            back_state: back_state(person),
            knee_left: or_severe(Region::KneeLeft),
            knee_right: or_severe(Region::KneeRight),
            hip_left: or_none(Region::HipLeft),
            hip_right: or_none(Region::HipRight),
            shoulders: or_none(Region::Shoulders),
            balance: balance(person),
            kneeling: person.can_kneel.unwrap_or(Kneeling::No),
            mass: match task.mass {
                LoadMass::Known(mass) => Some(mass),
                LoadMass::Untested { high, .. } => high,
            },
            tested: matches!(task.mass, LoadMass::Known(_)),
            start,
            end,
            reach: reach(person, task, start),
            coupling: task.coupling.unwrap_or(if awkward {
                Coupling::Poor
            } else {
                Coupling::Fair
            }),
            bulky: awkward
                || task
                    .width
                    .is_some_and(|width| width.value() > BULKY_WIDTH_CM),
            two_hands: task.two_hands.unwrap_or(awkward),
            repetitions,
            per_minute: per_minute(task, repetitions),
            hours: hours(task, repetitions),
            bouts_today: request.bouts_today,
        }
    }

    /// Whether the judged mass is a trifle for certain.
    #[must_use]
    pub fn light(&self) -> bool {
        self.mass.is_some_and(|mass| mass <= LIGHT)
    }

    /// Whether the load counts as heavy when ways are ranked.
    #[must_use]
    pub fn heavy(&self) -> bool {
        self.mass.is_none_or(|mass| mass >= HEAVY)
    }

    /// Whether the back is severe, catches without warning, or is in a flare.
    #[must_use]
    pub fn back_provoked(&self) -> bool {
        self.back.severe() || self.back_state != BackState::Steady
    }

    /// The worse knee, by band and then by number.
    #[must_use]
    pub fn worse_knee(&self) -> Rated {
        let rank = |knee: Rated| (knee.band, knee.score);
        if rank(self.knee_right) > rank(self.knee_left) {
            self.knee_right
        } else {
            self.knee_left
        }
    }

    /// Whether this is a long run of bends; how often not asked counts as one.
    #[must_use]
    pub fn long_run(&self) -> bool {
        self.task.repetitions.is_none() || self.lifts_in_one_go() > LONG_RUN
    }

    /// Lifts that fall into one hour at most: what counts as one go. House rule.
    #[must_use]
    pub fn lifts_in_one_go(&self) -> f64 {
        let count = f64::from(self.repetitions.count());
        let within_an_hour = self.task.span.map_or(1.0, |span| {
            if span.value() > 60.0 {
                60.0 / span.value()
            } else {
                1.0
            }
        });
        count * within_an_hour
    }

    /// Most lifts in one go, where the plan says so.
    #[must_use]
    pub fn times_a_bout(&self) -> Option<Repetitions> {
        self.plan?.times_a_bout
    }

    /// Whether it is more lifts in one go than the plan allows; how often not asked may be any number.
    #[must_use]
    pub fn over_times_a_bout(&self) -> bool {
        self.times_a_bout().is_some_and(|most| {
            self.task.repetitions.is_none() || self.lifts_in_one_go() > f64::from(most.count())
        })
    }

    /// The lowest the hands go.
    #[must_use]
    pub fn lowest(&self) -> Centimetres {
        self.start.at_most(self.end)
    }

    /// The highest the hands go.
    #[must_use]
    pub fn highest(&self) -> Centimetres {
        self.start.at_least(self.end)
    }

    /// Whether everything happens at or above knuckle height, so that no low way is needed.
    #[must_use]
    pub fn upright(&self) -> bool {
        self.lowest().value() >= knuckle_height(self.person).value()
    }

    /// Whether the hands go above the shoulder; "overhead" says so for the tallest too.
    #[must_use]
    pub fn above_shoulder(&self) -> bool {
        let overhead = Some(Height::Word(HeightWord::Overhead));
        self.task.start == overhead
            || self.task.end == overhead
            || self.highest().value() > SHOULDER * stature_cm(self.person, SHORT_STATURE_CM)
    }

    /// Whether the hands go below the middle of the lower leg.
    #[must_use]
    pub fn below_mid_shin(&self) -> bool {
        self.lowest().value() < MID_SHIN * stature_cm(self.person, TALL_STATURE_CM)
    }

    /// Whether the first grip is too high for a half-kneel.
    #[must_use]
    pub fn too_high_to_kneel(&self) -> bool {
        self.start.value() > HALF_KNEEL_TOP * stature_cm(self.person, SHORT_STATURE_CM)
    }

    /// Whether the person has this condition; weeks of pregnancy say that one too.
    #[must_use]
    pub fn has(&self, condition: Condition) -> bool {
        self.person.conditions.contains(&condition)
            || (condition == Condition::Pregnant && pregnant(self.person))
    }

    /// Whether pregnancy lengthens the reach.
    #[must_use]
    pub fn longer_reach(&self) -> bool {
        longer_reach(self.person)
    }

    /// Whether the person is a child.
    #[must_use]
    pub fn child(&self) -> bool {
        self.person.age == Some(AgeBand::Under16)
    }

    /// How far it is carried.
    #[must_use]
    pub fn carried(&self) -> Metres {
        self.task.carry.unwrap_or(Metres::clamped(0.0))
    }

    /// The plan's ceiling for this start height: the general one, those of the words around this height, and,
    /// between two heights that the plan names, the stricter of these two. House rule.
    #[must_use]
    pub fn plan_ceiling(&self) -> Option<Kilograms> {
        let plan = self.plan?;
        let is_below = |word: &HeightWord| height_of_word(self.person, *word) <= self.start;
        let is_above = |word: &HeightWord| height_of_word(self.person, *word) >= self.start;
        let below = HeightWord::ALL.iter().rev().find(|word| is_below(word));
        let above = HeightWord::ALL.iter().find(|word| is_above(word));
        let mut named = plan.max_by_height.iter();
        let named_below = named.clone().rev().find(|(word, _)| is_below(word));
        let named_above = named.find(|(word, _)| is_above(word));
        let between = named_below
            .zip(named_above)
            .map(|((_, below), (_, above))| below.at_most(*above));
        [below, above]
            .into_iter()
            .flatten()
            .filter_map(|word| plan.max_by_height.get(word).copied())
            .chain(between)
            .chain(plan.max)
            .reduce(Kilograms::at_most)
    }
}
