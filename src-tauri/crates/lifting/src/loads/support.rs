//! A hand that does not lift but leans: on the own thigh, or on something firm.
//!
//! How hard it presses is given, not found: statics cannot tell, and people differ. On the thigh it presses along the
//! line from hand to shoulder, on the body itself, so that the ground feels nothing of it. On furniture it presses
//! straight down, since the ground bears no horizontal force in this model; the ground has that much less to carry,
//! and elsewhere.

use super::statics::{GRAVITY, Outside};
use crate::body::segments as share;
use crate::naming::named;
use crate::posture::geometry::Point;
use crate::posture::skeleton::{Angles, Arm, Segment, Size, Skeleton};
use crate::posture::solve::Lowest;
use crate::quantity::{Centimetres, quantity};
use thiserror::Error;

/// Where on the thigh the hand leans, share of the way from hip to knee: just above the knee, as measured by Kingma
/// 2016 (source `kingma_2016`). The share itself is an estimate.
const ON_THE_THIGH: f64 = 0.85;
/// How far before the shoulder a hand leans on furniture, m. House rule.
const BEFORE_THE_SHOULDER_M: f64 = 0.15;

quantity!(
    /// How hard a hand presses. The range is a house rule: what an arm could plausibly hold.
    Push, "push", "N", 0.0 ..= 500.0
);

named!(
    /// What the hand leans on.
    Rest {
        /// The own thigh, in front or standing, just above the knee.
        Thigh = "thigh",
        /// Something firm below the shoulder: a table, a chair, a shelf.
        Furniture = "furniture",
    }
);

/// A hand that leans on something.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct HandSupport {
    /// What on.
    pub on: Rest,
    /// How hard.
    pub push: Push,
    /// Height of the furniture; without meaning on the thigh.
    pub height: Centimetres,
}

impl HandSupport {
    /// Height of furniture when it was not said: a table. House rule.
    pub const TABLE: Centimetres = Centimetres::clamped(75.0);
}

/// Why a hand cannot lean there.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Error)]
pub enum NoSupport {
    /// The hand does not reach it.
    #[error("the hand does not reach it")]
    OutOfReach,
    /// Pressing so hard would lift the feet or tip the body over.
    #[error("pressing so hard would tip the body over")]
    TipsOver,
}

/// A hand in its place: the left one, on the side in front or standing.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Touch {
    /// What on.
    pub on: Rest,
    /// Where the knuckles are, m.
    pub at: Point,
    /// How hard it presses, N.
    pub push_n: f64,
    /// The force on the hand, N: x forward, z up.
    pub on_hand_n: Point,
}

impl Touch {
    /// The forces on the body: up on the hand, and on the thigh down again.
    #[must_use]
    pub fn forces(&self) -> Vec<Outside> {
        let force = |on, force_n: Point| Outside {
            on,
            at: self.at,
            force_n,
        };
        let hand = force(Segment::HandLeft, self.on_hand_n);
        match self.on {
            Rest::Thigh => vec![hand, force(Segment::ThighLeft, self.on_hand_n * -1.0)],
            Rest::Furniture => vec![hand],
        }
    }

    /// How much it straightens the trunk about L5/S1, N·m.
    #[must_use]
    pub fn eases_nm(&self, l5s1: Point) -> f64 {
        let arm = self.at - l5s1;
        arm.x * self.on_hand_n.z - arm.z * self.on_hand_n.x
    }

    /// A hand at a point that presses as hard as this, on the same.
    fn placed(on: Rest, at: Point, push_n: f64, shoulder: Point) -> Self {
        let away = at.distance(shoulder).max(f64::EPSILON);
        let on_hand_n = match on {
            Rest::Thigh => (shoulder - at) * (push_n / away),
            Rest::Furniture => Point::new(0.0, push_n),
        };
        Self {
            on,
            at,
            push_n,
            on_hand_n,
        }
    }

    /// What the ground need not carry, N.
    #[must_use]
    pub const fn off_the_ground_n(&self) -> f64 {
        match self.on {
            Rest::Thigh => 0.0,
            Rest::Furniture => self.push_n,
        }
    }
}

