//! The message files built into the program.

use super::Language;

macro_rules! files {
    ($folder:literal) => {
        &[
            include_str!(concat!("../../words/", $folder, "/advice.ftl")),
            include_str!(concat!("../../words/", $folder, "/care.ftl")),
            include_str!(concat!("../../words/", $folder, "/departures.ftl")),
            include_str!(concat!("../../words/", $folder, "/errors.ftl")),
            include_str!(concat!("../../words/", $folder, "/figure.ftl")),
            include_str!(concat!("../../words/", $folder, "/handoff.ftl")),
            include_str!(concat!("../../words/", $folder, "/home.ftl")),
            include_str!(concat!("../../words/", $folder, "/patients.ftl")),
            include_str!(concat!("../../words/", $folder, "/plan.ftl")),
            include_str!(concat!("../../words/", $folder, "/plan_day.ftl")),
            include_str!(concat!("../../words/", $folder, "/questions.ftl")),
            include_str!(concat!("../../words/", $folder, "/reasons.ftl")),
            include_str!(concat!("../../words/", $folder, "/report.ftl")),
            include_str!(concat!("../../words/", $folder, "/screens.ftl")),
            include_str!(concat!("../../words/", $folder, "/screens_review.ftl")),
            include_str!(concat!("../../words/", $folder, "/screens_care.ftl")),
            include_str!(concat!("../../words/", $folder, "/screens_departures.ftl")),
            include_str!(concat!("../../words/", $folder, "/screens_handoff.ftl")),
            include_str!(concat!("../../words/", $folder, "/screens_patients.ftl")),
            include_str!(concat!("../../words/", $folder, "/screens_plan.ftl")),
            include_str!(concat!("../../words/", $folder, "/signs.ftl")),
            include_str!(concat!("../../words/", $folder, "/transfer.ftl")),
            include_str!(concat!("../../words/", $folder, "/units.ftl")),
        ]
    };
}

/// The text of every message file of one language.
pub(super) const fn of(language: Language) -> &'static [&'static str] {
    match language {
        Language::English => files!("en"),
        Language::Spanish => files!("es"),
    }
}
