//! From joint angles to where every joint and every segment's centre of mass is.

use super::geometry::Point;
use crate::body::segments as share;
use crate::naming::named;
use crate::quantity::{BodyMass, Stature};

named!(
    /// A segment of the planar body. The arms are drawn for both sides; a two-handed grip moves them alike.
    Segment {
        /// Pelvis, hip to L5/S1. The root of the tree.
        Pelvis = "pelvis",
        /// Trunk above L5/S1.
        UpperTrunk = "upper_trunk",
        /// Head and neck.
        Head = "head",
        /// Left thigh.
        ThighLeft = "thigh_left",
        /// Left shank.
        ShankLeft = "shank_left",
        /// Left foot.
        FootLeft = "foot_left",
        /// Right thigh.
        ThighRight = "thigh_right",
        /// Right shank.
        ShankRight = "shank_right",
        /// Right foot.
        FootRight = "foot_right",
        /// Left upper arm.
        UpperArmLeft = "upper_arm_left",
        /// Left forearm.
        ForearmLeft = "forearm_left",
        /// Left hand.
        HandLeft = "hand_left",
        /// Right upper arm.
        UpperArmRight = "upper_arm_right",
        /// Right forearm.
        ForearmRight = "forearm_right",
        /// Right hand.
        HandRight = "hand_right",
    }
);

impl Segment {
    /// The same segment of the other side.
    #[must_use]
    pub const fn mirrored(self) -> Self {
        match self {
            Self::Pelvis => Self::Pelvis,
            Self::UpperTrunk => Self::UpperTrunk,
            Self::Head => Self::Head,
            Self::ThighLeft => Self::ThighRight,
            Self::ShankLeft => Self::ShankRight,
            Self::FootLeft => Self::FootRight,
            Self::ThighRight => Self::ThighLeft,
            Self::ShankRight => Self::ShankLeft,
            Self::FootRight => Self::FootLeft,
            Self::UpperArmLeft => Self::UpperArmRight,
            Self::ForearmLeft => Self::ForearmRight,
            Self::HandLeft => Self::HandRight,
            Self::UpperArmRight => Self::UpperArmLeft,
            Self::ForearmRight => Self::ForearmLeft,
            Self::HandRight => Self::HandLeft,
        }
    }

    /// The segment it hangs from; `None` for the root.
    #[must_use]
    pub const fn parent(self) -> Option<Self> {
        Some(match self {
            Self::Pelvis => return None,
            Self::UpperTrunk | Self::ThighLeft | Self::ThighRight => Self::Pelvis,
            Self::Head | Self::UpperArmLeft | Self::UpperArmRight => Self::UpperTrunk,
            Self::ShankLeft => Self::ThighLeft,
            Self::ShankRight => Self::ThighRight,
            Self::FootLeft => Self::ShankLeft,
            Self::FootRight => Self::ShankRight,
            Self::ForearmLeft => Self::UpperArmLeft,
            Self::ForearmRight => Self::UpperArmRight,
            Self::HandLeft => Self::ForearmLeft,
            Self::HandRight => Self::ForearmRight,
        })
    }
}

/// A person's size, for scaling the segments.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Size {
    /// Stature, m.
    stature_m: f64,
    /// Body mass, kg.
    mass_kg: f64,
}

impl Size {
    /// A size.
    #[must_use]
    pub fn new(stature: Stature, mass: BodyMass) -> Self {
        Self {
            stature_m: stature.value() / 100.0,
            mass_kg: mass.value(),
        }
    }

    /// A share of stature in metres.
    #[must_use]
    pub fn length(self, share: f64) -> f64 {
        share * self.stature_m
    }

    /// A share of body mass in kilograms.
    #[must_use]
    pub fn mass(self, share: f64) -> f64 {
        share * self.mass_kg
    }
}

/// One leg, from the hip down. Angles in radians.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Leg {
    /// How far the thigh leans back from the knee up (the hip lies behind the knee).
    pub thigh: f64,
    /// How far the shank leans forward from the ankle up.
    pub shank: f64,
    /// The foot's direction from ankle to toes, downward from straight forward.
    pub foot: f64,
}

