//! What the posture model says of changes: how much each eases the back, and which of two equally small ones comes
//! first. It never decides which changes there are (`laws.rs`).

#![cfg(test)]

use judgement::example::{Answer, Example, a_box};
use lifting::advise::change::{BackShare, ChangeStep};
use lifting::advise::judge;
use lifting::quantity::NewtonMetres;
use lifting::task::ReachWord;

fn share(answer: &Answer, kind: &str) -> Option<f64> {
    let mut changes = answer.changes().iter();
    let change = changes.find(|change| change.steps[0].id() == kind)?;
    change.back.map(BackShare::value)
}

/// A person of known size: else the worse of two stands in, which may be another one after the change.
fn known_size(example: Example) -> Example {
    example.stature(170.0).person(|person| {
        person.mass = lifting::quantity::BodyMass::new(70.0).ok();
    })
}

/// Published: the moment grows with load and with its distance from L5/S1.
#[test]
fn closer_lighter_and_in_parts_leave_less_for_the_back() {
    let answer = known_size(a_box(10.0).reach(ReachWord::Far).in_parts()).ask();
    assert_eq!(answer.outcome(), "lift_with_change");
    for kind in ["bring_closer", "split_load", "lighten"] {
        if let Some(share) = share(&answer, kind) {
            assert!(share < 1.0, "{kind}: {share}");
        }
    }
    assert!(share(&answer, "bring_closer").is_some());
}

/// 24 kg in two: the body's own weight stays, so that more than half is left.
#[test]
fn half_the_load_is_more_than_half_of_the_moment() {
    let answer = known_size(a_box(24.0).in_parts()).ask();
    let left = share(&answer, "split_load").unwrap();
    assert!(left > 0.5 && left < 1.0, "{left}");
}

#[test]
fn of_a_grip_a_pause_and_a_mass_that_is_not_known_it_says_nothing() {
    let grip = known_size(a_box(6.0).hard_to_hold()).ask();
    assert_eq!(share(&grip, "better_grip"), None);
    let carry = known_size(a_box(5.0).carried_m(40.0)).ask();
    assert_eq!(share(&carry, "carry_in_stages"), None);
    let unknown = known_size(a_box(0.0).guessed(7.0, 20.0).in_parts()).ask();
    assert!(unknown.changes().iter().all(|change| change.back.is_none()));
}

#[test]
fn of_what_is_not_for_today_it_says_nothing() {
    let answer = known_size(a_box(40.0).in_parts()).ask();
    assert_eq!(answer.outcome(), "do_not_lift");
    assert!(answer.changes().iter().all(|change| change.back.is_none()));
}

/// Bringing it closer or raising it is equally little trouble; the other changes keep their places.
#[test]
fn of_two_small_changes_the_one_that_eases_the_back_more_comes_first() {
    let moves_it = |step: &ChangeStep| {
        matches!(
            step,
            ChangeStep::BringCloser { .. }
                | ChangeStep::RaiseStart { .. }
                | ChangeStep::RaiseEnd { .. }
                | ChangeStep::LowerEnd { .. }
        )
    };
    let mut several = 0;
    for kg in [8.0, 10.0, 12.0, 13.0] {
        for reach in [35.0, 45.0, 55.0] {
            let example = known_size(a_box(kg).reach_cm(reach).in_parts());
            let answer = example.ask();
            let shares: Vec<f64> = answer
                .changes()
                .iter()
                .filter(|change| change.steps.len() == 1 && moves_it(&change.steps[0]))
                .filter_map(|change| change.back.map(BackShare::value))
                .collect();
            several += usize::from(shares.len() > 1);
            assert!(
                shares.windows(2).all(|pair| pair[0] <= pair[1] + 0.05),
                "{shares:?}"
            );
            let kinds = |changes: &[lifting::advise::change::Change]| -> Vec<&'static str> {
                changes
                    .iter()
                    .filter(|change| !moves_it(&change.steps[0]))
                    .map(|change| change.steps[0].id())
                    .collect()
            };
            let by_rules = judge(&example.request);
            assert_eq!(kinds(answer.changes()), kinds(by_rules.outcome.changes()));
        }
    }
    assert!(
        several > 0,
        "two small changes stand side by side somewhere"
    );
}

#[test]
fn a_share_is_what_is_left() {
    let left = |after, now| {
        BackShare::left(NewtonMetres::of(after), NewtonMetres::of(now)).map(BackShare::value)
    };
    assert_eq!(left(80.0, 100.0), Some(0.8));
    assert_eq!(left(-5.0, 100.0), Some(0.0));
    assert_eq!(left(10.0, 0.0), None);
}
