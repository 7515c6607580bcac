//! What must hold for every card, over a grid of bodies and tasks in both languages.

use app::card::{AdviceCard, Reader, card, signs_page};
use app::words::{Language, Units, Words, message_id};
use lifting::advise::{Request, advise};
use lifting::body::{
    AgeBand, BackState, Balance, Condition, Kneeling, PainToday, Person, WarningSign,
};
use lifting::plan::Plan;
use lifting::quantity::{Kilograms, Metres, PainScore, Repetitions};
use lifting::task::{Height, HeightWord, LoadMass, Reach, ReachWord, Task};
use lifting::way::Way;
use std::collections::BTreeSet;

#[test]
fn every_card_says_what_why_when_to_stop_and_what_it_is_not() {
    each_card(|card, _| {
        for text in [
            &card.headline,
            &card.why,
            &card.stop,
            &card.sure,
            &card.foot,
        ] {
            assert!(!text.is_empty(), "{card:#?}");
        }
    });
}

#[test]
fn no_card_has_a_hole() {
    each_card(|card, _| {
        for text in all_texts(card) {
            assert!(
                !text.contains(['[', '{']) && !text.trim().is_empty(),
                "{text:?} in {card:#?}"
            );
        }
    });
}

#[test]
fn at_most_three_cautions_stand_first_and_none_is_lost() {
    each_card(|card, request| {
        assert!(card.cautions.len() <= 3);
        let advice = advise(request);
        assert_eq!(
            card.cautions.len() + card.more_cautions.len(),
            advice.cautions.len()
        );
        let first = advice.cautions.first().map(|caution| caution.id());
        assert_eq!(
            card.cautions.first().map(|caution| caution.id.as_str()),
            first
        );
    });
}

#[test]
fn care_and_refusal_say_nothing_of_how_to_lift_but_who_can_help() {
    each_card(|card, _| {
        if !["seek_care", "refuse"].contains(&card.outcome) {
            return;
        }
        assert!(card.ways.is_empty() && card.changes.is_empty() && card.ruled_out.is_empty());
        assert!(card.three_words.is_empty() && card.picture.is_none());
        assert_eq!((&card.limit_text, &card.disagree), (&None, &None));
        assert!(!card.who.is_empty(), "{card:#?}");
    });
}

#[test]
fn a_lift_is_never_said_as_a_clearance() {
    each_card(|card, _| {
        if card.outcome == "lift" {
            let if_you_choose = ["If you choose to lift", "Si decide levantarlo"];
            assert!(
                if_you_choose
                    .iter()
                    .any(|start| card.headline.starts_with(start))
            );
            assert_eq!(card.three_words.len(), 3);
            assert_eq!(card.picture, card.ways.first().map(|way| way.way));
        } else {
            assert_eq!(
                card.picture, None,
                "a picture to copy although it is no plain lift"
            );
        }
    });
}

#[test]
fn without_a_plain_lift_there_is_always_a_next_step() {
    each_card(|card, _| {
        let next = card.changes.len() + card.alternatives.len() + card.who.len();
        assert!(card.outcome == "lift" || next > 0, "{card:#?}");
        assert_eq!(
            card.outcome == "lift_with_change",
            card.three_words.len() == 3 && card.picture.is_none()
        );
    });
}

#[test]
fn a_change_names_a_way_only_where_it_is_enough_for_today() {
    let words = Words::load(Language::English);
    let again = words.text("change-then-again");
    each_card(|card, _| {
        for change in &card.changes {
            assert!(!change.steps.is_empty());
            if card.outcome == "do_not_lift" {
                assert!(change.then == again || change.then == "Después pregunte aquí otra vez.");
            }
        }
    });
}

