use super::from_record;
use crate::convert::advice::to_record;
use lifting::advise::advice::{Advice, HowSoon, Outcome, Ranked};
use lifting::advise::change::{Change, ChangeStep};
use lifting::advise::{Request, judge};
use lifting::body::{Balance, Kneeling, Person, WarningSign};
use lifting::quantity::{Centimetres, Kilograms, Metres, PainScore, Repetitions};
use lifting::reason::Reason;
use lifting::task::{Height, HeightWord, LoadMass, Task};
use lifting::way::Way;

/// What is kept and read back, apart from the published limit.
fn again(advice: &Advice) -> Advice {
    from_record(&to_record(advice))
}

/// A few people and things that meet most rules.
fn requests() -> Vec<Request> {
    let mut requests = Vec::new();
    for pain in [None, Some(2), Some(8)] {
        for kilograms in [0.5, 6.0, 18.0, 60.0] {
            for start in [HeightWord::Floor, HeightWord::Waist, HeightWord::Overhead] {
                for count in [1, 60] {
                    let mut person = Person::default();
                    person.pain.back = pain.map(PainScore::of);
                    person.pain.knee_left = pain.map(PainScore::of);
                    person.pain.knee_right = Some(PainScore::NONE);
                    person.pain.hip_left = pain.map(PainScore::of);
                    person.balance = pain.map(|_| Balance::Good);
                    person.can_kneel = pain.map(|_| Kneeling::Yes);
                    let mut task = Task::of(LoadMass::Known(Kilograms::clamped(kilograms)));
                    task.start = Some(Height::Word(start));
                    task.repetitions = Some(Repetitions::of(count));
                    task.carry = Some(Metres::clamped(25.0));
                    requests.push(Request::new(person.clone(), task.clone()));
                    task.mass = LoadMass::Untested {
                        low: None,
                        high: None,
                    };
                    person.signs.insert(WarningSign::FeverUnwell);
                    requests.push(Request::new(Person::default(), task.clone()));
                    requests.push(Request::new(person, task));
                }
            }
        }
    }
    requests
}

#[test]
fn an_advice_of_the_judgement_is_read_back_whole() {
    for request in requests() {
        let advice = judge(&request);
        let back = again(&advice);
        assert_eq!(back.outcome.id(), advice.outcome.id());
        assert_eq!(back.outcome.urgency(), advice.outcome.urgency());
        assert_eq!(back.outcome.ways(), advice.outcome.ways());
        assert_eq!(back.outcome.changes().len(), advice.outcome.changes().len());
        assert_eq!(back.cautions, advice.cautions);
        assert_eq!(back.alternatives, advice.alternatives);
        assert_eq!(back.ruled_out, advice.ruled_out);
        assert_eq!(back.reasons.len(), advice.reasons.len());
        for (back, given) in back.reasons.iter().zip(&advice.reasons) {
            assert_eq!(back.id, given.id);
            let names = |reason: &Reason| {
                reason
                    .values
                    .iter()
                    .map(|(name, _)| *name)
                    .collect::<Vec<_>>()
            };
            assert_eq!(names(back), names(given), "of {}", given.id.id());
        }
    }
}

#[test]
fn every_kind_of_change_is_kept_and_read_back() {
    let (kg, cm) = (Kilograms::clamped(7.5), Centimetres::clamped(50.0));
    let steps = [
        ChangeStep::FindMass { go_on_up_to: kg },
        ChangeStep::BringCloser { to: cm },
        ChangeStep::BetterGrip,
        ChangeStep::TurnFeet,
        ChangeStep::RaiseStart { to: cm },
        ChangeStep::RaiseEnd { to: cm },
        ChangeStep::LowerEnd { to: cm },
        ChangeStep::Split {
            parts: 3,
            each: kg,
            lifts: Some(Repetitions::of(12)),
        },
        ChangeStep::Lighten { to: kg },
        ChangeStep::ShortenBout {
            to: Repetitions::of(5),
        },
        ChangeStep::CarryInStages {
            to: Metres::clamped(10.0),
        },
        ChangeStep::SecondPerson { judged_at: kg },
        ChangeStep::ThreePeople { judged_at: kg },
    ];
    assert_eq!(
        steps.len(),
        ChangeStep::IDS.len(),
        "a kind of change is missing here"
    );
    let ways = Ranked {
        first: Way::Squat,
        others: vec![Way::HipHinge],
    };
    let mut changes: Vec<Change> = steps
        .iter()
        .map(|step| Change::of(vec![*step], ways.clone()))
        .collect();
    changes.push(Change::of(steps.to_vec(), ways.clone()));
    let advice = Advice {
        outcome: Outcome::LiftWithChange { ways, changes },
        ruled_out: Vec::new(),
        cautions: Vec::new(),
        alternatives: Vec::new(),
        reasons: Vec::new(),
        heaviest_today: Some(kg),
        limit: None,
        loads: Vec::new(),
    };
    assert_eq!(again(&advice), advice);
}

#[test]
fn how_soon_is_kept() {
    for how_soon in [HowSoon::SameDay, HowSoon::Emergency] {
        let mut advice = judge(&Request::new(
            Person::default(),
            Task::of(LoadMass::Known(Kilograms::clamped(1.0))),
        ));
        advice.outcome = Outcome::SeekCare { how_soon };
        assert_eq!(again(&advice).outcome, advice.outcome);
    }
}

#[test]
fn what_this_version_does_not_know_is_left_out() {
    let advice = judge(&Request::new(
        Person::default(),
        Task::of(LoadMass::Known(Kilograms::clamped(1.0))),
    ));
    let mut kept = to_record(&advice);
    kept.cautions.push("from_the_future".to_owned());
    kept.changes.push(record::Change {
        kind: "teleport".to_owned(),
        args: Vec::new(),
        ways: vec![record::Way::Squat],
        steps: Vec::new(),
    });
    assert_eq!(from_record(&kept).cautions, advice.cautions);
}
