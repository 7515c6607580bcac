//! What must hold for every move of a person. Each returns what was broken, in words.

use lifting::advise::advice::{Caution, HowSoon, Urgency};
use lifting::body::AgeBand;
use lifting::transfer::TransferRequest;
use lifting::transfer::advice::{MoveAdvice, MoveOutcome};
use lifting::transfer::client::{CarePlan, Help, Move};
use lifting::transfer::equipment::Equipment;
use lifting::transfer::way::PeopleWay;

/// The published limit for one worker, in kg: 35 lb.
const LIMIT_KG: f64 = 15.9;

/// Every law this advice breaks; empty when it keeps them all.
#[must_use]
pub fn broken(request: &TransferRequest, advice: &MoveAdvice) -> Vec<String> {
    let mut broken = Vec::new();
    let mut demand = |holds: bool, law: &str| {
        if !holds {
            broken.push(law.to_owned());
        }
    };
    let moving = &request.moving;
    let offers = advice.outcome.offers();
    let floor = moving.what == Move::FloorToChair;

    demand(!advice.reasons.is_empty(), "a reason");
    let next = offers.len() + advice.alternatives.len();
    demand(next > 0, "a next step");
    let ahead = matches!(advice.outcome, MoveOutcome::GoAhead { .. });
    demand(
        ahead != offers.is_empty(),
        "ways only to go ahead, and then some",
    );
    demand(
        ahead != advice.checks.is_empty(),
        "checks before every move",
    );
    demand(
        ahead != advice.stop_signs.is_empty(),
        "stop signs with every move",
    );
    for out in &advice.ruled_out {
        demand(!out.because.is_empty(), "why a way is ruled out");
        let offered = offers.iter().any(|offer| offer.way == out.way);
        demand(!offered, "a way ruled out is not offered");
    }

    for offer in &offers {
        let there = |piece: &Equipment| moving.equipment.contains(piece);
        demand(
            offer.equipment.iter().all(there),
            "equipment not there, never",
        );
        demand(
            offer.workers <= moving.workers.unwrap_or(1),
            "no more workers than are there",
        );
        let two = matches!(offer.way, PeopleWay::HoistTwo | PeopleWay::SlideSheetTwo);
        demand(
            !two || offer.workers >= 2,
            "two workers for hoist and sheet",
        );
        demand(
            offer.way.by_device() == needs_device(offer.way)
                && has_device(offer.way, &offer.equipment),
            "a device where one is named",
        );
        if floor {
            demand(
                offer.way != PeopleWay::ManualLift,
                "from the floor by hand, never",
            );
        }
        if !offer.way.by_device() {
            demand(
                within_limit(request),
                "over the limit for each worker, never",
            );
            demand(
                moving.help != Some(Help::Unpredictable),
                "help that changes: a device",
            );
        }
        if let CarePlan::Covers {
            ways: Some(ways), ..
        } = &moving.care_plan
        {
            demand(ways.contains(&offer.way), "only ways the care plan names");
        }
        if let CarePlan::Covers { is_old: true, .. } = &moving.care_plan {
            demand(
                offer.way != PeopleWay::ManualLift || moving.what != Move::UpInChair,
                "a care plan past its date unlocks no lift by hand",
            );
            demand(
                offer.way != PeopleWay::StandPivotBelt || moving.workers.unwrap_or(1) >= 2,
                "a care plan past its date unlocks no belt for one alone",
            );
        }
    }

    demand(
        !ahead || moving.care_plan != CarePlan::DiffersToday,
        "not as the care plan says: never",
    );
    demand(!ahead || moving.signs.is_empty(), "a new sign: never");
    demand(
        !ahead || moving.agrees != Some(false),
        "the person says no: never",
    );
    demand(!ahead || moving.what != Move::Catch, "catch: never");
    demand(
        !ahead || request.worker.age != Some(AgeBand::Under16),
        "a child moves nobody",
    );
    demand(
        !(ahead && floor) || moving.unhurt == Some(true),
        "from the floor only when looked over and unhurt",
    );
    let cautioned = |caution| advice.cautions.contains(&caution);
    if floor {
        demand(
            cautioned(Caution::CheckInjuryFirst),
            "look for injury first",
        );
        demand(cautioned(Caution::NoManualFloorLift), "not by hand, said");
    }
    let emergency = advice.outcome.urgency() == Urgency::Emergency;
    demand(
        emergency == cautioned(Caution::EmergencyNow),
        "an emergency is said",
    );
    if floor && moving.unhurt == Some(false) {
        let how_soon = HowSoon::Emergency;
        demand(
            advice.outcome == MoveOutcome::SeekCare { how_soon },
            "hurt on the floor: emergency help",
        );
    }
    broken
}

fn needs_device(way: PeopleWay) -> bool {
    matches!(
        way,
        PeopleWay::StandAid | PeopleWay::HoistTwo | PeopleWay::SlideSheetTwo
    )
}

fn has_device(way: PeopleWay, equipment: &[Equipment]) -> bool {
    let any = |pieces: &[Equipment]| pieces.iter().any(|piece| equipment.contains(piece));
    match way {
        PeopleWay::StandAid => any(&[Equipment::StandAid]),
        PeopleWay::HoistTwo => any(&[Equipment::Hoist, Equipment::CarHoist]),
        PeopleWay::SlideSheetTwo => any(&[Equipment::SlideSheet, Equipment::LateralAid]),
        PeopleWay::SlideBoard => any(&[Equipment::SlideBoard]),
        PeopleWay::StandPivotBelt => any(&[Equipment::Belt]),
        PeopleWay::StandBy | PeopleWay::GuidedSelfRise | PeopleWay::ManualLift => true,
    }
}

/// By the plain published rule: the share that staff bear, over all workers there. A foot on a stool is not borne.
fn within_limit(request: &TransferRequest) -> bool {
    let moving = &request.moving;
    let rested = moving.equipment.contains(&Equipment::FootStool)
        && matches!(moving.what, Move::Stockings | Move::Shoes | Move::WashLow);
    let (Some(share), false) = (moving.staff_share, rested) else {
        return true;
    };
    let workers = f64::from(moving.workers.unwrap_or(1).max(1));
    match moving.mass {
        Some(mass) => mass.value() * share.value() / workers <= LIMIT_KG + 1e-9,
        None => share.value() <= 0.0,
    }
}
