//! The person: from answers to the record, and back.

use super::moment::weeks_since;
use crate::walk::answer::{Answer, Answers, Number, NumberUnit};
use crate::walk::flow::Walk;
use crate::walk::ids::QuestionId;
use crate::walk::measure::{grams_in, millimetres_in};
use chrono::{DateTime, FixedOffset};
use record::{About, AgeBand, Moment, Sex, Units};

/// The person as kept: what was answered replaces what was kept before. Sex, stature and mass that were not
/// asked stay; those that were passed over go.
#[must_use]
pub(crate) fn to_record(walk: &Walk<'_>, before: &About, now: Moment) -> About {
    let chosen = |question: QuestionId| match walk.answer(question) {
        Some(Answer::Choice(id)) => Some(id.as_str()),
        _ => None,
    };
    let weeks = |question: QuestionId| match walk.answer(question) {
        Some(Answer::Number(number)) if walk.asks(question) => Some(number.thousandths / 1000),
        _ => None,
    };
    let number = |question: QuestionId| match walk.answer(question) {
        Some(Answer::Number(number)) => Some(*number),
        _ => None,
    };
    About {
        sex: if walk.has(QuestionId::Sex) {
            chosen(QuestionId::Sex).and_then(Sex::from_id)
        } else {
            before.sex
        },
        stature_mm: if walk.has(QuestionId::Stature) {
            number(QuestionId::Stature).and_then(Number::millimetres)
        } else {
            before.stature_mm
        },
        mass_g: if walk.has(QuestionId::BodyMass) {
            number(QuestionId::BodyMass).and_then(Number::grams)
        } else {
            before.mass_g
        },
        age: chosen(QuestionId::Age).and_then(AgeBand::from_id),
        conditions: match walk.answer(QuestionId::Conditions) {
            Some(Answer::Choices(ids)) => Some(ids.iter().cloned().collect()),
            _ => None,
        },
        pregnancy_weeks: weeks(QuestionId::PregnancyWeeks),
        weeks_since_surgery: weeks(QuestionId::WeeksSinceSurgery),
        fell_last_year: chosen(QuestionId::Fell).map(|id| id == "yes"),
        asked_at: Some(now),
        fell_asked_at: Some(now),
        signs_asked_at: before.signs_asked_at,
    }
}

/// The answers that a kept person came from, with weeks counted on to now and numbers in the units that are
/// used now. Empty when never asked.
#[must_use]
pub(crate) fn from_record(about: &About, now: DateTime<FixedOffset>, units: Units) -> Answers {
    let Some(asked_at) = about.asked_at else {
        return Answers::default();
    };
    let mut answers = Answers::default();
    let or_not_sure = |answer: Option<Answer>| answer.unwrap_or(Answer::NotSure);
    let passed = weeks_since(asked_at, now);
    let weeks = |kept: Option<u32>| {
        kept.map(|weeks| {
            let thousandths = weeks.saturating_add(passed).saturating_mul(1000);
            Answer::Number(Number {
                thousandths,
                unit: NumberUnit::Weeks,
            })
        })
    };
    answers.give(
        QuestionId::Age,
        or_not_sure(about.age.map(|age| Answer::choice(age.id()))),
    );
    answers.give(
        QuestionId::Conditions,
        or_not_sure(
            about
                .conditions
                .as_ref()
                .map(|ids| Answer::choices(ids.iter().map(String::as_str))),
        ),
    );
    answers.give(
        QuestionId::PregnancyWeeks,
        or_not_sure(weeks(about.pregnancy_weeks)),
    );
    answers.give(
        QuestionId::WeeksSinceSurgery,
        or_not_sure(weeks(about.weeks_since_surgery)),
    );
    let fell = about
        .fell_last_year
        .map(|fell| Answer::choice(if fell { "yes" } else { "no" }));
    answers.give(QuestionId::Fell, or_not_sure(fell));
    give_size(&mut answers, about, units);
    answers
}

