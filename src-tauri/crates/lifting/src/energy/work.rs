//! The mechanical work of getting up again with the load, from the path.

use crate::loads::statics::GRAVITY;
use crate::posture::path::{Frame, Path};
use crate::quantity::{Joules, Kilograms};

/// Work against gravity from the lowest posture to standing, J: what body and load gain in height.
#[must_use]
pub fn rising(path: &Path, load: Kilograms) -> Joules {
    let loaded: Vec<&Frame> = path.frames.iter().filter(|frame| frame.loaded).collect();
    let height = |frame: &Frame| {
        let skeleton = &frame.skeleton;
        let mass: f64 = skeleton
            .segments()
            .iter()
            .map(|placed| placed.mass_kg)
            .sum::<f64>()
            + load.value();
        skeleton
            .centre_of_mass(load.value(), skeleton.arm_right.grip)
            .z
            * mass
    };
    let gained = match (loaded.first(), loaded.last()) {
        (Some(lowest), Some(standing)) => height(standing) - height(lowest),
        _ => 0.0,
    };
    Joules::of(gained * GRAVITY)
}
