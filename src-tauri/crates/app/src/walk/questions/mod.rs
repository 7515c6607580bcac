//! All questions, one file for each part of the walk.

pub(crate) mod about;
pub(crate) mod body;
pub(crate) mod signs;
pub(crate) mod task;

use super::ids::QuestionId;
use super::question::Question;

/// The question with this id.
#[must_use]
pub(crate) const fn question(id: QuestionId) -> Question {
    match id {
        QuestionId::SignsToday => signs::TODAY,
        QuestionId::SignsFull => signs::FULL,
        QuestionId::SignsFlare => signs::FLARE,
        QuestionId::Age => about::AGE,
        QuestionId::Conditions => about::CONDITIONS,
        QuestionId::PregnancyWeeks => about::PREGNANCY_WEEKS,
        QuestionId::WeeksSinceSurgery => about::WEEKS_SINCE_SURGERY,
        QuestionId::Fell => about::FELL,
        QuestionId::Sex => about::SEX,
        QuestionId::Stature => about::STATURE,
        QuestionId::BodyMass => about::BODY_MASS,
        QuestionId::What => task::WHAT,
        QuestionId::Mass => task::MASS,
        QuestionId::MassNumber => task::MASS_NUMBER,
        QuestionId::MassGuess => task::MASS_GUESS,
        QuestionId::Start => task::START,
        QuestionId::Reach => task::REACH,
        QuestionId::Often => task::OFTEN,
        QuestionId::OftenInPlan => task::OFTEN_IN_PLAN,
        QuestionId::Back => body::BACK,
        QuestionId::BackState => body::BACK_STATE,
        QuestionId::KneeLeft => body::KNEE_LEFT,
        QuestionId::KneeRight => body::KNEE_RIGHT,
        QuestionId::Other => body::OTHER,
        QuestionId::HipLeft => body::HIP_LEFT,
        QuestionId::HipRight => body::HIP_RIGHT,
        QuestionId::Shoulders => body::SHOULDERS,
        QuestionId::Balance => body::BALANCE,
        QuestionId::Kneel => body::KNEEL,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn no_question_offers_the_same_option_twice() {
        for id in QuestionId::ALL {
            let options = question(*id).kind.options();
            for (at, option) in options.iter().enumerate() {
                assert!(
                    !options[..at].iter().any(|other| other.id == option.id),
                    "{} in {}",
                    option.id,
                    id.id()
                );
            }
        }
    }
}
