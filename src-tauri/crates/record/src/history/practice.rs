//! The log of a plan inside a history: a list with fixed places, as the other entries.

use minicbor::{Decode, Decoder, Encode, Encoder};

use super::entry::{Broken, code, pain, pass_over, place_of_pain, places};
use crate::{BackToUsual, Pain, PracticeEvent, Way};

/// Places of an entry.
const PLACES: u64 = 9;

/// One entry of the log of a plan.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct HistoryPractice {
    /// Minutes since 1970-01-01T00:00Z.
    pub at_min: i64,
    /// The version of the plan that was followed.
    pub version: u32,
    /// What it is.
    pub event: PracticeEvent,
    /// The way that was practised.
    pub way: Option<Way>,
    /// With how much, or the level from then on, grams; 0: not known.
    pub grams: u32,
    /// Worst pain while practising, if it was told.
    pub pain: Option<Pain>,
    /// Whether the next morning was asked about.
    pub morning_asked: bool,
    /// Pain the next morning, if it was told.
    pub morning_pain: Option<Pain>,
    /// Back to usual the next morning, if it was told.
    pub back_to_usual: Option<BackToUsual>,
}

impl<C> Encode<C> for HistoryPractice {
    fn encode<W: minicbor::encode::Write>(
        &self,
        e: &mut Encoder<W>,
        _: &mut C,
    ) -> Result<(), minicbor::encode::Error<W::Error>> {
        e.array(PLACES)?;
        e.i64(self.at_min)?.u32(self.version)?;
        e.u32(self.event.code())?;
        e.u32(self.way.map_or(0, Way::code))?;
        e.u32(self.grams)?;
        e.u8(place_of_pain(self.pain))?;
        e.bool(self.morning_asked)?;
        e.u8(place_of_pain(self.morning_pain))?;
        e.u32(self.back_to_usual.map_or(0, BackToUsual::code))?.ok()
    }
}

impl<'b, C> Decode<'b, C> for HistoryPractice {
    fn decode(d: &mut Decoder<'b>, _: &mut C) -> Result<Self, Broken> {
        let places = places(d, PLACES)?;
        let entry = Self {
            at_min: d.i64()?,
            version: d.u32()?,
            event: d.decode()?,
            way: code(d, Way::from_code)?,
            grams: d.u32()?,
            pain: pain(d.u8()?)?,
            morning_asked: d.bool()?,
            morning_pain: pain(d.u8()?)?,
            back_to_usual: code(d, BackToUsual::from_code)?,
        };
        pass_over(d, places, PLACES)?;
        Ok(entry)
    }
}
