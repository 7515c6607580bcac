//! From the log of practice to what the rule asks about. Expectations follow from the rule's words in
//! `docs/method/judgement.md`, "What next in the plan", worked out by hand.

#![cfg(test)]

use judgement::any;
use judgement::example::{kg, pain};
use lifting::body::Person;
use lifting::plan::Plan;
use lifting::progress::{
    Progress, Session, Trend, after_a_flare, good_in_a_row, history, in_a_flare, propose,
    sessions_needed, take,
};
use lifting::quantity::{Kilograms, PainScore};
use lifting::review::Day;
use proptest::option::of;
use proptest::prelude::*;

const TODAY: Day = Day::of(100);

fn plan() -> Plan {
    Plan {
        max: Some(kg(10.0)),
        current: Some(kg(4.0)),
        step: Some(kg(0.5)),
        ..Plan::blank()
    }
}

/// So many days ago, at this level.
fn session(days_ago: i32, during: Option<u8>, settled: Option<bool>) -> Session {
    Session {
        day: TODAY.days_before(days_ago),
        at_level: true,
        during: during.map(PainScore::of),
        settled,
    }
}

fn next(sessions: &[Session], plan: &Plan) -> Progress {
    let history = history(sessions, plan, TODAY, false);
    propose(&Person::default(), Some(plan), &history).progress
}

#[test]
fn two_good_days_running_are_enough_for_a_step_up() {
    let two = [
        session(3, Some(2), Some(true)),
        session(1, Some(3), Some(true)),
    ];
    assert_eq!(next(&two, &plan()), Progress::StepUp);
    assert_eq!(good_in_a_row(&two, &plan(), TODAY), 2);
    assert_eq!(next(&two[1..], &plan()), Progress::Hold);
}

#[test]
fn a_plan_may_ask_for_more_good_days_or_a_lower_pain() {
    let two = [
        session(3, Some(2), Some(true)),
        session(1, Some(3), Some(true)),
    ];
    let three = Plan {
        good_sessions: Some(3),
        ..plan()
    };
    assert_eq!(sessions_needed(Some(&three)), 3);
    assert_eq!(next(&two, &three), Progress::Hold);
    let hold_from_3 = Plan {
        hold_from: Some(pain(3)),
        ..plan()
    };
    assert_eq!(next(&two, &hold_from_3), Progress::Hold);
    assert_eq!(good_in_a_row(&two, &hold_from_3, TODAY), 0);
}

/// The stricter of the two numbers that a plan may set.
#[test]
fn a_plan_may_step_down_earlier() {
    let with = |back_over, pain_ceiling| Plan {
        back_over,
        pain_ceiling,
        ..plan()
    };
    let four = [session(1, Some(4), Some(true))];
    assert_eq!(next(&four, &plan()), Progress::Hold);
    assert_eq!(next(&four, &with(Some(pain(3)), None)), Progress::StepDown);
    assert_eq!(
        next(&four, &with(Some(pain(5)), Some(pain(3)))),
        Progress::StepDown
    );
    assert_eq!(
        next(&four, &with(Some(pain(5)), Some(pain(5)))),
        Progress::Hold
    );
}

#[test]
fn what_is_not_told_holds_and_strong_pain_steps_down_all_the_same() {
    let untold = [
        session(3, None, Some(true)),
        session(1, Some(1), Some(true)),
    ];
    assert_eq!(next(&untold, &plan()), Progress::Hold);
    let waiting = [session(3, Some(1), Some(true)), session(0, Some(1), None)];
    assert_eq!(next(&waiting, &plan()), Progress::Hold);
    let strong = [session(3, None, None), session(1, Some(6), None)];
    assert_eq!(next(&strong, &plan()), Progress::StepDown);
}

#[test]
fn two_times_on_one_day_are_one_session_and_the_worse_counts() {
    let twice = [
        session(1, Some(2), Some(true)),
        session(1, Some(4), Some(true)),
    ];
    assert_eq!(
        history(&twice, &plan(), TODAY, false).sessions_at_level,
        Some(1)
    );
    assert_eq!(
        history(&twice, &plan(), TODAY, false).worst_during,
        Some(pain(4))
    );
    assert_eq!(good_in_a_row(&twice, &plan(), TODAY), 0);
}

#[test]
fn only_the_last_sessions_at_this_level_count() {
    let mut old = [
        session(9, Some(9), Some(false)),
        session(3, Some(1), Some(true)),
        session(1, Some(1), Some(true)),
    ];
    assert_eq!(next(&old, &plan()), Progress::StepUp);
    old[1].at_level = false;
    assert_eq!(
        next(&old, &plan()),
        Progress::StepDown,
        "the old one is one of the last two"
    );
    old[0].at_level = false;
    assert_eq!(next(&old, &plan()), Progress::Hold);
}

/// Medians of the halves: 1 and 3 (two points: more), 2 and 3 (one point: about the same), 3 and 1 (less).
#[test]
fn the_week_compares_its_later_half_with_its_earlier_one() {
    let week = |pains: [u8; 4]| {
        let days = [6, 4, 2, 0];
        let sessions: Vec<Session> = days
            .iter()
            .zip(pains)
            .map(|(day, pain)| session(*day, Some(pain), Some(true)))
            .collect();
        history(&sessions, &plan(), TODAY, false).week_trend
    };
    assert_eq!(week([1, 1, 3, 3]), Some(Trend::Up));
    assert_eq!(week([2, 2, 3, 3]), Some(Trend::Same));
    assert_eq!(week([3, 3, 1, 1]), Some(Trend::Down));
    let one = [session(8, Some(9), None), session(0, Some(1), None)];
    assert_eq!(
        history(&one, &plan(), TODAY, false).week_trend,
        None,
        "one day of this week"
    );
}

