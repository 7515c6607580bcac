//! The command `advise` as it stands on the wire, and what it asks of the judgement.

use super::history::{HistoryWire, RecentWire};
use super::object::ObjectWire;
use super::person::PersonWire;
use super::plan::PlanWire;
use super::transfer::TransferWire;
use crate::choice::{Choice, Listed};
use crate::error::{DoorError, ErrorCode};
use lifting::advise::Request;
use lifting::body::Person;
use lifting::plan::Plan;
use lifting::progress::History;
use lifting::transfer::TransferRequest;
use serde::Deserialize;

/// What is asked about.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum About {
    Object,
    Transfer,
    FloorRecovery,
    Progress,
}

impl Listed for About {
    fn listed(id: &str) -> Option<Self> {
        match id {
            "object" => Some(Self::Object),
            "transfer" => Some(Self::Transfer),
            "floor_recovery" => Some(Self::FloorRecovery),
            "progress" => Some(Self::Progress),
            _ => None,
        }
    }
}

/// The command's body.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct AdviseWire {
    task: Option<Choice<About>>,
    person: Option<PersonWire>,
    object: Option<ObjectWire>,
    transfer: Option<TransferWire>,
    plan: Option<PlanWire>,
    history: Option<HistoryWire>,
    recent: Option<RecentWire>,
}

/// What is asked of the judgement.
#[derive(Debug)]
pub(crate) enum Asked {
    /// Advice on one lift.
    Lift(Box<Request>),
    /// Advice on moving a person.
    Transfer(Box<TransferRequest>),
    /// The next step in the plan.
    Progress {
        /// Who.
        person: Box<Person>,
        /// The plan, if there is one.
        plan: Option<Box<Plan>>,
        /// How practice went.
        history: History,
    },
}

impl AdviseWire {
    /// What is asked, every number checked.
    pub(crate) fn checked(self) -> Result<Asked, DoorError> {
        let about = needed(self.task, "task")?.0;
        let moves_a_person = matches!(about, About::Transfer | About::FloorRecovery);
        consistent("transfer", moves_a_person || self.transfer.is_none())?;
        consistent("object", !moves_a_person || self.object.is_none())?;
        let person = needed(self.person, "person")?.checked()?;
        let object = self.object.map(ObjectWire::checked).transpose()?;
        let plan = self.plan.map(PlanWire::checked).transpose()?;
        if moves_a_person {
            let floor = about == About::FloorRecovery;
            return Ok(Asked::Transfer(Box::new(TransferRequest {
                worker: person,
                plan,
                moving: needed(self.transfer, "transfer")?.checked(floor)?,
            })));
        }
        let history = self.history.map(HistoryWire::checked).transpose()?;
        let recent = self.recent.unwrap_or_default().checked()?;
        if about == About::Progress {
            let history = needed(history, "history")?;
            return Ok(Asked::Progress {
                person: Box::new(person),
                plan: plan.map(Box::new),
                history,
            });
        }
        let task = needed(object, "object")?;
        Ok(Asked::Lift(Box::new(Request {
            person,
            task,
            plan,
            history,
            recent: recent.used,
            bouts_today: recent.bouts_today,
        })))
    }
}

fn needed<T>(value: Option<T>, field: &str) -> Result<T, DoorError> {
    value.ok_or_else(|| DoorError::at(ErrorCode::MissingField, field))
}

fn consistent(field: &str, is_so: bool) -> Result<(), DoorError> {
    if is_so {
        Ok(())
    } else {
        Err(DoorError::at(ErrorCode::Contradiction, field))
    }
}
