//! Every question, option and interruption has its words in both languages.

use super::{Language, Units, Words};
use crate::walk::ids::QuestionId;
use crate::walk::interruptions::InterruptionId;
use crate::walk::question::{Kind, Label};
use crate::walk::questions::question;
use crate::walk::text::{Reader, interruption_word_id, word_id};

/// Their answers are shown under another question's row.
const WITHOUT_ROW: [QuestionId; 2] = [QuestionId::MassNumber, QuestionId::MassGuess];

fn each_language(check: impl Fn(Reader<'_>)) {
    for language in Language::ALL {
        let words = Words::load(*language);
        check(Reader {
            words: &words,
            units: Units::Kilograms,
        });
    }
}

#[test]
fn every_question_has_a_title_and_a_name_on_the_check_page() {
    each_language(|reader| {
        for id in QuestionId::ALL {
            assert!(reader.words.has(&word_id(*id, None)), "{}", id.id());
            let row = reader.words.has(&word_id(*id, Some("row")));
            assert_eq!(row, !WITHOUT_ROW.contains(id), "{}", id.id());
        }
    });
}

#[test]
fn every_option_has_its_words() {
    each_language(|reader| {
        for id in QuestionId::ALL {
            for option in question(*id).kind.options() {
                let shown = reader.option(*id, option);
                assert!(!shown.contains(['[', '{']), "{shown}");
                let note = reader.note(*id, option).unwrap_or_default();
                assert!(!note.contains(['[', '{']), "{note}");
            }
        }
    });
}

#[test]
fn the_answers_of_one_question_read_differently() {
    each_language(|reader| {
        for id in QuestionId::ALL {
            let options = question(*id).kind.options();
            let mut shown: Vec<String> = options
                .iter()
                .map(|option| reader.option(*id, option))
                .collect();
            shown.sort();
            shown.dedup();
            assert_eq!(shown.len(), options.len(), "{}: {shown:?}", id.id());
        }
    });
}

#[test]
fn signs_are_asked_in_the_same_words_everywhere() {
    for id in [QuestionId::SignsFull, QuestionId::SignsFlare] {
        let Kind::Choices(options) = question(id).kind else {
            continue;
        };
        assert!(options.iter().all(|option| option.label == Label::Sign));
    }
}

#[test]
fn every_interruption_has_a_title_and_a_text() {
    each_language(|reader| {
        for id in InterruptionId::ALL {
            for part in ["title", "text"] {
                let id = interruption_word_id(*id, part);
                assert!(reader.words.has(&id), "{id}");
            }
        }
    });
}