#[test]
fn a_step_that_is_taken_ends_at_the_ceiling_and_at_nothing() {
    assert_eq!(take(&plan(), kg(4.0), Progress::StepUp), kg(4.5));
    assert_eq!(take(&plan(), kg(4.0), Progress::Hold), kg(4.0));
    assert_eq!(take(&plan(), kg(4.0), Progress::StepDown), kg(3.5));
    assert_eq!(take(&plan(), kg(9.8), Progress::StepUp), kg(10.0));
    assert_eq!(take(&plan(), kg(0.2), Progress::StepDown), kg(0.0));
}

fn any_session() -> impl Strategy<Value = Session> {
    (0i32..12, any::<bool>(), of(0u8..=10), of(any::<bool>())).prop_map(
        |(days_ago, at_level, during, settled)| Session {
            at_level,
            ..session(days_ago, during, settled)
        },
    )
}

const fn rank(progress: Progress) -> u8 {
    match progress {
        Progress::StepUp => 2,
        Progress::Hold => 1,
        Progress::StepDown => 0,
    }
}

/// Common teaching for a flare-up: half of the load (from memory, no source), and back after good sessions.
mod flare_up {
    use super::*;

    fn of(level: f64, step: f64) -> Plan {
        Plan {
            max: Some(kg(10.0)),
            current: Some(kg(level)),
            step: Some(kg(step)),
            ..Plan::blank()
        }
    }

    #[test]
    fn halves_the_level_or_takes_a_step_where_that_leaves_less() {
        assert_eq!(in_a_flare(&of(6.0, 1.0), kg(6.0)), kg(3.0));
        assert_eq!(in_a_flare(&of(3.0, 2.0), kg(3.0)), kg(1.0));
        assert_eq!(in_a_flare(&of(0.5, 1.0), kg(0.5)), kg(0.0));
    }

    #[test]
    fn good_sessions_lead_back_to_one_step_below_and_never_by_less_than_a_step() {
        assert_eq!(after_a_flare(&of(6.0, 1.0), kg(3.0), kg(6.0)), kg(5.0));
        assert_eq!(after_a_flare(&of(3.0, 2.0), kg(1.0), kg(3.0)), kg(3.0));
    }
}

proptest! {
    /// Whatever is offered and taken, again and again, the level stays within the plan's ceilings.
    #[test]
    fn the_level_never_passes_the_ceiling(plan in any::plan(), steps in prop::collection::vec(0usize..3, 0..40)) {
        let Some(mut level) = plan.current else { return Ok(()) };
        for step in steps {
            level = take(&plan, level, [Progress::StepUp, Progress::Hold, Progress::StepDown][step]);
            prop_assert!(plan.strictest_ceiling().is_none_or(|ceiling| level <= ceiling));
            prop_assert!(level >= Kilograms::clamped(0.0));
        }
    }

    /// A flare-up leaves no more than a step down does, nor than half; the way back stays within the ceilings and below
    /// the level before it, or is a single step.
    #[test]
    fn a_flare_never_leaves_more(plan in any::plan(), level in 0.0..60.0f64) {
        let before = take(&plan, kg(level), Progress::Hold);
        let flare = in_a_flare(&plan, before);
        prop_assert!(flare <= take(&plan, before, Progress::StepDown));
        prop_assert!(flare.value() <= before.value() / 2.0);
        let back = after_a_flare(&plan, flare, before);
        prop_assert!(plan.strictest_ceiling().is_none_or(|ceiling| back <= ceiling));
        prop_assert!(back <= before || back == take(&plan, flare, Progress::StepUp));
    }

    /// A flare-up never steps up, and never holds.
    #[test]
    fn a_flare_never_steps_up(person in any::person(), plan in any::plan(), sessions in prop::collection::vec(any_session(), 0..12)) {
        let told = history(&sessions, &plan, TODAY, true);
        let proposal = propose(&person, Some(&plan), &told);
        prop_assert_eq!(proposal.progress, Progress::StepDown);
    }

    /// More pain in the last session, or a morning that was not as usual, never steps further. (More pain in an
    /// earlier one may: then the week fell.)
    #[test]
    fn more_pain_never_steps_further(
        person in any::person(), plan in any::plan(), mut sessions in prop::collection::vec(any_session(), 1..12),
        more in 0u8..=10,
    ) {
        let before = propose(&person, Some(&plan), &history(&sessions, &plan, TODAY, false)).progress;
        let last = sessions.iter_mut().max_by_key(|session| session.day).unwrap();
        let told = last.during.map(|pain| PainScore::of(pain.value().max(more)));
        last.during = told;
        let after = propose(&person, Some(&plan), &history(&sessions, &plan, TODAY, false)).progress;
        prop_assert!(rank(after) <= rank(before));
        let last = sessions.iter_mut().max_by_key(|session| session.day).unwrap();
        last.settled = last.settled.map(|_| false);
        let unsettled = propose(&person, Some(&plan), &history(&sessions, &plan, TODAY, false)).progress;
        prop_assert!(rank(unsettled) <= rank(after));
    }
}
