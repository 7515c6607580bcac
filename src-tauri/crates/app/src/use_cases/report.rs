//! Looking back, and taking it out of the app: what leaves is told first.

use super::departure::{Leaving, note as note_departure};
use super::handoff::people;
use super::plan::practice::practised;
use super::plan::sheet;
use crate::base64;
use crate::call::Call;
use crate::failure::Failure;
use crate::report::{
    Paper, Passage, Report, bundle, date_of, date_text, gather, gather_received, note, page,
    passages, table,
};
use crate::walk::text::Reader;
use crate::words::{Arg, Rounding, Units, message_id};
use chrono::{Days, NaiveDate};
use door::ErrorCode;
use lifting::review::{Pain, Variety, Week};
use record::{DepartureHow, DepartureWhat};
use serde::{Deserialize, Serialize};

/// Longest time to look back when it is not "everything": ten years. House rule.
const MOST_DAYS: u32 = 3_653;

/// The command `look_back`.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct Span {
    #[serde(default)]
    since_days: Option<u32>,
    /// The pairing whose histories are looked at; without it, the own one.
    #[serde(default)]
    of: Option<String>,
}

/// The reply of `look_back`: what is said, then what the pictures are drawn from.
#[derive(Debug, Serialize)]
pub(crate) struct LookBack {
    of: Option<String>,
    passages: Vec<Passage>,
    pain: Vec<PainSeries>,
    weeks: Vec<WeekBar>,
    ways: Vec<WayShare>,
}

/// One pain series, days counted from the first.
#[derive(Debug, Serialize)]
struct PainSeries {
    id: &'static str,
    title: String,
    points: Vec<PainPoint>,
}

#[derive(Debug, Serialize)]
struct PainPoint {
    day: i32,
    day_text: String,
    score: u8,
}

#[derive(Debug, Serialize)]
struct WeekBar {
    from_text: String,
    lifted_kg: f64,
    lifted_text: String,
    times_text: String,
}

#[derive(Debug, Serialize)]
struct WayShare {
    id: &'static str,
    name: String,
    count: u32,
    times_text: String,
}

/// What the history says.
///
/// # Errors
/// `out_of_range` for `since_days`; what the vault gives.
pub(crate) fn look_back(call: &mut Call<'_>, asked: Span) -> Result<LookBack, Failure> {
    let report = report(call, asked.since_days, asked.of.as_deref())?;
    let reader = call.reader()?;
    let Variety { used, .. } = &report.review.variety;
    Ok(LookBack {
        of: report.of.clone(),
        passages: passages(&report, reader),
        pain: report
            .review
            .pain
            .iter()
            .map(|pain| series(pain, &report, reader))
            .collect(),
        weeks: report
            .review
            .weeks
            .iter()
            .map(|week| bar(week, &report, reader))
            .collect(),
        ways: used
            .iter()
            .map(|(way, count)| WayShare {
                id: way.id(),
                name: reader.words.text(&message_id("way", way.id())),
                count: *count,
                times_text: reader.words.times(*count),
            })
            .collect(),
    })
}

fn report(call: &Call<'_>, since_days: Option<u32>, of: Option<&str>) -> Result<Report, Failure> {
    if since_days.is_some_and(|days| !(1..=MOST_DAYS).contains(&days)) {
        return Err(Failure::at(ErrorCode::OutOfRange, "since_days"));
    }
    let since = since_days.and_then(|days| {
        let today = call.now.date_naive();
        today.checked_sub_days(Days::new(u64::from(days) - 1))
    });
    let Some(id) = of else {
        return Ok(Report {
            practice: practised::own(call, since)?,
            ..gather(call.vault()?, since, call.now)?
        });
    };
    let paired = people::find(call, id, "of")?;
    let report = gather_received(call.vault()?, paired.id, since, call.now, call.reader()?)?;
    Ok(Report {
        of: Some(paired.name),
        practice: practised::received(call.vault()?, paired.id, report.plan.as_ref(), since)?,
        ..report
    })
}

