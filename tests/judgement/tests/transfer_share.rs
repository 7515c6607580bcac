//! How much of a person one worker takes: the published limit and what lowers it, shares, limbs, workers.

#![cfg(test)]

use judgement::moving::{a_move, ways};
use lifting::advise::advice::Caution;
use lifting::quantity::Kilograms;
use lifting::reason::ReasonId;
use lifting::transfer::client::{Follows, Help, Limb, Move, WeightBearing};
use lifting::transfer::equipment::Equipment;
use lifting::transfer::limit::{BEST, Hindrance, LoweredBy, ManualLimit};
use lifting::transfer::way::PeopleWay::{self, *};

const BELT: &[Equipment] = &[Equipment::Belt];

/// Kilograms of so many pounds.
fn pounds(pounds: f64) -> f64 {
    pounds * 0.453_592_37
}

fn pivot(share: f64) -> judgement::moving::Moving {
    a_move(Move::BedToChair)
        .legs(WeightBearing::Part)
        .share(share)
        .having(BELT)
        .planned()
}

#[test]
fn the_limit_is_35_pounds_and_what_lowers_it_lowers_it_to_held_figures() {
    assert!((BEST.value() - pounds(35.0)).abs() < 0.05);
    for (by, most) in [
        (vec![], 15.9),
        (vec![LoweredBy::Twisted], 10.1),
        (vec![LoweredBy::OneHand], 5.03),
        (vec![LoweredBy::Twisted, LoweredBy::ArmsExtended], 5.03),
        (vec![LoweredBy::Twisted, LoweredBy::Twisted], 10.1),
    ] {
        let limit = ManualLimit::under(by.clone(), None);
        assert!(
            (limit.each.value() - most).abs() < 1e-9,
            "{by:?}: {limit:?}"
        );
    }
    let own = ManualLimit::under(vec![], Some(Kilograms::clamped(7.0)));
    assert!(
        (own.each.value() - 7.0).abs() < 1e-9,
        "the worker's own plan"
    );
}

#[test]
fn workers_are_rounded_up_as_in_the_published_example() {
    // A person of 180 lb who takes half: 90 lb, 2.6 times the limit, so three workers (Waters 2007 as reported).
    let limit = ManualLimit::under(vec![], None);
    let load = Kilograms::clamped(pounds(90.0));
    assert_eq!(limit.workers_for(load), Some(3));
    let asked = pivot(0.5).of_kg(pounds(180.0));
    assert!(asked.clone().workers(1).ways().is_empty());
    assert!(asked.clone().workers(2).ways().is_empty());
    assert_eq!(asked.workers(3).offer(StandPivotBelt).unwrap().workers, 3);
}

#[test]
fn at_the_limit_it_goes_and_above_it_never() {
    let at = pivot(15.9 / 60.0);
    assert_eq!(at.ways(), [StandPivotBelt]);
    assert!(at.says(ReasonId::ShareWithinLimit));
    let above = pivot(15.95 / 60.0);
    assert!(above.ways().is_empty() && above.says(ReasonId::ShareOverLimit));
    let advice = above.advice();
    assert!(advice.cautions.contains(&Caution::Over35lbEquipment));
    let device = above.having(&[Equipment::StandAid]);
    assert_eq!(device.ways(), [StandAid], "equipment instead");
}

#[test]
fn part_of_the_weight_without_a_known_share_takes_a_device() {
    let unsaid = a_move(Move::BedToChair)
        .legs(WeightBearing::Part)
        .having(&[Equipment::Belt, Equipment::StandAid])
        .planned();
    assert_eq!(unsaid.ways(), [StandAid]);
    assert_eq!(unsaid.clone().help(Help::SomeLift).ways(), [StandAid]);
    assert_eq!(
        unsaid.help(Help::SteadyOnly).ways(),
        [StandAid, StandPivotBelt]
    );
}

#[test]
fn a_share_of_a_mass_nobody_knows_is_over_the_limit() {
    let unknown = pivot(0.1).with(|moving| moving.mass = None);
    assert!(unknown.ways().is_empty() && unknown.says(ReasonId::ClientMassNotKnown));
    let steadied = pivot(0.0).with(|moving| moving.mass = None);
    assert_eq!(steadied.ways(), [StandPivotBelt], "nothing is borne");
}

#[test]
fn each_hindrance_lowers_the_limit_and_says_so() {
    for hindrance in Hindrance::ALL {
        let asked = pivot(12.0 / 60.0);
        assert_eq!(asked.ways(), [StandPivotBelt]);
        let hindered = asked.with(|moving| {
            moving.hindrances.insert(*hindrance);
        });
        assert!(hindered.ways().is_empty(), "{}", hindrance.id());
        assert!(hindered.says(ReasonId::LimitLowered), "{}", hindrance.id());
    }
}

