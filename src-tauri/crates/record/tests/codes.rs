//! Codes and ids are each used once, and lead back to their value.
#![allow(clippy::unwrap_used, reason = "a test may stop at the first surprise")]

use std::collections::BTreeSet;

use record::*;

macro_rules! checks_codes {
    ($($name:ident)+) => {
        $(
            let codes: BTreeSet<u32> = $name::ALL.iter().map(|value| value.code()).collect();
            let ids: BTreeSet<&str> = $name::ALL.iter().map(|value| value.id()).collect();
            assert_eq!(codes.len(), $name::ALL.len(), "a code of {} is used twice", stringify!($name));
            assert_eq!(ids.len(), $name::ALL.len(), "an id of {} is used twice", stringify!($name));
            assert!(!codes.contains(&0), "0 is kept free for 'none'");
            for &value in $name::ALL {
                assert_eq!($name::from_code(value.code()), Some(value));
                assert_eq!($name::from_id(value.id()), Some(value));
            }
            assert_eq!($name::from_code(0), None);
            assert_eq!($name::from_id("no such id"), None);
        )+
    };
}

#[test]
fn each_code_and_id_names_one_value() {
    checks_codes! {
        Ability AgeBand Authority BackState BackToUsual Balance CameBy CheckInKind ClearedBy Coupling DepartureHow
        DepartureWhat DraftPurpose Follows HeightWord Help Hold Kneel Limb MoveResult NextMorning Outcome
        ParcelPurpose PracticeEvent ReachWord Region Seal Sex Sure Told Unit Units Urgency UsedFor Way WayStanding WeightBearing
    }
}

#[test]
fn pain_is_zero_to_ten() {
    assert_eq!(Pain::new(0).map(Pain::rating), Some(0));
    assert_eq!(Pain::new(10).map(Pain::rating), Some(10));
    assert_eq!(Pain::new(11), None);
}
