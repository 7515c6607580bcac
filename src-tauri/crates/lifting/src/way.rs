//! The ways to lift.

use crate::naming::named;

named!(
    /// A way to lift.
    Way {
        /// Hips deep, knees shallow, trunk straight and inclined.
        HipHinge = "hinge",
        /// Knees deep, hips low between the feet, trunk near upright.
        Squat = "squat",
        /// Down on one knee, load hugged in, then stand up.
        HalfKneelingLunge = "lunge",
        /// The spine simply bends.
        FreeBend = "free_bend",
        /// One leg; the other swings back as a counterweight; one hand.
        GolfersLift = "golfer",
        /// For what is already at or above knuckle height: no low way is needed.
        Upright = "upright",
    }
);

impl Way {
    /// The five ways from low down.
    pub const FROM_LOW: [Self; 5] = [
        Self::HipHinge,
        Self::Squat,
        Self::HalfKneelingLunge,
        Self::FreeBend,
        Self::GolfersLift,
    ];
}
