//! How each way stands on the ground, and how seven unknown angles become a whole posture.

use super::least_squares::Vector;
use super::skeleton::{Angles, Arm, Leg};
use crate::naming::named;
use crate::way::Way;
use std::f64::consts::FRAC_PI_2;

/// The free leg of the golfer's lift follows this share of the trunk's lean. House rule.
const FREE_LEG_FOLLOWS: f64 = 0.85;
/// Its knee stays this soft, rad. House rule.
const FREE_KNEE: f64 = 0.5;
/// The rear foot of a half-kneel lies on its upper side, rad from the shank. House rule.
const REAR_FOOT: f64 = 1.25;
/// As the knee leaves the ground the rear ankle is already up: the shank has tipped over the knee this far forward
/// of upright, rad, and the foot stands on bent toes, rad from the shank. House rules.
const RISING_SHANK: f64 = 1.93;
const RISING_TOES: f64 = 0.53;
/// The arm that does not lift rests on the standing thigh: upper arm and forearm from straight down, rad. House rule.
const IDLE_ARM: Arm = Arm {
    upper: -0.5,
    fore: 0.1,
};

named!(
    /// What touches the ground.
    Stance {
        /// Both feet, level.
        TwoFeet = "two_feet",
        /// The left foot and the right knee.
        HalfKneel = "half_kneel",
        /// The left foot alone.
        OneFoot = "one_foot",
        /// The left foot, just as the right knee leaves the ground.
        KneeLeaving = "knee_leaving",
    }
);

impl Stance {
    /// The stance of a way at its lowest point.
    #[must_use]
    pub const fn of(way: Way) -> Self {
        match way {
            Way::HipHinge | Way::Squat | Way::FreeBend | Way::Upright => Self::TwoFeet,
            Way::HalfKneelingLunge => Self::HalfKneel,
            Way::GolfersLift => Self::OneFoot,
        }
    }
}

/// The unknowns by name, in radians.
#[derive(Debug, Clone, Copy)]
pub(super) struct Unknowns {
    pub(super) shank: f64,
    pub(super) thigh: f64,
    pub(super) pelvis: f64,
    pub(super) trunk: f64,
    pub(super) upper_arm: f64,
    pub(super) forearm: f64,
    pub(super) rear_thigh: f64,
}

impl Unknowns {
    pub(super) const fn from_vector(vector: &Vector) -> Self {
        let [shank, thigh, pelvis, trunk, upper_arm, forearm, rear_thigh] = *vector;
        Self {
            shank,
            thigh,
            pelvis,
            trunk,
            upper_arm,
            forearm,
            rear_thigh,
        }
    }

    pub(super) const fn to_vector(self) -> Vector {
        [
            self.shank,
            self.thigh,
            self.pelvis,
            self.trunk,
            self.upper_arm,
            self.forearm,
            self.rear_thigh,
        ]
    }

    /// The whole posture. The left leg stands in front or alone.
    pub(super) fn angles(&self, stance: Stance) -> Angles {
        let standing = Leg {
            thigh: self.thigh,
            shank: self.shank,
            foot: 0.0,
        };
        let lifting = Arm {
            upper: self.upper_arm,
            fore: self.forearm,
        };
        let (right, arm_left) = match stance {
            Stance::TwoFeet => (standing, lifting),
            Stance::HalfKneel => (
                Leg {
                    thigh: self.rear_thigh,
                    shank: FRAC_PI_2,
                    foot: FRAC_PI_2 + REAR_FOOT,
                },
                lifting,
            ),
            Stance::KneeLeaving => (
                Leg {
                    thigh: self.rear_thigh,
                    shank: RISING_SHANK,
                    foot: RISING_SHANK - RISING_TOES,
                },
                lifting,
            ),
            Stance::OneFoot => {
                let thigh = -FREE_LEG_FOLLOWS * self.trunk;
                let shank = FREE_KNEE - thigh;
                (
                    Leg {
                        thigh,
                        shank,
                        foot: shank,
                    },
                    IDLE_ARM,
                )
            }
        };
        Angles {
            left: standing,
            right,
            pelvis: self.pelvis,
            trunk: self.trunk,
            arm_left,
            arm_right: lifting,
        }
    }

    /// Knee flexion of the front or standing leg.
    pub(super) fn knee(&self) -> f64 {
        self.thigh + self.shank
    }

    /// Hip flexion of the front or standing leg.
    pub(super) fn hip(&self) -> f64 {
        self.thigh + self.pelvis
    }

    /// Flexion between pelvis and trunk.
    pub(super) fn lumbar(&self) -> f64 {
        self.trunk - self.pelvis
    }

    /// Elbow flexion.
    pub(super) fn elbow(&self) -> f64 {
        self.forearm - self.upper_arm
    }

    /// Shoulder flexion.
    pub(super) fn shoulder(&self) -> f64 {
        self.upper_arm + self.trunk
    }
}
