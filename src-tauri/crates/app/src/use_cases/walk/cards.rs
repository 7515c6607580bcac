//! Cards: of an advice just given, and of one that was kept.

use crate::call::Call;
use crate::card::{self, AdviceCard};
use crate::convert::advice_back::from_record;
use crate::failure::Failure;
use crate::walk::text::Reader;
use crate::words::{Arg, Rounding};
use lifting::advise::advice::Advice;
use lifting::quantity::Stature;

/// The card of an advice.
///
/// # Errors
/// What reading the vault gives.
pub(crate) fn card(call: &Call<'_>, advice: &Advice) -> Result<AdviceCard, Failure> {
    let reader = call.reader()?;
    let about = call.vault()?.about().load()?.unwrap_or_default();
    let stature = about
        .stature_mm
        .and_then(|mm| Stature::new(f64::from(mm) / 10.0).ok());
    let reader = card::Reader {
        words: reader.words,
        units: reader.units,
        stature,
    };
    Ok(card::card(advice, &reader))
}

/// The card of an advice that was kept, with the limit and the rules of that day.
///
/// # Errors
/// What reading the vault gives.
pub(crate) fn kept_card(call: &Call<'_>, kept: &record::Advice) -> Result<AdviceCard, Failure> {
    let mut card = card(call, &from_record(kept))?;
    let reader = call.reader()?;
    card.limit_text = kept.limit.map(|limit| limit_text(limit, reader));
    card.rule_version = kept.rule_version.clone();
    Ok(card)
}

fn limit_text(limit: record::TaskLimit, reader: Reader<'_>) -> String {
    if limit.recommended_g == 0 {
        return reader.words.text("limit-none");
    }
    let kilograms = f64::from(limit.recommended_g) / 1000.0;
    let shown = reader.words.mass(kilograms, reader.units, Rounding::Down);
    reader
        .words
        .format("limit-text", &[("limit", Arg::Text(shown))])
}
