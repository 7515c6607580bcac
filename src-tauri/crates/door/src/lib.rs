//! The wire: one JSON object a line in, one a line out, for the commands that need no vault.
//!
//! A line is bounded, taken apart without letting a key stand twice ([`parse_line`]), and read into the
//! command's own type with the path kept ([`read`]). Failures are a stable [`ErrorCode`], a field and a
//! sentence made from both; no value reaches an error. [`answer`] does all of it for the door's own
//! commands: `advise`, `task_limit`, `pose` and `review`.

mod advise;
mod answer;
mod choice;
mod error;
mod fields;
mod line;
mod path;
mod pose;
mod read;
mod review;
mod section;
mod task_limit;

pub use advise::{
    AdviceReply, ChangeReply, LoadsReply, NoTexts, ReasonReply, RuledOutReply, StepReply, Texts,
    advice_reply, change_reply, move_reply, proposal_reply, reason_replies,
};
pub use answer::{COMMANDS, answer, answer_alone, answer_parsed, answer_with};
pub use error::{DoorError, ErrorCode, ok_line};
pub use fields::{PartFields, fields};
pub use line::{COMMAND_FIELD, MAX_DEPTH, MAX_LINE_BYTES, Parsed, parse_line};
pub use pose::PoseReply;
pub use read::read;
