//! Human-readable parts and times.

use chrono::{DateTime, FixedOffset, SecondsFormat};
use serde_json::{Value, json};

/// A narrative: the readable copy of a resource, as limited XHTML (hl7.org/fhir/R4/narrative.html).
pub(super) fn narrative<'a>(lines: impl IntoIterator<Item = &'a str>) -> Value {
    let mut div = String::from(r#"<div xmlns="http://www.w3.org/1999/xhtml">"#);
    for line in lines {
        div.push_str("<p>");
        div.push_str(&escaped(line));
        div.push_str("</p>");
    }
    div.push_str("</div>");
    json!({ "status": "generated", "div": div })
}

/// Puts plain spaces in place of those that keep a number and its unit on one line: the type `string` takes `[ \r\n\t\S]+`
/// (hl7.org/fhir/R4/datatypes.html#string), and a no-break space is none of these.
pub(super) fn with_plain_spaces(value: &mut Value) {
    match value {
        Value::String(text) => *text = text.replace(['\u{a0}', '\u{202f}'], " "),
        Value::Array(items) => items.iter_mut().for_each(with_plain_spaces),
        Value::Object(fields) => fields.values_mut().for_each(with_plain_spaces),
        Value::Null | Value::Bool(_) | Value::Number(_) => {}
    }
}

/// A time with its offset, to the second (instants and dateTimes with a time need both).
pub(super) fn time(at: DateTime<FixedOffset>) -> String {
    at.to_rfc3339_opts(SecondsFormat::Secs, false)
}

fn escaped(text: &str) -> String {
    text.chars()
        .filter(|sign| !sign.is_control())
        .map(|sign| match sign {
            '&' => "&amp;".to_owned(),
            '<' => "&lt;".to_owned(),
            '>' => "&gt;".to_owned(),
            '"' => "&quot;".to_owned(),
            other => other.to_string(),
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn text_cannot_become_markup() {
        let narrative = narrative(["a < b & \"c\"\u{7}"]);
        assert_eq!(
            narrative["div"],
            "<div xmlns=\"http://www.w3.org/1999/xhtml\"><p>a &lt; b &amp; &quot;c&quot;</p></div>"
        );
    }
}
