//! The person's word on a parcel. Only here is anything of it kept, in one step with its number.

use super::hex;
use super::opening::{freshness, purpose, seen};
use crate::call::Call;
use crate::convert::moment;
use crate::exchange::{Carried, Inbox, Parcel, Proof};
use crate::failure::Failure;
use crate::use_cases::Nothing;
use crate::use_cases::care::taking;
use crate::use_cases::patients::seen::note_seen;
use door::ErrorCode;
use handoff::{Freshness, Seen};
use record::{Followed, Identity, Moment, Received};
use serde::Serialize;
use vault::{Vault, VaultError};

/// The reply of `parcel_accept`.
#[derive(Debug, Serialize)]
pub(crate) struct Accepted {
    said: String,
    to: String,
}

/// Takes the parcel that waits.
///
/// # Errors
/// `no_parcel` when none waits, or when it ran out or was taken meanwhile; what the vault gives. Then nothing
/// was changed.
pub(crate) fn parcel_accept(call: &mut Call<'_>, _: Nothing) -> Result<Accepted, Failure> {
    let now = call.now;
    let (vault, exchange) = call.exchange()?;
    let parcel = match exchange.inbox.take() {
        Some(Inbox::Open(parcel)) => parcel,
        other => {
            // One under a code waits on for its words.
            exchange.inbox = other;
            return Err(Failure::new(ErrorCode::NoParcel));
        }
    };
    let at = moment::to_record(now);
    check_still(vault, &parcel, now.timestamp_millis())?;
    let numbers = numbers(vault, &parcel)?;
    let pairing = pairing(&parcel);
    let Parcel { carried, proof, .. } = *parcel;
    let from = proof.name().map(str::to_owned);
    let (said, to) = match carried {
        Carried::Plan(plan) => {
            let followed = Followed {
                plan: *plan,
                at,
                pairing,
                from,
                stopped_at: None,
            };
            vault.together(|vault| {
                remember(vault, &proof, numbers.as_ref(), at)?;
                vault.followed().follow(&followed)
            })?;
            ("handoff-said-plan", "#/plan".to_owned())
        }
        Carried::History(history) => {
            let received = Received { history, at, from };
            vault.together(|vault| {
                remember(vault, &proof, numbers.as_ref(), at)?;
                if let Some(pairing) = pairing {
                    note_seen(vault, pairing, at, None)?;
                }
                vault.received().add(pairing, &received)
            })?;
            let to = pairing.map_or_else(
                || "#/home".to_owned(),
                |pairing| format!("#/person/{}", hex(&pairing.0)),
            );
            ("handoff-said-history", to)
        }
        Carried::Care(plan) => {
            let taken = taking::weigh(vault, &plan, from.as_deref(), at)?;
            let taken = taken.map_err(|says| Failure::new(ErrorCode::NoParcel).saying(says))?;
            let id = vault.together(|vault| {
                remember(vault, &proof, numbers.as_ref(), at)?;
                taking::keep(vault, &taken)
            })?;
            ("handoff-said-care", format!("#/care/{}", id.0))
        }
    };
    exchange.scan = None;
    Ok(Accepted {
        said: call.state.words.text(said),
        to,
    })
}

/// The reply of `parcel_decline`.
#[derive(Debug, Serialize)]
pub(crate) struct Declined {
    said: String,
}

/// Leaves the parcel that waits. It can be scanned again.
///
/// # Errors
/// None.
pub(crate) fn parcel_decline(call: &mut Call<'_>, _: Nothing) -> Result<Declined, Failure> {
    let (_, exchange) = call.exchange()?;
    exchange.inbox = None;
    exchange.scan = None;
    Ok(Declined {
        said: call.state.words.text("handoff-said-declined"),
    })
}

/// The parcel may have waited for long.
fn check_still(vault: &Vault, parcel: &Parcel, now_ms: i64) -> Result<(), Failure> {
    let gone = |says| Failure::new(ErrorCode::NoParcel).saying(says);
    let expires_at_ms = match &parcel.proof {
        Proof::Paired { opened, .. } => opened.expires_at_ms,
        Proof::Code(opened) => opened.expires_at_ms,
    };
    if now_ms >= expires_at_ms {
        return Err(gone("handoff-refused-expired"));
    }
    if let Proof::Paired { paired, .. } = &parcel.proof
        && vault.pairings().find(paired.id)?.is_none()
    {
        return Err(gone("handoff-refused-unknown-sender"));
    }
    Ok(())
}

/// The numbers to be kept with it, for a paired sender.
fn numbers(vault: &Vault, parcel: &Parcel) -> Result<Option<Seen>, Failure> {
    let Proof::Paired { paired, opened } = &parcel.proof else {
        return Ok(None);
    };
    let mut seen = seen(vault, paired.id, purpose(opened.purpose))?;
    if freshness(&seen, opened) != Freshness::New {
        return Err(Failure::new(ErrorCode::NoParcel).saying("handoff-refused-same"));
    }
    seen.accept_late(opened);
    Ok(Some(seen))
}

fn pairing(parcel: &Parcel) -> Option<Identity> {
    match &parcel.proof {
        Proof::Paired { paired, .. } => Some(paired.id),
        Proof::Code(_) => None,
    }
}

fn remember(
    vault: &Vault,
    proof: &Proof,
    numbers: Option<&Seen>,
    at: Moment,
) -> Result<(), VaultError> {
    match (proof, numbers) {
        (Proof::Paired { paired, opened }, Some(numbers)) => {
            let purpose = purpose(opened.purpose);
            vault.seen().save(paired.id, purpose, &numbers.to_bytes())
        }
        (Proof::Code(opened), _) => vault.opened().add(&opened.digest, at.at_ms),
        (Proof::Paired { .. }, None) => Ok(()),
    }
}
