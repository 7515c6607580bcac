//! What a person knows and answers, so that a journey can say "somebody with a sore back".

use crate::phone::Phone;

/// An answer to one question, as it is given with a finger.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Answer {
    /// One of the options, by its id.
    Pick(&'static str),
    /// Some boxes, by their ids, then Continue.
    Tick(&'static [&'static str]),
    /// "None of these".
    NoneOfThese,
    /// "I'm not sure".
    NotSure,
    /// A number from 0 to 10.
    Pain(u8),
    /// A typed number, then Continue.
    Number(&'static str),
}

/// What somebody answers, question by question; the first entry for a question counts.
pub type Story<'a> = &'a [(&'a str, Answer)];

use Answer::{NoneOfThese, NotSure, Number, Pain, Pick, Tick};

/// A healthy grown-up, a box of everyday weight, from the floor. Invented.
pub const AN_EVERYDAY_BOX: Story<'static> = &[
    ("signs_full", NoneOfThese),
    ("age", Pick("40-64")),
    ("conditions", NoneOfThese),
    ("fell", Pick("no")),
    ("sex", Pick("female")),
    ("stature", Number("166")),
    ("body_mass", NotSure),
    ("signs_today", Pick("no")),
    ("what", Pick("box")),
    ("mass", Pick("six_pack")),
    ("start", Pick("floor")),
    ("reach", Pick("close")),
    ("often", Pick("once")),
    ("back", Pain(2)),
    ("back_state", Pick("steady")),
    ("knee_left", Pain(0)),
    ("knee_right", Pain(0)),
    ("other", NoneOfThese),
    ("balance", Pick("good")),
    ("kneel", Pick("yes")),
];

/// Somebody with much to tell: every question that there is comes up. Invented.
pub const MUCH_TO_TELL: Story<'static> = &[
    ("signs_full", NoneOfThese),
    ("age", Pick("65-79")),
    ("conditions", Tick(&["pregnant", "knee_replacement_recent"])),
    ("pregnancy_weeks", Number("20")),
    ("weeks_since_surgery", Number("30")),
    ("fell", Pick("yes")),
    ("sex", NotSure),
    ("stature", Number("181,5")),
    ("body_mass", Number("88")),
    ("signs_today", Pick("no")),
    ("what", Pick("small")),
    ("mass", Pick("type_it")),
    ("mass_number", NotSure),
    ("mass_guess", Pick("up_15")),
    ("start", Pick("shin")),
    ("reach", Pick("far")),
    ("often", Pick("some_slow")),
    ("back", Pain(6)),
    ("back_state", Pick("volatile")),
    ("knee_left", Pain(4)),
    ("knee_right", Pain(5)),
    ("other", Tick(&["hip_left", "hip_right", "shoulders"])),
    ("hip_left", Pain(3)),
    ("hip_right", Pain(2)),
    ("shoulders", Pain(1)),
    ("balance", Pick("fair")),
    ("kneel", Pick("one_side")),
];

/// Questions that are asked only once, at the very first lift.
pub const ABOUT: [&str; 9] = [
    "signs_full",
    "age",
    "conditions",
    "pregnancy_weeks",
    "weeks_since_surgery",
    "fell",
    "sex",
    "stature",
    "body_mass",
];

/// Somebody who gets up with a stand aid, as a care plan says. Invented.
pub const A_STAND_AID: Story<'static> = &[
    ("new", Pick("nothing")),
    ("same", Pick("as_planned")),
    ("legs", Pick("part")),
    ("follows", Pick("yes")),
    ("help", Pick("steady_only")),
    ("trained", Tick(&["stand_aid", "hoist"])),
];

impl Phone {
    /// Makes a new vault, in the language that is shown: through the first pages to home.
    pub fn first_start(&mut self, passphrase: &str) {
        self.first_start_as("lift", passphrase);
    }

    /// As [`Phone::first_start`], for somebody who does something else most: `help` or `treat`.
    pub fn first_start_as(&mut self, used_for: &str, passphrase: &str) {
        self.tap("#begin");
        self.tap(&format!("[data-answer={used_for}]"));
        self.tap("[data-answer=kg]");
        self.type_in("#passphrase", passphrase);
        self.type_in("#again", passphrase);
        self.tap("#keep");
        self.expect_screen("home");
    }

