//! The reply of `pose`: the figure in the plane, x forward and z up, metres, newtons, degrees anticlockwise
//! from forward. Left and right are the person's own.

use lifting::body::Side;
use lifting::loads::lift::Lift;
use lifting::loads::spine::LeverArm;
use lifting::loads::statics::{GRAVITY, Joint, Outside};
use lifting::posture::geometry::Point;
use lifting::posture::path::Frame;
use lifting::posture::skeleton::{Placed, Segment, Skeleton};
use serde::Serialize;

type Xz = [f64; 2];

/// The figure for one way.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct PoseReply {
    segments: Vec<SegmentReply>,
    joints: Vec<JointReply>,
    hands_m: Xz,
    com_m: Xz,
    support_m: Xz,
    contacts: Vec<ContactReply>,
    load: LoadReply,
    fit: &'static str,
    stance: &'static str,
    g: f64,
    peak: PeakReply,
    l5s1: DiscReply,
    lever_arm_m: f64,
    frames: Vec<FrameReply>,
}

#[derive(Debug, Clone, PartialEq, Serialize)]
struct SegmentReply {
    name: &'static str,
    parent: Option<&'static str>,
    length_m: f64,
    mass_kg: f64,
    com_m: Xz,
    from_m: Xz,
    to_m: Xz,
    angle_deg: f64,
}

#[derive(Debug, Clone, PartialEq, Serialize)]
struct JointReply {
    name: &'static str,
    segment: &'static str,
    at_m: Xz,
    moment_nm: f64,
    extension_turns: f64,
}

#[derive(Debug, Clone, PartialEq, Serialize)]
struct ContactReply {
    name: &'static str,
    segment: &'static str,
    at_m: Xz,
    force_n: Xz,
}

#[derive(Debug, Clone, PartialEq, Serialize)]
struct LoadReply {
    mass_kg: f64,
    at_m: Xz,
    hands: Vec<&'static str>,
}

#[derive(Debug, Clone, PartialEq, Serialize)]
struct PeakReply {
    path: f64,
    moment_l5s1_nm: f64,
    compression_n: f64,
    shear_n: f64,
}

#[derive(Debug, Clone, PartialEq, Serialize)]
struct DiscReply {
    moment_nm: f64,
    compression_n: f64,
    shear_n: f64,
}

/// One frame of the way down and up, for drawing: the ends of every segment in the order of `segments`.
#[derive(Debug, Clone, PartialEq, Serialize)]
struct FrameReply {
    at: f64,
    loaded: bool,
    segments_m: Vec<[f64; 4]>,
    hands_m: Xz,
}

impl PoseReply {
    /// The reply for a solved way.
    #[must_use]
    pub fn of(lift: &Lift) -> Self {
        let lowest = &lift.lowest;
        let name = |segment: Segment| named(lift.front, segment);
        let equilibrium = &lift.equilibrium;
        Self {
            segments: ordered(lift.front, &lowest.skeleton)
                .iter()
                .map(|placed| segment(lift.front, placed))
                .collect(),
            joints: Joint::ALL
                .iter()
                .map(|joint| joint_reply(lift, *joint))
                .collect(),
            hands_m: xz(lowest.load_at),
            com_m: xz(equilibrium.centre_of_mass),
            support_m: [lowest.support.0, lowest.support.1],
            contacts: equilibrium
                .contacts
                .iter()
                .map(|contact| contact_reply(lift.front, contact))
                .collect(),
            load: LoadReply {
                mass_kg: lowest.load.value(),
                at_m: xz(lowest.load_at),
                hands: equilibrium.load.iter().map(|hand| name(hand.on)).collect(),
            },
            fit: lowest.fit.id(),
            stance: lowest.stance.id(),
            g: GRAVITY,
            peak: PeakReply {
                path: lift.peak.at,
                moment_l5s1_nm: lift.peak.moment_nm,
                compression_n: lift.disc_at_peak.compression_n,
                shear_n: lift.disc_at_peak.shear_n,
            },
            l5s1: DiscReply {
                moment_nm: equilibrium.moment(Joint::L5S1),
                compression_n: lift.disc.compression_n,
                shear_n: lift.disc.shear_n,
            },
            lever_arm_m: LeverArm::USUAL.metres(),
            frames: lift
                .path
                .frames
                .iter()
                .map(|frame| frame_reply(lift.front, frame))
                .collect(),
        }
    }
}

fn xz(point: Point) -> Xz {
    [point.x, point.z]
}

/// The segment's name on the person's own side.
fn named(front: Side, segment: Segment) -> &'static str {
    match front {
        Side::Left => segment.id(),
        Side::Right => segment.mirrored().id(),
    }
}

/// The segments in the order of their names, whichever side is in front.
fn ordered(front: Side, skeleton: &Skeleton) -> Vec<Placed> {
    let placed = skeleton.segments();
    Segment::ALL
        .iter()
        .filter_map(|segment| {
            let solved = match front {
                Side::Left => *segment,
                Side::Right => segment.mirrored(),
            };
            placed
                .iter()
                .find(|placed| placed.segment == solved)
                .copied()
        })
        .collect()
}

fn segment(front: Side, placed: &Placed) -> SegmentReply {
    SegmentReply {
        name: named(front, placed.segment),
        parent: placed.segment.parent().map(|parent| named(front, parent)),
        length_m: placed.from.distance(placed.to),
        mass_kg: placed.mass_kg,
        com_m: xz(placed.com),
        from_m: xz(placed.from),
        to_m: xz(placed.to),
        angle_deg: placed.from.direction_deg(placed.to),
    }
}

/// A joint by its own name, with the moment found for the side it was solved on.
fn joint_reply(lift: &Lift, joint: Joint) -> JointReply {
    let solved = match lift.front {
        Side::Left => joint,
        Side::Right => joint.mirrored(),
    };
    let found = lift
        .equilibrium
        .moments
        .iter()
        .find(|moment| moment.joint == solved);
    JointReply {
        name: joint.id(),
        segment: joint.segment().id(),
        at_m: found.map_or([0.0, 0.0], |moment| xz(moment.at)),
        moment_nm: found.map_or(0.0, |moment| moment.extensor_nm),
        extension_turns: joint.extension_turns(),
    }
}

fn contact_reply(front: Side, contact: &Outside) -> ContactReply {
    let segment = named(front, contact.on);
    ContactReply {
        name: match segment {
            "foot_left" => "foot_left",
            "foot_right" => "foot_right",
            "shank_left" => "knee_left",
            "shank_right" => "knee_right",
            other => other,
        },
        segment,
        at_m: xz(contact.at),
        force_n: xz(contact.force_n),
    }
}

fn frame_reply(front: Side, frame: &Frame) -> FrameReply {
    FrameReply {
        at: frame.at,
        loaded: frame.loaded,
        segments_m: ordered(front, &frame.skeleton)
            .iter()
            .map(|placed| [placed.from.x, placed.from.z, placed.to.x, placed.to.z])
            .collect(),
        hands_m: xz(frame.skeleton.arm_right.grip),
    }
}
