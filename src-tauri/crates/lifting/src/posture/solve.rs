//! The posture at the lowest point: hands on the load, centre of mass over the support, joints within their
//! ranges, the way's signature kept as far as it goes.

use super::fit::{Fit, Outline, farther, nearest_beside, nearest_between};
use super::geometry::Point;
use super::least_squares::{Vector, minimise};
use super::signature::{self, Held, Signature};
use super::skeleton::{Angles, Size, Skeleton};
use super::stance::{Stance, Unknowns};
use crate::body::segments as share;
use crate::quantity::Kilograms;
use crate::way::Way;
use thiserror::Error;

/// Hands must be this near to the load.
const HANDS_WITHIN_M: f64 = 0.005;
/// Joints may be this far beyond their range.
const RANGE_WITHIN_DEG: f64 = 2.0;
/// What a metre of hand error, or of a kneeling knee off the ground, costs.
const PER_METRE: f64 = 3000.0;
/// What a degree beyond a limit costs.
const PER_DEGREE_BEYOND: f64 = 4.0;
/// The centre of mass is best this near to the middle of the support, share of its length, for one unit.
const BALANCE_GIVE: f64 = 0.12;
/// Margin of the support at each end, share of its length.
const BALANCE_MARGIN: f64 = 0.10;
/// What leaving the margin costs, for the whole length of the support.
const PER_SUPPORT_BEYOND: f64 = 300.0;

/// Why there is no such posture.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Error)]
pub enum NoPosture {
    /// The hands do not reach the load this way.
    #[error("the hands do not reach the load this way")]
    OutOfReach,
    /// A joint would have to bend farther than this way, or the joint, allows.
    #[error("a joint would have to bend farther than this way allows")]
    BeyondRange,
    /// The centre of mass would leave the support.
    #[error("body and load would tip over")]
    TipsOver,
}

/// What is gripped, and where.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Grip {
    /// Mass of the load.
    pub load: Kilograms,
    /// Height of the hands, m.
    pub height_m: f64,
    /// Reach asked for, m; `None`: as near as the load lets the hands come.
    pub reach_m: Option<f64>,
    /// Outline of the load.
    pub outline: Outline,
}

/// A solved posture at its lowest point, the left leg in front or standing.
#[derive(Debug, Clone, PartialEq)]
pub struct Lowest {
    /// The way.
    pub way: Way,
    /// How it stands.
    pub stance: Stance,
    /// All angles.
    pub angles: Angles,
    /// Every joint.
    pub skeleton: Skeleton,
    /// The load.
    pub load: Kilograms,
    /// Where it is.
    pub load_at: Point,
    /// How it fits.
    pub fit: Fit,
    /// Ends of the support, m.
    pub support: (f64, f64),
}

/// Solves the lowest posture of a way.
///
/// # Errors
/// [`NoPosture`] when hands, balance and joint ranges cannot all be kept.
pub fn lowest(way: Way, size: Size, grip: &Grip) -> Result<Lowest, NoPosture> {
    let problem = Problem {
        way,
        stance: Stance::of(way),
        signature: signature::of(way),
        size,
        grip,
    };
    problem.solve()
}

/// Solves the moment of a half-kneel at which the rear knee leaves the ground: load hugged, everything on the
/// front foot.
///
/// # Errors
/// [`NoPosture`] when balance and joint ranges cannot both be kept.
pub fn knee_leaving(size: Size, grip: &Grip) -> Result<Lowest, NoPosture> {
    let problem = Problem {
        way: Way::HalfKneelingLunge,
        stance: Stance::KneeLeaving,
        signature: signature::knee_leaving(),
        size,
        grip,
    };
    problem.solve()
}

struct Problem<'a> {
    way: Way,
    stance: Stance,
    signature: Signature,
    size: Size,
    grip: &'a Grip,
}

