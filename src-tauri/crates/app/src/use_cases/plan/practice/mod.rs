//! The plan day by day: what was practised, the step that is offered, a flare-up.

pub(crate) mod flare;
pub(crate) mod keep;
pub(crate) mod list;
pub(crate) mod morning;
pub(crate) mod practised;
pub(crate) mod step;
pub(crate) mod view;

use crate::call::Call;
use crate::convert::moment;
use crate::convert::plan::mass;
use crate::convert::practice::{Noted, PlanDay};
use crate::failure::Failure;
use crate::use_cases::walk::judging::open_signs;
use crate::use_cases::walk::standing::kept_body;
use lifting::body::{BackState, Person};
use lifting::quantity::Kilograms;
use record::{Followed, Identity, PracticeEntry, PracticeEvent};
use vault::{PracticeId, Vault};

/// The plan that is followed, where its log leaves it today.
pub(crate) struct Today {
    /// The plan as it was taken up.
    pub(crate) followed: Followed,
    /// Where it stands.
    pub(crate) day: PlanDay,
}

/// Where the plan that is followed stands; `None` without one.
///
/// # Errors
/// What reading the vault gives.
pub(crate) fn today(call: &Call<'_>) -> Result<Option<Today>, Failure> {
    let vault = call.vault()?;
    let Some(followed) = vault.followed().active()? else {
        return Ok(None);
    };
    let log = noted(&log_of(vault, followed.plan.id)?);
    let day = PlanDay::of(&followed.plan, &log, call.now);
    Ok(Some(Today { followed, day }))
}

/// The log of one plan, in the order it was kept.
///
/// # Errors
/// What reading the vault gives.
pub(crate) fn log_of(
    vault: &Vault,
    plan: Identity,
) -> Result<Vec<(PracticeId, PracticeEntry)>, Failure> {
    let mut log = vault.practice().all()?;
    log.retain(|(_, entry)| entry.plan == plan);
    Ok(log)
}

/// The same, as it is read.
pub(crate) fn noted(log: &[(PracticeId, PracticeEntry)]) -> Vec<Noted> {
    log.iter().map(|(_, entry)| entry.into()).collect()
}

/// Whether a flare-up was told today.
///
/// # Errors
/// What reading the vault gives.
pub(crate) fn is_flare(call: &Call<'_>) -> Result<bool, Failure> {
    Ok(today(call)?.is_some_and(|today| today.day.flare_today))
}

/// What is known of the person when a step is proposed: open signs, and how the back is today.
///
/// # Errors
/// What reading the vault gives.
pub(crate) fn person_today(call: &Call<'_>) -> Result<Person, Failure> {
    let vault = call.vault()?;
    let back = kept_body(vault, call.now)?.and_then(|body| body.back_state);
    Ok(Person {
        signs: open_signs(vault)?,
        back_state: back.and_then(|state| BackState::from_id(state.id())),
        ..Person::default()
    })
}

/// An entry about the plan that is followed, of this moment.
fn entry(call: &Call<'_>, today: &Today, event: PracticeEvent) -> PracticeEntry {
    PracticeEntry {
        at: moment::to_record(call.now),
        plan: today.followed.plan.id,
        version: today.followed.plan.version,
        event,
        way: None,
        grams: None,
        pain: None,
        morning: None,
    }
}

/// Whole grams of a level.
fn grams(level: Kilograms) -> u32 {
    (level.value() * 1000.0).round() as u32
}

/// With how much one thing is practised today: above the plan's own level by as much as the level was moved, below it in
/// the same share (house rule). Never above the plan's strictest ceiling.
#[must_use]
pub(crate) fn item_grams(today: &Today, item: &record::Practice) -> u32 {
    let (Some(level), Some(base)) = (today.day.level, today.day.base) else {
        return item.grams;
    };
    if level == base {
        return item.grams;
    }
    let own = mass(item.grams).value();
    let moved = Kilograms::clamped(if level < base {
        own * level.value() / base.value()
    } else {
        own + level.value() - base.value()
    });
    let ceiling = today.day.plan.strictest_ceiling();
    grams(ceiling.map_or(moved, |ceiling| moved.at_most(ceiling)))
}
