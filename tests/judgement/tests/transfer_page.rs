//! `docs/formats/wire.md` and `docs/method/transfer.md` name every id for moving a person.

#![cfg(test)]

use lifting::transfer::client::{Ability, ClientSign, Follows, Help, Limb, Move, WeightBearing};
use lifting::transfer::equipment::Equipment;
use lifting::transfer::limit::Hindrance;
use lifting::transfer::way::PeopleWay;

const WIRE: &str = include_str!("../../../docs/formats/wire.md");

#[test]
fn every_id_is_on_the_page() {
    let mut ids = Vec::new();
    ids.extend(Move::ALL.iter().map(|id| id.id()));
    ids.extend(WeightBearing::ALL.iter().map(|id| id.id()));
    ids.extend(Follows::ALL.iter().map(|id| id.id()));
    ids.extend(Ability::ALL.iter().map(|id| id.id()));
    ids.extend(Help::ALL.iter().map(|id| id.id()));
    ids.extend(Limb::ALL.iter().map(|id| id.id()));
    ids.extend(ClientSign::ALL.iter().map(|id| id.id()));
    ids.extend(Equipment::ALL.iter().map(|id| id.id()));
    ids.extend(Hindrance::ALL.iter().map(|id| id.id()));
    ids.extend(PeopleWay::ALL.iter().map(|id| id.id()));
    for id in ids {
        assert!(WIRE.contains(&format!("`{id}`")), "{id}");
    }
}

#[test]
fn the_page_counts_the_grid_as_it_is() {
    let cases = judgement::moving_grid::CASES_OF_A_MOVE * Move::ALL.len();
    let page = include_str!("../../../docs/method/transfer.md");
    let digits: String = page
        .split("documented grid of ")
        .nth(1)
        .unwrap()
        .chars()
        .take_while(|sign| sign.is_ascii_digit() || *sign == ',')
        .filter(char::is_ascii_digit)
        .collect();
    assert_eq!(digits, cases.to_string());
}
