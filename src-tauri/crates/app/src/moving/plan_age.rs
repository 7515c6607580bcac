//! How long a care plan holds. After that it forbids as before and unlocks nothing.

use super::text::number_of;
use chrono::NaiveDate;
use record::CarePlan;

/// Days after the day on it that a care plan holds at the most, whatever it says. House rule: half a year, since
/// what a person can do changes faster than paper.
pub(crate) const LONGEST_DAYS: i32 = 180;

/// The last day on which a care plan holds as it is, in days since 1970-01-01: its review date, or the house
/// rule's day if that comes first.
#[must_use]
pub(crate) fn last_day(issued_day: i32, review_day: Option<i32>) -> i32 {
    let longest = issued_day.saturating_add(LONGEST_DAYS);
    review_day.map_or(longest, |review| review.min(longest))
}

/// Whether a care plan is past its date.
#[must_use]
pub(crate) fn is_old(plan: &CarePlan, today: NaiveDate) -> bool {
    number_of(today) > last_day(plan.issued_day, plan.review_day)
}

#[cfg(test)]
mod tests {
    use super::*;

    // 180 days, half a year: a house rule, so these are worked out from it by hand.
    #[test]
    fn the_review_day_holds_and_the_day_after_does_not() {
        assert_eq!(last_day(20_000, Some(20_010)), 20_010);
        assert_eq!(last_day(20_000, None), 20_180);
        assert_eq!(
            last_day(20_000, Some(20_500)),
            20_180,
            "a far review date does not keep it fresh"
        );
        assert_eq!(
            last_day(20_000, Some(19_000)),
            19_000,
            "past on the day it came"
        );
        assert_eq!(last_day(i32::MAX, None), i32::MAX);
    }
}
