//! Pairing: each shows an offer and scans the other's, both compare six words, both agree.

use super::device::{own, own_alias, own_role, random, role_id};
use super::symbol::SymbolView;
use super::taking::Came;
use super::{hex, people};
use crate::call::Call;
use crate::convert::moment;
use crate::exchange::{Next, PairStep, PairingTry};
use crate::failure::Failure;
use crate::use_cases::Nothing;
use crate::use_cases::departure::{Leaving, note};
use crate::use_cases::patients::seen::new_phone;
use crate::words::Arg;
use door::ErrorCode;
use handoff::{
    Agreed, By, CardChange, Density, OfferError, PairError, Pairing, Scanned, Showing, Shown,
    lay_out,
};
use record::{DepartureHow, DepartureWhat, Identity, Paired, SecretBytes};
use serde::{Deserialize, Serialize};

/// The reply of `pair_start`.
#[derive(Debug, Serialize)]
pub(crate) struct Started {
    symbol: SymbolView,
    alias: String,
    /// Seconds for which the offer still holds.
    valid_s: i64,
    /// Whether the other's offer is in already.
    scanned: bool,
}

/// Shows this device's offer. It holds for five minutes; asked again meanwhile it is the same one, since the
/// holder goes to and fro between showing theirs and scanning the other. Once the check words were shown it is a
/// new one: each comparison has fresh words.
///
/// # Errors
/// `alias_needed`; `randomness_failed`; what the vault gives.
pub(crate) fn pair_start(call: &mut Call<'_>, _: Nothing) -> Result<Started, Failure> {
    let alias = own_alias(call)?;
    let role = own_role(call)?;
    let now_ms = call.now.timestamp_millis();
    let (_, exchange) = call.exchange()?;
    if let Some(trying) = &exchange.pairing
        && trying.shown.left_ms(now_ms) > 0
        && trying.alias == alias
        && trying.role == role
        && !matches!(trying.step, PairStep::Compared { .. })
    {
        return started(trying, now_ms);
    }
    let (_, keys) = own(call)?;
    let shown =
        Shown::begin(&keys, alias.clone(), role, now_ms, &mut random(call)).map_err(refuse)?;
    let (_, exchange) = call.exchange()?;
    let trying = exchange.pairing.insert(PairingTry {
        shown,
        alias,
        role,
        step: PairStep::Waiting,
    });
    started(trying, now_ms)
}

fn started(trying: &PairingTry, now_ms: i64) -> Result<Started, Failure> {
    let symbol = match lay_out(trying.shown.offer(), Density::Standard) {
        Ok(Showing::One(symbol)) => SymbolView::of(&symbol),
        _ => return Err(Failure::new(ErrorCode::Internal)),
    };
    Ok(Started {
        symbol,
        alias: trying.alias.as_str().to_owned(),
        valid_s: trying.shown.left_ms(now_ms) / 1000,
        scanned: !matches!(trying.step, PairStep::Waiting),
    })
}

/// Takes the other device's offer from the scan screen.
///
/// # Errors
/// What the vault gives.
pub(crate) fn scanned(call: &mut Call<'_>, offer: &[u8]) -> Result<Came, Failure> {
    let known: Vec<Pairing> = people::all(call)?
        .into_iter()
        .map(|(_, pairing)| pairing)
        .collect();
    let now_ms = call.now.timestamp_millis();
    let (_, exchange) = call.exchange()?;
    let Some(trying) = exchange.pairing.as_mut() else {
        return Ok(Came::Not("handoff-refused-show-yours"));
    };
    match trying.shown.scan(offer, &known, now_ms) {
        Ok(scanned) => {
            trying.step = PairStep::Scanned(Box::new(scanned));
            Ok(Came::In(Next::Compare))
        }
        Err(error) => Ok(Came::Not(match error {
            PairError::TooLate => "error-pair-expired",
            PairError::OwnCard => "handoff-refused-own-card",
            PairError::Offer(OfferError::Newer) => "handoff-refused-newer",
            _ => "handoff-refused-damaged",
        })),
    }
}

