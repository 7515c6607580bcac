//! The whole card for typical moments, in files that a person can read and judge: `tests/cards/`.
//!
//! After a change of words, read the new files: `HEFTWELL_REFRESH_CARDS=1 cargo test -p app --test words_cards`.

#![allow(clippy::expect_used, reason = "a test may stop at the first surprise")]

mod words_situations;
mod words_support;

use app::card::{AdviceCard, IdText, Reader, card};
use app::words::{Language, Units, Words};
use lifting::advise::advise;
use std::fmt::Write as _;
use std::path::{Path, PathBuf};
use words_situations::Situation;
use words_support::reading::{FieldTerms, Measure};

const REFRESH: &str = "HEFTWELL_REFRESH_CARDS";
/// What is shown for a value that a rule should have given.
const STAND_INS: [&str; 3] = ["region-unknown", "value-unknown", "way-unknown"];

#[test]
fn every_card_reads_as_it_was_last_read_by_a_person() {
    for (language, units) in [
        (Language::English, Units::Kilograms),
        (Language::English, Units::Pounds),
        (Language::Spanish, Units::Kilograms),
    ] {
        let words = Words::load(language);
        let reader = Reader {
            words: &words,
            units,
            stature: None,
        };
        for situation in words_situations::all() {
            let shown = page(&situation, &card(&advise(&situation.request), &reader));
            compare(&file(language, units, situation.name), &shown);
        }
    }
}

#[test]
fn a_card_has_no_hole_in_any_text() {
    for language in Language::ALL {
        let words = Words::load(*language);
        let reader = Reader {
            words: &words,
            units: Units::Kilograms,
            stature: None,
        };
        for situation in words_situations::all() {
            let shown = page(&situation, &card(&advise(&situation.request), &reader));
            let mut holes = vec!["[".to_owned(), "{".to_owned()];
            holes.extend(STAND_INS.map(|id| words.text(id)));
            for hole in holes {
                assert!(!shown.contains(&hole), "{hole:?} in {language:?}:\n{shown}");
            }
        }
    }
}

#[test]
fn every_card_as_a_whole_is_easy_to_read() {
    for language in Language::ALL {
        let words = Words::load(*language);
        let terms = FieldTerms::of(*language);
        let reader = Reader {
            words: &words,
            units: Units::Kilograms,
            stature: None,
        };
        for situation in words_situations::all() {
            let shown = card(&advise(&situation.request), &reader);
            let texts = sentences_of(&shown);
            let measure = Measure::of(texts.iter().map(String::as_str), *language, &terms);
            let (easy, figure) = measure.easy(*language);
            println!("{} {}: {figure:.1}", language.id(), situation.name);
            assert!(easy, "{} in {language:?}: {figure:.1}", situation.name);
        }
    }
}

/// What is read as sentences: no names, big words or citations.
fn sentences_of(card: &AdviceCard) -> Vec<String> {
    let mut texts = vec![
        card.headline.clone(),
        card.why.clone(),
        card.stop.clone(),
        card.sure.clone(),
    ];
    texts.extend(card.disagree.iter().chain(&card.limit_text).cloned());
    let listed = [
        &card.cautions,
        &card.more_cautions,
        &card.alternatives,
        &card.who,
    ];
    texts.extend(listed.into_iter().flatten().map(|entry| entry.text.clone()));
    texts.extend(card.ways.iter().flat_map(|way| way.cues.clone()));
    texts.extend(
        card.ways
            .iter()
            .flat_map(|way| [way.gloss.clone(), way.why.clone()]),
    );
    texts.extend(card.ruled_out.iter().map(|out| out.why.clone()));
    texts.extend(card.changes.iter().flat_map(|change| change.steps.clone()));
    texts.extend(card.reasons.iter().map(|reason| reason.text.clone()));
    texts
}

fn file(language: Language, units: Units, name: &str) -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR"))
        .join("tests/cards")
        .join(format!("{}_{}", language.id(), units.id()))
        .join(format!("{name}.txt"))
}

fn compare(file: &Path, shown: &str) {
    if std::env::var_os(REFRESH).is_some() {
        std::fs::create_dir_all(file.parent().expect("a folder")).expect("a folder");
        std::fs::write(file, shown).expect("a file");
        return;
    }
    let kept = std::fs::read_to_string(file).unwrap_or_default();
    let changed = shown
        .lines()
        .zip(kept.lines().chain(std::iter::repeat("")))
        .find(|(a, b)| a != b);
    assert!(
        kept == shown,
        "{} reads otherwise now (new, old): {changed:#?}",
        file.display()
    );
}

/// The card as plain text, in the order in which it is shown.
fn page(situation: &Situation, card: &AdviceCard) -> String {
    let mut text = format!("({})\n\n", situation.about);
    line(&mut text, "", &card.headline);
    line(&mut text, "picture: ", card.picture.unwrap_or("-"));
    line(&mut text, "big words: ", &card.three_words.join(" / "));
    line(&mut text, "why: ", &card.why);
    line(&mut text, "stop: ", &card.stop);
    list(&mut text, "cautions", &card.cautions);
    list(&mut text, "more cautions", &card.more_cautions);
    for change in &card.changes {
        line(
            &mut text,
            "change: ",
            &format!("{} {}", change.text, change.then),
        );
    }
    for way in &card.ways {
        line(
            &mut text,
            "way: ",
            &format!("{}. {} ({})", way.name, way.gloss, way.why),
        );
        for cue in &way.cues {
            line(&mut text, "  - ", cue);
        }
    }
    for out in &card.ruled_out {
        line(&mut text, "not: ", &format!("{}. {}", out.name, out.why));
    }
    list(&mut text, "other ways to get it done", &card.alternatives);
    list(&mut text, "who", &card.who);
    line(&mut text, "sure: ", &card.sure);
    line(&mut text, "", card.disagree.as_deref().unwrap_or_default());
    line(
        &mut text,
        "",
        card.limit_text.as_deref().unwrap_or_default(),
    );
    line(&mut text, "", &card.foot);
    text.push_str("\nbehind the card:\n");
    for reason in &card.reasons {
        line(&mut text, "- ", &reason.text);
        let behind = [
            &reason.authority_text,
            &reason.sure_text,
            &reason.source_text,
        ]
        .map(String::as_str);
        line(&mut text, "    ", &behind.join(" | "));
    }
    text
}

fn line(text: &mut String, label: &str, words: &str) {
    if !words.is_empty() {
        writeln!(text, "{label}{words}").expect("memory");
    }
}

fn list(text: &mut String, title: &str, entries: &[IdText]) {
    for entry in entries {
        line(text, &format!("{title}: "), &entry.text);
    }
}
