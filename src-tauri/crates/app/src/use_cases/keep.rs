//! After the advice: done or left, pain afterwards, and taking back a wrong tap.

use super::Nothing;
use super::walk::answering::signs_said;
use super::walk::open;
use crate::call::Call;
use crate::convert::{body, moment, task};
use crate::failure::Failure;
use crate::walk::view;
use chrono::Duration;
use door::ErrorCode;
use lifting::advise::advice::Alternative;
use record::{CheckIn, CheckInKind, Lift, Pain, Way};
use serde::{Deserialize, Serialize};
use vault::{LiftFilter, LiftId, Vault};

/// How long the newest entry can be taken back. House rule.
pub(crate) const UNDO_WITHIN: Duration = Duration::minutes(10);

/// The command `lift_keep`.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct KeepLift {
    done: bool,
    #[serde(default)]
    way: Option<String>,
    #[serde(default)]
    instead: Option<String>,
}

/// The reply that names what was kept.
#[derive(Debug, Serialize)]
pub(crate) struct Kept {
    /// Its id.
    pub(crate) id: i64,
}

/// Keeps what was done, or decided against, and ends the draft. On return it is on the disk.
///
/// # Errors
/// `no_draft`; `question_not_open` before there is an advice; `not_a_choice`; `contradiction` for a way that
/// was not used or something done instead of what was done; what the vault gives.
pub(crate) fn lift_keep(call: &mut Call<'_>, asked: KeepLift) -> Result<Kept, Failure> {
    let way = match &asked.way {
        Some(id) => {
            Some(Way::from_id(id).ok_or_else(|| Failure::at(ErrorCode::NotAChoice, "way"))?)
        }
        None => None,
    };
    if let Some(id) = &asked.instead {
        Alternative::from_id(id).ok_or_else(|| Failure::at(ErrorCode::NotAChoice, "instead"))?;
    }
    if !asked.done && way.is_some() {
        return Err(Failure::at(ErrorCode::Contradiction, "way"));
    }
    if asked.done && asked.instead.is_some() {
        return Err(Failure::at(ErrorCode::Contradiction, "instead"));
    }
    let standing = open(call)?;
    let Some(advice) = standing.draft.advice.clone() else {
        return Err(Failure::new(ErrorCode::QuestionNotOpen));
    };
    let walk = standing.walk();
    let now = moment::to_record(call.now);
    let lift = Lift {
        at: now,
        title: view::title(&walk, call.reader()?),
        task: task::to_record(&walk),
        body: body::to_record(&walk, now, signs_said(&standing.given)),
        advice,
        done: asked.done,
        way,
        instead: asked.instead,
    };
    let id = call.vault()?.together(|vault| {
        let id = vault.lifts().add(&lift)?;
        vault.draft().clear()?;
        Ok(id)
    })?;
    Ok(Kept { id: id.0 })
}

/// The command `lift_pain`.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct PainAfter {
    id: i64,
    #[serde(default)]
    pain: Option<u8>,
}

/// Keeps the worst pain during a lift, told just after it. Without a number it was passed over.
///
/// # Errors
/// `not_found`, `out_of_range`; what the vault gives.
pub(crate) fn lift_pain(call: &mut Call<'_>, asked: PainAfter) -> Result<Nothing, Failure> {
    let pain = read_pain(asked.pain)?;
    let check_in = CheckIn {
        kind: CheckInKind::During,
        at: moment::to_record(call.now),
        pain,
        back_to_usual: None,
        skipped: pain.is_none(),
    };
    call.vault()?
        .check_ins()
        .add(LiftId(asked.id), &check_in)
        .map_err(not_found_at_id)?;
    Ok(Nothing {})
}

/// The command `lift_undo`.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct Undo {
    id: i64,
}

/// Takes the newest entry back, within ten minutes.
///
/// # Errors
/// `not_found` for any other entry, or later; what the vault gives.
pub(crate) fn lift_undo(call: &mut Call<'_>, asked: Undo) -> Result<Nothing, Failure> {
    let vault = call.vault()?;
    let newest = newest(vault)?;
    let may_go = newest.is_some_and(|(id, lift)| {
        id == LiftId(asked.id) && moment::still_holds(lift.at, call.now, UNDO_WITHIN)
    });
    if !may_go || !vault.lifts().remove(LiftId(asked.id))? {
        return Err(Failure::at(ErrorCode::NotFound, "id"));
    }
    Ok(Nothing {})
}

fn newest(vault: &Vault) -> Result<Option<(LiftId, Lift)>, Failure> {
    let filter = LiftFilter {
        limit: 1,
        ..LiftFilter::default()
    };
    Ok(vault.lifts().newest(&filter)?.into_iter().next())
}

/// A pain score from outside.
///
/// # Errors
/// `out_of_range`.
pub(crate) fn read_pain(pain: Option<u8>) -> Result<Option<Pain>, Failure> {
    match pain {
        Some(score) => match Pain::new(score) {
            Some(pain) => Ok(Some(pain)),
            None => Err(Failure::at(ErrorCode::OutOfRange, "pain")),
        },
        None => Ok(None),
    }
}

/// A failure of the vault, with "not found" pinned to the field `id`.
#[must_use]
pub(crate) fn not_found_at_id(error: vault::VaultError) -> Failure {
    match error {
        vault::VaultError::NotFound => Failure::at(ErrorCode::NotFound, "id"),
        other => other.into(),
    }
}
