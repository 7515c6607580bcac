//! Making and editing plans.

use super::fields::{PRIVATE, PlanPage, Standing, page};
use super::lines::title;
use super::patterns::{self, PATTERNS};
use super::private;
use super::set::{Editing, read_private, set};
use crate::call::Call;
use crate::convert::{moment, plan::to_day};
use crate::failure::Failure;
use crate::use_cases::Nothing;
use crate::use_cases::handoff::device::{own_alias, read_alias};
use crate::words::{Arg, message_id};
use door::ErrorCode;
use record::{Identity, Plan};
use serde::{Deserialize, Serialize};
use serde_json::Value;
use vault::{PatientId, PlanId, VaultError};

/// The reply of `plan_patterns`.
#[derive(Debug, Serialize)]
pub(crate) struct Patterns {
    patterns: Vec<PatternView>,
}

#[derive(Debug, Serialize)]
struct PatternView {
    id: &'static str,
    title: String,
    text: String,
}

/// What a plan can begin as.
///
/// # Errors
/// None.
pub(crate) fn plan_patterns(call: &mut Call<'_>, _: Nothing) -> Result<Patterns, Failure> {
    let words = &call.state.words;
    let view = |pattern: &patterns::Pattern| {
        let title = message_id("plan-pattern", pattern.id);
        PatternView {
            id: pattern.id,
            text: words.text(&format!("{title}-text")),
            title: words.text(&title),
        }
    };
    Ok(Patterns {
        patterns: PATTERNS.iter().map(view).collect(),
    })
}

/// The command `plan_new`.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct NewPlan {
    pattern: String,
    r#for: String,
    /// Whose it is on the list, where that is known: a name may be that of several.
    #[serde(default)]
    patient: Option<i64>,
}

/// Begins a plan as a pattern. On return it is kept.
///
/// # Errors
/// `not_a_choice` at `pattern`; `alias_length`, `alias_character` at `for`; `alias_needed` for the maker's own
/// name; `not_found` at `patient`; `randomness_failed`; what the vault gives.
pub(crate) fn plan_new(call: &mut Call<'_>, asked: NewPlan) -> Result<PlanPage, Failure> {
    let pattern = patterns::find(&asked.pattern)
        .ok_or_else(|| Failure::at(ErrorCode::NotAChoice, "pattern"))?;
    let whom = read_alias(&asked.r#for).map_err(|failure| Failure {
        field: Some("for".to_owned()),
        ..failure
    })?;
    let patient = asked.patient.map(PatientId);
    if let Some(patient) = patient {
        let found = call.vault()?.patients().find(patient)?;
        found.ok_or_else(|| Failure::at(ErrorCode::NotFound, "patient"))?;
    }
    let by = own_alias(call)?;
    let mut id = [0; 16];
    call.world.fill_random(&mut id)?;
    let mut plan = Plan::blank(Identity(id), moment::to_record(call.now));
    whom.as_str().clone_into(&mut plan.whom);
    by.as_str().clone_into(&mut plan.by);
    pattern.fill(&mut plan, to_day(call.now.date_naive()));
    let id = call.vault()?.together(|vault| {
        let id = vault.plans().add(&plan)?;
        if let Some(patient) = patient {
            vault.patients().link(id, patient)?;
        }
        Ok::<_, VaultError>(id)
    })?;
    view(call, id, &plan)
}

/// The command `plan_edit`.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct EditPlan {
    id: i64,
}

/// A plan as it stands.
///
/// # Errors
/// `unknown_plan`; what the vault gives.
pub(crate) fn plan_edit(call: &mut Call<'_>, asked: EditPlan) -> Result<PlanPage, Failure> {
    let id = PlanId(asked.id);
    view(call, id, &find(call, id, "id")?)
}

/// The command `plan_set`.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct SetPlan {
    id: i64,
    field: String,
    value: Value,
}

