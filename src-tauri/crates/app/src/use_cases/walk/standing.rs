//! A walk as the vault holds it: the draft, and what is kept from before.

use super::answering::is_told_now;
use crate::call::Call;
use crate::convert::moment::{self, still_holds};
use crate::convert::{about, body, draft, task};
use crate::failure::Failure;
use crate::use_cases::plan::practice;
use crate::walk::answer::{Answer, Answers, NumberUnit};
use crate::walk::flow::{Purpose, Walk};
use crate::walk::ids::QuestionId;
use crate::walk::question::Group;
use crate::walk::questions::question;
use chrono::{DateTime, Duration, FixedOffset};
use record::{About, BodyToday, Draft, DraftPurpose, Units};
use std::collections::BTreeSet;
use vault::{SavedTaskId, Vault};

/// How long answers about the body, and about signs today, hold. House rule.
pub(crate) const BODY_KEPT: Duration = Duration::hours(4);
/// How long answers about the person hold. House rule.
pub(crate) const ABOUT_KEPT: Duration = Duration::days(30);
/// How often the whole list of warning signs is asked. House rule.
pub(crate) const WHOLE_LIST_EVERY: Duration = Duration::days(7);

/// A walk as it stands in the vault.
pub(crate) struct Standing {
    /// The draft as kept, without its answers.
    pub(crate) draft: Draft,
    /// Answers given in this walk.
    pub(crate) given: Answers,
    /// Answers kept from before that hold.
    pub(crate) kept: Answers,
    /// Answers from before that no longer hold, shown as what was said last.
    pub(crate) remembered: Answers,
    /// The person as kept.
    pub(crate) about: About,
    /// The body as kept, if it still holds.
    pub(crate) body: Option<BodyToday>,
    /// Whether the whole list of warning signs is due.
    pub(crate) whole_list_due: bool,
    /// Most lifts in one go, where the plan that is followed says so.
    pub(crate) times_a_bout: Option<u32>,
}

impl Standing {
    /// The draft that is open, if there is one.
    ///
    /// # Errors
    /// What reading the vault gives.
    pub(crate) fn load(call: &Call<'_>) -> Result<Option<Self>, Failure> {
        let vault = call.vault()?;
        let Some(kept) = vault.draft().load()? else {
            return Ok(None);
        };
        let mut standing = Self::around(call, kept)?;
        standing.forget_what_is_old(call.now);
        Ok(Some(standing))
    }

    /// A new draft, not kept yet.
    ///
    /// # Errors
    /// What reading the vault gives.
    pub(crate) fn begin(call: &Call<'_>, saved_task: Option<SavedTaskId>) -> Result<Self, Failure> {
        let draft = Draft {
            opened_at: moment::to_record(call.now),
            purpose: DraftPurpose::Lift,
            answers: Vec::new(),
            saved_task: saved_task.map(|id| id.0),
            advice: None,
            open_question: None,
        };
        Self::around(call, draft)
    }

    fn around(call: &Call<'_>, draft: Draft) -> Result<Self, Failure> {
        let vault = call.vault()?;
        let now = call.now;
        let about = vault.about().load()?.unwrap_or_default();
        // Before a move the body is asked anew, so what is kept does not count.
        let body = match draft.purpose {
            DraftPurpose::Own => None,
            DraftPurpose::Lift | DraftPurpose::About => kept_body(vault, now)?,
        };
        let holds =
            |at: Option<record::Moment>, span| at.is_some_and(|at| still_holds(at, now, span));
        let remembered = about::from_record(&about, now, call.settings()?.units);
        let mut kept = Answers::default();
        if draft.purpose != DraftPurpose::About && holds(about.asked_at, ABOUT_KEPT) {
            kept.take_over(&remembered);
        }
        if let Some(body) = &body {
            kept.take_over(&body::from_record(body, true));
        }
        // A flare-up that was told on the page of the plan holds for the day.
        if draft.purpose == DraftPurpose::Lift && practice::is_flare(call)? {
            kept.give(
                QuestionId::BackState,
                Answer::Choice(record::BackState::Flare.id().to_owned()),
            );
        }
        if let Some(id) = draft.saved_task
            && let Some(saved) = vault.saved_tasks().find(SavedTaskId(id))?
        {
            kept.take_over(&task_answers(&saved, call)?);
        }
        let mut standing = Self {
            given: draft::from_record(&draft.answers),
            kept,
            remembered,
            whole_list_due: !holds(about.signs_asked_at, WHOLE_LIST_EVERY),
            times_a_bout: vault
                .followed()
                .active()?
                .and_then(|followed| followed.plan.times_a_bout),
            about,
            body,
            draft,
        };
        standing.keep_short_list();
        Ok(standing)
    }

    /// The short list of signs holds as long as the body it was asked for. House rule: "anything new or scary
    /// today?" is still asked before each lift.
    fn keep_short_list(&mut self) {
        let signs = self.body.as_ref().and_then(|body| body.signs.as_ref());
        let none_ticked = signs.is_some_and(Vec::is_empty);
        if none_ticked && !is_told_now(self) {
            let none = Answer::Choices(BTreeSet::new());
            self.kept.give(QuestionId::SignsFlare, none);
        }
    }

    /// A draft left lying: what was said about today is asked again, what was said about the thing stays.
    fn forget_what_is_old(&mut self, now: DateTime<FixedOffset>) {
        if still_holds(self.draft.opened_at, now, BODY_KEPT) {
            return;
        }
        for id in QuestionId::ALL {
            if matches!(question(*id).group, Group::Body | Group::Signs) {
                self.given.forget(*id);
            }
        }
        self.draft.opened_at = moment::to_record(now);
        self.draft.advice = None;
        self.draft.open_question = None;
    }

    /// The walk.
    #[must_use]
    pub(crate) const fn walk(&self) -> Walk<'_> {
        Walk {
            purpose: match self.draft.purpose {
                DraftPurpose::Lift => Purpose::Lift,
                DraftPurpose::About => Purpose::About,
                DraftPurpose::Own => Purpose::Own,
            },
            given: &self.given,
            kept: &self.kept,
            whole_list_due: self.whole_list_due,
            times_a_bout: self.times_a_bout,
        }
    }

    /// Keeps the draft. On return it is on the disk.
    ///
    /// # Errors
    /// What writing the vault gives.
    pub(crate) fn keep(&mut self, vault: &Vault) -> Result<(), vault::VaultError> {
        self.draft.answers = draft::to_record(&self.given);
        vault.draft().save(&self.draft)
    }
}

/// The body as kept, if it still holds.
///
/// # Errors
/// What reading the vault gives.
pub(crate) fn kept_body(
    vault: &Vault,
    now: DateTime<FixedOffset>,
) -> Result<Option<BodyToday>, Failure> {
    let body = vault.body_today().load()?;
    Ok(body.filter(|body| still_holds(body.at, now, BODY_KEPT)))
}

/// The answers about the thing that a saved task holds.
///
/// # Errors
/// What reading the vault gives.
pub(crate) fn task_answers(saved: &record::SavedTask, call: &Call<'_>) -> Result<Answers, Failure> {
    let unit = match call.settings()?.units {
        Units::Kg => NumberUnit::Kilograms,
        Units::Lb => NumberUnit::Pounds,
    };
    // The answers say it as it was said; the task fills in what an older version's answers leave open.
    let mut answers = task::from_record(&saved.task, unit);
    let said = draft::from_record(&saved.answers);
    for (id, answer) in said
        .iter()
        .filter(|(id, _)| question(*id).group == Group::Task)
    {
        answers.give(id, answer.clone());
    }
    Ok(answers)
}
