//! Sealing and showing.

use super::device::{own, random};
use super::people;
use super::summary::{AskedShow, Ready, ready};
use super::symbol::SymbolView;
use crate::base64;
use crate::call::Call;
use crate::convert::moment::to_record;
use crate::convert::plan::to_date;
use crate::exchange::Show;
use crate::failure::Failure;
use crate::use_cases::Nothing;
use crate::use_cases::departure::{note, note_file};
use crate::use_cases::patients::seen::note_seen;
use crate::words::Arg;
use chrono::{DateTime, Days, Duration, FixedOffset, NaiveTime, TimeZone};
use door::ErrorCode;
use handoff::{
    Code, LONGEST_VALIDITY_MS, LayOutError, Outgoing, Purpose, SealError, Showing, derive_counter,
    lay_out, seal, seal_unpaired,
};
use record::{Day, DepartureHow, Plan};
use serde::{Deserialize, Serialize};
use vault::{Vault, VaultError};

use super::opening::purpose;

/// How long a history may lie before it is taken in. House rule: a visit next week.
const HISTORY_VALID: Duration = Duration::days(7);
/// Most symbols in one reply (house rule): four seconds of showing.
const MOST_SYMBOLS: u32 = 32;

/// The reply of `show`.
#[derive(Debug, Serialize)]
pub(crate) struct Shown {
    show: String,
    frames: Option<u32>,
    need: usize,
    expires_text: String,
    sealed: bool,
    to_text: String,
    leaves: Vec<String>,
    code: bool,
}

/// Seals what was asked for and begins to show it. Its number, and a version of a plan that is new, are kept
/// before anything can be seen.
///
/// # Errors
/// Those of [`ready`]; `pair_again` at `to` for a pairing with other keys of this device; `randomness_failed`;
/// `too_long`; what the vault gives.
pub(crate) fn show(call: &mut Call<'_>, asked: AskedShow) -> Result<Shown, Failure> {
    let sealed = seal_asked(call, &asked)?;
    let showing = match lay_out(&sealed.parcel, sealed.ready.density) {
        Ok(showing) => Some(showing),
        Err(LayOutError::TooLong) => None,
        Err(_) => return Err(Failure::new(ErrorCode::Internal)),
    };
    let shown = showing.as_ref().map(|_| DepartureHow::Shown);
    keep_sealed(call, &sealed, shown)?;
    let Sealed {
        ready,
        parcel,
        code,
        expires,
        ..
    } = sealed;
    let (frames, need) = match &showing {
        Some(Showing::One(_)) => (Some(1), 1),
        Some(Showing::Many(sequence)) => (None, sequence.needed()),
        None => (Some(0), 0),
    };
    let day = call.now.format("%Y-%m-%d");
    let file_name = match ready.purpose {
        Purpose::History => format!("history-{day}.heft"),
        Purpose::CarePlan => format!("care-plan-{day}.heft"),
        Purpose::Plan => format!("plan-{day}.heft"),
    };
    let has_code = code.is_some();
    let (_, exchange) = call.exchange()?;
    let show = exchange.shows.add(Show {
        showing,
        parcel,
        code,
        file_name,
        leaving: ready.leaving,
    });
    let words = &call.state.words;
    let day = Arg::text(words.date_text(expires.date_naive()));
    Ok(Shown {
        show,
        frames,
        need,
        expires_text: words.format("handoff-expires", &[("day", day)]),
        sealed: true,
        to_text: ready.to_text,
        leaves: ready.leaves,
        code: has_code,
    })
}

/// What was asked for, sealed.
pub(crate) struct Sealed {
    /// What it holds and for whom.
    pub(crate) ready: Ready,
    /// The bytes.
    pub(crate) parcel: Vec<u8>,
    /// What opens it, if no pairing does.
    pub(crate) code: Option<Code>,
    /// Until when it can be taken in.
    pub(crate) expires: DateTime<FixedOffset>,
    /// Its number.
    counter: u64,
}

