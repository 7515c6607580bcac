//! As `round_trip`, for what is handed over between devices.
#![allow(
    clippy::unwrap_used,
    clippy::indexing_slicing,
    reason = "a test may stop at the first surprise"
)]

mod support;

use proptest::option::of;
use proptest::prelude::*;
use proptest::sample::select;
use record::*;

use support::any::{comes_back, mass, moment, pain, text};

fn identity() -> impl Strategy<Value = Identity> {
    any::<[u8; 16]>().prop_map(Identity)
}

fn wording() -> impl Strategy<Value = Wording> {
    prop_oneof![
        text().prop_map(Wording::Ours),
        text().prop_map(Wording::Typed)
    ]
}

fn wordings() -> impl Strategy<Value = Vec<Wording>> {
    prop::collection::vec(wording(), 0..4)
}

fn plan() -> impl Strategy<Value = Plan> {
    let ceiling =
        (select(HeightWord::ALL), any::<u32>()).prop_map(|(start, grams)| Ceiling { start, grams });
    let way = (select(Way::ALL), select(WayStanding::ALL), of(wording()))
        .prop_map(|(way, standing, why)| PlanWay { way, standing, why });
    let practice = (select(Way::ALL), any::<[u32; 4]>()).prop_map(
        |(way, [grams, sets, times, days_a_week])| Practice {
            way,
            grams,
            sets,
            times,
            days_a_week,
        },
    );
    let progression = (
        any::<[Option<u32>; 2]>(),
        [of(pain()), of(pain())],
        any::<bool>(),
    )
        .prop_map(|(numbers, pains, is_locked)| Progression {
            step_g: numbers[0],
            good_days: numbers[1],
            hold_from: pains[0],
            back_over: pains[1],
            is_locked,
        });
    let bands =
        (select(Region::ALL), pain(), pain()).prop_map(|(region, moderate_from, severe_from)| {
            Bands {
                region,
                moderate_from,
                severe_from,
            }
        });
    let head = (
        identity(),
        any::<u32>(),
        moment(),
        [text(), text()],
        wording(),
        of(text()),
        any::<i32>(),
    );
    let limits = (
        any::<u32>(),
        any::<[Option<u32>; 3]>(),
        prop::collection::vec(ceiling, 0..4),
        of(pain()),
        of(select(NextMorning::ALL)),
    );
    let lists = (
        prop::collection::vec(way, 0..4),
        [wordings(), wordings()],
        prop::collection::vec(practice, 0..3),
        progression,
        prop::collection::vec(bands, 0..3),
        of(wordings()),
        of(wording()),
        of(".{0,60}"),
    );
    (head, limits, lists).prop_map(|(head, limits, lists)| {
        let [whom, by] = head.3;
        let [cues, notes] = lists.1;
        Plan {
            id: head.0,
            version: head.1,
            made_at: head.2,
            whom,
            by,
            title: head.4,
            pattern: head.5,
            review_on: Day(head.6),
            grace_weeks: limits.0,
            ceiling_g: limits.1[0],
            ceilings: limits.2,
            times_a_bout: limits.1[1],
            bouts_a_day: limits.1[2],
            pain_ceiling: limits.3,
            next_morning: limits.4,
            ways: lists.0,
            cues,
            practice: lists.2,
            progression: lists.3,
            bands: lists.4,
            notes,
            why: lists.6,
            flare: lists.5,
            call: lists.7,
        }
    })
}

