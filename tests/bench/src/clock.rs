//! Times and what is made of them.

#![allow(
    clippy::disallowed_methods,
    reason = "measuring time is all this package does; nothing is decided by it"
)]

use std::hint::black_box;
use std::time::{Duration, Instant};

/// A moment to measure from.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Mark(Instant);

impl Mark {
    /// Now.
    pub(crate) fn now() -> Self {
        Self(Instant::now())
    }

    /// Microseconds since then.
    pub(crate) fn us(self) -> f64 {
        self.0.elapsed().as_secs_f64() * 1e6
    }
}

/// Waits a moment between two looks at a screen.
pub(crate) fn pause(ms: u64) {
    std::thread::sleep(Duration::from_millis(ms));
}

/// How long it takes, in microseconds; what it makes is not thrown away unmade.
pub(crate) fn time<T>(work: impl FnOnce() -> T) -> f64 {
    let start = Mark::now();
    black_box(work());
    start.us()
}

/// Like [`time`], for work that may fail.
///
/// # Errors
/// What the work gives.
pub(crate) fn try_time<T, E>(work: impl FnOnce() -> Result<T, E>) -> Result<f64, E> {
    let start = Mark::now();
    black_box(work()?);
    Ok(start.us())
}

/// The value below which this share of the values lies; 0 for no values.
pub(crate) fn quantile(values: &[f64], share: f64) -> f64 {
    let mut sorted = values.to_vec();
    sorted.sort_by(f64::total_cmp);
    let last = sorted.len().saturating_sub(1);
    #[allow(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "a place in a list"
    )]
    let place = (share * last as f64).round() as usize;
    sorted.get(place).copied().unwrap_or(0.0)
}

/// The value in the middle.
pub(crate) fn median(values: &[f64]) -> f64 {
    quantile(values, 0.5)
}

/// The middle of the ratios of two lists, pair by pair: a slow moment of the machine hits both of a pair.
pub(crate) fn median_ratio(over: &[f64], under: &[f64]) -> f64 {
    let ratios: Vec<f64> = over.iter().zip(under).map(|(a, b)| a / b).collect();
    median(&ratios)
}

/// A line about times, in microseconds.
pub(crate) fn tell(what: &str, us: &[f64]) {
    println!(
        "{what:<44} median {:>10.1} us   p95 {:>10.1} us",
        median(us),
        quantile(us, 0.95)
    );
}

/// A line about a ratio.
pub(crate) fn tell_ratio(what: &str, ratio: f64) {
    println!("{what:<44} ratio  {ratio:>10.3}");
}
