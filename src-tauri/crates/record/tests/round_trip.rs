//! Any record that can be built comes back as it was, and its bytes are the only ones for it.
#![allow(clippy::unwrap_used, reason = "a test may stop at the first surprise")]

mod support;

use proptest::option::of;
use proptest::prelude::*;
use proptest::sample::select;
use record::*;

use support::any::{comes_back, mass, moment, pain, text};

fn task() -> impl Strategy<Value = Task> {
    let words = (
        of(select(HeightWord::ALL)),
        of(select(HeightWord::ALL)),
        of(select(ReachWord::ALL)),
    );
    let lengths = any::<[Option<u32>; 6]>();
    let counts = (
        any::<[Option<u32>; 3]>(),
        of(prop::collection::vec(any::<u32>(), 0..4)),
        any::<Option<u16>>(),
    );
    let rest = (
        any::<[Option<bool>; 3]>(),
        of(select(Coupling::ALL)),
        of(text()),
        of(text()),
        of(mass()),
    );
    (words, lengths, counts, rest).prop_map(|(words, lengths, counts, rest)| Task {
        what: rest.2,
        mass: rest.4,
        awkward: rest.0[0],
        start: words.0,
        start_mm: lengths[0],
        end: words.1,
        end_mm: lengths[1],
        reach: words.2,
        reach_mm: lengths[2],
        twist_deg: counts.2,
        carry_mm: lengths[3],
        reps: counts.0[0],
        span_min: counts.0[1],
        helpers: counts.0[2],
        helper_max_g: counts.1,
        two_hands: rest.0[1],
        width_mm: lengths[4],
        depth_mm: lengths[5],
        divisible: rest.0[2],
        coupling: rest.1,
        often: rest.3,
    })
}

fn body() -> impl Strategy<Value = BodyToday> {
    let pains = prop::array::uniform6(of(pain()));
    let states = (
        of(select(BackState::ALL)),
        of(select(Balance::ALL)),
        of(select(Kneel::ALL)),
    );
    (
        moment(),
        pains,
        states,
        of(prop::collection::vec(text(), 0..4)),
    )
        .prop_map(|(at, pains, states, signs)| BodyToday {
            at,
            back: pains[0],
            back_state: states.0,
            knee_left: pains[1],
            knee_right: pains[2],
            hip_left: pains[3],
            hip_right: pains[4],
            shoulders: pains[5],
            balance: states.1,
            kneel: states.2,
            signs,
        })
}

fn args() -> impl Strategy<Value = Vec<Arg>> {
    let value = prop_oneof![
        any::<i64>().prop_map(Value::Integer),
        text().prop_map(Value::Text)
    ];
    prop::collection::vec(
        (text(), value).prop_map(|(name, value)| Arg { name, value }),
        0..4,
    )
}

fn ways() -> impl Strategy<Value = Vec<Way>> {
    prop::collection::vec(select(Way::ALL), 0..6)
}

fn change() -> impl Strategy<Value = Change> {
    let step = (text(), args()).prop_map(|(kind, args)| ChangeStep { kind, args });
    (text(), args(), ways(), prop::collection::vec(step, 0..3)).prop_map(
        |(kind, args, ways, steps)| Change {
            kind,
            args,
            ways,
            steps,
        },
    )
}

fn reason() -> impl Strategy<Value = Reason> {
    (
        text(),
        any::<u8>(),
        select(Authority::ALL),
        select(Sure::ALL),
        text(),
        args(),
    )
        .prop_map(|(id, step, authority, sure, source, args)| Reason {
            id,
            step,
            authority,
            sure,
            source,
            args,
        })
}

fn advice() -> impl Strategy<Value = Advice> {
    let ruled_out = (select(Way::ALL), prop::collection::vec(text(), 0..3))
        .prop_map(|(way, because)| RuledOut { way, because });
    let limit =
        any::<(u32, Option<u32>)>().prop_map(|(recommended_g, index_thousandths)| TaskLimit {
            recommended_g,
            index_thousandths,
        });
    let verdict = (
        select(Outcome::ALL),
        select(Urgency::ALL),
        any::<Option<u32>>(),
        of(limit),
        text(),
    );
    let lists = (
        ways(),
        prop::collection::vec(ruled_out, 0..4),
        prop::collection::vec(text(), 0..4),
        prop::collection::vec(change(), 0..3),
        prop::collection::vec(text(), 0..4),
        prop::collection::vec(reason(), 0..4),
    );
    (verdict, lists).prop_map(|(verdict, lists)| Advice {
        outcome: verdict.0,
        urgency: verdict.1,
        ways: lists.0,
        ruled_out: lists.1,
        cautions: lists.2,
        changes: lists.3,
        alternatives: lists.4,
        reasons: lists.5,
        heaviest_g: verdict.2,
        limit: verdict.3,
        rule_version: verdict.4,
    })
}

