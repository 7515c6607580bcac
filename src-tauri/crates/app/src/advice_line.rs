//! The door's own commands, answered with the user's words.

use crate::failure::Failure;
use crate::walk::text::Reader;
use door::{ErrorCode, Parsed, Texts};
use lifting::reason::Reason;
use serde::Deserialize;

/// Sentences for the reasons of the door's replies. They carry figures, so the units are the user's.
struct Sentences<'a>(Reader<'a>);

impl Texts for Sentences<'_> {
    fn reason(&self, reason: &Reason) -> Option<String> {
        Some(self.0.words.reason(reason, self.0.units))
    }
}

#[derive(Deserialize)]
struct Reply {
    error: Option<Fault>,
}

#[derive(Deserialize)]
struct Fault {
    code: String,
    field: Option<String>,
}

/// Answers one of the door's commands. A failure comes back with the sentence of the user's language.
///
/// # Errors
/// The failure that the door replied with; `unknown_command` for any other command.
pub(crate) fn answer(parsed: Parsed, reader: Reader<'_>) -> Result<String, Failure> {
    let line = door::answer_parsed(parsed, &Sentences(reader))
        .map_err(|_| Failure::at(ErrorCode::UnknownCommand, door::COMMAND_FIELD))?;
    match serde_json::from_str::<Reply>(&line) {
        Ok(Reply { error: Some(fault) }) => Err(Failure {
            code: ErrorCode::from_id(&fault.code).unwrap_or(ErrorCode::Internal),
            field: fault.field,
            wait_s: None,
            says: None,
        }),
        _ => Ok(line),
    }
}