impl Problem<'_> {
    fn solve(&self) -> Result<Lowest, NoPosture> {
        let solved = minimise(self.start(), |at| self.residuals(at));
        self.accept(&Unknowns::from_vector(&solved))
    }

    fn start(&self) -> Vector {
        let best = |held: Held| held.best.to_radians();
        let sign = &self.signature;
        let trunk = best(sign.trunk);
        Unknowns {
            shank: best(sign.shank),
            thigh: best(sign.knee) - best(sign.shank),
            pelvis: trunk - best(sign.lumbar),
            trunk,
            upper_arm: -0.1,
            forearm: 0.45,
            rear_thigh: -0.2,
        }
        .to_vector()
    }

    fn held(&self, at: &Unknowns) -> [(Held, f64); 7] {
        let sign = &self.signature;
        [
            (sign.knee, at.knee()),
            (sign.shank, at.shank),
            (sign.hip, at.hip()),
            (sign.trunk, at.trunk),
            (sign.lumbar, at.lumbar()),
            (sign.elbow, at.elbow()),
            (sign.shoulder, at.shoulder()),
        ]
    }

    fn residuals(&self, vector: &Vector) -> [f64; 20] {
        let at = Unknowns::from_vector(vector);
        let skeleton = Skeleton::of(self.size, &at.angles(self.stance));
        let hands = skeleton.arm_right.grip;
        let target = self.target(&skeleton);
        let (back, front) = self.support(&skeleton);
        let com = skeleton.centre_of_mass(self.grip.load.value(), hands).x;
        let share = (com - back) / (front - back);
        let mut all = [0.0; 20];
        let mut next = all.iter_mut();
        let mut put = |value: f64| {
            if let Some(slot) = next.next() {
                *slot = value;
            }
        };
        for (held, radians) in self.held(&at) {
            let degrees = radians.to_degrees();
            put((degrees - held.best) / held.give);
            put(PER_DEGREE_BEYOND * beyond(degrees, held.min, held.max));
        }
        put(PER_METRE * (hands.x - target.x));
        put(PER_METRE * self.height_off(hands));
        put((share - self.best_share()) / BALANCE_GIVE);
        put(PER_SUPPORT_BEYOND * beyond(share, BALANCE_MARGIN, 1.0 - BALANCE_MARGIN));
        match self.stance {
            Stance::HalfKneel | Stance::KneeLeaving => {
                let ground = self.size.length(share::KNEELING_KNEE_HEIGHT);
                put(PER_METRE * (skeleton.right.knee.z - ground));
                put((at.rear_thigh + 0.15) / 0.3);
            }
            Stance::TwoFeet | Stance::OneFoot => put(at.rear_thigh),
        }
        all
    }

    fn best_share(&self) -> f64 {
        match self.stance {
            Stance::TwoFeet | Stance::OneFoot => 0.45,
            Stance::HalfKneel | Stance::KneeLeaving => 0.5,
        }
    }

    /// Where the hands have to be.
    fn target(&self, skeleton: &Skeleton) -> Point {
        let outline = &self.grip.outline;
        let (from, near) = match self.stance {
            Stance::KneeLeaving => {
                return Point::new(
                    outline.nearest_before_belly(self.size, skeleton.l5s1.x),
                    self.grip.height_m,
                );
            }
            Stance::HalfKneel => (
                skeleton.right.knee.x,
                outline.nearest_before_kneeling(self.size),
            ),
            Stance::TwoFeet | Stance::OneFoot => {
                (0.0, nearest(self.way, self.size, outline, skeleton))
            }
        };
        let x = self.grip.reach_m.map_or(near, |asked| farther(asked, near));
        Point::new(from + x, self.grip.height_m)
    }

    /// How far the hands are above or below the load, m. A hugged load goes with the hands.
    fn height_off(&self, hands: Point) -> f64 {
        match self.stance {
            Stance::KneeLeaving => 0.0,
            Stance::TwoFeet | Stance::HalfKneel | Stance::OneFoot => hands.z - self.grip.height_m,
        }
    }

    fn support(&self, skeleton: &Skeleton) -> (f64, f64) {
        support(self.stance, skeleton)
    }

    fn accept(&self, at: &Unknowns) -> Result<Lowest, NoPosture> {
        let angles = at.angles(self.stance);
        let skeleton = Skeleton::of(self.size, &angles);
        let hands = skeleton.arm_right.grip;
        let finite = at.to_vector().iter().all(|angle| angle.is_finite());
        let off = Point::new(hands.x - self.target(&skeleton).x, self.height_off(hands));
        let reached = off.distance(Point::default()) <= HANDS_WITHIN_M;
        if !finite || !reached {
            return Err(NoPosture::OutOfReach);
        }
        let out = self.held(at).iter().any(|(held, angle)| {
            beyond(angle.to_degrees(), held.min, held.max).abs() > RANGE_WITHIN_DEG
        });
        let afloat = matches!(self.stance, Stance::HalfKneel | Stance::KneeLeaving)
            && (skeleton.right.knee.z - self.size.length(share::KNEELING_KNEE_HEIGHT)).abs()
                > HANDS_WITHIN_M;
        if out || afloat {
            return Err(NoPosture::BeyondRange);
        }
        let support = self.support(&skeleton);
        let com = skeleton.centre_of_mass(self.grip.load.value(), hands).x;
        if com < support.0 || com > support.1 {
            return Err(NoPosture::TipsOver);
        }
        Ok(Lowest {
            way: self.way,
            stance: self.stance,
            angles,
            skeleton,
            load: self.grip.load,
            load_at: hands,
            fit: fit(self.way, self.size, &self.grip.outline),
            support,
        })
    }
}

