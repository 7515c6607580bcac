//! Words from a closed list, as they stand on the wire.

use serde::de::{Deserialize, Deserializer, Error, Visitor};
use std::collections::BTreeSet;
use std::fmt;

/// A closed list whose members have a wire id.
pub(crate) trait Listed: Sized {
    /// The member with this id.
    fn listed(id: &str) -> Option<Self>;
}

macro_rules! listed {
    ($($name:ty),+ $(,)?) => {
        $(impl Listed for $name {
            fn listed(id: &str) -> Option<Self> {
                Self::from_id(id)
            }
        })+
    };
}

listed!(
    lifting::loads::support::Rest,
    lifting::body::AgeBand,
    lifting::body::BackState,
    lifting::body::Balance,
    lifting::body::Condition,
    lifting::body::Kneeling,
    lifting::body::Sex,
    lifting::body::WarningSign,
    lifting::limits::niosh::Units,
    lifting::progress::Trend,
    lifting::review::Decision,
    lifting::task::Coupling,
    lifting::task::HeightWord,
    lifting::task::ReachWord,
    lifting::transfer::client::Ability,
    lifting::transfer::client::Follows,
    lifting::transfer::client::Help,
    lifting::transfer::client::Limb,
    lifting::transfer::client::Move,
    lifting::transfer::client::WeightBearing,
    lifting::transfer::equipment::Equipment,
    lifting::transfer::limit::Hindrance,
    lifting::transfer::way::PeopleWay,
    lifting::way::Way,
);

/// One word from a list. Any other word is `not_a_choice`.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub(crate) struct Choice<T>(pub(crate) T);

/// One word from a list, or `unknown`, which says that it was not found out.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) struct ChoiceOrUnknown<T>(pub(crate) Option<T>);

/// A list of words as a set; a word given twice counts once.
pub(crate) fn set_of<T: Ord>(words: Vec<Choice<T>>) -> BTreeSet<T> {
    words.into_iter().map(|word| word.0).collect()
}

impl<'de, T: Listed> Deserialize<'de> for Choice<T> {
    fn deserialize<D: Deserializer<'de>>(reader: D) -> Result<Self, D::Error> {
        let listed = reader.deserialize_str(Word(T::listed))?;
        Ok(Self(listed))
    }
}

impl<'de, T: Listed> Deserialize<'de> for ChoiceOrUnknown<T> {
    fn deserialize<D: Deserializer<'de>>(reader: D) -> Result<Self, D::Error> {
        let find = |id: &str| {
            if id == "unknown" {
                Some(None)
            } else {
                T::listed(id).map(Some)
            }
        };
        let listed = reader.deserialize_str(Word(find))?;
        Ok(Self(listed))
    }
}

struct Word<F>(F);

impl<'de, T, F: Fn(&str) -> Option<T>> Visitor<'de> for Word<F> {
    type Value = T;

    fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("a word from the list")
    }

    fn visit_str<E: Error>(self, id: &str) -> Result<T, E> {
        (self.0)(id).ok_or_else(|| E::unknown_variant("", &[]))
    }
}
