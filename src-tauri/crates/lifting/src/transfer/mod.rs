//! Moving a person: which way, with what and how many, or not now and who to call. [`advise`] is the one entry.
//!
//! 1. signs of worker and person · 2. who may be advised · 3. the care plan · 4. the share each worker takes ·
//! 5. each way, by published rows · 6. their order · 7. outcome. Every step may end it; reasons are kept.

pub mod advice;
pub mod checks;
pub mod client;
pub mod equipment;
pub mod facts;
pub mod limit;
pub mod moves;
mod said;
pub mod signs;
pub mod verdict;
pub mod way;
pub mod worker;

use crate::advise::Request;
use crate::advise::advice::HowSoon;
use crate::advise::facts::Facts;
use crate::body::{AgeBand, Person};
use crate::plan::Plan;
use crate::quantity::Kilograms;
use crate::reason::{Reason, ReasonId};
use crate::rules::{warning_signs, who};
use crate::task::{LoadMass, Task};
use advice::{MoveAdvice, MoveOutcome, MoveRuledOut, Offer, Offers, Tell};
use client::{CarePlan, Move, Transfer};
use facts::{LB_300, MoveFacts};
use verdict::Verdict;
use worker::Worker;

/// One question: this worker, this person to move, this day.
#[derive(Debug, Clone, PartialEq)]
pub struct TransferRequest {
    /// The worker, and how they are today.
    pub worker: Person,
    /// The worker's own plan, if there is one.
    pub plan: Option<Plan>,
    /// The move.
    pub moving: Transfer,
}

/// Judges one move. Total: every request gets exactly one advice, with a reason and a next step.
#[must_use]
pub fn advise(request: &TransferRequest) -> MoveAdvice {
    // The worker is judged as somebody who lifts, whatever it will be.
    let mut own = Request::new(
        request.worker.clone(),
        Task::of(LoadMass::Known(Kilograms::clamped(0.0))),
    );
    own.plan.clone_from(&request.plan);
    let facts = Facts::of(&own, &own.task);
    let worker = Worker::of(&facts);
    let moving = &request.moving;

    let (care, reasons) = warning_signs_of_both(request);
    if let Some(how_soon) = care {
        return without_a_move(moving, &worker, MoveOutcome::SeekCare { how_soon }, reasons);
    }
    let mut refusals = who::check(&facts);
    if request.worker.age == Some(AgeBand::Under16) {
        refusals.push(Reason::of(ReasonId::WorkerIsChild));
    }
    if !refusals.is_empty() {
        return without_a_move(moving, &worker, MoveOutcome::Refuse, refusals);
    }
    let (tell, against) = against_moving_at_all(moving);
    if !against.is_empty() {
        return without_a_move(moving, &worker, MoveOutcome::DoNotMove { tell }, against);
    }
    by_the_rows(request, &worker)
}

/// Work on a limb as the worker's own lift of a thing, for explaining what it asks of the worker's body. It
/// decides nothing here: [`advise`] asks the same of the lifting figures itself.
#[must_use]
pub fn own_lift(request: &TransferRequest) -> Option<Request> {
    let mut own = Request::new(
        request.worker.clone(),
        Task::of(LoadMass::Known(Kilograms::clamped(0.0))),
    );
    own.plan.clone_from(&request.plan);
    let worker = Worker::of(&Facts::of(&own, &own.task));
    let facts = MoveFacts::of(&request.moving, &worker);
    moves::own_lift(&facts, &request.worker, request.plan.as_ref())
}

/// Step 1. The most urgent of what worker and person show.
fn warning_signs_of_both(request: &TransferRequest) -> (Option<HowSoon>, Vec<Reason>) {
    let own = warning_signs::check(&request.worker);
    let others = signs::emergencies(&request.moving);
    let theirs = (!others.is_empty()).then_some(HowSoon::Emergency);
    let (mine, mut reasons) = own.map_or((None, Vec::new()), |(soon, why)| (Some(soon), why));
    reasons.extend(others);
    (mine.max(theirs), reasons)
}

