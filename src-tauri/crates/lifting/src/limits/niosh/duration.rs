//! How long the lifting goes on: the equation's three categories, with the recovery each of them needs.

use super::super::pace::Hours;
use crate::naming::named;

named!(
    /// The equation's category for how long the lifting goes on, shortest first.
    Duration {
        /// Up to 1 hour, then lighter work for at least 1.2 times as long.
        Short = "short",
        /// Up to 2 hours, then lighter work for at least 0.3 times as long.
        Moderate = "moderate",
        /// Up to 8 hours, with the usual breaks.
        Long = "long",
        /// More than 8 hours: the equation does not cover it.
        OverEightHours = "over_eight_hours",
    }
);

/// Longest lifting of the short category, in hours (NIOSH 94-110, section 1.3.5).
const SHORT_HOURS: f64 = 1.0;
/// Longest lifting of the moderate category, in hours (NIOSH 94-110, section 1.3.5).
const MODERATE_HOURS: f64 = 2.0;
/// Longest lifting covered at all, in hours (NIOSH 94-110, section 1.3.5).
const LONG_HOURS: f64 = 8.0;
/// Recovery that the short category needs, as a multiple of the lifting (NIOSH 94-110, section 1.3.5).
const SHORT_RECOVERY: f64 = 1.2;
/// Recovery that the moderate category needs, as a multiple of the lifting (NIOSH 94-110, section 1.3.5).
const MODERATE_RECOVERY: f64 = 0.3;
/// Slack for binary fractions: 54 minutes after 45 must count, although neither is exact in hours.
const SLACK_HOURS: f64 = 1e-9;

/// The category of a spell of lifting. Where the recovery that follows is too short for its category, the next
/// longer one holds. `recovery` of `None` means it is enough.
#[must_use]
pub fn duration(lifting: Hours, recovery: Option<Hours>) -> Duration {
    let hours = lifting.value();
    let rested =
        |times: f64| recovery.is_none_or(|rest| rest.value() + SLACK_HOURS >= times * hours);
    if hours > LONG_HOURS {
        Duration::OverEightHours
    } else if hours <= SHORT_HOURS && rested(SHORT_RECOVERY) {
        Duration::Short
    } else if hours <= MODERATE_HOURS && rested(MODERATE_RECOVERY) {
        Duration::Moderate
    } else {
        Duration::Long
    }
}