fn answered() -> impl Strategy<Value = Answered> {
    let answer = prop_oneof![
        text().prop_map(Answer::Choice),
        prop::collection::vec(text(), 0..4).prop_map(Answer::Choices),
        pain().prop_map(Answer::Pain),
        (any::<i64>(), select(Unit::ALL))
            .prop_map(|(thousandths, unit)| Answer::Number { thousandths, unit }),
        Just(Answer::NotSure),
    ];
    (text(), answer).prop_map(|(question, answer)| Answered { question, answer })
}

fn about() -> impl Strategy<Value = About> {
    let words = (
        of(select(AgeBand::ALL)),
        of(select(Sex::ALL)),
        of(prop::collection::vec(text(), 0..4)),
    );
    let times = (of(moment()), of(moment()), of(moment()));
    (
        words,
        any::<[Option<u32>; 4]>(),
        any::<Option<bool>>(),
        times,
    )
        .prop_map(|(words, numbers, fell, times)| About {
            age: words.0,
            sex: words.1,
            stature_mm: numbers[0],
            mass_g: numbers[1],
            conditions: words.2,
            pregnancy_weeks: numbers[2],
            weeks_since_surgery: numbers[3],
            fell_last_year: fell,
            asked_at: times.0,
            signs_asked_at: times.1,
            fell_asked_at: times.2,
        })
}

fn ids() -> impl Strategy<Value = Vec<String>> {
    prop::collection::vec(text(), 0..4)
}

fn care_plan() -> impl Strategy<Value = CarePlan> {
    let first = (ids(), of(any::<u32>()), ids(), text());
    let came = (
        select(CameBy::ALL),
        any::<Option<i32>>(),
        any::<Option<[u8; 16]>>(),
    );
    (first, any::<i32>(), moment(), came).prop_map(
        |((ways, workers, equipment, issued_by), issued_day, entered_at, came)| CarePlan {
            ways,
            workers,
            equipment,
            issued_by,
            issued_day,
            entered_at,
            came_by: came.0,
            review_day: came.1,
            plan_id: came.2.map(Identity),
        },
    )
}

fn plan_head() -> impl Strategy<Value = PlanHead> {
    let number = (any::<[u8; 16]>(), any::<u32>(), moment());
    (number, text(), of(text()), any::<bool>()).prop_map(
        |((id, version, made_at), code, from, is_own)| PlanHead {
            id: Identity(id),
            version,
            made_at,
            code,
            from,
            is_own,
        },
    )
}

fn planned_move() -> impl Strategy<Value = PlannedMove> {
    let days = (any::<i32>(), any::<Option<i32>>());
    (text(), ids(), of(any::<u32>()), ids(), text(), days).prop_map(
        |(what, ways, workers, equipment, issued_by, days)| PlannedMove {
            what,
            ways,
            workers,
            equipment,
            issued_by,
            issued_on: Day(days.0),
            review_on: days.1.map(Day),
        },
    )
}

fn care_move() -> impl Strategy<Value = CareMove> {
    let body = (of(select(Ability::ALL)), of(select(Help::ALL)));
    let held = (of(select(Limb::ALL)), of(select(Hold::ALL)));
    let rest = (of(any::<u32>()), of(any::<u32>()), of(any::<bool>()));
    (text(), body, held, rest, of(moment()), of(care_plan())).prop_map(
        |(what, body, held, rest, noted_at, plan)| CareMove {
            able: body.0,
            help: body.1,
            share_permille: rest.0,
            workers: rest.1,
            limb: held.0,
            hold: held.1,
            chair_reclines: rest.2,
            noted_at,
            plan,
            ..CareMove::of(what)
        },
    )
}

