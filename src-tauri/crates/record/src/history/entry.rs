//! The entries of a history, each a list with fixed places. More places than are known are passed over.

use minicbor::{Decode, Decoder, Encode, Encoder};

use crate::{BackState, BackToUsual, CheckInKind, HeightWord, Mass, Outcome, Pain, Way};

/// Places of a lift without, and with, the one that came later.
const LIFT_PLACES: u64 = 13;
const LIFT_PLACES_AID: u64 = 14;
/// Places of a look back.
const LOOK_PLACES: u64 = 4;
/// Places of a sign.
const SIGN_PLACES: u64 = 3;
/// Regions with a score: back, left and right knee, left and right hip, shoulders.
const REGIONS: usize = 6;

/// A lift that was done, or decided against.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct HistoryLift {
    /// Minutes since the lift before; for the first one since the history's start.
    pub after_min: u64,
    /// Done, or left.
    pub done: bool,
    /// What the advice came to.
    pub outcome: Outcome,
    /// The way used, if done.
    pub way: Option<Way>,
    /// The way that was advised first.
    pub advised: Option<Way>,
    /// How heavy it was; `None`: not asked.
    pub mass: Option<Mass>,
    /// Where it started.
    pub start: Option<HeightWord>,
    /// How often; 0: not asked.
    pub times: u32,
    /// Pain before: back, left and right knee, left and right hip, shoulders. `None`: not asked.
    pub pain: [Option<Pain>; REGIONS],
    /// How the back behaved.
    pub back_state: Option<BackState>,
    /// Looks back at it.
    pub looks: Vec<LookBack>,
    /// Points at the text id of what was done instead; 0: nothing, or not said.
    pub instead: u32,
    /// Points at its name; 0: none goes along.
    pub title: u32,
    /// Whether an aid or help was advised first. `None`: not told.
    pub aid_first: Option<bool>,
}

/// How it felt. Neither pain nor "back to usual": it was asked and passed over.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct LookBack {
    /// Which look back.
    pub kind: CheckInKind,
    /// Minutes after the lift.
    pub after_min: u64,
    /// Pain, if it was told.
    pub pain: Option<Pain>,
    /// Back to usual, if it was told.
    pub back_to_usual: Option<BackToUsual>,
}

/// A warning sign that was raised.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct SignRaised {
    /// Minutes since 1970-01-01T00:00Z.
    pub at_min: i64,
    /// Points at the text id of the sign.
    pub sign: u32,
    /// Whether it was cleared since.
    pub is_cleared: bool,
}

pub(super) type Broken = minicbor::decode::Error;

impl<C> Encode<C> for HistoryLift {
    fn encode<W: minicbor::encode::Write>(
        &self,
        e: &mut Encoder<W>,
        _: &mut C,
    ) -> Result<(), minicbor::encode::Error<W::Error>> {
        e.array(match self.aid_first {
            None => LIFT_PLACES,
            Some(_) => LIFT_PLACES_AID,
        })?;
        e.u64(self.after_min)?.bool(self.done)?;
        e.u32(self.outcome.code())?;
        e.u32(self.way.map_or(0, Way::code))?;
        e.u32(self.advised.map_or(0, Way::code))?;
        match self.mass {
            Some(mass) => e.encode(mass)?,
            None => e.array(0)?,
        };
        e.u32(self.start.map_or(0, HeightWord::code))?;
        e.u32(self.times)?;
        e.bytes(&self.pain.map(place_of_pain))?;
        e.u32(self.back_state.map_or(0, BackState::code))?;
        e.encode(&self.looks)?;
        e.u32(self.instead)?.u32(self.title)?;
        if let Some(aid_first) = self.aid_first {
            e.bool(aid_first)?;
        }
        Ok(())
    }
}

impl<'b, C> Decode<'b, C> for HistoryLift {
    fn decode(d: &mut Decoder<'b>, _: &mut C) -> Result<Self, Broken> {
        let places = places(d, LIFT_PLACES)?;
        let lift = Self {
            after_min: d.u64()?,
            done: d.bool()?,
            outcome: d.decode()?,
            way: code(d, Way::from_code)?,
            advised: code(d, Way::from_code)?,
            mass: mass(d)?,
            start: code(d, HeightWord::from_code)?,
            times: d.u32()?,
            pain: pains(d.bytes()?)?,
            back_state: code(d, BackState::from_code)?,
            looks: d.decode()?,
            instead: d.u32()?,
            title: d.u32()?,
            aid_first: match places {
                LIFT_PLACES => None,
                _ => Some(d.bool()?),
            },
        };
        pass_over(d, places, LIFT_PLACES_AID)?;
        Ok(lift)
    }
}

