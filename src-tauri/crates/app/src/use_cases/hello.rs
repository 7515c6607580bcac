//! The first thing a screen asks: is there a vault, is it locked, which language.

use super::Nothing;
use crate::call::Call;
use crate::failure::Failure;
use crate::session::IDLE_LOCK_S;
use crate::words::{Language, Words};
use door::ErrorCode;
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;
use vault::{Vault, VaultState};

/// The reply of `hello`.
#[derive(Debug, Serialize)]
pub(crate) struct Hello {
    first_start: bool,
    locked: bool,
    language: &'static str,
    languages: Vec<LanguageView>,
    version: &'static str,
    wait_s: u32,
    idle_lock_s: u32,
    demo: bool,
}

#[derive(Debug, Serialize)]
struct LanguageView {
    id: &'static str,
    name: &'static str,
}

/// Says how things stand. Free while locked, so it tells nothing that is in the vault.
///
/// # Errors
/// `storage_failed` when the folder cannot be looked into.
pub(crate) fn hello(call: &mut Call<'_>, _: Nothing) -> Result<Hello, Failure> {
    let languages = Language::ALL.iter().map(|one| LanguageView {
        id: one.id(),
        name: one.name(),
    });
    Ok(Hello {
        first_start: Vault::state(call.folder)? == VaultState::Absent,
        locked: call.state.session.is_locked(),
        language: call.state.words.language().id(),
        languages: languages.collect(),
        version: env!("CARGO_PKG_VERSION"),
        wait_s: call.state.device.tries.left_s(call.now),
        idle_lock_s: IDLE_LOCK_S,
        demo: call.state.device.demo,
    })
}

/// A command that names a language.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct InLanguage {
    language: String,
}

impl InLanguage {
    fn read(&self) -> Result<Language, Failure> {
        Language::from_id(&self.language)
            .ok_or_else(|| Failure::at(ErrorCode::NotAChoice, "language"))
    }
}

/// The reply of `words`.
#[derive(Debug, Serialize)]
pub(crate) struct ScreenWords {
    language: &'static str,
    words: BTreeMap<String, String>,
}

/// The static words of the screens, in any language.
///
/// # Errors
/// `not_a_choice` for a language there is none of.
pub(crate) fn words(_: &mut Call<'_>, asked: InLanguage) -> Result<ScreenWords, Failure> {
    let language = asked.read()?;
    Ok(ScreenWords {
        language: language.id(),
        words: Words::load(language).screen_words(),
    })
}

/// The reply of `language_set`.
#[derive(Debug, Serialize)]
pub(crate) struct LanguageSet {
    language: &'static str,
}

/// Changes the language. It is kept beside the vault, since it is needed before the vault is open.
///
/// # Errors
/// `not_a_choice`; `disk_full` or `storage_failed`.
pub(crate) fn language_set(call: &mut Call<'_>, asked: InLanguage) -> Result<LanguageSet, Failure> {
    let language = asked.read()?;
    call.speak(language)?;
    Ok(LanguageSet {
        language: language.id(),
    })
}