/// Puts the left hand of a lowest posture on its support; the load stays in the other.
///
/// # Errors
/// [`NoSupport`] when the hand does not get there, or the ground forces would leave the support.
pub fn lean(lowest: &Lowest, support: &HandSupport) -> Result<(Lowest, Touch), NoSupport> {
    let skeleton = &lowest.skeleton;
    let at = match support.on {
        Rest::Thigh => on_the_thigh(skeleton),
        Rest::Furniture => Point::new(
            skeleton.shoulder.x + BEFORE_THE_SHOULDER_M,
            support.height.value() / 100.0,
        ),
    };
    let touch = Touch::placed(support.on, at, support.push.value(), skeleton.shoulder);
    let angles = reaching(skeleton, &lowest.angles, at).ok_or(NoSupport::OutOfReach)?;
    let leaning = Lowest {
        angles,
        skeleton: Skeleton::of(skeleton.size, &angles),
        ..lowest.clone()
    };
    let (at_ground, carried) = ground(&leaning, Some(&touch));
    let (back, front) = leaning.support;
    if carried <= 0.0 || at_ground < back || at_ground > front {
        return Err(NoSupport::TipsOver);
    }
    Ok((leaning, touch))
}

/// The touch in another frame of the way: on the thigh wherever that is then, on furniture at the same place.
/// `None` once the hand no longer reaches, or no longer eases the back: it then lets go.
#[must_use]
pub fn in_frame(touch: &Touch, size: Size, angles: &Angles) -> Option<(Touch, Skeleton)> {
    let skeleton = Skeleton::of(size, angles);
    let at = match touch.on {
        Rest::Thigh => on_the_thigh(&skeleton),
        Rest::Furniture => touch.at,
    };
    let angles = reaching(&skeleton, angles, at)?;
    let touch = Touch::placed(touch.on, at, touch.push_n, skeleton.shoulder);
    (touch.eases_nm(skeleton.l5s1) > 0.0).then(|| (touch, Skeleton::of(size, &angles)))
}

/// Where the ground force acts, m forward, and how large it is, N.
#[must_use]
pub fn ground(lowest: &Lowest, touch: Option<&Touch>) -> (f64, f64) {
    let skeleton = &lowest.skeleton;
    let com = skeleton.centre_of_mass(lowest.load.value(), lowest.load_at);
    let body: f64 = skeleton.segments().iter().map(|part| part.mass_kg).sum();
    let weight = (body + lowest.load.value()) * GRAVITY;
    let (off, hand) = touch.map_or((0.0, 0.0), |touch| (touch.off_the_ground_n(), touch.at.x));
    let carried = weight - off;
    if off > 0.0 {
        ((com.x * weight - hand * off) / carried, carried)
    } else {
        (com.x, carried)
    }
}

fn on_the_thigh(skeleton: &Skeleton) -> Point {
    skeleton.hip.towards(skeleton.left.knee, ON_THE_THIGH)
}

/// The posture with the left knuckles at a point, the elbow bent as elbows do. `None` when it is too far or too near.
fn reaching(skeleton: &Skeleton, angles: &Angles, at: Point) -> Option<Angles> {
    let size = skeleton.size;
    let upper = size.length(share::UPPER_ARM.length);
    let fore = size.length(share::FOREARM.length + share::HAND.length * share::HAND.com);
    let far = skeleton.shoulder.distance(at);
    if far > upper + fore || far < (upper - fore).abs().max(f64::EPSILON) {
        return None;
    }
    let along = at - skeleton.shoulder;
    let towards = along.x.atan2(-along.z);
    let corner = |beside: f64, across: f64| {
        let cos = (beside * beside + far * far - across * across) / (2.0 * beside * far);
        cos.clamp(-1.0, 1.0).acos()
    };
    Some(Angles {
        arm_left: Arm {
            upper: towards - corner(upper, fore),
            fore: towards + corner(fore, upper),
        },
        ..*angles
    })
}
