//! What each way of the rows takes, for typing a care plan in; and work on a limb as the worker's own lift.

#![cfg(test)]
#![allow(clippy::unwrap_used, reason = "a test may stop at the first surprise")]

use lifting::body::Person;
use lifting::task::LoadMass;
use lifting::transfer::client::{ClientMass, Limb, Move, Transfer};
use lifting::transfer::moves::{equipment_of, takings};
use lifting::transfer::way::PeopleWay;
use lifting::transfer::{TransferRequest, own_lift};

#[test]
fn no_care_plan_can_name_a_lift_by_hand_from_the_floor() {
    let ways: Vec<PeopleWay> = takings(Move::FloorToChair)
        .iter()
        .map(|one| one.way)
        .collect();
    assert!(!ways.is_empty());
    assert!(!ways.contains(&PeopleWay::ManualLift));
    assert!(takings(Move::Catch).is_empty());
}

#[test]
fn a_hoist_takes_two_workers_at_least() {
    // OSHA 3182, figures 1, 2, 4, 5 and 6: "full sling lift, two caregivers".
    for what in Move::ALL {
        for one in takings(*what) {
            if one.way == PeopleWay::HoistTwo {
                assert!(one.workers >= 2, "{what:?}");
            }
        }
    }
}

#[test]
fn all_equipment_that_a_way_takes_is_asked_for() {
    for what in Move::ALL {
        for one in takings(*what) {
            for piece in one.equipment {
                assert!(equipment_of(*what).contains(&piece), "{what:?} {piece:?}");
            }
        }
    }
}

#[test]
fn a_held_limb_is_lifted_as_its_published_share_of_the_mass() {
    // Waters and others, 2009 and 2011: a leg 15.7 %, an arm 5.1 % of body mass. 80 kg: 12.56 kg and 4.08 kg.
    for (limb, kilograms) in [(Limb::Leg, 12.56), (Limb::Arm, 4.08)] {
        let own = own_lift(&request(Move::HoldLimb, Some(limb))).unwrap();
        let LoadMass::Known(mass) = own.task.mass else {
            panic!("the mass is known: {:?}", own.task.mass);
        };
        assert!((mass.value() - kilograms).abs() < 1e-9, "{limb:?} {mass:?}");
    }
}

#[test]
fn a_move_without_a_posture_of_its_own_has_no_such_lift() {
    assert!(own_lift(&request(Move::BedToChair, None)).is_none());
    let mut unknown = request(Move::HoldLimb, Some(Limb::Leg));
    unknown.moving.mass = None;
    assert!(own_lift(&unknown).is_none());
}

fn request(what: Move, limb: Option<Limb>) -> TransferRequest {
    TransferRequest {
        worker: Person::default(),
        plan: None,
        moving: Transfer {
            mass: ClientMass::new(80.0).ok(),
            limb,
            ..Transfer::of(what)
        },
    }
}
