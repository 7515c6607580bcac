//! Every body of the grid before every task of the grid: the laws hold for each, and no harder value on any
//! axis makes an outcome more permissive.

#![cfg(test)]
#![allow(
    clippy::disallowed_methods,
    reason = "the sweep says how many cases a second it judges; nothing is decided by it"
)]
#![allow(
    clippy::needless_range_loop,
    reason = "two tables are walked by one number"
)]

use judgement::{grid, laws};
use lifting::advise::{Request, judge};
use std::sync::atomic::{AtomicUsize, Ordering};
use std::time::Instant;

/// Axes of the body on which a higher place is harder: pain, behaviour, balance, kneeling.
const HARDER_BODY: [usize; 7] = [0, 1, 2, 3, 4, 5, 6];
/// Axes of the task on which a higher place is harder: mass among the known ones, reach, times, grip.
const HARDER_TASK: [usize; 4] = [0, 2, 3, 4];

#[test]
fn the_laws_hold_on_the_whole_grid() {
    let cases = grid::BODIES * grid::TASKS;
    assert!(
        cases >= 1_000_000,
        "the grid is documented as a million cases or more"
    );
    let started = Instant::now();
    let outcomes = judge_all();
    let seconds = started.elapsed().as_secs_f64();
    println!(
        "{cases} cases, {:.0} cases a second",
        cases as f64 / seconds
    );
    harder_is_never_more_permissive(&outcomes);
}

/// Judges every case, checks its laws, and keeps how permissive each outcome is, body by body.
fn judge_all() -> Vec<Vec<u8>> {
    let next = AtomicUsize::new(0);
    let workers = std::thread::available_parallelism().map_or(1, usize::from);
    let mut all = vec![Vec::new(); grid::BODIES];
    std::thread::scope(|scope| {
        let handles: Vec<_> = (0..workers)
            .map(|_| {
                scope.spawn(|| {
                    let mut done = Vec::new();
                    loop {
                        let number = next.fetch_add(1, Ordering::Relaxed);
                        if number >= grid::BODIES {
                            return done;
                        }
                        done.push((number, judge_body(number)));
                    }
                })
            })
            .collect();
        for handle in handles {
            for (number, outcomes) in handle.join().expect("no case panics") {
                all[number] = outcomes;
            }
        }
    });
    all
}

fn judge_body(number: usize) -> Vec<u8> {
    let person = grid::body(number);
    (0..grid::TASKS)
        .map(|task| {
            let request = Request::new(person.clone(), grid::task(task));
            let advice = judge(&request);
            let broken = laws::broken(&request, &advice);
            assert!(broken.is_empty(), "{broken:#?}\n{request:#?}\n{advice:#?}");
            advice.outcome.permissiveness()
        })
        .collect()
}

fn harder_is_never_more_permissive(outcomes: &[Vec<u8>]) {
    for body in 0..grid::BODIES {
        let at = grid::places(body, grid::BODY_AXES);
        for axis in HARDER_BODY {
            if at[axis] + 1 == grid::BODY_AXES[axis] {
                continue;
            }
            let harder = body + grid::stride(axis, grid::BODY_AXES);
            for task in 0..grid::TASKS {
                assert!(
                    outcomes[harder][task] <= outcomes[body][task],
                    "harder on body axis {axis}: {:#?}\n{:#?}",
                    grid::body(harder),
                    grid::task(task)
                );
            }
        }
        for (task, outcome) in outcomes[body].iter().enumerate() {
            let at = grid::places(task, grid::TASK_AXES);
            for axis in HARDER_TASK {
                let last = if axis == 0 {
                    grid::KNOWN_MASSES
                } else {
                    grid::TASK_AXES[axis]
                };
                if at[axis] + 1 >= last {
                    continue;
                }
                let harder = task + grid::stride(axis, grid::TASK_AXES);
                assert!(
                    outcomes[body][harder] <= *outcome,
                    "harder on task axis {axis}: {:#?}\n{:#?}",
                    grid::body(body),
                    grid::task(harder)
                );
            }
        }
    }
}
