//! Invented demo data: some weeks of somebody who does not exist, who lifts and helps others move, told through the app's own
//! commands.

mod care;

use crate::App;
use crate::words::Words;
use chrono::{DateTime, Days, FixedOffset, NaiveTime};
use serde_json::{Value, json};

/// The passphrase of demo data. It is shown on the home screen: there is nothing to hide.
pub const PASSPHRASE: &str = "invented pears and plums";

/// Demo data could not be made.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
pub enum DemoError {
    /// There is a vault already, and what is in it may be somebody's own.
    #[error("there is a vault already")]
    NotEmpty,
    /// A command was refused.
    #[error("the app refused a step of the demo")]
    Refused,
}

/// One invented lift.
struct Lift {
    days_ago: u64,
    hour: u32,
    answers: &'static [(&'static str, &'static str)],
    back: u8,
    knee_right: u8,
    /// What was done instead, when it was left.
    instead: Option<&'static str>,
    pain_after: u8,
    morning: Option<u8>,
    /// The id of the words under which the task is saved.
    saved_as: Option<&'static str>,
}

const LAUNDRY: &[(&str, &str)] = &[
    ("what", "basket"),
    ("mass", "two_bottles"),
    ("often", "twice"),
];
const WATER: &[(&str, &str)] = &[("what", "big"), ("mass", "six_pack"), ("often", "once")];
const TOOLBOX: &[(&str, &str)] = &[("what", "box"), ("mass", "water_bucket"), ("start", "knee")];
const SUITCASE: &[(&str, &str)] = &[("what", "big"), ("mass", "suitcase"), ("often", "once")];

const LIFTS: &[Lift] = &[
    lift(13, 9, LAUNDRY)
        .hurting(4, 2)
        .after(4, Some(3))
        .saved("demo-laundry"),
    lift(11, 17, WATER)
        .hurting(3, 2)
        .after(3, Some(3))
        .saved("demo-water"),
    lift(9, 10, SUITCASE).hurting(5, 3).instead("ask_person"),
    lift(6, 9, LAUNDRY).hurting(3, 4).after(3, Some(2)),
    lift(4, 16, TOOLBOX).hurting(2, 3).after(3, Some(2)),
    lift(1, 11, LAUNDRY).hurting(2, 2).after(2, None),
];

const fn lift(days_ago: u64, hour: u32, answers: &'static [(&'static str, &'static str)]) -> Lift {
    Lift {
        days_ago,
        hour,
        answers,
        back: 0,
        knee_right: 0,
        instead: None,
        pain_after: 0,
        morning: None,
        saved_as: None,
    }
}

impl Lift {
    const fn hurting(self, back: u8, knee_right: u8) -> Self {
        Self {
            back,
            knee_right,
            ..self
        }
    }

    const fn after(self, pain_after: u8, morning: Option<u8>) -> Self {
        Self {
            pain_after,
            morning,
            ..self
        }
    }

    const fn instead(self, instead: &'static str) -> Self {
        Self {
            instead: Some(instead),
            ..self
        }
    }

    const fn saved(self, saved_as: &'static str) -> Self {
        Self {
            saved_as: Some(saved_as),
            ..self
        }
    }

    /// The answer to a question of the walk.
    fn answer(&self, question: &str) -> Value {
        let own = self.answers.iter().find(|(id, _)| *id == question);
        if let Some((_, choice)) = own {
            return json!({ "choice": choice });
        }
        match question {
            "signs_full" | "signs_flare" | "other" => json!({ "choices": [] }),
            "conditions" => json!({ "choices": ["knee_osteoarthritis"] }),
            "age" => json!({ "choice": "40-64" }),
            "signs_today" | "fell" => json!({ "choice": "no" }),
            "sex" => json!({ "choice": "female" }),
            "stature" => json!({ "number": 168, "unit": "cm" }),
            "body_mass" => json!({ "number": 72, "unit": "kg" }),
            "start" => json!({ "choice": "floor" }),
            "reach" => json!({ "choice": "close" }),
            "often" => json!({ "choice": "once" }),
            "back" => json!({ "pain": self.back }),
            "back_state" => json!({ "choice": "steady" }),
            "knee_left" => json!({ "pain": 1 }),
            "knee_right" => json!({ "pain": self.knee_right }),
            "balance" => json!({ "choice": "good" }),
            "kneel" => json!({ "choice": "one_side" }),
            _ => json!({ "not_sure": true }),
        }
    }
}

