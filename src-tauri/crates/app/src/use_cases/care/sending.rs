//! The care plans of one person, put together to be handed over.

use super::people::find;
use crate::call::Call;
use crate::convert::moment;
use crate::failure::Failure;
use crate::moving::plan_age::is_old;
use crate::moving::text::{move_name, plan_line};
use crate::use_cases::handoff::device::own_alias;
use crate::walk::text::Reader;
use crate::words::Arg;
use chrono::NaiveDate;
use door::ErrorCode;
use record::{CameBy, CarePerson, CarePlan, Day, Identity, PersonPlan, PlanHead, PlannedMove};

/// Plans ready to leave, and the person with their number noted.
pub(crate) struct Outgoing {
    /// What leaves.
    pub(crate) plan: PersonPlan,
    /// What is to be kept once it is sealed.
    pub(crate) person: CarePerson,
    /// The last day on which all of it holds.
    pub(crate) until: Day,
}

/// Whether there is something to hand over: a plan that came from somebody else is not passed on.
#[must_use]
pub(crate) fn can_leave(person: &CarePerson) -> bool {
    typed(person).next().is_some()
}

fn typed(person: &CarePerson) -> impl Iterator<Item = (&str, &CarePlan)> {
    person.moves.iter().filter_map(|one| {
        let plan = one.plan.as_ref()?;
        (plan.came_by == CameBy::Typed).then_some((one.what.as_str(), plan))
    })
}

/// Puts the plans of a person together as a new version. Nothing is kept.
///
/// # Errors
/// `not_found` at `person`; `nothing_to_show`; `plan_contradiction` at `person` when one of them is past its date;
/// `alias_needed`; `randomness_failed`; what the vault gives.
pub(crate) fn gather(call: &Call<'_>, id: i64) -> Result<Outgoing, Failure> {
    let mut person = find(call, id, "person")?;
    let today = call.now.date_naive();
    if !can_leave(&person) {
        return Err(Failure::new(ErrorCode::NothingToShow).saying("care-give-nothing"));
    }
    if typed(&person).any(|(_, plan)| is_old(plan, today)) {
        return Err(Failure::at(ErrorCode::PlanContradiction, "person").saying("care-give-old"));
    }
    let moves: Vec<PlannedMove> = typed(&person)
        .map(|(what, plan)| PlannedMove {
            what: what.to_owned(),
            ways: plan.ways.clone(),
            workers: plan.workers,
            equipment: plan.equipment.clone(),
            issued_by: plan.issued_by.clone(),
            issued_on: Day(plan.issued_day),
            review_on: plan.review_day.map(Day),
        })
        .collect();
    let until = moves.iter().map(last_day).min().unwrap_or(Day(i32::MAX));
    let heads = person.plans.get_or_insert_default();
    // Under another code it is another plan: whoever has the old one must not take it for the same person.
    let known = heads
        .iter()
        .position(|head| head.is_own && head.code == person.code);
    let (plan_id, last) = match known.map(|at| heads.remove(at)) {
        Some(head) => (head.id, head.version),
        None => (make_id(call)?, 0),
    };
    let plan = PersonPlan {
        id: plan_id,
        version: last.saturating_add(1),
        made_at: moment::to_record(call.now),
        code: person.code.clone(),
        by: own_alias(call)?.as_str().to_owned(),
        moves,
    };
    heads.push(head_of(&plan, None, true));
    Ok(Outgoing {
        plan,
        person,
        until,
    })
}

fn last_day(one: &PlannedMove) -> Day {
    let review = one.review_on.map(|day| day.0);
    Day(crate::moving::plan_age::last_day(one.issued_on.0, review))
}

fn make_id(call: &Call<'_>) -> Result<Identity, Failure> {
    let mut bytes = [0; 16];
    let made = call.world.fill_random(&mut bytes);
    made.map_err(|_| Failure::new(ErrorCode::RandomnessFailed))?;
    Ok(Identity(bytes))
}

/// What is remembered of a version.
#[must_use]
pub(crate) fn head_of(plan: &PersonPlan, from: Option<String>, is_own: bool) -> PlanHead {
    PlanHead {
        id: plan.id,
        version: plan.version,
        made_at: plan.made_at,
        code: plan.code.clone(),
        from,
        is_own,
    }
}

/// What leaves, in words: the code, then a line a move.
#[must_use]
pub(crate) fn lines(plan: &PersonPlan, today: NaiveDate, reader: Reader<'_>) -> Vec<String> {
    let args = [
        ("code", Arg::text(plan.code.as_str())),
        ("version", plan.version.into()),
    ];
    let head = reader.words.format("handoff-leaves-care", &args);
    let moves = plan.moves.iter().map(|one| {
        let args = [
            ("label", Arg::Text(move_name(reader, &one.what))),
            (
                "text",
                Arg::Text(plan_line(reader, &as_kept(plan, one), today)),
            ),
        ];
        reader.words.format("care-line", &args)
    });
    std::iter::once(head).chain(moves).collect()
}

/// What it says of one move, as it is kept by whoever takes it.
#[must_use]
pub(crate) fn as_kept(plan: &PersonPlan, one: &PlannedMove) -> CarePlan {
    CarePlan {
        ways: one.ways.clone(),
        workers: one.workers,
        equipment: one.equipment.clone(),
        issued_by: one.issued_by.clone(),
        issued_day: one.issued_on.0,
        entered_at: plan.made_at,
        came_by: CameBy::Parcel,
        review_day: one.review_on.map(|day| day.0),
        plan_id: Some(plan.id),
    }
}
