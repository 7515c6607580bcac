//! The shape of the card.

use serde::Serialize;

/// A text with the stable id of what it says.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct IdText {
    /// The stable id.
    pub id: String,
    /// The text.
    pub text: String,
}

/// A way that is offered.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct CardWay {
    /// The way's id; also the name of its picture.
    pub way: &'static str,
    /// Its name.
    pub name: String,
    /// What it is, in a sentence or two.
    pub gloss: String,
    /// How to do it, in order.
    pub cues: Vec<String>,
    /// Why it is offered, in one line.
    pub why: String,
}

/// A way that may not be used.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct CardRuledOut {
    /// The way's id.
    pub way: &'static str,
    /// Its name.
    pub name: String,
    /// Why not, in one line.
    pub why: String,
}

/// A change that is enough alone.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct CardChange {
    /// The change's id; `together` for several steps.
    pub kind: &'static str,
    /// What to change, all of it.
    pub text: String,
    /// The same, one step each; to be done together.
    pub steps: Vec<String>,
    /// What to do afterwards.
    pub then: String,
}

/// A reason, with what is one tap away.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct CardReason {
    /// The reason's id.
    pub id: &'static str,
    /// The reason.
    pub text: String,
    /// Whose rule it is.
    pub authority_text: String,
    /// How sure it is.
    pub sure_text: String,
    /// Where it comes from.
    pub source_text: String,
}

/// Everything that is shown of an advice, in the reader's language and units.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct AdviceCard {
    /// The outcome's id.
    pub outcome: &'static str,
    /// The urgency's id.
    pub urgency: &'static str,
    /// What to do, in one line.
    pub headline: String,
    /// The picture of the first way; only for a plain lift.
    pub picture: Option<&'static str>,
    /// Three short phrases to read with both hands busy; empty when no lifting is offered.
    pub three_words: Vec<String>,
    /// Why, in one line.
    pub why: String,
    /// When to stop.
    pub stop: String,
    /// What to heed: at most three, most serious first.
    pub cautions: Vec<IdText>,
    /// What else to heed.
    pub more_cautions: Vec<IdText>,
    /// Ways offered, best first.
    pub ways: Vec<CardWay>,
    /// Ways that may not be used.
    pub ruled_out: Vec<CardRuledOut>,
    /// Changes that are enough, smallest first.
    pub changes: Vec<CardChange>,
    /// Other ways to get it done.
    pub alternatives: Vec<IdText>,
    /// Every reason, for the page behind the card.
    pub reasons: Vec<CardReason>,
    /// How sure the whole advice is, in one line.
    pub sure: String,
    /// That studies disagree; only where lifting is offered.
    pub disagree: Option<String>,
    /// What this app is not.
    pub foot: String,
    /// The published limit for healthy adults, named as that; only where a lift was judged.
    pub limit_text: Option<String>,
    /// The most for today with the plan that is followed; only where the level in practice is known.
    pub heaviest_text: Option<String>,
    /// Whose plan it obeys; only for an advice just given.
    pub plan_text: Option<String>,
    /// Who can help.
    pub who: Vec<IdText>,
    /// Which rules gave it.
    pub rule_version: String,
}
