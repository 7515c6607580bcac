//! How long to wait after wrong passphrases. All numbers are house rules.

use chrono::{DateTime, FixedOffset};

/// Tries without a wait.
const FREE_TRIES: u32 = 3;
/// The longest wait, in seconds.
const LONGEST_WAIT_S: u32 = 300;

/// Wrong tries in a row. Kept over restarts.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub(crate) struct WrongTries {
    /// How many.
    pub(crate) count: u32,
    /// When the last one was, in milliseconds since 1970.
    pub(crate) last_ms: i64,
}

impl WrongTries {
    /// One more, now.
    #[must_use]
    pub(crate) fn and_one(self, now: DateTime<FixedOffset>) -> Self {
        Self {
            count: self.count.saturating_add(1),
            last_ms: now.timestamp_millis(),
        }
    }

    /// The wait that belongs to this many tries, in seconds: none for the first two, then 2, 4, 8 … 300.
    #[must_use]
    pub(crate) const fn wait_s(self) -> u32 {
        let over = self.count.saturating_sub(FREE_TRIES - 1);
        if over == 0 {
            0
        } else if over > 8 {
            LONGEST_WAIT_S
        } else {
            let wait = 1 << over;
            if wait < LONGEST_WAIT_S {
                wait
            } else {
                LONGEST_WAIT_S
            }
        }
    }

    /// Seconds still to wait now. A clock that was set back makes it wait anew, never for longer than the
    /// whole wait.
    #[must_use]
    pub(crate) fn left_s(self, now: DateTime<FixedOffset>) -> u32 {
        let wait_ms = i64::from(self.wait_s()) * 1000;
        let passed_ms = now.timestamp_millis().saturating_sub(self.last_ms);
        let left_ms = if passed_ms < 0 {
            wait_ms
        } else {
            wait_ms.saturating_sub(passed_ms).max(0)
        };
        u32::try_from(left_ms.saturating_add(999) / 1000).unwrap_or(LONGEST_WAIT_S)
    }

    /// Whether the clock stands before the last try.
    #[must_use]
    pub(crate) fn is_ahead_of(self, now: DateTime<FixedOffset>) -> bool {
        self.last_ms > now.timestamp_millis()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn at(seconds: i64) -> DateTime<FixedOffset> {
        DateTime::from_timestamp(1_800_000_000 + seconds, 0)
            .unwrap()
            .fixed_offset()
    }

    fn wrong(times: u32) -> WrongTries {
        (0..times).fold(WrongTries::default(), |tries, _| tries.and_one(at(0)))
    }

    #[test]
    fn three_tries_are_free_then_each_wait_is_twice_the_last() {
        let waits: Vec<u32> = (0..=12).map(|times| wrong(times).wait_s()).collect();
        assert_eq!(waits, [0, 0, 0, 2, 4, 8, 16, 32, 64, 128, 256, 300, 300]);
    }

    #[test]
    fn a_wait_runs_down() {
        let tries = wrong(5);
        assert_eq!(tries.left_s(at(0)), 8);
        assert_eq!(tries.left_s(at(5)), 3);
        assert_eq!(tries.left_s(at(8)), 0);
    }

    #[test]
    fn setting_the_clock_back_does_not_shorten_a_wait() {
        assert_eq!(wrong(5).left_s(at(-3600)), 8);
    }

    #[test]
    fn any_number_of_tries_has_a_wait() {
        assert_eq!(
            WrongTries {
                count: u32::MAX,
                last_ms: i64::MIN
            }
            .wait_s(),
            300
        );
        assert_eq!(
            WrongTries {
                count: u32::MAX,
                last_ms: i64::MIN
            }
            .left_s(at(0)),
            0
        );
        assert_eq!(
            WrongTries {
                count: u32::MAX,
                last_ms: i64::MAX
            }
            .left_s(at(0)),
            300
        );
    }
}
