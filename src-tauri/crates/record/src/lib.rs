//! What is kept: the records of a lift and all that goes with it, as plain structs with frozen bytes.
//!
//! Every record becomes CBOR (RFC 8949) with integer keys and no floats, inside a small frame that
//! names its kind and version. The bytes are canonical: one value, one encoding. `docs/formats/record.md`
//! lists every key and code. Keys and codes are never given a new meaning and never reused.
//!
//! This crate knows nothing of the judgement, the wire or the store: others convert.
//!
//! ```
//! use record::{Record, Settings, Units, UsedFor};
//!
//! let settings = Settings { used_for: UsedFor::Lift, units: Units::Kg };
//! let bytes = settings.to_bytes()?;
//! assert_eq!(Settings::from_bytes(&bytes)?, settings);
//! # Ok::<(), record::RecordError>(())
//! ```

#![forbid(unsafe_code)]

mod about;
mod advice;
mod answer;
mod body_today;
mod canonical;
mod care_person;
mod care_plan;
mod check_in;
mod codes;
mod day;
mod departure;
mod device;
mod draft;
mod error;
mod followed;
mod frame;
mod history;
mod identity;
mod lift;
mod lift_facts;
mod mass;
mod moment;
mod move_draft;
mod move_entry;
mod note;
mod open_sign;
mod pain;
mod paired;
mod patient;
mod person_plan;
mod plan;
mod practice_entry;
mod received;
mod saved_task;
mod settings;
mod shift;
mod task;
mod wording;
mod worker;

pub use about::{About, AgeBand, Sex};
pub use advice::{
    Advice, Arg, Authority, Change, ChangeStep, Outcome, Reason, RuledOut, Sure, TaskLimit,
    Urgency, Value, Way,
};
pub use answer::{Answer, Answered, Unit};
pub use body_today::{BackState, Balance, BodyToday, Kneel};
pub use care_person::{Ability, CareMove, CarePerson, Follows, Help, Hold, Limb, WeightBearing};
pub use care_plan::{CameBy, CarePlan};
pub use check_in::{BackToUsual, CheckIn, CheckInKind};
pub use day::Day;
pub use departure::{Departure, DepartureHow, DepartureWhat, Seal};
pub use device::Device;
pub use draft::{Draft, DraftPurpose};
pub use error::RecordError;
pub use followed::Followed;
pub use frame::{MAJOR, MAX_BYTES, Record};
pub use history::{History, HistoryLift, HistoryPractice, LookBack, PlanVersion, SignRaised};
pub use identity::{Identity, SecretBytes};
pub use lift::Lift;
pub use lift_facts::LiftFacts;
pub use mass::Mass;
pub use moment::Moment;
pub use move_draft::MoveDraft;
pub use move_entry::{MoveEntry, MoveResult, Told};
pub use note::Note;
pub use open_sign::{Cleared, ClearedBy, OpenSign};
pub use pain::Pain;
pub use paired::{Paired, ParcelPurpose};
pub use patient::Patient;
pub use person_plan::{PersonPlan, PlanHead, PlannedMove};
pub use plan::{
    Bands, Ceiling, NextMorning, Plan, PlanWay, Practice, Progression, Region, WayStanding,
};
pub use practice_entry::{MorningAfter, PracticeEntry, PracticeEvent};
pub use received::Received;
pub use saved_task::SavedTask;
pub use settings::{Settings, Units, UsedFor};
pub use shift::{Erased, Shift};
pub use task::{Coupling, HeightWord, ReachWord, Task};
pub use wording::Wording;
pub use worker::Worker;
