//! Every reason, with whose rule it is, how sure it is and where it comes from.

use super::build::Reader;
use super::given::Given;
use super::model::CardReason;
use crate::words::message_id;
use lifting::reason::{Reason, ReasonId};

/// Source ids that say more about how sure a rule is than its class does.
const OWN_SURENESS: [&str; 2] = ["common_practice", "plan"];

/// Reasons in the advice's order; two that read the same are said once.
pub(super) fn all(advice: &Given, reader: &Reader<'_>) -> Vec<CardReason> {
    let mut shown: Vec<CardReason> = Vec::new();
    for reason in &advice.reasons {
        let reason = one(reason, reader);
        if !shown.contains(&reason) {
            shown.push(reason);
        }
    }
    shown
}

/// One reason, with what is one tap away.
#[must_use]
pub(crate) fn one(reason: &Reason, reader: &Reader<'_>) -> CardReason {
    let words = reader.words;
    let id = reason.id;
    CardReason {
        id: id.id(),
        text: words.reason(reason, reader.units),
        authority_text: words.text(&message_id("authority", id.authority().id())),
        sure_text: words.text(&sure_id(id)),
        source_text: words.text(&message_id("source", id.source())),
    }
}

fn sure_id(id: ReasonId) -> String {
    let source = id.source();
    message_id(
        "sure",
        if OWN_SURENESS.contains(&source) {
            source
        } else {
            id.sure().id()
        },
    )
}
