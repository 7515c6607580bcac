//! Each step of the judgement on moving a person: signs, who, the care plan, the worker's own body, the answer.

#![cfg(test)]

use judgement::moving::{Moving, a_move, ways};
use lifting::advise::advice::{Alternative, Caution, Urgency};
use lifting::body::{AgeBand, BackState, Balance, Condition, WarningSign};
use lifting::plan::Plan;
use lifting::quantity::{Kilograms, PainScore};
use lifting::reason::ReasonId;
use lifting::transfer::checks::{Check, StopSign};
use lifting::transfer::client::{CarePlan, ClientSign, Follows, Help, Move, WeightBearing};
use lifting::transfer::equipment::Equipment;
use lifting::transfer::signs;
use lifting::transfer::way::PeopleWay::*;

/// Part of the weight, follows, a steadying hand, belt and stand aid, the care plan covers it.
fn steadied() -> Moving {
    a_move(Move::BedToChair)
        .legs(WeightBearing::Part)
        .help(Help::SteadyOnly)
        .having(&[Equipment::Belt, Equipment::StandAid])
        .planned()
}

fn has(asked: &Moving, caution: Caution) -> bool {
    asked.advice().cautions.contains(&caution)
}

#[test]
fn a_sign_that_needs_help_now_ends_it() {
    for sign in [
        ClientSign::NewHipPain,
        ClientSign::HeadKnock,
        ClientSign::StrokeSigns,
    ] {
        let asked = steadied().sign(sign);
        let advice = asked.advice();
        assert_eq!(advice.outcome.id(), "seek_care", "{}", sign.id());
        assert_eq!(advice.outcome.urgency(), Urgency::Emergency);
        assert!(has(&asked, Caution::EmergencyNow) && has(&asked, Caution::ClientChangedReport));
    }
}

#[test]
fn a_new_sign_of_another_kind_is_reported_today_and_nothing_is_moved() {
    for sign in [ClientSign::Drowsy, ClientSign::Confused, ClientSign::Other] {
        let asked = steadied().sign(sign);
        let advice = asked.advice();
        assert_eq!(advice.outcome.id(), "do_not_lift", "{}", sign.id());
        assert_eq!(advice.outcome.urgency(), Urgency::SameDay);
        for caution in [Caution::ClientChangedReport, Caution::ReportToOffice] {
            assert!(advice.cautions.contains(&caution), "{}", sign.id());
        }
        assert!(advice.alternatives.contains(&Alternative::CallClinician));
    }
}

#[test]
fn on_the_floor_every_new_sign_is_an_emergency() {
    for sign in ClientSign::ALL {
        let how_soon = signs::how_soon(*sign, Move::FloorToChair);
        assert_eq!(
            how_soon,
            lifting::advise::advice::HowSoon::Emergency,
            "{}",
            sign.id()
        );
    }
}

#[test]
fn on_the_floor_look_first() {
    let unseen = a_move(Move::FloorToChair).workers(3).having_all();
    let advice = unseen.advice();
    assert_eq!(advice.outcome.id(), "do_not_lift");
    assert!(unseen.says(ReasonId::FloorNotChecked));
    assert!(has(&unseen, Caution::CheckInjuryFirst) && has(&unseen, Caution::NoManualFloorLift));
    let unhurt = unseen.with(|moving| moving.unhurt = Some(true));
    assert_eq!(unhurt.ways(), [HoistTwo]);
    let able = unhurt.legs(WeightBearing::Full);
    assert_eq!(able.ways(), [GuidedSelfRise, HoistTwo]);
    assert!(able.advice().checks.contains(&Check::LookedOver));
    assert!(able.says(ReasonId::NeverFromFloor));
}

#[test]
fn on_the_floor_without_hoist_and_help_the_office_is_called_today() {
    let alone = a_move(Move::FloorToChair).with(|moving| moving.unhurt = Some(true));
    let advice = alone.advice();
    assert_eq!(advice.outcome.id(), "do_not_lift");
    assert_eq!(advice.outcome.urgency(), Urgency::SameDay);
    assert!(has(&alone, Caution::TwoWorkers) && has(&alone, Caution::ReportToOffice));
    assert!(!has(&alone, Caution::EmergencyNow));
    assert!(advice.alternatives.contains(&Alternative::UseEquipment));
}

#[test]
fn the_workers_own_warning_sign_is_care_for_the_worker() {
    let asked = steadied().worker(|worker| {
        worker.signs.insert(WarningSign::SaddleNumb);
    });
    assert_eq!(asked.advice().outcome.urgency(), Urgency::Emergency);
    assert!(asked.says(ReasonId::SignEmergency));
    let today = steadied().worker(|worker| {
        worker.signs.insert(WarningSign::FeverUnwell);
    });
    assert_eq!(today.advice().outcome.urgency(), Urgency::SameDay);
    assert!(has(&today, Caution::SameDayAdvice));
}

