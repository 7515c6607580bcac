//! The page of warning signs: what to watch for, what to do, whom to call. Readable while locked.

use super::build::of_ids;
use super::model::IdText;
use crate::words::{Words, message_id};
use lifting::advise::advice::HowSoon;
use lifting::body::{Person, WarningSign};
use lifting::rules::warning_signs::how_soon;
use serde::Serialize;

/// Signs that ask for the same thing.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct SignGroup {
    /// `emergency`, `same_day`, `surgeon`, `stuck` or `floor`.
    pub id: &'static str,
    /// What to do, in one line.
    pub title: String,
    /// What to do.
    #[serde(rename = "do")]
    pub what_to_do: String,
    /// The signs as questions; for `stuck` and `floor` the steps, in order.
    pub signs: Vec<IdText>,
}

/// The page.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct SignsPage {
    /// Its title.
    pub title: String,
    /// How to read it.
    pub intro: String,
    /// Most urgent first.
    pub groups: Vec<SignGroup>,
    /// The heading over whom to call.
    pub whom_title: String,
    /// Whom to call.
    pub whom: Vec<IdText>,
}

/// Whom to call, in order.
const WHOM: [&str; 4] = ["emergency", "same_day", "nurse", "near"];
/// Steps of the two pages on being stuck.
const STEPS: [&str; 5] = ["1", "2", "3", "4", "5"];

/// The page in the reader's language.
#[must_use]
pub fn signs_page(words: &Words) -> SignsPage {
    SignsPage {
        title: words.text("signs-title"),
        intro: words.text("signs-intro"),
        groups: vec![
            group(words, "emergency", Some(HowSoon::Emergency)),
            group(words, "same_day", Some(HowSoon::SameDay)),
            group(words, "surgeon", None),
            steps(words, "stuck"),
            steps(words, "floor"),
        ],
        whom_title: words.text("signs-whom-title"),
        whom: of_ids(words, "signs-whom", WHOM.into_iter()),
    }
}

/// Tiers for somebody of whom nothing else is known.
fn group(words: &Words, id: &'static str, tier: Option<HowSoon>) -> SignGroup {
    let nobody = Person::default();
    let signs = WarningSign::ALL
        .iter()
        .filter(|sign| how_soon(**sign, &nobody) == tier);
    SignGroup {
        id,
        title: title(words, id),
        what_to_do: words.text(&format!("{}-do", message_id("signs", id))),
        signs: of_ids(words, "sign", signs.map(|sign| sign.id())),
    }
}

fn steps(words: &Words, id: &'static str) -> SignGroup {
    let prefix = format!("{}-do", message_id("signs", id));
    SignGroup {
        id,
        title: title(words, id),
        what_to_do: words.text(&format!("{}-intro", message_id("signs", id))),
        signs: of_ids(words, &prefix, STEPS.into_iter()),
    }
}

fn title(words: &Words, id: &str) -> String {
    words.text(&format!("{}-title", message_id("signs", id)))
}
