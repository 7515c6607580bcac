//! What would leave, in words, before anything is sealed.

use super::people;
use crate::call::Call;
use crate::convert::history::{days, gather};
use crate::convert::plan::{to_date, to_day};
use crate::failure::Failure;
use crate::use_cases::care::sending;
use crate::use_cases::departure::Leaving;
use crate::use_cases::plan::lines::lines;
use crate::use_cases::plan::making::{find, next_version};
use crate::walk::text::Reader;
use crate::words::Arg;
use door::ErrorCode;
use handoff::{Density, Purpose};
use record::{CarePerson, Day, DepartureWhat, History, Paired, Plan, Record, Seal};
use serde::{Deserialize, Serialize};
use vault::{CarePersonId, PlanId};

/// The commands `show_summary` and `show`.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct AskedShow {
    what: String,
    #[serde(default)]
    plan: Option<i64>,
    #[serde(default)]
    person: Option<i64>,
    #[serde(default)]
    since_days: Option<u32>,
    #[serde(default)]
    notes: Option<bool>,
    #[serde(default)]
    to: Option<String>,
    #[serde(default)]
    density: Option<String>,
}

impl AskedShow {
    /// A plan, for the pairing with this id or for nobody yet.
    pub(crate) fn plan(id: i64, to: Option<String>) -> Self {
        Self {
            what: "plan".to_owned(),
            plan: Some(id),
            person: None,
            since_days: None,
            notes: None,
            to,
            density: None,
        }
    }

    /// Whether it is for a pairing.
    pub(crate) const fn is_for_somebody(&self) -> bool {
        self.to.is_some()
    }
}

/// The reply of `show_summary`.
#[derive(Debug, Serialize)]
pub(crate) struct Summary {
    leaves: Vec<String>,
    to_text: String,
    confirm: String,
}

/// What is ready to be sealed.
pub(crate) struct Ready {
    /// What it carries.
    pub(crate) purpose: Purpose,
    /// The bytes.
    pub(crate) payload: Vec<u8>,
    /// For whom; `None`: under a code.
    pub(crate) to: Option<Paired>,
    /// What leaves, in words.
    pub(crate) leaves: Vec<String>,
    /// To whom, in words.
    pub(crate) to_text: String,
    /// What the list of what left will say of it.
    pub(crate) leaving: Leaving,
    /// How symbols are drawn.
    pub(crate) density: Density,
    /// A version of a plan that is new and must be kept when it is sealed.
    pub(crate) new_version: Option<(PlanId, Plan)>,
    /// The plan, for how long it holds.
    pub(crate) plan: Option<Plan>,
    /// Care plans: the person with their number noted, and the last day on which all of it holds.
    pub(crate) care: Option<(CarePersonId, CarePerson, Day)>,
}

/// What would leave. Nothing is sealed or kept.
///
/// # Errors
/// See [`ready`].
pub(crate) fn show_summary(call: &mut Call<'_>, asked: AskedShow) -> Result<Summary, Failure> {
    let ready = ready(call, &asked)?;
    Ok(Summary {
        leaves: ready.leaves,
        to_text: ready.to_text,
        confirm: call.state.words.text("handoff-show-confirm"),
    })
}

/// Puts together what was asked for.
///
/// # Errors
/// `not_a_choice` at `what` or `density`; `missing_field` at `plan` or `person`; `not_found` at `person`; `unknown_plan` at `plan`;
/// `plan_contradiction` at `plan` or `person` past its review date; `unknown_pairing` at `to`; `alias_needed`;
/// `nothing_to_show`; `too_long`; what the vault gives.
pub(crate) fn ready(call: &Call<'_>, asked: &AskedShow) -> Result<Ready, Failure> {
    let density = match asked.density.as_deref() {
        None | Some("normal") => Density::Standard,
        Some("coarse") => Density::Weak,
        Some(_) => return Err(Failure::at(ErrorCode::NotAChoice, "density")),
    };
    let to = match &asked.to {
        Some(id) => Some(people::find(call, id, "to")?),
        None => None,
    };
    let reader = call.reader()?;
    let to_text = match &to {
        Some(paired) => {
            let name = Arg::text(paired.name.as_str());
            reader.words.format("handoff-to", &[("name", name)])
        }
        None => reader.words.text("handoff-to-code"),
    };
    let mut ready = Ready {
        purpose: Purpose::Plan,
        payload: Vec::new(),
        leaving: Leaving {
            seal: Some(if to.is_some() {
                Seal::Device
            } else {
                Seal::Code
            }),
            to: to.as_ref().map(|paired| paired.name.clone()),
            ..Leaving::of(DepartureWhat::Plan)
        },
        to,
        leaves: Vec::new(),
        to_text,
        density,
        new_version: None,
        plan: None,
        care: None,
    };
    match asked.what.as_str() {
        "plan" => put_plan(call, asked, &mut ready)?,
        "history" => put_history(call, asked, &mut ready)?,
        "care_plan" => put_care(call, asked, &mut ready)?,
        _ => return Err(Failure::at(ErrorCode::NotAChoice, "what")),
    }
    Ok(ready)
}