#[test]
fn a_child_or_a_worker_after_surgery_is_not_advised() {
    let child = steadied().worker(|worker| worker.age = Some(AgeBand::Under16));
    assert_eq!(child.advice().outcome.id(), "refuse");
    let operated = steadied().worker(|worker| {
        worker.signs.insert(WarningSign::PostOpRecent);
    });
    assert_eq!(operated.advice().outcome.id(), "refuse");
    assert!(!operated.advice().alternatives.is_empty());
}

#[test]
fn not_as_the_care_plan_says_is_not_done_and_reported() {
    let changed = steadied().with(|moving| moving.care_plan = CarePlan::DiffersToday);
    let advice = changed.advice();
    assert_eq!(advice.outcome.id(), "do_not_lift");
    assert_eq!(advice.outcome.urgency(), Urgency::Routine);
    assert!(has(&changed, Caution::ClientChangedReport) && has(&changed, Caution::ReportToOffice));
}

#[test]
fn the_persons_no_ends_it() {
    let refusing = steadied().with(|moving| moving.agrees = Some(false));
    assert_eq!(refusing.advice().outcome.id(), "do_not_lift");
    assert!(refusing.says(ReasonId::ClientSaysNo));
}

#[test]
fn the_care_plan_names_ways_and_workers_and_only_makes_it_stricter() {
    assert_eq!(steadied().planned_ways(&[StandAid]).ways(), [StandAid]);
    let other = steadied().planned_ways(&[HoistTwo]);
    assert!(other.ways().is_empty() && other.says(ReasonId::CarePlanOtherWay));
    let two = steadied().with(|moving| {
        moving.care_plan = CarePlan::Covers {
            ways: None,
            workers: Some(2),
            is_old: false,
        };
    });
    assert!(two.ways().is_empty() && two.says(ReasonId::CarePlanMoreWorkers));
    assert!(has(&two, Caution::TwoWorkers));
    assert_eq!(two.workers(2).offer(StandAid).unwrap().workers, 2);
}

#[test]
fn alone_the_belt_takes_a_care_plan_and_with_two_it_does_not() {
    let unplanned = steadied().with(|moving| moving.care_plan = CarePlan::None);
    assert_eq!(unplanned.ways(), [StandAid]);
    assert!(unplanned.says(ReasonId::BeltAlone));
    assert_eq!(unplanned.workers(2).ways(), [StandAid, StandPivotBelt]);
    assert!(
        steadied().says(ReasonId::BeltByPlan),
        "and it says whose rule that is"
    );
}

// House rule, as for a plan of lifting past its date: limits stay, relaxations lapse.
#[test]
fn a_care_plan_past_its_date_forbids_as_before_and_unlocks_nothing() {
    let old = steadied().plan_old();
    assert_eq!(old.ways(), [StandAid], "no belt alone any more");
    assert!(old.says(ReasonId::CarePlanOld) && old.says(ReasonId::BeltAlone));
    assert!(!old.says(ReasonId::CarePlanCovers) && !old.says(ReasonId::BeltByPlan));
    assert!(has(&old, Caution::ReportToOffice));
    assert_eq!(old.workers(2).ways(), [StandAid, StandPivotBelt]);
    let belt_only = steadied().planned_ways(&[StandPivotBelt]);
    assert_eq!(belt_only.ways(), [StandPivotBelt]);
    let belt_only = belt_only.plan_old();
    assert!(belt_only.ways().is_empty() && belt_only.says(ReasonId::CarePlanOtherWay));
    assert!(!belt_only.advice().alternatives.is_empty());
}

#[test]
fn a_worker_in_severe_pain_or_a_flare_bears_nobody() {
    let flare = steadied().worker(|worker| worker.back_state = Some(BackState::Flare));
    assert_eq!(flare.ways(), [StandAid], "a device, not the belt alone");
    assert!(has(&flare, Caution::WorkerOwnBody));
    assert_eq!(flare.workers(2).ways(), [StandAid, StandPivotBelt]);
    for change in [
        (|worker| worker.pain.back = Some(PainScore::of(7))) as fn(&mut lifting::body::Person),
        |worker| worker.pain.back = None,
        |worker| worker.pain.shoulders = Some(PainScore::of(8)),
        |worker| worker.balance = Some(Balance::Poor),
        |worker| worker.balance = None,
        |worker| {
            worker.conditions.insert(Condition::Hernia);
        },
    ] {
        let asked = steadied().worker(change);
        assert_eq!(asked.ways(), [StandAid]);
        assert!(asked.says(ReasonId::WorkerBearsNothing));
    }
}

