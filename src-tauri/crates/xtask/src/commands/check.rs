//! `check`: what can be known in seconds, without web view and without SQLCipher.

use crate::args::Wish;
use crate::plan::{self, How, Step};
use crate::steps;
use crate::trouble::Trouble;

/// The steps of `check`.
pub(crate) const STEPS: &[Step] = &[
    steps::format::STEP,
    steps::clippy::QUICK,
    steps::unit::QUICK,
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
        let line = format!("steps of check: {}\n", names.join(" "));
        assert!(crate::words::HELP.contains(&line), "{line}");
    }

    #[test]
    fn nothing_has_to_be_installed() {
        assert!(STEPS.iter().all(|step| step.needs.is_empty()));
    }
}
