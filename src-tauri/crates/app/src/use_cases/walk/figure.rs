//! The figure of one way for the lift at hand: drawn from the solved posture, with what it asks of each region.

use super::judging::request;
use crate::call::Call;
use crate::failure::Failure;
use crate::words::message_id;
use door::{ErrorCode, PoseReply};
use lifting::advise::facts::Facts;
use lifting::loads::lift::{grip, lift};
use lifting::loads::spine::LeverArm;
use lifting::loads::summary;
use lifting::way::Way;
use serde::{Deserialize, Serialize};

/// The command `figure`.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct AskFigure {
    way: String,
}

/// The figure and its sentences.
#[derive(Debug, Serialize)]
pub(crate) struct Figure {
    way: &'static str,
    name: String,
    figure: PoseReply,
    /// Depth of the load as the posture takes it, m, for drawing it.
    load_depth_m: f64,
    regions: Vec<RegionAsked>,
    note: String,
}

/// What the way asks of one region.
#[derive(Debug, Serialize)]
struct RegionAsked {
    region: &'static str,
    asks: &'static str,
    text: String,
}

/// Draws one way for the draft's person and load. It shows; it advises nothing.
///
/// # Errors
/// `no_draft`; `question_not_open` while a question is unanswered; `not_a_choice` for an unknown way;
/// `no_posture` when the way has none for this lift; what the vault gives.
pub(crate) fn figure(call: &mut Call<'_>, asked: AskFigure) -> Result<Figure, Failure> {
    let way = Way::from_id(&asked.way).ok_or_else(|| Failure::at(ErrorCode::NotAChoice, "way"))?;
    let standing = super::open(call)?;
    if standing.walk().stands_at().is_some() {
        return Err(Failure::new(ErrorCode::QuestionNotOpen));
    }
    let request = request(call, &standing)?;
    let facts = Facts::of(&request, &request.task);
    let solved =
        lift(way, &facts, LeverArm::USUAL).map_err(|_| Failure::at(ErrorCode::NoPosture, "way"))?;
    let words = call.reader()?.words;
    let person = facts.person;
    let note = if person.stature.is_some() && person.mass.is_some() {
        "figure-note"
    } else {
        "figure-note-no-height"
    };
    let costs = summary::of_lift(&facts, &solved);
    let regions = summary::asks(&facts, &costs)
        .into_iter()
        .map(|(region, asks)| RegionAsked {
            region: region.id(),
            asks: asks.id(),
            text: words.text(&message_id(
                "figure-asks",
                &format!("{}-{}", region.id(), asks.id()),
            )),
        });
    Ok(Figure {
        way: way.id(),
        name: words.text(&message_id("way", way.id())),
        regions: regions.collect(),
        note: words.text(note),
        load_depth_m: grip(&facts).outline.depth_m(),
        figure: PoseReply::of(&solved),
    })
}