/// Fills an app that was never started with invented data, and leaves it open. What is there is marked as
/// invented; demo data that is there already is left as it is.
///
/// # Errors
/// [`DemoError::NotEmpty`] when there is a vault that is not a demo; [`DemoError::Refused`] when a step fails,
/// for example on a full disk.
pub fn fill(app: &App) -> Result<(), DemoError> {
    let demo = Demo { app };
    let hello = demo.ask(json!({ "do": "hello" }), app.now())?;
    if hello.get("first_start") != Some(&Value::Bool(true)) {
        let is_demo = hello.get("demo") == Some(&Value::Bool(true));
        return if is_demo {
            Ok(())
        } else {
            Err(DemoError::NotEmpty)
        };
    }
    let first_start = json!({
        "do": "first_start", "use": "lift", "units": "kg", "passphrase": PASSPHRASE, "again": PASSPHRASE,
    });
    demo.ask(first_start, app.now())?;
    app.mark_as_demo().map_err(|_| DemoError::Refused)?;
    LIFTS.iter().try_for_each(|lift| demo.tell(lift))?;
    care::tell(&demo)
}

struct Demo<'a> {
    app: &'a App,
}

impl Demo<'_> {
    /// Sends a command as if at another time; gives what is in `ok`.
    fn ask(&self, command: Value, at: DateTime<FixedOffset>) -> Result<Value, DemoError> {
        let line = self.app.answer_at(&command.to_string(), at);
        let mut reply: Value = serde_json::from_str(&line).map_err(|_| DemoError::Refused)?;
        reply
            .get_mut("ok")
            .map(Value::take)
            .ok_or(DemoError::Refused)
    }

    fn tell(&self, lift: &Lift) -> Result<(), DemoError> {
        let at = self.day(lift.days_ago, lift.hour);
        let mut page = self.ask(json!({ "do": "walk_start" }), at)?;
        loop {
            let text = |value: Option<&Value>| value.and_then(Value::as_str).map(str::to_owned);
            let question = match text(page.get("page")).as_deref() {
                Some("question") => text(page.pointer("/question/id")),
                Some("check") => None,
                Some("interruption") => {
                    let id = text(page.get("id"));
                    let go_on = json!({ "do": "walk_answer", "question": id, "answer": { "choice": "go_on" } });
                    page = self.ask(go_on, at)?;
                    continue;
                }
                _ => break,
            };
            let next = match question {
                Some(id) => {
                    json!({ "do": "walk_answer", "question": id, "answer": lift.answer(&id) })
                }
                None => json!({ "do": "walk_confirm" }),
            };
            page = self.ask(next, at)?;
        }
        self.keep(lift, &page, at)
    }

    fn keep(
        &self,
        lift: &Lift,
        advice: &Value,
        at: DateTime<FixedOffset>,
    ) -> Result<(), DemoError> {
        if let Some(words) = lift.saved_as {
            let name = Words::load(self.app.language()).text(words);
            self.ask(
                json!({ "do": "saved_keep", "name": name, "from": "draft" }),
                at,
            )?;
        }
        let way = advice.pointer("/card/ways/0/way");
        let done = lift.instead.is_none() && way.is_some();
        let keep = if done {
            json!({ "do": "lift_keep", "done": true, "way": way })
        } else {
            json!({ "do": "lift_keep", "done": false, "instead": lift.instead })
        };
        let kept = self.ask(keep, at)?;
        let id = kept.get("id").cloned().unwrap_or_default();
        if done {
            self.ask(
                json!({ "do": "lift_pain", "id": id, "pain": lift.pain_after }),
                at,
            )?;
            if let Some(pain) = lift.morning {
                let next_morning = self.day(lift.days_ago.saturating_sub(1), 8);
                let morning =
                    json!({ "do": "morning", "id": id, "pain": pain, "back_to_usual": "yes" });
                self.ask(morning, next_morning)?;
            }
        }
        Ok(())
    }

    /// An hour of a day before today.
    fn day(&self, days_ago: u64, hour: u32) -> DateTime<FixedOffset> {
        let now = self.app.now();
        let day = now.date_naive().checked_sub_days(Days::new(days_ago));
        let time = NaiveTime::from_hms_opt(hour, 20, 0);
        let local = day.zip(time).map(|(day, time)| day.and_time(time));
        local
            .and_then(|local| local.and_local_timezone(*now.offset()).single())
            .unwrap_or(now)
    }
}
