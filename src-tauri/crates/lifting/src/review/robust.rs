//! A slope that single odd days cannot move, with its interval.
//!
//! Theil (1950) and Sen (1968), Estimates of the regression coefficient based on Kendall's tau, JASA 63:1379:
//! the median of the slopes of all pairs; the interval from equation 2.6, ties counted as there. Source id
//! `sen_1968`.

/// The 97.5 % point of the standard normal distribution: intervals are 95 %.
const Z: f64 = 1.959_963_984_540_054;

/// A slope with its 95 % interval.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Slope {
    pub(crate) middle: f64,
    pub(crate) low: f64,
    pub(crate) high: f64,
}

/// The slope of y over x. `None` when no two points differ in x, or when all values are tied so that there
/// is no interval.
pub(crate) fn slope(points: &[(f64, f64)]) -> Option<Slope> {
    let mut slopes = pair_slopes(points);
    if slopes.is_empty() {
        return None;
    }
    slopes.sort_unstable_by(f64::total_cmp);
    let spread = Z * deviation(points)?;
    let pairs = slopes.len() as f64;
    let last = slopes.len() - 1;
    let low = ((pairs - spread) / 2.0).round_ties_even() - 1.0;
    let high = ((pairs + spread) / 2.0).round_ties_even();
    let at = |place: f64| slopes.get((place.max(0.0) as usize).min(last)).copied();
    Some(Slope {
        middle: median_of_sorted(&slopes)?,
        low: at(low)?,
        high: at(high)?,
    })
}

/// The middle value. `None` for no values.
pub(crate) fn median(values: &[f64]) -> Option<f64> {
    let mut sorted = values.to_vec();
    sorted.sort_unstable_by(f64::total_cmp);
    median_of_sorted(&sorted)
}

fn median_of_sorted(sorted: &[f64]) -> Option<f64> {
    let upper = *sorted.get(sorted.len() / 2)?;
    if sorted.len() % 2 == 1 {
        return Some(upper);
    }
    let lower = *sorted.get((sorted.len() / 2).checked_sub(1)?)?;
    Some((lower + upper) / 2.0)
}

fn pair_slopes(points: &[(f64, f64)]) -> Vec<f64> {
    let mut slopes = Vec::with_capacity(points.len() * points.len() / 2);
    for (place, (x, y)) in points.iter().enumerate() {
        for (other_x, other_y) in points.iter().skip(place + 1) {
            let run = other_x - x;
            if run != 0.0 {
                slopes.push((other_y - y) / run);
            }
        }
    }
    slopes
}

/// Standard deviation of Kendall's sum, with ties in x and y. `None` when nothing is left of it.
fn deviation(points: &[(f64, f64)]) -> Option<f64> {
    let term = |count: f64| count * (count - 1.0) * (2.0 * count + 5.0);
    let ties = |values: Vec<f64>| -> f64 { runs(values).into_iter().map(term).sum() };
    let (x, y): (Vec<f64>, Vec<f64>) = points.iter().copied().unzip();
    let variance = (term(points.len() as f64) - ties(x) - ties(y)) / 18.0;
    (variance >= 0.0).then(|| variance.sqrt())
}

/// How many times each value stands there.
fn runs(mut values: Vec<f64>) -> Vec<f64> {
    values.sort_unstable_by(f64::total_cmp);
    values
        .chunk_by(|left, right| left.total_cmp(right).is_eq())
        .map(|run| run.len() as f64)
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_line_has_its_own_slope() {
        let points: Vec<_> = (0..9)
            .map(|x| (f64::from(x), 2.0 * f64::from(x) + 1.0))
            .collect();
        let found = slope(&points).unwrap();
        assert_eq!((found.low, found.middle, found.high), (2.0, 2.0, 2.0));
    }

    #[test]
    fn one_odd_day_does_not_move_it() {
        let mut points: Vec<_> = (0..9).map(|x| (f64::from(x), f64::from(x))).collect();
        points[8].1 = -100.0;
        let middle = slope(&points).unwrap().middle;
        assert!((middle - 1.0).abs() < 1e-12);
    }

    #[test]
    fn there_is_none_without_two_different_days() {
        assert_eq!(slope(&[]), None);
        assert_eq!(slope(&[(1.0, 2.0)]), None);
        assert_eq!(slope(&[(1.0, 2.0), (1.0, 3.0)]), None);
    }

    #[test]
    fn all_values_alike_are_a_flat_line() {
        let found = slope(&[(0.0, 4.0), (1.0, 4.0), (2.0, 4.0)]).unwrap();
        assert_eq!((found.low, found.middle, found.high), (0.0, 0.0, 0.0));
    }

    #[test]
    fn the_middle_of_an_even_count_is_half_way() {
        assert_eq!(median(&[4.0, 1.0, 3.0, 2.0]), Some(2.5));
        assert_eq!(median(&[]), None);
    }
}
