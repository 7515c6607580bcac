//! No message is asked for that is not there, and none is there that nobody asks for.

mod words_support;

use app::words::Language;
use std::collections::BTreeSet;
use words_support::catalog::messages;
use words_support::sources::{asked_for, quoted};

/// Beginnings of ids that are put together from the id of something: the rest is a quoted word elsewhere.
const COMPOSED: &[&str] = &[
    "alternative-",
    "authority-",
    "because-",
    "care-",
    "care-by-",
    "care-helped-",
    "care-picture-",
    "care-result-",
    "care-told-",
    "caution-",
    "change-",
    "client-sign-",
    "departure-how-",
    "departure-what-",
    "entry-",
    "figure-asks-",
    "equipment-",
    "error-",
    "from-",
    "interruption-",
    "move-",
    "move-check-",
    "move-else-",
    "move-stop-",
    "outcome-",
    "plan-day-",
    "plan-field-",
    "plan-leave-",
    "plan-log-",
    "plan-pattern-",
    "plan-practice-",
    "plan-region-",
    "plan-section-",
    "plan-take-",
    "question-",
    "reason-",
    "refuse-",
    "report-change-",
    "report-leaves-",
    "report-pain-",
    "report-progress-",
    "report-title-",
    "region-",
    "sign-",
    "sign-short-",
    "signs-",
    "signs-floor-do-",
    "signs-stuck-do-",
    "signs-whom-",
    "source-",
    "thing-",
    "sure-",
    "way-",
    "who-",
];
/// What may follow the id in such a message.
const ENDINGS: [&str; 20] = [
    "-1", "-2", "-cue-1", "-cue-2", "-cue-3", "-do", "-gloss", "-hint", "-intro", "-note", "-row",
    "-side", "-text", "-title", "-why", "-word-1", "-word-2", "-word-3", "-do-1", "-do-2",
];
/// Ids put together from a number.
const NUMBERED: [(&str, std::ops::RangeInclusive<u32>); 3] = [
    ("date-weekday-", 1..=7),
    ("date-month-", 1..=12),
    ("date-month-short-", 1..=12),
];

#[test]
fn every_message_is_used() {
    let sources = sources();
    let unused: Vec<String> = messages(Language::English)
        .into_iter()
        .map(|message| message.id)
        .filter(|id| !used(id, &sources))
        .collect();
    assert!(unused.is_empty(), "nobody asks for {unused:#?}");
}

#[test]
fn every_fixed_word_the_screens_ask_for_is_there() {
    let there = ids();
    for id in quoted("../../../ui", "js")
        .into_iter()
        .chain(quoted("../../../ui", "html"))
    {
        if id.starts_with("screen-") {
            assert!(there.contains(&id), "{id}");
        }
    }
}

#[test]
fn every_message_that_the_app_names_in_full_is_there() {
    let there = ids();
    let beginnings: BTreeSet<&str> = there
        .iter()
        .filter_map(|id| id.split_once('-'))
        .map(|(first, _)| first)
        .collect();
    for id in quoted("src", "rs") {
        let Some((first, _)) = id.split_once('-') else {
            continue;
        };
        let stem = there.iter().any(|known| known.starts_with(&id));
        assert!(
            !beginnings.contains(first) || stem,
            "{id} is named, but there is no such message"
        );
    }
}

#[test]
fn every_message_asked_for_by_name_is_there() {
    let there = ids();
    for id in asked_for("src", "rs", &[".text(", ".format("]) {
        assert!(there.contains(&id), "{id}");
    }
}

fn ids() -> BTreeSet<String> {
    messages(Language::English)
        .into_iter()
        .map(|message| message.id)
        .collect()
}

fn sources() -> BTreeSet<String> {
    [
        ("src", "rs"),
        ("../lifting/src", "rs"),
        ("../door/src", "rs"),
        ("../record/src", "rs"),
        ("../../../ui", "js"),
        ("../../../ui", "html"),
    ]
    .into_iter()
    .flat_map(|(folder, ending)| quoted(folder, ending))
    .collect()
}

fn used(id: &str, sources: &BTreeSet<String>) -> bool {
    let numbered = NUMBERED.iter().any(|(prefix, numbers)| {
        id.strip_prefix(prefix)
            .and_then(|rest| rest.parse().ok())
            .is_some_and(|at| numbers.contains(&at))
    });
    let with_ending = ENDINGS
        .iter()
        .filter_map(|ending| id.strip_suffix(ending))
        .any(|stem| sources.contains(stem));
    numbered || sources.contains(id) || with_ending || composed(id, sources)
}

fn composed(id: &str, sources: &BTreeSet<String>) -> bool {
    let known = |part: &str| sources.contains(part) || sources.contains(&part.replace('-', "_"));
    COMPOSED
        .iter()
        .filter_map(|prefix| id.strip_prefix(prefix))
        .any(|rest| {
            let stems = ENDINGS
                .iter()
                .filter_map(|ending| rest.strip_suffix(ending));
            // The id of something, or of a question and one of its options.
            std::iter::once(rest).chain(stems).any(|stem| {
                let mut cuts = stem
                    .match_indices('-')
                    .filter_map(|(at, _)| stem.split_at_checked(at));
                known(stem)
                    || cuts.any(|(first, rest)| known(first) && known(rest.trim_start_matches('-')))
            })
        })
}
