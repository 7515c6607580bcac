//! What work on a limb asks of the worker's own body, by the lifting model. It explains and decides nothing.

use crate::walk::text::Reader;
use crate::words::message_id;
use lifting::advise::facts::Facts;
use lifting::advise::judge;
use lifting::loads::lift::lift;
use lifting::loads::spine::LeverArm;
use lifting::loads::summary;
use lifting::transfer::advice::{MoveAdvice, MoveOutcome};
use lifting::transfer::way::PeopleWay;
use lifting::transfer::{TransferRequest, own_lift};

/// The way of holding oneself that it was worked out for, and a line for each part of the body. Empty where the
/// move has no posture of its own, where nothing is held, or where the model has none.
#[must_use]
pub(super) fn lines(
    reader: Reader<'_>,
    request: &TransferRequest,
    advice: &MoveAdvice,
) -> Vec<String> {
    let by_hand = matches!(&advice.outcome,
        MoveOutcome::GoAhead { ways } if ways.first.way == PeopleWay::ManualLift);
    if !by_hand {
        return Vec::new();
    }
    worked_out(reader, request).unwrap_or_default()
}

fn worked_out(reader: Reader<'_>, request: &TransferRequest) -> Option<Vec<String>> {
    let own = own_lift(request)?;
    let judged = judge(&own);
    let way = judged.outcome.ways().first().copied()?;
    let facts = Facts::of(&own, &own.task);
    let solved = lift(way, &facts, LeverArm::USUAL).ok()?;
    let costs = summary::of_lift(&facts, &solved);
    let words = reader.words;
    let asks = summary::asks(&facts, &costs)
        .into_iter()
        .map(|(region, asks)| {
            let part = format!("{}-{}", region.id(), asks.id());
            words.text(&message_id("figure-asks", &part))
        });
    let posture = words.format(
        "care-own-posture",
        &[("way", words.way_in_sentence(way).into())],
    );
    Some(std::iter::once(posture).chain(asks).collect())
}
