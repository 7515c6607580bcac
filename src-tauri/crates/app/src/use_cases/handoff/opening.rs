//! Opening what came in. Nothing in the vault changes here: what is whole and understood waits for the
//! person's word.

use super::device::own;
use super::people;
use super::taking::Came;
use crate::call::Call;
use crate::convert::moment;
use crate::exchange::{Carried, Inbox, Next, Parcel, Proof};
use crate::failure::Failure;
use crate::use_cases::care::taking;
use crate::use_cases::plan::check::contradiction;
use door::ErrorCode;
use handoff::{
    Code, CodeError, Freshness, OpenError, OpenUnpairedError, Opened, Pairing, Purpose, Seen, open,
    open_unpaired,
};
use record::{
    Followed, History, Identity, Moment, ParcelPurpose, PersonPlan, Plan, Record, RecordError,
};
use serde::Deserialize;
use vault::Vault;

/// Opens a parcel that a paired device sealed.
///
/// # Errors
/// What the vault gives.
pub(crate) fn paired(call: &mut Call<'_>, bytes: &[u8]) -> Result<Came, Failure> {
    let (_, keys) = own(call)?;
    let (kept, pairings): (Vec<_>, Vec<Pairing>) = people::all(call)?.into_iter().unzip();
    let now_ms = call.now.timestamp_millis();
    let opened = match open(bytes, &keys, &pairings, now_ms) {
        Ok(opened) => opened,
        Err(error) => return Ok(Came::Not(of_open(error))),
    };
    let id = Identity(opened.pairing_id);
    let Some(paired) = kept.into_iter().find(|paired| paired.id == id) else {
        return Ok(Came::Not("handoff-refused-unknown-sender"));
    };
    let seen = seen(call.vault()?, id, purpose(opened.purpose))?;
    let at = moment::to_record(call.now);
    if let Some(says) = of_freshness(freshness(&seen, &opened)) {
        return Ok(Came::Not(says));
    }
    let carried = match understand(call.vault()?, opened.purpose, &opened.payload, at)? {
        Ok(carried) => carried,
        Err(says) => return Ok(Came::Not(says)),
    };
    let (_, exchange) = call.exchange()?;
    exchange.inbox = Some(Inbox::Open(Box::new(Parcel {
        carried,
        issued_at_ms: opened.issued_at_ms,
        proof: Proof::Paired { paired, opened },
    })));
    Ok(Came::In(Next::Accept))
}

/// Keeps a parcel under a code until the code is typed.
///
/// # Errors
/// `locked`.
pub(crate) fn sealed(call: &mut Call<'_>, parcel: Vec<u8>) -> Result<Came, Failure> {
    let (_, exchange) = call.exchange()?;
    exchange.inbox = Some(Inbox::Sealed(parcel));
    Ok(Came::In(Next::Code))
}

/// The command `parcel_code`.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct TypedCode {
    code: String,
}

/// Opens the parcel under a code that waits. A code that does not fit changes nothing: it may be typed again.
///
/// # Errors
/// `no_parcel` when none waits, or when what came out is not taken; `code_wrong` at `code`; what the vault gives.
pub(crate) fn with_code(call: &mut Call<'_>, typed: &TypedCode) -> Result<(), Failure> {
    let now_ms = call.now.timestamp_millis();
    let at = moment::to_record(call.now);
    let (vault, exchange) = call.exchange()?;
    let Some(Inbox::Sealed(parcel)) = &exchange.inbox else {
        return Err(Failure::new(ErrorCode::NoParcel));
    };
    let wrong = || Failure::at(ErrorCode::CodeWrong, "code");
    let code = Code::typed(&typed.code).map_err(|error| match error {
        CodeError::Count => wrong().saying("handoff-code-not-eight"),
        _ => wrong().saying("handoff-code-not-a-word"),
    })?;
    let refused = |says| Failure::new(ErrorCode::NoParcel).saying(says);
    let opened = match open_unpaired(parcel, &code, now_ms) {
        Ok(opened) => opened,
        Err(OpenUnpairedError::WrongCode) => return Err(wrong()),
        Err(error) => return Err(refused(of_open_unpaired(error))),
    };
    if vault.opened().has(&opened.digest)? {
        return Err(refused("handoff-refused-used"));
    }
    let carried = understand(vault, opened.purpose, &opened.payload, at)?.map_err(refused)?;
    exchange.inbox = Some(Inbox::Open(Box::new(Parcel {
        carried,
        issued_at_ms: opened.issued_at_ms,
        proof: Proof::Code(opened),
    })));
    Ok(())
}

/// The numbers accepted so far.
///
/// # Errors
/// `vault_damaged`; what the vault gives.
pub(super) fn seen(
    vault: &Vault,
    pairing: Identity,
    purpose: ParcelPurpose,
) -> Result<Seen, Failure> {
    match vault.seen().load(pairing, purpose)? {
        Some(bytes) => Seen::from_bytes(&bytes).map_err(|_| Failure::new(ErrorCode::VaultDamaged)),
        None => Ok(Seen::default()),
    }
}

