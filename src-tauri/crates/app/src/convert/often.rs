//! How many lifts, over how long: from the answer to "how many times", and to "more than the plan says in one go?".

use crate::walk::answer::Answer;
use crate::walk::flow::Walk;
use crate::walk::ids::QuestionId;

/// Minutes of a run of which only the most lifts are known. House rule: the shortest that an answer stands for.
const SHORT_RUN_MIN: u32 = 15;

/// Lifts and minutes for an answer to "how often": the largest count and the shortest plausible span that
/// the answer allows, so that no run is taken as lighter than it may be. House rule: a quick run has a lift
/// every half minute, a slow one is spread over three to five hours, and "more than 30" is taken as 60.
#[must_use]
pub(crate) fn how_often(id: &str) -> Option<(u32, Option<u32>)> {
    Some(match id {
        "once" => (1, None),
        "twice" => (2, None),
        "few" => (10, Some(15)),
        "some_fast" => (30, Some(15)),
        "some_slow" => (30, Some(180)),
        "many_fast" => (60, Some(30)),
        "many_slow" => (60, Some(300)),
        _ => return None,
    })
}

/// The fewest lifts that an answer stands for, as its words say, where they come one soon after the other. `None`: not of
/// that kind.
fn fewest_in_one_go(id: &str) -> Option<u32> {
    Some(match id {
        "few" => 3,
        "some_fast" => 11,
        "many_fast" => 31,
        _ => return None,
    })
}

/// Whether the answer to "how many times" leaves open if it is more than the plan allows in one go.
pub(crate) fn is_open(walk: &Walk<'_>) -> bool {
    let Some(most) = walk.times_a_bout else {
        return false;
    };
    match walk.answer(QuestionId::Often) {
        Some(Answer::NotSure) => true,
        Some(Answer::Choice(id)) => {
            let over = how_often(id).is_some_and(|(count, _)| count > most);
            over && fewest_in_one_go(id).is_some_and(|fewest| fewest <= most)
        }
        _ => false,
    }
}

/// Lifts and minutes by the answers. Within the plan counts as all that the plan allows.
pub(crate) fn of(walk: &Walk<'_>) -> Option<(u32, Option<u32>)> {
    let said = match walk.answer(QuestionId::Often) {
        Some(Answer::Choice(id)) => how_often(id),
        _ => None,
    };
    let within = is_open(walk) && walk.chose(QuestionId::OftenInPlan, "within");
    match walk.times_a_bout.filter(|_| within) {
        Some(most) => {
            let minutes = said.map_or(Some(SHORT_RUN_MIN), |(_, minutes)| minutes);
            Some((most, minutes))
        }
        None => said,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::walk::answer::Answers;
    use crate::walk::flow::Purpose;

    fn with<T>(
        often: Answer,
        in_plan: Option<&str>,
        times_a_bout: Option<u32>,
        ask: impl FnOnce(&Walk<'_>) -> T,
    ) -> T {
        let mut given = Answers::default();
        given.give(QuestionId::Often, often);
        if let Some(id) = in_plan {
            given.give(QuestionId::OftenInPlan, Answer::choice(id));
        }
        ask(&Walk {
            purpose: Purpose::Lift,
            given: &given,
            kept: &Answers::default(),
            whole_list_due: false,
            times_a_bout,
        })
    }

    #[test]
    fn more_often_is_never_taken_as_fewer_or_slower() {
        let rate = |id: &str| {
            let (count, minutes) = how_often(id).unwrap();
            f64::from(count) / f64::from(minutes.unwrap_or(15).max(15))
        };
        for (less, more) in [
            ("once", "twice"),
            ("twice", "few"),
            ("few", "some_fast"),
            ("some_fast", "many_fast"),
        ] {
            assert!(how_often(less).unwrap().0 < how_often(more).unwrap().0);
            assert!(rate(less) <= rate(more), "{less} to {more}");
        }
        assert!(rate("some_slow") <= rate("many_slow"));
    }

    #[test]
    fn only_an_answer_that_leaves_it_open_is_asked_about() {
        let open = |id: &str, most| with(Answer::choice(id), None, Some(most), is_open);
        assert!(open("few", 5) && open("few", 3) && open("few", 9));
        assert!(!open("few", 10), "ten at most are within ten");
        assert!(!open("few", 2), "three or more are over two");
        assert!(!open("twice", 5) && !open("once", 1));
        assert!(open("some_fast", 15) && !open("some_fast", 10));
        assert!(!open("some_slow", 15), "not one soon after the other");
        assert!(with(Answer::NotSure, None, Some(5), is_open));
        assert!(!with(Answer::choice("few"), None, None, is_open), "no plan");
    }

    #[test]
    fn within_the_plan_counts_as_all_that_it_allows_and_more_as_was_said() {
        let few = || Answer::choice("few");
        assert_eq!(
            with(few(), Some("within"), Some(5), of),
            Some((5, Some(15)))
        );
        assert_eq!(with(few(), Some("more"), Some(5), of), Some((10, Some(15))));
        assert_eq!(with(few(), Some("within"), None, of), Some((10, Some(15))));
        assert_eq!(
            with(few(), Some("within"), Some(2), of),
            Some((10, Some(15)))
        );
        let unsure = with(Answer::NotSure, Some("within"), Some(5), of);
        assert_eq!(unsure, Some((5, Some(15))));
        assert_eq!(with(Answer::NotSure, Some("more"), Some(5), of), None);
    }
}
