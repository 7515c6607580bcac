//! One field of the page, by its kind.

use super::{Choice, Draw, Field, NEEDED, in_unit};
use crate::use_cases::plan::{ways, wording};
use crate::words::{Rounding, message_id};
use record::{Pain, Way, WayStanding, Wording};
use serde_json::{Value, json};
use std::ops::RangeInclusive;

impl Draw<'_> {
    pub(super) fn field(&self, id: &str, kind: &'static str, value: Value) -> Field {
        self.field_named(id, self.label(id), kind, value)
    }

    pub(super) fn label(&self, id: &str) -> String {
        self.reader.words.text(&message_id("plan-field", id))
    }

    /// A field whose label is put together.
    pub(super) fn field_named(
        &self,
        id: &str,
        label: String,
        kind: &'static str,
        value: Value,
    ) -> Field {
        let text = if value.is_null() {
            self.reader.words.text("plan-not-set")
        } else {
            String::new()
        };
        Field {
            id: id.to_owned(),
            kind,
            label,
            value,
            text,
            choices: None,
            min: None,
            max: None,
            step: None,
            unit: None,
            max_length: None,
            hint: None,
            optional: matches!(kind, "kg" | "count") && id != NEEDED,
        }
    }

    pub(super) fn plain(&self, id: &str, text: &str, longest: usize) -> Field {
        let mut field = self.field(id, "text", json!(text));
        text.clone_into(&mut field.text);
        field.max_length = Some(longest);
        field
    }

    pub(super) fn words(&self, id: &str, said: Option<&Wording>, longest: usize) -> Field {
        let mut field = match said.and_then(|said| wording::text(said, self.reader.words)) {
            Some(text) => self.plain(id, &text, longest),
            None => self.field(id, "text", Value::Null),
        };
        field.max_length = Some(longest);
        field
    }

    pub(super) fn mass(&self, id: &str, grams: Option<u32>, most: u32) -> Field {
        self.mass_named(id, self.label(id), grams, most)
    }

    pub(super) fn mass_named(
        &self,
        id: &str,
        label: String,
        grams: Option<u32>,
        most: u32,
    ) -> Field {
        let units = self.reader.units;
        let value = grams.map_or(Value::Null, |grams| json!(in_unit(grams, units)));
        let mut field = self.field_named(id, label, "kg", value);
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

    pub(super) fn count(&self, id: &str, count: Option<u32>, least: u32, most: u32) -> Field {
        self.count_named(id, self.label(id), count, least..=most)
    }

    pub(super) fn count_named(
        &self,
        id: &str,
        label: String,
        count: Option<u32>,
        within: RangeInclusive<u32>,
    ) -> Field {
        let value = count.map_or(Value::Null, |count| json!(count));
        let mut field = self.field_named(id, label, "count", value);
        if let Some(count) = count {
            field.text = self.reader.words.number(f64::from(count));
        }
        field.min = Some(f64::from(*within.start()));
        field.max = Some(f64::from(*within.end()));
        field.step = Some(1.0);
        field
    }

    pub(super) fn score(&self, id: &str, pain: Option<Pain>) -> Field {
        let rating = pain.map(|pain| u32::from(pain.rating()));
        self.count(id, rating, 0, u32::from(Pain::WORST))
    }

    pub(super) fn choice(&self, id: &str, chosen: &str, choices: &[(&'static str, &str)]) -> Field {
        let choices = choices.iter().map(|(id, text)| Choice {
            id,
            text: self.reader.words.text(text),
            chosen: *id == chosen,
        });
        self.field(id, "choice", json!(chosen))
            .of(choices.collect())
    }

    pub(super) fn ticks(&self, id: &str, standing: WayStanding) -> Field {
        let ticked: Vec<&str> = ways::of(self.plan, standing).map(Way::id).collect();
        let choices = Way::ALL.iter().map(|way| Choice {
            id: way.id(),
            text: self.way(*way),
            chosen: ticked.contains(&way.id()),
        });
        self.field(id, "ticks", json!(ticked)).of(choices.collect())
    }

    pub(super) fn way(&self, way: Way) -> String {
        self.reader.words.text(&message_id("way", way.id()))
    }
}

impl Field {
    /// The field with these to choose from; its text names what is chosen.
    pub(super) fn of(mut self, choices: Vec<Choice>) -> Self {
        let chosen = choices.iter().filter(|choice| choice.chosen);
        let texts: Vec<&str> = chosen.map(|choice| choice.text.as_str()).collect();
        self.text = texts.join(", ");
        self.choices = Some(choices);
        self
    }
}
