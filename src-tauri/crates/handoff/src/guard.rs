//! A last line against decoders that panic on hostile input.
//!
//! Everything is checked before it reaches the erasure decoder, the picture decoders or the symbol
//! reader. Those are others' code, and two of the three are known to panic; a stranger's symbol must not
//! end the app, so what a check of ours has missed becomes an ordinary refusal here.

use std::panic::{AssertUnwindSafe, catch_unwind};

/// What `work` gives, or `None` if it panicked. `work` must own what it changes, so that nothing half
/// done is looked at afterwards.
pub(crate) fn guarded<T>(work: impl FnOnce() -> T) -> Option<T> {
    catch_unwind(AssertUnwindSafe(work)).ok()
}
