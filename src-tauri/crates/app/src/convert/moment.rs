//! Moments: the clock's and the record's.

use chrono::{DateTime, Duration, FixedOffset};
use record::Moment;

/// A clock time as it is kept.
#[must_use]
pub(crate) fn to_record(at: DateTime<FixedOffset>) -> Moment {
    let offset_min = i16::try_from(at.offset().local_minus_utc() / 60).unwrap_or(0);
    Moment {
        at_ms: at.timestamp_millis(),
        offset_min,
    }
}

/// A kept moment as a clock time in the place where it was kept. One that no clock can show, which only
/// a damaged record holds, becomes the start of 1970.
#[must_use]
pub(crate) fn from_record(moment: Moment) -> DateTime<FixedOffset> {
    let instant = DateTime::from_timestamp_millis(moment.at_ms).unwrap_or_default();
    match FixedOffset::east_opt(i32::from(moment.offset_min) * 60) {
        Some(offset) => instant.with_timezone(&offset),
        None => instant.fixed_offset(),
    }
}

/// Whether something asked at `at` still holds now. A clock that was set back says no: then it is asked again.
#[must_use]
pub(crate) fn still_holds(at: Moment, now: DateTime<FixedOffset>, span: Duration) -> bool {
    let age = now.signed_duration_since(from_record(at));
    age >= Duration::zero() && age < span
}

/// Whole weeks that have passed since. Never negative.
#[must_use]
pub(crate) fn weeks_since(at: Moment, now: DateTime<FixedOffset>) -> u32 {
    u32::try_from(now.signed_duration_since(from_record(at)).num_weeks()).unwrap_or(0)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn at(text: &str) -> DateTime<FixedOffset> {
        DateTime::parse_from_rfc3339(text).unwrap()
    }

    #[test]
    fn a_moment_comes_back_with_its_local_time() {
        let morning = at("2026-11-25T09:12:00+01:00");
        let back = from_record(to_record(morning));
        assert_eq!(back.to_rfc3339(), "2026-11-25T09:12:00+01:00");
    }

    #[test]
    fn what_was_asked_holds_for_its_span_and_not_after() {
        let asked = to_record(at("2026-11-25T09:00:00+01:00"));
        let span = Duration::hours(4);
        assert!(still_holds(asked, at("2026-11-25T12:59:59+01:00"), span));
        assert!(!still_holds(asked, at("2026-11-25T13:00:00+01:00"), span));
    }

    #[test]
    fn a_clock_set_back_asks_again() {
        let asked = to_record(at("2026-11-25T09:00:00+01:00"));
        assert!(!still_holds(
            asked,
            at("2026-11-25T08:59:00+01:00"),
            Duration::hours(4)
        ));
    }
}