/// Seals what was asked for. Nothing is kept yet: see [`keep_sealed`].
///
/// # Errors
/// As [`show`].
pub(crate) fn seal_asked(call: &mut Call<'_>, asked: &AskedShow) -> Result<Sealed, Failure> {
    let ready = ready(call, asked)?;
    let until = ready.plan.as_ref().map(|plan| plan.review_on);
    let until = until.or(ready.care.as_ref().map(|(_, _, until)| *until));
    let expires = expires(call.now, until);
    let (parcel, code, counter) = sealed(call, &ready, expires)?;
    Ok(Sealed {
        ready,
        parcel,
        code,
        expires,
        counter,
    })
}

/// Keeps the number of what was sealed, a version of a plan that is new, and, if it leaves at once, that it does. To be
/// done before anything can be seen.
///
/// # Errors
/// What the vault gives.
pub(crate) fn keep_sealed(
    call: &mut Call<'_>,
    sealed: &Sealed,
    how: Option<DepartureHow>,
) -> Result<(), Failure> {
    let ready = &sealed.ready;
    let kept = purpose(ready.purpose);
    let now = call.now;
    let at = to_record(now);
    let (vault, exchange) = call.exchange()?;
    exchange.noted = vault.together(|vault| {
        keep_version(vault, ready)?;
        if let Some(paired) = &ready.to {
            if let Some(plan) = &ready.plan {
                note_seen(vault, paired.id, at, Some(plan.review_on))?;
            }
            vault.sent().save(paired.id, kept, sealed.counter)?;
        }
        how.map(|how| note(vault, now, &ready.leaving, how))
            .transpose()
    })?;
    Ok(())
}

/// Keeps a version of a plan, or of care plans, that is new: it is about to leave.
///
/// # Errors
/// What the vault gives.
pub(crate) fn keep_version(vault: &Vault, ready: &Ready) -> Result<(), VaultError> {
    if let Some((id, plan)) = &ready.new_version {
        vault.plan_versions().add(*id, plan)?;
        // The next version has its own reason.
        let next = Plan {
            why: None,
            ..plan.clone()
        };
        vault.plans().save(*id, &next)?;
    }
    if let Some((id, person, _)) = &ready.care {
        vault.care_people().save(*id, person)?;
    }
    Ok(())
}

fn sealed(
    call: &Call<'_>,
    ready: &Ready,
    expires: DateTime<FixedOffset>,
) -> Result<(Vec<u8>, Option<Code>, u64), Failure> {
    let now_ms = call.now.timestamp_millis();
    let last = match &ready.to {
        Some(paired) => call
            .vault()?
            .sent()
            .last(paired.id, purpose(ready.purpose))?,
        None => None,
    };
    let what = Outgoing {
        purpose: ready.purpose,
        counter: derive_counter(last, now_ms),
        issued_at_ms: now_ms,
        expires_at_ms: expires.timestamp_millis(),
        payload: &ready.payload,
    };
    let mut random = random(call);
    match &ready.to {
        Some(paired) => {
            let (_, keys) = own(call)?;
            let pairing = people::read(paired)?;
            let parcel = seal(&pairing, &keys, &what, &mut random).map_err(refuse)?;
            Ok((parcel, None, what.counter))
        }
        None => {
            let sealed = seal_unpaired(&what, &mut random).map_err(refuse)?;
            Ok((sealed.parcel, Some(sealed.code), what.counter))
        }
    }
}

/// A plan may lie until the end of the day on which it is looked at again; a history for a week.
fn expires(now: DateTime<FixedOffset>, until: Option<Day>) -> DateTime<FixedOffset> {
    let longest = now
        .checked_add_signed(Duration::milliseconds(LONGEST_VALIDITY_MS))
        .unwrap_or(now);
    let Some(until) = until else {
        return now.checked_add_signed(HISTORY_VALID).unwrap_or(now);
    };
    let end = to_date(until)
        .checked_add_days(Days::new(1))
        .and_then(|day| {
            now.offset()
                .from_local_datetime(&day.and_time(NaiveTime::MIN))
                .single()
        });
    end.map_or(longest, |end| end.min(longest))
}