fn series(pain: &Pain, report: &Report, reader: Reader<'_>) -> PainSeries {
    let first = pain.days.first().map(|(day, _)| *day);
    let today = report.made.date_naive();
    PainSeries {
        id: pain.kind.id(),
        title: reader
            .words
            .text(&message_id("report-pain", pain.kind.id())),
        points: pain
            .days
            .iter()
            .map(|(day, score)| PainPoint {
                day: first.map_or(0, |first| day.days_since(first)),
                day_text: reader.words.date_short_from(date_of(*day), today),
                score: score.value(),
            })
            .collect(),
    }
}

fn bar(week: &Week, report: &Report, reader: Reader<'_>) -> WeekBar {
    let today = report.made.date_naive();
    WeekBar {
        from_text: reader.words.date_short_from(date_of(week.from), today),
        lifted_kg: week.lifted.value(),
        lifted_text: reader
            .words
            .mass(week.lifted.value(), reader.units, Rounding::Nearest),
        times_text: reader.words.times(week.times),
    }
}

/// The commands `report_summary` and `report_make`.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct Wanted {
    form: String,
    #[serde(default)]
    since_days: Option<u32>,
    #[serde(default)]
    of: Option<String>,
    /// A plan made here, in place of the history.
    #[serde(default)]
    plan: Option<i64>,
    /// The pairing that the plan is sealed for in a symbol.
    #[serde(default)]
    to: Option<String>,
    /// How it leaves; without it, a text is shown, and a page is only made.
    #[serde(default)]
    how: Option<String>,
}

/// In what form it leaves.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Form {
    Note,
    Table,
    Document,
    Page,
}

impl Form {
    fn from_id(id: &str) -> Result<Self, Failure> {
        match id {
            "note" => Ok(Self::Note),
            "csv" => Ok(Self::Table),
            "fhir" => Ok(Self::Document),
            "pdf" => Ok(Self::Page),
            _ => Err(Failure::at(ErrorCode::NotAChoice, "form")),
        }
    }

    const fn id(self) -> &'static str {
        match self {
            Self::Note => "note",
            Self::Table => "csv",
            Self::Document => "fhir",
            Self::Page => "pdf",
        }
    }

    /// What the list of what left calls it.
    const fn what(self) -> DepartureWhat {
        match self {
            Self::Note => DepartureWhat::Note,
            Self::Table => DepartureWhat::Table,
            Self::Document => DepartureWhat::Document,
            Self::Page => DepartureWhat::Page,
        }
    }

    /// How it leaves. A text that is made is on the screen, where it can be copied by hand; a page is not.
    fn leaves(self, how: Option<&str>) -> Result<Option<DepartureHow>, Failure> {
        match (how, self) {
            (None, Self::Page) => Ok(None),
            (None, _) => Ok(Some(DepartureHow::Shown)),
            (Some("saved"), _) => Ok(Some(DepartureHow::Saved)),
            (Some("copied"), Self::Note | Self::Table | Self::Document) => {
                Ok(Some(DepartureHow::Copied))
            }
            _ => Err(Failure::at(ErrorCode::NotAChoice, "how")),
        }
    }

    const fn ending(self) -> &'static str {
        match self {
            Self::Note => "txt",
            Self::Table => "csv",
            Self::Document => "json",
            Self::Page => "pdf",
        }
    }

    const fn mime(self) -> &'static str {
        match self {
            Self::Note => "text/plain",
            Self::Table => "text/csv",
            Self::Document => "application/fhir+json",
            Self::Page => "application/pdf",
        }
    }
}

/// The reply of `report_summary`: what would leave. Nothing is made yet.
#[derive(Debug, Serialize)]
pub(crate) struct Summary {
    leaves: Vec<String>,
    stays: Vec<String>,
    open: String,
}

