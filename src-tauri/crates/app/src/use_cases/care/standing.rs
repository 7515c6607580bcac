//! A walk before a move as the vault holds it.

use super::worker::trained;
use crate::call::Call;
use crate::convert::{draft, moment};
use crate::failure::Failure;
use crate::moving::facts;
use crate::moving::flow::{Given, MoveWalk};
use crate::moving::ids::MoveQuestion;
use crate::moving::options;
use crate::moving::people::Who;
use chrono::Duration;
use door::ErrorCode;
use lifting::transfer::client::Move;
use record::{Answered, CarePerson, CarePlan, MoveDraft};
use std::collections::BTreeSet;
use vault::{CarePersonId, Vault};

/// How long a walk before a move holds: what is new in a person is asked again after it. House rule.
const MOVE_KEPT: Duration = Duration::hours(1);

/// A walk as it stands in the vault.
pub(crate) struct MoveStanding {
    /// The draft as kept, without its answers.
    pub(crate) draft: MoveDraft,
    /// The move.
    pub(crate) what: Move,
    /// The person's id.
    pub(crate) id: CarePersonId,
    /// The person.
    pub(crate) person: CarePerson,
    /// Answers given in this walk.
    pub(crate) given: Given,
    /// What was noted before.
    kept: Given,
    /// What the worker is trained on; `None`: not asked yet.
    pub(crate) trained: Option<BTreeSet<String>>,
}

impl MoveStanding {
    /// A new walk, not kept yet.
    ///
    /// # Errors
    /// `not_found`; what reading the vault gives.
    pub(crate) fn begin(call: &Call<'_>, id: CarePersonId, what: Move) -> Result<Self, Failure> {
        let draft = MoveDraft {
            opened_at: moment::to_record(call.now),
            person: id.0,
            what: what.id().to_owned(),
            answers: Vec::new(),
            open_question: None,
        };
        Self::around(call, draft)?.ok_or_else(|| Failure::at(ErrorCode::NotFound, "person"))
    }

    /// The walk that is open.
    ///
    /// # Errors
    /// `no_draft` when there is none, when it is too old, or when its person was removed; what reading the
    /// vault gives.
    pub(crate) fn open(call: &Call<'_>) -> Result<Self, Failure> {
        let none = || Failure::new(ErrorCode::NoDraft);
        let draft = call.vault()?.move_draft().load()?.ok_or_else(none)?;
        if !moment::still_holds(draft.opened_at, call.now, MOVE_KEPT) {
            return Err(none());
        }
        Self::around(call, draft)?.ok_or_else(none)
    }

    fn around(call: &Call<'_>, draft: MoveDraft) -> Result<Option<Self>, Failure> {
        let id = CarePersonId(draft.person);
        let vault = call.vault()?;
        let (Some(what), Some(person)) =
            (Move::from_id(&draft.what), vault.care_people().find(id)?)
        else {
            return Ok(None);
        };
        let planned = facts::noted(&person, what).is_some_and(|noted| noted.plan.is_some());
        let given = draft.answers.iter().filter_map(|one| {
            let question = MoveQuestion::from_id(&one.question)?;
            let answer = draft::read(&one.answer)?;
            let answer = options::accept(question, what, planned, answer).ok()?;
            Some((question, answer))
        });
        Ok(Some(Self {
            given: given.collect(),
            kept: facts::kept(&person, what),
            trained: trained(vault)?,
            what,
            id,
            person,
            draft,
        }))
    }

    /// What the care plan says of this move.
    #[must_use]
    pub(crate) fn plan(&self) -> Option<&CarePlan> {
        facts::noted(&self.person, self.what).and_then(|noted| noted.plan.as_ref())
    }

    /// The walk.
    #[must_use]
    pub(crate) fn walk(&self) -> MoveWalk<'_> {
        MoveWalk {
            what: self.what,
            plan: self.plan(),
            given: &self.given,
            kept: &self.kept,
        }
    }

    /// Who it is about.
    #[must_use]
    pub(crate) fn who(&self) -> Who {
        Who::of(self.id.0, &self.person)
    }

    /// Keeps the walk. On return it is on the disk.
    ///
    /// # Errors
    /// What writing the vault gives.
    pub(crate) fn keep(&mut self, vault: &Vault) -> Result<(), vault::VaultError> {
        let kept = self.given.iter().filter_map(|(question, answer)| {
            Some(Answered {
                question: question.id().to_owned(),
                answer: draft::kept(answer)?,
            })
        });
        self.draft.answers = kept.collect();
        vault.move_draft().save(&self.draft)
    }
}
