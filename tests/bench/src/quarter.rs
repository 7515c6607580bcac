//! How many frames a history of 90 days takes, with three lifts a day.

use handoff::{Density, Showing, lay_out};
use record::{
    BackState, BackToUsual, CheckInKind, HeightWord, History, HistoryLift, LookBack, Mass, Moment,
    Outcome, Pain, Record, Way,
};

use crate::handing::sealed;
use crate::trouble::Trouble;

const DAYS: u64 = 90;
const A_DAY: u64 = 3;
/// Frames shown in a second: the screen's own pace (`ui/walks/handoff/sequence.js`).
const A_SECOND: f64 = 8.0;
const NAME: &str = "a history of 90 days";

/// Tells bytes, frames and the seconds that showing them once takes.
///
/// # Errors
/// [`Trouble::Answer`] when it is refused.
pub(crate) fn measure() -> Result<(), Trouble> {
    let history = history().to_bytes()?;
    let parcel = sealed(&history)?;
    let frames = match lay_out(&parcel, Density::Standard) {
        Ok(Showing::One(_)) => 1,
        Ok(Showing::Many(sequence)) => sequence.needed(),
        Err(_) => return Err(Trouble::Answer(NAME)),
    };
    println!(
        "{DAYS} days, {} lifts: {} bytes, {} sealed, {frames} frames in one go, {:.1} s of showing",
        DAYS * A_DAY,
        history.len(),
        parcel.len(),
        frames as f64 / A_SECOND
    );
    Ok(())
}

/// Invented, with numbers that do not repeat (a linear congruential generator, Knuth's constants).
fn history() -> History {
    let mut state = 90_u64;
    let mut below = move |bound: u64| {
        state = state
            .wrapping_mul(6_364_136_223_846_793_005)
            .wrapping_add(1_442_695_040_888_963_407);
        (state >> 33) % bound
    };
    let mut small = move |bound: u64| u8::try_from(below(bound)).unwrap_or(0);
    let lifts = (0..DAYS * A_DAY).map(|_| lift(&mut small)).collect();
    History {
        from: "Green Ladder".to_owned(),
        made_at: Moment {
            at_ms: 1_795_594_320_000,
            offset_min: 60,
        },
        since: None,
        with_notes: true,
        plan: None,
        start_min: 29_800_000,
        lifts,
        signs: Vec::new(),
        words: ["Laundry basket", "Box", "Bag of soil", "Water bucket"]
            .map(str::to_owned)
            .to_vec(),
        practice: None,
    }
}

fn lift(small: &mut impl FnMut(u64) -> u8) -> HistoryLift {
    let pain = |value: u8| Pain::new(value);
    let way = [Way::Squat, Way::Hinge, Way::Lunge];
    let way = way.get(usize::from(small(3))).copied();
    HistoryLift {
        after_min: 200 + 2 * u64::from(small(250)),
        done: small(8) > 0,
        outcome: Outcome::Lift,
        way,
        advised: way,
        mass: Some(Mass::Known {
            grams: 500 * u32::from(small(40)),
        }),
        start: Some(HeightWord::Floor),
        times: 1 + u32::from(small(6)),
        pain: [
            pain(small(6)),
            pain(small(3)),
            pain(small(3)),
            None,
            None,
            None,
        ],
        back_state: Some(BackState::Steady),
        looks: vec![
            LookBack {
                kind: CheckInKind::After,
                after_min: 2 + u64::from(small(5)),
                pain: pain(small(7)),
                back_to_usual: None,
            },
            LookBack {
                kind: CheckInKind::NextMorning,
                after_min: 700 + u64::from(small(200)),
                pain: pain(small(5)),
                back_to_usual: Some(BackToUsual::Yes),
            },
        ],
        instead: 0,
        title: 1 + u32::from(small(4)),
        aid_first: Some(small(4) == 0),
    }
}
