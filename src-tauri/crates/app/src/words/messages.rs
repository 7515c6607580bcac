//! Finding a message and filling in its values.

use super::{Arg, Language, files, format};
use fluent_bundle::concurrent::FluentBundle;
use fluent_bundle::{FluentArgs, FluentResource, FluentValue};
use std::collections::BTreeMap;

type Bundle = FluentBundle<FluentResource>;

/// Prefix of the messages that the screens fetch once and keep.
const SCREEN_PREFIX: &str = "screen-";

/// All messages of one language, with English behind them.
pub struct Words {
    language: Language,
    own: Bundle,
    english: Option<Bundle>,
    screen_ids: Vec<String>,
}

impl std::fmt::Debug for Words {
    fn fmt(&self, formatter: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        formatter
            .debug_struct("Words")
            .field("language", &self.language)
            .finish_non_exhaustive()
    }
}

impl Words {
    /// Reads the built-in messages of a language. Takes some milliseconds: load once and keep.
    ///
    /// Never fails: a message that cannot be read is missing, and a missing one is shown in English.
    #[must_use]
    pub fn load(language: Language) -> Self {
        let own = bundle(language);
        let english = (language != Language::English).then(|| bundle(Language::English));
        Self {
            language,
            own,
            english,
            screen_ids: screen_ids(),
        }
    }

    /// The language.
    #[must_use]
    pub const fn language(&self) -> Language {
        self.language
    }

    /// Whether this language, or English behind it, has the message.
    #[must_use]
    pub fn has(&self, id: &str) -> bool {
        self.own.has_message(id)
            || self
                .english
                .as_ref()
                .is_some_and(|english| english.has_message(id))
    }

    /// A message without values. Missing: the English one; missing there too: the id in brackets.
    #[must_use]
    pub fn text(&self, id: &str) -> String {
        self.format(id, &[])
    }

    /// A message with its values by name. A value that is not given shows as its name in braces.
    #[must_use]
    pub fn format(&self, id: &str, args: &[(&str, Arg)]) -> String {
        from_bundle(&self.own, id, args)
            .or_else(|| {
                self.english
                    .as_ref()
                    .and_then(|english| from_bundle(english, id, args))
            })
            .unwrap_or_else(|| format!("[{id}]"))
    }

    /// The static words of the screens: every message whose id begins with `screen-`, by id.
    #[must_use]
    pub fn screen_words(&self) -> BTreeMap<String, String> {
        self.screen_ids
            .iter()
            .map(|id| (id.clone(), self.text(id)))
            .collect()
    }
}

fn bundle(language: Language) -> Bundle {
    let mut bundle = FluentBundle::new_concurrent(vec![language.id().parse().unwrap_or_default()]);
    // Marks around values would be read out or shown as boxes; both languages run left to right.
    bundle.set_use_isolating(false);
    bundle.set_formatter(Some(match language {
        Language::English => |value, _| number_text(value, Language::English),
        Language::Spanish => |value, _| number_text(value, Language::Spanish),
    }));
    for text in files::of(language) {
        let resource = match FluentResource::try_new((*text).to_owned()) {
            Ok(whole) => whole,
            Err((readable_part, _)) => readable_part,
        };
        // Only a repeated id is an error here; the first one stays. A test finds repeats.
        let _ = bundle.add_resource(resource);
    }
    bundle
}

fn number_text(value: &FluentValue<'_>, language: Language) -> Option<String> {
    match value {
        FluentValue::Number(number) => Some(format::number_text(number.value, language)),
        _ => None,
    }
}

fn from_bundle(bundle: &Bundle, id: &str, args: &[(&str, Arg)]) -> Option<String> {
    let pattern = bundle.get_message(id)?.value()?;
    let values: FluentArgs<'_> = args
        .iter()
        .map(|(name, arg)| (*name, arg.to_fluent()))
        .collect();
    // Errors are values that were not given; the text then shows their names, and a test finds them.
    let mut errors = Vec::new();
    Some(
        bundle
            .format_pattern(pattern, Some(&values), &mut errors)
            .into_owned(),
    )
}

/// Ids of the screens' messages, from the English files: the other languages must have the same.
fn screen_ids() -> Vec<String> {
    files::of(Language::English)
        .iter()
        .flat_map(|text| text.lines())
        .filter(|line| line.starts_with(SCREEN_PREFIX))
        .filter_map(|line| line.split_once('='))
        .map(|(id, _)| id.trim().to_owned())
        .collect()
}