/// Sex, stature and mass, each "passed over" when it is not known.
fn give_size(answers: &mut Answers, about: &About, units: Units) {
    let (length, mass) = match units {
        Units::Kg => (NumberUnit::Centimetres, NumberUnit::Kilograms),
        Units::Lb => (NumberUnit::Inches, NumberUnit::Pounds),
    };
    let sex = about.sex.map(|sex| Answer::choice(sex.id()));
    let stature = about
        .stature_mm
        .map(|stature| Answer::Number(millimetres_in(stature, length)));
    let mass = about
        .mass_g
        .map(|grams| Answer::Number(grams_in(grams, mass)));
    for (question, answer) in [
        (QuestionId::Sex, sex),
        (QuestionId::Stature, stature),
        (QuestionId::BodyMass, mass),
    ] {
        answers.give(question, answer.unwrap_or(Answer::NotSure));
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::convert::moment;
    use crate::walk::flow::Purpose;

    fn at(text: &str) -> DateTime<FixedOffset> {
        DateTime::parse_from_rfc3339(text).unwrap()
    }

    fn kept(given: &Answers, now: &str) -> About {
        let none = Answers::default();
        let walk = Walk {
            purpose: Purpose::About,
            given,
            kept: &none,
            whole_list_due: false,
            times_a_bout: None,
        };
        to_record(&walk, &About::default(), moment::to_record(at(now)))
    }

    #[test]
    fn weeks_of_pregnancy_are_counted_on() {
        let twenty = Number {
            thousandths: 20_000,
            unit: NumberUnit::Weeks,
        };
        let given: Answers = [
            (QuestionId::Conditions, Answer::choices(["pregnant"])),
            (QuestionId::PregnancyWeeks, Answer::Number(twenty)),
        ]
        .into_iter()
        .collect();
        let about = kept(&given, "2026-11-02T09:00:00+01:00");
        let later = from_record(&about, at("2026-11-16T09:00:00+01:00"), Units::Kg);
        let expected = Number {
            thousandths: 22_000,
            unit: NumberUnit::Weeks,
        };
        assert_eq!(
            later.of(QuestionId::PregnancyWeeks),
            Some(&Answer::Number(expected))
        );
    }

    #[test]
    fn nobody_was_asked_means_no_answers() {
        assert!(
            from_record(
                &About::default(),
                at("2026-11-02T09:00:00+01:00"),
                Units::Kg
            )
            .is_empty()
        );
    }

    #[test]
    fn not_sure_comes_back_as_not_sure() {
        let given: Answers = [(QuestionId::Fell, Answer::NotSure)].into_iter().collect();
        let about = kept(&given, "2026-11-02T09:00:00+01:00");
        assert_eq!(about.fell_last_year, None);
        let back = from_record(&about, at("2026-11-03T09:00:00+01:00"), Units::Kg);
        assert_eq!(back.of(QuestionId::Fell), Some(&Answer::NotSure));
    }

    #[test]
    fn size_is_kept_whatever_the_unit_and_goes_when_it_is_passed_over() {
        let inches = Number::from_decimal(66.0, NumberUnit::Inches).unwrap();
        let pounds = Number::from_decimal(165.0, NumberUnit::Pounds).unwrap();
        let given: Answers = [
            (QuestionId::Sex, Answer::choice("female")),
            (QuestionId::Stature, Answer::Number(inches)),
            (QuestionId::BodyMass, Answer::Number(pounds)),
        ]
        .into_iter()
        .collect();
        let about = kept(&given, "2026-11-02T09:00:00+01:00");
        // 66 in = 1676.4 mm; 165 lb = 74 842.7… g.
        assert_eq!(
            (about.sex, about.stature_mm, about.mass_g),
            (Some(Sex::Female), Some(1_676), Some(74_843))
        );
        let back = from_record(&about, at("2026-11-03T09:00:00+01:00"), Units::Lb);
        for question in [QuestionId::Sex, QuestionId::Stature, QuestionId::BodyMass] {
            assert_eq!(back.of(question), given.of(question), "{}", question.id());
        }
        let passed_over: Answers = [
            (QuestionId::Sex, Answer::NotSure),
            (QuestionId::Stature, Answer::NotSure),
        ]
        .into_iter()
        .collect();
        let none = Answers::default();
        let walk = Walk {
            purpose: Purpose::About,
            given: &passed_over,
            kept: &none,
            whole_list_due: false,
            times_a_bout: None,
        };
        let now = moment::to_record(at("2026-11-04T09:00:00+01:00"));
        let about = to_record(&walk, &about, now);
        assert_eq!((about.sex, about.stature_mm), (None, None));
        assert_eq!(about.mass_g, Some(74_843), "not asked, so it stays");
    }
}
