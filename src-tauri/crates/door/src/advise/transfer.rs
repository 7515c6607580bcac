//! `transfer`: the person who is moved, and what is there to do it with.

use crate::choice::{Choice, ChoiceOrUnknown, Listed, set_of};
use crate::error::{DoorError, ErrorCode};
use crate::section::Section;
use lifting::quantity::Minutes;
use lifting::transfer::client::{
    Ability, CarePlan, ClientMass, ClientSign, Follows, Help, Limb, Move, Share, Transfer,
    WeightBearing,
};
use lifting::transfer::equipment::Equipment;
use lifting::transfer::limit::Hindrance;
use lifting::transfer::way::PeopleWay;
use serde::Deserialize;
use std::collections::BTreeSet;

const TRANSFER: Section = Section("transfer");

/// The most workers taken. House rule.
const MOST_WORKERS: u32 = 20;
/// The most signs taken, and the longest one in bytes. House rule.
const MOST_SIGNS: usize = 40;
const LONGEST_SIGN: usize = 200;

/// What the care plan says, in one word.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Covers {
    Move,
    None,
    DiffersToday,
}

impl Listed for Covers {
    fn listed(id: &str) -> Option<Self> {
        match id {
            "covers_move" => Some(Self::Move),
            "none" => Some(Self::None),
            "differs_today" => Some(Self::DiffersToday),
            _ => None,
        }
    }
}

/// One more piece of equipment, or none.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) struct Aid(Option<Equipment>);

impl Listed for Aid {
    fn listed(id: &str) -> Option<Self> {
        if id == "none" {
            return Some(Self(None));
        }
        Equipment::from_id(id).map(|aid| Self(Some(aid)))
    }
}

/// The move as it stands on the wire. A missing key and `null` both mean "not asked".
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct TransferWire {
    #[serde(rename = "move")]
    what: Option<Choice<Move>>,
    client_mass_kg: Option<f64>,
    weight_bearing: Option<ChoiceOrUnknown<WeightBearing>>,
    follows_steps: Option<Choice<Follows>>,
    arms_strong: Option<bool>,
    able_to_assist: Option<Choice<Ability>>,
    help: Option<Choice<Help>>,
    staff_share: Option<f64>,
    limb: Option<Choice<Limb>>,
    hold_min: Option<f64>,
    chair_reclines: Option<bool>,
    independent: Option<bool>,
    client_unhurt: Option<bool>,
    client_agrees: Option<bool>,
    client_new_signs: Option<Vec<String>>,
    equipment: Option<Vec<Choice<Equipment>>>,
    aid: Option<Choice<Aid>>,
    workers: Option<u32>,
    hindrances: Option<Vec<Choice<Hindrance>>>,
    care_plan: Option<Choice<Covers>>,
    care_plan_ways: Option<Vec<Choice<PeopleWay>>>,
    care_plan_workers: Option<u32>,
    care_plan_old: Option<bool>,
}

impl TransferWire {
    /// The move, every number checked. `floor`: the task is about somebody on the floor.
    pub(crate) fn checked(self, floor: bool) -> Result<Transfer, DoorError> {
        let what = match (self.what.map(|what| what.0), floor) {
            (None | Some(Move::FloorToChair), true) => Move::FloorToChair,
            (Some(_), true) => return Err(TRANSFER.fault(ErrorCode::Contradiction, "move")),
            (Some(what), false) => what,
            (None, false) => return Err(TRANSFER.fault(ErrorCode::MissingField, "move")),
        };
        let care_plan = self.care_plan()?;
        let signs = signs(self.client_new_signs.unwrap_or_default())?;
        let aid = self.aid.and_then(|aid| aid.0.0);
        let mut equipment = set_of(self.equipment.unwrap_or_default());
        equipment.extend(aid);
        Ok(Transfer {
            mass: TRANSFER.quantity("client_mass_kg", self.client_mass_kg, ClientMass::new)?,
            weight_bearing: self.weight_bearing.and_then(|legs| legs.0),
            follows: self.follows_steps.map(|follows| follows.0),
            arms_strong: self.arms_strong,
            able: self.able_to_assist.map(|able| able.0),
            help: self.help.map(|help| help.0),
            staff_share: TRANSFER.quantity("staff_share", self.staff_share, Share::new)?,
            limb: self.limb.map(|limb| limb.0),
            hold: TRANSFER.quantity("hold_min", self.hold_min, Minutes::new)?,
            chair_reclines: self.chair_reclines,
            independent: self.independent,
            unhurt: self.client_unhurt,
            agrees: self.client_agrees,
            signs,
            equipment,
            workers: TRANSFER.count("workers", self.workers, MOST_WORKERS)?,
            hindrances: set_of(self.hindrances.unwrap_or_default()),
            care_plan,
            ..Transfer::of(what)
        })
    }

    /// Ways and workers belong to a plan that covers the move.
    fn care_plan(&self) -> Result<CarePlan, DoorError> {
        let workers = TRANSFER.count("care_plan_workers", self.care_plan_workers, MOST_WORKERS)?;
        let covers = self.care_plan.map(|plan| plan.0);
        let covered = covers == Some(Covers::Move);
        TRANSFER.consistent("care_plan_ways", covered || self.care_plan_ways.is_none())?;
        TRANSFER.consistent("care_plan_workers", covered || workers.is_none())?;
        TRANSFER.consistent("care_plan_old", covered || self.care_plan_old.is_none())?;
        Ok(match covers {
            None | Some(Covers::None) => CarePlan::None,
            Some(Covers::DiffersToday) => CarePlan::DiffersToday,
            Some(Covers::Move) => CarePlan::Covers {
                ways: self
                    .care_plan_ways
                    .as_ref()
                    .map(|ways| ways.iter().map(|way| way.0).collect()),
                workers,
                is_old: self.care_plan_old.unwrap_or(false),
            },
        })
    }
}

/// Signs in words; one that is not in the list counts as another sign.
fn signs(words: Vec<String>) -> Result<BTreeSet<ClientSign>, DoorError> {
    let long = words.iter().any(|word| word.len() > LONGEST_SIGN);
    if long || words.len() > MOST_SIGNS {
        return Err(TRANSFER.fault(ErrorCode::TooLong, "client_new_signs"));
    }
    Ok(words
        .iter()
        .map(|word| ClientSign::from_id(word).unwrap_or(ClientSign::Other))
        .collect())
}

#[cfg(test)]
#[path = "transfer_tests.rs"]
mod tests;
