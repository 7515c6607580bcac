//! One way put to one person and one task: posture, path, joint loads.

use super::peak::{Peak, back_moment};
use super::spine::{DiscForces, LeverArm, disc_forces, mass_above};
use super::statics::{Equilibrium, GRAVITY, Joint, equilibrium};
use crate::advise::facts::Facts;
use crate::body::{Person, Side};
use crate::posture::fit::Outline;
use crate::posture::path::{Path, path};
use crate::posture::skeleton::Size;
use crate::posture::solve::{Grip, Lowest, NoPosture, lowest};
use crate::quantity::{BodyMass, Centimetres, Kilograms, Stature};
use crate::way::Way;

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
    let grip = grip(facts);
    let mut worst: Result<Lift, NoPosture> = Err(NoPosture::OutOfReach);
    for size in sizes(facts.person) {
        let solved = solve(way, size, &grip, front_side(way, facts), arm)?;
        let worse = worst
            .as_ref()
            .map_or(true, |known| solved.peak.moment_nm > known.peak.moment_nm);
        if worse {
            worst = Ok(solved);
        }
    }
    worst
}

fn solve(way: Way, size: Size, grip: &Grip, front: Side, arm: LeverArm) -> Result<Lift, NoPosture> {
    let lowest = lowest(way, size, grip)?;
    let path = path(&lowest, grip);
    let equilibrium = equilibrium(&lowest);
    let weight = mass_above(&lowest) * GRAVITY;
    let disc = disc_forces(&lowest.angles, equilibrium.moment(Joint::L5S1), weight, arm);
    let (peak, angles, factor) = back_moment(&lowest, &path);
    let disc_at_peak = disc_forces(&angles, peak.moment_nm, factor * weight, arm);
    Ok(Lift {
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
