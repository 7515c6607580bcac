//! A plan in plain words, for the person it is for and for whoever decides on it.

use super::ways;
use super::wording::{text, texts};
use crate::convert::plan::to_date;
use crate::walk::text::Reader;
use crate::words::{Arg, Rounding, message_id};
use record::{Bands, NextMorning, Plan, Region, Way, WayStanding};

/// A label and what stands beside it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(crate) struct Line {
    /// What it is about.
    pub(crate) label: String,
    /// What the plan says.
    pub(crate) text: String,
}

/// What the plan is called.
#[must_use]
pub(crate) fn title(plan: &Plan, reader: Reader<'_>) -> String {
    text(&plan.title, reader.words).unwrap_or_else(|| reader.words.text("plan-untitled"))
}

/// Until when it holds.
#[must_use]
pub(crate) fn review(plan: &Plan, reader: Reader<'_>) -> String {
    let day = Arg::text(reader.words.date_text(to_date(plan.review_on)));
    reader.words.format("plan-review", &[("day", day)])
}

/// Whom to call, in a sentence; nothing where the plan does not say.
#[must_use]
pub(crate) fn call(plan: &Plan, reader: Reader<'_>) -> Option<String> {
    let call = Arg::text(plan.call.as_deref()?);
    Some(reader.words.format("plan-call", &[("call", call)]))
}

/// Everything a plan sets, in words.
#[must_use]
pub(crate) fn lines(plan: &Plan, reader: Reader<'_>) -> Vec<Line> {
    let words = reader.words;
    let mut lines = Vec::new();
    let mut add = |label: &str, text: String| {
        if !text.is_empty() {
            lines.push(Line {
                label: words.text(label),
                text,
            });
        }
    };
    add("plan-line-limits", limits(plan, reader));
    add("plan-line-often", often(plan, reader));
    add("plan-line-pain", pain(plan, reader));
    add("plan-line-bands", bands(plan, reader));
    add(
        "plan-line-preferred",
        names(ways::of(plan, WayStanding::Preferred), reader),
    );
    add("plan-line-not-allowed", ruled_out(plan, reader));
    add("plan-line-cues", texts(&plan.cues, words).join(" "));
    add("plan-line-practice", practice(plan, reader));
    add("plan-line-progress", progress(plan, reader));
    add(
        "plan-line-flare",
        texts(plan.flare.as_deref().unwrap_or_default(), words).join(" "),
    );
    add("plan-line-call", plan.call.clone().unwrap_or_default());
    add(
        "plan-line-why",
        plan.why
            .as_ref()
            .and_then(|why| text(why, words))
            .unwrap_or_default(),
    );
    add("plan-line-notes", texts(&plan.notes, words).join(" "));
    lines
}

/// A mass, rounded so that a limit never looks larger than it is.
#[must_use]
pub(crate) fn limit(grams: u32, reader: Reader<'_>) -> String {
    let kilograms = f64::from(grams) / 1000.0;
    reader.words.mass(kilograms, reader.units, Rounding::Down)
}

/// The most for a lift, by where it starts, in one line.
#[must_use]
pub(crate) fn limits(plan: &Plan, reader: Reader<'_>) -> String {
    let words = reader.words;
    let mass = |grams| ("mass", Arg::text(limit(grams, reader)));
    let whole = plan
        .ceiling_g
        .map(|grams| words.format("plan-limit-any", &[mass(grams)]));
    let by_height = plan.ceilings.iter().map(|ceiling| {
        let start = words.text(&message_id("from", ceiling.start.id()));
        words.format(
            "plan-limit-from",
            &[mass(ceiling.grams), ("start", start.into())],
        )
    });
    whole
        .into_iter()
        .chain(by_height)
        .collect::<Vec<_>>()
        .join(" ")
}

