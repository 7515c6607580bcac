//! The boxes of the guidance: five height bands, close and far, women and men.

use crate::body::Sex;
use crate::naming::named;
use crate::quantity::{Centimetres, Kilograms, Stature};

named!(
    /// A height band of the hands, lowest first.
    HeightBand {
        /// Below the middle of the lower leg.
        BelowMidLowerLeg = "below_mid_lower_leg",
        /// From there to the knuckles of the hanging hand.
        MidLowerLegToKnuckle = "mid_lower_leg_to_knuckle",
        /// From there to the elbow.
        KnuckleToElbow = "knuckle_to_elbow",
        /// From there to the shoulder.
        ElbowToShoulder = "elbow_to_shoulder",
        /// Above the shoulder.
        AboveShoulder = "above_shoulder",
    }
);

named!(
    /// How far the hands are from the body.
    ReachZone {
        /// Near the trunk, elbows at the sides.
        Close = "close",
        /// Arms out.
        Far = "far",
    }
);

/// Largest reach from mid-ankles that counts as close, in cm.
///
/// House rule, on the careful side: a load 30 cm deep held against the body has its hands at 20 + 30/2 = 35 cm
/// (estimate of NIOSH 94-110, section 1.3.1); a woman's elbow is 32 cm from the centre of her grip (ANSUR II mean).
const CLOSE_UP_TO_CM: f64 = 35.0;
/// Reach beyond which no box lies, in cm. House rule: the largest reach of the NIOSH equation.
const FARTHEST_CM: f64 = 63.0;
/// Height beyond which no box lies, in cm. House rule: the largest height of the NIOSH equation.
const HIGHEST_CM: f64 = 175.0;

/// Statures judged when it is not known: a 5th-percentile woman and a 95th-percentile man (ANSUR II, 2012), in cm.
/// The weights rise to one band and fall again, so that no stature between them gives less than both.
pub(super) const UNKNOWN_STATURE: [f64; 2] = [152.5, 187.0];

impl ReachZone {
    /// The zone of a reach from mid-ankles to hands.
    #[must_use]
    pub fn of(reach: Centimetres) -> Self {
        if reach.value() <= CLOSE_UP_TO_CM {
            Self::Close
        } else {
            Self::Far
        }
    }
}

/// The heights at which one band ends and the next begins, in cm above the floor, for one stature.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct HeightEdges {
    /// Middle of the lower leg, 0.14 of stature. House rule: half of knee height, 0.28 (ANSUR II).
    pub mid_lower_leg: f64,
    /// Knuckles of the hanging hand, 0.42 of stature (ANSUR II: wrist height less palm length).
    pub knuckle: f64,
    /// Elbow, 0.63 of stature (ANSUR II: shoulder height less upper-arm length).
    pub elbow: f64,
    /// Shoulder, 0.82 of stature (ANSUR II).
    pub shoulder: f64,
}

impl HeightEdges {
    /// The edges for a stature.
    #[must_use]
    pub fn of(stature: Stature) -> Self {
        Self::at(stature.value())
    }

    fn at(stature_cm: f64) -> Self {
        Self {
            mid_lower_leg: 0.14 * stature_cm,
            knuckle: 0.42 * stature_cm,
            elbow: 0.63 * stature_cm,
            shoulder: 0.82 * stature_cm,
        }
    }

    /// Lower and upper edge of a band.
    const fn span(&self, band: HeightBand) -> (f64, f64) {
        match band {
            HeightBand::BelowMidLowerLeg => (0.0, self.mid_lower_leg),
            HeightBand::MidLowerLegToKnuckle => (self.mid_lower_leg, self.knuckle),
            HeightBand::KnuckleToElbow => (self.knuckle, self.elbow),
            HeightBand::ElbowToShoulder => (self.elbow, self.shoulder),
            HeightBand::AboveShoulder => (self.shoulder, f64::INFINITY),
        }
    }

    /// The bands that hands moving between two heights pass through, lowest first. A height on an edge counts for
    /// both bands: the guidance allows a figure in between, we take the smaller.
    pub fn passed(
        &self,
        one: Centimetres,
        other: Centimetres,
    ) -> impl Iterator<Item = HeightBand> + '_ {
        let (low, high) = (one.at_most(other).value(), one.at_least(other).value());
        HeightBand::ALL.iter().copied().filter(move |band| {
            let (from, to) = self.span(*band);
            low <= to && high >= from
        })
    }
}

/// The printed guideline weight of one box (L23, figure; INDG143, figure 1).
#[must_use]
pub fn zone_weight(band: HeightBand, reach: ReachZone, sex: Sex) -> Kilograms {
    let (close, far) = match (sex, band) {
        (Sex::Female, HeightBand::BelowMidLowerLeg | HeightBand::AboveShoulder) => (7.0, 3.0),
        (Sex::Female, HeightBand::MidLowerLegToKnuckle | HeightBand::ElbowToShoulder) => {
            (13.0, 7.0)
        }
        (Sex::Female, HeightBand::KnuckleToElbow) => (16.0, 10.0),
        (Sex::Male, HeightBand::BelowMidLowerLeg | HeightBand::AboveShoulder) => (10.0, 5.0),
        (Sex::Male, HeightBand::MidLowerLegToKnuckle | HeightBand::ElbowToShoulder) => (20.0, 10.0),
        (Sex::Male, HeightBand::KnuckleToElbow) => (25.0, 15.0),
    };
    Kilograms::clamped(match reach {
        ReachZone::Close => close,
        ReachZone::Far => far,
    })
}

/// The smallest weight of the boxes passed through, and its band (the lowest of equals).
pub(super) fn smallest(
    stature: Option<Stature>,
    start: Centimetres,
    end: Centimetres,
    reach: ReachZone,
    sex: Sex,
) -> (Kilograms, HeightBand) {
    let statures = stature.map_or(UNKNOWN_STATURE, |known| [known.value(); 2]);
    let mut least = (
        zone_weight(HeightBand::KnuckleToElbow, reach, sex),
        HeightBand::KnuckleToElbow,
    );
    for edges in statures.map(HeightEdges::at) {
        for band in edges.passed(start, end) {
            let weight = zone_weight(band, reach, sex);
            if weight < least.0 {
                least = (weight, band);
            }
        }
    }
    least
}

/// Whether the hands leave the boxes: too high or too far for any figure.
pub(super) fn beyond_boxes(highest: Centimetres, reach: Centimetres) -> bool {
    highest.value() > HIGHEST_CM || reach.value() > FARTHEST_CM
}
