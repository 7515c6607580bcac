//! The page on which a plan is edited: every part of it as a field that the screen can draw.

use super::bounds::{
    CUES, LONGEST_CALL, LONGEST_NOTES, LONGEST_PRIVATE, LONGEST_SENTENCE, LONGEST_STEP,
    LONGEST_TITLE, MOST_GOOD_DAYS, MOST_GRACE_WEEKS, MOST_GRAMS, MOST_STEP_GRAMS, MOST_TIMES,
};
use super::lines::title;
use super::ways;
use crate::convert::plan::to_date;
use crate::walk::text::Reader;
use crate::words::{Arg, KILOGRAMS_PER_POUND, Units, message_id};
use handoff::Alias;
use record::{HeightWord, NextMorning, Plan, WayStanding, Wording};
use serde::Serialize;
use serde_json::{Value, json};

mod bands;
mod kind;
mod practice;

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
    /// Longest text, in characters.
    #[serde(skip_serializing_if = "Option::is_none")]
    max_length: Option<usize>,
    /// What helps to fill it in.
    #[serde(skip_serializing_if = "Option::is_none")]
    hint: Option<String>,
    /// Whether it may be left out: a number that sets a limit.
    #[serde(skip_serializing_if = "std::ops::Not::not")]
    optional: bool,
}

/// A number that a plan cannot do without.
const NEEDED: &str = "grace_weeks";

#[derive(Debug, Serialize)]
struct Choice {
    id: &'static str,
    text: String,
    chosen: bool,
}

/// The field of the reason that stays on this phone.
pub(super) const PRIVATE: &str = "why_private";

/// What there is beside the plan itself.
pub(super) struct Standing {
    /// Whether it is not handed over as it stands.
    pub(super) is_draft: bool,
    /// The version that was handed over last.
    pub(super) version_text: String,
    /// Why the next version is as it is, where the person is not told.
    pub(super) private: Option<String>,
}

/// The page of a plan.
#[must_use]
pub(super) fn page(id: i64, plan: &Plan, standing: Standing, reader: Reader<'_>) -> PlanPage {
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
        draft: standing.is_draft,
        version_text: standing.version_text,
        sections: vec![
            section("whom", draw.whom()),
            section("limits", draw.limits()),
            section("pain", draw.pain()),
            section("ways", draw.ways()),
            section("cues", draw.cues()),
            section("practice", draw.practice()),
            section("progress", draw.progress()),
            section("flare", draw.flare()),
            section("notes", draw.notes(standing.private)),
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
        let mut call = match &plan.call {
            Some(call) => self.plain("call", call, LONGEST_CALL),
            None => self.field("call", "text", Value::Null),
        };
        call.max_length = Some(LONGEST_CALL);
        call.hint = Some(self.reader.words.text("plan-call-hint"));
        let title = title(plan, self.reader);
        vec![
            self.plain("for", &plan.whom, Alias::LONGEST),
            self.plain("title", &title, LONGEST_TITLE),
            review,
            self.count("grace_weeks", Some(plan.grace_weeks), 0, MOST_GRACE_WEEKS),
            call,
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
        let mut fields = vec![
            self.score("pain_ceiling", self.plan.pain_ceiling),
            self.choice("next_morning", chosen.unwrap_or("none"), &choices),
        ];
        fields.extend(self.bands());
        fields
    }

    fn ways(&self) -> Vec<Field> {
        let mut fields = vec![
            self.ticks("preferred", WayStanding::Preferred),
            self.ticks("not_allowed", WayStanding::NotAllowed),
        ];
        fields.extend(ways::of(self.plan, WayStanding::NotAllowed).map(|way| {
            let mut field = self.words(
                &format!("why_{}", way.id()),
                ways::why(self.plan, way),
                LONGEST_SENTENCE,
            );
            let name = Arg::text(self.way(way));
            field.label = self.reader.words.format("plan-why-label", &[("way", name)]);
            field
        }));
        fields
    }

    fn cues(&self) -> Vec<Field> {
        (0..CUES)
            .map(|at| {
                self.words(
                    &format!("cue_{}", at + 1),
                    self.plan.cues.get(at),
                    LONGEST_SENTENCE,
                )
            })
            .collect()
    }

    fn flare(&self) -> Vec<Field> {
        let steps = self.plan.flare.as_deref().unwrap_or_default();
        (0..CUES)
            .map(|at| self.words(&format!("flare_{}", at + 1), steps.get(at), LONGEST_STEP))
            .collect()
    }

    fn notes(&self, private: Option<String>) -> Vec<Field> {
        let plan = self.plan;
        let private = private.map(Wording::Typed);
        let mut private = self.words(PRIVATE, private.as_ref(), LONGEST_PRIVATE);
        private.hint = Some(self.reader.words.text("plan-private-hint"));
        vec![
            self.words("notes", plan.notes.first(), LONGEST_NOTES),
            self.words("why", plan.why.as_ref(), LONGEST_SENTENCE),
            private,
        ]
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
}
