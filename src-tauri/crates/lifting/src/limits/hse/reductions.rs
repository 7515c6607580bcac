//! What is taken off a guideline weight for how often and for twist (L23; INDG143).

use super::super::pace::PerMinute;
use crate::quantity::Degrees;

/// Lifts each minute without any reduction: about 30 an hour.
const INFREQUENT: f64 = 0.5;
/// "Once or twice a minute" ends here.
const TWICE: f64 = 2.0;
/// "Five to eight times a minute" ends here.
const EIGHT: f64 = 8.0;

/// The share taken off for how often: 0.3 once or twice a minute, 0.5 five to eight times, 0.8 more than twelve.
///
/// The guidance leaves gaps between these; in a gap the stricter neighbour holds (house rule). So 0.3 begins above
/// 30 an hour, 0.5 above two a minute and 0.8 above eight.
#[must_use]
pub const fn frequency_reduction(per_minute: PerMinute) -> f64 {
    let rate = per_minute.value();
    if rate <= INFREQUENT {
        0.0
    } else if rate <= TWICE {
        0.3
    } else if rate <= EIGHT {
        0.5
    } else {
        0.8
    }
}

/// The share taken off for twist: 0.1 beyond 45 degrees, 0.2 beyond 90.
#[must_use]
pub const fn twist_reduction(twist: Degrees) -> f64 {
    let twist = twist.value();
    if twist > 90.0 {
        0.2
    } else if twist > 45.0 {
        0.1
    } else {
        0.0
    }
}
