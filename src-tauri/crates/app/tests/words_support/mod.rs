//! What the tests of words share: the message files taken apart, reading measures, the sources that use them.
#![allow(dead_code, reason = "each test file uses its own share")]
#![allow(
    clippy::expect_used,
    clippy::panic,
    reason = "a test may stop at the first surprise"
)]

pub(crate) mod catalog;
pub(crate) mod reading;
pub(crate) mod sources;
pub(crate) mod syllables;
