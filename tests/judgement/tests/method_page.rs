//! The pages on the judgement name every reason, under the step it speaks at and with its source.

#![cfg(test)]

use lifting::advise::change::ChangeStep;
use lifting::reason::ReasonId;

const PAGE: &str = include_str!("../../../docs/method/judgement.md");
const MOVING_PEOPLE: &str = include_str!("../../../docs/method/transfer.md");

/// The heading under which a reason's row stands, and the row.
fn row(id: &str) -> Option<(&'static str, &'static str)> {
    let mut heading = "";
    for line in PAGE.lines().chain(MOVING_PEOPLE.lines()) {
        if let Some(title) = line.strip_prefix("## ") {
            heading = title;
        }
        if line.starts_with("| ") && line.contains(&format!("`{id}` |")) {
            return Some((heading, line));
        }
    }
    None
}

#[test]
fn every_reason_has_a_row_with_its_source() {
    for id in ReasonId::ALL {
        let (_, line) = row(id.id()).unwrap_or_else(|| panic!("{} is missing", id.id()));
        assert!(
            line.ends_with(&format!("`{}` |", id.source())),
            "{} says {}: {line}",
            id.id(),
            id.source()
        );
    }
}

#[test]
fn every_reason_stands_under_its_step() {
    let progress = "What next in the plan";
    for id in ReasonId::ALL {
        let (heading, line) = row(id.id()).unwrap();
        let under_step = heading.starts_with(&format!("{}. ", id.step()));
        assert!(
            under_step || heading == progress,
            "{} is step {}: {heading} {line}",
            id.id(),
            id.step()
        );
    }
}

#[test]
fn every_change_and_outcome_has_a_row() {
    for id in ChangeStep::IDS {
        assert!(PAGE.contains(&format!("| `{id}` |")), "{id}");
    }
    for id in ["lift", "lift_with_change", "do_not_lift"] {
        assert!(PAGE.contains(&format!("| `{id}` |")), "{id}");
    }
}

#[test]
fn every_file_it_names_is_there() {
    let root = concat!(env!("CARGO_MANIFEST_DIR"), "/../../");
    let code = "src-tauri/crates/lifting/src/";
    let tests = "tests/judgement/tests/";
    let names = [PAGE, MOVING_PEOPLE]
        .into_iter()
        .flat_map(|page| page.split('`').skip(1).step_by(2))
        .filter(|name| name.ends_with(".rs"));
    for name in names {
        let there = [code, tests, ""]
            .iter()
            .any(|under| std::path::Path::new(&format!("{root}{under}{name}")).exists());
        assert!(there, "{name}");
    }
}
