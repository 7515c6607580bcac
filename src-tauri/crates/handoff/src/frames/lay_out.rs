//! One symbol where it fits, otherwise a sequence without end.

use raptorq::SourceBlockEncoder;

use super::MOST_BYTES;
use super::frame::{FRAME_OVERHEAD, Frame, Shape};
use crate::base45;
use crate::guard::guarded;
use crate::symbol::{DrawError, Symbol};

/// How much goes into one symbol.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Density {
    /// For most cameras: up to version 25 level M alone, version 20 level L in a sequence. Read in 98 to
    /// 100 of 100 frames at 1280 × 720 (measured, see `docs/formats/handoff.md`).
    Standard,
    /// For weak cameras, at 640 × 480: up to version 15.
    Weak,
}

/// How a parcel is shown.
#[derive(Debug)]
pub enum Showing {
    /// It fits in one symbol.
    One(Symbol),
    /// It takes several; any of them, enough of them, will do.
    Many(Sequence),
}

/// Why a parcel cannot be shown.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
#[non_exhaustive]
pub enum LayOutError {
    /// Over [`MOST_BYTES`](super::MOST_BYTES): hand it over as a file.
    #[error("too long for symbols")]
    TooLong,
    /// Nothing to show.
    #[error("nothing to show")]
    Empty,
    /// A symbol could not be drawn.
    #[error("drawing: {0}")]
    Draw(DrawError),
}

/// The frames of one parcel, as many as one likes.
#[derive(Debug)]
pub struct Sequence {
    shape: Shape,
    version: u8,
    encoder: SourceBlockEncoder,
}

impl Density {
    /// Largest version of a single symbol, at level M.
    const fn single_version(self) -> u8 {
        match self {
            Self::Standard => 25,
            Self::Weak => 15,
        }
    }

    /// Version of a sequence's symbols, at level L, and bytes of data in each. The text of a frame is
    /// then 1,248 of 1,249 characters (version 20) or 756 of 758 (version 15).
    const fn sequence(self) -> (u8, u16) {
        match self {
            Self::Standard => (20, 816),
            Self::Weak => (15, 488),
        }
    }
}

/// Lays out the bytes of a parcel or an offer.
///
/// # Errors
/// See [`LayOutError`].
pub fn lay_out(parcel: &[u8], density: Density) -> Result<Showing, LayOutError> {
    if parcel.is_empty() {
        return Err(LayOutError::Empty);
    }
    match Symbol::single(&base45::encode(parcel), density.single_version()) {
        Ok(symbol) => return Ok(Showing::One(symbol)),
        Err(DrawError::TooLong) => {}
        Err(error) => return Err(LayOutError::Draw(error)),
    }
    let (version, symbol_size) = density.sequence();
    let shape = Shape::of(parcel, symbol_size)
        .filter(|_| parcel.len() <= MOST_BYTES)
        .ok_or(LayOutError::TooLong)?;
    let mut padded = parcel.to_vec();
    padded.resize(shape.padded(), 0);
    let encoder = guarded(move || SourceBlockEncoder::new(0, &shape.parameters(), &padded))
        .ok_or(LayOutError::TooLong)?;
    Ok(Showing::Many(Sequence {
        shape,
        version,
        encoder,
    }))
}

impl Sequence {
    /// How many different frames a camera must catch.
    #[must_use]
    pub fn needed(&self) -> usize {
        self.shape.needed()
    }

    /// Bytes in the text's frame beside the parcel's own.
    #[must_use]
    pub fn overhead() -> usize {
        FRAME_OVERHEAD
    }

    /// The text of frame `number`. The first [`needed`](Self::needed) carry the parcel itself, all others
    /// mixtures of it. After 65,536 frames they come again.
    #[must_use]
    pub fn text(&self, number: u32) -> String {
        let [_, _, high, low] = number.to_be_bytes();
        let id = u16::from_be_bytes([high, low]);
        let frame = Frame {
            shape: self.shape,
            id,
            data: self.data(id),
        };
        base45::encode(&frame.to_bytes())
    }

    /// The symbol of frame `number`.
    ///
    /// # Errors
    /// [`DrawError`] if it cannot be drawn.
    pub fn symbol(&self, number: u32) -> Result<Symbol, DrawError> {
        Symbol::of_sequence(&self.text(number), self.version)
    }

    fn data(&self, id: u16) -> Vec<u8> {
        let needed = u32::try_from(self.needed()).unwrap_or(u32::MAX);
        let packets = match u32::from(id).checked_sub(needed) {
            None => self
                .encoder
                .source_packets()
                .into_iter()
                .nth(usize::from(id)),
            Some(repair) => self.encoder.repair_packets(repair, 1).into_iter().next(),
        };
        packets.map_or_else(Vec::new, |packet| packet.split().1)
    }
}
