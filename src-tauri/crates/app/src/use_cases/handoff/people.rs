//! The people on the other side.

use super::device::{own, read_alias, role_id};
use super::{hex, identity};
use crate::call::Call;
use crate::convert::moment::from_record;
use crate::failure::Failure;
use crate::use_cases::Nothing;
use crate::words::Arg;
use door::ErrorCode;
use handoff::{Alias, Pairing, Role};
use record::Paired;
use serde::{Deserialize, Serialize};

/// The reply of `pairings`.
#[derive(Debug, Serialize)]
pub(crate) struct PairingsView {
    pairings: Vec<PairingView>,
}

#[derive(Debug, Serialize)]
struct PairingView {
    id: String,
    alias: String,
    role: &'static str,
    text: String,
    note: Option<String>,
}

/// Everybody who is paired with this device.
///
/// # Errors
/// `vault_damaged` for a pairing that is none; what the vault gives.
pub(crate) fn pairings(call: &mut Call<'_>, _: Nothing) -> Result<PairingsView, Failure> {
    let words = &call.state.words;
    let own_key = {
        let (_, keys) = own(call)?;
        let alias = Alias::new("-").map_err(|_| Failure::new(ErrorCode::Internal))?;
        let card = keys
            .card(alias, Role::Lift)
            .map_err(|_| Failure::new(ErrorCode::VaultDamaged))?;
        card.key_id()
    };
    let mut views = Vec::new();
    for paired in call.vault()?.pairings().all()? {
        let pairing = read(&paired)?;
        let day = from_record(paired.since).date_naive();
        let day = Arg::text(words.date_text(day));
        let note = (pairing.mine() != own_key).then(|| words.text("handoff-pairing-old-keys"));
        views.push(PairingView {
            id: hex(&paired.id.0),
            alias: paired.name,
            role: role_id(pairing.theirs().role()),
            text: words.format("handoff-pairing-since", &[("day", day)]),
            note,
        });
    }
    Ok(PairingsView { pairings: views })
}

/// The command `pairing_rename`.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct Rename {
    id: String,
    alias: String,
}

/// Calls somebody by another name here. Their own card stays as it is.
///
/// # Errors
/// `alias_length`, `alias_character`; `unknown_pairing`; what the vault gives.
pub(crate) fn pairing_rename(call: &mut Call<'_>, asked: Rename) -> Result<Nothing, Failure> {
    let name = read_alias(&asked.alias)?;
    let mut paired = find(call, &asked.id, "id")?;
    paired.name = name.as_str().to_owned();
    call.vault()?.pairings().save(&paired)?;
    Ok(Nothing {})
}

/// The command `pairing_end`.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct EndPairing {
    id: String,
}

/// Ends a pairing: nothing more is taken from that device. What was accepted stays.
///
/// # Errors
/// `unknown_pairing`; what the vault gives.
pub(crate) fn pairing_end(call: &mut Call<'_>, asked: EndPairing) -> Result<Nothing, Failure> {
    let paired = find(call, &asked.id, "id")?;
    call.vault()?.pairings().remove(paired.id)?;
    Ok(Nothing {})
}

/// The pairing with this id on the wire.
///
/// # Errors
/// `unknown_pairing` at `field`; what the vault gives.
pub(crate) fn find(call: &Call<'_>, id: &str, field: &str) -> Result<Paired, Failure> {
    let found = match identity(id) {
        Some(id) => call.vault()?.pairings().find(id)?,
        None => None,
    };
    found.ok_or_else(|| Failure::at(ErrorCode::UnknownPairing, field))
}

/// The pairing itself, as the hand-off knows it.
///
/// # Errors
/// `vault_damaged`.
pub(crate) fn read(paired: &Paired) -> Result<Pairing, Failure> {
    Pairing::from_bytes(paired.pairing.bytes()).map_err(|_| Failure::new(ErrorCode::VaultDamaged))
}

/// Every pairing, as kept and as the hand-off knows it.
///
/// # Errors
/// `vault_damaged`; what the vault gives.
pub(crate) fn all(call: &Call<'_>) -> Result<Vec<(Paired, Pairing)>, Failure> {
    let kept = call.vault()?.pairings().all()?;
    kept.into_iter()
        .map(|paired| Ok((read(&paired)?, paired)))
        .map(|both: Result<_, Failure>| both.map(|(pairing, paired)| (paired, pairing)))
        .collect()
}
