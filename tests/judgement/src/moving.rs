//! Moves that read like sentences: a well worker beside a person of 60 kg, and what is different today.

use lifting::body::{BackState, Balance, Kneeling, PainToday, Person};
use lifting::quantity::{Minutes, PainScore};
use lifting::reason::ReasonId;
use lifting::transfer::advice::{MoveAdvice, Offer};
use lifting::transfer::client::{
    Ability, CarePlan, ClientMass, ClientSign, Follows, Help, Move, Share, Transfer, WeightBearing,
};
use lifting::transfer::equipment::Equipment;
use lifting::transfer::way::PeopleWay;
use lifting::transfer::{TransferRequest, advise};

/// A question, told step by step.
#[derive(Debug, Clone)]
pub struct Moving {
    /// What will be asked.
    pub request: TransferRequest,
}

/// A well worker, everything asked.
#[must_use]
pub fn well_worker() -> Person {
    let none = Some(PainScore::NONE);
    Person {
        pain: PainToday {
            back: none,
            knee_left: none,
            knee_right: none,
            hip_left: none,
            hip_right: none,
            shoulders: none,
        },
        back_state: Some(BackState::Steady),
        balance: Some(Balance::Good),
        fell_last_year: Some(false),
        can_kneel: Some(Kneeling::Yes),
        ..Person::default()
    }
}

/// A well worker alone beside a person of 60 kg who takes no weight, follows, has strong arms; no equipment, no
/// care plan.
#[must_use]
pub fn a_move(what: Move) -> Moving {
    Moving {
        request: TransferRequest {
            worker: well_worker(),
            plan: None,
            moving: Transfer {
                mass: ClientMass::new(60.0).ok(),
                weight_bearing: Some(WeightBearing::None),
                follows: Some(Follows::Yes),
                arms_strong: Some(true),
                workers: Some(1),
                ..Transfer::of(what)
            },
        },
    }
}

impl Moving {
    /// Anything else about the move.
    #[must_use]
    pub fn with(mut self, change: impl FnOnce(&mut Transfer)) -> Self {
        change(&mut self.request.moving);
        self
    }

    /// Anything else about the worker.
    #[must_use]
    pub fn worker(mut self, change: impl FnOnce(&mut Person)) -> Self {
        change(&mut self.request.worker);
        self
    }

    /// The person's mass.
    #[must_use]
    pub fn of_kg(self, mass: f64) -> Self {
        self.with(|moving| moving.mass = ClientMass::new(mass).ok())
    }

    /// Weight on the legs.
    #[must_use]
    pub fn legs(self, legs: WeightBearing) -> Self {
        self.with(|moving| moving.weight_bearing = Some(legs))
    }

    /// Follows simple steps.
    #[must_use]
    pub fn follows(self, follows: Follows) -> Self {
        self.with(|moving| moving.follows = Some(follows))
    }

    /// Strong arms.
    #[must_use]
    pub fn arms(self, strong: bool) -> Self {
        self.with(|moving| moving.arms_strong = Some(strong))
    }

    /// How far the person can help.
    #[must_use]
    pub fn able(self, able: Ability) -> Self {
        self.with(|moving| moving.able = Some(able))
    }

    /// What help staff give.
    #[must_use]
    pub fn help(self, help: Help) -> Self {
        self.with(|moving| moving.help = Some(help))
    }

    /// The share staff bear.
    #[must_use]
    pub fn share(self, share: f64) -> Self {
        self.with(|moving| moving.staff_share = Share::new(share).ok())
    }

    /// Held for so many minutes.
    #[must_use]
    pub fn held_min(self, minutes: f64) -> Self {
        self.with(|moving| moving.hold = Minutes::new(minutes).ok())
    }

    /// Workers there.
    #[must_use]
    pub fn workers(self, count: u32) -> Self {
        self.with(|moving| moving.workers = Some(count))
    }

    /// Equipment there.
    #[must_use]
    pub fn having(self, equipment: &[Equipment]) -> Self {
        self.with(|moving| moving.equipment.extend(equipment))
    }

    /// All equipment there is.
    #[must_use]
    pub fn having_all(self) -> Self {
        self.having(Equipment::ALL)
    }

    /// The care plan covers the move and names no way.
    #[must_use]
    pub fn planned(self) -> Self {
        self.with(|moving| {
            moving.care_plan = CarePlan::Covers {
                ways: None,
                workers: None,
                is_old: false,
            };
        })
    }

    /// The care plan names these ways.
    #[must_use]
    pub fn planned_ways(self, ways: &[PeopleWay]) -> Self {
        let ways = Some(ways.iter().copied().collect());
        self.with(|moving| {
            moving.care_plan = CarePlan::Covers {
                ways,
                workers: None,
                is_old: false,
            };
        })
    }

    /// The care plan, if it covers the move, is past its date.
    #[must_use]
    pub fn plan_old(self) -> Self {
        self.with(|moving| {
            if let CarePlan::Covers { is_old, .. } = &mut moving.care_plan {
                *is_old = true;
            }
        })
    }

    /// A new sign.
    #[must_use]
    pub fn sign(self, sign: ClientSign) -> Self {
        self.with(|moving| {
            moving.signs.insert(sign);
        })
    }

    /// The answer.
    #[must_use]
    pub fn advice(&self) -> MoveAdvice {
        advise(&self.request)
    }

    /// The ways offered, best first.
    #[must_use]
    pub fn ways(&self) -> Vec<PeopleWay> {
        ways(&self.advice())
    }

    /// What is offered for one way.
    #[must_use]
    pub fn offer(&self, way: PeopleWay) -> Option<Offer> {
        let advice = self.advice();
        let offers = advice.outcome.offers();
        offers.into_iter().find(|offer| offer.way == way).cloned()
    }

    /// Whether this reason was met.
    #[must_use]
    pub fn says(&self, id: ReasonId) -> bool {
        self.advice().reasons.iter().any(|reason| reason.id == id)
    }
}

/// The ways of an advice, best first.
#[must_use]
pub fn ways(advice: &MoveAdvice) -> Vec<PeopleWay> {
    advice
        .outcome
        .offers()
        .iter()
        .map(|offer| offer.way)
        .collect()
}