fn fit(way: Way, size: Size, outline: &Outline) -> Fit {
    match way {
        Way::Upright => Fit::InFront,
        Way::GolfersLift => Fit::BetweenFeet,
        Way::HipHinge | Way::Squat | Way::HalfKneelingLunge | Way::FreeBend => outline.fit(size),
    }
}

/// The nearest the hands come to the left ankle this way, m.
fn nearest(way: Way, size: Size, outline: &Outline, skeleton: &Skeleton) -> f64 {
    match (way, fit(way, size, outline)) {
        (Way::GolfersLift, _) => nearest_beside(size),
        (Way::Upright, _) => outline.nearest_before_belly(size, skeleton.l5s1.x),
        (Way::HalfKneelingLunge, _) => outline.nearest_before_kneeling(size),
        (_, Fit::BetweenFeet) => nearest_between(size),
        (_, Fit::InFront) => outline.nearest_in_front(size, &skeleton.left),
    }
}

/// Back and front end of the support, m: the foot or feet from heel to toes; on one knee, from the knee on the
/// ground to the middle of the front foot.
pub(super) fn support(stance: Stance, skeleton: &Skeleton) -> (f64, f64) {
    match stance {
        Stance::TwoFeet | Stance::OneFoot | Stance::KneeLeaving => {
            (skeleton.left.heel.x, skeleton.left.toe.x)
        }
        Stance::HalfKneel => {
            let middle = skeleton.left.heel.towards(skeleton.left.toe, 0.5).x;
            (kneeling_contact(skeleton).x, middle)
        }
    }
}

/// Where the kneeling leg meets the ground: below the tibial tubercle.
pub(crate) fn kneeling_contact(skeleton: &Skeleton) -> Point {
    let tubercle = skeleton
        .right
        .knee
        .towards(skeleton.right.ankle, share::TUBERCLE);
    Point::new(tubercle.x, 0.0)
}

/// How far outside a range, signed; 0 inside.
fn beyond(value: f64, min: f64, max: f64) -> f64 {
    if value < min {
        value - min
    } else if value > max {
        value - max
    } else {
        0.0
    }
}
