//! The list, as it is searched.

use super::search::{matches, plain};
use super::seen::adopt;
use crate::call::Call;
use crate::convert::moment::{from_record, to_record};
use crate::convert::plan::{to_date, to_day};
use crate::failure::Failure;
use crate::words::{Arg, Words};
use door::ErrorCode;
use record::{Day, Patient};
use serde::{Deserialize, Serialize};

/// Longest that may be looked for, in characters (house rule: a name has 40 at most).
const LONGEST: usize = 80;
/// Most lines in one reply (house rule): who looks for more types another letter.
const MOST: usize = 60;

/// The command `patients`.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct Wanted {
    #[serde(default)]
    find: String,
}

/// The reply of `patients`: those whose review is due first, then by name.
#[derive(Debug, Serialize)]
pub(crate) struct Listed {
    patients: Vec<Line>,
    count_text: String,
}

#[derive(Debug, Serialize)]
struct Line {
    id: i64,
    alias: String,
    text: String,
    due: bool,
}

/// The patients whose name fits what is looked for; all of them for nothing. Plans that are nobody's are put to their person
/// first.
///
/// # Errors
/// `too_long` at `find`; what the vault gives.
pub(crate) fn patients(call: &mut Call<'_>, asked: Wanted) -> Result<Listed, Failure> {
    if asked.find.chars().count() > LONGEST {
        return Err(Failure::at(ErrorCode::TooLong, "find"));
    }
    let vault = call.vault()?;
    adopt(vault, to_record(call.now))?;
    let today = to_day(call.now.date_naive());
    let wanted = plain(&asked.find);
    let mut found: Vec<_> = vault
        .patients()
        .all()?
        .into_iter()
        .map(|(id, patient)| (plain(&patient.alias), id, patient))
        .filter(|(name, _, _)| matches(name, &wanted))
        .collect();
    found.sort_by(|(name, id, patient), (other_name, other_id, other)| {
        let first = is_due(other, today).cmp(&is_due(patient, today));
        first.then_with(|| (name, id.0).cmp(&(other_name, other_id.0)))
    });
    let words = &call.state.words;
    let count = u32::try_from(found.len()).unwrap_or(u32::MAX);
    Ok(Listed {
        patients: found
            .into_iter()
            .take(MOST)
            .map(|(_, id, patient)| Line {
                id: id.0,
                text: text(&patient, today, words),
                due: is_due(&patient, today),
                alias: patient.alias,
            })
            .collect(),
        count_text: words.format("patients-count", &[("count", count.into())]),
    })
}

/// Whether the day on which the plan is to be looked at again has come.
pub(super) fn is_due(patient: &Patient, today: Day) -> bool {
    patient.review_on.is_some_and(|day| day <= today)
}

/// When they were last seen, and when the plan is to be looked at again.
pub(super) fn text(patient: &Patient, today: Day, words: &Words) -> String {
    let seen = match patient.seen_at {
        Some(at) => {
            let day = Arg::text(words.date_text(from_record(at).date_naive()));
            words.format("patients-seen", &[("day", day)])
        }
        None => words.text("patients-seen-never"),
    };
    let Some(day) = patient.review_on else {
        return seen;
    };
    let id = if is_due(patient, today) {
        "patients-review-due"
    } else {
        "patients-review"
    };
    let day = Arg::text(words.date_text(to_date(day)));
    format!("{seen} {}", words.format(id, &[("day", day)]))
}
