//! What the app can do, one use case a file: a typed command in, a typed reply out.

pub(crate) mod care;
pub(crate) mod departure;
pub(crate) mod entry;
pub(crate) mod erase;
pub(crate) mod first_start;
pub(crate) mod handoff;
pub(crate) mod hello;
pub(crate) mod history;
pub(crate) mod home;
pub(crate) mod keep;
pub(crate) mod morning;
pub(crate) mod passphrase;
pub(crate) mod patients;
pub(crate) mod plan;
pub(crate) mod report;
pub(crate) mod saved;
pub(crate) mod settings;
pub(crate) mod signs;
pub(crate) mod unlock;
pub(crate) mod walk;

use serde::{Deserialize, Serialize};

/// A command or a reply without fields.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct Nothing {}