#[test]
fn what_the_plan_says_of_other_ways_is_not_said_of_the_one_offered() {
    let words = Words::load(Language::English);
    let why = |plan: Plan| {
        let mut request = Request::new(well(), task(6.0));
        request.plan = Some(plan);
        card(&advise(&request), &reader(&words)).why
    };
    let avoiding = |ways: &[Way]| Plan {
        avoid: ways.iter().copied().collect(),
        ..Plan::blank()
    };
    let said = why(avoiding(&[Way::HipHinge]));
    assert!(
        said.starts_with("Because your plan rules out the hip hinge and "),
        "{said}"
    );
    let said = why(avoiding(&[Way::HipHinge, Way::Squat]));
    assert!(
        said.starts_with("Because your plan rules out some ways and "),
        "{said}"
    );
    let listing = Plan {
        allowed: Some([Way::Squat].into()),
        ..Plan::blank()
    };
    let said = why(listing);
    assert!(
        said.starts_with("Because your plan lists this way and "),
        "{said}"
    );
    let preferring = Plan {
        prefer: [Way::Squat].into(),
        ..avoiding(&[Way::HipHinge])
    };
    let said = why(preferring);
    assert!(
        said.starts_with("Because your plan puts it first and "),
        "{said}"
    );
}

#[test]
fn the_side_to_kneel_on_is_in_the_first_step() {
    let words = Words::load(Language::English);
    let mut person = well();
    person.pain.knee_left = Some(PainScore::of(8));
    person.pain.back = Some(PainScore::of(9));
    let shown = card(&advise(&Request::new(person, task(6.0))), &reader(&words));
    let kneel = shown.ways.iter().find(|way| way.way == "lunge");
    let first = kneel.and_then(|way| way.cues.first()).map(String::as_str);
    assert_eq!(
        first,
        Some("Go down on your right knee. Put a pad under it.")
    );
}

#[test]
fn heights_are_said_as_places_on_the_body() {
    let words = Words::load(Language::English);
    let mut heavy = task(15.0);
    heavy.start = Some(Height::Word(HeightWord::Floor));
    let mut low = well();
    low.pain.back = Some(PainScore::of(9));
    low.can_kneel = Some(Kneeling::No);
    low.pain.knee_left = Some(PainScore::of(9));
    low.pain.knee_right = Some(PainScore::of(9));
    let shown = card(&advise(&Request::new(low, heavy)), &reader(&words));
    let raised = shown
        .changes
        .iter()
        .find(|change| change.text.contains("put higher"));
    assert!(
        raised.is_some_and(|change| change.text.contains("about hip height")),
        "{:#?}",
        shown.changes
    );
}

#[test]
fn the_page_of_signs_has_every_sign_once_and_what_to_do_when_stuck() {
    for language in Language::ALL {
        let page = signs_page(&Words::load(*language));
        let signs: Vec<&str> = page
            .groups
            .iter()
            .take(3)
            .flat_map(|group| group.signs.iter().map(|sign| sign.id.as_str()))
            .collect();
        let once: BTreeSet<&str> = signs.iter().copied().collect();
        assert_eq!(
            (signs.len(), once.len()),
            (WarningSign::ALL.len(), WarningSign::ALL.len())
        );
        let ids: Vec<&str> = page.groups.iter().map(|group| group.id).collect();
        assert_eq!(ids, ["emergency", "same_day", "surgeon", "stuck", "floor"]);
        assert!(!page.whom.is_empty());
    }
}

fn reader(words: &Words) -> Reader<'_> {
    Reader {
        words,
        units: Units::Kilograms,
        stature: None,
    }
}

fn all_texts(card: &AdviceCard) -> Vec<&str> {
    let pairs = [
        &card.cautions,
        &card.more_cautions,
        &card.alternatives,
        &card.who,
    ];
    let mut texts: Vec<&str> = pairs
        .into_iter()
        .flatten()
        .map(|entry| entry.text.as_str())
        .collect();
    texts.extend([&card.headline, &card.why, &card.stop, &card.sure].map(String::as_str));
    texts.extend(card.three_words.iter().map(String::as_str));
    texts.extend(card.limit_text.as_deref());
    for way in &card.ways {
        texts.extend([&way.name, &way.gloss, &way.why].map(String::as_str));
        texts.extend(way.cues.iter().map(String::as_str));
    }
    texts.extend(card.ruled_out.iter().map(|out| out.why.as_str()));
    texts.extend(
        card.changes
            .iter()
            .flat_map(|change| [change.text.as_str(), change.then.as_str()]),
    );
    texts.extend(card.reasons.iter().flat_map(|reason| {
        [
            &reason.text,
            &reason.authority_text,
            &reason.sure_text,
            &reason.source_text,
        ]
        .map(String::as_str)
    }));
    texts
}

