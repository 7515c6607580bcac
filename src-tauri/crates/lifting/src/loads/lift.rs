//! One way put to one person and one task: posture, path, joint loads.

use super::peak::{Peak, back_moment};
use super::spine::{DiscForces, LeverArm, disc_forces_under, mass_above};
use super::statics::{Equilibrium, GRAVITY, Joint, equilibrium, equilibrium_leaning};
use super::support::{HandSupport, NoSupport, Touch, lean};
use crate::advise::facts::Facts;
use crate::body::{Person, Side};
use crate::posture::fit::Outline;
use crate::posture::geometry::Point;
use crate::posture::path::{Path, path};
use crate::posture::skeleton::Size;
use crate::posture::solve::{Grip, Lowest, NoPosture, lowest};
use crate::quantity::{BodyMass, Centimetres, Kilograms, Stature};
use crate::way::Way;
use thiserror::Error;

/// 5th percentile of women: stature and mass (ANSUR II, Gordon et al. 2014: 1525 mm, 51.2 kg).
const SMALL: (f64, f64) = (152.5, 51.2);
/// 95th percentile of men: stature and mass (ANSUR II, Gordon et al. 2014: 1870 mm, 110.7 kg).
const LARGE: (f64, f64) = (187.0, 110.7);
/// Width and depth of something light that was not measured. House rule: it fits one hand.
const HANDFUL: (Centimetres, Centimetres) =
    (Centimetres::clamped(20.0), Centimetres::clamped(15.0));

/// A way with its posture and what it costs.
#[derive(Debug, Clone, PartialEq)]
pub struct Lift {
    /// The lowest posture, the left leg in front or standing.
    pub lowest: Lowest,
    /// The side in front or standing: `Left` as solved, `Right` mirrored.
    pub front: Side,
    /// The way down and up.
    pub path: Path,
    /// The hand that leans, if one does.
    pub touch: Option<Touch>,
    /// Equilibrium at the lowest posture.
    pub equilibrium: Equilibrium,
    /// The largest back moment along the way.
    pub peak: Peak,
    /// Forces on L5/S1 at the lowest posture, at rest.
    pub disc: DiscForces,
    /// Forces on L5/S1 where the back moment is largest, with the dynamic factor.
    pub disc_at_peak: DiscForces,
}

/// Solves a way for a person and a task. Without stature or mass of the person, the worse of a small woman and
/// a large man.
///
/// # Errors
/// [`NoPosture`] when there is no such posture.
pub fn lift(way: Way, facts: &Facts<'_>, arm: LeverArm) -> Result<Lift, NoPosture> {
    lift_leaning(way, facts, arm, None).map_err(|why| match why {
        NoLift::Posture(why) => why,
        NoLift::Support(_) => NoPosture::OutOfReach,
    })
}

/// Why there is no such lift.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Error)]
pub enum NoLift {
    /// There is no such posture.
    #[error(transparent)]
    Posture(#[from] NoPosture),
    /// A hand cannot lean there.
    #[error(transparent)]
    Support(#[from] NoSupport),
}

/// The same, with one hand that leans and lifts nothing.
///
/// # Errors
/// [`NoLift`] when there is no such posture, or the hand cannot lean there.
pub fn lift_leaning(
    way: Way,
    facts: &Facts<'_>,
    arm: LeverArm,
    support: Option<&HandSupport>,
) -> Result<Lift, NoLift> {
    let grip = grip(facts);
    let mut worst: Result<Lift, NoLift> = Err(NoPosture::OutOfReach.into());
    for size in sizes(facts.person) {
        let solved = solve(way, size, &grip, front_side(way, facts), arm, support)?;
        let worse = worst
            .as_ref()
            .map_or(true, |known| solved.peak.moment_nm > known.peak.moment_nm);
        if worse {
            worst = Ok(solved);
        }
    }
    worst
}

fn solve(
    way: Way,
    size: Size,
    grip: &Grip,
    front: Side,
    arm: LeverArm,
    support: Option<&HandSupport>,
) -> Result<Lift, NoLift> {
    let free = lowest(way, size, grip)?;
    let (lowest, touch) = match support {
        Some(support) => {
            let (leaning, touch) = lean(&free, support)?;
            (leaning, Some(touch))
        }
        None => (free, None),
    };
    let path = path(&lowest, grip);
    let equilibrium = equilibrium_leaning(&lowest, touch.as_ref());
    let weight = mass_above(&lowest) * GRAVITY;
    let on_hand = touch.map_or(Point::default(), |touch| touch.on_hand_n);
    let disc = disc_forces_under(
        &lowest.angles,
        equilibrium.moment(Joint::L5S1),
        on_hand + Point::new(0.0, -weight),
        arm,
    );
    let found = back_moment(&lowest, &path, touch.as_ref());
    let peak = found.peak;
    let disc_at_peak = disc_forces_under(
        &found.angles,
        peak.moment_nm,
        found.on_hand_n + Point::new(0.0, -found.factor * weight),
        arm,
    );
    Ok(Lift {
        touch,
        front,
        path,
        equilibrium,
        peak,
        disc,
        disc_at_peak,
        lowest,
    })
}

impl Lift {
    /// The largest extensor moment at a joint of the legs: at the lowest posture, or as the rear knee leaves the
    /// ground. Names are the person's own left and right.
    #[must_use]
    pub fn leg_moment(&self, joint: Joint) -> f64 {
        let solved = match self.front {
            Side::Left => joint,
            Side::Right => joint.mirrored(),
        };
        let here = self.equilibrium.moment(solved);
        let leaving = self
            .path
            .leaving
            .as_ref()
            .map_or(here, |leaving| equilibrium(leaving).moment(solved));
        if leaving.abs() > here.abs() {
            leaving
        } else {
            here
        }
    }
}

/// The grip of a request: as near as the load lets the hands come unless a reach was said.
#[must_use]
pub fn grip(facts: &Facts<'_>) -> Grip {
    let task = facts.task;
    let unmeasured = task.width.is_none() && task.depth.is_none() && facts.light() && !facts.bulky;
    let (width, depth) = if unmeasured {
        (Some(HANDFUL.0), Some(HANDFUL.1))
    } else {
        (task.width, task.depth)
    };
    Grip {
        load: facts.mass.unwrap_or(Kilograms::clamped(0.0)),
        height_m: facts.start.value() / 100.0,
        reach_m: task.reach.map(|_| facts.reach.value() / 100.0),
        outline: Outline::new(width, depth),
    }
}

/// The sizes to judge by.
fn sizes(person: &Person) -> Vec<Size> {
    let size = |(stature, mass): (f64, f64)| {
        Size::new(
            person.stature.unwrap_or(Stature::clamped(stature)),
            person.mass.unwrap_or(BodyMass::clamped(mass)),
        )
    };
    match (person.stature, person.mass) {
        (Some(_), Some(_)) => vec![size(LARGE)],
        _ => vec![size(SMALL), size(LARGE)],
    }
}

/// Which leg is in front or stands: kneel on the knee that hurts less, stand on the hip that hurts less.
fn front_side(way: Way, facts: &Facts<'_>) -> Side {
    let sore = match way {
        Way::HalfKneelingLunge if facts.knee_right.score > facts.knee_left.score => true,
        Way::GolfersLift => facts.hip_left.score > facts.hip_right.score,
        Way::HalfKneelingLunge | Way::HipHinge | Way::Squat | Way::FreeBend | Way::Upright => false,
    };
    if sore { Side::Right } else { Side::Left }
}
