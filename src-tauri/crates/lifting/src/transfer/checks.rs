//! What to look at before a move, and when to stop. Common practice and house rules; what the sources name
//! is noted at each.

use super::client::Move;
use super::equipment::Equipment;
use super::way::PeopleWay;
use crate::naming::named;

named!(
    /// Something to look at before the move.
    Check {
        /// Does the person want it, and know what comes?
        Agrees = "agrees",
        /// Brakes on at bed, chair and commode (`osha_3182`).
        Brakes = "brakes",
        /// Floor dry and clear, room to turn.
        FloorClear = "floor_clear",
        /// Shoes that grip.
        Shoes = "shoes",
        /// Tubes, lines, casts out of the way.
        Lines = "lines",
        /// Charged, in date, the right sling.
        DeviceReady = "device_ready",
        /// Rated load read on the equipment (`va_care_form`).
        RatedLoad = "rated_load",
        /// The chair's arm is off on that side (`osha_3182`).
        ChairArmOff = "chair_arm_off",
        /// The stronger side goes first (`osha_3182`).
        StrongerSide = "stronger_side",
        /// Bed at elbow height and flat (`osha_3182`).
        BedHeight = "bed_height",
        /// Both surfaces level and locked (`osha_3182`).
        LevelSurfaces = "level_surfaces",
        /// Everybody knows the count of three (`osha_3182`).
        CountTogether = "count_together",
        /// Looked over from head to foot (`osha_3182`).
        LookedOver = "looked_over",
        /// Firm furniture beside the person.
        FirmFurniture = "firm_furniture",
    }
);

named!(
    /// A sign to stop: lower to the nearest surface, stay, call.
    StopSign {
        /// The person says stop.
        SaysStop = "says_stop",
        /// New pain.
        NewPain = "new_pain",
        /// Dizzy, pale or short of breath.
        DizzyPale = "dizzy_pale",
        /// Legs give way.
        LegsGive = "legs_give",
        /// Resists, or no longer follows.
        Resists = "resists",
        /// A line or tube pulls.
        LinePulls = "line_pulls",
        /// Belt slips, brake or battery fails.
        DeviceFails = "device_fails",
        /// The worker's back catches, or pain reaches 6.
        OwnPain = "own_pain",
        /// More than 35 lb to take.
        TooHeavy = "too_heavy",
        /// Not as planned.
        NotAsPlanned = "not_as_planned",
    }
);

/// The checks for a way of doing a move, in the order to make them.
#[must_use]
pub fn before(what: Move, way: PeopleWay, equipment: &[Equipment], very_heavy: bool) -> Vec<Check> {
    let mut checks = Vec::new();
    if what == Move::FloorToChair {
        checks.push(Check::LookedOver);
    }
    checks.push(Check::Agrees);
    let seated = super::moves::is_seated(what);
    if seated || what == Move::Lateral || what == Move::UpInChair {
        checks.push(Check::Brakes);
    }
    if seated || what == Move::FloorToChair {
        checks.push(Check::FloorClear);
    }
    if seated && way != PeopleWay::HoistTwo {
        checks.push(Check::Shoes);
    }
    checks.push(Check::Lines);
    match way {
        PeopleWay::StandAid | PeopleWay::StandPivotBelt => checks.push(Check::StrongerSide),
        PeopleWay::SlideBoard => checks.extend([Check::ChairArmOff, Check::StrongerSide]),
        PeopleWay::SlideSheetTwo if what == Move::Lateral => checks.push(Check::LevelSurfaces),
        PeopleWay::SlideSheetTwo if what != Move::UpInChair => checks.push(Check::BedHeight),
        PeopleWay::GuidedSelfRise if what == Move::FloorToChair => {
            checks.push(Check::FirmFurniture);
        }
        _ => {}
    }
    if !equipment.is_empty() {
        checks.push(Check::DeviceReady);
        if very_heavy {
            checks.push(Check::RatedLoad);
        }
    }
    if matches!(way, PeopleWay::HoistTwo | PeopleWay::SlideSheetTwo) {
        checks.push(Check::CountTogether);
    }
    checks
}
