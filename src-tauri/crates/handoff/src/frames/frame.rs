//! One frame of a sequence: our own checked head, and one symbol of the erasure code behind it.
//!
//! `0xF1 | session 4 | total length 3 | symbol size 2 | symbol id 2 | data | CRC-32 4`. The erasure
//! decoder panics on input that does not fit and gives wrong bytes for one wrong bit, so nothing reaches
//! it before all of this is checked, and its parameters are made from these numbers, never read.

use raptorq::ObjectTransmissionInformation;
use sha2::{Digest, Sha256};

use super::MOST_BYTES;

/// First byte of a frame of this version. The upper half marks a frame, the lower half is the version.
const VERSION_1: u8 = 0xf1;
const MARK: u8 = 0xf0;
/// Bytes before the data.
const HEAD_BYTES: usize = 12;
const CHECKSUM_BYTES: usize = 4;
/// Bytes of a frame beside its data.
pub(crate) const FRAME_OVERHEAD: usize = HEAD_BYTES + CHECKSUM_BYTES;
/// Sizes of an erasure symbol that are accepted, in bytes. The lower bound keeps the number of symbols, and
/// with it the work of decoding, small; the upper one is what a version 25 symbol holds.
const SYMBOL_SIZES: std::ops::RangeInclusive<u16> = 128..=1216;
/// Symbols are whole multiples of this many bytes.
const ALIGNMENT: u8 = 8;

/// What frames of one parcel have in common.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) struct Shape {
    /// First four bytes of SHA-256 of the parcel.
    pub(crate) session: [u8; 4],
    /// Bytes of the parcel.
    pub(crate) total: usize,
    /// Bytes of an erasure symbol.
    pub(crate) symbol_size: u16,
}

/// A frame that is whole and within bounds.
#[derive(Debug)]
pub(crate) struct Frame {
    pub(crate) shape: Shape,
    pub(crate) id: u16,
    pub(crate) data: Vec<u8>,
}

/// Why bytes are not a frame.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum NotAFrame {
    /// Does not begin like one.
    Foreign,
    /// Of a newer version.
    Newer,
    /// The checksum does not fit.
    Damaged,
    /// Whole, with numbers that no sender of ours writes.
    OutOfBounds,
}

impl Shape {
    /// The shape for a parcel, if it is within bounds.
    pub(crate) fn of(parcel: &[u8], symbol_size: u16) -> Option<Self> {
        let shape = Self {
            session: session_of(parcel),
            total: parcel.len(),
            symbol_size,
        };
        shape.is_within_bounds().then_some(shape)
    }

    fn is_within_bounds(&self) -> bool {
        (1..=MOST_BYTES).contains(&self.total)
            && SYMBOL_SIZES.contains(&self.symbol_size)
            && self.symbol_size.is_multiple_of(u16::from(ALIGNMENT))
    }

    /// How many symbols hold the parcel: 1 to 512.
    pub(crate) fn needed(&self) -> usize {
        self.total.div_ceil(usize::from(self.symbol_size))
    }

    /// Bytes of the parcel, filled up to whole symbols.
    pub(crate) fn padded(&self) -> usize {
        self.needed() * usize::from(self.symbol_size)
    }

    /// Parameters of the erasure code: one block, no sub-blocks.
    pub(crate) fn parameters(&self) -> ObjectTransmissionInformation {
        ObjectTransmissionInformation::new(
            u64::try_from(self.padded()).unwrap_or(0),
            self.symbol_size,
            1,
            1,
            ALIGNMENT,
        )
    }
}

impl Frame {
    pub(crate) fn to_bytes(&self) -> Vec<u8> {
        let [_, high, middle, low] = u32::try_from(self.shape.total).unwrap_or(0).to_be_bytes();
        let mut bytes = vec![VERSION_1];
        bytes.extend(self.shape.session);
        bytes.extend([high, middle, low]);
        bytes.extend(self.shape.symbol_size.to_be_bytes());
        bytes.extend(self.id.to_be_bytes());
        bytes.extend(&self.data);
        bytes.extend(crc32fast::hash(&bytes).to_be_bytes());
        bytes
    }

    pub(crate) fn from_bytes(bytes: &[u8]) -> Result<Self, NotAFrame> {
        let (&first, _) = bytes.split_first().ok_or(NotAFrame::Foreign)?;
        if first & MARK != MARK {
            return Err(NotAFrame::Foreign);
        }
        let (covered, checksum) = bytes.split_last_chunk().ok_or(NotAFrame::Damaged)?;
        if crc32fast::hash(covered).to_be_bytes() != *checksum {
            return Err(NotAFrame::Damaged);
        }
        if first != VERSION_1 {
            return Err(NotAFrame::Newer);
        }
        let (head, data) = covered
            .split_first_chunk::<HEAD_BYTES>()
            .ok_or(NotAFrame::OutOfBounds)?;
        let [_, a, b, c, d, high, middle, low, size_1, size_0, id_1, id_0] = *head;
        let total = u32::from_be_bytes([0, high, middle, low]);
        let shape = Shape {
            session: [a, b, c, d],
            total: usize::try_from(total).map_err(|_| NotAFrame::OutOfBounds)?,
            symbol_size: u16::from_be_bytes([size_1, size_0]),
        };
        if !shape.is_within_bounds() || data.len() != usize::from(shape.symbol_size) {
            return Err(NotAFrame::OutOfBounds);
        }
        Ok(Self {
            shape,
            id: u16::from_be_bytes([id_1, id_0]),
            data: data.to_vec(),
        })
    }
}

/// What tells the sequences of two parcels apart.
pub(crate) fn session_of(parcel: &[u8]) -> [u8; 4] {
    let [a, b, c, d, ..]: [u8; 32] = Sha256::digest(parcel).into();
    [a, b, c, d]
}
