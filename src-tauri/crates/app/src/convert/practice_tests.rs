use super::*;
use crate::convert::plan::to_day;
use record::{Identity, Practice, Progression};

fn at(text: &str) -> DateTime<FixedOffset> {
    DateTime::parse_from_rfc3339(text).unwrap()
}

fn now() -> DateTime<FixedOffset> {
    at("2026-11-25T09:12:00+01:00")
}

/// Practice with 4 kg, half a kilogram a step, at most 5 kg.
fn plan(rule: Option<NextMorning>) -> record::Plan {
    let epoch = Moment {
        at_ms: 0,
        offset_min: 0,
    };
    record::Plan {
        version: 2,
        review_on: to_day(at("2026-12-25T00:00:00+01:00").date_naive()),
        grace_weeks: 2,
        ceiling_g: Some(5_000),
        next_morning: rule,
        practice: vec![Practice {
            way: Way::Squat,
            grams: 4_000,
            sets: 2,
            times: 6,
            days_a_week: 3,
        }],
        progression: Progression {
            step_g: Some(500),
            ..Progression::default()
        },
        ..record::Plan::blank(Identity([0; 16]), epoch)
    }
}

fn noted(days_ago: i64, event: PracticeEvent, grams: u32) -> Noted {
    Noted {
        at: now() - chrono::Duration::days(days_ago),
        version: 2,
        event,
        way: None,
        grams: Some(grams),
        pain: Pain::new(1),
        morning: Some(Morning {
            at: None,
            pain: Pain::new(2),
            back_to_usual: Some(BackToUsual::Yes),
        }),
    }
}

fn level(log: &[Noted]) -> Option<f64> {
    PlanDay::of(&plan(None), log, now())
        .level
        .map(Kilograms::value)
}

#[test]
fn the_level_is_the_last_step_taken_within_the_ceiling() {
    assert_eq!(level(&[]), Some(4.0));
    assert_eq!(level(&[noted(1, PracticeEvent::StepUp, 4_500)]), Some(4.5));
    assert_eq!(
        level(&[noted(1, PracticeEvent::OfferLeft, 4_500)]),
        Some(4.0)
    );
    assert_eq!(level(&[noted(1, PracticeEvent::StepUp, 90_000)]), Some(5.0));
    let other_version = Noted {
        version: 1,
        ..noted(1, PracticeEvent::StepUp, 4_500)
    };
    assert_eq!(level(&[other_version]), Some(4.0));
}

#[test]
fn a_flare_up_today_caps_every_lift_and_one_of_yesterday_does_not() {
    let on = |days_ago| {
        PlanDay::of(
            &plan(None),
            &[noted(days_ago, PracticeEvent::Flare, 2_000)],
            now(),
        )
    };
    let today = on(0);
    assert_eq!(today.level.map(Kilograms::value), Some(2.0));
    assert_eq!(
        today.plan.current.map(Kilograms::value),
        Some(4.0),
        "the rule itself halves it"
    );
    assert_eq!(today.to_judge().max.map(Kilograms::value), Some(2.0));
    assert_eq!(
        today
            .history_for_a_lift()
            .and_then(|history| history.flare_today),
        Some(true)
    );
    let yesterday = on(1);
    assert_eq!(yesterday.level.map(Kilograms::value), Some(2.0));
    assert_eq!(yesterday.to_judge().max.map(Kilograms::value), Some(5.0));
    assert_eq!(yesterday.history_for_a_lift(), None);
}

#[test]
fn a_flare_up_told_under_an_older_version_holds_for_the_day_too() {
    let older = Noted {
        version: 1,
        ..noted(0, PracticeEvent::Flare, 1_000)
    };
    let day = PlanDay::of(&plan(None), &[older], now());
    assert!(day.flare_today);
    assert_eq!(day.level.map(Kilograms::value), Some(2.0));
}

#[test]
fn good_sessions_after_a_flare_up_lead_back_to_one_step_below() {
    let good = |days_ago| Noted {
        pain: Pain::new(1),
        morning: Some(Morning {
            at: None,
            pain: Pain::new(1),
            back_to_usual: Some(BackToUsual::Yes),
        }),
        ..noted(days_ago, PracticeEvent::Done, 2_000)
    };
    let flare = noted(5, PracticeEvent::Flare, 2_000);
    let offered = |log: &[Noted]| {
        let day = PlanDay::of(&plan(None), log, now());
        let proposal = day.proposal(&Person::default());
        day.offered(&proposal).map(Kilograms::value)
    };
    assert_eq!(offered(&[flare, good(3)]), None, "one is not enough");
    assert_eq!(offered(&[flare, good(3), good(1)]), Some(3.5));
    let again = noted(4, PracticeEvent::Flare, 1_500);
    assert_eq!(
        offered(&[flare, again, good(3), good(1)]),
        Some(3.5),
        "the level before the first of them"
    );
    let stepped_down = noted(4, PracticeEvent::StepDown, 1_500);
    assert_eq!(
        offered(&[flare, stepped_down, good(3), good(1)]),
        Some(2.0),
        "step by step once it had to go down further"
    );
}

#[test]
fn a_flare_up_told_again_before_the_way_back_goes_one_step_down() {
    let log = [
        noted(1, PracticeEvent::Flare, 2_000),
        noted(0, PracticeEvent::Flare, 1_500),
    ];
    let day = PlanDay::of(&plan(None), &log, now());
    assert_eq!(day.level.map(Kilograms::value), Some(1.5));
}

#[test]
fn a_plan_may_ask_for_back_to_usual_or_for_no_worse() {
    let morning = |pain, back_to_usual| {
        Some(Morning {
            at: None,
            pain: Pain::new(pain),
            back_to_usual,
        })
    };
    let usual = Some(NextMorning::BackToUsual);
    let no_worse = Some(NextMorning::NoWorse);
    let before = Pain::new(2);
    assert_eq!(
        settled(morning(5, Some(BackToUsual::Yes)), usual, before),
        Some(true)
    );
    assert_eq!(
        settled(morning(1, Some(BackToUsual::No)), usual, before),
        Some(false)
    );
    assert_eq!(
        settled(morning(1, Some(BackToUsual::NotSure)), usual, before),
        None
    );
    assert_eq!(settled(None, usual, before), None);
    assert_eq!(
        settled(morning(2, Some(BackToUsual::No)), no_worse, before),
        Some(true)
    );
    assert_eq!(
        settled(morning(3, Some(BackToUsual::Yes)), no_worse, before),
        Some(false)
    );
    assert_eq!(
        settled(morning(3, Some(BackToUsual::Yes)), no_worse, None),
        Some(true)
    );
}

#[test]
fn what_was_handed_over_says_the_same() {
    let entry = PracticeEntry {
        at: super::super::moment::to_record(now()),
        plan: Identity([0; 16]),
        version: 2,
        event: PracticeEvent::Done,
        way: Some(Way::Squat),
        grams: Some(4_000),
        pain: Pain::new(3),
        morning: None,
    };
    let back = handed(&to_hand(&entry), 60);
    assert_eq!(back, Noted::from(&entry));
}
