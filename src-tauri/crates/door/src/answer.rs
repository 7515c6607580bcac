//! The door's own commands: which they are, and who answers them.

use crate::advise::{NoTexts, Texts, advise};
use crate::error::{DoorError, ErrorCode, ok_line};
use crate::line::{COMMAND_FIELD, Parsed, parse_line};
use crate::pose::pose;
use crate::review::review;
use crate::task_limit::task_limit;
use serde::Serialize;

/// The names of the door's own commands.
pub const COMMANDS: [&str; 4] = ["advise", "task_limit", "pose", "review"];

/// Answers a line without sentences for reasons. `None`: the command is none of [`COMMANDS`].
#[must_use]
pub fn answer(line: &str) -> Option<String> {
    answer_with(line, &NoTexts)
}

/// Answers a line, reasons with sentences. `None`: the command is none of [`COMMANDS`].
#[must_use]
pub fn answer_with(line: &str, texts: &dyn Texts) -> Option<String> {
    match parse_line(line) {
        Ok(parsed) => answer_parsed(parsed, texts).ok(),
        Err(error) => Some(error.to_json_line()),
    }
}

/// Answers a line where there are no commands but [`COMMANDS`]: any other is `unknown_command`.
#[must_use]
pub fn answer_alone(line: &str) -> String {
    let unknown = || DoorError::at(ErrorCode::UnknownCommand, COMMAND_FIELD).to_json_line();
    answer(line).unwrap_or_else(unknown)
}

/// Answers a command that was taken apart already.
///
/// # Errors
/// Gives the command back when it is none of [`COMMANDS`].
pub fn answer_parsed(parsed: Parsed, texts: &dyn Texts) -> Result<String, Parsed> {
    match parsed.name.as_str() {
        "advise" => Ok(reply(advise(parsed.body, texts))),
        "task_limit" => Ok(reply(task_limit(parsed.body))),
        "pose" => Ok(reply(pose(parsed.body))),
        "review" => Ok(reply(review(parsed.body))),
        _ => Err(parsed),
    }
}

fn reply<T: Serialize>(result: Result<T, DoorError>) -> String {
    match result {
        Ok(value) => ok_line(&value),
        Err(error) => error.to_json_line(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_own_command_is_answered() {
        for name in COMMANDS {
            let reply = answer(&format!(r#"{{"do":"{name}"}}"#)).unwrap();
            assert!(
                reply.starts_with(r#"{"error":{"code":"missing_field""#),
                "{name}: {reply}"
            );
        }
    }

    #[test]
    fn another_command_is_left_to_others() {
        assert_eq!(answer(r#"{"do":"home"}"#), None);
        assert_eq!(
            answer_alone(r#"{"do":"home"}"#),
            r#"{"error":{"code":"unknown_command","field":"do","message":"do: there is no such command."}}"#
        );
        let parsed = parse_line(r#"{"do":"home","x":1}"#).unwrap();
        assert_eq!(answer_parsed(parsed.clone(), &NoTexts), Err(parsed));
    }

    #[test]
    fn a_line_that_cannot_be_taken_apart_is_answered_here() {
        assert!(answer("{").unwrap().contains("bad_json"));
    }
}
