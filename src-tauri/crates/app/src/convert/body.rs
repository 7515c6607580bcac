//! The body today: from answers to the record, and back.

use crate::walk::answer::{Answer, Answers};
use crate::walk::flow::Walk;
use crate::walk::ids::QuestionId;
use record::{BackState, Balance, BodyToday, Kneel, Moment, Pain};
use std::collections::{BTreeMap, BTreeSet};

/// The regions that are rated only when they were ticked.
pub(crate) const OTHER_REGIONS: [QuestionId; 3] = [
    QuestionId::HipLeft,
    QuestionId::HipRight,
    QuestionId::Shoulders,
];

/// What was said about a region's pain.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum SaidPain {
    /// A rating.
    Rated(u8),
    /// It hurts, and how much is not sure.
    HurtsUnsure,
    /// Not asked, or not sure at all.
    Open,
}

/// What was said about the pain of a region. Hips and shoulders that were offered and not ticked are 0.
#[must_use]
pub(crate) fn said_pain(walk: &Walk<'_>, region: QuestionId) -> SaidPain {
    let is_other = OTHER_REGIONS.contains(&region);
    match (is_other, walk.answer(QuestionId::Other)) {
        (true, Some(Answer::Choices(ticked))) if !ticked.contains(region.id()) => {
            SaidPain::Rated(0)
        }
        (true, Some(Answer::Choices(_))) => match walk.answer(region) {
            Some(Answer::Pain(score)) => SaidPain::Rated(*score),
            _ => SaidPain::HurtsUnsure,
        },
        (true, _) => SaidPain::Open,
        (false, _) => match walk.answer(region) {
            Some(Answer::Pain(score)) => SaidPain::Rated(*score),
            _ => SaidPain::Open,
        },
    }
}

/// The body as it is kept.
#[must_use]
pub(crate) fn to_record(walk: &Walk<'_>, at: Moment, signs: Option<Vec<String>>) -> BodyToday {
    let pain = |region: QuestionId| match said_pain(walk, region) {
        SaidPain::Rated(score) => Pain::new(score),
        SaidPain::HurtsUnsure | SaidPain::Open => None,
    };
    let chosen = |question: QuestionId| match walk.answer(question) {
        Some(Answer::Choice(id)) => Some(id.as_str()),
        _ => None,
    };
    let unsure = |question: QuestionId| walk.is_not_sure(question);
    BodyToday {
        at,
        back: pain(QuestionId::Back),
        back_state: chosen(QuestionId::BackState).and_then(BackState::from_id),
        knee_left: pain(QuestionId::KneeLeft),
        knee_right: pain(QuestionId::KneeRight),
        hip_left: pain(QuestionId::HipLeft),
        hip_right: pain(QuestionId::HipRight),
        shoulders: pain(QuestionId::Shoulders),
        balance: chosen(QuestionId::Balance)
            .and_then(Balance::from_id)
            .or(unsure(QuestionId::Balance).then_some(Balance::Unknown)),
        kneel: chosen(QuestionId::Kneel)
            .and_then(Kneel::from_id)
            .or(unsure(QuestionId::Kneel).then_some(Kneel::Unknown)),
        signs,
    }
}

/// The answers that a kept body came from. With `whole`, every question was asked, so that what is open
/// was answered with "not sure"; without, what is open is left out.
#[must_use]
pub(crate) fn from_record(body: &BodyToday, whole: bool) -> Answers {
    let mut answers: BTreeMap<QuestionId, Option<Answer>> = BTreeMap::new();
    let pain = |pain: Option<Pain>| pain.map(|pain| Answer::Pain(pain.rating()));
    let choice = |id: &str| Some(Answer::choice(id));
    answers.insert(QuestionId::Back, pain(body.back));
    answers.insert(QuestionId::KneeLeft, pain(body.knee_left));
    answers.insert(QuestionId::KneeRight, pain(body.knee_right));
    answers.insert(
        QuestionId::BackState,
        body.back_state.and_then(|state| choice(state.id())),
    );
    answers.insert(
        QuestionId::Balance,
        match body.balance {
            Some(Balance::Unknown) => Some(Answer::NotSure),
            balance => balance.and_then(|balance| choice(balance.id())),
        },
    );
    answers.insert(
        QuestionId::Kneel,
        match body.kneel {
            Some(Kneel::Unknown) => Some(Answer::NotSure),
            kneel => kneel.and_then(|kneel| choice(kneel.id())),
        },
    );
    let others = [body.hip_left, body.hip_right, body.shoulders];
    if others.iter().any(Option::is_some) {
        let mut ticked = BTreeSet::new();
        for (region, kept) in OTHER_REGIONS.iter().zip(others) {
            if kept.is_none_or(|pain| pain.rating() > 0) {
                ticked.insert(region.id().to_owned());
                answers.insert(*region, Some(pain(kept).unwrap_or(Answer::NotSure)));
            }
        }
        answers.insert(QuestionId::Other, Some(Answer::Choices(ticked)));
    } else {
        answers.insert(QuestionId::Other, None);
    }
    answers
        .into_iter()
        .filter_map(|(question, answer)| match answer {
            Some(answer) => Some((question, answer)),
            None if whole => Some((question, Answer::NotSure)),
            None => None,
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::walk::flow::Purpose;

    const AT: Moment = Moment {
        at_ms: 0,
        offset_min: 0,
    };

    fn kept(given: &Answers) -> BodyToday {
        let none = Answers::default();
        let walk = Walk {
            purpose: Purpose::Lift,
            given,
            kept: &none,
            whole_list_due: false,
            times_a_bout: None,
        };
        to_record(&walk, AT, None)
    }

    fn sore_hip_day() -> Answers {
        [
            (QuestionId::Back, Answer::Pain(3)),
            (QuestionId::BackState, Answer::choice("steady")),
            (QuestionId::KneeLeft, Answer::Pain(0)),
            (QuestionId::KneeRight, Answer::NotSure),
            (QuestionId::Other, Answer::choices(["hip_left"])),
            (QuestionId::HipLeft, Answer::Pain(5)),
            (QuestionId::Balance, Answer::choice("fair")),
            (QuestionId::Kneel, Answer::NotSure),
        ]
        .into_iter()
        .collect()
    }

    #[test]
    fn what_was_offered_and_not_ticked_is_kept_as_zero() {
        let body = kept(&sore_hip_day());
        assert_eq!(body.hip_left, Pain::new(5));
        assert_eq!(body.hip_right, Pain::new(0));
        assert_eq!(body.knee_right, None, "not sure is never zero");
    }

    #[test]
    fn a_kept_body_gives_back_the_answers_it_came_from() {
        let given = sore_hip_day();
        assert_eq!(from_record(&kept(&given), true), given);
    }

    #[test]
    fn a_hip_that_hurts_and_is_not_rated_stays_so() {
        let mut given = sore_hip_day();
        given.give(QuestionId::HipLeft, Answer::NotSure);
        assert_eq!(from_record(&kept(&given), true), given);
    }

    #[test]
    fn a_body_that_was_not_asked_gives_no_answers() {
        let body = kept(&Answers::default());
        assert!(from_record(&body, false).is_empty());
    }
}
