//! A plan on one page of paper: in plain words, with pictures of its ways, and, for a phone that is paired, sealed in a
//! symbol.

use super::lines::{lines, review};
use super::preview::{typical_person, typical_task};
use super::ways;
use crate::call::Call;
use crate::convert::advice_back;
use crate::failure::Failure;
use crate::report::{Figure, Modules, Paper, Sheet};
use crate::use_cases::departure::Leaving;
use crate::use_cases::handoff::showing::{keep_sealed, keep_version, seal_asked};
use crate::use_cases::handoff::summary::{AskedShow, Ready, ready};
use crate::walk::text::Reader;
use crate::words::{Arg, Units, message_id};
use door::ErrorCode;
use handoff::{DrawError, Symbol, base45};
use lifting::advise::Request;
use lifting::advise::facts::Facts;
use lifting::loads::lift::{grip, lift};
use lifting::loads::spine::LeverArm;
use lifting::task::HeightWord;
use record::{DepartureWhat, Plan, WayStanding};

/// The largest symbol on paper: all of them. A photo of a page has time, and pixels to spare.
const LARGEST: u8 = 40;

/// The load in the pictures, in kg. House rule; it is drawn and not named.
const PICTURED: f64 = 5.0;

/// What would leave on paper, in words; last, whether a symbol is on it.
///
/// # Errors
/// As [`ready`].
pub(crate) fn leaves(
    call: &Call<'_>,
    plan: i64,
    to: Option<String>,
) -> Result<Vec<String>, Failure> {
    let ready = ready(call, &AskedShow::plan(plan, to))?;
    let words = call.reader()?.words;
    let mut leaves = ready.leaves;
    leaves.push(match &ready.to {
        Some(paired) => {
            let name = Arg::text(paired.name.as_str());
            words.format("sheet-with-symbol", &[("name", name)])
        }
        None => words.text("sheet-without-symbol"),
    });
    Ok(leaves)
}

/// The page as a PDF file, and what leaves with it. A version that is new is kept before it returns, as when it is
/// handed over.
///
/// # Errors
/// As [`ready`] and [`seal_asked`]; `too_long` at `plan` for what does not fit on one page.
pub(crate) fn sheet(
    call: &mut Call<'_>,
    plan: i64,
    to: Option<String>,
) -> Result<(Vec<u8>, Leaving), Failure> {
    let asked = AskedShow::plan(plan, to);
    let (ready, symbol) = if asked.is_for_somebody() {
        let sealed = seal_asked(call, &asked)?;
        keep_sealed(call, &sealed, None)?;
        let drawn = modules(&sealed.parcel)?;
        let reader = call.reader()?;
        let day = Arg::text(reader.words.date_text(sealed.expires.date_naive()));
        let name = sealed.ready.to.as_ref().map(|paired| paired.name.clone());
        let values = [("name", Arg::text(name.unwrap_or_default())), ("day", day)];
        let caption = reader.words.format("sheet-symbol", &values);
        (sealed.ready, Some((drawn, caption)))
    } else {
        let ready = ready(call, &asked)?;
        let vault = call.vault()?;
        vault.together(|vault| keep_version(vault, &ready))?;
        (ready, None)
    };
    let reader = call.reader()?;
    let paper = match reader.units {
        Units::Kilograms => Paper::A4,
        Units::Pounds => Paper::Letter,
    };
    let sheet = written(&ready, symbol, reader)?;
    let page = sheet
        .to_pdf(paper)
        .map_err(|_| Failure::at(ErrorCode::TooLong, "plan"))?;
    Ok((page, on_paper(&ready)))
}

/// What leaves on a page: its words are open, whatever the symbol is.
fn on_paper(ready: &Ready) -> Leaving {
    Leaving {
        what: DepartureWhat::PlanPage,
        seal: None,
        ..ready.leaving.clone()
    }
}

/// The page; a parcel that no symbol holds is said, not left out in silence.
fn written(
    ready: &Ready,
    symbol: Option<(Option<Modules>, String)>,
    reader: Reader<'_>,
) -> Result<Sheet, Failure> {
    let words = reader.words;
    let plan = ready
        .plan
        .as_ref()
        .ok_or_else(|| Failure::new(ErrorCode::Internal))?;
    let whose = [
        ("whom", Arg::text(plan.whom.as_str())),
        ("by", Arg::text(plan.by.as_str())),
        ("version", plan.version.into()),
    ];
    let mut foot = vec![words.text("sheet-stop"), words.text("sheet-limits")];
    let symbol = match symbol {
        Some((Some(modules), caption)) => Some((modules, caption)),
        Some((None, _)) => {
            foot.insert(0, words.text("sheet-symbol-too-long"));
            None
        }
        None => None,
    };
    Ok(Sheet {
        language: words.language().id(),
        title: super::lines::title(plan, reader),
        lead: vec![words.format("sheet-whose", &whose), review(plan, reader)],
        sections: lines(plan, reader)
            .into_iter()
            .map(|line| (line.label, vec![line.text]))
            .collect(),
        figures: figures(plan, reader),
        symbol,
        foot,
    })
}

/// The ways that come first, each in its lowest posture, of a typical person and a small box on the floor.
fn figures(plan: &Plan, reader: Reader<'_>) -> Vec<Figure> {
    let request = Request::new(typical_person(), typical_task(PICTURED, HeightWord::Floor));
    let facts = Facts::of(&request, &request.task);
    ways::of(plan, WayStanding::Preferred)
        .map(advice_back::way)
        .filter_map(|way| {
            let solved = lift(way, &facts, LeverArm::USUAL).ok()?;
            let name = reader.words.text(&message_id("way", way.id()));
            Some(Figure::of(&solved, grip(&facts).outline.depth_m(), name))
        })
        .collect()
}

/// The symbol of a parcel; `None` when it is too long for any.
fn modules(parcel: &[u8]) -> Result<Option<Modules>, Failure> {
    match Symbol::single(&base45::encode(parcel), LARGEST) {
        Ok(symbol) => Ok(Some(Modules {
            side: symbol.side(),
            dark: symbol.rows().flatten().copied().collect(),
        })),
        Err(DrawError::TooLong) => Ok(None),
        Err(_) => Err(Failure::new(ErrorCode::Internal)),
    }
}
