//! A small damped least-squares solver (Levenberg 1944, Marquardt 1963) for a handful of unknowns.
//!
//! Smooth in, smooth out: from the same start, a small change of the problem gives a small change of the answer.

/// Largest number of unknowns.
pub(super) const UNKNOWNS: usize = 7;
/// Values of all unknowns.
pub(super) type Vector = [f64; UNKNOWNS];

/// Iterations at most; about 25 are usual.
const ITERATIONS: usize = 120;
/// Step of the central difference, rad.
const DIFFERENCE: f64 = 1e-6;
/// No step larger than this in any unknown, rad.
const LONGEST_STEP: f64 = 0.35;
/// Steps smaller than this end the search, rad.
const SMALLEST_STEP: f64 = 1e-10;

/// Finds the unknowns that make the sum of squares of the residuals smallest, from a start.
pub(super) fn minimise<const R: usize>(
    start: Vector,
    residuals: impl Fn(&Vector) -> [f64; R],
) -> Vector {
    let mut at = start;
    let mut here = residuals(&at);
    let mut damping = 1e-3;
    for _ in 0..ITERATIONS {
        let (normal, slope) = normal_equations(&at, &here, &residuals);
        let mut improved = false;
        for _ in 0..12 {
            let Some(step) = solve(&normal, &slope, damping) else {
                damping *= 10.0;
                continue;
            };
            let longest = step
                .iter()
                .fold(0.0_f64, |longest, part| longest.max(part.abs()));
            let scale = if longest > LONGEST_STEP {
                LONGEST_STEP / longest
            } else {
                1.0
            };
            let mut next = at;
            for (value, part) in next.iter_mut().zip(step) {
                *value -= part * scale;
            }
            let there = residuals(&next);
            if square(&there) < square(&here) {
                at = next;
                here = there;
                damping = (damping * 0.3).max(1e-12);
                improved = longest > SMALLEST_STEP;
                break;
            }
            damping *= 8.0;
        }
        if !improved {
            break;
        }
    }
    at
}

fn square(residuals: &[f64]) -> f64 {
    residuals.iter().map(|residual| residual * residual).sum()
}

type Matrix = [[f64; UNKNOWNS]; UNKNOWNS];

/// JᵀJ and Jᵀr by central differences.
fn normal_equations<const R: usize>(
    at: &Vector,
    here: &[f64; R],
    residuals: impl Fn(&Vector) -> [f64; R],
) -> (Matrix, Vector) {
    let mut columns = [[0.0; R]; UNKNOWNS];
    for (number, column) in columns.iter_mut().enumerate() {
        let moved = |by: f64| {
            let mut moved = *at;
            if let Some(value) = moved.get_mut(number) {
                *value += by;
            }
            residuals(&moved)
        };
        let (up, down) = (moved(DIFFERENCE), moved(-DIFFERENCE));
        for ((slope, up), down) in column.iter_mut().zip(up).zip(down) {
            *slope = (up - down) / (2.0 * DIFFERENCE);
        }
    }
    let dot = |a: &[f64; R], b: &[f64; R]| a.iter().zip(b).map(|(a, b)| a * b).sum::<f64>();
    let mut normal = [[0.0; UNKNOWNS]; UNKNOWNS];
    let mut slope = [0.0; UNKNOWNS];
    for ((row, slope), column) in normal.iter_mut().zip(slope.iter_mut()).zip(&columns) {
        for (cell, other) in row.iter_mut().zip(&columns) {
            *cell = dot(column, other);
        }
        *slope = dot(column, here);
    }
    (normal, slope)
}

/// Solves (N + damping·(diag N + 1)) x = g by Cholesky; `None` when it is not positive definite.
fn solve(normal: &Matrix, slope: &Vector, damping: f64) -> Option<Vector> {
    let cell = |matrix: &Matrix, row: usize, column: usize| -> f64 {
        matrix
            .get(row)
            .and_then(|row| row.get(column))
            .copied()
            .unwrap_or(0.0)
    };
    let part = |vector: &Vector, at: usize| vector.get(at).copied().unwrap_or(0.0);
    let mut lower = [[0.0; UNKNOWNS]; UNKNOWNS];
    for row in 0..UNKNOWNS {
        for column in 0..=row {
            let mut sum = cell(normal, row, column);
            if row == column {
                sum += damping * (sum + 1.0);
            }
            for inner in 0..column {
                sum -= cell(&lower, row, inner) * cell(&lower, column, inner);
            }
            let value = if row == column {
                if sum <= 0.0 || !sum.is_finite() {
                    return None;
                }
                sum.sqrt()
            } else {
                sum / cell(&lower, column, column)
            };
            *lower.get_mut(row)?.get_mut(column)? = value;
        }
    }
    let mut forward = [0.0; UNKNOWNS];
    for row in 0..UNKNOWNS {
        let known: f64 = (0..row)
            .map(|inner| cell(&lower, row, inner) * part(&forward, inner))
            .sum();
        *forward.get_mut(row)? = (part(slope, row) - known) / cell(&lower, row, row);
    }
    let mut answer = [0.0; UNKNOWNS];
    for row in (0..UNKNOWNS).rev() {
        let known: f64 = (row + 1..UNKNOWNS)
            .map(|inner| cell(&lower, inner, row) * part(&answer, inner))
            .sum();
        *answer.get_mut(row)? = (part(&forward, row) - known) / cell(&lower, row, row);
    }
    Some(answer)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn finds_the_bottom_of_a_curved_valley() {
        // Rosenbrock 1960, the classic test: smallest at (1, 1).
        let found = minimise([-1.2, 1.0, 0.0, 0.0, 0.0, 0.0, 0.0], |at| {
            [
                10.0 * (at[1] - at[0] * at[0]),
                1.0 - at[0],
                at[2],
                at[3],
                at[4],
                at[5],
                at[6],
            ]
        });
        assert!(
            (found[0] - 1.0).abs() < 1e-6 && (found[1] - 1.0).abs() < 1e-6,
            "{found:?}"
        );
    }
}
