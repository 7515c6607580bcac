//! The task: from answers to the judgement and the record, and from the record back to answers.

use super::{mass, often};
use crate::walk::answer::{Answer, Answers, NumberUnit};
use crate::walk::flow::Walk;
use crate::walk::ids::QuestionId;
use lifting::quantity::{Minutes, Repetitions};
use lifting::task::{Coupling, Height, HeightWord, LoadMass, Reach, ReachWord, Task};

/// How a kind of thing is held. House rule, in the words of NIOSH 94-110 (section 1.1 and table 6).
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
struct Held {
    awkward: bool,
    coupling: Coupling,
    two_hands: bool,
}

/// A bag sags, so its grip is poor though arms go round it; what is long, big or not known is awkward.
fn held(what: Option<&Answer>) -> Held {
    let id = match what {
        Some(Answer::Choice(id)) => id.as_str(),
        _ => "not_sure",
    };
    let (awkward, coupling, two_hands) = match id {
        "small" | "bucket" => (false, Coupling::Fair, false),
        "box" | "basket" => (false, Coupling::Fair, true),
        "bag" => (false, Coupling::Poor, true),
        _ => (true, Coupling::Poor, true),
    };
    Held {
        awkward,
        coupling,
        two_hands,
    }
}

fn chosen<'a>(walk: &Walk<'a>, question: QuestionId) -> Option<&'a str> {
    match walk.answer(question)? {
        Answer::Choice(id) => Some(id),
        _ => None,
    }
}

/// The task as the judgement takes it. What was not asked or is not sure stays open and is judged on the
/// careful side.
#[must_use]
pub(crate) fn to_judge(walk: &Walk<'_>) -> Task {
    let mass = mass::of(walk).map_or(
        LoadMass::Untested {
            low: None,
            high: None,
        },
        mass::SaidMass::to_load,
    );
    let held = held(walk.answer(QuestionId::What));
    let often = often::of(walk);
    Task {
        awkward: Some(held.awkward),
        coupling: Some(held.coupling),
        two_hands: Some(held.two_hands),
        living: walk.chose(QuestionId::What, "living"),
        start: chosen(walk, QuestionId::Start)
            .and_then(HeightWord::from_id)
            .map(Height::Word),
        reach: chosen(walk, QuestionId::Reach)
            .and_then(ReachWord::from_id)
            .map(Reach::Word),
        repetitions: often.map(|(count, _)| Repetitions::of(count)),
        span: often
            .and_then(|(_, minutes)| minutes)
            .map(|minutes| Minutes::clamped(f64::from(minutes))),
        ..Task::of(mass)
    }
}

/// The task as it is kept.
#[must_use]
pub(crate) fn to_record(walk: &Walk<'_>) -> record::Task {
    let held = held(walk.answer(QuestionId::What));
    let coupling = match held.coupling {
        Coupling::Good => record::Coupling::Good,
        Coupling::Fair => record::Coupling::Fair,
        Coupling::Poor => record::Coupling::Poor,
    };
    let often = chosen(walk, QuestionId::Often);
    let counts = often::of(walk);
    // Before the thing itself was named, nothing about its grip was said.
    let is_named = walk.has(QuestionId::What);
    record::Task {
        what: chosen(walk, QuestionId::What).map(str::to_owned),
        mass: mass::of(walk).map(mass::SaidMass::to_record),
        awkward: is_named.then_some(held.awkward),
        coupling: is_named.then_some(coupling),
        two_hands: is_named.then_some(held.two_hands),
        start: chosen(walk, QuestionId::Start).and_then(record::HeightWord::from_id),
        reach: chosen(walk, QuestionId::Reach).and_then(record::ReachWord::from_id),
        reps: counts.map(|(count, _)| count),
        span_min: counts.and_then(|(_, minutes)| minutes),
        often: often.map(str::to_owned),
        ..record::Task::default()
    }
}

/// The answers that a kept task came from. What it does not hold is left out.
#[must_use]
pub(crate) fn from_record(task: &record::Task, unit: NumberUnit) -> Answers {
    let mut answers = Answers::default();
    let mut choice = |question: QuestionId, id: Option<&str>| {
        if let Some(id) = id {
            answers.give(question, Answer::choice(id));
        }
    };
    choice(QuestionId::What, task.what.as_deref());
    choice(QuestionId::Start, task.start.map(record::HeightWord::id));
    choice(QuestionId::Reach, task.reach.map(record::ReachWord::id));
    choice(QuestionId::Often, task.often.as_deref());
    if let Some(kept) = task.mass {
        mass::answer_again(kept, unit, &mut answers);
    }
    answers
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::walk::flow::Purpose;
    use lifting::quantity::Kilograms;

    fn answers(choices: &[(QuestionId, &str)]) -> Answers {
        choices
            .iter()
            .map(|(question, id)| (*question, Answer::choice(id)))
            .collect()
    }

    fn with<T>(given: &Answers, judge: impl FnOnce(&Walk<'_>) -> T) -> T {
        let kept = Answers::default();
        judge(&Walk {
            purpose: Purpose::Lift,
            given,
            kept: &kept,
            whole_list_due: false,
            times_a_bout: None,
        })
    }

    fn laundry() -> Answers {
        answers(&[
            (QuestionId::What, "basket"),
            (QuestionId::Mass, "two_bottles"),
            (QuestionId::Start, "floor"),
            (QuestionId::Reach, "close"),
            (QuestionId::Often, "twice"),
        ])
    }

    #[test]
    fn a_laundry_basket_takes_two_hands_and_is_not_awkward() {
        let task = with(&laundry(), to_judge);
        assert_eq!(task.mass, LoadMass::Known(Kilograms::clamped(4.0)));
        assert_eq!((task.awkward, task.two_hands), (Some(false), Some(true)));
        assert_eq!(task.start, Some(Height::Word(HeightWord::Floor)));
        assert_eq!(task.repetitions, Some(Repetitions::of(2)));
        assert_eq!(task.span, None);
    }

    #[test]
    fn not_sure_what_it_is_counts_as_awkward() {
        let unsure: Answers = [(QuestionId::What, Answer::NotSure)].into_iter().collect();
        let task = with(&unsure, to_judge);
        assert_eq!(
            (task.awkward, task.coupling),
            (Some(true), Some(Coupling::Poor))
        );
    }

    #[test]
    fn not_sure_stays_open() {
        let unsure: Answers = [QuestionId::Start, QuestionId::Reach, QuestionId::Often]
            .map(|id| (id, Answer::NotSure))
            .into_iter()
            .collect();
        let task = with(&unsure, to_judge);
        assert_eq!(
            (task.start, task.reach, task.repetitions),
            (None, None, None)
        );
        assert_eq!(
            task.mass,
            LoadMass::Untested {
                low: None,
                high: None
            }
        );
    }

    #[test]
    fn a_kept_task_gives_back_the_answers_it_came_from() {
        let given = laundry();
        let kept = with(&given, to_record);
        assert_eq!(from_record(&kept, NumberUnit::Kilograms), given);
    }
}
