//! New signs of the person: which need help now, which the office must hear of before any move.
//!
//! After a fall any new sign is taken as an injury until somebody has looked (`after_fall`, `osha_3182`).

use super::client::{ClientSign, Move, Transfer};
use crate::advise::advice::HowSoon;
use crate::reason::{Reason, ReasonId, Value};

/// How soon a sign needs care. On the floor every sign is an emergency.
#[must_use]
pub fn how_soon(sign: ClientSign, what: Move) -> HowSoon {
    use ClientSign as Sign;
    match sign {
        _ if what == Move::FloorToChair => HowSoon::Emergency,
        Sign::NewHipPain
        | Sign::HeadKnock
        | Sign::NeckPain
        | Sign::OddShape
        | Sign::Bleeding
        | Sign::SeverePain
        | Sign::PassedOut
        | Sign::Fit
        | Sign::StrokeSigns
        | Sign::ChestPain
        | Sign::Breathless => HowSoon::Emergency,
        Sign::Drowsy
        | Sign::Confused
        | Sign::Dizzy
        | Sign::Weaker
        | Sign::Fell
        | Sign::Fever
        | Sign::Resists
        | Sign::NewWound
        | Sign::Other => HowSoon::SameDay,
    }
}

/// Reasons to call for help now; empty when there are none.
#[must_use]
pub fn emergencies(moving: &Transfer) -> Vec<Reason> {
    let mut reasons = of(moving, HowSoon::Emergency, ReasonId::ClientSignEmergency);
    if moving.what == Move::FloorToChair && moving.unhurt == Some(false) {
        reasons.push(Reason::of(ReasonId::FloorHurt));
    }
    reasons
}

/// Reasons to leave the person where they are and report today; empty when there are none.
#[must_use]
pub fn to_report(moving: &Transfer) -> Vec<Reason> {
    of(moving, HowSoon::SameDay, ReasonId::ClientSignToday)
}

fn of(moving: &Transfer, soon: HowSoon, id: ReasonId) -> Vec<Reason> {
    moving
        .signs
        .iter()
        .filter(|sign| how_soon(**sign, moving.what) == soon)
        .map(|sign| Reason::of(id).with("what", Value::Id(sign.id())))
        .collect()
}