/// By hand, held for half a minute.
fn limb(limb: Limb, mass: f64) -> judgement::moving::Moving {
    a_move(Move::HoldLimb)
        .of_kg(mass)
        .held_min(0.5)
        .with(|moving| moving.limb = Some(limb))
        .having(&[Equipment::AdjustableBed])
}

#[test]
fn a_leg_is_15_7_and_an_arm_5_1_percent_of_the_mass() {
    // 250 lb: a leg of 39 lb, over 35 lb (printed example); 15.9 / 0.157 = 101.3 kg, 15.9 / 0.051 = 311.8 kg.
    for (which, mass, by_hand) in [
        (Limb::Leg, pounds(250.0), false),
        (Limb::Leg, 101.2, true),
        (Limb::Leg, 101.4, false),
        (Limb::Arm, 250.0, true),
        (Limb::Arm, 312.0, false),
    ] {
        let asked = limb(which, mass);
        let reached = !asked.says(ReasonId::ShareOverLimit);
        assert_eq!(reached, by_hand, "{} of {mass} kg", which.id());
    }
    let load = |which, mass| {
        let advice = limb(which, mass).advice();
        let mass = advice
            .reasons
            .iter()
            .find(|reason| reason.id == ReasonId::LimbMass);
        match mass.and_then(|reason| reason.values.first().copied()) {
            Some(("share", lifting::reason::Value::Mass(load))) => load.value(),
            other => panic!("{other:?}"),
        }
    };
    assert!((load(Limb::Leg, 80.0) - 12.56).abs() < 1e-9);
    assert!((load(Limb::Arm, 80.0) - 4.08).abs() < 1e-9);
}

#[test]
fn which_limb_and_how_long_are_taken_on_the_careful_side() {
    let leg = limb(Limb::Leg, 80.0);
    let unsaid = leg.clone().with(|moving| moving.limb = None);
    assert_eq!(leg.advice(), unsaid.advice());
    // 80 kg: 12.6 kg of leg, over the 10.1 kg of a longer hold.
    for held in [Some(1.5), None] {
        let longer = leg.clone().with(|moving| {
            moving.hold = held.and_then(|held| lifting::quantity::Minutes::new(held).ok());
        });
        assert!(longer.says(ReasonId::ShareOverLimit), "{held:?}");
    }
    let arm = limb(Limb::Arm, 60.0);
    assert_eq!(arm.ways(), [ManualLift]);
    let too_long = arm.held_min(2.5);
    assert!(too_long.ways().is_empty() && too_long.says(ReasonId::HeldTooLong));
}

#[test]
fn a_limb_of_somebody_who_does_not_follow_is_not_held_by_hand() {
    let resisting = limb(Limb::Arm, 60.0).follows(Follows::Unsure);
    assert!(resisting.ways().is_empty() && resisting.says(ReasonId::LimitNeedsFollowing));
    let sling = resisting
        .workers(2)
        .having(&[Equipment::Hoist, Equipment::LimbSling]);
    assert_eq!(sling.ways(), [HoistTwo]);
}

#[test]
fn stockings_and_shoes_leave_one_hand_to_hold_and_the_lower_leg_weighs_6_1_percent() {
    for what in [Move::Stockings, Move::Shoes, Move::WashLow] {
        // 5.03 / 0.061 = 82.5 kg.
        let lighter = a_move(what).of_kg(82.0);
        assert!(!lighter.says(ReasonId::ShareOverLimit), "{}", what.id());
        let heavier = a_move(what).of_kg(83.0);
        assert!(heavier.says(ReasonId::ShareOverLimit), "{}", what.id());
        let rested = heavier.having(&[Equipment::FootStool]);
        assert!(!rested.says(ReasonId::ShareOverLimit), "{}", what.id());
        assert_eq!(rested.ways(), [ManualLift], "{}", what.id());
    }
}

#[test]
fn low_work_that_the_workers_own_lifting_figures_do_not_allow_is_ruled_out() {
    let sore = a_move(Move::WashLow).worker(|worker| {
        worker.pain.back = Some(lifting::quantity::PainScore::of(8));
        worker.pain.knee_left = Some(lifting::quantity::PainScore::of(8));
        worker.pain.knee_right = Some(lifting::quantity::PainScore::of(8));
        worker.balance = Some(lifting::body::Balance::Fair);
    });
    let stool = sore.having(&[Equipment::FootStool]);
    assert!(stool.says(ReasonId::LowWorkTooMuch));
    assert!(ways(&stool.advice()).is_empty());
}

#[test]
fn no_way_by_hand_is_offered_outside_limbs_and_named_plans() {
    for what in Move::ALL {
        let asked = a_move(*what)
            .with(|moving| moving.unhurt = Some(true))
            .legs(WeightBearing::Part)
            .having_all()
            .workers(3)
            .planned();
        let by_hand = asked.ways().contains(&PeopleWay::ManualLift);
        let limb = matches!(
            what,
            Move::HoldLimb | Move::Stockings | Move::Shoes | Move::WashLow
        );
        assert_eq!(by_hand, limb, "{}", what.id());
    }
}
