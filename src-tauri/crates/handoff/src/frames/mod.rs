//! From a parcel to QR symbols and back.
//!
//! Which one do I need? [`lay_out`] decides between one symbol and a sequence without end; [`Collector`]
//! takes the texts of symbols, in any order and with any loss, until a parcel is whole.

mod collector;
mod frame;
mod lay_out;
mod session;

pub use collector::{Collector, FrameError, Progress, Taken};
pub use lay_out::{Density, LayOutError, Sequence, Showing, lay_out};

/// Most bytes of a parcel that goes through symbols: 64 KiB. Longer ones go as a file.
pub const MOST_BYTES: usize = 64 * 1024;
