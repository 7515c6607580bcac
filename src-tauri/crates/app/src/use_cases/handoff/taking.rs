//! What the scan screen hands in: pictures and files, until something is whole.

use super::opening;
use super::pair;
use crate::call::Call;
use crate::exchange::{Next, Scan, Wanted};
use crate::failure::Failure;
use crate::taken::Found;
use door::ErrorCode;
use handoff::{FrameError, Progress, RecogniseError, Recognised, Taken, recognise};
use serde::Serialize;

/// The reply of `take`.
#[derive(Debug, Serialize)]
pub(crate) struct Taking {
    state: &'static str,
    have: usize,
    need: usize,
    next: Option<&'static str>,
    text: Option<String>,
}

/// What came of something whole.
pub(crate) enum Came {
    /// It was taken in: on to the next screen.
    In(Next),
    /// It was not. The id of the sentence that says why; nothing was changed.
    Not(&'static str),
}

impl Taking {
    const NOTHING: Self = Self {
        state: "nothing",
        have: 0,
        need: 0,
        next: None,
        text: None,
    };

    fn part(progress: Progress) -> Self {
        Self {
            state: "part",
            have: progress.in_hand.min(progress.needed),
            need: progress.needed,
            ..Self::NOTHING
        }
    }

    fn whole(next: Next) -> Self {
        Self {
            state: "whole",
            next: Some(next.id()),
            ..Self::NOTHING
        }
    }

    fn refused(text: String) -> Self {
        Self {
            state: "refused",
            text: Some(text),
            ..Self::NOTHING
        }
    }
}

/// Whether pictures are taken at all.
///
/// # Errors
/// `locked`; `scan_not_started`.
pub(crate) fn must_scan(call: &mut Call<'_>) -> Result<(), Failure> {
    scan(call).map(|_| ())
}

/// Takes what was found in a picture or a file. Only something of ours counts as use of the app: a scan screen
/// that is left lying locks like any other.
///
/// # Errors
/// `locked`; `scan_not_started`; what the vault gives.
pub(crate) fn take(call: &mut Call<'_>, found: Found) -> Result<Taking, Failure> {
    if let Some(next) = scan(call)?.whole {
        return Ok(Taking::whole(next));
    }
    let taken = match found {
        Found::Nothing => return Ok(Taking::NOTHING),
        Found::NotAPicture => return Ok(refused(call, "handoff-refused-picture")),
        Found::Bytes(bytes) => Taken::Whole(bytes),
        Found::Text(text) => match scan(call)?.collector.take(&text) {
            Ok(taken) => taken,
            Err(error) => return Ok(refused(call, of_frame(error))),
        },
    };
    let now = call.world.uptime();
    call.state.session.touch(now);
    match taken {
        Taken::Part(progress) => Ok(Taking::part(progress)),
        Taken::Spoiled => Ok(refused(call, "handoff-refused-spoiled")),
        Taken::Whole(bytes) => match whole(call, bytes)? {
            Came::In(next) => {
                scan(call)?.whole = Some(next);
                Ok(Taking::whole(next))
            }
            Came::Not(id) => Ok(refused(call, id)),
        },
    }
}

fn whole(call: &mut Call<'_>, bytes: Vec<u8>) -> Result<Came, Failure> {
    let recognised = match recognise(&bytes) {
        Ok(recognised) => recognised,
        Err(error) => return Ok(Came::Not(of_parcel(error))),
    };
    match (scan(call)?.wanted, recognised) {
        (Wanted::Pair, Recognised::Offer) => pair::scanned(call, &bytes),
        (Wanted::Pair, _) => Ok(Came::Not("handoff-refused-parcel-here")),
        (Wanted::Parcel, Recognised::Offer) => Ok(Came::Not("handoff-refused-offer-here")),
        (Wanted::Parcel, Recognised::Paired { .. }) => opening::paired(call, &bytes),
        (Wanted::Parcel, Recognised::Unpaired { .. }) => opening::sealed(call, bytes),
    }
}

fn scan<'c>(call: &'c mut Call<'_>) -> Result<&'c mut Scan, Failure> {
    let (_, exchange) = call.exchange()?;
    let open = exchange.scan.as_mut();
    open.ok_or_else(|| Failure::new(ErrorCode::ScanNotStarted))
}

fn refused(call: &Call<'_>, id: &str) -> Taking {
    Taking::refused(call.state.words.text(id))
}

const fn of_frame(error: FrameError) -> &'static str {
    match error {
        FrameError::Foreign => "handoff-refused-foreign",
        FrameError::Newer => "handoff-refused-newer",
        FrameError::Truncated => "handoff-refused-truncated",
        _ => "handoff-refused-damaged",
    }
}

/// The sentence for bytes that are no parcel and no offer.
pub(super) const fn of_parcel(error: RecogniseError) -> &'static str {
    match error {
        RecogniseError::Foreign => "handoff-refused-foreign",
        RecogniseError::Newer => "handoff-refused-newer",
        RecogniseError::Truncated => "handoff-refused-truncated",
        _ => "handoff-refused-damaged",
    }
}
