//! Care plans that came in a parcel: whether they are taken, for whom, and what they change.

use super::people::{LONGEST_CODE, MOST_PEOPLE};
use super::plan::{ISSUERS, MOST_WORKERS};
use super::sending::{as_kept, head_of};
use crate::convert::moment::from_record;
use crate::moving::facts::{noted, of_move};
use crate::moving::people::PICTURES;
use crate::moving::text::number_of;
use chrono::NaiveDate;
use handoff::Alias;
use lifting::transfer::client::Move;
use lifting::transfer::equipment::Equipment;
use lifting::transfer::moves::takings;
use record::{CareMove, CarePerson, Moment, PersonPlan, PlanHead, PlannedMove};
use std::cmp::Ordering::{Equal, Greater, Less};
use vault::{CarePersonId, Vault, VaultError};

/// Versions of how many plans are remembered for a person. House rule: an office, a therapist, and some to spare.
const MOST_HEADS: usize = 8;

/// Whom care plans are for, and what taking them would change.
pub(crate) struct Taking {
    /// Who has them already; `None`: somebody new here.
    pub(crate) id: Option<CarePersonId>,
    /// The person with the plans taken.
    pub(crate) person: CarePerson,
    /// The version that was taken before.
    pub(crate) had: Option<PlanHead>,
    /// Number and day say different things: somebody's phone was brought back from an old copy.
    pub(crate) is_crossed: bool,
    /// Moves whose plan is replaced, and was not of this plan.
    pub(crate) replaced: Vec<Move>,
    /// Moves whose plan here has a later day on it: that one stays.
    pub(crate) stays: Vec<Move>,
    /// Moves of the version before that are not in this one: their plan goes.
    pub(crate) gone: Vec<Move>,
}

/// What would be taken, or the id of the sentence that says why nothing is.
///
/// # Errors
/// What the vault gives.
pub(crate) fn weigh(
    vault: &Vault,
    plan: &PersonPlan,
    from: Option<&str>,
    at: Moment,
) -> Result<Result<Taking, &'static str>, VaultError> {
    let all = vault.care_people().all()?;
    Ok(weighed(all, plan, from, at))
}

fn weighed(
    all: Vec<(CarePersonId, CarePerson)>,
    plan: &PersonPlan,
    from: Option<&str>,
    at: Moment,
) -> Result<Taking, &'static str> {
    let today = from_record(at).date_naive();
    check(plan, today)?;
    let by_plan = all
        .iter()
        .position(|(_, person)| head(person, plan).is_some());
    let code = plan.code.to_lowercase();
    let by_code = all
        .iter()
        .position(|(_, person)| person.code.to_lowercase() == code);
    let had = by_plan
        .and_then(|at| all.get(at))
        .and_then(|(_, person)| head(person, plan).cloned());
    let mut is_crossed = false;
    if let Some(had) = &had {
        // The same plan never moves on to another person.
        if had.code.to_lowercase() != code {
            return Err("handoff-refused-care-other-person");
        }
        if had.is_own {
            return Err("handoff-refused-care-own");
        }
        let later = from_record(plan.made_at).cmp(&from_record(had.made_at));
        is_crossed = match (plan.version.cmp(&had.version), later) {
            (Greater, Greater) => false,
            (Greater, _) | (_, Greater) => true,
            (Equal, Equal) => return Err("handoff-refused-same-care"),
            (Less | Equal, _) => return Err("handoff-refused-older-care"),
        };
    }
    let found = by_plan.or(by_code).and_then(|at| all.get(at).cloned());
    if found.is_none() && all.len() >= MOST_PEOPLE {
        return Err("handoff-refused-care-full");
    }
    let (id, person) = match found {
        Some((id, person)) => (Some(id), person),
        None => (None, newcomer(&all, plan, at)),
    };
    let mut taking = Taking {
        id,
        person,
        had,
        is_crossed,
        replaced: Vec::new(),
        stays: Vec::new(),
        gone: Vec::new(),
    };
    taking.put(plan, at)?;
    taking.remember(plan, from);
    Ok(taking)
}

fn head<'p>(person: &'p CarePerson, plan: &PersonPlan) -> Option<&'p PlanHead> {
    person
        .plans
        .iter()
        .flatten()
        .find(|head| head.id == plan.id)
}

/// Somebody who is new here, with a picture that nobody has yet.
fn newcomer(all: &[(CarePersonId, CarePerson)], plan: &PersonPlan, at: Moment) -> CarePerson {
    let is_free = |picture: &&&str| all.iter().all(|(_, one)| one.picture != ***picture);
    let picture = PICTURES.iter().find(is_free).copied();
    CarePerson {
        code: plan.code.clone(),
        picture: picture.unwrap_or(PICTURES[0]).to_owned(),
        since: at,
        legs: None,
        follows: None,
        arms_strong: None,
        mass_g: None,
        equipment: None,
        noted_at: None,
        moves: Vec::new(),
        plans: None,
    }
}