/// One arm, from the shoulder down. Angles in radians, forward from straight down.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Arm {
    /// Upper arm.
    pub upper: f64,
    /// Forearm and hand.
    pub fore: f64,
}

/// All joint angles of a posture, in radians.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Angles {
    /// Left leg.
    pub left: Leg,
    /// Right leg.
    pub right: Leg,
    /// Pelvis, forward from upright.
    pub pelvis: f64,
    /// Trunk above L5/S1, forward from upright.
    pub trunk: f64,
    /// Left arm.
    pub arm_left: Arm,
    /// Right arm.
    pub arm_right: Arm,
}

/// Where one segment is.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Placed {
    /// Which.
    pub segment: Segment,
    /// Its mass, kg.
    pub mass_kg: f64,
    /// Its proximal end: the joint it hangs from.
    pub from: Point,
    /// Its distal end.
    pub to: Point,
    /// Its centre of mass.
    pub com: Point,
}

/// A leg's joints.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LegPoints {
    /// Knee joint.
    pub knee: Point,
    /// Ankle joint.
    pub ankle: Point,
    /// Back of the heel, on the sole.
    pub heel: Point,
    /// Tip of the toes, on the sole.
    pub toe: Point,
}

/// An arm's joints.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ArmPoints {
    /// Elbow joint.
    pub elbow: Point,
    /// Wrist joint.
    pub wrist: Point,
    /// The knuckles, where a load is gripped.
    pub grip: Point,
}

/// Every joint of a posture, in metres.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Skeleton {
    /// The size it was drawn for.
    pub size: Size,
    /// Both hips, seen from the side.
    pub hip: Point,
    /// L5/S1.
    pub l5s1: Point,
    /// Both shoulders, seen from the side.
    pub shoulder: Point,
    /// The ear: centre of mass of head and neck.
    pub ear: Point,
    /// Left leg.
    pub left: LegPoints,
    /// Right leg.
    pub right: LegPoints,
    /// Left arm.
    pub arm_left: ArmPoints,
    /// Right arm.
    pub arm_right: ArmPoints,
    pelvis_com: Point,
    upper_trunk_com: Point,
}

impl Skeleton {
    /// Draws the body with the left ankle over the origin.
    #[must_use]
    pub fn of(size: Size, angles: &Angles) -> Self {
        let ankle = Point::new(0.0, size.length(share::ANKLE_HEIGHT));
        let knee = ankle + Point::up_leaning(angles.left.shank) * size.length(share::SHANK.length);
        let hip = knee + Point::up_leaning(-angles.left.thigh) * size.length(share::THIGH.length);
        let pelvis = Point::up_leaning(angles.pelvis);
        let trunk = Point::up_leaning(angles.trunk);
        let l5s1 = hip + pelvis * size.length(share::HIP_TO_L5S1);
        let shoulder = l5s1 + trunk * size.length(share::L5S1_TO_SHOULDER);
        Self {
            size,
            hip,
            l5s1,
            shoulder,
            ear: shoulder + trunk * size.length(share::SHOULDER_TO_EAR),
            left: leg(size, hip, angles.left),
            right: leg(size, hip, angles.right),
            arm_left: arm(size, shoulder, angles.arm_left),
            arm_right: arm(size, shoulder, angles.arm_right),
            pelvis_com: hip + pelvis * size.length(share::HIP_TO_PELVIS_COM),
            upper_trunk_com: l5s1 + trunk * size.length(share::upper_trunk_com()),
        }
    }

