//! Every source that the judgement names is in the register of sources, and every source there says how it was seen.

use lifting::reason::ReasonId;
use std::collections::{BTreeMap, BTreeSet};

const REGISTER: &str = include_str!("../../../docs/method/sources.md");

/// The register's rows by id: the cells after the id.
fn rows() -> BTreeMap<&'static str, Vec<&'static str>> {
    let row = |line: &'static str| {
        let mut cells = line
            .strip_prefix("| `")?
            .strip_suffix(" |")?
            .split(" | ")
            .map(str::trim);
        let id = cells.next()?.strip_suffix('`')?;
        Some((id, cells.collect()))
    };
    REGISTER.lines().filter_map(row).collect()
}

#[test]
fn every_reason_names_a_source_in_the_register() {
    let known = rows();
    let unknown: BTreeSet<_> = ReasonId::ALL
        .iter()
        .map(|reason| reason.source())
        .filter(|source| !known.contains_key(source))
        .collect();
    assert!(
        unknown.is_empty(),
        "not in docs/method/sources.md: {unknown:?}"
    );
}

#[test]
fn every_published_source_says_where_what_and_how_seen() {
    let unpublished = ["plan", "house_rule", "common_practice"];
    for (id, cells) in rows() {
        if unpublished.contains(&id) {
            continue;
        }
        assert_eq!(cells.len(), 4, "{id}: source, where, what, how seen");
        assert!(
            cells.iter().all(|cell| !cell.is_empty()),
            "{id}: an empty cell"
        );
        let seen = cells[3];
        let honest = ["read", "memory", "computed"];
        assert!(
            honest.iter().any(|word| seen.contains(word)),
            "{id}: {seen}"
        );
    }
}

#[test]
fn no_id_stands_for_two_sources() {
    let ids: Vec<_> = REGISTER
        .lines()
        .filter_map(|line| line.strip_prefix("| `")?.split('`').next())
        .collect();
    let distinct: BTreeSet<_> = ids.iter().collect();
    assert_eq!(ids.len(), distinct.len());
    assert!(ids.len() > 12, "the register was read");
}
