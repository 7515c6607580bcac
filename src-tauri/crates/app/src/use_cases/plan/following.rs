//! The plan that is followed here.

use super::lines::{lines, review, title};
use crate::call::Call;
use crate::convert::moment;
use crate::convert::plan::days_over;
use crate::failure::Failure;
use crate::use_cases::Nothing;
use crate::walk::text::Reader;
use crate::words::Arg;
use record::Followed;
use serde::Serialize;

/// The reply of `plan_now`.
#[derive(Debug, Serialize)]
pub(crate) struct Now {
    plan: Option<PlanView>,
}

#[derive(Debug, Serialize)]
struct PlanView {
    title: String,
    from: String,
    version_text: String,
    review_text: String,
    lines: Vec<LineView>,
    expired: bool,
    note: Option<String>,
}

/// A label and a text, for the screens.
#[derive(Debug, Serialize)]
pub(crate) struct LineView {
    /// What it is about.
    pub(crate) label: String,
    /// What there is to say of it.
    pub(crate) text: String,
}

/// The plan that is followed, in plain words.
///
/// # Errors
/// What the vault gives.
pub(crate) fn plan_now(call: &mut Call<'_>, _: Nothing) -> Result<Now, Failure> {
    let reader = call.reader()?;
    let followed = call.vault()?.followed().active()?;
    Ok(Now {
        plan: followed.map(|followed| view(call, &followed, reader)),
    })
}

fn view(call: &Call<'_>, followed: &Followed, reader: Reader<'_>) -> PlanView {
    let words = reader.words;
    let plan = &followed.plan;
    let made = words.date_text(moment::from_record(plan.made_at).date_naive());
    let expired = days_over(plan.review_on, call.now) > 0;
    PlanView {
        title: title(plan, reader),
        from: from_text(followed, reader),
        version_text: words.format(
            "plan-version",
            &[("version", plan.version.into()), ("day", made.into())],
        ),
        review_text: review(plan, reader),
        lines: views(lines(plan, reader)),
        expired,
        note: expired.then(|| {
            words.format(
                "plan-expired",
                &[("weeks", words.weeks(f64::from(plan.grace_weeks)).into())],
            )
        }),
    }
}

/// Who set the plan: by the name they have here, or by their own word.
#[must_use]
pub(crate) fn from_text(followed: &Followed, reader: Reader<'_>) -> String {
    let (id, name) = match &followed.from {
        Some(name) => ("plan-from", name),
        None => ("plan-from-unverified", &followed.plan.by),
    };
    reader
        .words
        .format(id, &[("name", Arg::text(name.as_str()))])
}

/// Lines for the screens.
#[must_use]
pub(crate) fn views(lines: Vec<super::lines::Line>) -> Vec<LineView> {
    let view = |line: super::lines::Line| LineView {
        label: line.label,
        text: line.text,
    };
    lines.into_iter().map(view).collect()
}

/// Stops following. The plan is kept, and can be taken up again from whoever made it.
///
/// # Errors
/// What the vault gives.
pub(crate) fn plan_stop(call: &mut Call<'_>, _: Nothing) -> Result<Nothing, Failure> {
    let at = moment::to_record(call.now);
    call.vault()?.followed().stop(at)?;
    Ok(Nothing {})
}
