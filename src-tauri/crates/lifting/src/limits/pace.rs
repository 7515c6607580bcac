//! How often and for how long: the two quantities of pace that the published methods share.

use crate::quantity::{Minutes, quantity};

/// Minutes over which the equation averages the number of lifts (NIOSH 94-110, section 1.3.5).
const OBSERVED_MINUTES: f64 = 15.0;

quantity!(
    /// A number of lifts each minute, 0 to 100. The range is a house rule: what a person could plausibly mean.
    PerMinute, "lifts each minute", "per min", 0.0 ..= 100.0
);
quantity!(
    /// Hours within one day, 0 to 24.
    Hours, "time", "h", 0.0 ..= 24.0
);

impl PerMinute {
    /// The special adjustment for lifting that fills only a part of each 15 minutes: the number of lifts
    /// in the window, spread over the whole window (NIOSH 94-110, section 1.3.5).
    ///
    /// `lifting` above 15 minutes counts as 15: the window is then filled.
    #[must_use]
    pub fn averaged_over_window(while_lifting: Self, lifting: Minutes) -> Self {
        Self::clamped(while_lifting.0 * lifting.value().min(OBSERVED_MINUTES) / OBSERVED_MINUTES)
    }
}
