//! Figures of reasons and changes as they are kept: whole numbers, with the unit in the name.

use lifting::body::{Region, WarningSign};
use lifting::quantity::{Centimetres, Kilograms, Metres, Newtons, PainScore, Repetitions, Weeks};
use lifting::reason::Value;
use lifting::way::Way;
use record::Arg;

/// The kind of a change that has several steps.
pub(crate) const TOGETHER: &str = "together";

/// Names that values of reasons have. A name that is not here is not read back.
const NAMES: [&str; 18] = [
    "distance", "force", "guide", "high", "index", "limit", "mass", "max", "overdue", "pain",
    "rate", "reach", "region", "sign", "start", "times", "way", "what",
];

/// Words that stand for something of a closed list outside the named ones: what the equation does not
/// cover, its multipliers, and what holds ways back from the first place.
const WORDS: [&str; 10] = [
    "kneeling", "one_hand", "hm", "vm", "dm", "am", "fm", "cm", "long_run", "hip",
];

/// Thousandths of a number: grams of kilograms, millimetres of metres. Never negative; a number too large,
/// which none of our quantities is, becomes the largest.
#[must_use]
pub(crate) fn thousandths(value: f64) -> u32 {
    whole_number(value * 1000.0)
}

/// Tenths of a centimetre: millimetres.
#[must_use]
pub(crate) fn tenths(centimetres: f64) -> u32 {
    whole_number(centimetres * 10.0)
}

fn whole_number(value: f64) -> u32 {
    let bounded = value.round().clamp(0.0, f64::from(u32::MAX));
    #[allow(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "bounded just above"
    )]
    let whole = bounded as u32;
    whole
}

/// A named whole number.
#[must_use]
pub(crate) fn whole(name: &str, value: u32) -> Arg {
    Arg {
        name: name.to_owned(),
        value: record::Value::Integer(i64::from(value)),
    }
}

/// A value of a reason as it is kept. The end of its name tells what it is.
#[must_use]
pub(crate) fn from_value(name: &str, value: &Value) -> Arg {
    let number = |ending: &str, value: u32| whole(&format!("{name}{ending}"), value);
    let word = |ending: &str, id: &str| Arg {
        name: format!("{name}{ending}"),
        value: record::Value::Text(id.to_owned()),
    };
    match value {
        Value::Mass(mass) => number("_g", thousandths(mass.value())),
        Value::Length(length) => number("_mm", tenths(length.value())),
        Value::Distance(distance) => number("_far_mm", thousandths(distance.value())),
        Value::Count(count) => number("_times", count.count()),
        Value::Pain(score) => number("_nrs", u32::from(score.value())),
        Value::Force(force) => number("_mn", thousandths(force.value())),
        Value::Ratio(ratio) => number("_thousandths", thousandths(*ratio)),
        Value::Weeks(weeks) => number("_weeks_thousandths", thousandths(weeks.value())),
        Value::Region(region) => word("_region", region.id()),
        Value::Way(way) => word("_way", way.id()),
        Value::Sign(sign) => word("_sign", sign.id()),
        Value::Id(id) => word("_word", id),
    }
}

/// A kept figure as a value of a reason. `None` for what this version does not know.
#[must_use]
pub(crate) fn to_value(arg: &Arg) -> Option<(&'static str, Value)> {
    NAMES.iter().find_map(|name| {
        let ending = arg.name.strip_prefix(name)?;
        Some((*name, read(ending, &arg.value)?))
    })
}

fn read(ending: &str, value: &record::Value) -> Option<Value> {
    match value {
        record::Value::Integer(number) => read_number(ending, u32::try_from(*number).ok()?),
        record::Value::Text(id) => match ending {
            "_region" => Region::from_id(id).map(Value::Region),
            "_way" => Way::from_id(id).map(Value::Way),
            "_sign" => WarningSign::from_id(id).map(Value::Sign),
            "_word" => WORDS
                .iter()
                .find(|word| *word == id)
                .map(|word| Value::Id(word)),
            _ => None,
        },
    }
}

fn read_number(ending: &str, number: u32) -> Option<Value> {
    let (plain, thousandth) = (f64::from(number), f64::from(number) / 1000.0);
    Some(match ending {
        "_g" => Value::Mass(Kilograms::new(thousandth).ok()?),
        "_mm" => Value::Length(Centimetres::new(plain / 10.0).ok()?),
        "_far_mm" => Value::Distance(Metres::new(thousandth).ok()?),
        "_times" => Value::Count(Repetitions::new(number).ok()?),
        "_nrs" => Value::Pain(PainScore::new(u8::try_from(number).ok()?).ok()?),
        "_mn" => Value::Force(Newtons::of(thousandth)),
        "_thousandths" => Value::Ratio(thousandth),
        "_weeks_thousandths" => Value::Weeks(Weeks::new(thousandth).ok()?),
        _ => return None,
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_kind_of_value_is_kept_and_read_again() {
        for (name, value) in [
            ("mass", Value::Mass(Kilograms::clamped(6.5))),
            ("reach", Value::Length(Centimetres::clamped(63.5))),
            ("distance", Value::Distance(Metres::clamped(12.0))),
            ("times", Value::Count(Repetitions::of(30))),
            ("pain", Value::Pain(PainScore::of(8))),
            ("index", Value::Ratio(1.234)),
            ("force", Value::Force(Newtons::of(3_650.5))),
            ("overdue", Value::Weeks(Weeks::clamped(5.5))),
            ("region", Value::Region(Region::KneeLeft)),
            ("way", Value::Way(Way::Squat)),
            ("sign", Value::Sign(WarningSign::FeverUnwell)),
            ("what", Value::Id("kneeling")),
        ] {
            assert_eq!(to_value(&from_value(name, &value)), Some((name, value)));
        }
    }

    #[test]
    fn figures_of_another_version_are_left_out() {
        for arg in [
            whole("newname_g", 5),
            whole("mass_stones", 5),
            whole("pain_nrs", 11),
        ] {
            assert_eq!(to_value(&arg), None);
        }
    }
}
