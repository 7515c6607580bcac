//! What next in the plan. The rule after the pain-monitoring model: up after two good sessions, hold when pain
//! was acceptable, down when it passed the limit, did not settle, or rose over the week. A plan's numbers win.

#![cfg(test)]

use judgement::example::{kg, pain, weeks};
use lifting::body::{BackState, Person, WarningSign};
use lifting::plan::{Plan, Validity};
use lifting::progress::{History, Progress, Proposal, Trend, propose, step_size};
use lifting::reason::{ReasonId, Value};
use lifting::task::HeightWord;

fn plan() -> Plan {
    Plan {
        max: Some(kg(10.0)),
        current: Some(kg(5.0)),
        step: Some(kg(1.0)),
        ..Plan::blank()
    }
}

/// Two sessions in plan, pain up to 3, settled by morning, no rise.
fn good() -> History {
    History {
        sessions_at_level: Some(2),
        worst_during: Some(pain(3)),
        settled_next_morning: Some(true),
        week_trend: Some(Trend::Same),
        flare_today: Some(false),
    }
}

fn next(history: History) -> Proposal {
    propose(&Person::default(), Some(&plan()), &history)
}

fn next_with(plan: &Plan) -> Proposal {
    propose(&Person::default(), Some(plan), &good())
}

#[track_caller]
fn is(proposal: &Proposal, progress: Progress, because: &[ReasonId]) {
    assert_eq!(proposal.progress, progress);
    let told: Vec<ReasonId> = proposal.reasons.iter().map(|reason| reason.id).collect();
    assert_eq!(told, because);
}

mod up {
    use super::*;

    #[test]
    fn after_two_good_sessions() {
        is(
            &next(good()),
            Progress::StepUp,
            &[ReasonId::TwoGoodSessions],
        );
        let more = History {
            sessions_at_level: Some(5),
            worst_during: Some(pain(0)),
            week_trend: Some(Trend::Down),
            ..good()
        };
        is(&next(more), Progress::StepUp, &[ReasonId::TwoGoodSessions]);
    }

    #[test]
    fn to_the_plans_ceiling_and_not_over_it() {
        let at = |current| {
            next_with(&Plan {
                current: Some(kg(current)),
                ..plan()
            })
        };
        is(&at(9.0), Progress::StepUp, &[ReasonId::TwoGoodSessions]);
        is(&at(9.5), Progress::Hold, &[ReasonId::AtCeiling]);
        assert_eq!(at(9.5).reasons[0].values, [("max", Value::Mass(kg(10.0)))]);
        is(
            &next_with(&Plan {
                max: None,
                ..plan()
            }),
            Progress::StepUp,
            &[ReasonId::TwoGoodSessions],
        );
    }

    /// A proposal knows no height, so that the strictest of the plan's ceilings holds (house rule).
    #[test]
    fn to_the_strictest_ceiling_of_any_height_and_not_over_it() {
        let with = |floor: f64| {
            next_with(&Plan {
                max_by_height: [(HeightWord::Floor, kg(floor)), (HeightWord::Waist, kg(9.0))]
                    .into(),
                ..plan()
            })
        };
        is(&with(6.0), Progress::StepUp, &[ReasonId::TwoGoodSessions]);
        is(&with(5.5), Progress::Hold, &[ReasonId::AtCeiling]);
        assert_eq!(with(5.5).reasons[0].values, [("max", Value::Mass(kg(5.5)))]);
        let general = Plan {
            max: None,
            max_by_height: [(HeightWord::Floor, kg(5.0))].into(),
            ..plan()
        };
        is(&next_with(&general), Progress::Hold, &[ReasonId::AtCeiling]);
    }

    #[test]
    fn never_past_a_locked_step() {
        let locked = Plan {
            steps_locked: true,
            ..plan()
        };
        is(
            &next_with(&locked),
            Progress::Hold,
            &[ReasonId::StepsLocked],
        );
    }

    #[test]
    fn not_on_a_plan_past_its_review_date_even_within_the_grace() {
        let validity = Validity::Expired {
            overdue: Some(weeks(1.0)),
        };
        is(
            &next_with(&Plan { validity, ..plan() }),
            Progress::Hold,
            &[ReasonId::PlanExpired],
        );
    }

    #[test]
    fn not_without_a_plan_or_a_level() {
        is(
            &propose(&Person::default(), None, &good()),
            Progress::Hold,
            &[ReasonId::NoLevelKnown],
        );
        let no_level = Plan {
            current: None,
            ..plan()
        };
        is(
            &next_with(&no_level),
            Progress::Hold,
            &[ReasonId::NoLevelKnown],
        );
    }
}

mod hold {
    use super::*;

    #[test]
    fn when_pain_was_4_or_5_and_settled() {
        for score in [4, 5] {
            let proposal = next(History {
                worst_during: Some(pain(score)),
                ..good()
            });
            is(&proposal, Progress::Hold, &[ReasonId::PainAcceptableDuring]);
            assert_eq!(
                proposal.reasons[0].values,
                [("pain", Value::Pain(pain(score)))]
            );
        }
    }

    #[test]
    fn after_fewer_than_two_sessions() {
        for sessions in [0, 1] {
            let proposal = next(History {
                sessions_at_level: Some(sessions),
                ..good()
            });
            is(&proposal, Progress::Hold, &[ReasonId::TooFewSessions]);
        }
    }

