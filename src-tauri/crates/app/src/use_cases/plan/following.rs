//! The plan that is followed here.

use super::lines::{limits, lines, review, title};
use super::practice::view::DayView;
use super::practice::{self, Today};
use crate::call::Call;
use crate::convert::moment;
use crate::convert::plan::days_over;
use crate::failure::Failure;
use crate::use_cases::Nothing;
use crate::walk::text::Reader;
use crate::words::{Arg, Rounding};
use chrono::{DateTime, FixedOffset};
use record::{Followed, Plan};
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
    /// Whom to call.
    call: Option<String>,
    day: DayView,
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
    let Some(today) = practice::today(call)? else {
        return Ok(Now { plan: None });
    };
    Ok(Now {
        plan: Some(view(call, &today, reader)?),
    })
}

fn view(call: &Call<'_>, today: &Today, reader: Reader<'_>) -> Result<PlanView, Failure> {
    let words = reader.words;
    let followed = &today.followed;
    let plan = &followed.plan;
    let made = words.date_text(moment::from_record(plan.made_at).date_naive());
    let note = expired_note(plan, call.now, reader);
    Ok(PlanView {
        title: title(plan, reader),
        from: from_text(followed, reader),
        version_text: words.format(
            "plan-version",
            &[("version", plan.version.into()), ("day", made.into())],
        ),
        review_text: review(plan, reader),
        lines: views(lines(plan, reader)),
        expired: note.is_some(),
        note,
        call: super::lines::call(plan, reader),
        day: practice::view::day(call, today, reader)?,
    })
}

/// What is said of a plan that is past its day; nothing before that.
#[must_use]
pub(crate) fn expired_note(
    plan: &Plan,
    now: DateTime<FixedOffset>,
    reader: Reader<'_>,
) -> Option<String> {
    let weeks = reader.words.weeks(f64::from(plan.grace_weeks));
    (days_over(plan.review_on, now) > 0).then(|| {
        reader
            .words
            .format("plan-expired", &[("weeks", weeks.into())])
    })
}

/// The plan on the home screen: whose it is, how much is the most today, until when it holds; whom to call
/// in a flare-up and past its day.
///
/// # Errors
/// What the vault gives.
pub(crate) fn card(call: &Call<'_>, reader: Reader<'_>) -> Result<Option<Vec<String>>, Failure> {
    let Some(today) = practice::today(call)? else {
        return Ok(None);
    };
    let plan = &today.followed.plan;
    let words = reader.words;
    let args = [
        ("title", title(plan, reader).into()),
        ("from", from_text(&today.followed, reader).into()),
    ];
    let flare = today.day.level.filter(|_| today.day.flare_today);
    let most = match flare {
        Some(level) => {
            let mass = words.mass(level.value(), reader.units, Rounding::Down);
            words.format("plan-step-flare", &[("mass", mass.into())])
        }
        None if today.day.flare_today => words.text("plan-home-flare"),
        None => limits(plan, reader),
    };
    let expired = expired_note(plan, call.now, reader);
    let whom = super::lines::call(plan, reader);
    let whom = whom.filter(|_| expired.is_some() || today.day.flare_today);
    let until = expired.unwrap_or_else(|| review(plan, reader));
    let lines = [words.format("plan-card", &args), most, until];
    let said = lines.into_iter().filter(|line| !line.is_empty());
    Ok(Some(said.chain(whom).collect()))
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