/// Changes one field of a plan. On return it is kept.
///
/// # Errors
/// `unknown_plan`; those of [`set`]; what the vault gives.
pub(crate) fn plan_set(call: &mut Call<'_>, asked: SetPlan) -> Result<PlanPage, Failure> {
    let id = PlanId(asked.id);
    let plan = find(call, id, "id")?;
    if asked.field == PRIVATE {
        private::set_next(call, id, read_private(&asked.value)?)?;
        return view(call, id, &plan);
    }
    let editing = Editing {
        now: call.now,
        units: call.reader()?.units,
    };
    let plan = set(&plan, &asked.field, &asked.value, editing)?;
    call.vault()?.plans().save(id, &plan)?;
    view(call, id, &plan)
}

/// The reply of `plan_list`.
#[derive(Debug, Serialize)]
pub(crate) struct Plans {
    plans: Vec<ListedPlan>,
}

#[derive(Debug, Serialize)]
struct ListedPlan {
    id: i64,
    title: String,
    text: String,
}

/// The plans made here, the newest first.
///
/// # Errors
/// What the vault gives.
pub(crate) fn plan_list(call: &mut Call<'_>, _: Nothing) -> Result<Plans, Failure> {
    let reader = call.reader()?;
    let mut plans = Vec::new();
    for (id, plan) in call.vault()?.plans().all()? {
        let whom = ("name", Arg::text(plan.whom.as_str()));
        let whom = reader.words.format("plan-for", &[whom]);
        plans.push(ListedPlan {
            id: id.0,
            title: title(&plan, reader),
            text: format!("{whom} {}", version_text(call, id)?),
        });
    }
    Ok(Plans { plans })
}

/// A plan made here.
///
/// # Errors
/// `unknown_plan` at `field`; what the vault gives.
pub(crate) fn find(call: &Call<'_>, id: PlanId, field: &str) -> Result<Plan, Failure> {
    let found = call.vault()?.plans().find(id)?;
    found.ok_or_else(|| Failure::at(ErrorCode::UnknownPlan, field))
}

/// The plan as it would be handed over now: as the last version if nothing changed since, else as the next.
/// The second part tells whether it is a new version.
///
/// # Errors
/// What the vault gives.
pub(crate) fn next_version(
    call: &Call<'_>,
    id: PlanId,
    plan: &Plan,
) -> Result<(Plan, bool), Failure> {
    let newest = call.vault()?.plan_versions().newest(id)?;
    let as_newest = newest.as_ref().map(|newest| Plan {
        version: newest.version,
        made_at: newest.made_at,
        by: newest.by.clone(),
        // A reason alone, or its want, makes no new version.
        why: newest.why.clone(),
        ..plan.clone()
    });
    if let Some(newest) = newest.filter(|newest| Some(newest) == as_newest.as_ref()) {
        return Ok((newest, false));
    }
    let last = as_newest.map_or(0, |newest| newest.version);
    let next = Plan {
        version: last.saturating_add(1),
        made_at: moment::to_record(call.now),
        by: own_alias(call)?.as_str().to_owned(),
        ..plan.clone()
    };
    Ok((next, true))
}

fn view(call: &Call<'_>, id: PlanId, plan: &Plan) -> Result<PlanPage, Failure> {
    let (_, is_draft) = next_version(call, id, plan)?;
    let standing = Standing {
        is_draft,
        version_text: version_text(call, id)?,
        private: private::of_next(call, id)?,
    };
    Ok(page(id.0, plan, standing, call.reader()?))
}

fn version_text(call: &Call<'_>, id: PlanId) -> Result<String, Failure> {
    let words = &call.state.words;
    let Some(newest) = call.vault()?.plan_versions().newest(id)? else {
        return Ok(words.text("plan-version-none"));
    };
    let day = words.date_text(moment::from_record(newest.made_at).date_naive());
    let args = [("version", newest.version.into()), ("day", day.into())];
    Ok(words.format("plan-version", &args))
}
