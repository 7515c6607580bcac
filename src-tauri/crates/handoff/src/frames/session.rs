//! Collecting the symbols of one parcel.

use std::collections::BTreeMap;

use raptorq::{EncodingPacket, PayloadId, SourceBlockDecoder};

use super::frame::{Frame, Shape, session_of};
use crate::guard::guarded;

/// Symbols beyond those needed that are kept before starting over (house rule). "In most cases" as many as
/// needed are enough, "in rare cases" slightly more (RFC 6330, section 1): with so many, one of them lies.
const MOST_SURPLUS: usize = 16;

/// The symbols of one parcel that are in.
#[derive(Debug)]
pub(crate) struct Session {
    pub(crate) shape: Shape,
    symbols: BTreeMap<u16, Vec<u8>>,
}

/// What a symbol led to.
#[derive(Debug, PartialEq, Eq)]
pub(crate) enum Step {
    /// More are needed, or this one was in already.
    More,
    /// The parcel is whole.
    Whole(Vec<u8>),
    /// What came out is not what the frames promised: one of them lied. All were thrown away.
    Spoiled,
}

impl Session {
    pub(crate) fn new(shape: Shape) -> Self {
        Self {
            shape,
            symbols: BTreeMap::new(),
        }
    }

    pub(crate) fn in_hand(&self) -> usize {
        self.symbols.len()
    }

    /// Takes a frame of this session's shape.
    pub(crate) fn take(&mut self, frame: Frame) -> Step {
        match self.symbols.get(&frame.id) {
            Some(known) if *known == frame.data => return Step::More,
            // Two contents for one symbol: one of them lies, and nothing says which.
            Some(_) => return self.start_over(),
            None => self.symbols.insert(frame.id, frame.data),
        };
        if self.symbols.len() < self.shape.needed() {
            return Step::More;
        }
        match self.decode() {
            Some(parcel) if session_of(&parcel) == self.shape.session => Step::Whole(parcel),
            Some(_) => self.start_over(),
            None if self.symbols.len() >= self.shape.needed() + MOST_SURPLUS => self.start_over(),
            None => Step::More,
        }
    }

    fn decode(&self) -> Option<Vec<u8>> {
        let shape = self.shape;
        let packets: Vec<EncodingPacket> = self
            .symbols
            .iter()
            .map(|(id, data)| EncodingPacket::new(PayloadId::new(0, u32::from(*id)), data.clone()))
            .collect();
        let mut decoded = guarded(move || {
            let length = u64::try_from(shape.padded()).unwrap_or(0);
            SourceBlockDecoder::new(0, &shape.parameters(), length).decode(packets)
        })??;
        decoded.truncate(shape.total);
        (decoded.len() == shape.total).then_some(decoded)
    }

    fn start_over(&mut self) -> Step {
        self.symbols.clear();
        Step::Spoiled
    }
}
