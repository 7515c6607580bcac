//! How heavy: what was said, as the judgement and the record take it.

use crate::walk::answer::{Answer, Answers, Number, NumberUnit};
use crate::walk::flow::Walk;
use crate::walk::ids::QuestionId;
use crate::walk::question::{Label, Note};
use crate::walk::questions::task::{MASS, MASS_GUESS};
use lifting::quantity::Kilograms;
use lifting::task::LoadMass;
use record::Mass;

/// A mass as it was said, in grams.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum SaidMass {
    /// An everyday weight, or a number that was typed.
    Known(u32),
    /// Not tested.
    Untested {
        /// At least this.
        low: Option<u32>,
        /// At most this. `None`: no idea.
        high: Option<u32>,
    },
}

impl SaidMass {
    /// The heaviest it can be. `None`: no upper end.
    #[must_use]
    pub(crate) const fn highest_grams(self) -> Option<u32> {
        match self {
            Self::Known(grams) => Some(grams),
            Self::Untested { high, .. } => high,
        }
    }

    /// As the judgement takes it.
    #[must_use]
    pub(crate) fn to_load(self) -> LoadMass {
        let kilograms = |grams: u32| Kilograms::clamped(f64::from(grams) / 1000.0);
        match self {
            Self::Known(grams) => LoadMass::Known(kilograms(grams)),
            Self::Untested { low, high } => LoadMass::Untested {
                low: low.map(kilograms),
                high: high.map(kilograms),
            },
        }
    }

    /// As it is kept.
    #[must_use]
    pub(crate) const fn to_record(self) -> Mass {
        match self {
            Self::Known(grams) => Mass::Known { grams },
            Self::Untested {
                low,
                high: Some(high_grams),
            } => Mass::Untested {
                low_grams: match low {
                    Some(grams) => grams,
                    None => 0,
                },
                high_grams,
            },
            Self::Untested { high: None, .. } => Mass::Unknown,
        }
    }
}

/// The mass by the answers so far. `None`: not answered to the end yet.
#[must_use]
pub(crate) fn of(walk: &Walk<'_>) -> Option<SaidMass> {
    match walk.answer(QuestionId::Mass)? {
        Answer::Choice(id) if id == "type_it" => match walk.answer(QuestionId::MassNumber)? {
            Answer::Number(number) => number.grams().map(SaidMass::Known),
            _ => guessed(walk),
        },
        Answer::Choice(id) => everyday(id),
        _ => guessed(walk),
    }
}

fn everyday(id: &str) -> Option<SaidMass> {
    let option = MASS.kind.options().iter().find(|option| option.id == id)?;
    match option.note {
        Note::Mass(grams) | Note::UpTo(grams) => Some(SaidMass::Known(grams)),
        Note::Over(grams) => Some(SaidMass::Untested {
            low: Some(grams),
            high: None,
        }),
        Note::None => None,
    }
}

fn guessed(walk: &Walk<'_>) -> Option<SaidMass> {
    let Answer::Choice(id) = walk.answer(QuestionId::MassGuess)? else {
        return None;
    };
    let option = MASS_GUESS
        .kind
        .options()
        .iter()
        .find(|option| option.id == id)?;
    let high = match option.label {
        Label::AsHeavyAs(grams) => Some(grams),
        Label::Own | Label::Sign => None,
    };
    Some(SaidMass::Untested { low: None, high })
}

/// The answers that say a kept mass again.
pub(crate) fn answer_again(mass: Mass, unit: NumberUnit, answers: &mut Answers) {
    match mass {
        Mass::Known { grams } => match everyday_of(grams) {
            Some(id) => answers.give(QuestionId::Mass, Answer::choice(id)),
            None => {
                answers.give(QuestionId::Mass, Answer::choice("type_it"));
                answers.give(QuestionId::MassNumber, Answer::Number(typed(grams, unit)));
            }
        },
        Mass::Untested { high_grams, .. } => {
            answers.give(QuestionId::Mass, Answer::NotSure);
            answers.give(QuestionId::MassGuess, Answer::choice(guess_of(high_grams)));
        }
        Mass::Unknown => {
            answers.give(QuestionId::Mass, Answer::NotSure);
            answers.give(QuestionId::MassGuess, Answer::choice("no_idea"));
        }
    }
}

fn everyday_of(grams: u32) -> Option<&'static str> {
    let weighs = |note: Note| matches!(note, Note::Mass(mass) | Note::UpTo(mass) if mass == grams);
    MASS.kind
        .options()
        .iter()
        .find(|option| weighs(option.note))
        .map(|option| option.id)
}

fn guess_of(high_grams: u32) -> &'static str {
    MASS_GUESS
        .kind
        .options()
        .iter()
        .find(|option| matches!(option.label, Label::AsHeavyAs(grams) if grams >= high_grams))
        .map_or("no_idea", |option| option.id)
}

/// A kept mass as a typed number. Kilograms are exact; pounds are rounded to the tenth at which they are typed.
fn typed(grams: u32, unit: NumberUnit) -> Number {
    crate::walk::measure::grams_in(grams, unit)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::walk::flow::Purpose;

    fn said(answers: &Answers) -> Option<SaidMass> {
        let kept = Answers::default();
        of(&Walk {
            purpose: Purpose::Lift,
            given: answers,
            kept: &kept,
            whole_list_due: false,
            times_a_bout: None,
        })
    }

    fn mass(id: &str) -> Answers {
        [(QuestionId::Mass, Answer::choice(id))]
            .into_iter()
            .collect()
    }

    #[test]
    fn an_everyday_weight_is_taken_at_the_upper_end_of_what_it_can_weigh() {
        assert_eq!(said(&mass("cup")), Some(SaidMass::Known(500)));
        assert_eq!(said(&mass("water_bucket")), Some(SaidMass::Known(10_000)));
    }

    #[test]
    fn heavier_than_all_of_them_has_no_upper_end() {
        assert_eq!(
            said(&mass("heavier")),
            Some(SaidMass::Untested {
                low: Some(20_000),
                high: None
            })
        );
    }

    #[test]
    fn a_typed_number_counts_and_pounds_are_rounded_up_to_the_gram() {
        let mut answers = mass("type_it");
        assert_eq!(said(&answers), None, "the number is still to come");
        let five_pounds = Number::from_decimal(5.0, NumberUnit::Pounds).unwrap();
        answers.give(QuestionId::MassNumber, Answer::Number(five_pounds));
        assert_eq!(said(&answers), Some(SaidMass::Known(2268)));
    }

    #[test]
    fn not_sure_is_a_guess_with_an_upper_end_or_none() {
        let mut answers: Answers = [(QuestionId::Mass, Answer::NotSure)].into_iter().collect();
        answers.give(QuestionId::MassGuess, Answer::choice("up_15"));
        assert_eq!(
            said(&answers),
            Some(SaidMass::Untested {
                low: None,
                high: Some(15_000)
            })
        );
        answers.give(QuestionId::MassGuess, Answer::choice("no_idea"));
        assert_eq!(
            said(&answers),
            Some(SaidMass::Untested {
                low: None,
                high: None
            })
        );
    }

    #[test]
    fn a_kept_mass_is_said_again_by_the_same_answers() {
        for kept in [
            Mass::Known { grams: 6_000 },
            Mass::Known { grams: 7_300 },
            Mass::Untested {
                low_grams: 0,
                high_grams: 15_000,
            },
            Mass::Unknown,
        ] {
            let mut answers = Answers::default();
            answer_again(kept, NumberUnit::Kilograms, &mut answers);
            assert_eq!(said(&answers).map(SaidMass::to_record), Some(kept));
        }
    }
}
