//! The documented grid of moves. Every axis is ordered from the kinder to the harder value, so that neighbours
//! can be compared: harder never makes the outcome more permissive.

#![allow(
    clippy::indexing_slicing,
    reason = "a test may stop at the first surprise"
)]

use crate::moving::well_worker;
use lifting::body::{AgeBand, Person};
use lifting::quantity::PainScore;
use lifting::transfer::TransferRequest;
use lifting::transfer::client::{
    CarePlan, ClientMass, Follows, Help, Move, Share, Transfer, WeightBearing,
};
use lifting::transfer::equipment::Equipment;

/// Weight on the legs.
pub const LEGS: [WeightBearing; 3] = [
    WeightBearing::Full,
    WeightBearing::Part,
    WeightBearing::None,
];
/// Follows steps.
pub const FOLLOWS: [Follows; 2] = [Follows::Yes, Follows::No];
/// Strong arms.
pub const ARMS: [bool; 2] = [true, false];
/// What help staff give.
pub const HELP: [Help; 4] = [
    Help::None,
    Help::SteadyOnly,
    Help::SomeLift,
    Help::Unpredictable,
];
/// The person's mass in kg; the last is not known.
pub const MASS: [Option<f64>; 3] = [Some(60.0), Some(95.0), None];
/// The share staff bear: asked and known.
pub const SHARE: [f64; 3] = [0.0, 0.2, 0.6];
/// Workers there, most first.
pub const WORKERS: [u32; 3] = [3, 2, 1];
/// Equipment there: all, then less and less.
pub const EQUIPMENT: [&[Equipment]; 4] = [
    Equipment::ALL,
    &[
        Equipment::Belt,
        Equipment::StandAid,
        Equipment::SlideSheet,
        Equipment::SlideBoard,
        Equipment::RemovableArmChair,
    ],
    &[Equipment::Belt],
    &[],
];
/// The worker: well, moderate back pain, severe back pain.
pub const WORKER: usize = 3;
/// The care plan: covers the move, none.
pub const PLANS: usize = 2;

/// Sizes of the axes, the last one running fastest: move, legs, follows, arms, help, mass, share (and not asked,
/// which is compared with nothing), workers, equipment, worker, plan.
pub const AXES: [usize; 11] = [
    Move::ALL.len(),
    LEGS.len(),
    FOLLOWS.len(),
    ARMS.len(),
    HELP.len(),
    MASS.len(),
    SHARE.len() + 1,
    WORKERS.len(),
    EQUIPMENT.len(),
    WORKER,
    PLANS,
];
/// Axes on which a higher place is harder.
pub const HARDER: [usize; 10] = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10];

/// Cases of one move.
pub const CASES_OF_A_MOVE: usize = LEGS.len()
    * FOLLOWS.len()
    * ARMS.len()
    * HELP.len()
    * MASS.len()
    * (SHARE.len() + 1)
    * WORKERS.len()
    * EQUIPMENT.len()
    * WORKER
    * PLANS;

/// How many numbers apart neighbours on this axis are.
#[must_use]
pub fn stride(axis: usize) -> usize {
    AXES.iter().skip(axis + 1).product()
}

/// The place of a case on one axis.
#[must_use]
pub fn place(case: usize, axis: usize) -> usize {
    case / stride(axis) % AXES[axis]
}

/// The case with this number. On the floor the person was looked over and is unhurt.
#[must_use]
pub fn request(case: usize) -> TransferRequest {
    let at = |axis| place(case, axis);
    TransferRequest {
        worker: worker(at(9)),
        plan: None,
        moving: Transfer {
            weight_bearing: Some(LEGS[at(1)]),
            follows: Some(FOLLOWS[at(2)]),
            arms_strong: Some(ARMS[at(3)]),
            help: Some(HELP[at(4)]),
            mass: MASS[at(5)].and_then(|mass| ClientMass::new(mass).ok()),
            staff_share: SHARE.get(at(6)).and_then(|share| Share::new(*share).ok()),
            workers: Some(WORKERS[at(7)]),
            equipment: EQUIPMENT[at(8)].iter().copied().collect(),
            care_plan: match at(10) {
                0 => CarePlan::Covers {
                    ways: None,
                    workers: None,
                    is_old: false,
                },
                _ => CarePlan::None,
            },
            unhurt: Some(true),
            chair_reclines: Some(true),
            ..Transfer::of(Move::ALL[at(0)])
        },
    }
}

fn worker(place: usize) -> Person {
    let mut worker = well_worker();
    worker.age = Some(AgeBand::From40);
    worker.pain.back = Some(PainScore::of([0, 5, 8][place]));
    worker
}