fn history_lift() -> impl Strategy<Value = HistoryLift> {
    let look = (
        select(CheckInKind::ALL),
        any::<u64>(),
        of(pain()),
        of(select(BackToUsual::ALL)),
    )
        .prop_map(|(kind, after_min, pain, back_to_usual)| LookBack {
            kind,
            after_min,
            pain,
            back_to_usual,
        });
    let ways = (of(select(Way::ALL)), of(select(Way::ALL)));
    let facts = (
        of(mass()),
        of(select(HeightWord::ALL)),
        prop::array::uniform6(of(pain())),
        of(select(BackState::ALL)),
    );
    (
        any::<(u64, bool, [u32; 3])>(),
        select(Outcome::ALL),
        ways,
        facts,
        prop::collection::vec(look, 0..3),
        of(any::<bool>()),
    )
        .prop_map(
            |((after_min, done, numbers), outcome, ways, facts, looks, aid_first)| HistoryLift {
                after_min,
                done,
                outcome,
                way: ways.0,
                advised: ways.1,
                mass: facts.0,
                start: facts.1,
                times: numbers[0],
                pain: facts.2,
                back_state: facts.3,
                looks,
                instead: numbers[1],
                title: numbers[2],
                aid_first,
            },
        )
}

fn history_practice() -> impl Strategy<Value = HistoryPractice> {
    (
        any::<(i64, u32, u32, bool)>(),
        select(PracticeEvent::ALL),
        of(select(Way::ALL)),
        (of(pain()), of(pain()), of(select(BackToUsual::ALL))),
    )
        .prop_map(
            |((at_min, version, grams, morning_asked), event, way, told)| HistoryPractice {
                at_min,
                version,
                event,
                way,
                grams,
                pain: told.0,
                morning_asked,
                morning_pain: told.1,
                back_to_usual: told.2,
            },
        )
}

fn practice_entry() -> impl Strategy<Value = PracticeEntry> {
    let morning = (moment(), of(pain()), of(select(BackToUsual::ALL))).prop_map(
        |(at, pain, back_to_usual)| MorningAfter {
            at,
            pain,
            back_to_usual,
        },
    );
    (
        (moment(), identity(), any::<u32>()),
        select(PracticeEvent::ALL),
        (of(select(Way::ALL)), any::<Option<u32>>(), of(pain())),
        of(morning),
    )
        .prop_map(|(head, event, told, morning)| PracticeEntry {
            at: head.0,
            plan: head.1,
            version: head.2,
            event,
            way: told.0,
            grams: told.1,
            pain: told.2,
            morning,
        })
}

fn history() -> impl Strategy<Value = History> {
    let sign = any::<(i64, u32, bool)>().prop_map(|(at_min, sign, is_cleared)| SignRaised {
        at_min,
        sign,
        is_cleared,
    });
    let version = (identity(), any::<u32>()).prop_map(|(id, version)| PlanVersion { id, version });
    let head = (
        text(),
        moment(),
        any::<Option<i32>>(),
        any::<(bool, i64)>(),
        of(version),
    );
    (
        head,
        prop::collection::vec(history_lift(), 0..4),
        prop::collection::vec(sign, 0..3),
        prop::collection::vec(text(), 0..4),
        of(prop::collection::vec(history_practice(), 0..3)),
    )
        .prop_map(|(head, lifts, signs, words, practice)| History {
            from: head.0,
            made_at: head.1,
            since: head.2.map(Day),
            with_notes: head.3.0,
            plan: head.4,
            start_min: head.3.1,
            lifts,
            signs,
            words,
            practice,
        })
}

proptest! {
    #[test]
    fn device_and_paired_come_back(
        keys: Vec<u8>, alias in of(text()), made_at in moment(), id in identity(), name in text(),
    ) {
        let secret = SecretBytes::new(keys);
        comes_back(&Device { keys: secret.clone(), alias, made_at })?;
        comes_back(&Paired { id, pairing: secret, name, since: made_at })?;
    }

    #[test]
    fn plan_comes_back(
        plan in plan(), at in moment(), pairing in of(identity()), from in of(text()), stopped_at in of(moment()),
    ) {
        comes_back(&plan)?;
        comes_back(&Followed { plan, at, pairing, from, stopped_at })?;
    }

    #[test]
    fn history_comes_back(history in history(), at in moment(), from in of(text())) {
        comes_back(&history)?;
        comes_back(&Received { history, at, from })?;
    }

    #[test]
    fn practice_comes_back(entry in practice_entry()) {
        comes_back(&entry)?;
    }
}