fn refuse(error: SealError) -> Failure {
    match error {
        SealError::OtherKeys => Failure::at(ErrorCode::PairAgain, "to"),
        SealError::TooLong => Failure::new(ErrorCode::TooLong),
        SealError::Randomness => Failure::new(ErrorCode::RandomnessFailed),
        _ => Failure::new(ErrorCode::Internal),
    }
}

/// The command `show_frames`.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct AskedFrames {
    show: String,
    from: u32,
    count: u32,
}

/// The reply of `show_frames`.
#[derive(Debug, Serialize)]
pub(crate) struct Frames {
    symbols: Vec<SymbolView>,
}

/// Some symbols of a show. One that stands still gives itself, whatever is asked for.
///
/// # Errors
/// `unknown_show` at `show`; `out_of_range` at `count`.
pub(crate) fn show_frames(call: &mut Call<'_>, asked: AskedFrames) -> Result<Frames, Failure> {
    if !(1..=MOST_SYMBOLS).contains(&asked.count) {
        return Err(Failure::at(ErrorCode::OutOfRange, "count"));
    }
    let show = find(call, &asked.show)?;
    let symbols = match &show.showing {
        None => Vec::new(),
        Some(Showing::One(symbol)) => vec![SymbolView::of(symbol)],
        Some(Showing::Many(sequence)) => (0..asked.count)
            .map(|at| sequence.symbol(asked.from.wrapping_add(at)))
            .map(|symbol| symbol.map(|symbol| SymbolView::of(&symbol)))
            .collect::<Result<_, _>>()
            .map_err(|_| Failure::new(ErrorCode::Internal))?,
    };
    Ok(Frames { symbols })
}

/// A command that names a show.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct OfShow {
    show: String,
}

/// The reply of `show_code`.
#[derive(Debug, Serialize)]
pub(crate) struct CodeView {
    words: Vec<&'static str>,
}

/// The words that open what is shown, to be read aloud.
///
/// # Errors
/// `unknown_show` at `show`, also for one that needs no code.
pub(crate) fn show_code(call: &mut Call<'_>, asked: OfShow) -> Result<CodeView, Failure> {
    let code = find(call, &asked.show)?.code.as_ref();
    let code = code.ok_or_else(unknown)?;
    Ok(CodeView {
        words: code.words(),
    })
}

/// The reply of `show_file`.
#[derive(Debug, Serialize)]
pub(crate) struct FileView {
    name: String,
    base64: String,
}

/// What is shown, as a file to share. It is on the list of what left when this returns.
///
/// # Errors
/// `unknown_show` at `show`; what the vault gives.
pub(crate) fn show_file(call: &mut Call<'_>, asked: OfShow) -> Result<FileView, Failure> {
    let show = find(call, &asked.show)?;
    let file = FileView {
        name: show.file_name.clone(),
        base64: base64::encode(&show.parcel),
    };
    let leaving = show.leaving.clone();
    note_file(call, &leaving)?;
    Ok(file)
}

/// Ends a show.
///
/// # Errors
/// `unknown_show` at `show`.
pub(crate) fn show_end(call: &mut Call<'_>, asked: OfShow) -> Result<Nothing, Failure> {
    let (_, exchange) = call.exchange()?;
    if exchange.shows.end(&asked.show) {
        Ok(Nothing {})
    } else {
        Err(unknown())
    }
}

fn find<'c>(call: &'c mut Call<'_>, id: &str) -> Result<&'c Show, Failure> {
    let (_, exchange) = call.exchange()?;
    exchange.shows.find(id).ok_or_else(unknown)
}

fn unknown() -> Failure {
    Failure::at(ErrorCode::UnknownShow, "show")
}
