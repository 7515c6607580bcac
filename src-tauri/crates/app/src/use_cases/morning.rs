//! The question of the next morning: how is it today?

use super::Nothing;
use super::keep::{not_found_at_id, read_pain};
use crate::call::Call;
use crate::convert::moment::{from_record, to_record};
use crate::failure::Failure;
use crate::use_cases::plan::practice;
use chrono::{DateTime, Days, FixedOffset};
use door::ErrorCode;
use record::{BackToUsual, CheckIn, CheckInKind, Lift, MorningAfter};
use serde::Deserialize;
use vault::{LiftFilter, LiftId, Vault};

/// Most lifts looked at. House rule.
const MOST_LIFTS: u32 = 100;

/// The command `morning`.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct Morning {
    /// The lift; without one, what was practised yesterday.
    #[serde(default)]
    id: Option<i64>,
    #[serde(default)]
    pain: Option<u8>,
    #[serde(default)]
    back_to_usual: Option<String>,
}

/// Keeps how it is the morning after. With neither answer it was passed over, and is not asked again.
///
/// # Errors
/// `not_found`, `not_a_choice`, `out_of_range`; what the vault gives.
pub(crate) fn morning(call: &mut Call<'_>, asked: Morning) -> Result<Nothing, Failure> {
    let pain = read_pain(asked.pain)?;
    let back_to_usual = match &asked.back_to_usual {
        Some(id) => Some(
            BackToUsual::from_id(id)
                .ok_or_else(|| Failure::at(ErrorCode::NotAChoice, "back_to_usual"))?,
        ),
        None => None,
    };
    let at = to_record(call.now);
    let told = MorningAfter {
        at,
        pain,
        back_to_usual,
    };
    let vault = call.vault()?;
    let Some(id) = asked.id.map(LiftId) else {
        return if practice::morning::tell(vault, call.now, told)? {
            Ok(Nothing {})
        } else {
            Err(Failure::at(ErrorCode::NotFound, "id"))
        };
    };
    let check_in = CheckIn {
        kind: CheckInKind::NextMorning,
        at,
        pain,
        back_to_usual,
        skipped: pain.is_none() && back_to_usual.is_none(),
    };
    let lift = vault.lifts().find(id)?;
    let yesterday = call.now.date_naive().checked_sub_days(Days::new(1));
    let is_of_yesterday =
        lift.is_some_and(|lift| Some(from_record(lift.at).date_naive()) == yesterday);
    let added = vault.together(|vault| {
        vault.check_ins().add(id, &check_in)?;
        // How it is this morning is one answer, also for what was practised on that day.
        if is_of_yesterday {
            practice::morning::tell(vault, call.now, told)?;
        }
        Ok(())
    });
    added.map_err(not_found_at_id)?;
    Ok(Nothing {})
}

/// The lift of yesterday to ask about: the newest one done, once a day however many there were, since how
/// it is this morning is one answer. House rule. `None` when there was none or it was asked already.
///
/// # Errors
/// What reading the vault gives.
pub(crate) fn to_ask(
    vault: &Vault,
    now: DateTime<FixedOffset>,
) -> Result<Option<(LiftId, Lift)>, Failure> {
    let Some(yesterday) = now.date_naive().checked_sub_days(Days::new(1)) else {
        return Ok(None);
    };
    // Two days back, so that no time zone cuts yesterday short.
    let since = now.checked_sub_days(Days::new(2)).unwrap_or(now);
    let lifts = vault.lifts().newest(&LiftFilter {
        done: Some(true),
        since_ms: Some(since.timestamp_millis()),
        limit: MOST_LIFTS,
        ..LiftFilter::default()
    })?;
    let of_yesterday: Vec<(LiftId, Lift)> = lifts
        .into_iter()
        .filter(|(_, lift)| from_record(lift.at).date_naive() == yesterday)
        .collect();
    for (id, _) in &of_yesterday {
        let asked = vault.check_ins().of(*id)?;
        if asked
            .iter()
            .any(|check_in| check_in.kind == CheckInKind::NextMorning)
        {
            return Ok(None);
        }
    }
    Ok(of_yesterday.into_iter().next())
}
