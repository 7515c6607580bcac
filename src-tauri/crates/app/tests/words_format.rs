//! Numbers, units, dates and missing messages, as a reader sees them.

use app::words::{Arg, Language, Rounding, Units, Words, lower_first, sentence};
use chrono::{NaiveDate, NaiveTime};

fn english() -> Words {
    Words::load(Language::English)
}

fn spanish() -> Words {
    Words::load(Language::Spanish)
}

#[test]
fn a_number_has_one_decimal_at_most_and_no_empty_one() {
    for (number, shown, in_spanish) in [
        (6.0, "6", "6"),
        (6.5, "6.5", "6,5"),
        (6.25, "6.3", "6,3"),
        (0.04, "0", "0"),
        (-0.04, "0", "0"),
        (1234.5, "1234.5", "1234,5"),
        (f64::NAN, "–", "–"),
        (f64::INFINITY, "–", "–"),
    ] {
        assert_eq!(english().number(number), shown);
        assert_eq!(spanish().number(number), in_spanish);
    }
}

#[test]
fn a_mass_is_rounded_to_the_nearest_but_a_limit_never_looks_larger() {
    let words = english();
    assert_eq!(
        words.mass(6.26, Units::Kilograms, Rounding::Nearest),
        "6.3\u{a0}kg"
    );
    assert_eq!(
        words.mass(6.26, Units::Kilograms, Rounding::Down),
        "6.2\u{a0}kg"
    );
    assert_eq!(
        words.mass(6.26, Units::Pounds, Rounding::Nearest),
        "14\u{a0}lb"
    );
    assert_eq!(
        words.mass(6.26, Units::Pounds, Rounding::Down),
        "13\u{a0}lb"
    );
    assert_eq!(
        words.mass(6.21, Units::Kilograms, Rounding::Up),
        "6.3\u{a0}kg"
    );
}

#[test]
fn whole_pounds_kept_in_kilograms_come_back_whole() {
    let words = english();
    for pounds in 1..=400_u32 {
        let kilograms = f64::from(pounds) * app::words::KILOGRAMS_PER_POUND;
        for rounding in [Rounding::Nearest, Rounding::Down, Rounding::Up] {
            assert_eq!(
                words.mass(kilograms, Units::Pounds, rounding),
                format!("{pounds}\u{a0}lb")
            );
        }
    }
}

#[test]
fn a_limit_is_never_shown_above_what_it_is() {
    let words = english();
    for step in 0..4000_u32 {
        let kilograms = f64::from(step) * 0.0237;
        for (units, in_kilograms) in [
            (Units::Kilograms, 1.0),
            (Units::Pounds, app::words::KILOGRAMS_PER_POUND),
        ] {
            let shown = words.mass(kilograms, units, Rounding::Down);
            let number: f64 = shown
                .split('\u{a0}')
                .next()
                .and_then(|text| text.parse().ok())
                .unwrap_or(f64::NAN);
            assert!(
                number * in_kilograms <= kilograms + 1e-6,
                "{kilograms} kg as {shown}"
            );
        }
    }
}

#[test]
fn less_than_a_pound_is_not_nothing() {
    assert_eq!(
        english().mass(0.2, Units::Pounds, Rounding::Nearest),
        "0.4\u{a0}lb"
    );
    assert_eq!(
        spanish().mass(0.2, Units::Pounds, Rounding::Nearest),
        "0,4\u{a0}lb"
    );
}

