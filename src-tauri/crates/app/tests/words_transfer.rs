//! Moving a person: every id of every closed list has its messages, and no reason has a hole.

use app::words::{Language, Units, Words, message_id};
use lifting::advise::advice::Alternative;
use lifting::body::Person;
use lifting::transfer::checks::{Check, StopSign};
use lifting::transfer::client::{
    CarePlan, ClientMass, ClientSign, Follows, Help, Move, Share, Transfer, WeightBearing,
};
use lifting::transfer::equipment::Equipment;
use lifting::transfer::limit::Hindrance;
use lifting::transfer::way::PeopleWay;
use lifting::transfer::{TransferRequest, advise};

#[test]
fn every_id_has_its_messages() {
    let mut wanted = Vec::new();
    for way in PeopleWay::ALL {
        let stem = message_id("way", way.id());
        wanted.extend([stem.clone(), format!("{stem}-gloss")]);
        for at in 1..=3 {
            wanted.extend([format!("{stem}-cue-{at}"), format!("{stem}-word-{at}")]);
        }
    }
    wanted.extend(Move::ALL.iter().map(|id| message_id("move", id.id())));
    wanted.extend(
        Equipment::ALL
            .iter()
            .map(|id| message_id("equipment", id.id())),
    );
    wanted.extend(
        ClientSign::ALL
            .iter()
            .map(|id| message_id("client-sign", id.id())),
    );
    wanted.extend(
        Check::ALL
            .iter()
            .map(|id| message_id("move-check", id.id())),
    );
    wanted.extend(
        StopSign::ALL
            .iter()
            .map(|id| message_id("move-stop", id.id())),
    );
    for language in Language::ALL {
        let words = Words::load(*language);
        for id in &wanted {
            assert!(words.has(id), "{id} in {language:?}");
        }
    }
}

#[test]
fn whatever_is_said_has_words_without_a_hole() {
    for language in Language::ALL {
        let words = Words::load(*language);
        for request in requests() {
            let advice = advise(&request);
            for reason in &advice.reasons {
                for text in [
                    words.reason(reason, Units::Kilograms),
                    words.because(reason, Units::Pounds),
                ] {
                    let whole = !text.is_empty() && !text.contains(['[', '{']);
                    assert!(whole, "{text:?} of {reason:?}");
                }
            }
            for other in &advice.alternatives {
                assert!(words.has(&message_id("move-else", other.id())), "{other:?}");
                assert!(Alternative::ALL.contains(other));
            }
        }
    }
}

/// Every move, bare and with everything there, by answers from kind to hard and not asked.
fn requests() -> Vec<TransferRequest> {
    let mut all = Vec::new();
    for what in Move::ALL {
        for (legs, follows, help, share) in [
            (None, None, None, None),
            (
                Some(WeightBearing::Full),
                Some(Follows::Yes),
                Some(Help::None),
                None,
            ),
            (
                Some(WeightBearing::Part),
                Some(Follows::Yes),
                Some(Help::SteadyOnly),
                Some(0.1),
            ),
            (
                Some(WeightBearing::None),
                Some(Follows::No),
                Some(Help::Unpredictable),
                Some(0.8),
            ),
        ] {
            for there in [true, false] {
                let equipment = if there { Equipment::ALL } else { &[] };
                let mut moving = Transfer {
                    mass: ClientMass::new(140.0).ok(),
                    weight_bearing: legs,
                    follows,
                    help,
                    staff_share: share.and_then(|share| Share::new(share).ok()),
                    unhurt: Some(true),
                    equipment: equipment.iter().copied().collect(),
                    ..Transfer::of(*what)
                };
                all.push(asked(&moving));
                moving.hindrances = Hindrance::ALL.iter().copied().collect();
                moving.care_plan = CarePlan::Covers {
                    ways: Some([PeopleWay::StandPivotBelt].into()),
                    workers: Some(2),
                    is_old: false,
                };
                all.push(asked(&moving));
                moving.care_plan = CarePlan::Covers {
                    ways: None,
                    workers: None,
                    is_old: true,
                };
                all.push(asked(&moving));
                moving.care_plan = CarePlan::DiffersToday;
                all.push(asked(&moving));
            }
        }
        for sign in ClientSign::ALL {
            let mut moving = Transfer::of(*what);
            moving.signs.insert(*sign);
            moving.agrees = Some(false);
            all.push(asked(&moving));
        }
    }
    all
}

fn asked(moving: &Transfer) -> TransferRequest {
    TransferRequest {
        worker: Person::default(),
        plan: None,
        moving: moving.clone(),
    }
}
