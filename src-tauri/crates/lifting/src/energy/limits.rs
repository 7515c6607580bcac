//! Published limits of energy by duration (Waters et al. 1993, from memory; source `niosh_1994`).

use crate::quantity::{Centimetres, Kilocalories};

/// The most a person should spend each minute when lifting goes on for this many hours, whole body, kcal.
#[must_use]
pub fn per_minute(hours: f64, start: Centimetres) -> Kilocalories {
    let low = start.value() <= 75.0;
    Kilocalories::of(if hours <= 1.0 {
        if low { 4.7 } else { 3.3 }
    } else if hours <= 2.0 {
        if low { 3.7 } else { 2.7 }
    } else if low {
        3.1
    } else {
        2.2
    })
}