    #[test]
    fn when_anything_about_the_sessions_is_not_known() {
        for history in [
            History {
                sessions_at_level: None,
                ..good()
            },
            History {
                worst_during: None,
                ..good()
            },
            History {
                settled_next_morning: None,
                ..good()
            },
            History {
                week_trend: None,
                ..good()
            },
        ] {
            is(
                &next(history),
                Progress::Hold,
                &[ReasonId::HistoryIncomplete],
            );
        }
    }

    #[test]
    fn a_flare_not_asked_is_no_flare_but_nothing_known_holds() {
        is(
            &next(History {
                flare_today: None,
                ..good()
            }),
            Progress::StepUp,
            &[ReasonId::TwoGoodSessions],
        );
        is(
            &next(History::default()),
            Progress::Hold,
            &[ReasonId::HistoryIncomplete],
        );
    }

    #[test]
    fn with_an_open_warning_sign() {
        for (sign, because) in [
            (WarningSign::NightPain, ReasonId::SignSameDay),
            (WarningSign::SaddleNumb, ReasonId::SignEmergency),
        ] {
            let person = Person {
                signs: [sign].into(),
                ..Person::default()
            };
            is(
                &propose(&person, Some(&plan()), &good()),
                Progress::Hold,
                &[because],
            );
        }
    }
}

mod down {
    use super::*;

    #[test]
    fn when_pain_passed_5() {
        for score in 6..=10 {
            let proposal = next(History {
                worst_during: Some(pain(score)),
                ..good()
            });
            is(&proposal, Progress::StepDown, &[ReasonId::PainOverDuring]);
            let values = [
                ("pain", Value::Pain(pain(score))),
                ("max", Value::Pain(pain(5))),
            ];
            assert_eq!(proposal.reasons[0].values, values);
        }
    }

    #[test]
    fn when_it_had_not_settled_by_next_morning() {
        let history = History {
            settled_next_morning: Some(false),
            ..good()
        };
        is(&next(history), Progress::StepDown, &[ReasonId::NotSettled]);
    }

    #[test]
    fn when_the_week_rose() {
        let history = History {
            week_trend: Some(Trend::Up),
            ..good()
        };
        is(&next(history), Progress::StepDown, &[ReasonId::WeekRising]);
    }

    #[test]
    fn in_a_flare_however_it_was_told() {
        let history = History {
            flare_today: Some(true),
            ..good()
        };
        is(
            &next(history),
            Progress::StepDown,
            &[ReasonId::FlareStepDown],
        );
        let person = Person {
            back_state: Some(BackState::Flare),
            ..Person::default()
        };
        is(
            &propose(&person, Some(&plan()), &good()),
            Progress::StepDown,
            &[ReasonId::FlareStepDown],
        );
        let volatile = Person {
            back_state: Some(BackState::Volatile),
            ..Person::default()
        };
        is(
            &propose(&volatile, Some(&plan()), &good()),
            Progress::StepUp,
            &[ReasonId::TwoGoodSessions],
        );
    }

    #[test]
    fn even_when_something_else_would_hold_and_every_reason_is_told() {
        let history = History {
            sessions_at_level: Some(1),
            worst_during: Some(pain(8)),
            settled_next_morning: Some(false),
            week_trend: Some(Trend::Up),
            flare_today: Some(true),
        };
        let down = [
            ReasonId::FlareStepDown,
            ReasonId::PainOverDuring,
            ReasonId::NotSettled,
            ReasonId::WeekRising,
        ];
        is(&next(history), Progress::StepDown, &down);
    }

    #[test]
    fn even_without_a_plan() {
        let history = History {
            settled_next_morning: Some(false),
            ..good()
        };
        is(
            &propose(&Person::default(), None, &history),
            Progress::StepDown,
            &[ReasonId::NotSettled],
        );
    }
}

mod the_plans_numbers {
    use super::*;

    fn with_ceiling(score: u8, worst: u8) -> Proposal {
        let plan = Plan {
            pain_ceiling: Some(pain(score)),
            ..plan()
        };
        let history = History {
            worst_during: Some(pain(worst)),
            ..good()
        };
        propose(&Person::default(), Some(&plan), &history)
    }

    #[test]
    fn a_pain_ceiling_of_the_plan_is_the_limit_during() {
        is(
            &with_ceiling(2, 3),
            Progress::StepDown,
            &[ReasonId::PainOverDuring],
        );
        is(
            &with_ceiling(3, 3),
            Progress::StepUp,
            &[ReasonId::TwoGoodSessions],
        );
        is(
            &with_ceiling(7, 6),
            Progress::Hold,
            &[ReasonId::PainAcceptableDuring],
        );
    }

    #[test]
    fn one_step_is_the_smaller_of_a_tenth_and_1_kg_unless_the_plan_says() {
        let step = |current, set: Option<f64>| {
            step_size(&Plan {
                current: Some(kg(current)),
                step: set.map(kg),
                ..Plan::blank()
            })
        };
        assert_eq!(step(5.0, None), Some(kg(0.5)));
        assert_eq!(step(10.0, None), Some(kg(1.0)));
        assert_eq!(step(20.0, None), Some(kg(1.0)));
        assert_eq!(step(5.0, Some(2.0)), Some(kg(2.0)));
        assert_eq!(step_size(&Plan::blank()), None);
    }
}
