//! The laws for moving people: over the documented grid, and for any request.

#![cfg(test)]

use judgement::{any, moving_grid as grid, moving_laws as laws};
use lifting::quantity::Minutes;
use lifting::transfer::client::{
    Ability, CarePlan, ClientMass, ClientSign, Follows, Help, Limb, Move, Share, Transfer,
    WeightBearing,
};
use lifting::transfer::equipment::Equipment;
use lifting::transfer::limit::Hindrance;
use lifting::transfer::way::PeopleWay;
use lifting::transfer::{TransferRequest, advise};
use proptest::collection::btree_set;
use proptest::option::{of, weighted};
use proptest::prelude::*;
use proptest::sample::select;

#[test]
fn the_laws_hold_on_the_whole_grid() {
    assert!(grid::CASES_OF_A_MOVE * Move::ALL.len() >= 100_000);
    std::thread::scope(|scope| {
        for what in 0..Move::ALL.len() {
            scope.spawn(move || judge_move(what));
        }
    });
}

/// Every case of one move keeps the laws, and no harder neighbour is more permissive.
fn judge_move(what: usize) {
    let first = what * grid::CASES_OF_A_MOVE;
    let outcomes: Vec<u8> = (0..grid::CASES_OF_A_MOVE)
        .map(|case| {
            let request = grid::request(first + case);
            let advice = advise(&request);
            let broken = laws::broken(&request, &advice);
            assert!(broken.is_empty(), "{broken:#?}\n{request:#?}\n{advice:#?}");
            advice.outcome.permissiveness()
        })
        .collect();
    for (case, kinder) in outcomes.iter().enumerate() {
        for axis in grid::HARDER {
            let place = grid::place(case, axis);
            // The last share is "not asked", which is neither kinder nor harder.
            let last = if axis == 6 {
                grid::SHARE.len()
            } else {
                grid::AXES[axis]
            };
            if place + 1 >= last {
                continue;
            }
            let harder = case + grid::stride(axis);
            assert!(
                outcomes[harder] <= *kinder,
                "harder on axis {axis}: {:#?}\nis {:#?}",
                grid::request(first + case),
                advise(&grid::request(first + harder)),
            );
        }
    }
}

fn one<T: Copy + std::fmt::Debug + 'static>(all: &'static [T]) -> impl Strategy<Value = T> {
    select(all)
}

fn care_plan() -> impl Strategy<Value = CarePlan> {
    prop_oneof![
        Just(CarePlan::None),
        Just(CarePlan::DiffersToday),
        (
            of(btree_set(one(PeopleWay::ALL), 1..4)),
            of(0u32..4),
            any::<bool>()
        )
            .prop_map(|(ways, workers, is_old)| CarePlan::Covers {
                ways,
                workers,
                is_old
            }),
    ]
}

fn moving() -> impl Strategy<Value = Transfer> {
    let person = (
        one(Move::ALL),
        of(3.0..=400.0f64),
        of(one(WeightBearing::ALL)),
        of(one(Follows::ALL)),
        of(any::<bool>()),
        of(one(Ability::ALL)),
        of(one(Help::ALL)),
        of(prop_oneof![0.0..=1.0f64, 0.0..0.3f64, Just(0.0)]),
    );
    let more = (
        of(one(Limb::ALL)),
        of(0.0..4.0f64),
        of(any::<bool>()),
        of(any::<bool>()),
        of(any::<bool>()),
        weighted(0.2, any::<bool>()),
        weighted(0.2, btree_set(one(ClientSign::ALL), 1..3)),
    );
    let there = (
        btree_set(one(Equipment::ALL), 0..Equipment::ALL.len()),
        of(0u32..5),
        weighted(0.3, btree_set(one(Hindrance::ALL), 1..3)),
        care_plan(),
    );
    (person, more, there).prop_map(|(person, more, there)| Transfer {
        mass: person.1.and_then(|mass| ClientMass::new(mass).ok()),
        weight_bearing: person.2,
        follows: person.3,
        arms_strong: person.4,
        able: person.5,
        help: person.6,
        staff_share: person.7.and_then(|share| Share::new(share).ok()),
        limb: more.0,
        hold: more.1.and_then(|hold| Minutes::new(hold).ok()),
        chair_reclines: more.2,
        independent: more.3,
        unhurt: more.4,
        agrees: more.5,
        signs: more.6.unwrap_or_default(),
        equipment: there.0,
        workers: there.1,
        hindrances: there.2.unwrap_or_default(),
        care_plan: there.3,
        what: person.0,
    })
}

fn request() -> impl Strategy<Value = TransferRequest> {
    (any::person(), weighted(0.3, any::plan()), moving()).prop_map(|(worker, plan, moving)| {
        TransferRequest {
            worker,
            plan,
            moving,
        }
    })
}

fn never_more(kinder: &TransferRequest, harder: &TransferRequest) -> Result<(), TestCaseError> {
    let (kinder_says, harder_says) = (advise(kinder), advise(harder));
    prop_assert!(
        harder_says.outcome.permissiveness() <= kinder_says.outcome.permissiveness(),
        "{kinder_says:#?}\n{harder_says:#?}"
    );
    Ok(())
}