impl Taking {
    /// Puts the plan of each move in its place. A plan with a later day on it stays.
    fn put(&mut self, plan: &PersonPlan, at: Moment) -> Result<(), &'static str> {
        for one in &mut self.person.moves {
            let is_of_it = one
                .plan
                .as_ref()
                .is_some_and(|had| had.plan_id == Some(plan.id));
            if is_of_it && plan.moves.iter().all(|other| other.what != one.what) {
                one.plan = None;
                self.gone.extend(Move::from_id(&one.what));
            }
        }
        for one in &plan.moves {
            let Some(what) = Move::from_id(&one.what) else {
                return Err("handoff-refused-newer-content");
            };
            let had = noted(&self.person, what).and_then(|noted| noted.plan.as_ref());
            let other = had.filter(|had| had.plan_id != Some(plan.id));
            if other.is_some_and(|had| had.issued_day > one.issued_on.0) {
                self.stays.push(what);
                continue;
            }
            if other.is_some() {
                self.replaced.push(what);
            }
            let kept = record::CarePlan {
                entered_at: at,
                ..as_kept(plan, one)
            };
            of_move(&mut self.person, what).plan = Some(kept);
        }
        if self.stays.len() == plan.moves.len() {
            return Err("handoff-refused-older-care");
        }
        let is_known = |one: &CareMove| *one != CareMove::of(one.what.clone());
        self.person.moves.retain(is_known);
        Ok(())
    }

    fn remember(&mut self, plan: &PersonPlan, from: Option<&str>) {
        let heads = self.person.plans.get_or_insert_default();
        heads.retain(|head| head.id != plan.id);
        heads.push(head_of(plan, from.map(str::to_owned), false));
        while heads.len() > MOST_HEADS {
            // What was made here keeps counting.
            let oldest = heads.iter().position(|head| !head.is_own);
            heads.remove(oldest.unwrap_or(0));
        }
    }
}

/// Whether all of it is known here and fits together.
fn check(plan: &PersonPlan, today: NaiveDate) -> Result<(), &'static str> {
    const UNFIT: &str = "handoff-refused-care-contradiction";
    let is_code = plan.code.chars().count() <= LONGEST_CODE
        && Alias::new(&plan.code).is_ok_and(|code| code.as_str() == plan.code);
    let is_named = Alias::new(&plan.by).is_ok();
    if !is_code || !is_named || plan.version == 0 || plan.moves.is_empty() {
        return Err(UNFIT);
    }
    for (at, one) in plan.moves.iter().enumerate() {
        check_move(one, today)?;
        let is_twice = |other: &PlannedMove| other.what == one.what;
        if plan.moves.iter().skip(at + 1).any(is_twice) {
            return Err(UNFIT);
        }
    }
    Ok(())
}

fn check_move(one: &PlannedMove, today: NaiveDate) -> Result<(), &'static str> {
    const NEWER: &str = "handoff-refused-newer-content";
    const UNFIT: &str = "handoff-refused-care-contradiction";
    let what = Move::from_id(&one.what).ok_or(NEWER)?;
    let known = takings(what);
    let is_way = |way: &String| known.iter().any(|taking| taking.way.id() == way);
    if !one.ways.iter().all(is_way)
        || !one
            .equipment
            .iter()
            .all(|piece| Equipment::from_id(piece).is_some())
        || !ISSUERS.contains(&one.issued_by.as_str())
    {
        return Err(NEWER);
    }
    let has_people = one
        .workers
        .is_none_or(|count| (1..=MOST_WORKERS).contains(&count));
    let is_in_order = one.review_on.is_none_or(|review| review >= one.issued_on);
    if one.ways.is_empty() || !has_people || !is_in_order {
        return Err(UNFIT);
    }
    // A day more, since the sender's day may have begun before ours.
    if one.issued_on.0 > number_of(today).saturating_add(1) {
        return Err("handoff-refused-care-future");
    }
    Ok(())
}

/// Keeps what was weighed.
///
/// # Errors
/// What the vault gives.
pub(crate) fn keep(vault: &Vault, taking: &Taking) -> Result<CarePersonId, VaultError> {
    match taking.id {
        Some(id) => vault.care_people().save(id, &taking.person).map(|()| id),
        None => vault.care_people().add(&taking.person),
    }
}
