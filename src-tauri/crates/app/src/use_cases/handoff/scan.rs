//! Opening and closing the scan screen.

use crate::call::Call;
use crate::exchange::{Scan, Wanted};
use crate::failure::Failure;
use crate::use_cases::Nothing;
use door::ErrorCode;
use serde::Deserialize;

/// The command `scan_start`.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct StartScan {
    r#for: String,
}

/// Opens the scan screen with nothing in hand. The camera is let in until `scan_stop` or the lock.
///
/// # Errors
/// `not_a_choice`.
pub(crate) fn scan_start(call: &mut Call<'_>, asked: StartScan) -> Result<Nothing, Failure> {
    let wanted =
        Wanted::from_id(&asked.r#for).ok_or_else(|| Failure::at(ErrorCode::NotAChoice, "for"))?;
    let (_, exchange) = call.exchange()?;
    exchange.scan = Some(Scan::open(wanted));
    Ok(Nothing {})
}

/// Closes the scan screen. What came in whole stays until it is decided on.
///
/// # Errors
/// None.
pub(crate) fn scan_stop(call: &mut Call<'_>, _: Nothing) -> Result<Nothing, Failure> {
    let (_, exchange) = call.exchange()?;
    exchange.scan = None;
    Ok(Nothing {})
}
