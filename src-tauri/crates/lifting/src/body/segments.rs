//! Published segment parameters, as fractions of body mass and stature.
//!
//! Masses and centres of mass: Dempster 1955 as tabulated by Winter (source `dempster_winter`). Lengths and
//! joint heights: Drillis & Contini 1966 (source `drillis_contini`, from memory; knee, shoulder, wrist and
//! ankle agree with ANSUR II within 0.005 of stature, the hip stands 2 to 3 % lower there).

/// One segment: its share of body mass, its length as a share of stature, and where its centre of mass lies
/// between the proximal end (0) and the distal end (1).
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Share {
    /// Share of body mass.
    pub mass: f64,
    /// Length, share of stature.
    pub length: f64,
    /// Centre of mass from the proximal end, share of the length.
    pub com: f64,
}

/// Foot, ankle to toes; mass and centre of mass of the whole foot.
pub const FOOT: Share = Share {
    mass: 0.0145,
    length: 0.152,
    com: 0.500,
};
/// Shank, knee to ankle.
pub const SHANK: Share = Share {
    mass: 0.0465,
    length: 0.246,
    com: 0.433,
};
/// Thigh, hip to knee.
pub const THIGH: Share = Share {
    mass: 0.1000,
    length: 0.245,
    com: 0.433,
};
/// Upper arm, shoulder to elbow.
pub const UPPER_ARM: Share = Share {
    mass: 0.0280,
    length: 0.186,
    com: 0.436,
};
/// Forearm, elbow to wrist.
pub const FOREARM: Share = Share {
    mass: 0.0160,
    length: 0.146,
    com: 0.430,
};
/// Hand, wrist to fingertip; the centre of mass lies at the knuckles, where a load is gripped.
pub const HAND: Share = Share {
    mass: 0.0060,
    length: 0.108,
    com: 0.506,
};

/// Head and neck: mass; its centre of mass lies at the ear.
pub const HEAD_MASS: f64 = 0.0810;
/// Shoulder to ear along the trunk's line: ear level 0.930 (estimate, just below the eye at 0.936), shoulder 0.818.
pub const SHOULDER_TO_EAR: f64 = 0.112;

/// Trunk, hip to shoulder: mass, length and centre of mass of pelvis, abdomen and thorax together.
pub const TRUNK: Share = Share {
    mass: 0.4970,
    length: 0.288,
    com: 0.500,
};
/// Pelvis alone: mass.
pub const PELVIS_MASS: f64 = 0.1420;
/// Hip to L5/S1, share of stature. Estimate: the iliac crest, conventionally L4/L5, stands at 0.608 (ANSUR II)
/// against a hip at 0.530, and L5/S1 lies a few centimetres lower. No published share was verified.
pub const HIP_TO_L5S1: f64 = 0.060;
/// Centre of mass of the pelvis above the hip: 0.105 of the way from L4/L5 (0.078 above the hip) to the hip.
pub const HIP_TO_PELVIS_COM: f64 = 0.078 * (1.0 - 0.105);

/// Height of the ankle joint above the sole.
pub const ANKLE_HEIGHT: f64 = 0.039;
/// Heel behind the ankle joint, share of foot length. Estimate.
pub const HEEL_BEHIND_ANKLE: f64 = 0.25;
/// Height of the knee joint above the ground when kneeling on it. Estimate: half a knee's depth.
pub const KNEELING_KNEE_HEIGHT: f64 = 0.032;
/// Tibial tubercle from the knee joint, share of shank length. Estimate.
pub const TUBERCLE: f64 = 0.10;

/// Mass of the trunk above L5/S1.
pub const UPPER_TRUNK_MASS: f64 = TRUNK.mass - PELVIS_MASS;
/// Length from L5/S1 to the shoulder.
pub const L5S1_TO_SHOULDER: f64 = TRUNK.length - HIP_TO_L5S1;

/// Centre of mass of the upper trunk above L5/S1, so that pelvis and upper trunk together lie where the
/// published trunk lies.
#[must_use]
pub const fn upper_trunk_com() -> f64 {
    let whole = TRUNK.mass * TRUNK.com * TRUNK.length;
    (whole - PELVIS_MASS * HIP_TO_PELVIS_COM) / UPPER_TRUNK_MASS - HIP_TO_L5S1
}

/// The sum of all shares of mass: two of each limb, trunk, head.
#[must_use]
pub const fn whole_body_mass() -> f64 {
    2.0 * (FOOT.mass + SHANK.mass + THIGH.mass + UPPER_ARM.mass + FOREARM.mass + HAND.mass)
        + TRUNK.mass
        + HEAD_MASS
}
