//! What a plan would make of typical loads: the judgement itself, asked for a good, a usual or a bad day.

use super::making::find;
use crate::call::Call;
use crate::convert::plan::to_judge;
use crate::failure::Failure;
use crate::use_cases::walk::cards::card;
use crate::words::{Rounding, message_id};
use door::ErrorCode;
use lifting::advise::{Request, advise};
use lifting::body::{AgeBand, BackState, Balance, Kneeling, PainToday, Person};
use lifting::quantity::{Kilograms, Minutes, PainScore, Repetitions};
use lifting::task::{Height, HeightWord, LoadMass, Reach, ReachWord, Task};
use serde::{Deserialize, Serialize};
use vault::PlanId;

/// The loads that are tried, in kg, with where they stand and how many times in one go. House rule.
const LOADS: [(f64, HeightWord, u32); 7] = [
    (2.0, HeightWord::Floor, 1),
    (5.0, HeightWord::Floor, 1),
    (5.0, HeightWord::Floor, 10),
    (10.0, HeightWord::Floor, 1),
    (10.0, HeightWord::Knee, 1),
    (10.0, HeightWord::Waist, 1),
    (20.0, HeightWord::Floor, 1),
];
/// Minutes in which a load is lifted more than once. House rule.
const SPAN: Minutes = Minutes::clamped(15.0);

/// A day on which a plan is tried.
struct TriedDay {
    /// Its id. Words: `plan-day-<id>`.
    id: &'static str,
    back: PainScore,
    knees: PainScore,
}

/// The day that is shown unless another is asked for.
const USUAL: TriedDay = TriedDay {
    id: "usual",
    back: PainScore::of(3),
    knees: PainScore::of(1),
};

/// Pain on each day. House rule: two less than usual on a good day, three more on a bad one.
const DAYS: [TriedDay; 3] = [
    TriedDay {
        id: "good",
        back: PainScore::of(1),
        knees: PainScore::of(0),
    },
    USUAL,
    TriedDay {
        id: "bad",
        back: PainScore::of(6),
        knees: PainScore::of(4),
    },
];

/// The command `plan_preview`.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct AskedPreview {
    id: i64,
    #[serde(default)]
    day: Option<String>,
}

/// The reply of `plan_preview`.
#[derive(Debug, Serialize)]
pub(crate) struct Preview {
    day: String,
    days: Vec<DayView>,
    loads: Vec<PreviewLoad>,
}

#[derive(Debug, Serialize)]
struct DayView {
    id: &'static str,
    text: String,
    shown: bool,
}

#[derive(Debug, Serialize)]
struct PreviewLoad {
    load: String,
    outcome: &'static str,
    answer: String,
    ways: Vec<String>,
    why: String,
}

/// The plan's answers for one day. Nothing is kept.
///
/// # Errors
/// `not_a_choice` at `day`; `unknown_plan`; what the vault gives.
pub(crate) fn plan_preview(call: &mut Call<'_>, asked: AskedPreview) -> Result<Preview, Failure> {
    let id = asked.day.as_deref().unwrap_or(USUAL.id);
    let day = DAYS.iter().find(|day| day.id == id);
    let day = day.ok_or_else(|| Failure::at(ErrorCode::NotAChoice, "day"))?;
    let kept = find(call, PlanId(asked.id), "id")?;
    let plan = to_judge(&kept, call.now);
    let reader = call.reader()?;
    let mut loads = Vec::new();
    for (kilograms, start, times) in LOADS {
        let task = Task {
            repetitions: Some(Repetitions::of(times)),
            span: (times > 1).then_some(SPAN),
            ..typical_task(kilograms, start)
        };
        let mut request = Request::new(person_on(day), task);
        request.plan = Some(plan.clone());
        let card = card(call, &advise(&request))?;
        let mass = reader
            .words
            .mass(kilograms, reader.units, Rounding::Nearest);
        let from = reader.words.text(&message_id("from", start.id()));
        loads.push(PreviewLoad {
            load: match times {
                1 => format!("{mass} {from}"),
                _ => format!("{mass} {from}, {}", reader.words.times(times)),
            },
            outcome: card.outcome,
            answer: card.headline,
            ways: card.ways.into_iter().map(|way| way.name).collect(),
            why: card.why,
        });
    }
    Ok(Preview {
        day: reader.words.format(
            "plan-preview-day",
            &[
                ("day", day.id.into()),
                ("back", day.back.value().into()),
                ("knees", day.knees.value().into()),
            ],
        ),
        days: DAYS
            .iter()
            .map(|one| DayView {
                id: one.id,
                text: reader.words.text(&message_id("plan-day", one.id)),
                shown: one.id == day.id,
            })
            .collect(),
        loads,
    })
}

/// A person on a usual day.
pub(super) fn typical_person() -> Person {
    person_on(&USUAL)
}

fn person_on(day: &TriedDay) -> Person {
    Person {
        age: Some(AgeBand::From40),
        pain: PainToday {
            back: Some(day.back),
            knee_left: Some(day.knees),
            knee_right: Some(day.knees),
            hip_left: Some(PainScore::NONE),
            hip_right: Some(PainScore::NONE),
            shoulders: Some(PainScore::NONE),
        },
        back_state: Some(BackState::Steady),
        balance: Some(Balance::Good),
        fell_last_year: Some(false),
        can_kneel: Some(Kneeling::Yes),
        ..Person::default()
    }
}

/// Once, close, easy to hold, up to waist height.
pub(super) fn typical_task(kilograms: f64, start: HeightWord) -> Task {
    Task {
        awkward: Some(false),
        start: Some(Height::Word(start)),
        end: Some(Height::Word(HeightWord::Waist)),
        reach: Some(Reach::Word(ReachWord::Close)),
        repetitions: Some(Repetitions::ONCE),
        two_hands: Some(true),
        ..Task::of(LoadMass::Known(Kilograms::clamped(kilograms)))
    }
}