#[test]
fn a_worker_with_a_lesser_complaint_bears_less() {
    let bearing =
        |change: fn(&mut lifting::body::Person)| steadied().share(12.0 / 60.0).worker(change);
    assert!(bearing(|_| {}).ways().contains(&StandPivotBelt));
    for change in [
        (|worker| worker.pain.back = Some(PainScore::of(5))) as fn(&mut lifting::body::Person),
        |worker| worker.pain.knee_left = Some(PainScore::of(8)),
        |worker| {
            worker.conditions.insert(Condition::Osteoporosis);
        },
        |worker| {
            worker.conditions.insert(Condition::Pregnant);
        },
    ] {
        assert_eq!(bearing(change).ways(), [StandAid]);
    }
}

#[test]
fn the_workers_own_plan_holds() {
    let mut asked = steadied().share(8.0 / 60.0);
    assert!(asked.ways().contains(&StandPivotBelt));
    asked.request.plan = Some(Plan {
        max: Some(Kilograms::clamped(5.0)),
        ..Plan::blank()
    });
    assert_eq!(asked.ways(), [StandAid]);
    asked.request.plan = Some(Plan {
        pain_ceiling: Some(PainScore::of(3)),
        ..Plan::blank()
    });
    let sore = asked.worker(|worker| worker.pain.back = Some(PainScore::of(4)));
    assert_eq!(sore.ways(), [StandAid]);
    assert!(has(&sore, Caution::OverPainCeiling));
}

#[test]
fn equipment_not_there_or_not_trained_on_is_never_offered() {
    for what in Move::ALL {
        let bare = a_move(*what)
            .workers(4)
            .with(|moving| moving.unhurt = Some(true));
        for offer in bare.advice().outcome.offers() {
            assert!(offer.equipment.is_empty(), "{}", what.id());
        }
    }
    assert!(
        steadied()
            .with(|moving| moving.equipment.clear())
            .says(ReasonId::EquipmentMissing)
    );
}

#[test]
fn nobody_trained_there_only_stands_by() {
    assert!(steadied().workers(0).ways().is_empty());
    let alone = a_move(Move::BedToChair)
        .legs(WeightBearing::Full)
        .workers(0);
    assert_eq!(alone.ways(), [StandBy]);
}

#[test]
fn catching_is_never_advised() {
    let advice = a_move(Move::Catch)
        .workers(4)
        .having_all()
        .planned()
        .advice();
    assert_eq!(advice.outcome.id(), "do_not_lift");
    assert_eq!(advice.outcome.urgency(), Urgency::None);
    assert!(!advice.alternatives.is_empty());
}

#[test]
fn sitting_up_is_guided_only_for_who_helps() {
    let partly = a_move(Move::SitUp).help(Help::SteadyOnly);
    assert_eq!(partly.ways(), [GuidedSelfRise]);
    let weak = partly.clone().arms(false);
    assert!(weak.ways().is_empty());
    assert_eq!(
        weak.having(&[Equipment::AdjustableBed]).ways(),
        [GuidedSelfRise]
    );
    let lost = partly.follows(Follows::Unsure).having_all().workers(2);
    assert_eq!(lost.ways(), [HoistTwo]);
}

#[test]
fn who_walks_alone_but_needs_lifting_today_is_not_left_to_it() {
    let lifted = a_move(Move::BedToChair)
        .legs(WeightBearing::Full)
        .help(Help::SomeLift)
        .having(&[Equipment::StandAid]);
    assert_eq!(lifted.ways(), [StandAid]);
    assert!(lifted.says(ReasonId::CannotAlone));
    let unpredictable = lifted.help(Help::Unpredictable);
    assert!(unpredictable.ways().is_empty() && unpredictable.says(ReasonId::HelpUnpredictable));
}

#[test]
fn a_very_heavy_person_takes_a_look_at_the_rated_load() {
    let heavy = steadied().of_kg(140.0);
    assert!(heavy.says(ReasonId::CheckRatedLoad));
    assert!(heavy.advice().checks.contains(&Check::RatedLoad));
    assert!(!steadied().says(ReasonId::CheckRatedLoad));
}

#[test]
fn with_every_move_come_checks_and_signs_to_stop() {
    let advice = steadied().advice();
    assert_eq!(ways(&advice).first(), Some(&StandAid));
    for check in [
        Check::Agrees,
        Check::Brakes,
        Check::Shoes,
        Check::Lines,
        Check::StrongerSide,
    ] {
        assert!(advice.checks.contains(&check), "{}", check.id());
    }
    assert_eq!(advice.stop_signs, StopSign::ALL);
    assert!(
        steadied()
            .sign(ClientSign::Dizzy)
            .advice()
            .checks
            .is_empty()
    );
}
