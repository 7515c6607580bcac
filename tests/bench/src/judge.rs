//! How fast one piece of advice is made.

use judgement::{grid, laws};
use lifting::advise::advice::{Advice, Outcome};
use lifting::advise::{Request, advise, judge};
use std::hint::black_box;

use crate::clock::{Mark, median, quantile, tell, tell_ratio, time};
use crate::request;
use crate::trouble::Trouble;

/// Advice with postures: at most so much (house rule).
const ADVICE_US: f64 = 1_000.0;
/// A whole judgement, postures, changes and heaviest load included: at most so much (house rule).
const JUDGEMENT_US: f64 = 2_000.0;
/// Each request is timed so often; the middle counts.
const ROUNDS: usize = 7;
/// Cases of the grid that are swept, evenly spread over it.
const SWEPT: usize = 200_000;

/// Measures on one core.
///
/// # Errors
/// None; the type is that of all parts.
pub(crate) fn measure() -> Result<(), Trouble> {
    let requests = request::all();
    let loaded = tell_outcomes(&requests);
    let (with, without) = both(&requests);
    let only_loaded: Vec<f64> = with
        .iter()
        .zip(&loaded)
        .filter(|(_, loaded)| **loaded)
        .map(|(us, _)| *us)
        .collect();
    tell("advise: with postures, per request", &with);
    tell("advise: of these, what is offered with loads", &only_loaded);
    println!(
        "{:<44} {:>17.0} a second",
        "advise: on one core",
        1e6 * with.len() as f64 / with.iter().sum::<f64>()
    );
    tell("judge: rules alone, per request", &without);
    tell_ratio(
        "advise to judge, sums",
        with.iter().sum::<f64>() / without.iter().sum::<f64>(),
    );
    tell_ratio(
        "advise, median, to its target of 1 ms",
        median(&with) / ADVICE_US,
    );
    tell_ratio(
        "advise, p95, to the target of 2 ms",
        quantile(&with, 0.95) / JUDGEMENT_US,
    );
    let slowest = quantile(&with, 1.0);
    println!("{:<44} {slowest:>17.1} us", "advise: slowest request");
    sweep();
    Ok(())
}

/// The time of each request with and without postures, both in turn.
fn both(requests: &[Request]) -> (Vec<f64>, Vec<f64>) {
    let mut with = vec![Vec::new(); requests.len()];
    let mut without = vec![Vec::new(); requests.len()];
    for _ in 0..ROUNDS {
        for ((request, with), without) in requests.iter().zip(&mut with).zip(&mut without) {
            with.push(time(|| advise(black_box(request))));
            without.push(time(|| judge(black_box(request))));
        }
    }
    let middle = |all: Vec<Vec<f64>>| all.iter().map(|times| median(times)).collect();
    (middle(with), middle(without))
}

/// Tells what comes out, and gives for each request whether postures were worked out.
fn tell_outcomes(requests: &[Request]) -> Vec<bool> {
    let all: Vec<Advice> = requests.iter().map(advise).collect();
    let loaded: Vec<bool> = all.iter().map(|one| !one.loads.is_empty()).collect();
    let count = |is: fn(&Outcome) -> bool| all.iter().filter(|one| is(&one.outcome)).count();
    println!(
        "{} requests: {} lift, {} lift with a change, {} do not lift, {} refused; {} with loads",
        all.len(),
        count(|outcome| matches!(outcome, Outcome::Lift { .. })),
        count(|outcome| matches!(outcome, Outcome::LiftWithChange { .. })),
        count(|outcome| matches!(outcome, Outcome::DoNotLift { .. })),
        count(|outcome| matches!(outcome, Outcome::Refuse)),
        loaded.iter().filter(|loaded| **loaded).count(),
    );
    loaded
}

/// Cases of the documented grid a second, judged by rules alone, with and without checking the laws.
fn sweep() {
    let cases: Vec<Request> = {
        let all = grid::BODIES * grid::TASKS;
        let step = all / SWEPT + 1;
        let at = |number: usize| {
            (
                grid::body(number / grid::TASKS),
                grid::task(number % grid::TASKS),
            )
        };
        (0..all)
            .step_by(step)
            .map(at)
            .map(|(person, task)| Request::new(person, task))
            .collect()
    };
    let start = Mark::now();
    for case in &cases {
        black_box(judge(case));
    }
    let judged = start.us();
    let start = Mark::now();
    let broken: usize = cases
        .iter()
        .map(|case| laws::broken(case, &judge(case)).len())
        .sum();
    let checked = start.us();
    let each = |us: f64| 1e6 * cases.len() as f64 / us;
    println!(
        "{:<44} {:>17.0} cases a second",
        "sweep: judged, one core",
        each(judged)
    );
    println!(
        "{:<44} {:>17.0} cases a second, {broken} laws broken",
        "sweep: judged and laws checked, one core",
        each(checked)
    );
    tell_ratio("sweep: checking laws to judging alone", checked / judged);
}
