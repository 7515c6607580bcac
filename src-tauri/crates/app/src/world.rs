//! What comes in from outside: the clock and randomness. Nothing else in this crate reads either.

use std::time::Duration;

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

    /// Time that has passed since the device was switched on, asleep or awake. Nobody can set it, so waiting is
    /// measured by it; only differences mean anything.
    fn uptime(&self) -> Duration;

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

    #[cfg(unix)]
    fn uptime(&self) -> Duration {
        let time = rustix::time::clock_gettime(SINCE_SWITCHED_ON);
        Duration::try_from(time).unwrap_or_default()
    }

    #[cfg(not(unix))]
    #[allow(
        clippy::disallowed_methods,
        reason = "this is the one door through which time comes in"
    )]
    fn uptime(&self) -> Duration {
        static START: std::sync::OnceLock<std::time::Instant> = std::sync::OnceLock::new();
        START.get_or_init(std::time::Instant::now).elapsed()
    }

    #[allow(
        clippy::disallowed_methods,
        reason = "this is the one door through which randomness comes in"
    )]
    fn fill_random(&self, bytes: &mut [u8]) -> Result<(), RandomnessError> {
        getrandom::fill(bytes).map_err(|_| RandomnessError)
    }
}

/// The clock that goes on while the device sleeps: `CLOCK_BOOTTIME` (clock_gettime(2)); on Apple systems
/// `CLOCK_MONOTONIC` does.
#[cfg(any(target_os = "linux", target_os = "android"))]
const SINCE_SWITCHED_ON: rustix::time::ClockId = rustix::time::ClockId::Boottime;
#[cfg(all(unix, not(any(target_os = "linux", target_os = "android"))))]
const SINCE_SWITCHED_ON: rustix::time::ClockId = rustix::time::ClockId::Monotonic;

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_time_since_the_device_was_switched_on_only_grows() {
        let first = SystemWorld.uptime();
        assert!(first > Duration::ZERO);
        assert!(SystemWorld.uptime() >= first);
    }
}
