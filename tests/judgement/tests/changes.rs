//! Step 8. Each kind of change to how and from where, with the smallest value that is enough; less at a time
//! is in `changes_less_at_a_time.rs`. The limits are worked out by hand from
//! the printed equation: from the floor to 75 cm, once, fair grip, a reach of H cm allows 372.54/H kg.

#![cfg(test)]

use judgement::example::{Answer, Example, a_box, cm, kg};
use lifting::advise::change::ChangeStep;
use lifting::body::{Balance, Kneeling};
use lifting::plan::Plan;
use lifting::quantity::Degrees;
use lifting::task::{Coupling, HeightWord, ReachWord};
use lifting::way::Way;

/// Nothing from low down is left: a severe back, severe knees, no kneeling, fair balance.
fn no_low_way(mass: f64) -> Example {
    a_box(mass)
        .back(8)
        .knees(8, 8)
        .kneels(Kneeling::No)
        .balance(Balance::Fair)
}

fn max(mass: f64) -> Plan {
    Plan {
        max: Some(kg(mass)),
        ..Plan::blank()
    }
}

/// The first way of the change of this kind.
fn first_then(answer: &Answer, kind: &str) -> Option<Way> {
    let change = answer
        .changes()
        .iter()
        .find(|change| change.steps[0].id() == kind)?;
    Some(change.ways.first)
}

mod find_mass {
    use super::*;

    #[test]
    fn goes_on_up_to_the_limit_in_tenths_downward() {
        let found = a_box(0.0).guessed(7.0, 20.0).ask().change("find_mass");
        assert_eq!(
            found,
            Some(ChangeStep::FindMass {
                go_on_up_to: kg(12.4)
            })
        );
        let no_idea = a_box(0.0).no_idea_of_the_mass().ask().change("find_mass");
        assert_eq!(
            no_idea,
            Some(ChangeStep::FindMass {
                go_on_up_to: kg(12.4)
            })
        );
    }

    #[test]
    fn goes_on_up_to_the_upper_end_when_all_of_it_may_be_lifted() {
        let found = a_box(0.0).guessed(3.0, 5.55).ask().change("find_mass");
        assert_eq!(
            found,
            Some(ChangeStep::FindMass {
                go_on_up_to: kg(5.55)
            })
        );
    }

    #[test]
    fn goes_on_up_to_the_plans_ceiling() {
        let found = a_box(0.0)
            .guessed(3.0, 20.0)
            .plan(max(7.0))
            .ask()
            .change("find_mass");
        assert_eq!(
            found,
            Some(ChangeStep::FindMass {
                go_on_up_to: kg(7.0)
            })
        );
    }

    #[test]
    fn keeps_the_way_used_to_test_first_where_it_is_allowed() {
        let answer = a_box(0.0).guessed(7.0, 20.0).ask();
        assert_eq!(
            first_then(&answer, "find_mass"),
            Some(Way::HalfKneelingLunge)
        );
        let no_kneeling = a_box(0.0).guessed(7.0, 20.0).kneels(Kneeling::No).ask();
        assert_ne!(
            first_then(&no_kneeling, "find_mass"),
            Some(Way::HalfKneelingLunge)
        );
    }

    #[test]
    fn offers_each_way_once() {
        let answer = a_box(0.0).guessed(7.0, 20.0).ask();
        let change = answer
            .changes()
            .iter()
            .find(|change| change.steps[0].id() == "find_mass");
        let mut ways: Vec<Way> = change.unwrap().ways.iter().collect();
        assert_eq!(ways[0], Way::HalfKneelingLunge);
        ways.sort();
        assert_eq!(ways, [Way::HipHinge, Way::Squat, Way::HalfKneelingLunge]);
    }

    #[test]
    fn is_no_change_when_even_the_lower_end_is_too_much() {
        assert_eq!(
            a_box(0.0).guessed(13.0, 20.0).ask().change("find_mass"),
            None
        );
        assert!(
            a_box(0.0)
                .guessed(12.4, 20.0)
                .ask()
                .change("find_mass")
                .is_some()
        );
    }

    #[test]
    fn is_no_change_for_a_mass_that_is_known() {
        assert_eq!(a_box(13.0).ask().change("find_mass"), None);
    }

    #[test]
    fn what_is_too_wide_and_not_known_goes_on_up_to_a_trifle() {
        let found = a_box(0.0)
            .no_idea_of_the_mass()
            .task(|task| task.width = Some(cm(80.0)))
            .ask()
            .change("find_mass");
        assert_eq!(
            found,
            Some(ChangeStep::FindMass {
                go_on_up_to: kg(2.3)
            })
        );
    }
}

mod bring_closer {
    use super::*;

    #[test]
    fn in_steps_of_5_cm_no_nearer_than_needed() {
        // 372.54/40 = 9.3 kg, 372.54/35 = 10.6 kg.
        let closer = a_box(10.0)
            .reach(ReachWord::Medium)
            .ask()
            .change("bring_closer");
        assert_eq!(closer, Some(ChangeStep::BringCloser { to: cm(35.0) }));
    }

    #[test]
    fn out_of_far_reach_when_only_that_stands_against_it() {
        // 372.54/63 = 5.9 kg; from 60 cm on arms are nearly straight.
        let closer = a_box(5.0)
            .reach(ReachWord::Far)
            .ask()
            .change("bring_closer");
        assert_eq!(closer, Some(ChangeStep::BringCloser { to: cm(55.0) }));
    }

