//! What comes in from outside: the clock and randomness. Nothing else in this crate reads either.

use chrono::{DateTime, FixedOffset};
use thiserror::Error;

/// No random numbers could be had.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Error)]
#[error("no random numbers")]
pub struct RandomnessError;

/// The outside world. Tests give their own, so that every rule can be tried at any date.
pub trait World: Send + Sync {
    /// The time now, with the local offset.
    fn now(&self) -> DateTime<FixedOffset>;

    /// Fills the buffer with random bytes that nobody can foresee.
    ///
    /// # Errors
    /// [`RandomnessError`] when there are none.
    fn fill_random(&self, bytes: &mut [u8]) -> Result<(), RandomnessError>;
}

/// The system's clock and random source.
#[derive(Debug, Clone, Copy, Default)]
pub struct SystemWorld;

impl World for SystemWorld {
    #[allow(
        clippy::disallowed_methods,
        reason = "this is the one door through which time comes in"
    )]
    fn now(&self) -> DateTime<FixedOffset> {
        chrono::Local::now().fixed_offset()
    }

    #[allow(
        clippy::disallowed_methods,
        reason = "this is the one door through which randomness comes in"
    )]
    fn fill_random(&self, bytes: &mut [u8]) -> Result<(), RandomnessError> {
        getrandom::fill(bytes).map_err(|_| RandomnessError)
    }
}
