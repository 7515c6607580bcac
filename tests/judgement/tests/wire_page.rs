//! `docs/formats/wire.md` against the code: every example is sent, every field, code and id is compared.

#![cfg(test)]

use door::{ErrorCode, answer_alone, fields};
use std::collections::BTreeSet;

const PAGE: &str = include_str!("../../../docs/formats/wire.md");

/// Lines of the page's JSON blocks.
fn examples() -> Vec<&'static str> {
    let blocks = PAGE.split("```json\n").skip(1);
    blocks
        .flat_map(|block| block.split("```").next().unwrap().lines())
        .collect()
}

/// The part of the page from a sentence on, up to the next "Fields of" or heading.
fn passage(start: &str) -> &'static str {
    let at = PAGE
        .find(start)
        .unwrap_or_else(|| panic!("the page has no “{start}”"));
    let rest = PAGE.get(at + start.len()..).unwrap();
    let ends = [
        "\nFields of",
        "\n#",
        "\nThe reply",
        "\nIds of",
        "\n```",
        "\n## ",
    ];
    let end = ends
        .iter()
        .filter_map(|end| rest.find(end))
        .min()
        .unwrap_or(rest.len());
    rest.get(..end).unwrap()
}

/// Words between backquotes.
fn quoted(text: &str) -> BTreeSet<&str> {
    text.split('`').skip(1).step_by(2).collect()
}

/// Words between backquotes in the first column of a table; all of them where there is no table.
fn named_fields(passage: &'static str) -> BTreeSet<&'static str> {
    let rows = passage.lines().filter_map(|line| line.strip_prefix("| `"));
    let columns: Vec<&str> = rows.map(|row| row.split(" |").next().unwrap()).collect();
    if columns.is_empty() {
        return quoted(passage);
    }
    columns
        .into_iter()
        .flat_map(|column| column.split(['`', ',', ' ']))
        .filter(|name| !name.is_empty())
        .collect()
}

#[test]
fn every_example_is_answered_as_the_page_says() {
    let mut sent = 0;
    let mut examples = examples().into_iter().peekable();
    while let Some(command) = examples.next() {
        let reply = answer_alone(command);
        match examples.next_if(|next| next.starts_with("{\"error\"")) {
            Some(expected) => assert_eq!(reply, expected, "{command}"),
            None => assert!(reply.starts_with("{\"ok\""), "{command}\n{reply}"),
        }
        sent += 1;
    }
    assert!(sent >= 9);
}

#[test]
fn every_field_is_on_the_page_and_no_other() {
    for (part, fields) in fields() {
        let known: BTreeSet<&str> = fields.iter().copied().collect();
        let passage = passage(&format!("Fields of `{part}`"));
        let mut named = named_fields(passage);
        if !passage.contains("| `") {
            // Sentences also quote values and say what a field is for.
            named.retain(|name| known.contains(name));
        }
        assert_eq!(named, known, "{part}");
    }
}

#[test]
fn every_code_is_on_the_page_and_no_other() {
    let known: BTreeSet<&str> = ErrorCode::ALL.iter().map(|code| code.id()).collect();
    let table = passage("| code | when |\n| --- | --- |\n");
    assert_eq!(named_fields(table), known);
}

#[test]
fn every_id_in_a_list_is_on_the_page() {
    let signs = lifting::body::WarningSign::ALL
        .iter()
        .map(|sign| sign.id())
        .collect();
    assert_eq!(quoted(passage("Ids of `flags`:")), signs);
    let conditions = lifting::body::Condition::ALL
        .iter()
        .map(|condition| condition.id())
        .collect();
    assert_eq!(quoted(passage("Ids of `conditions`:")), conditions);
}

#[test]
fn every_kind_of_change_is_on_the_page() {
    let mut known: BTreeSet<&str> = lifting::advise::change::ChangeStep::IDS
        .iter()
        .copied()
        .collect();
    known.insert("combined");
    assert_eq!(
        named_fields(passage("| `kind` | amounts |\n| --- | --- |\n")),
        known
    );
}
