//! Any value of what several records have in common.
#![allow(clippy::unwrap_used, reason = "a test may stop at the first surprise")]

use std::fmt::Debug;

use proptest::prelude::*;
use record::*;

pub(crate) fn text() -> impl Strategy<Value = String> {
    prop_oneof!["[a-z_]{0,12}", any::<String>()]
}

pub(crate) fn moment() -> impl Strategy<Value = Moment> {
    (any::<i64>(), -1439_i16..=1439).prop_map(|(at_ms, offset_min)| Moment { at_ms, offset_min })
}

pub(crate) fn pain() -> impl Strategy<Value = Pain> {
    (0_u8..=10).prop_map(|rating| Pain::new(rating).unwrap())
}

pub(crate) fn mass() -> impl Strategy<Value = Mass> {
    prop_oneof![
        any::<u32>().prop_map(|grams| Mass::Known { grams }),
        any::<(u32, u32)>().prop_map(|(low_grams, high_grams)| Mass::Untested {
            low_grams,
            high_grams
        }),
        Just(Mass::Unknown),
    ]
}

/// The record comes back as it was, and its bytes are the only ones for it.
pub(crate) fn comes_back<R: Record + PartialEq + Debug>(record: &R) -> Result<(), TestCaseError> {
    let bytes = record.to_bytes().unwrap();
    let read = R::from_bytes(&bytes).unwrap();
    prop_assert_eq!(&read, record);
    prop_assert_eq!(read.to_bytes().unwrap(), bytes);
    Ok(())
}
