//! Step 1. An open warning sign ends the judgement: care first, and no word on how to lift around it.
//!
//! Signs and tiers: source `red_flags` (IFOMPT framework 2020; NICE NG59 1.1.1; NHS patient wording).
//! The evidence for most single signs is weak; the tiers are on the careful side.

use crate::advise::advice::HowSoon;
use crate::body::{Condition, Person, WarningSign};
use crate::reason::{Reason, ReasonId, Value};

/// How soon a sign needs care. `None`: the surgeon's limit decides (recent surgery).
#[must_use]
pub fn how_soon(sign: WarningSign, person: &Person) -> Option<HowSoon> {
    use WarningSign as Sign;
    match sign {
        Sign::SaddleNumb
        | Sign::BladderBowel
        | Sign::BothLegsWeak
        | Sign::MajorTrauma
        | Sign::ChestBreath
        | Sign::StrokeSigns
        | Sign::HerniaBad => Some(HowSoon::Emergency),
        Sign::HotJoint if has_replaced_joint(person) || very_ill(person) => {
            Some(HowSoon::Emergency)
        }
        Sign::NoWeightBear if fell(person) => Some(HowSoon::Emergency),
        Sign::OneLegWeaker
        | Sign::MinorTraumaFragile
        | Sign::FeverUnwell
        | Sign::CancerHistory
        | Sign::WeightLoss
        | Sign::NightPain
        | Sign::HotJoint
        | Sign::LockedKnee
        | Sign::NoWeightBear
        | Sign::CalfSwollen
        | Sign::DizzyFaint => Some(HowSoon::SameDay),
        Sign::PostOpRecent => None,
    }
}

/// The most urgent of the open signs, with a reason for each.
#[must_use]
pub fn check(person: &Person) -> Option<(HowSoon, Vec<Reason>)> {
    let mut open: Vec<(HowSoon, WarningSign)> = person
        .signs
        .iter()
        .filter_map(|sign| Some((how_soon(*sign, person)?, *sign)))
        .collect();
    open.sort_by_key(|(how_soon, _)| std::cmp::Reverse(*how_soon));
    let (soonest, _) = *open.first()?;
    let reasons = open
        .into_iter()
        .map(|(how_soon, sign)| {
            let id = match how_soon {
                HowSoon::Emergency => ReasonId::SignEmergency,
                HowSoon::SameDay => ReasonId::SignSameDay,
            };
            Reason::of(id).with("sign", Value::Sign(sign))
        })
        .collect();
    Some((soonest, reasons))
}

fn has_replaced_joint(person: &Person) -> bool {
    [
        Condition::KneeReplacementOld,
        Condition::KneeReplacementRecent,
        Condition::HipReplacement,
    ]
    .iter()
    .any(|condition| person.conditions.contains(condition))
}

/// Fever, shivers or feeling very ill: with a hot joint an infection of the joint until shown otherwise.
fn very_ill(person: &Person) -> bool {
    person.signs.contains(&WarningSign::FeverUnwell)
}

/// Not bearing weight after a fall points to a fracture.
fn fell(person: &Person) -> bool {
    person.signs.contains(&WarningSign::MinorTraumaFragile)
}