    /// Opens the vault.
    pub fn unlock(&mut self, passphrase: &str) {
        self.expect_screen("unlock");
        self.type_in("#passphrase", passphrase);
        self.tap("#open");
    }

    /// Answers questions by `stories`, the first that knows the question, until `screen` or the
    /// question `screen` is shown. Gives the ids of the questions answered.
    pub fn walk_to(&mut self, screen: &str, stories: &[Story<'_>]) -> Vec<String> {
        self.walk_showing(screen, stories, &mut |_, _| ())
    }

    /// As [`Phone::walk_to`]; `look` is called on each page on the way, with its name.
    pub fn walk_showing(
        &mut self,
        screen: &str,
        stories: &[Story<'_>],
        look: &mut dyn FnMut(&mut Self, &str),
    ) -> Vec<String> {
        let mut asked = Vec::new();
        loop {
            let here = self.screen();
            if here == screen || here.strip_prefix("walk/") == Some(screen) {
                return asked;
            }
            look(self, &here.replace('/', "-"));
            if here == "check" {
                self.tap("#confirm");
            } else if here.starts_with("ask/") {
                self.tap("#go-on");
            } else if let Some(question) = here.strip_prefix("walk/") {
                let known = stories.iter().copied().flatten();
                let Some((_, answer)) = known.into_iter().find(|(id, _)| *id == question) else {
                    self.fail(&format!("the story has no answer to {question}"));
                };
                self.give(*answer);
                asked.push(question.to_owned());
            } else {
                self.fail(&format!("on the way to {screen} this is no question"));
            }
        }
    }

    /// Answers questions of the walk before a move by `story` until the answer is shown. Gives the ids of the
    /// questions answered; `look` is called on each page on the way.
    pub fn move_to_answer(
        &mut self,
        story: Story<'_>,
        look: &mut dyn FnMut(&mut Self, &str),
    ) -> Vec<String> {
        let mut asked = Vec::new();
        loop {
            let here = self.screen();
            if here == "move" && self.has("#quick") {
                look(self, "move-own");
                self.tap("#quick");
                continue;
            }
            let Some(question) = here.strip_prefix("move/").map(str::to_owned) else {
                return asked;
            };
            look(self, &here.replace('/', "-"));
            let Some((_, answer)) = story.iter().find(|(id, _)| *id == question) else {
                self.fail(&format!("the story has no answer to {question}"));
            };
            self.give(*answer);
            asked.push(question);
        }
    }

    /// Writes somebody down with the code that is suggested, and types in a care plan: a stand aid from bed to
    /// chair, one worker, by the office. From the list of people to the person's page.
    pub fn write_down_somebody(&mut self, picture: &str, look: &mut dyn FnMut(&mut Self, &str)) {
        self.tap("#person-new");
        look(self, "person-new");
        self.tap(&format!("[data-picture-of={picture}]"));
        look(self, "person-bare");
        self.tap("#plan");
        look(self, "care-plan-move");
        self.tap("[data-move=bed_to_chair]");
        look(self, "care-plan-ways");
        self.touch("input[value=stand_aid]");
        self.tap("#continue");
        look(self, "care-plan-workers");
        self.tap("[data-answer='1']");
        look(self, "care-plan-by");
        self.tap("[data-answer=office]");
        look(self, "care-plan-on");
        self.tap("#continue");
        look(self, "care-plan-review");
        self.tap("#not-sure");
    }

    /// Answers the question that is shown; gives the address of the next screen.
    pub fn give(&mut self, answer: Answer) -> String {
        match answer {
            Answer::Pick(id) => self.tap(&format!("[data-answer='{id}']")),
            Answer::Pain(number) => self.tap(&format!("[data-answer='{number}']")),
            Answer::NoneOfThese => self.tap("#none"),
            Answer::NotSure => self.tap("#not-sure"),
            Answer::Tick(ids) => {
                for id in ids {
                    self.touch(&format!("input[value='{id}']"));
                }
                self.tap("#continue")
            }
            Answer::Number(number) => {
                // An answer given before stands in the field.
                self.clear("#number");
                self.type_in("#number", number);
                self.tap("#continue")
            }
        }
    }
}