/// How new a parcel is. Care plans are of several people, and may be taken in any order: whether one is older than
/// what is here, its own version says.
#[must_use]
pub(super) fn freshness(seen: &Seen, opened: &Opened) -> Freshness {
    match seen.judge(opened) {
        Freshness::Older if opened.purpose == Purpose::CarePlan => Freshness::New,
        freshness => freshness,
    }
}

/// The purpose as it is kept.
#[must_use]
pub(super) const fn purpose(purpose: Purpose) -> ParcelPurpose {
    match purpose {
        Purpose::Plan => ParcelPurpose::Plan,
        Purpose::History => ParcelPurpose::History,
        Purpose::CarePlan => ParcelPurpose::CarePlan,
    }
}

/// Reads what a parcel carries; the inner error is the id of the sentence that says why it is not taken.
fn understand(
    vault: &Vault,
    purpose: Purpose,
    payload: &[u8],
    at: Moment,
) -> Result<Result<Carried, &'static str>, Failure> {
    Ok(match purpose {
        Purpose::Plan => match Plan::from_bytes(payload) {
            Ok(plan) => refuse_plan(vault, &plan)?.map_or(Ok(Carried::Plan(Box::new(plan))), Err),
            Err(error) => Err(of_record(error)),
        },
        Purpose::History => History::from_bytes(payload)
            .map(Carried::History)
            .map_err(of_record),
        Purpose::CarePlan => match PersonPlan::from_bytes(payload) {
            Ok(plan) => taking::weigh(vault, &plan, None, at)?.map(|_| Carried::Care(plan)),
            Err(error) => Err(of_record(error)),
        },
    })
}

/// Why a plan that is whole is not taken.
fn refuse_plan(vault: &Vault, plan: &Plan) -> Result<Option<&'static str>, Failure> {
    if contradiction(plan).is_some() {
        return Ok(Some("handoff-refused-contradiction"));
    }
    let Some(newest) = vault.followed().newest_of(plan.id)? else {
        return Ok(None);
    };
    Ok(match crossing(&newest, plan) {
        Order::Same if newest.stopped_at.is_none() => Some("handoff-refused-same-plan"),
        Order::Older => Some("handoff-refused-older-plan"),
        Order::SameNumber => Some("handoff-refused-same-number"),
        Order::Same | Order::Newer | Order::Crossed => None,
    })
}

/// How a version of a plan stands to the one that was taken up last.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Order {
    /// Later in number and in time.
    Newer,
    /// The very same.
    Same,
    /// Earlier.
    Older,
    /// The same number, made no later, and another content.
    SameNumber,
    /// Number and time say different things: somebody's phone was brought back from an old copy.
    Crossed,
}

/// Compares a version with the one taken up last.
#[must_use]
pub(super) fn crossing(newest: &Followed, plan: &Plan) -> Order {
    use std::cmp::Ordering::{Equal, Greater, Less};
    let had = &newest.plan;
    if had == plan {
        return Order::Same;
    }
    let is_later = moment::from_record(plan.made_at) > moment::from_record(had.made_at);
    match (plan.version.cmp(&had.version), is_later) {
        (Greater, true) => Order::Newer,
        (Greater, false) | (Less | Equal, true) => Order::Crossed,
        (Equal, false) => Order::SameNumber,
        (Less, false) => Order::Older,
    }
}

const fn of_open(error: OpenError) -> &'static str {
    match error {
        OpenError::Foreign => "handoff-refused-foreign",
        OpenError::Newer => "handoff-refused-newer",
        OpenError::Truncated => "handoff-refused-truncated",
        OpenError::WrongRecipient => "handoff-refused-wrong-recipient",
        OpenError::UnknownSender => "handoff-refused-unknown-sender",
        OpenError::NotAuthentic => "handoff-refused-not-authentic",
        OpenError::Expired => "handoff-refused-expired",
        OpenError::TooLong | OpenError::Unreadable => "handoff-refused-unreadable",
        _ => "handoff-refused-damaged",
    }
}

const fn of_open_unpaired(error: OpenUnpairedError) -> &'static str {
    match error {
        OpenUnpairedError::Newer => "handoff-refused-newer",
        OpenUnpairedError::Expired => "handoff-refused-expired",
        OpenUnpairedError::TooLong | OpenUnpairedError::Unreadable => "handoff-refused-unreadable",
        OpenUnpairedError::Memory => "handoff-refused-memory",
        _ => "handoff-refused-damaged",
    }
}

const fn of_freshness(freshness: Freshness) -> Option<&'static str> {
    match freshness {
        Freshness::New => None,
        Freshness::SameAgain => Some("handoff-refused-same"),
        Freshness::Replayed => Some("handoff-refused-replayed"),
        Freshness::Older => Some("handoff-refused-older"),
        Freshness::NumberTwice => Some("handoff-refused-number-twice"),
    }
}

const fn of_record(error: RecordError) -> &'static str {
    match error {
        RecordError::CodeUnknown | RecordError::MustUnderstand | RecordError::Newer { .. } => {
            "handoff-refused-newer-content"
        }
        _ => "handoff-refused-unreadable",
    }
}
