//! A person in a posture, as the judgement solved it: strokes for limbs, a disc for the head, a box for the load.

use lifting::loads::lift::Lift;
use lifting::posture::geometry::Point;
use lifting::posture::skeleton::{Placed, Segment};

/// A point in metres: forward, up.
type At = (f32, f32);

/// A person seen from their right, and what they lift.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Figure {
    /// What it is a picture of.
    pub(super) caption: String,
    /// Limbs from back to front.
    pub(super) strokes: Vec<Stroke>,
    /// Middle of the head.
    pub(super) head: At,
    /// Lower left corner, width and height of the load.
    pub(super) load: (At, At),
}

/// A limb: from, to, how thick, and how dark (0 black).
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Stroke {
    pub(super) from: At,
    pub(super) to: At,
    pub(super) thick: f32,
    pub(super) grey: f32,
}

/// Half across the head, in metres. This and all that follows is drawn only, nothing is worked out with it: house rules.
pub(super) const HEAD: f32 = 0.105;
/// How dark the head and the outline of the load are.
pub(super) const DARK: f32 = 0.25;
/// The side away from who looks.
const FAR: f32 = 0.72;
const TRUNK: f32 = 0.45;
/// How far along the hand it is drawn, so that it stays above the grip.
const PALM: f32 = 0.4;

impl Figure {
    /// The lowest posture of a lift, with a load of this depth in metres.
    pub(crate) fn of(lift: &Lift, depth_m: f64, caption: String) -> Self {
        let placed = lift.lowest.skeleton.segments();
        let depth = metres(depth_m);
        let height = (depth * 0.75).clamp(0.1, 0.3);
        let hands = at(lift.lowest.load_at);
        let mut strokes: Vec<Stroke> = placed.iter().map(stroke).collect();
        // The far side first, then the trunk, then the near side.
        strokes.sort_by(|one, other| other.grey.total_cmp(&one.grey));
        let head = placed
            .iter()
            .find(|placed| placed.segment == Segment::Head)
            .map_or(hands, |placed| at(placed.to));
        Self {
            caption,
            strokes,
            head,
            load: ((hands.0 - depth / 2.0, hands.1), (depth, height)),
        }
    }

    /// Lowest and highest of all that is drawn: left, foot, right, top.
    pub(super) fn extent(&self) -> (f32, f32, f32, f32) {
        let ((x, y), (wide, high)) = self.load;
        let (head_x, head_y) = self.head;
        let mut found = (
            x.min(head_x - HEAD),
            0.0_f32.min(y),
            (x + wide).max(head_x + HEAD),
            (y + high).max(head_y + HEAD),
        );
        for stroke in &self.strokes {
            let half = stroke.thick / 2.0;
            for (x, y) in [stroke.from, stroke.to] {
                found.0 = found.0.min(x - half);
                found.1 = found.1.min(y - half);
                found.2 = found.2.max(x + half);
                found.3 = found.3.max(y + half);
            }
        }
        found
    }
}

fn stroke(placed: &Placed) -> Stroke {
    use Segment as S;
    let (thick, grey) = match placed.segment {
        S::Head => (0.08, DARK),
        S::Pelvis | S::UpperTrunk => (0.17, TRUNK),
        S::ThighLeft => (0.13, FAR),
        S::ShankLeft => (0.1, FAR),
        S::FootLeft => (0.06, FAR),
        S::UpperArmLeft | S::ForearmLeft => (0.07, FAR),
        S::HandLeft => (0.05, FAR),
        S::ThighRight => (0.13, DARK),
        S::ShankRight => (0.1, DARK),
        S::FootRight => (0.06, DARK),
        S::UpperArmRight | S::ForearmRight => (0.07, DARK),
        S::HandRight => (0.05, DARK),
    };
    let (from, to) = (at(placed.from), at(placed.to));
    let to = match placed.segment {
        S::HandLeft | S::HandRight => (
            from.0 + (to.0 - from.0) * PALM,
            from.1 + (to.1 - from.1) * PALM,
        ),
        _ => to,
    };
    Stroke {
        from,
        to,
        thick,
        grey,
    }
}

fn at(point: Point) -> At {
    (metres(point.x), metres(point.z))
}

#[allow(clippy::cast_possible_truncation, reason = "for drawing, a body fits")]
fn metres(value: f64) -> f32 {
    value as f32
}
