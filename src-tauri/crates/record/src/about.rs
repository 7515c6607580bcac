//! What seldom changes about the person.

use minicbor::{Decode, Encode};

use crate::Moment;
use crate::codes::codes;
use crate::frame::{Keyed, Record};

/// About the person. `None` means not asked, never zero and never "no".
#[derive(Debug, Clone, Default, PartialEq, Eq, Encode, Decode)]
#[cbor(map)]
pub struct About {
    /// Age band.
    #[n(1)]
    pub age: Option<AgeBand>,
    /// Sex, where published figures differ by it.
    #[n(2)]
    pub sex: Option<Sex>,
    /// Stature, millimetres.
    #[n(3)]
    pub stature_mm: Option<u32>,
    /// Body mass, grams.
    #[n(4)]
    pub mass_g: Option<u32>,
    /// Standing conditions as text ids. An empty list: asked, none.
    #[n(5)]
    pub conditions: Option<Vec<String>>,
    /// Weeks of pregnancy when [`asked_at`](Self::asked_at).
    #[n(6)]
    pub pregnancy_weeks: Option<u32>,
    /// Weeks since surgery when [`asked_at`](Self::asked_at).
    #[n(7)]
    pub weeks_since_surgery: Option<u32>,
    /// Fell in the last year.
    #[n(8)]
    pub fell_last_year: Option<bool>,
    /// When age, conditions and the rest were last answered.
    #[n(9)]
    pub asked_at: Option<Moment>,
    /// When the full list of warning signs was last answered.
    #[n(10)]
    pub signs_asked_at: Option<Moment>,
    /// When falls were last asked about.
    #[n(11)]
    pub fell_asked_at: Option<Moment>,
}

impl Record for About {
    const KIND: u32 = 3;
}

impl Keyed for About {
    fn knows(path: &[u32]) -> bool {
        matches!(path, [1..=11])
    }
}

codes! {
    /// Age in bands.
    AgeBand {
        /// Under 16 years.
        Under16 = 1 "under16",
        /// 16 to 39 years.
        From16To39 = 2 "16-39",
        /// 40 to 64 years.
        From40To64 = 3 "40-64",
        /// 65 to 79 years.
        From65To79 = 4 "65-79",
        /// 80 years and over.
        From80 = 5 "80plus",
    }
}

codes! {
    /// Sex, where published figures differ by it.
    Sex {
        /// Female.
        Female = 1 "female",
        /// Male.
        Male = 2 "male",
    }
}
