//! The names of the fields of what is practised: `practice_<part>` for the first thing, `practice_<part>_2` for the second.

use super::bounds::ITEMS;

const PREFIX: &str = "practice_";

/// The field for a part of what is practised at a place, counted from 0.
#[must_use]
pub(super) fn id(part: &str, at: usize) -> String {
    match at {
        0 => format!("{PREFIX}{part}"),
        at => format!("{PREFIX}{part}_{}", at.saturating_add(1)),
    }
}

/// The part and the place, counted from 0, that a field names, if it is one of these.
#[must_use]
pub(super) fn read(field: &str) -> Option<(&str, usize)> {
    let rest = field.strip_prefix(PREFIX)?;
    let Some((part, place)) = rest.split_once('_') else {
        return Some((rest, 0));
    };
    let place: usize = place.parse().ok()?;
    // One name for each field.
    ((2..=ITEMS).contains(&place) && id(part, place.saturating_sub(1)) == field)
        .then_some((part, place.saturating_sub(1)))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_field_has_one_name() {
        assert_eq!(read("practice_way"), Some(("way", 0)));
        assert_eq!(read("practice_days_3"), Some(("days", 2)));
        for other in [
            "practice_way_1",
            "practice_way_02",
            "practice_way_4",
            "practice_way_",
            "practised_way",
        ] {
            assert_eq!(read(other), None, "{other}");
        }
        assert_eq!(id("sets", 0), "practice_sets");
        assert_eq!(id("sets", 1), "practice_sets_2");
    }
}
