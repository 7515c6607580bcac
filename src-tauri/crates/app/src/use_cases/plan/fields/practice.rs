//! What is practised.

use super::{Choice, Draw, Field};
use crate::use_cases::plan::bounds::{MOST_DAYS, MOST_GRAMS, MOST_SETS};
use record::Way;
use serde_json::json;

impl Draw<'_> {
    pub(super) fn practice(&self) -> Vec<Field> {
        let practice = self.plan.practice.first();
        let chosen = practice.map_or("none", |practice| practice.way.id());
        let none = ("none", self.reader.words.text("plan-practice-none"));
        let ways = Way::ALL.iter().map(|way| (way.id(), self.way(*way)));
        let choices = std::iter::once(none).chain(ways).map(|(id, text)| Choice {
            id,
            text,
            chosen: id == chosen,
        });
        let way = self.field("practice_way", "choice", json!(chosen));
        let way = way.of(choices.collect());
        let mut fields = vec![way];
        if let Some(practice) = practice {
            fields.extend([
                self.mass("practice_load", Some(practice.grams), MOST_GRAMS),
                self.count("practice_sets", Some(practice.sets), 1, MOST_SETS),
                self.count("practice_times", Some(practice.times), 1, MOST_SETS),
                self.count("practice_days", Some(practice.days_a_week), 1, MOST_DAYS),
            ]);
        }
        fields
    }
}
