//! Pages made from a walk: the question that is open, an interruption, the answers to look over.

use super::answer::{Answer, Answers, NumberUnit};
use super::flow::{Purpose, Step, Walk};
use super::ids::QuestionId;
use super::interruptions::InterruptionId;
use super::measure::Measure;
use super::page::{
    CheckPage, InterruptionPage, NumberView, OptionView, Page, PlaceView, QuestionPage,
    QuestionView, Row,
};
use super::question::{Group, Kind};
use super::questions::question;
use super::text::{Reader, interruption_word_id};
use super::wire::WireAnswer;
use crate::convert::mass::{self, SaidMass};
use crate::words::Units;

/// The id under which the check page can be opened.
pub(crate) const CHECK: &str = "check";

/// The page of a step; the check page when there is none.
#[must_use]
pub(crate) fn page(
    walk: &Walk<'_>,
    step: Option<Step>,
    remembered: &Answers,
    reader: Reader<'_>,
) -> Page {
    match step {
        Some(Step::Question(id)) => Page::Question(question_page(walk, id, remembered, reader)),
        Some(Step::Interruption(id)) => Page::Interruption(interruption_page(walk, id, reader)),
        None => Page::Check(check_page(walk, reader)),
    }
}

fn question_page(
    walk: &Walk<'_>,
    id: QuestionId,
    remembered: &Answers,
    reader: Reader<'_>,
) -> QuestionPage {
    let asked = question(id);
    let place = walk.place(id);
    let options = asked.kind.options().iter().map(|option| OptionView {
        id: option.id,
        label: reader.option(id, option),
        note: reader.note(id, option),
        picture: option.picture.then_some(option.id),
    });
    let value = walk.answer(id).or_else(|| remembered.of(id));
    let back = if walk.is_own(id) {
        walk.before(Some(Step::Question(id)))
            .map(|step| step.id().to_owned())
    } else {
        // Opened from the check page, since its answer was kept: that is where it leads back to.
        Some(CHECK.to_owned())
    };
    QuestionPage {
        question: QuestionView {
            id: id.id(),
            kind: asked.kind.id(),
            title: title_of(walk, id, reader),
            hint: reader.optional(id, "hint"),
            why: reader.optional(id, "why"),
            options: options.collect(),
            value: value.map(WireAnswer::from),
            not_sure: asked.not_sure,
            not_sure_text: reader.optional(id, "not-sure"),
            number: match asked.kind {
                Kind::Number(measure) => number_view(id, measure, value, reader),
                _ => None,
            },
            group: asked.group.id(),
        },
        place: PlaceView {
            at: place.at,
            of: place.of,
        },
        back,
        title_bar: title_bar(walk.purpose, asked.group, reader),
    }
}

/// The question itself; where it is about what the plan says, with the plan's number.
fn title_of(walk: &Walk<'_>, id: QuestionId, reader: Reader<'_>) -> String {
    match (id, walk.times_a_bout) {
        (QuestionId::OftenInPlan, Some(count)) => reader
            .words
            .format("question-often-in-plan", &[("count", count.into())]),
        _ => reader.title(id),
    }
}

fn number_view(
    id: QuestionId,
    measure: Measure,
    value: Option<&Answer>,
    reader: Reader<'_>,
) -> Option<NumberView> {
    let preferred = match reader.units {
        Units::Kilograms => NumberUnit::Kilograms,
        Units::Pounds => NumberUnit::Pounds,
    };
    // A number that was typed in another unit is shown in that unit, as it was typed.
    let unit = match value {
        Some(Answer::Number(number)) => number.unit,
        _ => measure.unit(preferred),
    };
    let (min, max, step) = measure.range(unit)?;
    let label = reader
        .optional(id, unit.id())
        .unwrap_or_else(|| reader.title(id));
    Some(NumberView {
        unit: unit.id(),
        min,
        max,
        step,
        label,
    })
}

fn interruption_page(walk: &Walk<'_>, id: InterruptionId, reader: Reader<'_>) -> InterruptionPage {
    let opens = id
        .concerns()
        .iter()
        .find(|question| walk.asks(**question) && walk.has(**question));
    InterruptionPage {
        id: id.id(),
        title: reader.words.text(&interruption_word_id(id, "title")),
        text: reader.words.text(&interruption_word_id(id, "text")),
        go_on: reader.words.text("interruption-go-on"),
        change: reader.words.text("interruption-change"),
        question: opens.copied().unwrap_or(id.after()).id(),
        back: walk
            .before(Some(Step::Interruption(id)))
            .map(|step| step.id().to_owned()),
        title_bar: title_bar(walk.purpose, Group::Task, reader),
    }
}