/// What ends it before any way is looked at, and who must hear of it. Every one of them is kept.
fn against_moving_at_all(moving: &Transfer) -> (Tell, Vec<Reason>) {
    let mut tell = Tell::Nobody;
    let mut against = Vec::new();
    let mut end = |found: Vec<Reason>, who: Tell| {
        if !found.is_empty() {
            tell = tell.max(who);
            against.extend(found);
        }
    };
    let if_so = |so: bool, id| if so { vec![Reason::of(id)] } else { Vec::new() };
    end(signs::to_report(moving), Tell::OfficeToday);
    let floor = moving.what == Move::FloorToChair;
    end(
        if_so(floor && moving.unhurt.is_none(), ReasonId::FloorNotChecked),
        Tell::OfficeToday,
    );
    end(
        if_so(moving.agrees == Some(false), ReasonId::ClientSaysNo),
        Tell::Office,
    );
    end(
        if_so(
            moving.care_plan == CarePlan::DiffersToday,
            ReasonId::CarePlanDiffers,
        ),
        if floor {
            Tell::OfficeToday
        } else {
            Tell::Office
        },
    );
    end(
        if_so(moving.what == Move::Catch, ReasonId::NeverCatch),
        Tell::Nobody,
    );
    (tell, against)
}

/// Steps 3 to 7.
fn by_the_rows(request: &TransferRequest, worker: &Worker) -> MoveAdvice {
    let moving = &request.moving;
    let facts = MoveFacts::of(moving, worker);
    let verdicts = moves::verdicts(&facts, &request.worker, request.plan.as_ref());
    let serving = verdicts.iter().filter(|verdict| verdict.serves());
    let offers = Offers::from_list(serving.map(offer).collect());
    let mut reasons = said::about_the_move(&facts);
    let outcome = match offers {
        Some(ways) => MoveOutcome::GoAhead { ways },
        None => {
            reasons.push(Reason::of(ReasonId::NoMoveLeft));
            let tell = match moving.what {
                Move::FloorToChair => Tell::OfficeToday,
                _ => Tell::Office,
            };
            MoveOutcome::DoNotMove { tell }
        }
    };
    for verdict in &verdicts {
        reasons.extend(verdict.figures.iter().cloned());
        if verdict.serves() {
            reasons.push(Reason::of(verdict.suits));
            reasons.extend(verdict.notes.iter().cloned());
        } else {
            reasons.extend(verdict.barred.iter().cloned());
        }
    }
    let checks = match outcome.offers().first() {
        Some(first) => checks::before(
            moving.what,
            first.way,
            &first.equipment,
            facts.weighs(LB_300),
        ),
        None => Vec::new(),
    };
    MoveAdvice {
        ruled_out: verdicts.iter().filter_map(ruled_out).collect(),
        cautions: said::cautions(moving, worker, &outcome, &reasons),
        alternatives: said::alternatives(moving, worker, &outcome, &reasons),
        stop_signs: stop_signs(&outcome),
        limit: Some(facts.limit),
        checks,
        outcome,
        reasons: said::in_order(reasons),
    }
}

fn without_a_move(
    moving: &Transfer,
    worker: &Worker,
    outcome: MoveOutcome,
    reasons: Vec<Reason>,
) -> MoveAdvice {
    MoveAdvice {
        ruled_out: Vec::new(),
        cautions: said::cautions(moving, worker, &outcome, &reasons),
        alternatives: said::alternatives(moving, worker, &outcome, &reasons),
        stop_signs: &[],
        limit: None,
        checks: Vec::new(),
        outcome,
        reasons: said::in_order(reasons),
    }
}

fn stop_signs(outcome: &MoveOutcome) -> &'static [checks::StopSign] {
    match outcome {
        MoveOutcome::GoAhead { .. } => checks::StopSign::ALL,
        _ => &[],
    }
}

fn offer(verdict: &Verdict) -> Offer {
    Offer {
        way: verdict.way,
        workers: verdict.workers,
        equipment: verdict.equipment.clone(),
    }
}

fn ruled_out(verdict: &Verdict) -> Option<MoveRuledOut> {
    let mut because: Vec<ReasonId> = verdict.barred.iter().map(|reason| reason.id).collect();
    because.dedup();
    (!because.is_empty()).then_some(MoveRuledOut {
        way: verdict.way,
        because,
    })
}
