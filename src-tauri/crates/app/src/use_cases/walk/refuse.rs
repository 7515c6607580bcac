//! Pages where no advice can be given: who can.

use crate::walk::ids::QuestionId;
use crate::walk::page::{Page, RefusePage, Who};
use crate::walk::text::Reader;

/// A person or an animal is not a load: others can help.
pub(crate) fn living(reader: Reader<'_>) -> Page {
    let helpers = [
        "adult",
        "clinician",
        "trained-helper",
        "animal-helper",
        "care-office",
    ];
    refuse(reader, "refuse-living", &helpers, None)
}

/// Not sure about a warning sign: ask somebody who can tell, before any lift.
pub(crate) fn unsure_sign(reader: Reader<'_>, list: QuestionId) -> Page {
    let helpers = ["nurse-line", "clinician-today", "emergency-number"];
    refuse(
        reader,
        "refuse-unsure-sign",
        &helpers,
        Some(list.id().to_owned()),
    )
}

fn refuse(reader: Reader<'_>, id: &str, helpers: &[&str], back: Option<String>) -> Page {
    let who = helpers.iter().map(|helper| Who {
        id: helper.replace('-', "_"),
        text: reader.words.text(&format!("who-{helper}")),
    });
    Page::Refuse(RefusePage {
        title: reader.words.text(&format!("{id}-title")),
        text: (1..=2)
            .map(|part| reader.words.text(&format!("{id}-{part}")))
            .collect(),
        who: who.collect(),
        back,
    })
}
