//! From which number on pain counts as moderate and as strong, where this person's differ from the usual.

use super::{Choice, Draw, Field};
use crate::use_cases::plan::lines::region_name;
use record::{Bands, Pain, Region};
use serde_json::json;

impl Draw<'_> {
    /// The regions that have their own numbers, then two numbers for each of them.
    pub(super) fn bands(&self) -> Vec<Field> {
        let mut all = vec![self.bands_for()];
        for region in Region::ALL {
            let bands = self.plan.bands.iter().find(|one| one.region == *region);
            let Some(bands) = bands else { continue };
            all.push(self.band(
                bands,
                "moderate",
                "plan-bands-moderate",
                bands.moderate_from,
            ));
            all.push(self.band(bands, "severe", "plan-bands-severe", bands.severe_from));
        }
        for field in &mut all {
            field.hint = Some(self.reader.words.text("plan-bands-hint"));
        }
        all
    }

    fn bands_for(&self) -> Field {
        let has = |region: Region| self.plan.bands.iter().any(|bands| bands.region == region);
        let chosen: Vec<Region> = Region::ALL
            .iter()
            .copied()
            .filter(|one| has(*one))
            .collect();
        let ids: Vec<&str> = chosen.iter().map(|region| region.id()).collect();
        let choices = Region::ALL.iter().map(|region| Choice {
            id: region.id(),
            text: region_name(*region, self.reader),
            chosen: has(*region),
        });
        self.field("bands_for", "ticks", json!(ids))
            .of(choices.collect())
    }

    fn band(&self, bands: &Bands, which: &str, label: &str, from: Pain) -> Field {
        let id = format!("{which}_{}", bands.region.id());
        let region = region_name(bands.region, self.reader);
        let label = self
            .reader
            .words
            .format(label, &[("region", region.into())]);
        let rating = u32::from(from.rating());
        let mut field = self.count_named(&id, label, Some(rating), 1..=u32::from(Pain::WORST));
        field.optional = false;
        field
    }
}
