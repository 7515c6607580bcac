//! Running steps in order, stopping at the first failure, and the closing summary.

use std::time::{Duration, Instant};

use crate::debian;
use crate::needs::Need;
use crate::trouble::Trouble;

/// One thing that is checked.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Step {
    /// Its name, for `--only`.
    pub(crate) name: &'static str,
    /// What it shows, in one line.
    pub(crate) what: &'static str,
    /// What the machine must have.
    pub(crate) needs: &'static [&'static [Need]],
    /// Does it.
    pub(crate) run: fn(&How) -> Result<(), Trouble>,
}

/// How steps are to be run.
#[derive(Debug, Clone, Copy, Default)]
pub(crate) struct How {
    /// Repair what a tool can repair.
    pub(crate) fix: bool,
}

/// How one step ended.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum End {
    Passed(Duration),
    Failed(Duration),
    NotRun,
}

/// Runs the chosen steps: first everything they need is installed, then each in order.
///
/// # Errors
/// [`Trouble::Argument`] for an unknown step, what installing gives, or [`Trouble::Step`].
pub(crate) fn run(steps: &[Step], only: &[String], how: How) -> Result<(), Trouble> {
    let chosen = choose(steps, only)?;
    debian::install(&needs_of(&chosen))?;
    let mut ends = Vec::new();
    let mut failed = None;
    for step in &chosen {
        let end = match failed {
            None => perform(step, how),
            Some(_) => End::NotRun,
        };
        if matches!(end, End::Failed(_)) {
            failed = Some(step.name);
        }
        ends.push((step.name, end));
    }
    print!("{}", summary(&ends));
    failed.map_or(Ok(()), |name| Err(Trouble::Step(name)))
}

/// The steps that `only` names, in their own order; all of them when it is empty.
fn choose(steps: &[Step], only: &[String]) -> Result<Vec<Step>, Trouble> {
    let known = |name: &String| steps.iter().any(|step| step.name == name);
    if let Some(stranger) = only.iter().find(|name| !known(name)) {
        let names: Vec<_> = steps.iter().map(|step| step.name).collect();
        return Err(Trouble::Argument(format!(
            "there is no step {stranger}; there are: {}",
            names.join(" ")
        )));
    }
    let wanted = |step: &&Step| only.is_empty() || only.iter().any(|name| name == step.name);
    Ok(steps.iter().filter(wanted).copied().collect())
}

fn needs_of(steps: &[Step]) -> Vec<Need> {
    let mut all: Vec<Need> = Vec::new();
    for need in steps.iter().flat_map(|step| step.needs.concat()) {
        if !all.contains(&need) {
            all.push(need);
        }
    }
    all
}

#[allow(
    clippy::disallowed_methods,
    reason = "how long a step took is told to a person and decides nothing"
)]
fn perform(step: &Step, how: How) -> End {
    println!("\n== {}: {}", step.name, step.what);
    let start = Instant::now();
    match (step.run)(&how) {
        Ok(()) => End::Passed(start.elapsed()),
        Err(trouble) => {
            eprintln!("xtask: {}: {trouble}", step.name);
            End::Failed(start.elapsed())
        }
    }
}

/// One line a step, then the count.
fn summary(ends: &[(&str, End)]) -> String {
    let mut text = String::from("\n== summary\n");
    let mut counts = (0, 0, 0);
    for (name, end) in ends {
        let (word, seconds) = match end {
            End::Passed(time) => ("passed", Some(time)),
            End::Failed(time) => ("FAILED", Some(time)),
            End::NotRun => ("not run", None),
        };
        match end {
            End::Passed(_) => counts.0 += 1,
            End::Failed(_) => counts.1 += 1,
            End::NotRun => counts.2 += 1,
        }
        let seconds = seconds.map_or(String::new(), |time| format!("{:.0} s", time.as_secs_f64()));
        text.push_str(&format!("{name:<10} {word:<8} {seconds:>8}\n"));
    }
    text.push_str(&format!(
        "steps: {} passed, {} failed, {} skipped\n",
        counts.0, counts.1, counts.2
    ));
    text
}

#[cfg(test)]
mod tests {
    use super::*;

    fn good(_: &How) -> Result<(), Trouble> {
        Ok(())
    }

    fn bad(_: &How) -> Result<(), Trouble> {
        Err(Trouble::Nothing("nothing to run"))
    }

    const fn step(name: &'static str, run: fn(&How) -> Result<(), Trouble>) -> Step {
        Step {
            name,
            what: "",
            needs: &[],
            run,
        }
    }

    const STEPS: [Step; 3] = [step("one", good), step("two", bad), step("three", good)];

    #[test]
    fn all_steps_run_when_none_is_named() {
        assert_eq!(choose(&STEPS, &[]).unwrap().len(), 3);
    }

    #[test]
    fn named_steps_keep_their_own_order() {
        let chosen = choose(&STEPS, &["three".into(), "one".into()]).unwrap();
        let names: Vec<_> = chosen.iter().map(|step| step.name).collect();
        assert_eq!(names, ["one", "three"]);
    }

    #[test]
    fn an_unknown_step_is_refused_with_the_known_ones() {
        let trouble = choose(&STEPS, &["four".into()]).unwrap_err().to_string();
        assert_eq!(trouble, "there is no step four; there are: one two three");
    }

    #[test]
    fn a_failing_step_fails_the_run() {
        assert!(run(&STEPS, &["one".into()], How::default()).is_ok());
        assert!(matches!(
            run(&STEPS, &[], How::default()),
            Err(Trouble::Step("two"))
        ));
    }

    #[test]
    fn summary_has_a_line_a_step_and_the_count() {
        let ends = [
            ("one", End::Passed(Duration::from_secs(61))),
            ("two", End::Failed(Duration::from_millis(400))),
            ("three", End::NotRun),
        ];
        let expected = "\n== summary\n\
            one        passed       61 s\n\
            two        FAILED        0 s\n\
            three      not run          \n\
            steps: 1 passed, 1 failed, 1 skipped\n";
        assert_eq!(summary(&ends), expected);
    }
}
