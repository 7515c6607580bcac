//! Checks of one object of a command, each failing with the full path of the field.

use crate::error::{DoorError, ErrorCode};
use lifting::quantity::{OutOfRange, PainScore};

/// One object of a command: `person`, `object`, …
#[derive(Debug, Clone, Copy)]
pub(crate) struct Section(pub(crate) &'static str);

impl Section {
    /// A failure at one of its fields.
    pub(crate) fn fault(self, code: ErrorCode, key: &str) -> DoorError {
        DoorError::at(code, format!("{}.{key}", self.0))
    }

    /// A number as a quantity.
    pub(crate) fn quantity<N, T>(
        self,
        key: &str,
        number: Option<N>,
        make: fn(N) -> Result<T, OutOfRange>,
    ) -> Result<Option<T>, DoorError> {
        number
            .map(make)
            .transpose()
            .map_err(|_| self.fault(ErrorCode::OutOfRange, key))
    }

    /// A pain score.
    pub(crate) fn pain(self, key: &str, score: Option<u8>) -> Result<Option<PainScore>, DoorError> {
        self.quantity(key, score, PainScore::new)
    }

    /// A count that may not exceed `most`.
    pub(crate) fn count(
        self,
        key: &str,
        count: Option<u32>,
        most: u32,
    ) -> Result<Option<u32>, DoorError> {
        match count {
            Some(count) if count > most => Err(self.fault(ErrorCode::OutOfRange, key)),
            count => Ok(count),
        }
    }

    /// Fails with `contradiction` at the field when the two things said cannot both be true.
    pub(crate) fn consistent(self, key: &str, is_so: bool) -> Result<(), DoorError> {
        if is_so {
            Ok(())
        } else {
            Err(self.fault(ErrorCode::Contradiction, key))
        }
    }
}