fn check_page(walk: &Walk<'_>, reader: Reader<'_>) -> CheckPage {
    CheckPage {
        title: reader.words.text("check-title"),
        rows: rows(walk, reader),
        button: reader.words.text("check-button"),
        back: walk.before(None).map(|step| step.id().to_owned()),
    }
}

fn title_bar(purpose: Purpose, group: Group, reader: Reader<'_>) -> String {
    reader.words.text(match (purpose, group) {
        (Purpose::About, _) | (_, Group::About) => "title-bar-about",
        (_, Group::Signs) => "title-bar-signs",
        (Purpose::Own, _) => "title-bar-own",
        _ => "title-bar-lift",
    })
}

/// The answers as rows: one for each thing, not for each question. The person's are left out while they
/// are kept: they stand in the settings.
#[must_use]
pub(crate) fn rows(walk: &Walk<'_>, reader: Reader<'_>) -> Vec<Row> {
    QuestionId::ALL
        .iter()
        .filter_map(|id| row(walk, *id, reader))
        .collect()
}

fn row(walk: &Walk<'_>, id: QuestionId, reader: Reader<'_>) -> Option<Row> {
    // One row for the weight, whichever way it was said; "change" opens the everyday weights.
    if matches!(id, QuestionId::MassNumber | QuestionId::MassGuess) || !walk.asks(id) {
        return None;
    }
    if question(id).group == Group::About && !walk.is_own(id) {
        return None;
    }
    let answer = walk.answer(id)?;
    let text = if id == QuestionId::Mass {
        mass_text(walk, reader)
    } else {
        reader.answer(id, answer)
    };
    Some(Row {
        question: id.id(),
        label: reader.row_label(id),
        text,
    })
}

/// How heavy it is, in words.
#[must_use]
pub(crate) fn mass_text(walk: &Walk<'_>, reader: Reader<'_>) -> String {
    match mass::of(walk) {
        Some(SaidMass::Known(grams)) => reader.mass(grams),
        Some(SaidMass::Untested {
            high: Some(grams), ..
        }) => reader.with_mass("mass-up-to", grams),
        Some(SaidMass::Untested {
            low: Some(grams), ..
        }) => reader.with_mass("mass-over", grams),
        Some(SaidMass::Untested { .. }) | None => reader.words.text("mass-not-known"),
    }
}

/// What is lifted, how heavy, from where, as one line: "Box, 6 kg, from the floor".
#[must_use]
pub(crate) fn title(walk: &Walk<'_>, reader: Reader<'_>) -> String {
    let thing = match walk.answer(QuestionId::What) {
        Some(Answer::Choice(id)) => reader.words.text(&format!("thing-{id}")),
        Some(_) => reader.words.text("thing-not-sure"),
        None => return reader.words.text("lift-title-none"),
    };
    let parts = [
        ("thing", thing.into()),
        ("mass", mass_text(walk, reader).into()),
    ];
    match start_text(walk, reader) {
        Some(start) => {
            let [thing, mass] = parts;
            reader
                .words
                .format("lift-title", &[thing, mass, ("start", start.into())])
        }
        None => reader.words.format("lift-title-short", &parts),
    }
}

/// How heavy and from where, as one line: "6 kg, from the floor".
#[must_use]
pub(crate) fn short_text(walk: &Walk<'_>, reader: Reader<'_>) -> String {
    let mass = mass_text(walk, reader);
    match start_text(walk, reader) {
        Some(start) => reader.words.format(
            "saved-text",
            &[("mass", mass.into()), ("start", start.into())],
        ),
        None => mass,
    }
}

fn start_text(walk: &Walk<'_>, reader: Reader<'_>) -> Option<String> {
    match walk.answer(QuestionId::Start) {
        Some(Answer::Choice(id)) => Some(reader.words.text(&format!("from-{id}"))),
        _ => None,
    }
}

/// The body in one line: "Back 3, left knee 0, right knee 5".
#[must_use]
pub(crate) fn body_text(walk: &Walk<'_>, reader: Reader<'_>) -> String {
    let rated = super::questions::body::RATED.iter().filter_map(|region| {
        let Some(Answer::Pain(score)) = walk.answer(*region) else {
            return None;
        };
        let args = [
            ("region", reader.row_label(*region).into()),
            ("pain", (*score).into()),
        ];
        walk.asks(*region)
            .then(|| reader.words.format("body-part", &args))
    });
    rated.collect::<Vec<_>>().join(", ")
}
