//! What a care plan says of a move: typed in from paper. What comes in a parcel is kept by
//! [`taking`](super::taking).

use super::people::find;
use crate::call::Call;
use crate::card::IdText;
use crate::convert::moment;
use crate::failure::Failure;
use crate::moving::facts::{equipment_for, noted, of_move};
use crate::moving::people::Who;
use crate::moving::text::{day_of, move_name, number_of, plan_line};
use crate::use_cases::Nothing;
use crate::words::message_id;
use chrono::NaiveDate;
use door::ErrorCode;
use lifting::transfer::client::Move;
use lifting::transfer::moves::{by_exception, takings};
use record::{CameBy, CarePlan};
use serde::{Deserialize, Serialize};
use vault::CarePersonId;

/// Who can have issued a care plan.
pub(super) const ISSUERS: [&str; 5] = ["office", "therapist", "nurse", "doctor", "other"];
/// Most workers a plan can ask for. House rule.
pub(super) const MOST_WORKERS: u32 = 4;

/// A command that names a person and a move.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct OneMove {
    person: i64,
    #[serde(rename = "move")]
    what: String,
}

/// The reply of `care_plan`: what is kept, and what can be told.
#[derive(Debug, Serialize)]
pub(crate) struct PlanView {
    person: Who,
    move_text: String,
    plan: Option<KeptPlan>,
    ways: Vec<WayChoice>,
    issuers: Vec<IdText>,
    most_workers: u32,
    today: String,
}

#[derive(Debug, Serialize)]
struct KeptPlan {
    ways: Vec<String>,
    workers: Option<u32>,
    issued_by: String,
    issued_on: String,
    review_on: Option<String>,
    text: String,
}

/// A way that a plan can name.
#[derive(Debug, Serialize)]
struct WayChoice {
    id: String,
    text: String,
    /// Said where sources differ: naming it allows it.
    note: Option<String>,
}

/// What the care plan says of a move, and what can be told of it.
///
/// # Errors
/// `not_found`, `not_a_choice`; what the vault gives.
pub(crate) fn care_plan(call: &mut Call<'_>, asked: OneMove) -> Result<PlanView, Failure> {
    let what = read_move(&asked.what)?;
    let person = find(call, asked.person, "person")?;
    let reader = call.reader()?;
    let today = call.now.date_naive();
    let plan = noted(&person, what).and_then(|one| one.plan.as_ref());
    let named = |prefix: &str, id: &str| IdText {
        id: id.to_owned(),
        text: reader.words.text(&message_id(prefix, id)),
    };
    Ok(PlanView {
        plan: plan.map(|plan| KeptPlan {
            ways: plan.ways.clone(),
            workers: plan.workers,
            issued_by: plan.issued_by.clone(),
            issued_on: day_of(plan.issued_day).to_string(),
            review_on: plan.review_day.map(|day| day_of(day).to_string()),
            text: plan_line(reader, plan, today),
        }),
        move_text: move_name(reader, what.id()),
        ways: takings(what)
            .iter()
            .map(|taking| {
                let IdText { id, text } = named("way", taking.way.id());
                let note = by_exception(what, taking.way);
                let note = note.then(|| reader.words.text("care-plan-exception"));
                WayChoice { id, text, note }
            })
            .collect(),
        issuers: ISSUERS.iter().map(|id| named("care-by", id)).collect(),
        most_workers: MOST_WORKERS,
        today: today.to_string(),
        person: Who::of(asked.person, &person),
    })
}

/// The command `care_plan_keep`.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct KeepPlan {
    person: i64,
    #[serde(rename = "move")]
    what: String,
    ways: Vec<String>,
    #[serde(default)]
    workers: Option<u32>,
    issued_by: String,
    issued_on: String,
    #[serde(default)]
    review_on: Option<String>,
}

/// Keeps what is typed in from a care plan.
///
/// # Errors
/// `not_found`; `not_a_choice` for move, ways or who issued it; `missing_field` without a way; `out_of_range`
/// for workers, for a day that is none or has not come yet, and for a review before that day; what the vault gives.
pub(crate) fn care_plan_keep(call: &mut Call<'_>, asked: KeepPlan) -> Result<Nothing, Failure> {
    let what = read_move(&asked.what)?;
    if asked.ways.is_empty() {
        return Err(Failure::at(ErrorCode::MissingField, "ways"));
    }
    let known = takings(what);
    if !asked
        .ways
        .iter()
        .all(|way| known.iter().any(|one| one.way.id() == way))
    {
        return Err(Failure::at(ErrorCode::NotAChoice, "ways"));
    }
    if asked
        .workers
        .is_some_and(|count| !(1..=MOST_WORKERS).contains(&count))
    {
        return Err(Failure::at(ErrorCode::OutOfRange, "workers"));
    }
    if !ISSUERS.contains(&asked.issued_by.as_str()) {
        return Err(Failure::at(ErrorCode::NotAChoice, "issued_by"));
    }
    let day = asked.issued_on.trim().parse::<NaiveDate>().ok();
    let day = day.filter(|day| *day <= call.now.date_naive());
    let day = day.ok_or_else(|| Failure::at(ErrorCode::OutOfRange, "issued_on"))?;
    let review = match asked.review_on.as_deref().map(str::trim) {
        None | Some("") => None,
        Some(text) => {
            let review = text.parse::<NaiveDate>().ok().filter(|on| *on >= day);
            Some(review.ok_or_else(|| Failure::at(ErrorCode::OutOfRange, "review_on"))?)
        }
    };
    let least = |way: &String| {
        known
            .iter()
            .find(|one| one.way.id() == way)
            .map(|one| one.workers)
    };
    let plan = CarePlan {
        // What the ways take at the least stands in for a number that the plan does not say.
        workers: asked.workers.or_else(|| {
            asked
                .ways
                .iter()
                .filter_map(least)
                .max()
                .filter(|count| *count > 1)
        }),
        equipment: equipment_for(what, &asked.ways),
        ways: asked.ways,
        issued_by: asked.issued_by,
        issued_day: number_of(day),
        entered_at: moment::to_record(call.now),
        came_by: CameBy::Typed,
        review_day: review.map(number_of),
        plan_id: None,
    };
    keep(call, asked.person, what, Some(plan))
}

/// Keeps a plan for a move, or takes it away.
///
/// # Errors
/// `not_found`; what the vault gives.
fn keep(call: &Call<'_>, id: i64, what: Move, plan: Option<CarePlan>) -> Result<Nothing, Failure> {
    let mut person = find(call, id, "person")?;
    of_move(&mut person, what).plan = plan;
    person
        .moves
        .retain(|one| *one != record::CareMove::of(one.what.clone()));
    call.vault()?
        .care_people()
        .save(CarePersonId(id), &person)?;
    Ok(Nothing {})
}

/// Takes the plan for a move away.
///
/// # Errors
/// `not_found`, `not_a_choice`; what the vault gives.
pub(crate) fn care_plan_drop(call: &mut Call<'_>, asked: OneMove) -> Result<Nothing, Failure> {
    keep(call, asked.person, read_move(&asked.what)?, None)
}

fn read_move(id: &str) -> Result<Move, Failure> {
    Move::from_id(id).ok_or_else(|| Failure::at(ErrorCode::NotAChoice, "move"))
}