/// The request with one thing about the move changed.
fn with(request: &TransferRequest, change: impl FnOnce(&mut Transfer)) -> TransferRequest {
    let mut changed = request.clone();
    change(&mut changed.moving);
    changed
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(10_000))]

    #[test]
    fn every_move_gets_one_advice_that_keeps_the_laws(request in request()) {
        let advice = advise(&request);
        let broken = laws::broken(&request, &advice);
        prop_assert!(broken.is_empty(), "{broken:#?}\n{advice:#?}");
        prop_assert_eq!(advice, advise(&request), "same input, same advice");
    }

    #[test]
    fn more_mass_or_share_is_never_more_permissive(
        request in request(), mass in 3.0..300.0f64, more in 0.0..100.0f64,
        share in 0.0..=1.0f64, added in 0.0..=1.0f64,
    ) {
        let kinder = with(&request, |moving| moving.mass = ClientMass::new(mass).ok());
        let harder = with(&request, |moving| moving.mass = ClientMass::new(mass + more).ok());
        let unknown = with(&request, |moving| moving.mass = None);
        never_more(&kinder, &harder)?;
        never_more(&harder, &unknown)?;
        let kinder = with(&request, |moving| moving.staff_share = Share::new(share).ok());
        let harder = with(&request, |moving| moving.staff_share = Share::new((share + added).min(1.0)).ok());
        never_more(&kinder, &harder)?;
    }

    #[test]
    fn a_care_plan_past_its_date_is_never_more_permissive(
        request in request(), ways in of(btree_set(one(PeopleWay::ALL), 1..4)), workers in of(0u32..4),
    ) {
        let planned = |is_old| with(&request, |moving| {
            moving.care_plan = CarePlan::Covers { ways: ways.clone(), workers, is_old };
        });
        let (fresh, old) = (planned(false), planned(true));
        never_more(&fresh, &old)?;
        never_more(&with(&request, |moving| moving.care_plan = CarePlan::None), &old)?;
        let unlocked = advise(&old);
        let fresh = advise(&fresh);
        for offer in unlocked.outcome.offers() {
            prop_assert!(fresh.outcome.offers().iter().any(|other| other.way == offer.way));
        }
    }

    #[test]
    fn less_help_from_the_person_is_never_more_permissive(request in request(), place in 0usize..2, help in 0usize..3) {
        let legs = |at: usize| with(&request, |moving| moving.weight_bearing = Some(WeightBearing::ALL[at]));
        never_more(&legs(place), &legs(place + 1))?;
        let follows = |at: usize| with(&request, |moving| moving.follows = Some(Follows::ALL[at]));
        never_more(&follows(place), &follows(place + 1))?;
        let able = |at: usize| with(&request, |moving| moving.able = Some(Ability::ALL[at]));
        never_more(&able(place), &able(place + 1))?;
        let helped = |at: usize| with(&request, |moving| moving.help = Some(Help::ALL[at]));
        never_more(&helped(help), &helped(help + 1))?;
        let arms = |strong| with(&request, |moving| moving.arms_strong = Some(strong));
        never_more(&arms(true), &arms(false))?;
    }

    #[test]
    fn what_is_not_known_is_never_more_permissive_than_the_kindest_answer(request in request()) {
        let kindest = with(&request, |moving| moving.weight_bearing = Some(WeightBearing::Full));
        never_more(&kindest, &with(&request, |moving| moving.weight_bearing = None))?;
        let kindest = with(&request, |moving| moving.follows = Some(Follows::Yes));
        never_more(&kindest, &with(&request, |moving| moving.follows = None))?;
        let kindest = with(&request, |moving| moving.help = Some(Help::None));
        never_more(&kindest, &with(&request, |moving| moving.help = None))?;
        let hold = with(&request, |moving| moving.hold = Minutes::new(0.5).ok());
        never_more(&hold, &with(&request, |moving| moving.hold = None))?;
    }

    #[test]
    fn fewer_workers_or_less_equipment_is_never_more_permissive(request in request(), workers in 0u32..4, piece in 0usize..11) {
        let many = with(&request, |moving| moving.workers = Some(workers + 1));
        let few = with(&request, |moving| moving.workers = Some(workers));
        never_more(&many, &few)?;
        let alone = with(&request, |moving| moving.workers = Some(1));
        let unasked = with(&request, |moving| moving.workers = None);
        prop_assert_eq!(advise(&alone), advise(&unasked));
        let piece = Equipment::ALL[piece];
        let there = with(&request, |moving| { moving.equipment.insert(piece); });
        let not_there = with(&request, |moving| { moving.equipment.remove(&piece); });
        never_more(&there, &not_there)?;
    }

    #[test]
    fn a_sign_a_hindrance_or_more_pain_is_never_more_permissive(request in request(), other in request(), sign in 0usize..20) {
        let signed = with(&request, |moving| { moving.signs.insert(ClientSign::ALL[sign]); });
        never_more(&request, &signed)?;
        let hindered = with(&request, |moving| moving.hindrances.extend(other.moving.hindrances.iter()));
        never_more(&request, &hindered)?;
        let mut worse = request.clone();
        if let (Some(now), Some(then)) = (request.worker.pain.back, other.worker.pain.back) {
            worse.worker.pain.back = Some(now.max(then));
            never_more(&request, &worse)?;
        }
    }
}
