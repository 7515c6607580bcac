//! Any request a person could make: every answer given or left out, every value in its range.

use lifting::advise::{RecentUse, Request};
use lifting::body::{
    AgeBand, BackState, Balance, Condition, Kneeling, PainToday, Person, Region, Sex, WarningSign,
};
use lifting::plan::{PainBands, Plan, Validity};
use lifting::progress::{History, Trend};
use lifting::quantity::{
    BodyMass, Centimetres, Degrees, Kilograms, Metres, Minutes, PainScore, Repetitions, Stature,
    Weeks,
};
use lifting::task::{Coupling, Height, HeightWord, Helper, LoadMass, Reach, ReachWord, Task};
use lifting::way::Way;
use proptest::collection::{btree_map, btree_set, vec};
use proptest::option::{of, weighted};
use proptest::prelude::*;
use proptest::sample::select;

fn one<T: Copy + std::fmt::Debug + 'static>(all: &'static [T]) -> impl Strategy<Value = T> {
    select(all)
}

fn pain() -> impl Strategy<Value = PainScore> {
    (0u8..=10).prop_map(PainScore::of)
}

fn kilograms() -> impl Strategy<Value = Kilograms> {
    prop_oneof![0.0..3.0, 0.0..30.0, 0.0..1000.0].prop_map(Kilograms::clamped)
}

/// Any person.
pub fn person() -> impl Strategy<Value = Person> {
    let pains = (
        of(pain()),
        of(pain()),
        of(pain()),
        of(pain()),
        of(pain()),
        of(pain()),
    );
    let today = (
        of(one(BackState::ALL)),
        of(one(Balance::ALL)),
        of(any::<bool>()),
        of(one(Kneeling::ALL)),
    );
    let who = (
        of(one(AgeBand::ALL)),
        of(one(Sex::ALL)),
        of(100.0..=230.0f64),
        of(25.0..=300.0f64),
    );
    let known = (
        weighted(0.15, btree_set(one(WarningSign::ALL), 1..3)),
        weighted(0.4, btree_set(one(Condition::ALL), 1..4)),
        of(0.0..42.0f64),
        of(0.0..200.0f64),
    );
    (pains, today, who, known).prop_map(|(pains, today, who, known)| Person {
        age: who.0,
        sex: who.1,
        stature: who.2.and_then(|cm| Stature::new(cm).ok()),
        mass: who.3.and_then(|kg| BodyMass::new(kg).ok()),
        pain: PainToday {
            back: pains.0,
            knee_left: pains.1,
            knee_right: pains.2,
            hip_left: pains.3,
            hip_right: pains.4,
            shoulders: pains.5,
        },
        back_state: today.0,
        balance: today.1,
        fell_last_year: today.2,
        can_kneel: today.3,
        signs: known.0.unwrap_or_default(),
        conditions: known.1.unwrap_or_default(),
        pregnancy: known.2.map(Weeks::clamped),
        since_surgery: known.3.map(Weeks::clamped),
    })
}

fn mass() -> impl Strategy<Value = LoadMass> {
    prop_oneof![
        3 => kilograms().prop_map(LoadMass::Known),
        1 => (kilograms(), kilograms()).prop_map(|(a, b)| LoadMass::Untested {
            low: Some(a.at_most(b)),
            high: Some(a.at_least(b)),
        }),
        1 => of(kilograms()).prop_map(|low| LoadMass::Untested { low, high: None }),
    ]
}

fn height() -> impl Strategy<Value = Height> {
    prop_oneof![
        one(HeightWord::ALL).prop_map(Height::Word),
        (0.0..=200.0f64).prop_map(|cm| Height::Measured(Centimetres::clamped(cm))),
    ]
}

fn reach() -> impl Strategy<Value = Reach> {
    prop_oneof![
        one(ReachWord::ALL).prop_map(Reach::Word),
        (0.0..=90.0f64).prop_map(|cm| Reach::Measured(Centimetres::clamped(cm))),
    ]
}