    #[test]
    fn not_nearer_than_25_cm() {
        // 372.54/25 = 14.9 kg.
        let closer = a_box(14.0).ask().change("bring_closer");
        assert_eq!(closer, Some(ChangeStep::BringCloser { to: cm(25.0) }));
        assert_eq!(a_box(15.0).ask().change("bring_closer"), None);
    }

    #[test]
    fn not_nearer_than_its_depth_lets() {
        let deep = a_box(10.0)
            .reach(ReachWord::Medium)
            .task(|task| task.depth = Some(cm(40.0)));
        assert_eq!(
            deep.ask().change("bring_closer"),
            None,
            "25 cm and half of 40 are 45 cm"
        );
    }
}

mod grip_and_twist {
    use super::*;

    #[test]
    fn a_better_grip_for_what_is_hard_to_hold() {
        assert_eq!(
            a_box(6.0).hard_to_hold().ask().change("better_grip"),
            Some(ChangeStep::BetterGrip)
        );
    }

    #[test]
    fn a_better_grip_where_the_grip_alone_stands_against_it() {
        // 12.418 × 0.90/0.95 = 11.76 kg with a poor grip.
        let poor = a_box(12.0)
            .task(|task| task.coupling = Some(Coupling::Poor))
            .ask();
        assert_eq!(poor.change("better_grip"), Some(ChangeStep::BetterGrip));
        assert_eq!(
            a_box(13.0).ask().change("better_grip"),
            None,
            "the grip is fair"
        );
    }

    #[test]
    fn the_feet_turn_where_twist_alone_stands_against_it() {
        // AM at 45 degrees is 0.856: 10.6 kg.
        let twisted = a_box(11.0)
            .task(|task| task.twist = Some(Degrees::clamped(45.0)))
            .ask();
        assert_eq!(twisted.change("turn_feet"), Some(ChangeStep::TurnFeet));
        assert_eq!(a_box(13.0).ask().change("turn_feet"), None);
    }
}

mod heights {
    use super::*;

    #[test]
    fn the_start_is_raised_in_steps_of_5_cm_no_higher_than_needed() {
        // From V to 75 cm: 18.208 × (1 − 0.003·(75 − V)) × (0.82 + 4.5/(75 − V)): 12.72 kg at 5 cm, 13.03 at 10.
        let raised = a_box(13.0).ask().change("raise_start");
        assert_eq!(raised, Some(ChangeStep::RaiseStart { to: cm(10.0) }));
    }

    #[test]
    fn the_start_is_raised_to_the_knuckles_when_no_low_way_is_left() {
        // 0.42 of stature: 78.5 cm for a tall man, 69.3 cm at 165 cm.
        let answer = no_low_way(6.0).ask();
        assert_eq!(answer.outcome(), "do_not_lift");
        assert_eq!(
            answer.change("raise_start"),
            Some(ChangeStep::RaiseStart { to: cm(80.0) })
        );
        assert_eq!(first_then(&answer, "raise_start"), Some(Way::Upright));
        let known = no_low_way(6.0).stature(165.0).ask().change("raise_start");
        assert_eq!(known, Some(ChangeStep::RaiseStart { to: cm(70.0) }));
    }

    #[test]
    fn the_end_is_lowered_no_further_than_needed() {
        // Above the shoulder is above 125.05 cm for a small woman.
        let up = a_box(3.0)
            .from(HeightWord::Waist)
            .to_cm(170.0)
            .shoulders(8)
            .ask();
        assert_eq!(up.outcome(), "do_not_lift");
        assert_eq!(
            up.change("lower_end"),
            Some(ChangeStep::LowerEnd { to: cm(125.0) })
        );
    }

    /// At the end V is 5 cm: 12.72 kg; 10 cm: 13.03 kg. The start at 75 cm allows more.
    #[test]
    fn the_end_is_raised_no_higher_than_needed() {
        let down = a_box(13.0).from_cm(75.0).to_cm(0.0).ask();
        assert_eq!(
            down.change("raise_end"),
            Some(ChangeStep::RaiseEnd { to: cm(10.0) })
        );
    }

    /// 0.42 of stature: 78.5 cm for a tall man.
    #[test]
    fn the_end_is_raised_to_the_knuckles_when_no_low_way_is_left() {
        let down = no_low_way(6.0).from(HeightWord::Waist).to_cm(0.0).ask();
        assert_eq!(down.outcome(), "do_not_lift");
        assert_eq!(
            down.change("raise_end"),
            Some(ChangeStep::RaiseEnd { to: cm(80.0) })
        );
        assert_eq!(first_then(&down, "raise_end"), Some(Way::Upright));
        assert_eq!(down.change("raise_start"), None);
    }

    #[test]
    fn an_end_that_was_not_said_is_not_raised() {
        assert_eq!(a_box(13.0).ask().change("raise_end"), None);
    }

    #[test]
    fn an_end_that_was_not_said_is_not_lowered() {
        let high = a_box(3.0).from(HeightWord::Overhead).shoulders(8).ask();
        assert_eq!(high.change("lower_end"), None);
    }
}
