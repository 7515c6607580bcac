//! Pain on the numeric rating scale.

use minicbor::{Decode, Decoder, Encode, Encoder};

/// Pain from 0 (none) to 10 (the worst that can be imagined), whole numbers only.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Pain(u8);

impl Pain {
    /// The highest rating.
    pub const WORST: u8 = 10;

    /// A rating, if it is 0 to 10.
    #[must_use]
    pub const fn new(rating: u8) -> Option<Self> {
        if rating <= Self::WORST {
            Some(Self(rating))
        } else {
            None
        }
    }

    /// The rating, 0 to 10.
    #[must_use]
    pub const fn rating(self) -> u8 {
        self.0
    }
}

impl<C> Encode<C> for Pain {
    fn encode<W: minicbor::encode::Write>(
        &self,
        encoder: &mut Encoder<W>,
        _: &mut C,
    ) -> Result<(), minicbor::encode::Error<W::Error>> {
        encoder.u8(self.0)?.ok()
    }
}

impl<'b, C> Decode<'b, C> for Pain {
    fn decode(decoder: &mut Decoder<'b>, _: &mut C) -> Result<Self, minicbor::decode::Error> {
        Self::new(decoder.u8()?).ok_or_else(|| minicbor::decode::Error::message("pain above 10"))
    }
}
