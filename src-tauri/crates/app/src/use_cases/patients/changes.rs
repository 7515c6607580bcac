//! What changed from one version of a plan to the next, in the words of the plan.

use crate::use_cases::plan::lines::{lines, review, title};
use crate::walk::text::Reader;
use record::Plan;

/// A sentence for each line that differs; nothing for two that say the same.
#[must_use]
pub(super) fn changes(before: &Plan, after: &Plan, reader: Reader<'_>) -> Vec<String> {
    let words = reader.words;
    let said = |plan: &Plan| {
        let mut said = vec![
            (words.text("plan-field-title"), title(plan, reader)),
            (words.text("plan-field-review-on"), review(plan, reader)),
        ];
        said.extend(
            lines(plan, reader)
                .into_iter()
                .map(|line| (line.label, line.text)),
        );
        said
    };
    let (before, after) = (said(before), said(after));
    let other = |said: &[(String, String)], label: &str| {
        said.iter()
            .find(|(other, _)| other == label)
            .map(|(_, text)| text.clone())
    };
    let mut changes = Vec::new();
    for (label, text) in &after {
        match other(&before, label) {
            Some(old) if old == *text => {}
            Some(old) => changes.push(words.format(
                "patients-changed",
                &[
                    ("label", label.as_str().into()),
                    ("old", old.into()),
                    ("new", text.as_str().into()),
                ],
            )),
            None => changes.push(words.format(
                "patients-new",
                &[
                    ("label", label.as_str().into()),
                    ("new", text.as_str().into()),
                ],
            )),
        }
    }
    for (label, old) in before {
        if other(&after, &label).is_none() {
            changes.push(words.format(
                "patients-gone",
                &[("label", label.into()), ("old", old.into())],
            ));
        }
    }
    changes
}
