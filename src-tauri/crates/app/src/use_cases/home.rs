//! The home screen: what is open, what is kept, what to ask.

use super::Nothing;
use super::entry::Entry;
use super::history::newest;
use super::morning::to_ask;
use super::plan::following::card;
use super::plan::lines::way_name;
use super::plan::practice::morning::waiting;
use super::signs::{clearing, is_emergency};
use super::walk::standing::{BODY_KEPT, Standing, kept_body, task_answers};
use crate::call::Call;
use crate::convert::body;
use crate::convert::moment::from_record;
use crate::failure::Failure;
use crate::walk::answer::Answers;
use crate::walk::flow::{Purpose, Walk};
use crate::walk::text::Reader;
use crate::walk::view;
use crate::words::{Arg, message_id, sentence};
use chrono::Timelike;
use record::DraftPurpose;
use serde::Serialize;
use vault::LiftId;

/// Entries of the history on the home screen.
const RECENT_ENTRIES: u32 = 3;

/// The reply of `home`.
#[derive(Debug, Serialize)]
pub(crate) struct Home {
    r#use: &'static str,
    units: &'static str,
    greeting_part: &'static str,
    draft: Option<DraftView>,
    body_kept: Option<BodyView>,
    saved: Vec<SavedView>,
    morning: Vec<MorningView>,
    plan: Option<Vec<String>>,
    recent: Vec<Entry>,
    open_sign: Option<OpenSignView>,
    notes: Vec<String>,
}

#[derive(Debug, Serialize)]
struct DraftView {
    title: String,
    question: Option<String>,
}

#[derive(Debug, Serialize)]
struct BodyView {
    until_text: String,
    text: String,
}

#[derive(Debug, Serialize)]
struct SavedView {
    id: i64,
    name: String,
    text: String,
}

#[derive(Debug, Serialize)]
struct MorningView {
    /// The lift; `None` for what was practised.
    id: Option<i64>,
    text: String,
}

#[derive(Debug, Serialize)]
struct OpenSignView {
    text: String,
    since_text: String,
    signs: Vec<OneSign>,
}

#[derive(Debug, Serialize)]
struct OneSign {
    id: String,
    text: String,
    by: Vec<&'static str>,
}

/// Everything the home screen shows.
///
/// # Errors
/// What the vault gives.
pub(crate) fn home(call: &mut Call<'_>, _: Nothing) -> Result<Home, Failure> {
    let call = &*call;
    let settings = call.settings()?;
    let reader = call.reader()?;
    Ok(Home {
        r#use: settings.used_for.id(),
        units: settings.units.id(),
        greeting_part: match call.now.hour() {
            4..=11 => "morning",
            12..=17 => "afternoon",
            _ => "evening",
        },
        draft: draft(call, reader)?,
        body_kept: body_kept(call, reader)?,
        saved: saved(call, reader)?,
        morning: morning(call, reader)?,
        plan: card(call, reader)?,
        recent: newest(call, RECENT_ENTRIES)?,
        open_sign: open_sign(call, reader)?,
        notes: notes(call),
    })
}

fn draft(call: &Call<'_>, reader: Reader<'_>) -> Result<Option<DraftView>, Failure> {
    let Some(standing) = Standing::load(call)? else {
        return Ok(None);
    };
    let walk = standing.walk();
    let title = match standing.draft.purpose {
        DraftPurpose::Lift => view::title(&walk, reader),
        DraftPurpose::About => reader.words.text("title-bar-about"),
        DraftPurpose::Own => reader.words.text("title-bar-own"),
    };
    let open = standing.draft.open_question.clone();
    let next = || walk.stands_at().map(|step| step.id().to_owned());
    Ok(Some(DraftView {
        title,
        question: open.or_else(next),
    }))
}

fn body_kept(call: &Call<'_>, reader: Reader<'_>) -> Result<Option<BodyView>, Failure> {
    let Some(kept) = kept_body(call.vault()?, call.now)? else {
        return Ok(None);
    };
    let answers = body::from_record(&kept, true);
    let asked = from_record(kept.at);
    let until = asked.checked_add_signed(BODY_KEPT).unwrap_or(asked);
    let time = reader.words.time_text(until.time());
    Ok(Some(BodyView {
        until_text: reader
            .words
            .format("body-until", &[("time", Arg::text(time))]),
        text: with_walk(&answers, |walk| view::body_text(walk, reader)),
    }))
}

fn saved(call: &Call<'_>, reader: Reader<'_>) -> Result<Vec<SavedView>, Failure> {
    let mut views = Vec::new();
    for (id, task) in call.vault()?.saved_tasks().all()? {
        let answers = task_answers(&task, call)?;
        let text = with_walk(&answers, |walk| view::short_text(walk, reader));
        views.push(SavedView {
            id: id.0,
            name: task.name,
            text,
        });
    }
    Ok(views)
}

fn morning(call: &Call<'_>, reader: Reader<'_>) -> Result<Vec<MorningView>, Failure> {
    let vault = call.vault()?;
    let view = |id: Option<LiftId>, title: String| MorningView {
        id: id.map(|id| id.0),
        text: reader
            .words
            .format("morning-ask", &[("title", Arg::text(title))]),
    };
    if let Some((id, lift)) = to_ask(vault, call.now)? {
        return Ok(vec![view(Some(id), lift.title)]);
    }
    // One answer a morning: of practice it is asked where no lift is asked about.
    let practised = waiting(vault, call.now)?;
    let way = practised.into_iter().find_map(|(_, entry)| entry.way);
    Ok(way
        .map(|way| view(None, way_name(way, reader)))
        .into_iter()
        .collect())
}

/// The signs that are open, emergencies first, then the oldest: the first in a sentence, each with who can
/// clear it.
fn open_sign(call: &Call<'_>, reader: Reader<'_>) -> Result<Option<OpenSignView>, Failure> {
    let mut open = call.vault()?.signs().open()?;
    let about = call.vault()?.about().load()?.unwrap_or_default();
    // The sort keeps the order of age among signs that are alike.
    open.sort_by_key(|sign| std::cmp::Reverse(is_emergency(&about, &sign.sign)));
    let Some(first) = open.first() else {
        return Ok(None);
    };
    let short = |id: &str| reader.words.text(&message_id("sign-short", id));
    let day = from_record(first.raised_at).date_naive();
    let since = reader.words.day_text_from(day, call.now.date_naive());
    let signs = open.iter().map(|sign| OneSign {
        id: sign.sign.clone(),
        text: sentence(&short(&sign.sign)),
        by: clearing(&about, &sign.sign)
            .iter()
            .map(|by| by.id())
            .collect(),
    });
    Ok(Some(OpenSignView {
        text: reader
            .words
            .format("open-sign", &[("sign", Arg::text(short(&first.sign)))]),
        since_text: reader
            .words
            .format("open-sign-since", &[("day", Arg::text(since))]),
        signs: signs.collect(),
    }))
}

/// Invented data is marked as that, with the passphrase that opens it.
fn notes(call: &Call<'_>) -> Vec<String> {
    if !call.state.device.demo {
        return Vec::new();
    }
    let passphrase = Arg::text(crate::demo::PASSPHRASE);
    vec![
        call.state
            .words
            .format("note-demo", &[("passphrase", passphrase)]),
    ]
}

fn with_walk<T>(answers: &Answers, read: impl FnOnce(&Walk<'_>) -> T) -> T {
    let kept = Answers::default();
    read(&Walk {
        purpose: Purpose::Lift,
        given: answers,
        kept: &kept,
        whole_list_due: false,
        times_a_bout: None,
    })
}
