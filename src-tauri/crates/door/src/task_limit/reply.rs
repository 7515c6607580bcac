//! A published limit as it goes on the wire, in the units of its system, unrounded.

use lifting::limits::niosh::{FrequencyIndependent, PointScore, TaskLimit, UnitSystem};
use serde_json::{Value, json};

/// One task's limit. Names of loads end in the unit, `_kg` or `_lb`.
pub(crate) fn limit_value<S: UnitSystem>(limit: &TaskLimit<S>) -> Value {
    let outside: Vec<&str> = limit
        .outside
        .iter()
        .map(|multiplier| multiplier.id())
        .collect();
    let not_covered: Vec<&str> = limit.not_covered.iter().map(|what| what.id()).collect();
    json!({
        "origin": point::<S>(&limit.origin),
        "destination": limit.destination.as_ref().map(point::<S>),
        "frequency_independent": frequency_independent::<S>(&limit.frequency_independent),
        (in_unit::<S>("strwl")): limit.strwl.value(),
        "stli": limit.stli,
        "outside": outside,
        "not_covered": not_covered,
    })
}

fn point<S: UnitSystem>(point: &PointScore<S>) -> Value {
    json!({
        (in_unit::<S>("lc")): point.lc.value(),
        "hm": point.hm,
        "vm": point.vm,
        "dm": point.dm,
        "am": point.am,
        "fm": point.fm,
        "cm": point.cm,
        (in_unit::<S>("rwl")): point.rwl.value(),
        "lifting_index": point.lifting_index,
    })
}

fn frequency_independent<S: UnitSystem>(limit: &FrequencyIndependent<S>) -> Value {
    json!({ (in_unit::<S>("firwl")): limit.firwl.value(), "fili": limit.fili })
}

fn in_unit<S: UnitSystem>(name: &str) -> String {
    format!("{name}_{}", S::LOAD_UNIT)
}
