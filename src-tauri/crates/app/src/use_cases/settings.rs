//! What the user has chosen once, and what is known about them.

use super::Nothing;
use super::first_start::read;
use crate::call::Call;
use crate::convert::about;
use crate::failure::Failure;
use crate::walk::answer::Answers;
use crate::walk::flow::{Purpose, Walk};
use crate::walk::page::Row;
use crate::walk::view;
use record::{Units, UsedFor};
use serde::{Deserialize, Serialize};

/// The reply of `settings` and `settings_set`.
#[derive(Debug, Serialize)]
pub(crate) struct SettingsView {
    r#use: &'static str,
    units: &'static str,
    language: &'static str,
    about: Vec<Row>,
}

/// The settings.
///
/// # Errors
/// What the vault gives.
pub(crate) fn settings(call: &mut Call<'_>, _: Nothing) -> Result<SettingsView, Failure> {
    view(call)
}

/// The command `settings_set`; what is not named stays.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct SetSettings {
    #[serde(default)]
    units: Option<String>,
    #[serde(default)]
    r#use: Option<String>,
}

/// Changes the settings.
///
/// # Errors
/// `not_a_choice`; what the vault gives.
pub(crate) fn settings_set(
    call: &mut Call<'_>,
    asked: SetSettings,
) -> Result<SettingsView, Failure> {
    let mut kept = call.settings()?;
    if let Some(id) = &asked.units {
        kept.units = read(Units::from_id(id), "units")?;
    }
    if let Some(id) = &asked.r#use {
        kept.used_for = read(UsedFor::from_id(id), "use")?;
    }
    call.vault()?.settings().save(&kept)?;
    view(call)
}

fn view(call: &Call<'_>) -> Result<SettingsView, Failure> {
    let kept = call.settings()?;
    let about = call.vault()?.about().load()?.unwrap_or_default();
    let answers = about::from_record(&about, call.now, kept.units);
    let none = Answers::default();
    let walk = Walk {
        purpose: Purpose::About,
        given: &answers,
        kept: &none,
        whole_list_due: false,
        times_a_bout: None,
    };
    Ok(SettingsView {
        r#use: kept.used_for.id(),
        units: kept.units.id(),
        language: call.state.words.language().id(),
        about: view::rows(&walk, call.reader()?),
    })
}
