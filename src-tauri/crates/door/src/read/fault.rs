//! What is the matter with a value, and where: the error type of our reader.

use crate::error::{DoorError, ErrorCode};
use crate::path::Path;
use serde::de::{Error, Expected, Unexpected};
use std::fmt;

/// A fault met while reading. Keeps a kind and a path; texts made by others are dropped unread.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) struct Fault {
    code: ErrorCode,
    /// From the inside out; turned round at the end.
    path: Path,
}

impl Fault {
    /// A fault at the value itself.
    pub(super) fn here(code: ErrorCode) -> Self {
        Self {
            code,
            path: Path::default(),
        }
    }

    /// A fault at a key of the value.
    fn at_key(code: ErrorCode, key: &str) -> Self {
        Self::here(code).inside_key(key)
    }

    /// The same fault, seen from the object around it.
    pub(super) fn inside_key(mut self, key: &str) -> Self {
        self.path.push_key(key);
        self
    }

    /// The same fault, seen from the list around it.
    pub(super) fn inside_index(mut self, index: usize) -> Self {
        self.path.push_index(index);
        self
    }

    /// A key that names no variant is an unknown field.
    pub(super) fn of_variant_key(self, key: &str) -> Self {
        match self.code {
            ErrorCode::NotAChoice => Self::at_key(ErrorCode::UnknownField, key),
            _ => self,
        }
    }

    /// The failure for the wire.
    pub(super) fn into_error(self) -> DoorError {
        if self.path.is_root() {
            DoorError::new(self.code)
        } else {
            DoorError::at(self.code, self.path.reversed().to_string())
        }
    }
}

impl fmt::Display for Fault {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(self.code.says())
    }
}

impl std::error::Error for Fault {}

impl Error for Fault {
    fn custom<T: fmt::Display>(_text: T) -> Self {
        Self::here(ErrorCode::WrongType)
    }

    fn invalid_type(_found: Unexpected<'_>, _expected: &dyn Expected) -> Self {
        Self::here(ErrorCode::WrongType)
    }

    fn invalid_value(found: Unexpected<'_>, _expected: &dyn Expected) -> Self {
        Self::here(match found {
            Unexpected::Unsigned(_) | Unexpected::Signed(_) | Unexpected::Float(_) => {
                ErrorCode::OutOfRange
            }
            _ => ErrorCode::WrongType,
        })
    }

    fn invalid_length(_length: usize, _expected: &dyn Expected) -> Self {
        Self::here(ErrorCode::WrongType)
    }

    fn unknown_variant(_variant: &str, _expected: &'static [&'static str]) -> Self {
        Self::here(ErrorCode::NotAChoice)
    }

    fn unknown_field(field: &str, _expected: &'static [&'static str]) -> Self {
        Self::at_key(ErrorCode::UnknownField, field)
    }

    fn missing_field(field: &'static str) -> Self {
        Self::at_key(ErrorCode::MissingField, field)
    }

    fn duplicate_field(field: &'static str) -> Self {
        Self::at_key(ErrorCode::DuplicateKey, field)
    }
}
