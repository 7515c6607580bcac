//! `test`: everything, in the order in which failures are cheapest to find.

use crate::args::Wish;
use crate::plan::{self, How, Step};
use crate::steps;
use crate::trouble::Trouble;

/// The steps of `test`.
pub(crate) const STEPS: &[Step] = &[
    steps::format::STEP,
    steps::clippy::WHOLE,
    steps::deny::STEP,
    steps::unit::WHOLE,
    steps::dynamics::STEP,
    steps::statistics::STEP,
    steps::interop::STEP,
    steps::formats::STEP,
    steps::peers::STEP,
    steps::ui::STEP,
    steps::journeys::STEP,
    steps::pixels::STEP,
];

/// Runs them.
///
/// # Errors
/// See [`plan::run`].
pub(crate) fn run(wish: &Wish) -> Result<(), Trouble> {
    plan::run(STEPS, &wish.only, How { fix: wish.fix })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn help_lists_exactly_these_steps() {
        let names: Vec<_> = STEPS.iter().map(|step| step.name).collect();
        let line = format!("steps of test: {}\n", names.join(" "));
        assert!(crate::words::HELP.contains(&line), "{line}");
    }
}