/// How often the plan allows lifting, in words; empty if it does not say.
#[must_use]
pub(crate) fn often(plan: &Plan, reader: Reader<'_>) -> String {
    let words = reader.words;
    let times = plan.times_a_bout;
    let times = times.map(|count| words.format("plan-often-bout", &[("count", count.into())]));
    let bouts = plan.bouts_a_day;
    let bouts = bouts.map(|count| words.format("plan-often-day", &[("count", count.into())]));
    times.into_iter().chain(bouts).collect::<Vec<_>>().join(" ")
}

fn pain(plan: &Plan, reader: Reader<'_>) -> String {
    let words = reader.words;
    let ceiling = plan
        .pain_ceiling
        .map(|pain| words.format("plan-pain-ceiling", &[("pain", pain.rating().into())]));
    let morning = plan.next_morning.map(|rule| {
        words.text(match rule {
            NextMorning::BackToUsual => "plan-morning-back-to-usual",
            NextMorning::NoWorse => "plan-morning-no-worse",
        })
    });
    ceiling
        .into_iter()
        .chain(morning)
        .collect::<Vec<_>>()
        .join(" ")
}

/// From which number on pain counts as moderate and as strong, for each region that has its own numbers.
fn bands(plan: &Plan, reader: Reader<'_>) -> String {
    let one = |bands: &Bands| {
        let region = region_name(bands.region, reader);
        reader.words.format(
            "plan-bands",
            &[
                ("region", region.into()),
                ("moderate", bands.moderate_from.rating().into()),
                ("severe", bands.severe_from.rating().into()),
            ],
        )
    };
    plan.bands.iter().map(one).collect::<Vec<_>>().join(" ")
}

/// The name of a region.
#[must_use]
pub(crate) fn region_name(region: Region, reader: Reader<'_>) -> String {
    reader.words.text(&message_id("plan-region", region.id()))
}

fn names(ways: impl Iterator<Item = Way>, reader: Reader<'_>) -> String {
    ways.map(|way| way_name(way, reader))
        .collect::<Vec<_>>()
        .join(", ")
}

/// The name of a way.
#[must_use]
pub(crate) fn way_name(way: Way, reader: Reader<'_>) -> String {
    reader.words.text(&message_id("way", way.id()))
}

fn ruled_out(plan: &Plan, reader: Reader<'_>) -> String {
    let one = |way: Way| {
        let name = way_name(way, reader);
        match ways::why(plan, way).and_then(|why| text(why, reader.words)) {
            Some(why) => reader.words.format(
                "plan-ruled-out-why",
                &[("way", name.into()), ("why", why.into())],
            ),
            None => reader
                .words
                .format("plan-ruled-out", &[("way", name.into())]),
        }
    };
    ways::of(plan, WayStanding::NotAllowed)
        .map(one)
        .collect::<Vec<_>>()
        .join(" ")
}

fn practice(plan: &Plan, reader: Reader<'_>) -> String {
    let one = |practice: &record::Practice| {
        reader.words.format(
            "plan-practice",
            &[
                ("way", way_name(practice.way, reader).into()),
                ("mass", limit(practice.grams, reader).into()),
                ("sets", practice.sets.into()),
                ("times", practice.times.into()),
                ("days", practice.days_a_week.into()),
            ],
        )
    };
    plan.practice.iter().map(one).collect::<Vec<_>>().join(" ")
}

fn progress(plan: &Plan, reader: Reader<'_>) -> String {
    let words = reader.words;
    let rule = plan.progression;
    let mut parts = Vec::new();
    if rule.is_locked {
        parts.push(words.text("plan-progress-locked"));
    } else if let (Some(step), Some(days)) = (rule.step_g, rule.good_days) {
        parts.push(words.format(
            "plan-progress-step",
            &[("mass", limit(step, reader).into()), ("days", days.into())],
        ));
    }
    if let Some(pain) = rule.hold_from {
        parts.push(words.format("plan-progress-hold", &[("pain", pain.rating().into())]));
    }
    if let Some(pain) = rule.back_over {
        parts.push(words.format("plan-progress-back", &[("pain", pain.rating().into())]));
    }
    parts.join(" ")
}
