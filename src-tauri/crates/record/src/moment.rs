//! A moment as the phone's clock and place showed it.

use minicbor::{Decode, Decoder, Encode, Encoder};

/// An instant and the local offset that was in force, so that "9:12 in the morning" stays so after a move.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Moment {
    /// Milliseconds since 1970-01-01T00:00:00Z; may be negative.
    pub at_ms: i64,
    /// Local time minus UTC, in minutes, −1439 to 1439.
    pub offset_min: i16,
}

/// Offsets of a day or more name no local time.
const LARGEST_OFFSET_MIN: u16 = 24 * 60 - 1;

impl<C> Encode<C> for Moment {
    fn encode<W: minicbor::encode::Write>(
        &self,
        encoder: &mut Encoder<W>,
        _: &mut C,
    ) -> Result<(), minicbor::encode::Error<W::Error>> {
        encoder
            .array(2)?
            .i64(self.at_ms)?
            .i16(self.offset_min)?
            .ok()
    }
}

impl<'b, C> Decode<'b, C> for Moment {
    fn decode(decoder: &mut Decoder<'b>, _: &mut C) -> Result<Self, minicbor::decode::Error> {
        if decoder.array()? != Some(2) {
            return Err(minicbor::decode::Error::message("a moment has two parts"));
        }
        let moment = Self {
            at_ms: decoder.i64()?,
            offset_min: decoder.i16()?,
        };
        if moment.offset_min.unsigned_abs() > LARGEST_OFFSET_MIN {
            return Err(minicbor::decode::Error::message("offset of a day or more"));
        }
        Ok(moment)
    }
}
