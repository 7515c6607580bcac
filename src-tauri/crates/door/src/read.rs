//! From a command's body to its own type, keeping the path: which field, and what is the matter with it.
//!
//! The matter is known by its kind, never by a foreign error text, so no value can reach a message.

mod fault;
mod node;

use crate::error::DoorError;
use fault::Fault;
use node::Node;
use serde::de::DeserializeOwned;
use serde_json::{Map, Value};

/// Reads a command's body into its type. Types should refuse unknown fields (`deny_unknown_fields`).
///
/// # Errors
/// `unknown_field`, `missing_field`, `wrong_type`, `not_a_choice`, `out_of_range` or `duplicate_key`,
/// with the field's path.
pub fn read<T: DeserializeOwned>(body: Map<String, Value>) -> Result<T, DoorError> {
    T::deserialize(Node(Value::Object(body))).map_err(Fault::into_error)
}

#[cfg(test)]
#[path = "read_tests.rs"]
mod tests;
