//! Opening what came in. Nothing in the vault changes here.

use super::taking::Came;
use crate::call::Call;
use crate::exchange::{Inbox, Next};
use crate::failure::Failure;
use handoff::Purpose;

/// Opens a parcel that a paired device sealed.
///
/// # Errors
/// What the vault gives.
pub(crate) fn paired(_: &mut Call<'_>, _: &[u8]) -> Result<Came, Failure> {
    Ok(Came::Not("handoff-refused-newer"))
}

/// Keeps a parcel under a code until the code is typed.
///
/// # Errors
/// `locked`.
pub(crate) fn sealed(
    call: &mut Call<'_>,
    purpose: Purpose,
    parcel: Vec<u8>,
) -> Result<Came, Failure> {
    let (_, exchange) = call.exchange()?;
    exchange.inbox = Some(Inbox::Sealed { purpose, parcel });
    Ok(Came::In(Next::Code))
}