/// Any task.
pub fn task() -> impl Strategy<Value = Task> {
    let load = (
        mass(),
        of(any::<bool>()),
        of(any::<bool>()),
        weighted(0.05, Just(true)),
    );
    let place = (
        of(height()),
        of(height()),
        of(reach()),
        of(0.0..=160.0f64),
        of(0.0..=60.0f64),
    );
    let hold = (
        of(one(Coupling::ALL)),
        of(any::<bool>()),
        of(0.0..=120.0f64),
        of(0.0..=100.0f64),
    );
    let often = (
        of(1u32..=300),
        of(0.0..=900.0f64),
        vec(of(kilograms()), 0..3),
    );
    (load, place, hold, often).prop_map(|(load, place, hold, often)| Task {
        mass: load.0,
        divisible: load.1,
        awkward: load.2,
        living: load.3.unwrap_or(false),
        start: place.0,
        end: place.1,
        reach: place.2,
        twist: place.3.map(Degrees::clamped),
        carry: place.4.map(Metres::clamped),
        coupling: hold.0,
        two_hands: hold.1,
        width: hold.2.map(Centimetres::clamped),
        depth: hold.3.map(Centimetres::clamped),
        repetitions: often.0.map(Repetitions::of),
        span: often.1.map(Minutes::clamped),
        helpers: often
            .2
            .into_iter()
            .map(|own_limit| Helper { own_limit })
            .collect(),
    })
}

/// Any plan, without pain bands of its own: the laws are stated for the default bands. Boxed, so that what is built from
/// it fits on a test's stack.
pub fn plan() -> BoxedStrategy<Plan> {
    let validity = prop_oneof![
        3 => Just(Validity::Valid),
        1 => of(0.0..20.0f64).prop_map(|weeks| Validity::Expired { overdue: weeks.map(Weeks::clamped) }),
    ];
    let limits = (
        of(kilograms()),
        btree_map(one(HeightWord::ALL), kilograms(), 0..3),
        of(pain()),
        weighted(0.3, (1u32..=40).prop_map(Repetitions::of)),
        weighted(0.3, (1u32..=6).prop_map(Repetitions::of)),
    );
    let ways = (
        of(btree_set(one(Way::ALL), 1..5)),
        btree_set(one(Way::ALL), 0..3),
        btree_set(one(Way::ALL), 0..3),
    );
    let steps = (
        of((0.0..3.0f64).prop_map(Kilograms::clamped)),
        of(kilograms()),
        any::<bool>(),
    );
    let progression = (
        weighted(0.3, 1u32..=6),
        weighted(0.3, pain()),
        weighted(0.3, pain()),
    );
    (validity, limits, ways, steps, progression)
        .prop_map(|(validity, limits, ways, steps, progression)| Plan {
            validity,
            max: limits.0,
            max_by_height: limits.1,
            times_a_bout: limits.3,
            bouts_a_day: limits.4,
            pain_ceiling: limits.2,
            allowed: ways.0,
            avoid: ways.1,
            prefer: ways.2,
            step: steps.0,
            current: steps.1,
            good_sessions: progression.0,
            hold_from: progression.1,
            back_over: progression.2,
            steps_locked: steps.2,
            grace: None,
            bands: [].into(),
        })
        .boxed()
}

/// Any pain bands a plan may set.
pub fn bands() -> impl Strategy<Value = (Region, PainBands)> {
    (one(Region::ALL), 1u8..=8, 1u8..=4).prop_map(|(region, moderate, wider)| {
        let severe_from = PainScore::of(moderate + wider);
        (
            region,
            PainBands {
                moderate_from: PainScore::of(moderate),
                severe_from,
            },
        )
    })
}

/// Any history.
pub fn history() -> impl Strategy<Value = History> {
    (
        of(0u32..10),
        of(pain()),
        of(any::<bool>()),
        of(one(Trend::ALL)),
        of(any::<bool>()),
    )
        .prop_map(|all| History {
            sessions_at_level: all.0,
            worst_during: all.1,
            settled_next_morning: all.2,
            week_trend: all.3,
            flare_today: all.4,
        })
}

/// Any request.
pub fn request() -> impl Strategy<Value = Request> {
    let recent = btree_map(one(Way::ALL), 0u32..20, 0..6).prop_map(RecentUse);
    (person(), task(), of(plan()), of(history()), recent, 0u32..8).prop_map(
        |(person, task, plan, history, recent, bouts_today)| Request {
            person,
            task,
            plan,
            history,
            recent,
            bouts_today,
        },
    )
}
