//! The documented grid: bodies × tasks. Every axis is ordered from the kinder to the harder value, so that
//! neighbours can be compared: harder never makes the outcome more permissive.

use lifting::body::{BackState, Balance, Kneeling, PainToday, Person};
use lifting::quantity::{Kilograms, Minutes, PainScore, Repetitions};
use lifting::task::{Height, HeightWord, LoadMass, Reach, ReachWord, Task};

/// Back pain: none, moderate, severe, worst; not asked.
pub const BACK: [Option<u8>; 5] = [Some(0), Some(5), Some(8), Some(10), None];
/// How the back behaves. Flare and volatile count alike.
pub const BACK_STATE: [Option<BackState>; 3] = [
    Some(BackState::Steady),
    Some(BackState::Volatile),
    Some(BackState::Flare),
];
/// Each knee: none, moderate, severe.
pub const KNEE: [Option<u8>; 3] = [Some(0), Some(5), Some(8)];
/// The left hip: none, severe.
pub const HIP: [Option<u8>; 2] = [Some(0), Some(8)];
/// Balance: good, fair, poor, not asked.
pub const BALANCE: [Option<Balance>; 4] = [
    Some(Balance::Good),
    Some(Balance::Fair),
    Some(Balance::Poor),
    None,
];
/// Kneeling: yes, one side, no.
pub const KNEELING: [Option<Kneeling>; 3] = [
    Some(Kneeling::Yes),
    Some(Kneeling::OneSide),
    Some(Kneeling::No),
];

/// Mass in kilograms; the last but one is untested with a guess of 7 to 20 kg, the last is no idea.
pub const MASS: [Option<f64>; 9] = [
    Some(0.1),
    Some(2.3),
    Some(2.4),
    Some(6.0),
    Some(12.0),
    Some(20.0),
    Some(45.0),
    None,
    None,
];
/// How many of [`MASS`] are known.
pub const KNOWN_MASSES: usize = 7;
/// Where the hands first grip.
pub const START: [HeightWord; 4] = [
    HeightWord::Floor,
    HeightWord::Knee,
    HeightWord::Waist,
    HeightWord::Overhead,
];
/// How far away.
pub const REACH: [ReachWord; 3] = [ReachWord::Close, ReachWord::Medium, ReachWord::Far];
/// How often, over a quarter of an hour.
pub const TIMES: [u32; 4] = [1, 2, 8, 60];
/// Awkward to hold, or not.
pub const AWKWARD: [bool; 2] = [false, true];

/// Number of bodies in the grid.
pub const BODIES: usize = BACK.len()
    * BACK_STATE.len()
    * KNEE.len()
    * KNEE.len()
    * HIP.len()
    * BALANCE.len()
    * KNEELING.len();
/// Number of tasks in the grid.
pub const TASKS: usize = MASS.len() * START.len() * REACH.len() * TIMES.len() * AWKWARD.len();

/// Sizes of the body axes, the last one running fastest.
pub const BODY_AXES: [usize; 7] = [
    BACK.len(),
    BACK_STATE.len(),
    KNEE.len(),
    KNEE.len(),
    HIP.len(),
    BALANCE.len(),
    KNEELING.len(),
];
/// Sizes of the task axes, the last one running fastest.
pub const TASK_AXES: [usize; 5] = [
    MASS.len(),
    START.len(),
    REACH.len(),
    TIMES.len(),
    AWKWARD.len(),
];

/// Splits a running number into one index for each axis.
#[must_use]
pub fn places<const N: usize>(mut number: usize, axes: [usize; N]) -> [usize; N] {
    let mut places = [0; N];
    for (place, size) in places.iter_mut().zip(axes).rev() {
        *place = number % size;
        number /= size;
    }
    places
}

/// The step in the running number that moves one place up on this axis.
#[must_use]
pub fn stride<const N: usize>(axis: usize, axes: [usize; N]) -> usize {
    axes.iter().skip(axis + 1).product()
}

fn at<T: Copy>(axis: &[T], place: usize) -> Option<T> {
    axis.get(place).copied()
}

/// The body with this running number.
#[must_use]
pub fn body(number: usize) -> Person {
    let [back, state, left, right, hip, balance, kneeling] = places(number, BODY_AXES);
    let pain = |axis: &[Option<u8>], place| at(axis, place).flatten().map(PainScore::of);
    Person {
        pain: PainToday {
            back: pain(&BACK, back),
            knee_left: pain(&KNEE, left),
            knee_right: pain(&KNEE, right),
            hip_left: pain(&HIP, hip),
            hip_right: Some(PainScore::NONE),
            shoulders: None,
        },
        back_state: at(&BACK_STATE, state).flatten(),
        balance: at(&BALANCE, balance).flatten(),
        can_kneel: at(&KNEELING, kneeling).flatten(),
        ..Person::default()
    }
}

/// The task with this running number.
#[must_use]
pub fn task(number: usize) -> Task {
    let [mass, start, reach, times, awkward] = places(number, TASK_AXES);
    let kg = Kilograms::clamped;
    let load = match (at(&MASS, mass).flatten(), mass == KNOWN_MASSES) {
        (Some(known), _) => LoadMass::Known(kg(known)),
        (None, true) => LoadMass::Untested {
            low: Some(kg(7.0)),
            high: Some(kg(20.0)),
        },
        (None, false) => LoadMass::Untested {
            low: None,
            high: None,
        },
    };
    Task {
        start: at(&START, start).map(Height::Word),
        reach: at(&REACH, reach).map(Reach::Word),
        repetitions: at(&TIMES, times).map(Repetitions::of),
        span: Some(Minutes::clamped(15.0)),
        awkward: at(&AWKWARD, awkward),
        ..Task::of(load)
    }
}