    /// Every segment with its mass, ends and centre of mass, parents first.
    #[must_use]
    pub fn segments(&self) -> [Placed; 15] {
        let place = |segment, mass: f64, from: Point, to: Point, com: Point| Placed {
            segment,
            mass_kg: self.size.mass(mass),
            from,
            to,
            com,
        };
        let limb = |segment, share: share::Share, from: Point, to: Point| {
            place(segment, share.mass, from, to, from.towards(to, share.com))
        };
        let hand = |segment, arm: ArmPoints| {
            let tip = arm.wrist.towards(arm.grip, 1.0 / share::HAND.com);
            place(segment, share::HAND.mass, arm.wrist, tip, arm.grip)
        };
        let foot = |segment, leg: LegPoints| {
            place(
                segment,
                share::FOOT.mass,
                leg.ankle,
                leg.toe,
                leg.heel.towards(leg.toe, share::FOOT.com),
            )
        };
        [
            place(
                Segment::Pelvis,
                share::PELVIS_MASS,
                self.hip,
                self.l5s1,
                self.pelvis_com,
            ),
            place(
                Segment::UpperTrunk,
                share::UPPER_TRUNK_MASS,
                self.l5s1,
                self.shoulder,
                self.upper_trunk_com,
            ),
            place(
                Segment::Head,
                share::HEAD_MASS,
                self.shoulder,
                self.ear,
                self.ear,
            ),
            limb(Segment::ThighLeft, share::THIGH, self.hip, self.left.knee),
            limb(
                Segment::ShankLeft,
                share::SHANK,
                self.left.knee,
                self.left.ankle,
            ),
            foot(Segment::FootLeft, self.left),
            limb(Segment::ThighRight, share::THIGH, self.hip, self.right.knee),
            limb(
                Segment::ShankRight,
                share::SHANK,
                self.right.knee,
                self.right.ankle,
            ),
            foot(Segment::FootRight, self.right),
            limb(
                Segment::UpperArmLeft,
                share::UPPER_ARM,
                self.shoulder,
                self.arm_left.elbow,
            ),
            limb(
                Segment::ForearmLeft,
                share::FOREARM,
                self.arm_left.elbow,
                self.arm_left.wrist,
            ),
            hand(Segment::HandLeft, self.arm_left),
            limb(
                Segment::UpperArmRight,
                share::UPPER_ARM,
                self.shoulder,
                self.arm_right.elbow,
            ),
            limb(
                Segment::ForearmRight,
                share::FOREARM,
                self.arm_right.elbow,
                self.arm_right.wrist,
            ),
            hand(Segment::HandRight, self.arm_right),
        ]
    }

    /// Centre of mass of body and load.
    #[must_use]
    pub fn centre_of_mass(&self, load_kg: f64, load_at: Point) -> Point {
        let start = (load_at * load_kg, load_kg);
        let (moment, mass) = self
            .segments()
            .iter()
            .fold(start, |(moment, mass), placed| {
                (moment + placed.com * placed.mass_kg, mass + placed.mass_kg)
            });
        moment * (1.0 / mass)
    }
}

fn leg(size: Size, hip: Point, leg: Leg) -> LegPoints {
    let knee = hip + Point::down_swung(leg.thigh) * size.length(share::THIGH.length);
    let ankle = knee + Point::up_leaning(leg.shank) * -size.length(share::SHANK.length);
    let length = size.length(share::FOOT.length);
    let (sin, cos) = leg.foot.sin_cos();
    let sole = ankle + Point::new(-sin, -cos) * size.length(share::ANKLE_HEIGHT);
    let forward = Point::new(cos, -sin) * length;
    LegPoints {
        knee,
        ankle,
        heel: sole - forward * share::HEEL_BEHIND_ANKLE,
        toe: sole + forward * (1.0 - share::HEEL_BEHIND_ANKLE),
    }
}

fn arm(size: Size, shoulder: Point, arm: Arm) -> ArmPoints {
    let elbow = shoulder + Point::down_swung(arm.upper) * size.length(share::UPPER_ARM.length);
    let fore = Point::down_swung(arm.fore);
    let wrist = elbow + fore * size.length(share::FOREARM.length);
    ArmPoints {
        elbow,
        wrist,
        grip: wrist + fore * size.length(share::HAND.length * share::HAND.com),
    }
}
