//! The largest back moment along the way, and where.

use super::statics::GRAVITY;
use super::support::{Touch, in_frame};
use crate::posture::geometry::Point;
use crate::posture::path::Path;
use crate::posture::skeleton::{Angles, Segment, Skeleton};
use crate::posture::solve::Lowest;

/// The largest extensor moment at L5/S1 along the way up, with the dynamic factor.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Peak {
    /// Where: 0 lowest, 1 standing again.
    pub at: f64,
    /// The moment, N·m.
    pub moment_nm: f64,
}

/// What is lifted is also set moving: at lift-off and as the rear knee leaves the ground moment and weight count
/// this many times. House rule: published lifts peak shortly after lift-off, and a calm lift adds about a quarter.
pub const DYNAMIC_FACTOR: f64 = 1.25;

/// The largest moment with what it takes to find the forces there.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct AtPeak {
    /// The moment, and where.
    pub peak: Peak,
    /// The posture there.
    pub angles: Angles,
    /// How many times moment and weight count there.
    pub factor: f64,
    /// The force on a leaning hand there, N.
    pub on_hand_n: Point,
}

/// Finds it among the frames of the way up, the lowest posture first. A hand that leans goes on leaning, as hard as
/// at the lowest point, for as long as it reaches.
///
/// Above L5/S1 nothing touches the ground, so the moment there needs no ground forces.
#[must_use]
pub fn back_moment(lowest: &Lowest, path: &Path, touch: Option<&Touch>) -> AtPeak {
    let nothing = AtPeak {
        peak: Peak {
            at: 0.0,
            moment_nm: 0.0,
        },
        angles: lowest.angles,
        factor: 1.0,
        on_hand_n: Point::default(),
    };
    path.frames
        .iter()
        .filter(|frame| frame.loaded)
        .map(|frame| {
            let factor = 1.0 + (DYNAMIC_FACTOR - 1.0) * frame.push;
            let leaning =
                touch.and_then(|touch| in_frame(touch, lowest.skeleton.size, &frame.angles));
            let (skeleton, on_hand_n, eased) = match &leaning {
                Some((touch, skeleton)) => {
                    (skeleton, touch.on_hand_n, touch.eases_nm(skeleton.l5s1))
                }
                None => (&frame.skeleton, Point::default(), 0.0),
            };
            let moment_nm = factor * moment_above(skeleton, lowest.load.value()) - eased;
            AtPeak {
                peak: Peak {
                    at: frame.at,
                    moment_nm,
                },
                angles: frame.angles,
                factor,
                on_hand_n,
            }
        })
        .fold(nothing, |most, here| {
            if here.peak.moment_nm > most.peak.moment_nm {
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
