//! The ids of the questions, in the order in which they are asked.

macro_rules! question_ids {
    ($($(#[$doc:meta])* $member:ident = $id:literal),+ $(,)?) => {
        /// A question. The order of the members is the order of asking.
        #[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
        pub(crate) enum QuestionId { $($(#[$doc])* $member),+ }

        impl QuestionId {
            /// Every question, in the order of asking.
            pub(crate) const ALL: &'static [Self] = &[$(Self::$member),+];

            /// The stable id used on the wire, in drafts and in texts.
            #[must_use]
            pub(crate) const fn id(self) -> &'static str {
                match self { $(Self::$member => $id),+ }
            }

            /// The question with this id.
            #[must_use]
            pub(crate) fn from_id(id: &str) -> Option<Self> {
                match id { $($id => Some(Self::$member),)+ _ => None }
            }
        }
    };
}

question_ids!(
    /// Anything new or scary today?
    SignsToday = "signs_today",
    /// The whole list of warning signs.
    SignsFull = "signs_full",
    /// Age band.
    Age = "age",
    /// Standing conditions.
    Conditions = "conditions",
    /// Weeks of pregnancy, if pregnant.
    PregnancyWeeks = "pregnancy_weeks",
    /// Weeks since surgery, if there was any lately.
    WeeksSinceSurgery = "weeks_since_surgery",
    /// A fall in the last year.
    Fell = "fell",
    /// Sex, where published figures differ by it.
    Sex = "sex",
    /// How tall.
    Stature = "stature",
    /// How heavy the person is.
    BodyMass = "body_mass",
    /// What kind of thing.
    What = "what",
    /// How heavy, by everyday things.
    Mass = "mass",
    /// How heavy, as a number.
    MassNumber = "mass_number",
    /// How heavy it could be at most.
    MassGuess = "mass_guess",
    /// Where the hands first grip.
    Start = "start",
    /// How far from the body.
    Reach = "reach",
    /// How many times, over how long.
    Often = "often",
    /// Whether it stays within what the plan says in one go.
    OftenInPlan = "often_in_plan",
    /// Back pain now.
    Back = "back",
    /// How the back behaves today.
    BackState = "back_state",
    /// The short list of warning signs for a bad day.
    SignsFlare = "signs_flare",
    /// Left knee pain now.
    KneeLeft = "knee_left",
    /// Right knee pain now.
    KneeRight = "knee_right",
    /// Whether anything else hurts.
    Other = "other",
    /// Left hip pain now.
    HipLeft = "hip_left",
    /// Right hip pain now.
    HipRight = "hip_right",
    /// Shoulder pain now, the worse one.
    Shoulders = "shoulders",
    /// Balance today.
    Balance = "balance",
    /// Whether kneeling is possible.
    Kneel = "kneel",
);

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_id_leads_back_to_its_question() {
        for question in QuestionId::ALL {
            assert_eq!(QuestionId::from_id(question.id()), Some(*question));
        }
        assert_eq!(QuestionId::from_id("no_such_question"), None);
    }
}
