//! Reasons in words: as a sentence, or as the clause after "because".

use super::{Arg, Rounding, Units, Words};
use lifting::body::Region;
use lifting::limits::hse::CARRY_WITHOUT_REST;
use lifting::reason::{Reason, ReasonId, Value};
use lifting::way::Way;

/// What stands for a value that is not known: messages choose other words by it.
const NOT_KNOWN: &str = "none";
/// Values without which a message has other words ready.
const MAY_BE_UNKNOWN: [&str; 7] = [
    "guess", "high", "overdue", "pain", "people", "times", "what",
];
/// Values that a rule always gives, with the message to show if one should be missing after all.
const ALWAYS_GIVEN: [(&str, &str); 10] = [
    ("distance", "value-unknown"),
    ("guide", "value-unknown"),
    ("limit", "value-unknown"),
    ("max", "value-unknown"),
    ("region", "region-unknown"),
    ("share", "value-unknown"),
    ("side", "side-unknown"),
    ("sign", "sign-short-unknown"),
    ("stage", "value-unknown"),
    ("way", "way-unknown"),
];

impl Words {
    /// A reason as a sentence or two that stand alone.
    #[must_use]
    pub fn reason(&self, reason: &Reason, units: Units) -> String {
        self.of_reason("reason", reason, units)
    }

    /// A reason as a clause: small first letter, no full stop.
    #[must_use]
    pub fn because(&self, reason: &Reason, units: Units) -> String {
        self.of_reason("because", reason, units)
    }

    /// A region as it stands inside a sentence: `your left knee`, `la rodilla izquierda`.
    #[must_use]
    pub fn region(&self, region: Region) -> String {
        self.text(&message_id("region", region.id()))
    }

    /// The name of a way: `Squat`, `Sentadilla`.
    #[must_use]
    pub fn way_name(&self, way: Way) -> String {
        self.text(&message_id("way", way.id()))
    }

    /// The name of a way as it stands inside a sentence: `squat`, `sentadilla`.
    #[must_use]
    pub fn way_in_sentence(&self, way: Way) -> String {
        lower_first(&self.way_name(way))
    }

    /// `left` or `right` for a region that has a side.
    #[must_use]
    pub fn side(&self, region: Region) -> Option<String> {
        match region {
            Region::KneeLeft | Region::HipLeft => Some(self.text("side-left")),
            Region::KneeRight | Region::HipRight => Some(self.text("side-right")),
            Region::Back | Region::Shoulders => None,
        }
    }

    fn of_reason(&self, prefix: &str, reason: &Reason, units: Units) -> String {
        self.format(
            &message_id(prefix, reason.id.id()),
            &self.values(reason, units),
        )
    }

    fn values(&self, reason: &Reason, units: Units) -> Vec<(&'static str, Arg)> {
        let mut values: Vec<(&'static str, Arg)> = reason
            .values
            .iter()
            .map(|(name, value)| (*name, self.value(reason.id, name, *value, units)))
            .collect();
        let side = reason.values.iter().find_map(|(_, value)| match value {
            Value::Region(region) => self.side(*region),
            _ => None,
        });
        values.extend(side.map(|side| ("side", Arg::Text(side))));
        let stage = self.distance(CARRY_WITHOUT_REST.value(), units, Rounding::Down);
        values.push(("stage", Arg::Text(stage)));
        for name in MAY_BE_UNKNOWN {
            if values.iter().all(|(given, _)| *given != name) {
                values.push((name, NOT_KNOWN.into()));
            }
        }
        for (name, id) in ALWAYS_GIVEN {
            if values.iter().all(|(given, _)| *given != name) {
                values.push((name, self.text(id).into()));
            }
        }
        values
    }

    fn value(&self, id: ReasonId, name: &str, value: Value, units: Units) -> Arg {
        match value {
            Value::Mass(mass) => self
                .mass(mass.value(), units, mass_rounding(id, name))
                .into(),
            Value::Length(length) => self.length(length.value(), units, Rounding::Nearest).into(),
            Value::Distance(distance) => self
                .distance(distance.value(), units, Rounding::Nearest)
                .into(),
            // Whole newtons: a model is not finer than that.
            Value::Force(force) => self.number(force.value().round()).into(),
            Value::Count(count) => count.count().into(),
            Value::Pain(pain) => pain.value().into(),
            Value::Ratio(ratio) => ratio.into(),
            Value::Weeks(weeks) => self.weeks(weeks.value()).into(),
            Value::Region(region) => self.region(region).into(),
            Value::Way(way) => self.way_in_sentence(way).into(),
            Value::Sign(sign) => self.text(&message_id("sign-short", sign.id())).into(),
            Value::Id(id) => id.into(),
        }
    }
}

/// A limit is rounded down; what is said to be over it is rounded up, so that both never look equal.
fn mass_rounding(id: ReasonId, name: &str) -> Rounding {
    match (id, name) {
        (_, "max" | "limit" | "guide") => Rounding::Down,
        (
            ReasonId::OverPlanCeiling
            | ReasonId::OverLight
            | ReasonId::MassUnknown
            | ReasonId::ShareOverLimit,
            _,
        ) => Rounding::Up,
        _ => Rounding::Nearest,
    }
}

/// The id of a message about a member of a closed list: `reason` and `back_severe` give `reason-back-severe`.
#[must_use]
pub fn message_id(prefix: &str, id: &str) -> String {
    format!("{prefix}-{}", id.replace('_', "-"))
}

/// The text with a small first letter.
#[must_use]
pub fn lower_first(text: &str) -> String {
    with_first(text, |first| first.to_lowercase().collect())
}

/// A clause as a sentence: capital first letter, full stop.
#[must_use]
pub fn sentence(clause: &str) -> String {
    let text = with_first(clause, |first| first.to_uppercase().collect());
    if text.ends_with(['.', '!', '?']) {
        text
    } else {
        text + "."
    }
}

fn with_first(text: &str, change: impl Fn(char) -> String) -> String {
    let mut letters = text.chars();
    match letters.next() {
        Some(first) => change(first) + letters.as_str(),
        None => String::new(),
    }
}
