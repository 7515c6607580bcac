//! From a line to a command's name and body: bounded length and depth, no key twice.

use crate::error::{DoorError, ErrorCode};
use crate::path::Path;
use serde::de::{DeserializeSeed, Error as _, MapAccess, SeqAccess, Visitor};
use serde_json::{Map, Number, Value};
use std::cell::RefCell;
use std::fmt;

/// The longest line taken, in bytes. House rule.
pub const MAX_LINE_BYTES: usize = 64 * 1024;

/// How deep objects and lists may be nested. The deepest command needs 4. House rule.
pub const MAX_DEPTH: usize = 16;

/// The field that names the command.
pub const COMMAND_FIELD: &str = "do";

/// A line taken apart.
#[derive(Clone, PartialEq)]
pub struct Parsed {
    /// The command's name.
    pub name: String,
    /// Everything else in the object.
    pub body: Map<String, Value>,
}

impl fmt::Debug for Parsed {
    /// Names the command only: the body may hold a passphrase.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.debug_struct("Parsed")
            .field("name", &self.name)
            .finish_non_exhaustive()
    }
}

/// Takes a line apart: one JSON object whose field `do` names the command.
///
/// # Errors
/// `too_long` over [`MAX_LINE_BYTES`]; `bad_json` when it is not JSON or nested deeper than
/// [`MAX_DEPTH`]; `duplicate_key` with its path; `not_an_object`; `missing_field` or `wrong_type` at `do`.
pub fn parse_line(line: &str) -> Result<Parsed, DoorError> {
    if line.len() > MAX_LINE_BYTES {
        return Err(DoorError::new(ErrorCode::TooLong));
    }
    let Value::Object(mut body) = value_of(line)? else {
        return Err(DoorError::new(ErrorCode::NotAnObject));
    };
    match body.remove(COMMAND_FIELD) {
        Some(Value::String(name)) => Ok(Parsed { name, body }),
        Some(_) => Err(DoorError::at(ErrorCode::WrongType, COMMAND_FIELD)),
        None => Err(DoorError::at(ErrorCode::MissingField, COMMAND_FIELD)),
    }
}

fn value_of(line: &str) -> Result<Value, DoorError> {
    let watch = Watch::default();
    let mut reader = serde_json::Deserializer::from_str(line);
    let value = Strict {
        watch: &watch,
        depth: 0,
    }
    .deserialize(&mut reader);
    match (watch.fault.into_inner(), value) {
        (Some(fault), _) => Err(fault),
        (None, Ok(value)) if reader.end().is_ok() => Ok(value),
        (None, _) => Err(DoorError::new(ErrorCode::BadJson)),
    }
}

/// What the walk has seen: where it is, and the first fault of ours.
#[derive(Default)]
struct Watch {
    path: RefCell<Path>,
    fault: RefCell<Option<DoorError>>,
}

impl Watch {
    fn fail(&self, fault: DoorError) {
        self.fault.borrow_mut().get_or_insert(fault);
    }
}

/// Builds a value and refuses what a plain reader lets through.
#[derive(Clone, Copy)]
struct Strict<'a> {
    watch: &'a Watch,
    depth: usize,
}

impl Strict<'_> {
    fn deeper<E: serde::de::Error>(self) -> Result<Self, E> {
        if self.depth >= MAX_DEPTH {
            self.watch.fail(DoorError::new(ErrorCode::BadJson));
            return Err(E::custom("nested too deep"));
        }
        Ok(Self {
            depth: self.depth + 1,
            ..self
        })
    }
}

impl<'de> DeserializeSeed<'de> for Strict<'_> {
    type Value = Value;

    fn deserialize<D: serde::Deserializer<'de>>(self, reader: D) -> Result<Value, D::Error> {
        reader.deserialize_any(self)
    }
}

impl<'de> Visitor<'de> for Strict<'_> {
    type Value = Value;

    fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("a JSON value")
    }

    fn visit_unit<E>(self) -> Result<Value, E> {
        Ok(Value::Null)
    }

    fn visit_bool<E>(self, value: bool) -> Result<Value, E> {
        Ok(Value::Bool(value))
    }

    fn visit_i64<E>(self, value: i64) -> Result<Value, E> {
        Ok(Value::Number(value.into()))
    }

    fn visit_u64<E>(self, value: u64) -> Result<Value, E> {
        Ok(Value::Number(value.into()))
    }

    fn visit_f64<E: serde::de::Error>(self, value: f64) -> Result<Value, E> {
        Number::from_f64(value)
            .map(Value::Number)
            .ok_or_else(|| E::custom("not a finite number"))
    }

    fn visit_str<E>(self, value: &str) -> Result<Value, E> {
        Ok(Value::String(value.to_owned()))
    }

    fn visit_string<E>(self, value: String) -> Result<Value, E> {
        Ok(Value::String(value))
    }

    fn visit_seq<A: SeqAccess<'de>>(self, mut items: A) -> Result<Value, A::Error> {
        let inner = self.deeper()?;
        let mut list = Vec::new();
        loop {
            self.watch.path.borrow_mut().push_index(list.len());
            let item = items.next_element_seed(inner)?;
            self.watch.path.borrow_mut().pop();
            match item {
                Some(item) => list.push(item),
                None => return Ok(Value::Array(list)),
            }
        }
    }

    fn visit_map<A: MapAccess<'de>>(self, mut entries: A) -> Result<Value, A::Error> {
        let inner = self.deeper()?;
        let mut object = Map::new();
        while let Some(key) = entries.next_key::<String>()? {
            self.watch.path.borrow_mut().push_key(&key);
            if object.contains_key(&key) {
                let field = self.watch.path.borrow().to_string();
                self.watch
                    .fail(DoorError::at(ErrorCode::DuplicateKey, field));
                return Err(A::Error::custom("key given twice"));
            }
            let value = entries.next_value_seed(inner)?;
            self.watch.path.borrow_mut().pop();
            object.insert(key, value);
        }
        Ok(Value::Object(object))
    }
}

#[cfg(test)]
#[path = "line_tests.rs"]
mod tests;
