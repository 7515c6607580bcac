//! The page on which a plan is edited: every part of it as a field that the screen can draw.

use super::lines::title;
use super::ways;
use super::wording;
use crate::convert::plan::to_date;
use crate::walk::text::Reader;
use crate::words::{Arg, KILOGRAMS_PER_POUND, Rounding, Units, message_id};
use record::{HeightWord, NextMorning, Pain, Plan, Way, WayStanding, Wording};
use serde::Serialize;
use serde_json::{Value, json};

/// Cues on the page (house rule: more are not remembered).
pub(super) const CUES: usize = 3;
/// Heaviest ceiling, in grams (house rule).
pub(super) const MOST_GRAMS: u32 = 100_000;
/// Largest step, in grams (house rule).
pub(super) const MOST_STEP_GRAMS: u32 = 10_000;
/// Most lifts in one go, and most goes in a day (house rule).
pub(super) const MOST_TIMES: u32 = 200;
/// Longest grace, in weeks (house rule).
pub(super) const MOST_GRACE_WEEKS: u32 = 12;
/// Most sets, and most times in each (house rule).
pub(super) const MOST_SETS: u32 = 20;
/// Most good days before a step (house rule).
pub(super) const MOST_GOOD_DAYS: u32 = 30;

/// The page.
#[derive(Debug, Serialize)]
pub(crate) struct PlanPage {
    pub(super) id: i64,
    pub(super) r#for: String,
    pub(super) title: String,
    pub(super) draft: bool,
    pub(super) version_text: String,
    sections: Vec<Section>,
    notes: Vec<String>,
}

#[derive(Debug, Serialize)]
struct Section {
    id: &'static str,
    title: String,
    fields: Vec<Field>,
}

#[derive(Debug, Serialize)]
struct Field {
    id: String,
    kind: &'static str,
    label: String,
    value: Value,
    text: String,
    #[serde(skip_serializing_if = "Option::is_none")]
    choices: Option<Vec<Choice>>,
    #[serde(skip_serializing_if = "Option::is_none")]
    min: Option<f64>,
    #[serde(skip_serializing_if = "Option::is_none")]
    max: Option<f64>,
    #[serde(skip_serializing_if = "Option::is_none")]
    step: Option<f64>,
    #[serde(skip_serializing_if = "Option::is_none")]
    unit: Option<&'static str>,
    /// Whether it may be left out: a number that sets a limit.
    #[serde(skip_serializing_if = "std::ops::Not::not")]
    optional: bool,
}

/// Numbers that a plan cannot do without.
const NEEDED: [&str; 5] = [
    "grace_weeks",
    "practice_load",
    "practice_sets",
    "practice_times",
    "practice_days",
];

#[derive(Debug, Serialize)]
struct Choice {
    id: &'static str,
    text: String,
    chosen: bool,
}

/// The page of a plan.
#[must_use]
pub(crate) fn page(
    id: i64,
    plan: &Plan,
    draft: bool,
    version_text: String,
    reader: Reader<'_>,
) -> PlanPage {
    let draw = Draw { plan, reader };
    let section = |id: &'static str, fields: Vec<Field>| Section {
        id,
        title: reader.words.text(&message_id("plan-section", id)),
        fields,
    };
    PlanPage {
        id,
        r#for: plan.whom.clone(),
        title: title(plan, reader),
        draft,
        version_text,
        sections: vec![
            section("whom", draw.whom()),
            section("limits", draw.limits()),
            section("pain", draw.pain()),
            section("ways", draw.ways()),
            section("cues", draw.cues()),
            section("practice", draw.practice()),
            section("progress", draw.progress()),
            section("flare", draw.flare()),
            section(
                "notes",
                vec![
                    draw.words("notes", plan.notes.first()),
                    draw.words("why", plan.why.as_ref()),
                ],
            ),
        ],
        notes: vec![reader.words.text("plan-page-house")],
    }
}

/// A mass in the reader's unit, to a tenth.
pub(super) fn in_unit(grams: u32, units: Units) -> f64 {
    let kilograms = f64::from(grams) / 1000.0;
    let number = match units {
        Units::Kilograms => kilograms,
        Units::Pounds => kilograms / KILOGRAMS_PER_POUND,
    };
    (number * 10.0).round() / 10.0
}

