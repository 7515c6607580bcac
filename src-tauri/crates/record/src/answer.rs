//! An answer to one question, as it was given.

use minicbor::{Decode, Encode};

use crate::Pain;
use crate::codes::codes;

/// One answer. Choices are text ids.
#[derive(Debug, Clone, PartialEq, Eq, Encode, Decode)]
#[cbor(flat)]
pub enum Answer {
    /// One of several.
    #[n(1)]
    Choice(#[n(0)] String),
    /// Any of several; an empty list is "none of these".
    #[n(2)]
    Choices(#[n(0)] Vec<String>),
    /// A pain rating.
    #[n(3)]
    Pain(#[n(0)] Pain),
    /// A number that was typed.
    #[n(4)]
    Number {
        /// The number times one thousand: 6.5 is 6500.
        #[n(0)]
        thousandths: i64,
        /// Its unit.
        #[n(1)]
        unit: Unit,
    },
    /// "I'm not sure."
    #[n(5)]
    NotSure,
}

/// A question and its answer.
#[derive(Debug, Clone, PartialEq, Eq, Encode, Decode)]
#[cbor(array)]
pub struct Answered {
    /// Text id of the question.
    #[n(0)]
    pub question: String,
    /// What was answered.
    #[n(1)]
    pub answer: Answer,
}

codes! {
    /// Unit of a typed number.
    Unit {
        /// Kilograms.
        Kg = 1 "kg",
        /// Pounds.
        Lb = 2 "lb",
        /// Centimetres.
        Cm = 3 "cm",
        /// Inches.
        Inch = 4 "in",
        /// Weeks.
        Weeks = 5 "weeks",
        /// Minutes.
        Minutes = 6 "min",
        /// A bare count.
        Count = 7 "count",
        /// Metres.
        Metres = 8 "m",
        /// Degrees.
        Degrees = 9 "deg",
    }
}