/// The reply of `pair_compare`.
#[derive(Debug, Serialize)]
pub(crate) struct Comparing {
    words: [&'static str; 6],
    other: Other,
    warning: Option<String>,
}

#[derive(Debug, Serialize)]
struct Other {
    alias: String,
    role: &'static str,
    role_text: String,
}

/// The six check words. Asked again it gives the same ones.
///
/// # Errors
/// `pair_nothing_scanned`; `pair_expired`; what the vault gives.
pub(crate) fn pair_compare(call: &mut Call<'_>, _: Nothing) -> Result<Comparing, Failure> {
    let now_ms = call.now.timestamp_millis();
    let (_, exchange) = call.exchange()?;
    let trying = exchange.pairing.take().ok_or_else(nothing_scanned)?;
    if trying.shown.left_ms(now_ms) == 0 {
        return Err(Failure::new(ErrorCode::PairExpired));
    }
    let step = match trying.step {
        PairStep::Scanned(scanned) => {
            let (warning, replaces) = standing(call, &scanned)?;
            PairStep::Compared {
                compared: Box::new(scanned.compare(now_ms).map_err(refuse)?),
                warning,
                replaces,
            }
        }
        step => step,
    };
    let reply = match &step {
        PairStep::Compared {
            compared, warning, ..
        } => {
            let theirs = compared.theirs();
            let role = role_id(theirs.role());
            Ok(Comparing {
                words: compared.words(),
                other: Other {
                    alias: theirs.alias().as_str().to_owned(),
                    role,
                    role_text: role_text(call, role),
                },
                warning: warning.clone(),
            })
        }
        _ => Err(nothing_scanned()),
    };
    let (_, exchange) = call.exchange()?;
    exchange.pairing = Some(PairingTry { step, ..trying });
    reply
}

/// What must be said loudly of the other's card, and which pairings it takes the place of.
fn standing(
    call: &Call<'_>,
    scanned: &Scanned,
) -> Result<(Option<String>, Vec<Identity>), Failure> {
    let words = &call.state.words;
    let theirs = scanned.theirs();
    let alias = || Arg::text(theirs.alias().as_str());
    let known = people::all(call)?;
    let with_keys = |key_id| {
        let known = known.iter();
        known
            .filter(move |(_, pairing)| pairing.theirs().key_id() == key_id)
            .map(|(paired, _)| paired.id)
            .collect::<Vec<_>>()
    };
    match scanned.change() {
        CardChange::Again => Ok((None, with_keys(theirs.key_id()))),
        CardChange::Renamed { was } => {
            let args = [("alias", alias()), ("was", Arg::text(was.as_str()))];
            let warning = words.format("handoff-warning-renamed", &args);
            Ok((Some(warning), with_keys(theirs.key_id())))
        }
        CardChange::New | CardChange::OtherKeys { .. } => {
            // By the name on their card, and by the one the holder gave them.
            let same_name: Vec<Identity> = known
                .iter()
                .filter(|(paired, pairing)| {
                    let sounds = |name: &handoff::Alias| theirs.alias().sounds_like(name);
                    let given = handoff::Alias::new(&paired.name);
                    sounds(pairing.theirs().alias()) || given.is_ok_and(|given| sounds(&given))
                })
                .map(|(paired, _)| paired.id)
                .collect();
            let warning = (!same_name.is_empty())
                .then(|| words.format("handoff-warning-other-keys", &[("alias", alias())]));
            Ok((warning, same_name))
        }
    }
}

/// The command `pair_agree`.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct Agree {
    same: bool,
    #[serde(default)]
    other_says_so: bool,
}

/// The reply of `pair_agree`.
#[derive(Debug, Serialize)]
pub(crate) struct Agreement {
    id: Option<String>,
}

/// The holder's word on the check words. Only "the same", said of both screens, makes a pairing; anything
/// else drops this try.
///
/// # Errors
/// `answer_needed` at `other_says_so`; `pair_nothing_scanned`; `pair_expired`; what the vault gives.
pub(crate) fn pair_agree(call: &mut Call<'_>, asked: Agree) -> Result<Agreement, Failure> {
    if asked.same && !asked.other_says_so {
        return Err(Failure::at(ErrorCode::AnswerNeeded, "other_says_so"));
    }
    let now = call.now;
    let (vault, exchange) = call.exchange()?;
    let trying = exchange.pairing.take();
    if !asked.same {
        return Ok(Agreement { id: None });
    }
    let step = trying.ok_or_else(nothing_scanned)?.step;
    let PairStep::Compared {
        compared, replaces, ..
    } = step
    else {
        return Err(nothing_scanned());
    };
    let now_ms = now.timestamp_millis();
    let agreed = compared.agree(By::Holder, now_ms).map_err(refuse)?;
    let agreed = match agreed {
        Agreed::One(compared) => compared.agree(By::Other, now_ms).map_err(refuse)?,
        both @ Agreed::Both(_) => both,
    };
    let Agreed::Both(pairing) = agreed else {
        return Err(Failure::new(ErrorCode::Internal));
    };
    let paired = Paired {
        id: Identity(*pairing.id()),
        pairing: SecretBytes::new(pairing.to_bytes()),
        name: pairing.theirs().alias().as_str().to_owned(),
        since: moment::to_record(now),
    };
    // The other has the name and the public keys of this device from now on.
    let card = Leaving {
        to: Some(paired.name.clone()),
        ..Leaving::of(DepartureWhat::Card)
    };
    vault.together(|vault| {
        vault.pairings().add(&paired)?;
        note(vault, now, &card, DepartureHow::Shown)?;
        for old in &replaces {
            vault.received().hand_on(*old, paired.id)?;
            new_phone(vault, *old, paired.id)?;
            vault.pairings().remove(*old)?;
        }
        Ok(())
    })?;
    Ok(Agreement {
        id: Some(hex(&paired.id.0)),
    })
}

fn role_text(call: &Call<'_>, role: &str) -> String {
    call.state.words.text(match role {
        "helps" => "handoff-role-helps",
        "treats" => "handoff-role-treats",
        _ => "handoff-role-lifts",
    })
}

fn nothing_scanned() -> Failure {
    Failure::new(ErrorCode::PairNothingScanned)
}

fn refuse(error: PairError) -> Failure {
    Failure::new(match error {
        PairError::TooLate => ErrorCode::PairExpired,
        PairError::Randomness => ErrorCode::RandomnessFailed,
        _ => ErrorCode::Internal,
    })
}
