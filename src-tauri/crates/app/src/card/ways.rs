//! Ways that are offered, and ways that may not be used.

use super::build::Reader;
use super::given::Given;
use super::model::{CardRuledOut, CardWay};
use super::why;
use crate::words::{message_id, sentence};
use lifting::advise::advice::RuledOut;
use lifting::reason::{Reason, ReasonId, Value};
use lifting::way::Way;

/// Reasons named for a way that is ruled out: more do not make it clearer.
const REASONS_NAMED: usize = 2;

/// Ways offered, best first.
pub(super) fn offered(advice: &Given, reader: &Reader<'_>) -> Vec<CardWay> {
    let words = reader.words;
    let first = advice.outcome.ways().first().copied();
    advice
        .outcome
        .ways()
        .into_iter()
        .map(|way| {
            let stem = message_id("way", way.id());
            let cue = |at| words.text(&format!("{stem}-cue-{at}"));
            let first_cue = side_cue(advice, way, reader).unwrap_or_else(|| cue(1));
            CardWay {
                way: way.id(),
                name: words.way_name(way),
                gloss: words.text(&format!("{stem}-gloss")),
                cues: vec![first_cue, cue(2), cue(3)],
                why: why_offered(advice, way, first == Some(way), reader),
            }
        })
        .collect()
}

/// Ways that may not be used.
pub(super) fn ruled_out(advice: &Given, reader: &Reader<'_>) -> Vec<CardRuledOut> {
    advice
        .ruled_out
        .iter()
        .map(|out| CardRuledOut {
            way: out.way.id(),
            name: reader.words.way_name(out.way),
            why: why_out(advice, out, reader),
        })
        .collect()
}

fn why_out(advice: &Given, out: &RuledOut, reader: &Reader<'_>) -> String {
    let mut ids = out.because.clone();
    ids.sort_by_key(|id| id.authority());
    let clauses: Vec<String> = ids
        .iter()
        .flat_map(|id| with_values(advice, *id))
        .map(|reason| sentence(&reader.words.because(&reason, reader.units)))
        .take(REASONS_NAMED)
        .collect();
    clauses.join(" ")
}

/// Every reason with this id as it was met; a bare one when it was not kept with its values.
fn with_values(advice: &Given, id: ReasonId) -> Vec<Reason> {
    let met: Vec<Reason> = advice
        .reasons
        .iter()
        .filter(|reason| reason.id == id)
        .cloned()
        .collect();
    if met.is_empty() {
        vec![Reason::of(id)]
    } else {
        met
    }
}

fn why_offered(advice: &Given, way: Way, first: bool, reader: &Reader<'_>) -> String {
    let words = reader.words;
    let not_first = advice
        .reasons
        .iter()
        .find(|reason| !first && why::holds_back(reason.id).contains(&way));
    if let Some(reason) = not_first {
        let because = words.because(reason, reader.units);
        return words.format("way-not-first", &[("why", because.into())]);
    }
    match why::speaks_for(advice, way) {
        Some(reason) => sentence(&words.because(&reason, reader.units)),
        None => words.text("way-also"),
    }
}

/// The first step where a side matters: which knee goes down, or which leg to stand on.
fn side_cue(advice: &Given, way: Way, reader: &Reader<'_>) -> Option<String> {
    let id = match way {
        Way::HalfKneelingLunge => ReasonId::KneelOn,
        Way::GolfersLift => ReasonId::StandOn,
        _ => return None,
    };
    let reason = advice.reasons.iter().find(|reason| reason.id == id)?;
    let region = reason.values.iter().find_map(|(_, value)| match value {
        Value::Region(region) => Some(*region),
        _ => None,
    })?;
    let side = reader.words.side(region)?;
    let message = format!("{}-side", message_id("way", way.id()));
    Some(reader.words.format(&message, &[("side", side.into())]))
}
