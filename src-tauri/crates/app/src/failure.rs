//! What a use case can fail with, and the reply made of it in the user's language.

use crate::walk::question::AnswerRefused;
use crate::words::{Arg, Words};
use crate::world::RandomnessError;
use door::{DoorError, ErrorCode};
use std::io;
use vault::VaultError;

/// A failure on its way to the wire: a stable code, and the field it happened at. It carries no value.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
#[error("{}", code.id())]
pub(crate) struct Failure {
    /// The stable code.
    pub(crate) code: ErrorCode,
    /// The field, as a path.
    pub(crate) field: Option<String>,
    /// Seconds to wait, for `try_later`.
    pub(crate) wait_s: Option<u32>,
    /// The id of a sentence that says more than the code's own.
    pub(crate) says: Option<&'static str>,
}

impl Failure {
    /// A failure of the command as a whole.
    #[must_use]
    pub(crate) const fn new(code: ErrorCode) -> Self {
        Self {
            code,
            field: None,
            wait_s: None,
            says: None,
        }
    }

    /// A failure at a field.
    #[must_use]
    pub(crate) fn at(code: ErrorCode, field: &str) -> Self {
        Self {
            code,
            field: Some(field.to_owned()),
            wait_s: None,
            says: None,
        }
    }

    /// Too many wrong tries.
    #[must_use]
    pub(crate) const fn try_later(wait_s: u32) -> Self {
        Self {
            code: ErrorCode::TryLater,
            field: None,
            wait_s: Some(wait_s),
            says: None,
        }
    }

    /// The same failure with a sentence of its own.
    #[must_use]
    pub(crate) const fn saying(mut self, id: &'static str) -> Self {
        self.says = Some(id);
        self
    }

    /// The reply line: what happened, what is not affected, what to do next.
    #[must_use]
    pub(crate) fn to_line(&self, words: &Words) -> String {
        let error = match &self.field {
            Some(field) => DoorError::at(self.code, field.clone()),
            None => DoorError::new(self.code),
        };
        let id = self.says.map_or_else(|| word_id(self.code), str::to_owned);
        error
            .saying(words.format(&id, &[("seconds", Arg::count(self.wait_s.unwrap_or(0)))]))
            .to_json_line()
    }
}

/// The id of the sentence for a code.
#[must_use]
pub(crate) fn word_id(code: ErrorCode) -> String {
    format!("error-{}", code.id().replace('_', "-"))
}

impl From<DoorError> for Failure {
    fn from(error: DoorError) -> Self {
        Self {
            code: error.code,
            field: error.field,
            wait_s: None,
            says: None,
        }
    }
}

impl From<VaultError> for Failure {
    fn from(error: VaultError) -> Self {
        Self::new(match error {
            VaultError::WrongPassphrase => ErrorCode::WrongPassphrase,
            VaultError::Missing(_) => ErrorCode::VaultMissing,
            VaultError::Damaged(_) => ErrorCode::VaultDamaged,
            VaultError::Foreign(_) => ErrorCode::VaultForeign,
            VaultError::Newer => ErrorCode::VaultNewer,
            VaultError::Exists => ErrorCode::AlreadySetUp,
            VaultError::DiskFull => ErrorCode::DiskFull,
            VaultError::TooLong => ErrorCode::TooLong,
            VaultError::NotFound => ErrorCode::NotFound,
            VaultError::Randomness => ErrorCode::RandomnessFailed,
            _ => ErrorCode::StorageFailed,
        })
    }
}

impl From<RandomnessError> for Failure {
    fn from(_: RandomnessError) -> Self {
        Self::new(ErrorCode::RandomnessFailed)
    }
}

impl From<io::Error> for Failure {
    fn from(error: io::Error) -> Self {
        Self::new(match error.kind() {
            io::ErrorKind::StorageFull | io::ErrorKind::QuotaExceeded => ErrorCode::DiskFull,
            _ => ErrorCode::StorageFailed,
        })
    }
}

impl From<AnswerRefused> for Failure {
    fn from(refused: AnswerRefused) -> Self {
        Self::at(
            match refused {
                AnswerRefused::NotOffered => ErrorCode::AnswerNotOffered,
                AnswerRefused::OutOfRange => ErrorCode::OutOfRange,
            },
            "answer",
        )
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::words::Language;

    #[test]
    fn every_code_has_a_sentence_in_every_language() {
        for language in Language::ALL {
            let words = Words::load(*language);
            for code in ErrorCode::ALL {
                let line = Failure::new(*code).to_line(&words);
                assert!(
                    !line.contains("[error-"),
                    "{} in {}",
                    code.id(),
                    language.id()
                );
            }
        }
    }

    #[test]
    fn a_wait_is_said_in_seconds() {
        let line = Failure::try_later(8).to_line(&Words::load(Language::English));
        assert!(line.contains("8 seconds"), "{line}");
    }
}
