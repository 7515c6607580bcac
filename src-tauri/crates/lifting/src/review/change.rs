//! Whether pain has changed by as much as matters to people.
//!
//! Ostelo and others (2008), Spine 33(1):90: two points on the 0–10 scale, or 30 % of where it began (source
//! id `ostelo_2008`). A change of one point is never called a change, since it is within what repeated
//! ratings differ by (1.77 points, source id `pain_change_lbp`).

use super::robust::median;
use super::{Day, Enough, NotYet};
use crate::naming::named;
use crate::quantity::{PainPoints, PainScore};

/// Readings at each end that are compared. House rule.
const END: usize = 3;

/// Two points (Ostelo 2008).
const IMPORTANT_POINTS: f64 = 2.0;
/// Or 30 % of the beginning (Ostelo 2008).
const IMPORTANT_SHARE: f64 = 0.3;
/// But more than one point, whatever the share.
const WITHIN_ERROR: f64 = 1.0;

named!(
    /// What a change amounts to.
    Verdict {
        /// Less pain, by as much as matters.
        Less = "less",
        /// About the same.
        Same = "same",
        /// More pain, by as much as matters.
        More = "more",
    }
);

/// The change from the first readings to the last ones.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Change {
    /// Median of the first readings, 0 to 10.
    pub first: PainPoints,
    /// Median of the last readings, 0 to 10.
    pub last: PainPoints,
    /// What it amounts to.
    pub verdict: Verdict,
}

pub(super) fn change(days: &[(Day, PainScore)]) -> Enough<Change> {
    let need = 2 * END;
    let middle = |part: &[(Day, PainScore)]| {
        let scores: Vec<f64> = part
            .iter()
            .map(|(_, score)| f64::from(score.value()))
            .collect();
        median(&scores)
    };
    let ends = (days.len() >= need)
        .then(|| {
            let first = days.get(..END)?;
            let last = days.get(days.len() - END..)?;
            Some((middle(first)?, middle(last)?))
        })
        .flatten();
    match ends {
        Some((first, last)) => Enough::Yes(Change {
            first: PainPoints::of(first),
            last: PainPoints::of(last),
            verdict: verdict(first, last),
        }),
        None => Enough::NotYet(NotYet::Days {
            have: u32::try_from(days.len()).unwrap_or(u32::MAX),
            need: need as u32,
        }),
    }
}

/// What a change from one median to another amounts to.
pub(crate) fn verdict(first: f64, last: f64) -> Verdict {
    let by = last - first;
    let matters = by.abs() >= IMPORTANT_POINTS
        || by.abs() > WITHIN_ERROR && by.abs() >= IMPORTANT_SHARE * first;
    match (matters, by > 0.0) {
        (false, _) => Verdict::Same,
        (true, true) => Verdict::More,
        (true, false) => Verdict::Less,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Ostelo 2008: 2 points or 30 %; one point is about the same.
    #[test]
    fn two_points_or_a_third_matter_and_one_point_never() {
        assert_eq!(verdict(6.0, 4.0), Verdict::Less);
        assert_eq!(verdict(4.0, 6.0), Verdict::More);
        assert_eq!(verdict(4.0, 2.5), Verdict::Less);
        assert_eq!(verdict(6.0, 4.5), Verdict::Same);
        assert_eq!(verdict(2.0, 1.0), Verdict::Same);
        assert_eq!(verdict(1.0, 2.0), Verdict::Same);
        assert_eq!(verdict(0.0, 0.0), Verdict::Same);
    }
}
