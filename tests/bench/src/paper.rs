//! A plan on a page of paper, as a screen asks for it, beside saying in words what would be on it.

use crate::clock::{median_ratio, tell, tell_ratio, try_time};
use crate::handing::pair;
use crate::looking::{PASSPHRASE, ask, open_app};
use crate::store::fixed_bytes;
use crate::trouble::Trouble;
use app::App;
use record::{Device, Identity, Moment, Paired, SecretBytes};
use serde_json::{Value, json};
use std::path::Path;
use vault::{Cost, Folder, Passphrase, Vault};

const ROUNDS: usize = 50;
/// The longest text that the field for notes takes, in characters.
const LONGEST_NOTES: usize = 700;
const NAME: &str = "the page";

/// Measures. The target is at most 300 ms for a page (house rule: no wait that needs a word on the screen).
///
/// # Errors
/// What the vault, the app or the disk gives.
pub(crate) fn measure() -> Result<(), Trouble> {
    let place = tempfile::tempdir()?;
    let pairing = fill(place.path())?;
    let app = open_app(place.path())?;
    let short = plan(&app, "sore_back", "")?;
    let long = plan(&app, "both_knees", &"a word or two ".repeat(60))?;
    for (name, plan) in [("a starting pattern", short), ("long notes", long)] {
        let summary = json!({"do": "report_summary", "form": "pdf", "plan": plan, "to": pairing});
        let page =
            |to: Option<&str>| json!({"do": "report_make", "form": "pdf", "plan": plan, "to": to});
        let (summary, open, sealed) = (
            summary.to_string(),
            page(None).to_string(),
            page(Some(&pairing)).to_string(),
        );
        let (mut told, mut pages, mut with_symbol) = (Vec::new(), Vec::new(), Vec::new());
        for _ in 0..ROUNDS {
            told.push(try_time(|| ask(&app, &summary))?);
            pages.push(try_time(|| ask(&app, &open))?);
            with_symbol.push(try_time(|| ask(&app, &sealed))?);
        }
        println!("a plan on paper: {name}, {ROUNDS} rounds in turn; target: at most 300 ms");
        tell("say what would leave", &told);
        tell("the page", &pages);
        tell("the page with a symbol, sealed", &with_symbol);
        tell_ratio("the page to saying it", median_ratio(&pages, &told));
        tell_ratio(
            "with a symbol to without",
            median_ratio(&with_symbol, &pages),
        );
    }
    Ok(())
}

/// A plan with its limits, ways and practice, and these notes.
fn plan(app: &App, pattern: &str, notes: &str) -> Result<Value, Trouble> {
    let asked = json!({"do": "plan_new", "pattern": pattern, "for": "Green Ladder"});
    let made = ask(app, &asked.to_string())?;
    let made: Value = serde_json::from_str(&made).map_err(|_| Trouble::Answer(NAME))?;
    let id = made
        .pointer("/ok/id")
        .cloned()
        .ok_or(Trouble::Answer(NAME))?;
    if !notes.is_empty() {
        let notes: String = notes.chars().take(LONGEST_NOTES).collect();
        let set = json!({"do": "plan_set", "id": id, "field": "notes", "value": notes.trim()});
        ask(app, &set.to_string())?;
    }
    Ok(id)
}

/// An invented device that is paired with another; gives the id of the pairing.
fn fill(folder: &Path) -> Result<String, Trouble> {
    let folder = Folder::new(folder);
    let passphrase = Passphrase::new(PASSPHRASE.to_owned());
    let vault = Vault::create_at_cost(&folder, &passphrase, Cost::FLOOR, &mut fixed_bytes)?;
    let (_, pairing) = pair(1, 2)?;
    let since = Moment {
        at_ms: 0,
        offset_min: 60,
    };
    vault.device().save(&Device {
        keys: SecretBytes::new(vec![1; 64]),
        alias: Some("Blue Kettle".to_owned()),
        made_at: since,
    })?;
    vault.pairings().add(&Paired {
        id: Identity(*pairing.id()),
        pairing: SecretBytes::new(pairing.to_bytes()),
        name: "Green Ladder".to_owned(),
        since,
    })?;
    vault.settle()?;
    Ok(pairing
        .id()
        .iter()
        .map(|byte| format!("{byte:02x}"))
        .collect())
}