/// Says what would leave, what stays, and that it is not sealed.
///
/// # Errors
/// `not_a_choice` for `form`, `out_of_range` for `since_days`; what the vault gives.
pub(crate) fn report_summary(call: &mut Call<'_>, asked: Wanted) -> Result<Summary, Failure> {
    let form = Form::from_id(&asked.form)?;
    if let Some(plan) = asked.plan {
        let leaves = sheet::leaves(call, on_paper(form, plan)?, asked.to)?;
        let words = call.reader()?.words;
        return Ok(Summary {
            leaves,
            stays: vec![words.text("sheet-stays")],
            open: words.text("sheet-open"),
        });
    }
    let report = report(call, asked.since_days, asked.of.as_deref())?;
    let words = call.reader()?.words;
    let (first, last) = (report.told.first(), report.told.last());
    let mut leaves = Vec::new();
    let (lifts, stays) = match &report.of {
        Some(_) => ("report-leaves-theirs", "report-stays-theirs"),
        None => ("report-leaves-lifts", "report-stays"),
    };
    if let (Some(first), Some(last)) = (first, last) {
        let day = |day: NaiveDate| date_text(words, day);
        leaves.push(words.format(
            lifts,
            &[
                ("name", Arg::text(report.of.clone().unwrap_or_default())),
                ("n", report.review.counts.entries.into()),
                ("first", day(first.at.date_naive())),
                ("last", day(last.at.date_naive())),
            ],
        ));
        let noted = report.practice.as_ref().map_or(0, |told| told.log.len());
        if noted > 0 {
            let count = u32::try_from(noted).unwrap_or(u32::MAX);
            leaves.push(words.format("report-leaves-practice", &[("n", count.into())]));
        }
        leaves.push(words.text(&message_id("report-leaves", form.id())));
    } else {
        leaves.push(words.text("report-nothing"));
    }
    Ok(Summary {
        leaves,
        stays: vec![words.text(stays)],
        open: words.text("report-open"),
    })
}

/// The reply of `report_make`.
#[derive(Debug, Serialize)]
pub(crate) struct Made {
    name: String,
    mime: &'static str,
    text: Option<String>,
    base64: String,
}

/// Makes it. The screen gives it to the person, who decides where it goes. What leaves is on the list when it returns.
///
/// # Errors
/// As [`report_summary`]; `not_a_choice` for `how`; `not_found` when there is nothing to take out.
pub(crate) fn report_make(call: &mut Call<'_>, asked: Wanted) -> Result<Made, Failure> {
    let form = Form::from_id(&asked.form)?;
    let how = form.leaves(asked.how.as_deref())?;
    if let Some(plan) = asked.plan {
        let (page, leaving) = sheet::sheet(call, on_paper(form, plan)?, asked.to)?;
        note_report(call, &leaving, how)?;
        return Ok(Made {
            name: format!("heftwell-plan-{}.pdf", call.now.date_naive()),
            mime: form.mime(),
            text: None,
            base64: base64::encode(&page),
        });
    }
    let report = report(call, asked.since_days, asked.of.as_deref())?;
    if report.told.is_empty() {
        return Err(Failure::new(ErrorCode::NotFound));
    }
    let reader = call.reader()?;
    let text = match form {
        Form::Note => Some(note(&report, reader)),
        Form::Table => Some(table(&report)),
        Form::Document => Some(bundle(&report, reader, call.world)?),
        Form::Page => None,
    };
    let base64 = match &text {
        Some(text) => base64::encode(text.as_bytes()),
        None => base64::encode(&in_pdf(&report, reader)?),
    };
    let leaving = Leaving {
        about: report.of.clone(),
        days: asked.since_days,
        entries: Some(report.review.counts.entries),
        ..Leaving::of(form.what())
    };
    note_report(call, &leaving, how)?;
    Ok(Made {
        name: format!("heftwell-{}.{}", call.now.date_naive(), form.ending()),
        mime: form.mime(),
        text,
        base64,
    })
}

/// Puts what was made on the list of what left, if it leaves.
fn note_report(
    call: &mut Call<'_>,
    leaving: &Leaving,
    how: Option<DepartureHow>,
) -> Result<(), Failure> {
    let now = call.now;
    let (vault, exchange) = call.exchange()?;
    exchange.noted = how
        .map(|how| note_departure(vault, now, leaving, how))
        .transpose()?;
    Ok(())
}

/// A plan leaves in the open on paper only; as a file it is handed over sealed.
fn on_paper(form: Form, plan: i64) -> Result<i64, Failure> {
    match form {
        Form::Page => Ok(plan),
        _ => Err(Failure::at(ErrorCode::NotAChoice, "form")),
    }
}

/// Who reads pounds prints on letter paper.
fn in_pdf(report: &Report, reader: Reader<'_>) -> Result<Vec<u8>, Failure> {
    let paper = match reader.units {
        Units::Kilograms => Paper::A4,
        Units::Pounds => Paper::Letter,
    };
    page(report, reader, paper).map_err(|_| Failure::at(ErrorCode::TooLong, "form"))
}
