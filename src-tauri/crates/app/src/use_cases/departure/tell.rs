//! What only a screen knows: that a text was copied or handed to another app, or that a symbol was printed.

use super::{Leaving, note};
use crate::call::Call;
use crate::failure::Failure;
use crate::use_cases::Nothing;
use crate::use_cases::care::standing::MoveStanding;
use door::ErrorCode;
use record::{DepartureHow, DepartureWhat};
use serde::Deserialize;
use vault::{Vault, VaultError};

/// The command `departure_note`.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct Told {
    what: String,
    how: String,
    #[serde(default)]
    show: Option<String>,
}

/// Writes down what the screen tells. What it was is looked up here.
///
/// # Errors
/// `not_a_choice` at `what` or `how`; `unknown_show` at `show`; `not_found` without an open shift; `no_draft` without
/// a move; what the vault gives.
pub(crate) fn departure_note(call: &mut Call<'_>, asked: Told) -> Result<Nothing, Failure> {
    let how = DepartureHow::from_id(&asked.how);
    let how = how.ok_or_else(|| Failure::at(ErrorCode::NotAChoice, "how"))?;
    let leaving = match asked.what.as_str() {
        "show" => {
            let (_, exchange) = call.exchange()?;
            let show = asked.show.as_deref().and_then(|id| exchange.shows.find(id));
            let show = show.ok_or_else(|| Failure::at(ErrorCode::UnknownShow, "show"))?;
            show.leaving.clone()
        }
        "shift" => {
            let open = of_open_shift(call.vault()?)?;
            open.ok_or_else(|| Failure::new(ErrorCode::NotFound))?
        }
        "office" => Leaving {
            about: Some(MoveStanding::open(call)?.person.code),
            ..Leaving::of(DepartureWhat::Office)
        },
        _ => return Err(Failure::at(ErrorCode::NotAChoice, "what")),
    };
    let may = match leaving.what {
        DepartureWhat::Shift | DepartureWhat::Office => {
            matches!(how, DepartureHow::Copied | DepartureHow::Shared)
        }
        _ => how == DepartureHow::Printed,
    };
    if !may {
        return Err(Failure::at(ErrorCode::NotAChoice, "how"));
    }
    note(call.vault()?, call.now, &leaving, how)?;
    Ok(Nothing {})
}

/// The log of the shift that is open.
///
/// # Errors
/// What the vault gives.
pub(crate) fn of_open_shift(vault: &Vault) -> Result<Option<Leaving>, VaultError> {
    let Some((id, _)) = vault.shifts().open()? else {
        return Ok(None);
    };
    let entries = u32::try_from(vault.move_entries().of(id)?.len()).ok();
    Ok(Some(Leaving {
        entries,
        ..Leaving::of(DepartureWhat::Shift)
    }))
}
