//! The fields each part of a command takes, read off the types themselves, so that a page about the
//! commands can be checked against the code.

use serde::de::{Deserialize, Deserializer, Error, Visitor};
use serde::forward_to_deserialize_any;
use std::fmt;

/// A part of a command and the fields it takes.
pub type PartFields = (&'static str, &'static [&'static str]);

/// Every part of the door's own commands with its fields, in the order of the types.
///
/// A part is named by the command, or by its path inside one: `object`, `plan.bands`. The tasks of
/// `task_limit` have two, one for each unit system.
#[must_use]
pub fn fields() -> Vec<PartFields> {
    let mut parts = crate::advise::fields();
    parts.extend(crate::task_limit::fields());
    parts.extend(crate::pose::fields());
    parts.extend(crate::review::fields());
    parts
}

/// The fields a type takes; empty when it is no struct.
pub(crate) fn fields_of<'de, T: Deserialize<'de>>() -> &'static [&'static str] {
    match T::deserialize(Asking) {
        Err(Told(fields)) => fields,
        Ok(_) => &[],
    }
}

/// Asks a type which fields it wants, and gives it nothing.
struct Asking;

/// What it said.
#[derive(Debug)]
struct Told(&'static [&'static str]);

impl fmt::Display for Told {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("only asking")
    }
}

impl std::error::Error for Told {}

impl Error for Told {
    fn custom<T: fmt::Display>(_text: T) -> Self {
        Self(&[])
    }
}

impl<'de> Deserializer<'de> for Asking {
    type Error = Told;

    fn deserialize_any<V: Visitor<'de>>(self, _visitor: V) -> Result<V::Value, Told> {
        Err(Told(&[]))
    }

    fn deserialize_struct<V: Visitor<'de>>(
        self,
        _name: &'static str,
        fields: &'static [&'static str],
        _visitor: V,
    ) -> Result<V::Value, Told> {
        Err(Told(fields))
    }

    forward_to_deserialize_any! {
        bool i8 i16 i32 i64 i128 u8 u16 u32 u64 u128 f32 f64 char str string bytes byte_buf option unit
        unit_struct newtype_struct seq tuple tuple_struct map enum identifier ignored_any
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_type_tells_its_fields() {
        let parts = fields();
        let of = |part: &str| {
            parts
                .iter()
                .find(|(name, _)| *name == part)
                .map(|(_, fields)| *fields)
        };
        assert_eq!(
            of("advise"),
            Some(
                [
                    "task", "person", "object", "transfer", "plan", "history", "recent"
                ]
                .as_slice()
            )
        );
        assert_eq!(
            of("plan.bands.back"),
            Some(["moderate_from", "severe_from"].as_slice())
        );
        assert_eq!(of("task_limit"), Some(["units", "tasks"].as_slice()));
        assert!(parts.iter().all(|(_, fields)| !fields.is_empty()));
    }

    #[test]
    fn what_is_no_struct_has_none() {
        assert!(fields_of::<u8>().is_empty());
    }
}
