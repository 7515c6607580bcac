//! What makes a way that way, as angles in degrees: where each is best, and where it must stay.
//!
//! "Squat", "stoop", "straddle" and "kneeling" of the literature are described in words; the numbers below are
//! house rules read off those descriptions (Straker 2003; Burgess-Limerick 2003; Kingma 2006), wide enough for
//! the joint ranges of a supple adult (hip flexion 125, knee flexion 145, ankle 35 to 40 degrees with the foot flat).

use crate::way::Way;

/// One angle: best value, how strongly it is held (degrees that cost one unit), and its limits.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Held {
    /// Best, degrees.
    pub best: f64,
    /// Degrees away from best that cost one unit.
    pub give: f64,
    /// Smallest, degrees.
    pub min: f64,
    /// Largest, degrees.
    pub max: f64,
}

const fn held(best: f64, give: f64, min: f64, max: f64) -> Held {
    Held {
        best,
        give,
        min,
        max,
    }
}

/// The angles that make a way. Of the front or standing leg where the legs differ.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Signature {
    /// Knee flexion.
    pub knee: Held,
    /// Shank forward of upright.
    pub shank: Held,
    /// Hip flexion.
    pub hip: Held,
    /// Trunk above L5/S1 forward of upright.
    pub trunk: Held,
    /// Flexion between pelvis and trunk.
    pub lumbar: Held,
    /// Elbow flexion.
    pub elbow: Held,
    /// Upper arm forward of the trunk's line (shoulder flexion).
    pub shoulder: Held,
}

// Never quite straight: a straight elbow is a dead end from which the solver does not bend it again.
const ELBOW: Held = held(12.0, 20.0, 0.0, 140.0);
const SHOULDER: Held = held(70.0, 60.0, -20.0, 150.0);

/// The signature of a way.
#[must_use]
pub const fn of(way: Way) -> Signature {
    match way {
        // Knees shallow, shins near vertical, trunk straight and inclined.
        Way::HipHinge => Signature {
            knee: held(30.0, 30.0, 5.0, 105.0),
            shank: held(4.0, 5.0, -8.0, 22.0),
            hip: held(100.0, 60.0, 0.0, 140.0),
            trunk: held(65.0, 20.0, 0.0, 106.0),
            lumbar: held(0.0, 4.0, -5.0, 20.0),
            elbow: ELBOW,
            shoulder: SHOULDER,
        },
        // Knees deep, hips low between the feet, trunk near upright.
        Way::Squat => Signature {
            knee: held(115.0, 14.0, 60.0, 145.0),
            shank: held(28.0, 8.0, 0.0, 42.0),
            hip: held(110.0, 60.0, 0.0, 140.0),
            trunk: held(25.0, 10.0, -5.0, 70.0),
            lumbar: held(5.0, 6.0, -5.0, 35.0),
            elbow: ELBOW,
            shoulder: SHOULDER,
        },
        // Front knee about square, trunk near upright, load hugged.
        Way::HalfKneelingLunge => Signature {
            knee: held(95.0, 12.0, 60.0, 130.0),
            shank: held(2.0, 8.0, -20.0, 35.0),
            hip: held(105.0, 60.0, 0.0, 145.0),
            trunk: held(20.0, 14.0, -5.0, 90.0),
            lumbar: held(5.0, 6.0, -5.0, 30.0),
            elbow: held(10.0, 50.0, 0.0, 140.0),
            shoulder: SHOULDER,
        },
        // Knees near straight, the spine rounds.
        Way::FreeBend => Signature {
            knee: held(12.0, 8.0, 0.0, 35.0),
            shank: held(2.0, 4.0, -8.0, 12.0),
            hip: held(65.0, 40.0, 0.0, 110.0),
            trunk: held(90.0, 40.0, 0.0, 140.0),
            lumbar: held(45.0, 8.0, 20.0, 70.0),
            elbow: ELBOW,
            shoulder: SHOULDER,
        },
        // One knee soft, trunk straight and level, the other leg swings back.
        Way::GolfersLift => Signature {
            knee: held(20.0, 18.0, 0.0, 75.0),
            shank: held(6.0, 5.0, -8.0, 28.0),
            hip: held(90.0, 60.0, 0.0, 140.0),
            trunk: held(75.0, 20.0, 0.0, 115.0),
            lumbar: held(4.0, 5.0, -5.0, 35.0),
            elbow: ELBOW,
            shoulder: SHOULDER,
        },
        // Standing in front of it.
        Way::Upright => Signature {
            knee: held(5.0, 4.0, 0.0, 25.0),
            shank: held(2.0, 4.0, -6.0, 12.0),
            hip: held(5.0, 30.0, -10.0, 80.0),
            trunk: held(5.0, 10.0, -8.0, 60.0),
            lumbar: held(2.0, 5.0, -8.0, 25.0),
            elbow: held(30.0, 60.0, 0.0, 145.0),
            shoulder: held(40.0, 60.0, -20.0, 175.0),
        },
    }
}

/// The half-kneel as the rear knee leaves the ground, load hugged to the trunk.
#[must_use]
pub const fn knee_leaving() -> Signature {
    Signature {
        knee: held(112.0, 10.0, 60.0, 135.0),
        shank: held(22.0, 6.0, -10.0, 40.0),
        hip: held(115.0, 60.0, 0.0, 145.0),
        trunk: held(30.0, 12.0, -5.0, 80.0),
        lumbar: held(5.0, 6.0, -5.0, 30.0),
        elbow: held(60.0, 20.0, 0.0, 140.0),
        shoulder: held(30.0, 30.0, -60.0, 90.0),
    }
}