/// Every card of the grid, in both languages.
fn each_card(check: impl Fn(&AdviceCard, &Request)) {
    for language in Language::ALL {
        let words = Words::load(*language);
        for request in grid() {
            check(&card(&advise(&request), &reader(&words)), &request);
        }
    }
}

fn well() -> Person {
    let none = Some(PainScore::NONE);
    Person {
        age: Some(AgeBand::From40),
        pain: PainToday {
            back: none,
            knee_left: none,
            knee_right: none,
            ..PainToday::default()
        },
        back_state: Some(BackState::Steady),
        balance: Some(Balance::Good),
        can_kneel: Some(Kneeling::Yes),
        ..Person::default()
    }
}

fn task(kilograms: f64) -> Task {
    Task {
        awkward: Some(false),
        start: Some(Height::Word(HeightWord::Floor)),
        reach: Some(Reach::Word(ReachWord::Close)),
        repetitions: Some(Repetitions::ONCE),
        ..Task::of(LoadMass::Known(Kilograms::clamped(kilograms)))
    }
}

fn grid() -> Vec<Request> {
    let mut requests = Vec::new();
    for person in people() {
        for task in tasks() {
            requests.push(Request::new(person.clone(), task.clone()));
            let mut planned = Request::new(person.clone(), task);
            planned.plan = Some(Plan {
                max: Some(Kilograms::clamped(5.0)),
                pain_ceiling: Some(PainScore::of(5)),
                avoid: [Way::Squat].into(),
                ..Plan::blank()
            });
            requests.push(planned);
        }
    }
    requests
}

fn people() -> Vec<Person> {
    let mut people = vec![Person::default(), well()];
    for condition in Condition::ALL {
        people.push(Person {
            conditions: [*condition].into(),
            ..well()
        });
    }
    for sign in WarningSign::ALL {
        people.push(Person {
            signs: [*sign].into(),
            ..well()
        });
    }
    for (back, left, right) in [(8, 0, 0), (0, 8, 0), (0, 8, 8), (9, 9, 9), (5, 5, 5)] {
        let pain = PainToday {
            back: Some(PainScore::of(back)),
            knee_left: Some(PainScore::of(left)),
            knee_right: Some(PainScore::of(right)),
            hip_left: Some(PainScore::of(left)),
            ..PainToday::default()
        };
        people.push(Person {
            pain,
            back_state: Some(BackState::Flare),
            ..well()
        });
        people.push(Person {
            pain,
            balance: Some(Balance::Poor),
            ..well()
        });
    }
    people.push(Person {
        age: Some(AgeBand::Under16),
        ..well()
    });
    people
}

fn tasks() -> Vec<Task> {
    let unknown = LoadMass::Untested {
        low: None,
        high: Some(Kilograms::clamped(25.0)),
    };
    vec![
        task(0.5),
        task(6.0),
        task(40.0),
        Task {
            repetitions: Some(Repetitions::of(60)),
            ..task(2.0)
        },
        Task {
            mass: unknown,
            awkward: None,
            divisible: Some(true),
            ..task(1.0)
        },
        Task {
            start: Some(Height::Word(HeightWord::Waist)),
            ..task(4.0)
        },
        Task {
            start: Some(Height::Word(HeightWord::Overhead)),
            ..task(4.0)
        },
        Task {
            carry: Some(Metres::clamped(30.0)),
            reach: Some(Reach::Word(ReachWord::Far)),
            ..task(8.0)
        },
        Task {
            living: true,
            ..task(8.0)
        },
    ]
}

#[test]
fn ids_of_messages_are_made_one_way() {
    assert_eq!(message_id("reason", "back_severe"), "reason-back-severe");
}
