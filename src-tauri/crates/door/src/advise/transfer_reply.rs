//! The reply of `advise` about moving a person: the same shape, with the ways to move people.

use super::reply::{AdviceReply, RuledOutReply, Texts, reason_replies};
use lifting::transfer::advice::MoveAdvice;

/// The reply for an advice on moving a person.
#[must_use]
pub fn move_reply(advice: &MoveAdvice, texts: &dyn Texts) -> AdviceReply {
    let ruled_out = advice.ruled_out.iter().map(|out| RuledOutReply {
        way: out.way.id(),
        because: out.because.iter().map(|reason| reason.id()).collect(),
    });
    let offers = advice.outcome.offers();
    AdviceReply {
        outcome: Some(advice.outcome.id()),
        urgency: advice.outcome.urgency().id(),
        ways: offers.iter().map(|offer| offer.way.id()).collect(),
        ruled_out: ruled_out.collect(),
        cautions: advice.cautions.iter().map(|caution| caution.id()).collect(),
        alternatives: advice.alternatives.iter().map(|other| other.id()).collect(),
        changes: Vec::new(),
        reasons: reason_replies(&advice.reasons, texts),
        progress: None,
        heaviest_today_kg: None,
        limit: None,
        loads: Vec::new(),
    }
}
