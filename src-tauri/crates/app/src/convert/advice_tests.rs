use super::from_record;
use crate::convert::advice::to_record;
use lifting::advise::advice::{Advice, HowSoon, Outcome, Ranked};
use lifting::advise::change::{Change, ChangeStep};
use lifting::advise::{Request, judge};
use lifting::body::{Person, WarningSign};
use lifting::quantity::{Centimetres, Kilograms, Metres, Repetitions};
use lifting::task::{LoadMass, Task};
use lifting::way::Way;

/// What is kept and read back, apart from the published limit.
fn again(advice: &Advice) -> Advice {
    from_record(&to_record(advice))
}

#[test]
fn an_advice_of_the_judgement_is_read_back_whole() {
    let mut sore = Person::default();
    sore.signs.insert(WarningSign::FeverUnwell);
    for (person, mass) in [
        (Person::default(), LoadMass::Known(Kilograms::clamped(6.0))),
        (
            Person::default(),
            LoadMass::Untested {
                low: None,
                high: None,
            },
        ),
        (sore, LoadMass::Known(Kilograms::clamped(1.0))),
    ] {
        let advice = judge(&Request::new(person, Task::of(mass)));
        let back = again(&advice);
        assert_eq!(back.outcome.id(), advice.outcome.id());
        assert_eq!(back.outcome.urgency(), advice.outcome.urgency());
        assert_eq!(back.cautions, advice.cautions);
        assert_eq!(back.alternatives, advice.alternatives);
        assert_eq!(back.ruled_out, advice.ruled_out);
        let ids = |advice: &Advice| {
            advice
                .reasons
                .iter()
                .map(|reason| reason.id)
                .collect::<Vec<_>>()
        };
        assert_eq!(ids(&back), ids(&advice));
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
        ChangeStep::LowerEnd { to: cm },
        ChangeStep::Split { parts: 3, each: kg },
        ChangeStep::Lighten { to: kg },
        ChangeStep::ShortenBout {
            to: Repetitions::of(5),
        },
        ChangeStep::CarryInStages {
            to: Metres::clamped(10.0),
        },
        ChangeStep::SecondPerson { judged_at: kg },
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
        .map(|step| Change {
            steps: vec![*step],
            ways: ways.clone(),
        })
        .collect();
    changes.push(Change {
        steps: steps.to_vec(),
        ways: ways.clone(),
    });
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
