//! One way as judged: what it takes, what suits it, what bars it.

use super::client::CarePlan;
use super::equipment::Equipment;
use super::facts::{Borne, MoveFacts};
use super::way::PeopleWay;
use crate::quantity::{Kilograms, Repetitions};
use crate::reason::{Reason, ReasonId, Value};

/// A way as judged.
#[derive(Debug, Clone, PartialEq)]
pub struct Verdict {
    /// The way.
    pub way: PeopleWay,
    /// Workers whose hands it takes.
    pub workers: u32,
    /// Equipment it takes.
    pub equipment: Vec<Equipment>,
    /// What speaks for it.
    pub suits: ReasonId,
    /// What else there is to say when it is offered.
    pub notes: Vec<Reason>,
    /// Figures that are told whether it is offered or not.
    pub figures: Vec<Reason>,
    /// What bars it; empty when it serves.
    pub barred: Vec<Reason>,
}

impl Verdict {
    pub(super) fn new(way: PeopleWay, suits: ReasonId) -> Self {
        Self {
            way,
            workers: 0,
            equipment: Vec::new(),
            suits,
            notes: Vec::new(),
            figures: Vec::new(),
            barred: Vec::new(),
        }
    }

    /// Whether it serves.
    #[must_use]
    pub fn serves(&self) -> bool {
        self.barred.is_empty()
    }

    pub(super) fn bar(&mut self, reason: Reason) {
        if !self.barred.contains(&reason) {
            self.barred.push(reason);
        }
    }

    pub(super) fn bar_if(mut self, barred: bool, id: ReasonId) -> Self {
        if barred {
            self.bar(Reason::of(id));
        }
        self
    }

    /// Takes this equipment; bars it when some is not there.
    pub(super) fn with(mut self, facts: &MoveFacts<'_>, equipment: &[Equipment]) -> Self {
        for piece in equipment {
            self.equipment.push(*piece);
            if !facts.has(*piece) {
                self.bar(
                    Reason::of(ReasonId::EquipmentMissing).with("what", Value::Id(piece.id())),
                );
            }
        }
        self
    }

    /// Takes so many workers; a hoist or stand aid does the lifting, so any trained worker counts.
    pub(super) fn workers(mut self, facts: &MoveFacts<'_>, count: u32) -> Self {
        self.workers = self.workers.max(count);
        if facts.workers < count {
            self.bar(too_few(count));
        }
        self
    }

    /// Takes so many workers who may bear a part of a person today.
    pub(super) fn bearers(mut self, facts: &MoveFacts<'_>, count: u32) -> Self {
        self = self.workers(facts, count);
        if facts.bearers < count {
            for reason in &facts.worker.bears_nothing {
                self.bar(reason.clone());
            }
        }
        self
    }

    /// Needs legs that carry at least a part.
    pub(super) fn on_legs(
        mut self,
        facts: &MoveFacts<'_>,
        least: super::client::WeightBearing,
    ) -> Self {
        if facts.legs > least {
            let what = facts
                .moving
                .weight_bearing
                .map_or("not_asked", |legs| legs.id());
            self.bar(Reason::of(ReasonId::LegsDoNotCarry).with("what", Value::Id(what)));
        }
        self
    }

    /// Needs somebody who follows simple steps.
    pub(super) fn following(mut self, facts: &MoveFacts<'_>) -> Self {
        if !facts.follows {
            let what = facts
                .moving
                .follows
                .map_or("not_asked", |follows| follows.id());
            self.bar(Reason::of(ReasonId::DoesNotFollow).with("what", Value::Id(what)));
        }
        self
    }

    /// Needs strong arms.
    pub(super) fn strong_arms(mut self, facts: &MoveFacts<'_>) -> Self {
        if !facts.arms {
            let what = facts.moving.arms_strong.map_or("not_asked", |_| "no");
            self.bar(Reason::of(ReasonId::ArmsNotStrong).with("what", Value::Id(what)));
        }
        self
    }

    /// What staff bear must be known and within the limit for each worker. `asked`: an answer is needed.
    pub(super) fn within_share(mut self, facts: &MoveFacts<'_>, asked: bool) -> Self {
        match facts.borne {
            Borne::Nothing => {}
            Borne::NotAsked if !asked => {}
            Borne::NotAsked | Borne::Unknown => self.bar(Reason::of(ReasonId::ShareNotKnown)),
            Borne::ShareOfUnknown => self.bar(Reason::of(ReasonId::ClientMassNotKnown)),
            Borne::Load(load) => self = self.within_limit(facts, load),
        }
        self.bar_if(facts.unpredictable(), ReasonId::HelpUnpredictable)
    }

    /// This load, over the workers who may bear it, must be within the limit.
    pub(super) fn within_limit(mut self, facts: &MoveFacts<'_>, load: Kilograms) -> Self {
        let needed = facts.limit.workers_for(load);
        self.workers = self.workers.max(needed.unwrap_or(self.workers));
        let each = Kilograms::clamped(load.value() / f64::from(facts.bearers.max(1)));
        let values = |id| {
            Reason::of(id)
                .with("share", Value::Mass(each))
                .with("limit", Value::Mass(facts.limit.each))
        };
        if needed.is_some_and(|needed| needed <= facts.bearers) {
            self.figures.push(values(ReasonId::ShareWithinLimit));
            return self;
        }
        let over = values(ReasonId::ShareOverLimit);
        self.bar(match needed {
            Some(count) => over.with("people", people(count)),
            None => over,
        });
        if facts.bearers < facts.workers {
            for reason in &facts.worker.bears_nothing {
                self.bar(reason.clone());
            }
        }
        self
    }

    /// What the care plan says of the way.
    pub(super) fn planned(mut self, facts: &MoveFacts<'_>) -> Self {
        let CarePlan::Covers { ways, workers, .. } = &facts.moving.care_plan else {
            return self;
        };
        if ways.as_ref().is_some_and(|ways| !ways.contains(&self.way)) {
            self.bar(Reason::of(ReasonId::CarePlanOtherWay));
        }
        if let Some(count) = workers.filter(|count| facts.workers < *count) {
            self.bar(Reason::of(ReasonId::CarePlanMoreWorkers).with("people", people(count)));
        }
        self.workers = self.workers.max(workers.unwrap_or(0));
        self
    }
}

/// More workers are needed.
pub(super) fn too_few(count: u32) -> Reason {
    Reason::of(ReasonId::TooFewWorkers).with("people", people(count))
}

fn people(count: u32) -> Value {
    Value::Count(Repetitions::of(count))
}
