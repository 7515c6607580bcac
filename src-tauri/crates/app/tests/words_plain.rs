//! Every text is plain: easy by a published formula, short sentences, none of the words we never say.
#![allow(clippy::expect_used, reason = "a test may stop at the first surprise")]

mod words_support;

use app::words::Language;
use std::collections::{BTreeMap, BTreeSet};
use words_support::catalog::{Message, messages};
use words_support::reading::{FieldTerms, Measure, sentences, words};
use words_support::syllables;

/// Longest sentence, in words. House rule; a tested method for patients used fewer than 15 on average.
const LONGEST_SENTENCE: usize = 20;
/// Labels of fewer words are not sentences: they would make every section look easy.
const FEWEST_WORDS: usize = 4;
/// Sections shorter than this are measured together with the other short ones of their file.
const SECTION_WORDS: usize = 40;
/// Citations, and the names of days and months.
const NOT_MEASURED: [&str; 2] = ["source-", "date-"];

#[test]
fn every_section_is_easy_to_read() {
    for language in Language::ALL {
        let terms = FieldTerms::of(*language);
        let mut hard = Vec::new();
        for (section, texts) in sections(&messages(*language)) {
            let measure = Measure::of(texts.iter().map(String::as_str), *language, &terms);
            let (easy, figure) = measure.easy(*language);
            println!(
                "{} {section}: {figure:.1} ({} words)",
                language.id(),
                measure.words
            );
            if !easy {
                hard.push(format!("{section}: {figure:.1}"));
            }
        }
        assert!(hard.is_empty(), "hard to read in {language:?}: {hard:#?}");
    }
}

#[test]
fn no_sentence_is_long() {
    for language in Language::ALL {
        for message in measured(&messages(*language)) {
            for sentence in message.texts.iter().flat_map(|text| sentences(text)) {
                let count = words(sentence).count();
                assert!(
                    count <= LONGEST_SENTENCE,
                    "{} {}: {count} words: {sentence}",
                    language.id(),
                    message.id
                );
            }
        }
    }
}

#[test]
fn the_words_we_never_say_are_not_said() {
    for (language, stems) in [
        (
            Language::English,
            &[
                "safe", "correct", "prevent", "guarant", "danger", "protect", "harmless",
            ][..],
        ),
        (
            Language::Spanish,
            &[
                "segur",
                "correct",
                "previen",
                "preven",
                "garant",
                "peligr",
                "proteg",
                "inofensiv",
            ][..],
        ),
    ] {
        for message in messages(language) {
            for text in &message.texts {
                let said = words(text)
                    .map(str::to_lowercase)
                    .find(|word| stems.iter().any(|stem| word.starts_with(stem)));
                assert_eq!(said, None, "{} {}: {text}", language.id(), message.id);
            }
        }
    }
}

#[test]
fn no_emergency_number_is_guessed() {
    for language in Language::ALL {
        for message in messages(*language) {
            for text in &message.texts {
                let number =
                    words(text).find(|word| ["911", "112", "999", "000", "111"].contains(word));
                assert_eq!(number, None, "{} {}: {text}", language.id(), message.id);
            }
        }
    }
}

#[test]
fn a_field_term_is_long_and_used() {
    for language in Language::ALL {
        let used: BTreeSet<String> = messages(*language)
            .iter()
            .flat_map(|message| message.texts.iter())
            .flat_map(|text| words(text).map(str::to_lowercase).collect::<Vec<_>>())
            .collect();
        for term in FieldTerms::of(*language).0 {
            assert!(used.contains(&term), "{} {term}: not used", language.id());
            assert!(
                syllables::of(&term, *language) >= 3,
                "{} {term}: not long",
                language.id()
            );
        }
    }
}

#[test]
fn syllables_are_counted_as_they_are_spoken() {
    for (word, count) in [
        ("lift", 1),
        ("knees", 1),
        ("table", 2),
        ("people", 2),
        ("emergency", 4),
        ("walked", 1),
        ("lifted", 2),
        ("published", 2),
        ("advice", 2),
        ("the", 1),
        ("therapist", 3),
        ("doctor", 2),
        ("studies", 2),
        ("boxes", 2),
        ("times", 1),
        ("once", 1),
        ("usual", 3),
        ("question", 2),
    ] {
        assert_eq!(syllables::of(word, Language::English), count, "{word}");
    }
    for (word, count) in [
        ("peso", 2),
        ("espalda", 3),
        ("rodilla", 3),
        ("cirujano", 4),
        ("quédese", 3),
        ("cuánto", 2),
        ("día", 2),
        ("guía", 2),
        ("veces", 2),
        ("suelo", 2),
        ("límite", 3),
        ("leer", 2),
        ("y", 1),
        ("muy", 1),
        ("ciudad", 2),
        ("izquierda", 3),
        ("ahora", 3),
        ("aún", 2),
    ] {
        assert_eq!(syllables::of(word, Language::Spanish), count, "{word}");
    }
}

#[test]
fn the_formulas_give_what_they_are_published_to_give() {
    // One sentence of ten words and twelve syllables, by hand.
    let text = ["The cat sat on the mat and saw a spider slowly."];
    let measure = Measure::of(text.into_iter(), Language::English, &FieldTerms::default());
    assert_eq!((measure.sentences, measure.words), (1, 11));
    let by_hand = 0.39 * 11.0 + 11.8 * (13.0 / 11.0) - 15.59;
    assert!(
        (measure.grade() - by_hand).abs() < 1e-9,
        "{}",
        measure.grade()
    );
    let text = ["La mesa es alta."];
    let measure = Measure::of(text.into_iter(), Language::Spanish, &FieldTerms::default());
    let by_hand = 206.84 - 60.0 * (6.0 / 4.0) - 1.02 * 4.0;
    assert!(
        (measure.lecturabilidad() - by_hand).abs() < 1e-9,
        "{}",
        measure.lecturabilidad()
    );
}

fn measured(messages: &[Message]) -> impl Iterator<Item = &Message> {
    messages.iter().filter(|message| {
        !NOT_MEASURED
            .iter()
            .any(|prefix| message.id.starts_with(prefix))
    })
}

/// The texts of each section that are long enough to be read as sentences.
fn sections(messages: &[Message]) -> BTreeMap<String, Vec<String>> {
    let mut sections: BTreeMap<String, Vec<String>> = BTreeMap::new();
    for message in measured(messages) {
        let name = format!("{} / {}", message.file, message.section);
        let texts = message
            .texts
            .iter()
            .filter(|text| words(text).count() >= FEWEST_WORDS);
        sections.entry(name).or_default().extend(texts.cloned());
    }
    let (long, short): (BTreeMap<_, _>, BTreeMap<_, _>) = sections
        .into_iter()
        .partition(|(_, texts)| count(texts) >= SECTION_WORDS);
    let mut sections = long;
    for (name, texts) in short {
        let file = name.split(" / ").next().unwrap_or_default();
        sections
            .entry(format!("{file} / (short sections)"))
            .or_default()
            .extend(texts);
    }
    sections.retain(|_, texts| count(texts) >= SECTION_WORDS);
    sections
}

fn count(texts: &[String]) -> usize {
    texts.iter().map(|text| words(text).count()).sum()
}
