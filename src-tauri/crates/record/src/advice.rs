//! The advice that was shown: ids and figures, no sentences, so that it can be shown again in any language.

use minicbor::{Decode, Decoder, Encode, Encoder};

use crate::codes::codes;
use crate::frame::{Keyed, Record};

/// Advice as it was given, by the rules of its day.
#[derive(Debug, Clone, PartialEq, Eq, Encode, Decode)]
#[cbor(map)]
pub struct Advice {
    /// What it comes to.
    #[n(1)]
    pub outcome: Outcome,
    /// How soon to ask for help.
    #[n(2)]
    pub urgency: Urgency,
    /// Ways to lift, first choice first.
    #[n(3)]
    pub ways: Vec<Way>,
    /// Ways ruled out, and why.
    #[n(4)]
    pub ruled_out: Vec<RuledOut>,
    /// Text ids of cautions, most serious first.
    #[n(5)]
    pub cautions: Vec<String>,
    /// What to change first.
    #[n(6)]
    pub changes: Vec<Change>,
    /// Text ids of other ways to get it done.
    #[n(7)]
    pub alternatives: Vec<String>,
    /// Why, in the order they weighed in.
    #[n(8)]
    pub reasons: Vec<Reason>,
    /// Heaviest load for today, grams; only with a plan.
    #[n(9)]
    pub heaviest_g: Option<u32>,
    /// The published limit for healthy adults, if it covers the task.
    #[n(10)]
    pub limit: Option<TaskLimit>,
    /// Version of the rules that gave it.
    #[n(11)]
    pub rule_version: String,
}

/// A way that was ruled out.
#[derive(Debug, Clone, PartialEq, Eq, Encode, Decode)]
#[cbor(map)]
pub struct RuledOut {
    /// The way.
    #[n(1)]
    pub way: Way,
    /// Text ids of the reasons.
    #[n(2)]
    pub because: Vec<String>,
}

/// A change that makes the lift one to choose.
#[derive(Debug, Clone, PartialEq, Eq, Encode, Decode)]
#[cbor(map)]
pub struct Change {
    /// Text id of the change, such as `raise_start`.
    #[n(1)]
    pub kind: String,
    /// Its figures.
    #[n(2)]
    pub args: Vec<Arg>,
    /// Ways to lift once it is done.
    #[n(3)]
    pub ways: Vec<Way>,
    /// The steps of a compound change; empty for a simple one.
    #[n(4)]
    pub steps: Vec<ChangeStep>,
}

/// One step of a compound change.
#[derive(Debug, Clone, PartialEq, Eq, Encode, Decode)]
#[cbor(map)]
pub struct ChangeStep {
    /// Text id of the change.
    #[n(1)]
    pub kind: String,
    /// Its figures.
    #[n(2)]
    pub args: Vec<Arg>,
}

/// One reason behind the advice.
#[derive(Debug, Clone, PartialEq, Eq, Encode, Decode)]
#[cbor(map)]
pub struct Reason {
    /// Text id of the reason, such as `back_severe`.
    #[n(1)]
    pub id: String,
    /// Step of the judgement that found it, 1 to 8.
    #[n(2)]
    pub step: u8,
    /// Whose rule it is.
    #[n(3)]
    pub authority: Authority,
    /// How sure it is.
    #[n(4)]
    pub sure: Sure,
    /// Text id of the source.
    #[n(5)]
    pub source: String,
    /// Its figures.
    #[n(6)]
    pub args: Vec<Arg>,
}

/// The published limit for healthy adults on this task.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Encode, Decode)]
#[cbor(map)]
pub struct TaskLimit {
    /// Recommended weight limit, grams.
    #[n(1)]
    pub recommended_g: u32,
    /// Lifting index times one thousand; `None` when the limit is zero or the mass is not known.
    #[n(2)]
    pub index_thousandths: Option<u32>,
}

/// A named figure or word of a reason or change.
#[derive(Debug, Clone, PartialEq, Eq, Encode, Decode)]
#[cbor(array)]
pub struct Arg {
    /// Its name; a unit suffix where it has one, such as `mass_g`.
    #[n(0)]
    pub name: String,
    /// Its value.
    #[n(1)]
    pub value: Value,
}

/// A whole number or a word.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Value {
    /// A whole number, in the unit its name tells.
    Integer(i64),
    /// A word, usually a text id.
    Text(String),
}

impl<C> Encode<C> for Value {
    fn encode<W: minicbor::encode::Write>(
        &self,
        encoder: &mut Encoder<W>,
        _: &mut C,
    ) -> Result<(), minicbor::encode::Error<W::Error>> {
        match self {
            Self::Integer(number) => encoder.i64(*number)?.ok(),
            Self::Text(text) => encoder.str(text)?.ok(),
        }
    }
}

impl<'b, C> Decode<'b, C> for Value {
    fn decode(decoder: &mut Decoder<'b>, _: &mut C) -> Result<Self, minicbor::decode::Error> {
        if decoder.datatype()? == minicbor::data::Type::String {
            Ok(Self::Text(decoder.str()?.to_owned()))
        } else {
            decoder.i64().map(Self::Integer)
        }
    }
}

impl Record for Advice {
    const KIND: u32 = 5;
}

impl Keyed for Advice {
    fn knows(path: &[u32]) -> bool {
        match path {
            [key] => (1..=11).contains(key),
            [4, key] => (1..=2).contains(key),
            [6, key] => (1..=4).contains(key),
            [6, 4, key] => (1..=2).contains(key),
            [8, key] => (1..=6).contains(key),
            [10, key] => (1..=2).contains(key),
            _ => false,
        }
    }
}

codes! {
    /// A way to lift.
    Way {
        /// Hands at or above knuckle height: no low way is needed.
        Upright = 1 "upright",
        /// Hip hinge.
        Hinge = 2 "hinge",
        /// Squat.
        Squat = 3 "squat",
        /// Half-kneeling lunge.
        Lunge = 4 "lunge",
        /// Free bend.
        FreeBend = 5 "free_bend",
        /// Golfer's lift.
        Golfer = 6 "golfer",
    }
}

codes! {
    /// What the advice comes to.
    Outcome {
        /// Lift, this way.
        Lift = 1 "lift",
        /// Change something first, then lift.
        LiftWithChange = 2 "lift_with_change",
        /// Not as it stands.
        DoNotLift = 3 "do_not_lift",
        /// A warning sign: seek care.
        SeekCare = 4 "seek_care",
        /// No advice can be given; others can.
        Refuse = 5 "refuse",
    }
}

codes! {
    /// How soon to ask for help.
    Urgency {
        /// No need.
        None = 1 "none",
        /// At the next chance.
        Routine = 2 "routine",
        /// Today.
        SameDay = 3 "same_day",
        /// Now.
        Emergency = 4 "emergency",
    }
}

codes! {
    /// Whose rule a reason rests on, highest first.
    Authority {
        /// Law or employer's rules.
        Law = 1 "law",
        /// An emergency sign.
        Emergency = 2 "emergency",
        /// A surgeon's or therapist's plan.
        Plan = 3 "plan",
        /// Pain and balance today.
        Today = 4 "today",
        /// Common practice.
        Practice = 5 "practice",
    }
}

codes! {
    /// How sure a reason is.
    Sure {
        /// From a published source.
        Published = 1 "published",
        /// A house rule.
        House = 2 "house",
        /// An estimate.
        Estimate = 3 "estimate",
    }
}
