//! The way down and up: from standing to the lowest posture without the load, and up again with it.
//!
//! Between key postures the joint angles move together, eased in and out. For drawing, for the work done, and
//! to find where along the way the back carries most.

use super::skeleton::{Angles, Arm, Leg, Size, Skeleton};
use super::solve::{Grip, Lowest, knee_leaving};
use super::stance::Stance;
use crate::body::segments;

/// Frames between two key postures.
const BETWEEN: usize = 8;
/// A push is over after this share of its stretch. House rule.
const PUSH_LASTS: f64 = 0.3;
/// Upper arms of somebody who stands and holds a load before the belly, rad forward of straight down. House rule.
const HOLDING_UPPER: f64 = 0.12;

/// One frame of the way.
#[derive(Debug, Clone, PartialEq)]
pub struct Frame {
    /// Where it is: −1 standing before, 0 lowest, 1 standing again.
    pub at: f64,
    /// The posture.
    pub angles: Angles,
    /// Every joint, the left ankle over the origin.
    pub skeleton: Skeleton,
    /// Whether the load is in the hands.
    pub loaded: bool,
    /// How much of the push is on, 1 at lift-off and as the rear knee leaves the ground, 0 soon after.
    pub push: f64,
}

/// The whole way.
#[derive(Debug, Clone, PartialEq)]
pub struct Path {
    /// The frames in order.
    pub frames: Vec<Frame>,
    /// The moment the rear knee leaves the ground, in a half-kneel where it can be solved.
    pub leaving: Option<Lowest>,
}

/// The way down to a lowest posture and up from it.
#[must_use]
pub fn path(lowest: &Lowest, grip: &Grip) -> Path {
    let size = lowest.skeleton.size;
    let leaving = (lowest.stance == Stance::HalfKneel)
        .then(|| knee_leaving(size, grip).ok())
        .flatten();
    let mut down = vec![standing(HANGING)];
    let mut up = vec![lowest.angles];
    if let Some(leaving) = &leaving {
        let unloaded = Angles {
            arm_left: HANGING,
            arm_right: HANGING,
            ..leaving.angles
        };
        down.push(unloaded);
        up.push(leaving.angles);
    }
    down.push(lowest.angles);
    up.push(standing(holding(size, grip)));
    let frame = |step: &Step, before: f64, loaded| Frame {
        at: step.at - before,
        angles: step.angles,
        skeleton: Skeleton::of(size, &step.angles),
        loaded,
        push: if loaded {
            (1.0 - step.share / PUSH_LASTS).max(0.0)
        } else {
            0.0
        },
    };
    let going_down = between(&down)
        .iter()
        .map(|step| frame(step, 1.0, false))
        .collect::<Vec<_>>();
    let coming_up = between(&up)
        .iter()
        .map(|step| frame(step, 0.0, true))
        .collect::<Vec<_>>();
    Path {
        frames: [going_down, coming_up].concat(),
        leaving,
    }
}

const HANGING: Arm = Arm {
    upper: 0.05,
    fore: 0.15,
};

fn standing(arm: Arm) -> Angles {
    let leg = Leg {
        thigh: 0.02,
        shank: 0.02,
        foot: 0.0,
    };
    Angles {
        left: leg,
        right: leg,
        pelvis: 0.0,
        trunk: 0.02,
        arm_left: arm,
        arm_right: arm,
    }
}

/// Arms that hold the load before the belly, as near as its depth lets them.
fn holding(size: Size, grip: &Grip) -> Arm {
    let still = Skeleton::of(size, &standing(HANGING));
    let reach = grip.outline.nearest_before_belly(size, still.l5s1.x) - still.shoulder.x;
    let upper = size.length(segments::UPPER_ARM.length) * HOLDING_UPPER.sin();
    let fore = size.length(segments::FOREARM.length + segments::HAND.length * segments::HAND.com);
    Arm {
        upper: HOLDING_UPPER,
        fore: ((reach - upper) / fore)
            .clamp(0.0, 1.0)
            .asin()
            .max(HOLDING_UPPER),
    }
}

/// One step between key postures: where on the whole way, where on this stretch.
struct Step {
    at: f64,
    share: f64,
    angles: Angles,
}

/// Eased steps through key postures; every key posture is the first of its stretch.
fn between(keys: &[Angles]) -> Vec<Step> {
    let stretches = keys.len().saturating_sub(1).max(1) as f64;
    let mut all = Vec::new();
    for (number, pair) in keys.windows(2).enumerate() {
        let [from, to] = pair else { continue };
        for step in 0..BETWEEN {
            let share = step as f64 / BETWEEN as f64;
            let eased = share * share * (3.0 - 2.0 * share);
            all.push(Step {
                at: (number as f64 + share) / stretches,
                share,
                angles: mix(from, to, eased),
            });
        }
    }
    if let Some(last) = keys.last() {
        all.push(Step {
            at: 1.0,
            share: 1.0,
            angles: *last,
        });
    }
    all
}

fn mix(from: &Angles, to: &Angles, share: f64) -> Angles {
    let of = |a: f64, b: f64| a + (b - a) * share;
    let leg = |a: Leg, b: Leg| Leg {
        thigh: of(a.thigh, b.thigh),
        shank: of(a.shank, b.shank),
        foot: of(a.foot, b.foot),
    };
    let arm = |a: Arm, b: Arm| Arm {
        upper: of(a.upper, b.upper),
        fore: of(a.fore, b.fore),
    };
    Angles {
        left: leg(from.left, to.left),
        right: leg(from.right, to.right),
        pelvis: of(from.pelvis, to.pelvis),
        trunk: of(from.trunk, to.trunk),
        arm_left: arm(from.arm_left, to.arm_left),
        arm_right: arm(from.arm_right, to.arm_right),
    }
}