#[test]
fn lengths_distances_times_and_weeks_agree_in_number() {
    let (english, spanish) = (english(), spanish());
    assert_eq!(
        english.length(50.0, Units::Kilograms, Rounding::Nearest),
        "50\u{a0}cm"
    );
    assert_eq!(
        english.length(50.0, Units::Pounds, Rounding::Up),
        "20\u{a0}in"
    );
    assert_eq!(
        spanish.length(2.54, Units::Pounds, Rounding::Nearest),
        "1\u{a0}pulgada"
    );
    assert_eq!(
        english.distance(1.0, Units::Kilograms, Rounding::Nearest),
        "1\u{a0}metre"
    );
    assert_eq!(
        english.distance(10.0, Units::Pounds, Rounding::Down),
        "32\u{a0}feet"
    );
    assert_eq!(
        spanish.distance(10.0, Units::Kilograms, Rounding::Down),
        "10\u{a0}metros"
    );
    assert_eq!(
        [1, 2, 30].map(|count| english.times(count)),
        ["once", "twice", "30\u{a0}times"]
    );
    assert_eq!(
        [1, 2].map(|count| spanish.times(count)),
        ["una\u{a0}vez", "2\u{a0}veces"]
    );
    assert_eq!(
        [1.0, 5.0].map(|weeks| english.weeks(weeks)),
        ["1\u{a0}week", "5\u{a0}weeks"]
    );
}

#[test]
fn days_and_times_read_as_they_are_spoken() {
    let day = NaiveDate::from_ymd_opt(2026, 11, 25).unwrap_or_default();
    let old = NaiveDate::from_ymd_opt(2025, 1, 2).unwrap_or_default();
    assert_eq!(english().day_text(day), "Wednesday 25 November");
    assert_eq!(spanish().day_text(day), "miércoles 25 de noviembre");
    assert_eq!(english().day_text_from(day, day), "Today");
    assert_eq!(
        english().day_text_from(day, day.succ_opt().unwrap_or(day)),
        "Yesterday"
    );
    assert_eq!(english().day_text_from(old, day), "Thursday 2 January 2025");
    assert_eq!(
        spanish().day_text_from(old, day),
        "jueves 2 de enero de 2025"
    );
    let time = NaiveTime::from_hms_opt(9, 5, 59).unwrap_or_default();
    assert_eq!(english().time_text(time), "9:05");
}

#[test]
fn a_missing_message_shows_its_id_and_nothing_breaks() {
    assert_eq!(spanish().text("no-such-message"), "[no-such-message]");
    assert_eq!(english().text(""), "[]");
    assert!(!english().has("no-such-message"));
    assert!(english().format("unit-kilograms", &[]).contains("kg"));
    assert_eq!(
        english().format("unit-kilograms", &[("n", Arg::text("many"))]),
        "many kg"
    );
}

#[test]
fn values_go_in_without_invisible_marks() {
    let shown = english().format("limit-text", &[("limit", "5 kg".into())]);
    assert!(
        shown
            .chars()
            .all(|letter| !('\u{2066}'..='\u{2069}').contains(&letter)),
        "{shown:?}"
    );
}

#[test]
fn clauses_become_sentences() {
    assert_eq!(sentence("está cerca"), "Está cerca.");
    assert_eq!(sentence("él puede"), "Él puede.");
    assert_eq!(sentence(""), ".");
    assert_eq!(lower_first("Ésta"), "ésta");
}

#[test]
fn a_number_is_never_parted_from_its_unit() {
    for words in [english(), spanish()] {
        for text in [
            words.mass(6.5, Units::Kilograms, Rounding::Nearest),
            words.length(50.0, Units::Pounds, Rounding::Up),
            words.distance(10.0, Units::Kilograms, Rounding::Down),
            words.weeks(5.0),
            words.stature(167.6, Units::Pounds),
        ] {
            assert!(text.contains('\u{a0}') && !text.contains(' '), "{text}");
        }
    }
}

#[test]
fn a_stature_is_said_in_feet_and_inches_or_in_centimetres() {
    let words = english();
    assert_eq!(words.stature(167.6, Units::Kilograms), "168\u{a0}cm");
    for (centimetres, shown) in [
        (167.6, "5\u{a0}ft\u{a0}6\u{a0}in"),
        (182.9, "6\u{a0}ft\u{a0}0\u{a0}in"),
        // 71.6 in is nearer to 6 ft than to 5 ft 11 in, and never 5 ft 12 in.
        (181.9, "6\u{a0}ft\u{a0}0\u{a0}in"),
    ] {
        assert_eq!(words.stature(centimetres, Units::Pounds), shown);
    }
}
