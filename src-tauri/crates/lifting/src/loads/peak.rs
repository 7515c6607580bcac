//! The largest back moment along the way, and where.

use super::statics::{GRAVITY, Joint, equilibrium};
use crate::posture::path::Path;
use crate::posture::skeleton::{Segment, Skeleton};
use crate::posture::solve::Lowest;

/// The largest extensor moment at L5/S1 along the way up.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Peak {
    /// Where: 0 lowest, 1 standing again.
    pub at: f64,
    /// The moment, N·m.
    pub moment_nm: f64,
}

/// Finds it among the lowest posture, the frames on the way up, and the knee leaving the ground.
///
/// Above L5/S1 nothing touches the ground, so the moment there needs no ground forces.
#[must_use]
pub fn back_moment(lowest: &Lowest, path: &Path) -> Peak {
    let at_lowest = Peak {
        at: 0.0,
        moment_nm: equilibrium(lowest).moment(Joint::L5S1),
    };
    path.frames
        .iter()
        .filter(|frame| frame.loaded)
        .map(|frame| Peak {
            at: frame.at,
            moment_nm: moment_above(&frame.skeleton, lowest.load.value()),
        })
        .fold(at_lowest, |most, here| {
            if here.moment_nm > most.moment_nm {
                here
            } else {
                most
            }
        })
}

/// Extensor moment at L5/S1 of everything above it, N·m.
fn moment_above(skeleton: &Skeleton, load_kg: f64) -> f64 {
    let above: f64 = skeleton
        .segments()
        .iter()
        .filter(|placed| is_above(placed.segment))
        .map(|placed| placed.mass_kg * (placed.com.x - skeleton.l5s1.x))
        .sum();
    GRAVITY * (above + load_kg * (skeleton.arm_right.grip.x - skeleton.l5s1.x))
}

fn is_above(segment: Segment) -> bool {
    std::iter::successors(Some(segment), |segment| segment.parent())
        .any(|segment| segment == Segment::UpperTrunk)
}
