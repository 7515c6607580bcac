//! Requests as people make them: invented, varied, the same on every run.

use lifting::advise::Request;
use lifting::body::{BackState, Balance, Condition, Kneeling, PainToday, Person, Sex};
use lifting::quantity::{
    BodyMass, Centimetres, Kilograms, Minutes, PainScore, Repetitions, Stature,
};
use lifting::task::{Height, HeightWord, LoadMass, Reach, ReachWord, Task};

/// How many are judged.
pub(crate) const COUNT: usize = 2_000;

/// The requests. No warning sign is open in any: those are answered before anything is worked out.
pub(crate) fn all() -> Vec<Request> {
    let mut dice = Dice(1);
    (0..COUNT)
        .map(|_| Request::new(person(&mut dice), task(&mut dice)))
        .collect()
}

/// SplitMix64 (Steele, Lea, Flood 2014): small, and the same everywhere.
struct Dice(u64);

impl Dice {
    fn throw(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mut mixed = self.0;
        mixed = (mixed ^ (mixed >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        mixed = (mixed ^ (mixed >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        mixed ^ (mixed >> 31)
    }

    /// From 0 up to, not including, `end`.
    fn below(&mut self, end: u64) -> u64 {
        self.throw() % end.max(1)
    }

    fn pick<T: Copy>(&mut self, all: &[T]) -> Option<T> {
        let place = self.below(all.len() as u64);
        usize::try_from(place)
            .ok()
            .and_then(|place| all.get(place))
            .copied()
    }

    /// True once in so many.
    fn once_in(&mut self, many: u64) -> bool {
        self.below(many) == 0
    }

    /// Between two values, in a hundred steps.
    fn between(&mut self, low: f64, high: f64) -> f64 {
        low + (high - low) * self.below(101) as f64 / 100.0
    }
}

fn person(dice: &mut Dice) -> Person {
    let pain = |dice: &mut Dice| {
        let score = dice.pick(&[0, 0, 0, 1, 2, 3, 4, 5, 7, 9]).unwrap_or(0);
        Some(PainScore::of(score))
    };
    let measured = !dice.once_in(4);
    let size = |dice: &mut Dice, low, high| measured.then(|| dice.between(low, high));
    Person {
        sex: dice
            .pick(&[Some(Sex::Female), Some(Sex::Male), None])
            .flatten(),
        stature: size(dice, 150.0, 195.0).and_then(|cm| Stature::new(cm).ok()),
        mass: size(dice, 48.0, 115.0).and_then(|kg| BodyMass::new(kg).ok()),
        pain: PainToday {
            back: pain(dice),
            knee_left: pain(dice),
            knee_right: pain(dice),
            hip_left: pain(dice),
            hip_right: pain(dice),
            shoulders: None,
        },
        back_state: dice.pick(&[BackState::Steady, BackState::Steady, BackState::Volatile]),
        balance: dice.pick(&[Balance::Good, Balance::Good, Balance::Fair, Balance::Poor]),
        can_kneel: dice.pick(&[
            Kneeling::Yes,
            Kneeling::Yes,
            Kneeling::OneSide,
            Kneeling::No,
        ]),
        conditions: dice
            .once_in(10)
            .then(|| dice.pick(Condition::ALL))
            .flatten()
            .into_iter()
            .collect(),
        ..Person::default()
    }
}

fn task(dice: &mut Dice) -> Task {
    let kg = Kilograms::clamped;
    let mass = if dice.once_in(6) {
        LoadMass::Untested {
            low: None,
            high: dice.pick(&[3.0, 7.0, 20.0]).map(kg),
        }
    } else {
        let known = [0.5, 1.0, 2.0, 4.0, 6.0, 8.0, 12.0, 16.0, 25.0];
        LoadMass::Known(kg(dice.pick(&known).unwrap_or(1.0)))
    };
    let measured = dice.once_in(2);
    let start = if measured {
        Some(Height::Measured(Centimetres::clamped(
            dice.between(0.0, 120.0),
        )))
    } else {
        dice.pick(HeightWord::ALL).map(Height::Word)
    };
    let bulk = |dice: &mut Dice, low, high| {
        measured.then(|| Centimetres::clamped(dice.between(low, high)))
    };
    Task {
        start,
        reach: dice.pick(ReachWord::ALL).map(Reach::Word),
        width: bulk(dice, 10.0, 70.0),
        depth: bulk(dice, 10.0, 50.0),
        awkward: dice
            .pick(&[Some(true), Some(false), Some(false), None])
            .flatten(),
        divisible: dice.pick(&[Some(true), Some(false), None]).flatten(),
        two_hands: Some(dice.once_in(2)),
        repetitions: dice.pick(&[1, 1, 2, 6, 20, 60]).map(Repetitions::of),
        span: dice.pick(&[15.0, 60.0, 240.0]).map(Minutes::clamped),
        ..Task::of(mass)
    }
}