struct Draw<'a> {
    plan: &'a Plan,
    reader: Reader<'a>,
}

impl Draw<'_> {
    fn whom(&self) -> Vec<Field> {
        let plan = self.plan;
        let day = to_date(plan.review_on);
        let mut review = self.field(
            "review_on",
            "date",
            json!(day.format("%Y-%m-%d").to_string()),
        );
        review.text = self.reader.words.date_text(day);
        let title = title(plan, self.reader);
        vec![
            self.plain("for", &plan.whom),
            self.plain("title", &title),
            review,
            self.count("grace_weeks", Some(plan.grace_weeks), 0, MOST_GRACE_WEEKS),
        ]
    }

    fn limits(&self) -> Vec<Field> {
        let plan = self.plan;
        let mut fields = vec![self.mass("ceiling", plan.ceiling_g, MOST_GRAMS)];
        fields.extend(HeightWord::ALL.iter().map(|start| {
            let ceilings = plan.ceilings.iter();
            let grams = ceilings
                .filter(|ceiling| ceiling.start == *start)
                .map(|ceiling| ceiling.grams)
                .min();
            self.mass(&format!("ceiling_{}", start.id()), grams, MOST_GRAMS)
        }));
        fields.push(self.count("times_a_bout", plan.times_a_bout, 1, MOST_TIMES));
        fields.push(self.count("bouts_a_day", plan.bouts_a_day, 1, MOST_TIMES));
        fields
    }

    fn pain(&self) -> Vec<Field> {
        let chosen = self.plan.next_morning.map(NextMorning::id);
        let choices = [
            ("none", "plan-not-set"),
            ("back_to_usual", "plan-morning-back-to-usual"),
            ("no_worse", "plan-morning-no-worse"),
        ];
        vec![
            self.score("pain_ceiling", self.plan.pain_ceiling),
            self.choice("next_morning", chosen.unwrap_or("none"), &choices),
        ]
    }

    fn ways(&self) -> Vec<Field> {
        let mut fields = vec![
            self.ticks("preferred", WayStanding::Preferred),
            self.ticks("not_allowed", WayStanding::NotAllowed),
        ];
        fields.extend(ways::of(self.plan, WayStanding::NotAllowed).map(|way| {
            let mut field = self.words(&format!("why_{}", way.id()), ways::why(self.plan, way));
            let name = Arg::text(self.way(way));
            field.label = self.reader.words.format("plan-why-label", &[("way", name)]);
            field
        }));
        fields
    }

    fn cues(&self) -> Vec<Field> {
        (0..CUES)
            .map(|at| self.words(&format!("cue_{}", at + 1), self.plan.cues.get(at)))
            .collect()
    }

    fn flare(&self) -> Vec<Field> {
        let steps = self.plan.flare.as_deref().unwrap_or_default();
        (0..CUES)
            .map(|at| self.words(&format!("flare_{}", at + 1), steps.get(at)))
            .collect()
    }

    fn practice(&self) -> Vec<Field> {
        let practice = self.plan.practice.first();
        let chosen = practice.map_or("none", |practice| practice.way.id());
        let mut way = self.field("practice_way", "choice", json!(chosen));
        let none = ("none", self.reader.words.text("plan-practice-none"));
        let ways = Way::ALL.iter().map(|way| (way.id(), self.way(*way)));
        let choices: Vec<Choice> = std::iter::once(none)
            .chain(ways)
            .map(|(id, text)| Choice {
                id,
                text,
                chosen: id == chosen,
            })
            .collect();
        way.text = chosen_text(&choices);
        way.choices = Some(choices);
        let mut fields = vec![way];
        if let Some(practice) = practice {
            fields.extend([
                self.mass("practice_load", Some(practice.grams), MOST_GRAMS),
                self.count("practice_sets", Some(practice.sets), 1, MOST_SETS),
                self.count("practice_times", Some(practice.times), 1, MOST_SETS),
                self.count("practice_days", Some(practice.days_a_week), 1, 7),
            ]);
        }
        fields
    }

    fn progress(&self) -> Vec<Field> {
        let rule = self.plan.progression;
        let mut locked = self.field("locked", "yes_no", json!(rule.is_locked));
        locked.text = self.reader.words.text(if rule.is_locked {
            "plan-yes"
        } else {
            "plan-no"
        });
        vec![
            self.mass("step", rule.step_g, MOST_STEP_GRAMS),
            self.count("good_days", rule.good_days, 1, MOST_GOOD_DAYS),
            self.score("hold_from", rule.hold_from),
            self.score("back_over", rule.back_over),
            locked,
        ]
    }

    fn field(&self, id: &str, kind: &'static str, value: Value) -> Field {
        let text = if value.is_null() {
            self.reader.words.text("plan-not-set")
        } else {
            String::new()
        };
        Field {
            id: id.to_owned(),
            kind,
            label: self.reader.words.text(&message_id("plan-field", id)),
            value,
            text,
            choices: None,
            min: None,
            max: None,
            step: None,
            unit: None,
            optional: matches!(kind, "kg" | "count") && !NEEDED.contains(&id),
        }
    }

    fn plain(&self, id: &str, text: &str) -> Field {
        let mut field = self.field(id, "text", json!(text));
        text.clone_into(&mut field.text);
        field
    }

    fn words(&self, id: &str, said: Option<&Wording>) -> Field {
        match said.and_then(|said| wording::text(said, self.reader.words)) {
            Some(text) => self.plain(id, &text),
            None => self.field(id, "text", Value::Null),
        }
    }

    fn mass(&self, id: &str, grams: Option<u32>, most: u32) -> Field {
        let units = self.reader.units;
        let value = grams.map_or(Value::Null, |grams| json!(in_unit(grams, units)));
        let mut field = self.field(id, "kg", value);
        if let Some(grams) = grams {
            let kilograms = f64::from(grams) / 1000.0;
            let words = self.reader.words;
            field.text = words.mass(kilograms, units, Rounding::Nearest);
        }
        field.min = Some(0.0);
        field.max = Some(in_unit(most, units).floor());
        field.step = Some(0.5);
        field.unit = Some(units.id());
        field
    }

    fn count(&self, id: &str, count: Option<u32>, least: u32, most: u32) -> Field {
        let value = count.map_or(Value::Null, |count| json!(count));
        let mut field = self.field(id, "count", value);
        if let Some(count) = count {
            field.text = self.reader.words.number(f64::from(count));
        }
        field.min = Some(f64::from(least));
        field.max = Some(f64::from(most));
        field.step = Some(1.0);
        field
    }

    fn score(&self, id: &str, pain: Option<Pain>) -> Field {
        let rating = pain.map(|pain| u32::from(pain.rating()));
        self.count(id, rating, 0, u32::from(Pain::WORST))
    }

    fn choice(&self, id: &str, chosen: &str, choices: &[(&'static str, &str)]) -> Field {
        let mut field = self.field(id, "choice", json!(chosen));
        let choices: Vec<Choice> = choices
            .iter()
            .map(|(id, text)| Choice {
                id,
                text: self.reader.words.text(text),
                chosen: *id == chosen,
            })
            .collect();
        field.text = chosen_text(&choices);
        field.choices = Some(choices);
        field
    }

    fn ticks(&self, id: &str, standing: WayStanding) -> Field {
        let ticked: Vec<&str> = ways::of(self.plan, standing).map(Way::id).collect();
        let mut field = self.field(id, "ticks", json!(ticked));
        let choices: Vec<Choice> = Way::ALL
            .iter()
            .map(|way| Choice {
                id: way.id(),
                text: self.way(*way),
                chosen: ticked.contains(&way.id()),
            })
            .collect();
        field.text = chosen_text(&choices);
        field.choices = Some(choices);
        field
    }

    fn way(&self, way: Way) -> String {
        self.reader.words.text(&message_id("way", way.id()))
    }
}

fn chosen_text(choices: &[Choice]) -> String {
    let chosen = choices.iter().filter(|choice| choice.chosen);
    let texts: Vec<&str> = chosen.map(|choice| choice.text.as_str()).collect();
    texts.join(", ")
}
