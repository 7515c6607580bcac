//! Laws of the look back, for any history.
#![cfg(test)]

use lifting::quantity::{Kilograms, PainScore, Repetitions};
use lifting::review::{Day, Decision, Enough, KeptLift, PainKind, Verdict, WINDOW_DAYS, look_back};
use lifting::way::Way;
use proptest::prelude::*;

fn any_lift() -> impl Strategy<Value = KeptLift> {
    let pain = || proptest::option::of((0u8..=10).prop_map(PainScore::of));
    (
        (
            0..200i32,
            prop::sample::select(Decision::ALL),
            proptest::option::of(0.0..60.0f64),
            1..20u32,
        ),
        (
            (any_way(), any_way(), any::<Option<bool>>()),
            pain(),
            pain(),
            pain(),
            any::<bool>(),
        ),
    )
        .prop_map(
            |((day, decision, mass, times), (ways, before, during, next_morning, flare))| {
                KeptLift {
                    day: Day::of(day),
                    decision,
                    mass: mass.map(Kilograms::clamped),
                    times: Repetitions::of(times),
                    way: ways.0,
                    advised: ways.1,
                    aid_first: ways.2,
                    before,
                    during,
                    next_morning,
                    flare,
                }
            },
        )
}

fn any_way() -> impl Strategy<Value = Option<Way>> {
    proptest::option::of(prop::sample::select(Way::ALL))
}

fn any_history() -> impl Strategy<Value = Vec<KeptLift>> {
    prop::collection::vec(any_lift(), 0..120)
}

/// The same history with every pain turned round: 0 for 10, 10 for 0.
fn mirrored(lifts: &[KeptLift]) -> Vec<KeptLift> {
    let turn = |score: Option<PainScore>| score.map(|score| PainScore::of(10 - score.value()));
    lifts
        .iter()
        .map(|lift| KeptLift {
            before: turn(lift.before),
            during: turn(lift.during),
            next_morning: turn(lift.next_morning),
            ..*lift
        })
        .collect()
}

fn one_a_day(lifts: &[KeptLift]) -> Vec<KeptLift> {
    let mut lifts = lifts.to_vec();
    lifts.sort_by_key(|lift| lift.day);
    lifts.dedup_by_key(|lift| lift.day);
    lifts
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(256))]

    #[test]
    fn the_order_of_entries_does_not_matter(lifts in any_history(), until in 0..220i32) {
        let mut turned = lifts.clone();
        turned.reverse();
        let (one, other) = (look_back(&lifts, Day::of(until)), look_back(&turned, Day::of(until)));
        prop_assert_eq!(&one.pain, &other.pain);
        prop_assert_eq!(one.counts, other.counts);
        prop_assert_eq!(one.response, other.response);
        for (week, same) in one.weeks.iter().zip(&other.weeks) {
            prop_assert!((week.lifted.value() - same.lifted.value()).abs() < 1e-6);
        }
    }

    #[test]
    fn a_trend_lies_inside_its_interval(lifts in any_history()) {
        for pain in look_back(&lifts, Day::of(200)).pain {
            if let Enough::Yes(trend) = pain.trend {
                prop_assert!(trend.low <= trend.slope && trend.slope <= trend.high, "{:?}", trend);
            }
        }
    }

    #[test]
    fn pain_turned_round_turns_the_trend_round(lifts in any_history()) {
        let lifts = one_a_day(&lifts);
        let (one, other) = (look_back(&lifts, Day::of(200)), look_back(&mirrored(&lifts), Day::of(200)));
        for (pain, turned) in one.pain.iter().zip(&other.pain) {
            match (pain.trend, turned.trend) {
                (Enough::Yes(trend), Enough::Yes(turned)) => {
                    prop_assert!((trend.slope.value() + turned.slope.value()).abs() < 1e-9);
                    prop_assert_eq!(trend.is_clear(), turned.is_clear());
                }
                (one, other) => prop_assert_eq!(one, other),
            }
        }
    }

    #[test]
    fn what_is_before_the_window_moves_no_trend(lifts in any_history()) {
        let until = Day::of(199);
        let recent: Vec<_> = lifts
            .iter()
            .copied()
            .filter(|lift| until.days_since(lift.day) < WINDOW_DAYS)
            .collect();
        prop_assert_eq!(look_back(&lifts, until).pain, look_back(&recent, until).pain);
    }

    #[test]
    fn one_point_is_never_a_change(first in 0u8..=10, up in any::<bool>()) {
        let last = if up { (first + 1).min(10) } else { first.saturating_sub(1) };
        let lifts: Vec<_> = (0..12)
            .map(|day| KeptLift {
                day: Day::of(day * 3),
                decision: Decision::Done,
                mass: None,
                times: Repetitions::ONCE,
                way: None,
                advised: None,
                aid_first: None,
                before: Some(PainScore::of(if day < 6 { first } else { last })),
                during: None,
                next_morning: None,
                flare: false,
            })
            .collect();
        let review = look_back(&lifts, Day::of(40));
        let before = review.pain.iter().find(|pain| pain.kind == PainKind::Before).unwrap();
        match before.change {
            Enough::Yes(change) => prop_assert_eq!(change.verdict, Verdict::Same),
            Enough::NotYet(why) => prop_assert!(false, "{:?}", why),
        }
    }

    #[test]
    fn evenness_is_a_share(lifts in any_history()) {
        if let Some(evenness) = look_back(&lifts, Day::of(200)).variety.evenness {
            prop_assert!((0.0..=1.0).contains(&evenness.value()));
        }
    }
}

/// All five ways alike is 1, one way alone is 0 (Pielou 1966).
#[test]
fn evenness_at_its_ends() {
    let with = |ways: &[Way]| {
        let lifts: Vec<_> = ways
            .iter()
            .map(|way| KeptLift {
                day: Day::of(0),
                decision: Decision::Done,
                mass: None,
                times: Repetitions::ONCE,
                way: Some(*way),
                advised: None,
                aid_first: None,
                before: None,
                during: None,
                next_morning: None,
                flare: false,
            })
            .collect();
        look_back(&lifts, Day::of(0))
            .variety
            .evenness
            .unwrap()
            .value()
    };
    assert!((with(&Way::FROM_LOW) - 1.0).abs() < 1e-12);
    assert!(with(&[Way::Squat, Way::Squat]).abs() < 1e-12);
}
