//! What is checked, one file each.

pub(crate) mod clippy;
pub(crate) mod deny;
pub(crate) mod dynamics;
pub(crate) mod format;
pub(crate) mod formats;
pub(crate) mod interop;
pub(crate) mod journeys;
pub(crate) mod peers;
pub(crate) mod pixels;
pub(crate) mod statistics;
pub(crate) mod ui;
pub(crate) mod unit;

/// The packages that build in seconds: no web view, no SQLCipher.
pub(crate) const QUICK_PACKAGES: &[&str] = &["lifting", "door", "record", "judgement", "xtask"];

/// `-p a -p b …` for cargo.
pub(crate) fn select<'a>(packages: &[&'a str]) -> Vec<&'a str> {
    packages.iter().flat_map(|name| ["-p", name]).collect()
}
