//! Typical moments, invented: somebody with a sore body in front of something to lift.

use lifting::advise::Request;
use lifting::body::{
    AgeBand, BackState, Balance, Condition, Kneeling, PainToday, Person, WarningSign,
};
use lifting::plan::Plan;
use lifting::quantity::{Kilograms, Minutes, PainScore, Repetitions};
use lifting::task::{Height, HeightWord, LoadMass, Reach, ReachWord, Task};

/// A moment with a name.
pub(crate) struct Situation {
    pub(crate) name: &'static str,
    pub(crate) about: &'static str,
    pub(crate) request: Request,
}

fn situation(name: &'static str, about: &'static str, person: Person, task: Task) -> Situation {
    Situation {
        name,
        about,
        request: Request::new(person, task),
    }
}

/// Pain nowhere, steady, kneels on either knee, good balance.
fn well() -> Person {
    let none = Some(PainScore::NONE);
    Person {
        age: Some(AgeBand::From40),
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

fn sore_back() -> Person {
    let mut person = well();
    person.pain.back = Some(PainScore::of(8));
    person.back_state = Some(BackState::Volatile);
    person
}

fn sore_knee() -> Person {
    let mut person = well();
    person.pain.knee_left = Some(PainScore::of(8));
    person.pain.back = Some(PainScore::of(2));
    person
}

/// From the floor, close, easy to hold, twice at most.
fn from_the_floor(kilograms: f64) -> Task {
    Task {
        awkward: Some(false),
        start: Some(Height::Word(HeightWord::Floor)),
        reach: Some(Reach::Word(ReachWord::Close)),
        repetitions: Some(Repetitions::of(1)),
        two_hands: Some(true),
        ..Task::of(LoadMass::Known(Kilograms::clamped(kilograms)))
    }
}

/// All of them.
pub(crate) fn all() -> Vec<Situation> {
    vec![
        situation(
            "sore_back_box",
            "A box of 6 kg on the floor. The back is at 8 and catches.",
            sore_back(),
            from_the_floor(6.0),
        ),
        situation(
            "sore_knee_laundry",
            "Some 40 light things from the floor within half an hour. The left knee is at 8.",
            sore_knee(),
            Task {
                repetitions: Some(Repetitions::of(40)),
                span: Some(Minutes::clamped(30.0)),
                two_hands: Some(false),
                ..from_the_floor(1.5)
            },
        ),
        situation(
            "unknown_parcel",
            "A big parcel of unknown weight on the floor, at most 20 kg. Nothing hurts.",
            well(),
            Task {
                mass: LoadMass::Untested {
                    low: None,
                    high: Some(Kilograms::clamped(20.0)),
                },
                awkward: Some(true),
                ..from_the_floor(1.0)
            },
        ),
        situation(
            "dropped_keys",
            "Keys on the floor. Both knees are at 8.",
            both_knees(),
            keys(),
        ),
        situation(
            "far_and_heavy",
            "A crate of 25 kg at knee height, far away, and it can be split. Nothing hurts.",
            well(),
            Task {
                start: Some(Height::Word(HeightWord::Knee)),
                reach: Some(Reach::Word(ReachWord::Far)),
                divisible: Some(true),
                ..from_the_floor(25.0)
            },
        ),
        situation(
            "worn_out",
            "A bag of 12 kg on the floor. Back in a flare at 9, both knees at 8, cannot kneel.",
            worn_out(),
            from_the_floor(12.0),
        ),
        situation(
            "from_the_table",
            "A pot of 4 kg on a table at waist height. The back is at 5.",
            Person {
                pain: PainToday {
                    back: Some(PainScore::of(5)),
                    ..well().pain
                },
                ..well()
            },
            Task {
                start: Some(Height::Word(HeightWord::Waist)),
                ..from_the_floor(4.0)
            },
        ),
        situation(
            "crate_at_arms_length",
            "A crate of 11 kg on the floor, not close, and it can be split. Nothing hurts.",
            well(),
            Task {
                reach: Some(Reach::Word(ReachWord::Medium)),
                divisible: Some(true),
                ..from_the_floor(11.0)
            },
        ),
        situation(
            "down_to_the_floor",
            "A pot of 4 kg from a table to the floor. Back in a flare at 9, both knees at 8, cannot kneel.",
            worn_out(),
            Task {
                start: Some(Height::Word(HeightWord::Waist)),
                end: Some(Height::Word(HeightWord::Floor)),
                ..from_the_floor(4.0)
            },
        ),
        situation(
            "numb_between_the_legs",
            "A box of 3 kg, and an emergency sign.",
            Person {
                signs: [WarningSign::SaddleNumb].into(),
                ..sore_back()
            },
            from_the_floor(3.0),
        ),
        situation(
            "fever",
            "A box of 3 kg, and a sign that needs advice today.",
            Person {
                signs: [WarningSign::FeverUnwell].into(),
                ..well()
            },
            from_the_floor(3.0),
        ),
        situation(
            "after_surgery",
            "A box of 3 kg, ten days after surgery, no written limit.",
            Person {
                signs: [WarningSign::PostOpRecent].into(),
                ..well()
            },
            from_the_floor(3.0),
        ),
        over_the_plan(),
        situation(
            "nothing_known",
            "Nothing was answered but the warning signs.",
            Person {
                conditions: [Condition::Osteoporosis].into(),
                ..Person::default()
            },
            Task::of(LoadMass::Untested {
                low: None,
                high: None,
            }),
        ),
    ]
}

fn both_knees() -> Person {
    let mut person = sore_knee();
    person.pain.knee_right = Some(PainScore::of(8));
    person
}

fn keys() -> Task {
    Task {
        two_hands: Some(false),
        ..from_the_floor(0.2)
    }
}

fn worn_out() -> Person {
    let mut person = both_knees();
    person.pain.back = Some(PainScore::of(9));
    person.back_state = Some(BackState::Flare);
    person.can_kneel = Some(Kneeling::No);
    person.balance = Some(Balance::Poor);
    person
}

fn over_the_plan() -> Situation {
    let mut found = situation(
        "over_the_plan",
        "A box of 7 kg from the floor. The therapist's plan says 5 kg.",
        well(),
        from_the_floor(7.0),
    );
    found.request.plan = Some(Plan {
        max: Some(Kilograms::clamped(5.0)),
        ..Plan::blank()
    });
    found
}
