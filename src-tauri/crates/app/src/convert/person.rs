//! The person who would lift, as the judgement takes them.

use super::body::{SaidPain, said_pain};
use crate::walk::answer::Answer;
use crate::walk::flow::Walk;
use crate::walk::ids::QuestionId;
use lifting::body::{
    AgeBand, BackState, Balance, Condition, Kneeling, PainToday, Person, Sex, WarningSign,
};
use lifting::quantity::{BodyMass, PainScore, Stature, Weeks};
use std::collections::BTreeSet;

/// A region that hurts, and nobody can say how much, is taken as severe. House rule; the lowest score that
/// counts as severe by default.
const UNRATED_PAIN: PainScore = PainScore::of(7);

/// The person by the answers so far, by what is kept about them, and by the signs that are open. What was
/// not asked or is not sure stays open and is judged on the careful side.
#[must_use]
pub(crate) fn to_judge(
    walk: &Walk<'_>,
    about: &record::About,
    open_signs: BTreeSet<WarningSign>,
) -> Person {
    let chosen = |question: QuestionId| match walk.answer(question) {
        Some(Answer::Choice(id)) => Some(id.as_str()),
        _ => None,
    };
    let weeks = |question: QuestionId| match walk.answer(question) {
        Some(Answer::Number(number)) if walk.asks(question) => Some(Weeks::clamped(number.value())),
        _ => None,
    };
    Person {
        age: chosen(QuestionId::Age).and_then(AgeBand::from_id),
        sex: about.sex.and_then(|sex| Sex::from_id(sex.id())),
        stature: about
            .stature_mm
            .and_then(|length| Stature::new(f64::from(length) / 10.0).ok()),
        mass: about
            .mass_g
            .and_then(|mass| BodyMass::new(f64::from(mass) / 1000.0).ok()),
        pain: pain(walk),
        back_state: chosen(QuestionId::BackState).and_then(BackState::from_id),
        balance: chosen(QuestionId::Balance).and_then(Balance::from_id),
        fell_last_year: chosen(QuestionId::Fell).map(|id| id == "yes"),
        can_kneel: chosen(QuestionId::Kneel).and_then(Kneeling::from_id),
        signs: open_signs,
        conditions: conditions(walk),
        pregnancy: weeks(QuestionId::PregnancyWeeks),
        since_surgery: weeks(QuestionId::WeeksSinceSurgery),
    }
}

fn pain(walk: &Walk<'_>) -> PainToday {
    let rated = |region: QuestionId| match said_pain(walk, region) {
        SaidPain::Rated(score) => Some(PainScore::of(score)),
        SaidPain::HurtsUnsure => Some(UNRATED_PAIN),
        SaidPain::Open => None,
    };
    PainToday {
        back: rated(QuestionId::Back),
        knee_left: rated(QuestionId::KneeLeft),
        knee_right: rated(QuestionId::KneeRight),
        hip_left: rated(QuestionId::HipLeft),
        hip_right: rated(QuestionId::HipRight),
        shoulders: rated(QuestionId::Shoulders),
    }
}

fn conditions(walk: &Walk<'_>) -> BTreeSet<Condition> {
    match walk.answer(QuestionId::Conditions) {
        Some(Answer::Choices(ids)) => ids.iter().filter_map(|id| Condition::from_id(id)).collect(),
        _ => BTreeSet::new(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::walk::answer::Answers;
    use crate::walk::flow::Purpose;

    fn judged(given: &Answers) -> Person {
        let kept = Answers::default();
        let walk = Walk {
            purpose: Purpose::Lift,
            given,
            kept: &kept,
            whole_list_due: false,
            times_a_bout: None,
        };
        to_judge(&walk, &record::About::default(), BTreeSet::new())
    }

    #[test]
    fn not_sure_is_passed_on_as_not_asked() {
        let unsure: Answers = [
            QuestionId::Back,
            QuestionId::KneeLeft,
            QuestionId::Balance,
            QuestionId::Kneel,
        ]
        .map(|question| (question, Answer::NotSure))
        .into_iter()
        .collect();
        let person = judged(&unsure);
        assert_eq!((person.pain.back, person.pain.knee_left), (None, None));
        assert_eq!((person.balance, person.can_kneel), (None, None));
    }

    #[test]
    fn a_hip_that_was_ticked_and_not_rated_is_severe() {
        let hip: Answers = [
            (QuestionId::Other, Answer::choices(["hip_right"])),
            (QuestionId::HipRight, Answer::NotSure),
        ]
        .into_iter()
        .collect();
        let pain = judged(&hip).pain;
        assert_eq!(pain.hip_right, Some(PainScore::of(7)));
        assert_eq!(pain.hip_left, Some(PainScore::NONE));
    }

    #[test]
    fn every_condition_and_age_that_is_offered_is_known_to_the_judgement() {
        use crate::walk::questions::about::{AGE, CONDITIONS};
        assert!(
            CONDITIONS
                .kind
                .options()
                .iter()
                .all(|option| Condition::from_id(option.id).is_some())
        );
        assert_eq!(CONDITIONS.kind.options().len(), Condition::ALL.len());
        assert!(
            AGE.kind
                .options()
                .iter()
                .all(|option| AgeBand::from_id(option.id).is_some())
        );
    }
}
