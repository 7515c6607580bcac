use super::*;
use lifting::way::Way;
use record::{Ceiling, Identity, Moment, PlanWay, Practice, Progression};

fn at(text: &str) -> DateTime<FixedOffset> {
    DateTime::parse_from_rfc3339(text).unwrap()
}

const EPOCH: Moment = Moment {
    at_ms: 0,
    offset_min: 0,
};

fn plan() -> record::Plan {
    record::Plan {
        review_on: to_day(at("2026-11-25T00:00:00+01:00").date_naive()),
        grace_weeks: 2,
        ceiling_g: Some(12_500),
        ceilings: vec![Ceiling {
            start: record::HeightWord::Floor,
            grams: 8_000,
        }],
        times_a_bout: Some(5),
        bouts_a_day: Some(4),
        pain_ceiling: record::Pain::new(5),
        ways: [
            (record::Way::Squat, WayStanding::Preferred),
            (record::Way::FreeBend, WayStanding::NotAllowed),
        ]
        .map(|(way, standing)| PlanWay {
            way,
            standing,
            why: None,
        })
        .to_vec(),
        practice: [(6_000, 1), (4_000, 2)]
            .map(|(grams, sets)| Practice {
                way: record::Way::Squat,
                grams,
                sets,
                times: 8,
                days_a_week: 3,
            })
            .to_vec(),
        progression: Progression {
            step_g: Some(500),
            is_locked: true,
            ..Progression::default()
        },
        ..record::Plan::blank(Identity([0; 16]), EPOCH)
    }
}

#[test]
fn every_limit_reaches_the_judgement() {
    let judged = to_judge(&plan(), at("2026-11-25T23:59:00+01:00"));
    let mass = |kilograms| Some(Kilograms::clamped(kilograms));
    assert_eq!(
        judged.validity,
        Validity::Valid,
        "on the day itself it holds"
    );
    assert_eq!(judged.max, mass(12.5));
    assert_eq!(
        judged.max_by_height.get(&HeightWord::Floor).copied(),
        mass(8.0)
    );
    assert_eq!(judged.times_a_bout, Some(Repetitions::of(5)));
    assert_eq!(judged.bouts_a_day, Some(Repetitions::of(4)));
    assert_eq!(judged.allowed, None);
    assert_eq!(judged.avoid, BTreeSet::from([Way::FreeBend]));
    assert_eq!(judged.prefer, BTreeSet::from([Way::Squat]));
    assert_eq!(judged.pain_ceiling, Some(PainScore::of(5)));
    assert_eq!(judged.step, mass(0.5));
    assert_eq!(judged.current, mass(4.0), "the lightest of two");
    assert!(judged.steps_locked);
    assert_eq!(judged.grace, Some(Weeks::clamped(2.0)));
}

#[test]
fn past_its_day_a_plan_is_overdue_by_days() {
    let one_day = validity(plan().review_on, at("2026-11-26T00:00:00+01:00"));
    let Validity::Expired {
        overdue: Some(weeks),
    } = one_day
    else {
        panic!("{one_day:?}")
    };
    assert!((weeks.value() - 1.0 / 7.0).abs() < 1e-9);
}

#[test]
fn days_come_back_as_dates() {
    // By hand: 2026-11-25 is 56 years, 14 leap days and 328 days after 1970-01-01.
    let date = NaiveDate::from_ymd_opt(2026, 11, 25).unwrap();
    assert_eq!(to_day(date), Day(56 * 365 + 14 + 328));
    assert_eq!(to_date(to_day(date)), date);
    assert_eq!(to_date(Day(i32::MAX)), NaiveDate::default());
}
