//! Puts the card together.

use super::given::Given;
use super::model::{AdviceCard, IdText};
use super::{care, changes, reasons, ways, why};
use crate::words::{Arg, Rounding, Units, Words, message_id};
use lifting::advise::advice::Outcome;
use lifting::quantity::Stature;
use lifting::way::Way;

/// Cautions shown before the fold: more are not read.
const FIRST_CAUTIONS: usize = 3;

/// For whom the card is written.
#[derive(Debug, Clone, Copy)]
pub struct Reader<'a> {
    /// Words in the reader's language.
    pub words: &'a Words,
    /// The reader's units.
    pub units: Units,
    /// The stature of who lifts, to say heights as places on the body. `None`: 165 cm is taken.
    pub stature: Option<Stature>,
}

/// What is shown of an advice, new or kept.
#[must_use]
pub fn card(advice: impl Into<Given>, reader: &Reader<'_>) -> AdviceCard {
    let advice = &advice.into().marked_where_guessed();
    let words = reader.words;
    let mut cautions = of_ids(
        words,
        "caution",
        advice.cautions.iter().map(|caution| caution.id()),
    );
    let more_cautions = cautions.split_off(cautions.len().min(FIRST_CAUTIONS));
    AdviceCard {
        outcome: advice.outcome.id(),
        urgency: advice.outcome.urgency().id(),
        headline: headline(advice, words),
        picture: picture(&advice.outcome),
        three_words: three_words(&advice.outcome, words),
        why: why::line(advice, reader),
        stop: words.text(match advice.outcome {
            Outcome::SeekCare { .. } => "stop-care",
            Outcome::Refuse => "stop-refuse",
            _ => "stop-text",
        }),
        cautions,
        more_cautions,
        ways: ways::offered(advice, reader),
        ruled_out: ways::ruled_out(advice, reader),
        changes: changes::of(&advice.outcome, reader),
        alternatives: of_ids(
            words,
            "alternative",
            advice
                .alternatives
                .iter()
                .map(|alternative| alternative.id()),
        ),
        reasons: reasons::all(advice, reader),
        sure: words.text(why::sure(advice)),
        disagree: offers_a_lift(&advice.outcome).then(|| words.text("disagree")),
        foot: words.text("foot"),
        limit_text: limit_text(advice, reader),
        heaviest_text: heaviest_text(advice, reader),
        plan_text: None,
        who: care::who(advice, words),
        rule_version: advice.rule_version.clone(),
    }
}

/// Texts of members of a closed list, by their ids.
pub(super) fn of_ids<'a>(
    words: &Words,
    prefix: &str,
    ids: impl Iterator<Item = &'a str>,
) -> Vec<IdText> {
    ids.map(|id| IdText {
        id: id.to_owned(),
        text: words.text(&message_id(prefix, id)),
    })
    .collect()
}

/// Whether ways are named on the card.
fn offers_a_lift(outcome: &Outcome) -> bool {
    matches!(
        outcome,
        Outcome::Lift { .. } | Outcome::LiftWithChange { .. }
    )
}

fn headline(advice: &Given, words: &Words) -> String {
    let id = message_id("outcome", advice.outcome.id());
    let way = advice
        .outcome
        .ways()
        .first()
        .copied()
        .unwrap_or(Way::Upright);
    let values = [
        ("way", Arg::Text(words.way_in_sentence(way))),
        ("urgency", advice.outcome.urgency().id().into()),
    ];
    words.format(&id, &values)
}

/// Something that has to be changed first must not look like a picture to copy now.
fn picture(outcome: &Outcome) -> Option<&'static str> {
    match outcome {
        Outcome::Lift { ways } => Some(ways.first.id()),
        _ => None,
    }
}

/// For a lift how to do it; for a change what to do first.
fn three_words(outcome: &Outcome, words: &Words) -> Vec<String> {
    let stem = match outcome {
        Outcome::Lift { ways } => message_id("way", ways.first.id()),
        Outcome::LiftWithChange { changes: all, .. } => {
            let steps = all.first().map(changes::in_order_of_doing);
            match steps.unwrap_or_default().first() {
                Some(step) => message_id("change", step.id()),
                None => return Vec::new(),
            }
        }
        Outcome::DoNotLift { .. } | Outcome::SeekCare { .. } | Outcome::Refuse => {
            return Vec::new();
        }
    };
    (1..=3)
        .map(|at| words.text(&format!("{stem}-word-{at}")))
        .collect()
}

fn heaviest_text(advice: &Given, reader: &Reader<'_>) -> Option<String> {
    let heaviest = advice.heaviest?.value();
    let shown = reader.words.mass(heaviest, reader.units, Rounding::Down);
    let args = [("mass", shown.into())];
    Some(reader.words.format("plan-heaviest", &args))
}

fn limit_text(advice: &Given, reader: &Reader<'_>) -> Option<String> {
    let limit = advice.limit?.value();
    if limit <= 0.0 {
        return Some(reader.words.text("limit-none"));
    }
    let shown = reader.words.mass(limit, reader.units, Rounding::Down);
    Some(
        reader
            .words
            .format("limit-text", &[("limit", shown.into())]),
    )
}
