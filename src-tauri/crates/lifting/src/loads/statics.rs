//! Static equilibrium of a posture: what the ground carries, and the moment at every joint.
//!
//! Moments are taken segment by segment from the free ends, with gravity, load and ground forces. Positive is
//! what an extensor has to give: it straightens the joint (the ankle: points the toes down).

use super::support::{Touch, ground};
use crate::naming::named;
use crate::posture::geometry::Point;
use crate::posture::skeleton::{Placed, Segment};
use crate::posture::solve::{Lowest, kneeling_contact};
use crate::posture::stance::Stance;

/// Standard gravity, m/s² (3rd CGPM, 1901).
pub const GRAVITY: f64 = 9.80665;
/// Where the front foot of a half-kneel presses, share of the foot from the heel. House rule: its middle.
const FRONT_FOOT_PRESSES: f64 = 0.5;

named!(
    /// A joint: the proximal end of every segment but the pelvis.
    Joint {
        /// L5/S1.
        L5S1 = "l5s1",
        /// Neck.
        Neck = "neck",
        /// Left hip.
        HipLeft = "hip_left",
        /// Left knee.
        KneeLeft = "knee_left",
        /// Left ankle.
        AnkleLeft = "ankle_left",
        /// Right hip.
        HipRight = "hip_right",
        /// Right knee.
        KneeRight = "knee_right",
        /// Right ankle.
        AnkleRight = "ankle_right",
        /// Left shoulder.
        ShoulderLeft = "shoulder_left",
        /// Left elbow.
        ElbowLeft = "elbow_left",
        /// Left wrist.
        WristLeft = "wrist_left",
        /// Right shoulder.
        ShoulderRight = "shoulder_right",
        /// Right elbow.
        ElbowRight = "elbow_right",
        /// Right wrist.
        WristRight = "wrist_right",
    }
);

impl Joint {
    /// The segment that hangs from it.
    #[must_use]
    pub const fn segment(self) -> Segment {
        match self {
            Self::L5S1 => Segment::UpperTrunk,
            Self::Neck => Segment::Head,
            Self::HipLeft => Segment::ThighLeft,
            Self::KneeLeft => Segment::ShankLeft,
            Self::AnkleLeft => Segment::FootLeft,
            Self::HipRight => Segment::ThighRight,
            Self::KneeRight => Segment::ShankRight,
            Self::AnkleRight => Segment::FootRight,
            Self::ShoulderLeft => Segment::UpperArmLeft,
            Self::ElbowLeft => Segment::ForearmLeft,
            Self::WristLeft => Segment::HandLeft,
            Self::ShoulderRight => Segment::UpperArmRight,
            Self::ElbowRight => Segment::ForearmRight,
            Self::WristRight => Segment::HandRight,
        }
    }

    /// The same joint of the other side.
    #[must_use]
    pub const fn mirrored(self) -> Self {
        match self {
            Self::L5S1 => Self::L5S1,
            Self::Neck => Self::Neck,
            Self::HipLeft => Self::HipRight,
            Self::KneeLeft => Self::KneeRight,
            Self::AnkleLeft => Self::AnkleRight,
            Self::HipRight => Self::HipLeft,
            Self::KneeRight => Self::KneeLeft,
            Self::AnkleRight => Self::AnkleLeft,
            Self::ShoulderLeft => Self::ShoulderRight,
            Self::ElbowLeft => Self::ElbowRight,
            Self::WristLeft => Self::WristRight,
            Self::ShoulderRight => Self::ShoulderLeft,
            Self::ElbowRight => Self::ElbowLeft,
            Self::WristRight => Self::WristLeft,
        }
    }

    /// +1 where straightening the joint turns its segment anticlockwise (from forward to up), −1 where clockwise.
    #[must_use]
    pub const fn extension_turns(self) -> f64 {
        match self {
            Self::L5S1 | Self::Neck | Self::KneeLeft | Self::KneeRight => 1.0,
            Self::HipLeft
            | Self::HipRight
            | Self::AnkleLeft
            | Self::AnkleRight
            | Self::ShoulderLeft
            | Self::ElbowLeft
            | Self::WristLeft
            | Self::ShoulderRight
            | Self::ElbowRight
            | Self::WristRight => -1.0,
        }
    }
}

/// A force on the body from outside, at a point, on a segment.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Outside {
    /// The segment it acts on.
    pub on: Segment,
    /// Where, m.
    pub at: Point,
    /// The force, N: x forward, z up.
    pub force_n: Point,
}

/// The moment at one joint.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Moment {
    /// Which joint.
    pub joint: Joint,
    /// Where it is, m.
    pub at: Point,
    /// Extensor moment, N·m.
    pub extensor_nm: f64,
}

/// A posture in equilibrium.
#[derive(Debug, Clone, PartialEq)]
pub struct Equilibrium {
    /// Ground forces.
    pub contacts: Vec<Outside>,
    /// The load's weight, at the hand or hands that carry it.
    pub load: Vec<Outside>,
    /// Moments at all joints.
    pub moments: Vec<Moment>,
    /// Centre of mass of body and load, m.
    pub centre_of_mass: Point,
    /// What is left of force (N) and moment about the origin (N·m) over the whole body: 0 but for rounding.
    pub residual: (f64, f64),
}