impl<C> Encode<C> for LookBack {
    fn encode<W: minicbor::encode::Write>(
        &self,
        e: &mut Encoder<W>,
        _: &mut C,
    ) -> Result<(), minicbor::encode::Error<W::Error>> {
        e.array(LOOK_PLACES)?;
        e.u32(self.kind.code())?.u64(self.after_min)?;
        e.u8(place_of_pain(self.pain))?;
        e.u32(self.back_to_usual.map_or(0, BackToUsual::code))?.ok()
    }
}

impl<'b, C> Decode<'b, C> for LookBack {
    fn decode(d: &mut Decoder<'b>, _: &mut C) -> Result<Self, Broken> {
        let places = places(d, LOOK_PLACES)?;
        let look = Self {
            kind: d.decode()?,
            after_min: d.u64()?,
            pain: pain(d.u8()?)?,
            back_to_usual: code(d, BackToUsual::from_code)?,
        };
        pass_over(d, places, LOOK_PLACES)?;
        Ok(look)
    }
}

impl<C> Encode<C> for SignRaised {
    fn encode<W: minicbor::encode::Write>(
        &self,
        e: &mut Encoder<W>,
        _: &mut C,
    ) -> Result<(), minicbor::encode::Error<W::Error>> {
        e.array(SIGN_PLACES)?;
        e.i64(self.at_min)?
            .u32(self.sign)?
            .bool(self.is_cleared)?
            .ok()
    }
}

impl<'b, C> Decode<'b, C> for SignRaised {
    fn decode(d: &mut Decoder<'b>, _: &mut C) -> Result<Self, Broken> {
        let places = places(d, SIGN_PLACES)?;
        let sign = Self {
            at_min: d.i64()?,
            sign: d.u32()?,
            is_cleared: d.bool()?,
        };
        pass_over(d, places, SIGN_PLACES)?;
        Ok(sign)
    }
}

pub(super) fn places(d: &mut Decoder<'_>, least: u64) -> Result<u64, Broken> {
    match d.array()? {
        Some(places) if places >= least => Ok(places),
        _ => Err(Broken::message("an entry with too few places")),
    }
}

pub(super) fn pass_over(d: &mut Decoder<'_>, places: u64, known: u64) -> Result<(), Broken> {
    (known..places).try_for_each(|_| d.skip())
}

/// A code, or 0 for none.
pub(super) fn code<T>(
    d: &mut Decoder<'_>,
    read: fn(u32) -> Option<T>,
) -> Result<Option<T>, Broken> {
    match d.u32()? {
        0 => Ok(None),
        found => match read(found) {
            Some(value) => Ok(Some(value)),
            None => Err(Broken::unknown_variant(i64::from(found))),
        },
    }
}

/// A mass, or an empty list for none.
fn mass(d: &mut Decoder<'_>) -> Result<Option<Mass>, Broken> {
    if d.probe().array()? == Some(0) {
        d.skip()?;
        return Ok(None);
    }
    d.decode().map(Some)
}

/// One more than the score, or 0 for none.
pub(super) fn place_of_pain(pain: Option<Pain>) -> u8 {
    pain.map_or(0, |pain| pain.rating() + 1)
}

pub(super) fn pain(place: u8) -> Result<Option<Pain>, Broken> {
    match place.checked_sub(1) {
        None => Ok(None),
        Some(rating) => match Pain::new(rating) {
            Some(pain) => Ok(Some(pain)),
            None => Err(Broken::message("pain above 10")),
        },
    }
}

fn pains(bytes: &[u8]) -> Result<[Option<Pain>; REGIONS], Broken> {
    let places: &[u8; REGIONS] = bytes
        .try_into()
        .map_err(|_| Broken::message("six regions"))?;
    let mut pains = [None; REGIONS];
    for (to, place) in pains.iter_mut().zip(places) {
        *to = pain(*place)?;
    }
    Ok(pains)
}
