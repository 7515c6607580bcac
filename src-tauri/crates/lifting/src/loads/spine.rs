//! Compression and shear at L5/S1 from the moment there: one equivalent back extensor with a published lever arm.

use crate::body::segments;
use crate::posture::geometry::Point;
use crate::posture::skeleton::Angles;
use crate::posture::solve::Lowest;
use crate::quantity::OutOfRange;

/// Lever arm of the equivalent back extensor, m: a visible parameter, since sources differ between 0.05 and
/// 0.08 m and the muscle's force goes as its inverse.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LeverArm(f64);

impl LeverArm {
    /// 0.06 m (McGill & Norman, from memory): between the classic 0.05 (Chaffin & Andersson) and 0.075.
    pub const USUAL: Self = Self(0.06);

    /// A lever arm between 0.04 and 0.09 m.
    ///
    /// # Errors
    /// [`OutOfRange`] outside.
    pub fn new(metres: f64) -> Result<Self, OutOfRange> {
        if (0.04..=0.09).contains(&metres) {
            Ok(Self(metres))
        } else {
            Err(OutOfRange {
                name: "lever arm",
                unit: "m",
                min: 0.04,
                max: 0.09,
            })
        }
    }

    /// The lever arm, m.
    #[must_use]
    pub const fn metres(self) -> f64 {
        self.0
    }
}

/// Angle of the oblique extensor fibres to the compressive axis, neutral and fully flexed spine, degrees
/// (McGill, Hughson & Parks 2000, at L3; from memory; source `fibre_obliquity`).
const OBLIQUE_NEUTRAL_DEG: f64 = 25.7;
const OBLIQUE_FLEXED_DEG: f64 = 10.7;
/// Flexion between pelvis and trunk that counts as full, degrees. Estimate.
const FULL_FLEXION_DEG: f64 = 60.0;
/// Share of the extensors' force that runs in oblique fibres. Estimate.
const OBLIQUE_SHARE: f64 = 0.3;

/// Forces on the L5/S1 disc, N.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct DiscForces {
    /// Along the disc's axis.
    pub compression_n: f64,
    /// Across it, positive where the upper body slides forward.
    pub shear_n: f64,
    /// The equivalent muscle's force.
    pub muscle_n: f64,
}

/// Forces on the disc from the extensor moment there (N·m) and the weight carried above it (N).
///
/// The disc's axis lies halfway between pelvis and trunk. As the spine flexes the oblique fibres turn along it
/// and hold less against shear.
#[must_use]
pub fn disc_forces(
    angles: &Angles,
    moment_nm: f64,
    weight_above_n: f64,
    arm: LeverArm,
) -> DiscForces {
    disc_forces_under(angles, moment_nm, Point::new(0.0, -weight_above_n), arm)
}

/// The same under any force from outside on all that is above the disc (N, x forward, z up): its weight, and what a
/// leaning hand takes off.
#[must_use]
pub fn disc_forces_under(
    angles: &Angles,
    moment_nm: f64,
    above_n: Point,
    arm: LeverArm,
) -> DiscForces {
    let lean = f64::midpoint(angles.pelvis, angles.trunk);
    let flexed = ((angles.trunk - angles.pelvis).to_degrees() / FULL_FLEXION_DEG).clamp(0.0, 1.0);
    let oblique =
        (OBLIQUE_NEUTRAL_DEG + (OBLIQUE_FLEXED_DEG - OBLIQUE_NEUTRAL_DEG) * flexed).to_radians();
    let muscle_n = moment_nm.abs() / arm.metres();
    DiscForces {
        compression_n: muscle_n - above_n.z * lean.cos() - above_n.x * lean.sin(),
        shear_n: above_n.x * lean.cos()
            - above_n.z * lean.sin()
            - OBLIQUE_SHARE * muscle_n * oblique.sin() * moment_nm.signum(),
        muscle_n,
    }
}

/// Mass carried above L5/S1, kg: upper trunk, head, both arms and the load.
#[must_use]
pub fn mass_above(lowest: &Lowest) -> f64 {
    let arms = 2.0 * (segments::UPPER_ARM.mass + segments::FOREARM.mass + segments::HAND.mass);
    lowest
        .skeleton
        .size
        .mass(segments::UPPER_TRUNK_MASS + segments::HEAD_MASS + arms)
        + lowest.load.value()
}