impl Equilibrium {
    /// The extensor moment at a joint, N·m.
    #[must_use]
    pub fn moment(&self, joint: Joint) -> f64 {
        self.moments
            .iter()
            .find(|moment| moment.joint == joint)
            .map_or(0.0, |moment| moment.extensor_nm)
    }
}

/// Solves the equilibrium of a posture.
#[must_use]
pub fn equilibrium(lowest: &Lowest) -> Equilibrium {
    equilibrium_leaning(lowest, None)
}

/// The same with a hand that leans: it lifts nothing, and presses as hard as it is said to.
#[must_use]
pub fn equilibrium_leaning(lowest: &Lowest, touch: Option<&Touch>) -> Equilibrium {
    let segments = lowest.skeleton.segments();
    let load = load_forces(lowest, touch.is_some());
    let centre_of_mass = lowest
        .skeleton
        .centre_of_mass(lowest.load.value(), lowest.load_at);
    let (at, carried) = ground(lowest, touch);
    let mut contacts = contacts(lowest, at, carried);
    contacts.extend(touch.iter().flat_map(|touch| touch.forces()));
    let outside: Vec<Outside> = segments
        .iter()
        .map(weight_of)
        .chain(load.iter().copied())
        .chain(contacts.iter().copied())
        .collect();
    let moments = Joint::ALL
        .iter()
        .map(|joint| {
            let at = segments
                .iter()
                .find(|placed| placed.segment == joint.segment())
                .map_or(Point::default(), |placed| placed.from);
            let from_outside: f64 = outside
                .iter()
                .filter(|force| hangs_from(force.on, joint.segment()))
                .map(|force| turn(force, at))
                .sum();
            Moment {
                joint: *joint,
                at,
                extensor_nm: -from_outside * joint.extension_turns(),
            }
        })
        .collect();
    let left = outside
        .iter()
        .fold((Point::default(), 0.0), |(force, moment), part| {
            (force + part.force_n, moment + turn(part, Point::default()))
        });
    let residual = (left.0.x.hypot(left.0.z), left.1);
    Equilibrium {
        contacts,
        load,
        moments,
        centre_of_mass,
        residual,
    }
}

fn weight_of(placed: &Placed) -> Outside {
    Outside {
        on: placed.segment,
        at: placed.com,
        force_n: Point::new(0.0, -placed.mass_kg * GRAVITY),
    }
}

fn load_forces(lowest: &Lowest, one_hand_leans: bool) -> Vec<Outside> {
    let weight = lowest.load.value() * GRAVITY;
    let hands: &[Segment] = if one_hand_leans || lowest.stance == Stance::OneFoot {
        &[Segment::HandRight]
    } else {
        &[Segment::HandLeft, Segment::HandRight]
    };
    let each = weight / hands.len() as f64;
    hands
        .iter()
        .map(|hand| Outside {
            on: *hand,
            at: lowest.load_at,
            force_n: Point::new(0.0, -each),
        })
        .collect()
}

/// Two level feet share equally, under the centre of mass (with a hand on furniture: where the rest of the weight
/// acts); a single foot stands under it; a half-kneel shares
/// between the middle of the front foot and the tibial tubercle, the rear toes carrying nothing. Horizontal
/// forces are zero.
fn contacts(lowest: &Lowest, acts_at: f64, weight: f64) -> Vec<Outside> {
    let up = |on, x: f64, share: f64| Outside {
        on,
        at: Point::new(x, 0.0),
        force_n: Point::new(0.0, weight * share),
    };
    match lowest.stance {
        Stance::TwoFeet => vec![
            up(Segment::FootLeft, acts_at, 0.5),
            up(Segment::FootRight, acts_at, 0.5),
        ],
        Stance::OneFoot | Stance::KneeLeaving => vec![up(Segment::FootLeft, acts_at, 1.0)],
        Stance::HalfKneel => {
            let foot = lowest
                .skeleton
                .left
                .heel
                .towards(lowest.skeleton.left.toe, FRONT_FOOT_PRESSES)
                .x;
            let knee = kneeling_contact(&lowest.skeleton).x;
            let on_foot = ((acts_at - knee) / (foot - knee)).clamp(0.0, 1.0);
            vec![
                up(Segment::FootLeft, foot, on_foot),
                up(Segment::ShankRight, knee, 1.0 - on_foot),
            ]
        }
    }
}

/// Moment of a force about a point, anticlockwise (from forward to up), N·m.
fn turn(force: &Outside, about: Point) -> f64 {
    let arm = force.at - about;
    arm.x * force.force_n.z - arm.z * force.force_n.x
}

/// Whether a segment is, or hangs from, another.
fn hangs_from(segment: Segment, from: Segment) -> bool {
    std::iter::successors(Some(segment), |segment| segment.parent()).any(|segment| segment == from)
}
