//! The worker's own body today. It stays private: no text for the office and no entry of the log holds it.

use crate::call::Call;
use crate::failure::Failure;
use crate::use_cases::walk::own;
use crate::walk::page::Page;
use serde::Deserialize;

/// The command `own_start`.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct StartOwn {
    #[serde(default)]
    sign: bool,
}

/// Asks the worker about today, before somebody is moved.
///
/// # Errors
/// What the vault gives.
pub(crate) fn own_start(call: &mut Call<'_>, asked: StartOwn) -> Result<Page, Failure> {
    own::begin(call, asked.sign)
}
