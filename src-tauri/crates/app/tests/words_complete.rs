//! Both languages say the same: every message in both, with the same values, and one for every closed list.

mod words_support;

use app::words::{Language, Words, message_id};
use lifting::advise::advice::{Alternative, Caution};
use lifting::advise::change::ChangeStep;
use lifting::body::{Region, WarningSign};
use lifting::reason::{Authority, ReasonId, Sure};
use lifting::way::Way;
use std::collections::BTreeMap;
use words_support::catalog::messages;

#[test]
fn both_languages_have_the_same_messages_in_the_same_files_with_the_same_values() {
    let [english, spanish] = [Language::English, Language::Spanish].map(|language| {
        messages(language)
            .into_iter()
            .map(|message| ((message.file, message.id), message.variables))
            .collect::<BTreeMap<_, _>>()
    });
    for (place, variables) in &english {
        assert_eq!(spanish.get(place), Some(variables), "{place:?}");
    }
    for place in spanish.keys() {
        assert!(english.contains_key(place), "{place:?} is Spanish only");
    }
}

#[test]
fn no_id_stands_twice() {
    for language in Language::ALL {
        let mut seen = BTreeMap::new();
        for message in messages(*language) {
            let before = seen.insert(message.id.clone(), message.file.clone());
            assert_eq!(before, None, "{} in {language:?}", message.id);
        }
    }
}

#[test]
fn every_message_of_the_files_is_built_in() {
    for language in Language::ALL {
        let words = Words::load(*language);
        for message in messages(*language) {
            assert!(words.has(&message.id), "{} in {language:?}", message.id);
        }
    }
}

#[test]
fn the_screens_get_every_fixed_message_and_none_with_a_value() {
    let words = Words::load(Language::Spanish).screen_words();
    for message in messages(Language::Spanish) {
        if message.id.starts_with("screen-") {
            assert!(message.variables.is_empty(), "{} takes a value", message.id);
            assert!(words.contains_key(&message.id), "{}", message.id);
        }
    }
}

#[test]
fn every_member_of_every_closed_list_has_its_messages() {
    let mut wanted = Vec::new();
    for id in ReasonId::ALL {
        wanted.extend([
            message_id("reason", id.id()),
            message_id("because", id.id()),
        ]);
        wanted.push(message_id("source", id.source()));
    }
    for way in Way::ALL {
        let stem = message_id("way", way.id());
        wanted.push(stem.clone());
        wanted.push(format!("{stem}-gloss"));
        for at in 1..=3 {
            wanted.extend([format!("{stem}-cue-{at}"), format!("{stem}-word-{at}")]);
        }
    }
    for id in ChangeStep::IDS {
        let stem = message_id("change", id);
        wanted.push(stem.clone());
        wanted.extend((1..=3).map(|at| format!("{stem}-word-{at}")));
    }
    for sign in WarningSign::ALL {
        wanted.extend([
            message_id("sign", sign.id()),
            message_id("sign-short", sign.id()),
        ]);
    }
    wanted.extend(
        Caution::ALL
            .iter()
            .map(|caution| message_id("caution", caution.id())),
    );
    wanted.extend(
        Alternative::ALL
            .iter()
            .map(|other| message_id("alternative", other.id())),
    );
    wanted.extend(
        Authority::ALL
            .iter()
            .map(|authority| message_id("authority", authority.id())),
    );
    wanted.extend(Sure::ALL.iter().map(|sure| message_id("sure", sure.id())));
    wanted.extend(
        Region::ALL
            .iter()
            .map(|region| message_id("region", region.id())),
    );
    let words = Words::load(Language::English);
    for id in wanted {
        assert!(words.has(&id), "{id}");
    }
}

#[test]
fn a_way_has_one_name_everywhere() {
    for language in Language::ALL {
        let words = Words::load(*language);
        for way in Way::ALL {
            assert_eq!(
                words.text(&message_id("screen-way", way.id())),
                words.way_name(*way)
            );
        }
    }
}
