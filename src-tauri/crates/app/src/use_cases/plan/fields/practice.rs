//! What is practised, one thing after the other.

use super::{Choice, Draw, Field};
use crate::use_cases::plan::bounds::{ITEMS, MOST_DAYS, MOST_GRAMS, MOST_SETS};
use crate::use_cases::plan::practice_field;
use crate::words::message_id;
use record::{Practice, Way};
use serde_json::json;

impl Draw<'_> {
    /// Everything that is practised, then room for one more while there is some.
    pub(super) fn practice(&self) -> Vec<Field> {
        let practised = self.plan.practice.iter().map(Some);
        let places = practised
            .chain(std::iter::once(None))
            .take(ITEMS)
            .enumerate();
        places
            .flat_map(|(at, practice)| self.item(at, practice))
            .collect()
    }

    fn item(&self, at: usize, practice: Option<&Practice>) -> Vec<Field> {
        let mut fields = vec![self.item_way(at, practice)];
        if let Some(practice) = practice {
            let way = self.way(practice.way);
            let id = |part: &str| practice_field::id(part, at);
            let label = |part: &str| {
                let label = message_id("plan-practice", part);
                let args = [("way", way.as_str().into())];
                self.reader.words.format(&label, &args)
            };
            let count = |part: &str, count: u32, most: u32| {
                self.count_named(&id(part), label(part), Some(count), 1..=most)
            };
            fields.extend([
                self.mass_named(&id("load"), label("load"), Some(practice.grams), MOST_GRAMS),
                count("sets", practice.sets, MOST_SETS),
                count("times", practice.times, MOST_SETS),
                count("days", practice.days_a_week, MOST_DAYS),
            ]);
            for field in &mut fields {
                field.optional = false;
            }
        }
        fields
    }

    fn item_way(&self, at: usize, practice: Option<&Practice>) -> Field {
        let chosen = practice.map_or("none", |practice| practice.way.id());
        let none = ("none", self.reader.words.text("plan-practice-none"));
        let ways = Way::ALL.iter().map(|way| (way.id(), self.way(*way)));
        let choices = std::iter::once(none).chain(ways).map(|(id, text)| Choice {
            id,
            text,
            chosen: id == chosen,
        });
        let place = u32::try_from(at.saturating_add(1)).unwrap_or(u32::MAX);
        let args = [("place", place.into())];
        let label = self.reader.words.format("plan-practice-way", &args);
        let id = practice_field::id("way", at);
        self.field_named(&id, label, "choice", json!(chosen))
            .of(choices.collect())
    }
}