fn put_plan(call: &Call<'_>, asked: &AskedShow, ready: &mut Ready) -> Result<(), Failure> {
    let id = asked.plan;
    let id = PlanId(id.ok_or_else(|| Failure::at(ErrorCode::MissingField, "plan"))?);
    let plan = find(call, id, "plan")?;
    if plan.review_on < to_day(call.now.date_naive()) {
        return Err(Failure::at(ErrorCode::PlanContradiction, "plan").saying("plan-against-past"));
    }
    let (plan, is_new) = next_version(call, id, &plan)?;
    let reader = call.reader()?;
    let args = [
        ("whom", Arg::text(plan.whom.as_str())),
        ("version", plan.version.into()),
    ];
    ready
        .leaves
        .push(reader.words.format("handoff-leaves-plan", &args));
    let parts = lines(&plan, reader).into_iter();
    ready
        .leaves
        .extend(parts.map(|line| format!("{}: {}", line.label, line.text)));
    ready.leaves.push(own_name(&plan.by, reader));
    ready.payload = plan
        .to_bytes()
        .map_err(|_| Failure::new(ErrorCode::TooLong))?;
    ready.leaving.about = Some(plan.whom.clone());
    ready.leaving.version = Some(plan.version);
    ready.plan = Some(plan.clone());
    ready.new_version = is_new.then_some((id, plan));
    Ok(())
}

fn put_history(call: &Call<'_>, asked: &AskedShow, ready: &mut Ready) -> Result<(), Failure> {
    let alias = super::device::own_alias(call)?;
    let with_notes = asked.notes.unwrap_or(false);
    let history = gather(call, alias.as_str(), asked.since_days, with_notes)?;
    if history.lifts.is_empty() && history.signs.is_empty() && history.practice.is_none() {
        return Err(Failure::new(ErrorCode::NothingToShow));
    }
    let reader = call.reader()?;
    ready.purpose = Purpose::History;
    ready.leaving.what = DepartureWhat::History;
    ready.leaving.days = asked.since_days;
    ready.leaving.with_notes = Some(with_notes);
    ready.leaving.entries = u32::try_from(history.lifts.len()).ok();
    ready.leaves = history_lines(&history, reader);
    ready.leaves.push(own_name(&history.from, reader));
    ready.payload = history
        .to_bytes()
        .map_err(|_| Failure::new(ErrorCode::TooLong))?;
    Ok(())
}

fn put_care(call: &Call<'_>, asked: &AskedShow, ready: &mut Ready) -> Result<(), Failure> {
    let id = asked.person;
    let id = id.ok_or_else(|| Failure::at(ErrorCode::MissingField, "person"))?;
    let leaving = sending::gather(call, id)?;
    let reader = call.reader()?;
    ready.purpose = Purpose::CarePlan;
    ready.leaving.what = DepartureWhat::CarePlan;
    ready.leaving.about = Some(leaving.plan.code.clone());
    ready.leaving.version = Some(leaving.plan.version);
    ready.leaves = sending::lines(&leaving.plan, call.now.date_naive(), reader);
    ready.leaves.push(own_name(&leaving.plan.by, reader));
    ready.payload = leaving
        .plan
        .to_bytes()
        .map_err(|_| Failure::new(ErrorCode::TooLong))?;
    ready.care = Some((CarePersonId(id), leaving.person, leaving.until));
    Ok(())
}

fn own_name(name: &str, reader: Reader<'_>) -> String {
    let args = [("name", Arg::text(name))];
    reader.words.format("handoff-leaves-name", &args)
}

/// What a history holds, in words.
#[must_use]
pub(super) fn history_lines(history: &History, reader: Reader<'_>) -> Vec<String> {
    let words = reader.words;
    let count = |of: usize| u32::try_from(of).unwrap_or(u32::MAX);
    let mut lines = Vec::new();
    if let Some((first, last)) = days(history) {
        let date = |day| Arg::text(words.date_text(to_date(day)));
        let args = [
            ("count", count(history.lifts.len()).into()),
            ("first", date(first)),
            ("last", date(last)),
        ];
        lines.push(words.format("handoff-leaves-lifts", &args));
        let left = history.lifts.iter().filter(|lift| !lift.done).count();
        let looks = history.lifts.iter().map(|lift| lift.looks.len()).sum();
        lines.push(words.format("handoff-leaves-left", &[("count", count(left).into())]));
        lines.push(words.format("handoff-leaves-looks", &[("count", count(looks).into())]));
    }
    if !history.signs.is_empty() {
        let args = [("count", count(history.signs.len()).into())];
        lines.push(words.format("handoff-leaves-signs", &args));
    }
    if let Some(practice) = &history.practice {
        let args = [("count", count(practice.len()).into())];
        lines.push(words.format("handoff-leaves-practice", &args));
    }
    if let Some(plan) = history.plan {
        let args = [("version", plan.version.into())];
        lines.push(words.format("handoff-leaves-plan-version", &args));
    }
    lines.push(words.text(if history.with_notes {
        "handoff-leaves-notes"
    } else {
        "handoff-leaves-no-notes"
    }));
    lines
}
