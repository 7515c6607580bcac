//! The worker as the judgement takes them: body today, signs, and what they are trained on.

use crate::call::Call;
use crate::convert::{about, body, moment, person};
use crate::failure::Failure;
use crate::use_cases::walk::judging::{followed, open_signs};
use crate::use_cases::walk::standing::{ABOUT_KEPT, WHOLE_LIST_EVERY, kept_body};
use crate::walk::answer::Answers;
use crate::walk::flow::{Purpose, Walk};
use chrono::NaiveDate;
use lifting::body::Person;
use lifting::plan::Plan;
use std::collections::BTreeSet;
use vault::Vault;

/// The worker today.
pub(crate) struct Today {
    /// As the judgement takes them; what was not asked is open.
    pub(crate) person: Person,
    /// The plan they follow for their own body.
    pub(crate) plan: Option<Plan>,
    /// Whether all that has to be asked of a worker is answered and holds.
    pub(crate) is_asked: bool,
    /// Whether one tap may say that nothing hurts: the rest is known.
    pub(crate) may_be_quick: bool,
    /// The day, by the phone's calendar.
    pub(crate) date: NaiveDate,
}

/// How the worker is today, by what is kept.
///
/// # Errors
/// What reading the vault gives.
pub(crate) fn today(call: &Call<'_>) -> Result<Today, Failure> {
    let vault = call.vault()?;
    let now = call.now;
    let kept = vault.about().load()?.unwrap_or_default();
    let holds =
        |at: Option<record::Moment>, span| at.is_some_and(|at| moment::still_holds(at, now, span));
    let about_known = holds(kept.asked_at, ABOUT_KEPT);
    let listed = holds(kept.signs_asked_at, WHOLE_LIST_EVERY);
    let body_kept = kept_body(vault, now)?;
    let mut answers = Answers::default();
    if about_known {
        answers.take_over(&about::from_record(&kept, now, call.settings()?.units));
    }
    if let Some(body) = &body_kept {
        answers.take_over(&body::from_record(body, true));
    }
    let none = Answers::default();
    let walk = Walk {
        purpose: Purpose::Own,
        given: &answers,
        kept: &none,
        whole_list_due: !listed,
        times_a_bout: None,
    };
    Ok(Today {
        person: person::to_judge(&walk, &kept, open_signs(vault)?),
        plan: followed(call)?,
        is_asked: about_known && listed && body_kept.is_some(),
        may_be_quick: about_known && listed,
        date: call.now.date_naive(),
    })
}

/// What the worker is trained on; `None`: not asked yet.
///
/// # Errors
/// What reading the vault gives.
pub(crate) fn trained(vault: &Vault) -> Result<Option<BTreeSet<String>>, Failure> {
    let worker = vault.worker().load()?;
    Ok(worker
        .and_then(|worker| worker.trained)
        .map(|ids| ids.into_iter().collect()))
}