proptest! {
    #[test]
    fn care_person_comes_back(
        head in (text(), text(), moment(), of(select(WeightBearing::ALL)), of(select(Follows::ALL))),
        rest in (of(any::<bool>()), of(any::<u32>()), of(ids()), of(moment())),
        moves in prop::collection::vec(care_move(), 0..3),
        plans in of(prop::collection::vec(plan_head(), 0..3)),
    ) {
        let (code, picture, since, legs, follows) = head;
        let (arms_strong, mass_g, equipment, noted_at) = rest;
        comes_back(&CarePerson {
            code, picture, since, legs, follows, arms_strong, mass_g, equipment, noted_at, moves,
            plans,
        })?;
    }

    #[test]
    fn person_plan_comes_back(
        id: [u8; 16], version: u32, made_at in moment(), code in text(), by in text(),
        moves in prop::collection::vec(planned_move(), 0..3),
    ) {
        comes_back(&PersonPlan { id: Identity(id), version, made_at, code, by, moves })?;
    }

    #[test]
    fn move_entry_comes_back(
        head in (moment(), any::<i64>(), text(), text(), select(MoveResult::ALL), of(select(Outcome::ALL))),
        rest in (of(text()), of(any::<u32>()), ids(), ids(), ids()),
        told in (of(text()), of(select(Told::ALL)), text()),
    ) {
        let (at, person, code, what, result, outcome) = head;
        let (way, workers, equipment, helped, signs) = rest;
        let (report, told, rule_version) = told;
        comes_back(&MoveEntry {
            at, person, code, what, result, outcome, way, workers, equipment, helped, signs, report, told,
            rule_version,
        })?;
    }

    #[test]
    fn patient_and_note_come_back(
        alias in text(), since in moment(), pairing: Option<[u8; 16]>, seen_at in of(moment()), review_on: Option<i32>,
    ) {
        comes_back(&Note { at: since, text: alias.clone() })?;
        let (pairing, review_on) = (pairing.map(Identity), review_on.map(Day));
        comes_back(&Patient { alias, since, pairing, seen_at, review_on })?;
    }

    #[test]
    fn departure_comes_back(
        at in moment(), what in select(DepartureWhat::ALL), how in prop::collection::vec(select(DepartureHow::ALL), 0..4),
        seal in of(select(Seal::ALL)), names in [of(text()), of(text())], numbers: [Option<u32>; 3],
        with_notes: Option<bool>,
    ) {
        let [to, about] = names;
        let [version, days, entries] = numbers;
        comes_back(&Departure { at, what, how, seal, to, about, version, days, with_notes, entries })?;
    }

    #[test]
    fn shift_comes_back(
        began_at in moment(), handed_at in of(moment()), erased in of((moment(), any::<u32>(), any::<u32>())),
    ) {
        let erased = erased.map(|(at, plain, proofs)| Erased { at, plain, proofs });
        comes_back(&Shift { began_at, handed_at, erased })?;
    }

    #[test]
    fn move_draft_comes_back(
        opened_at in moment(), person: i64, what in text(),
        answers in prop::collection::vec(answered(), 0..12), open_question in of(text()),
    ) {
        comes_back(&MoveDraft { opened_at, person, what, answers, open_question })?;
    }

    #[test]
    fn worker_comes_back(trained in of(ids())) {
        comes_back(&Worker { trained })?;
    }

    #[test]
    fn task_comes_back(task in task()) {
        comes_back(&task)?;
    }

    #[test]
    fn body_comes_back(body in body()) {
        comes_back(&body)?;
    }

    #[test]
    fn about_comes_back(about in about()) {
        comes_back(&about)?;
    }

    #[test]
    fn settings_come_back(used_for in select(UsedFor::ALL), units in select(Units::ALL)) {
        comes_back(&Settings { used_for, units })?;
    }

    #[test]
    fn lift_comes_back(
        head in (moment(), text(), task(), body()), advice in advice(),
        tail in (any::<bool>(), of(select(Way::ALL)), of(text())),
    ) {
        let (at, title, task, body) = head;
        comes_back(&advice)?;
        let lift = Lift { at, title, task, body, advice, done: tail.0, way: tail.1, instead: tail.2 };
        comes_back(&lift)?;
        let facts = LiftFacts::from_bytes(&lift.to_bytes().unwrap()).unwrap();
        let Lift { task, body, advice, .. } = lift;
        prop_assert_eq!(facts, LiftFacts {
            at, title: lift.title, mass: task.mass, reps: task.reps, body, outcome: advice.outcome,
            advised: advice.ways.first().copied(), cautions: advice.cautions, rule_version: advice.rule_version, done: tail.0, way: tail.1,
        });
    }

    #[test]
    fn check_in_comes_back(
        kind in select(CheckInKind::ALL), at in moment(), pain in of(pain()),
        back_to_usual in of(select(BackToUsual::ALL)), skipped: bool,
    ) {
        comes_back(&CheckIn { kind, at, pain, back_to_usual, skipped })?;
    }

    #[test]
    fn draft_comes_back(
        opened_at in moment(), purpose in select(DraftPurpose::ALL),
        answers in prop::collection::vec(answered(), 0..12), saved_task: Option<i64>,
        advice in of(advice()), open_question in of(text()),
    ) {
        comes_back(&Draft { opened_at, purpose, answers, saved_task, advice, open_question })?;
    }

    #[test]
    fn sign_comes_back(
        sign in text(), raised_at in moment(), cleared in of((moment(), select(ClearedBy::ALL))),
    ) {
        comes_back(&OpenSign { sign, raised_at, cleared: cleared.map(|(at, by)| Cleared { at, by }) })?;
    }

    #[test]
    fn saved_task_comes_back(
        name in text(), task in task(), answers in prop::collection::vec(answered(), 0..12),
    ) {
        comes_back(&SavedTask { name, task, answers })?;
    }
}
