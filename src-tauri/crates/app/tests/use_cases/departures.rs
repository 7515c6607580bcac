//! The list of what left this phone: every act by which something leaves is on it, and nothing that was in it.

use crate::handoff::screens::{pair, plan, plan_for};
use crate::phone::TestPhone;
use crate::script::Script;
use serde_json::{Value, json};
use std::io;
use std::path::PathBuf;

fn list(phone: &TestPhone) -> Vec<Value> {
    let reply = phone.ask(json!({"do": "departures"}));
    reply["entries"].as_array().expect("entries").clone()
}

/// The newest entry as one text.
fn newest(phone: &TestPhone) -> String {
    let entry = list(phone).into_iter().next().expect("an entry");
    let parts = entry["parts"].as_array().expect("parts").iter();
    let parts: Vec<&str> = parts.map(|part| part.as_str().expect("text")).collect();
    let text = |name: &str| entry[name].as_str().expect("text").to_owned();
    [text("what"), parts.join(", "), text("how"), text("to")].join(" | ")
}

fn visit() -> (TestPhone, TestPhone, String) {
    let clinician = TestPhone::of("surgery", "treat", "Blue Kettle");
    let patient = TestPhone::of("orchard", "lift", "Green Ladder");
    let pairing = pair(&clinician, &patient);
    (clinician, patient, pairing)
}

fn somebody_who_lifted() -> TestPhone {
    let phone = TestPhone::with_an_owner("orchard");
    phone.walk(&Script::ordinary(), None);
    phone.ask(json!({"do": "lift_keep", "done": true, "way": "squat"}));
    phone
}

#[test]
fn whoever_is_paired_has_the_card() {
    let (clinician, patient, _) = visit();
    for (phone, other) in [(&clinician, "Green Ladder"), (&patient, "Blue Kettle")] {
        assert_eq!(
            newest(phone),
            format!(
                "Your card: your name for others, and this phone's open keys |  | Shown on the screen. | For {other}."
            )
        );
    }
}

#[test]
fn a_plan_that_is_shown_and_then_saved_is_one_entry() {
    let (clinician, _, pairing) = visit();
    let id = plan(&clinician, "sore_back", "Green Ladder");
    let before = list(&clinician).len();
    clinician.ask(json!({"do": "show_summary", "what": "plan", "plan": id, "to": pairing}));
    assert_eq!(list(&clinician).len(), before, "nothing has left yet");
    let show = clinician.ask(plan_for(&id, &pairing));
    let shown = "Plan: Green Ladder | Version 1 | Shown on the screen. | Only the phone of Green Ladder can open it.";
    assert_eq!(newest(&clinician), shown);
    clinician.ask(json!({"do": "show_file", "show": show["show"]}));
    clinician.ask(
        json!({"do": "departure_note", "what": "show", "how": "printed", "show": show["show"]}),
    );
    assert_eq!(
        newest(&clinician),
        shown.replace("screen. |", "screen. Saved as a file. Sent to a printer. |")
    );
    assert_eq!(list(&clinician).len(), before + 1);
    clinician.later(10);
    clinician.ask(json!({"do": "show", "what": "plan", "plan": id, "to": pairing}));
    assert_eq!(
        list(&clinician).len(),
        before + 2,
        "later it is another act"
    );
}

#[test]
fn under_a_code_it_names_nobody() {
    let (clinician, ..) = visit();
    let id = plan(&clinician, "sore_back", "Quiet Lantern");
    clinician.ask(json!({"do": "show", "what": "plan", "plan": id, "to": null}));
    assert_eq!(
        newest(&clinician),
        "Plan: Quiet Lantern | Version 1 | Shown on the screen. | Whoever has the eight words can open it."
    );
}

#[test]
fn a_plan_on_paper_is_on_the_list_once_it_is_saved() {
    let (clinician, _, pairing) = visit();
    let id = plan(&clinician, "sore_back", "Green Ladder");
    let before = list(&clinician).len();
    let asked = json!({"do": "report_make", "form": "pdf", "plan": id, "to": pairing});
    clinician.ask(asked.clone());
    assert_eq!(list(&clinician).len(), before, "it is not on any screen");
    let asked = asked.to_string();
    let written = clinician
        .app()
        .save_report(&asked, |name, _| Ok(PathBuf::from(name)));
    assert!(written.contains("path"), "{written}");
    assert_eq!(
        newest(&clinician),
        "Plan on paper: Green Ladder | Version 1 | Saved as a file. | The symbol is only for Green Ladder. Anybody can read the words."
    );
}

#[test]
fn a_history_says_how_far_back_and_whether_names_went_along() {
    let phone = somebody_who_lifted();
    phone.ask(json!({"do": "card_set", "alias": "Green Ladder"}));
    phone.ask(json!({"do": "show", "what": "history", "since_days": 90, "notes": true}));
    assert_eq!(
        newest(&phone),
        "History | The last 90 days, 1 entry, With the name of each thing | Shown on the screen. | Whoever has the eight words can open it."
    );
    phone.ask(json!({"do": "show", "what": "history"}));
    assert_eq!(
        newest(&phone),
        "History | From the beginning, 1 entry, No names of things | Shown on the screen. | Whoever has the eight words can open it."
    );
}

#[test]
fn each_form_of_the_look_back_is_on_it() {
    let phone = somebody_who_lifted();
    for (form, what) in [
        ("note", "as a note"),
        ("csv", "as a table"),
        ("fhir", "for clinic software"),
    ] {
        phone.ask(json!({"do": "report_make", "form": form}));
        assert_eq!(
            newest(&phone),
            format!(
                "Look back {what} | From the beginning, 1 entry | Shown on the screen. | Anybody who has it can read it."
            )
        );
    }
    phone.ask(json!({"do": "report_make", "form": "fhir", "how": "copied"}));
    phone.ask(json!({"do": "report_make", "form": "fhir", "how": "saved"}));
    assert!(newest(&phone).contains("| Shown on the screen. Copied. Saved as a file. |"));
    phone.ask(json!({"do": "report_make", "form": "pdf"}));
    assert_eq!(list(&phone).len(), 3, "a page is not on any screen");
    phone.ask(json!({"do": "report_make", "form": "pdf", "how": "saved", "since_days": 30}));
    assert_eq!(
        newest(&phone),
        "Look back as a page | The last 30 days, 1 entry | Saved as a file. | Anybody who has it can read it."
    );
    for (form, how) in [("pdf", "copied"), ("pdf", "shown"), ("note", "sung")] {
        let asked = json!({"do": "report_make", "form": form, "how": how});
        assert_eq!(phone.refused(asked), "not_a_choice at how");
    }
}

#[test]
fn a_file_that_cannot_be_written_did_not_leave() {
    let phone = somebody_who_lifted();
    let full =
        |_: &str, _: &[u8]| -> io::Result<PathBuf> { Err(io::ErrorKind::StorageFull.into()) };
    let reply = phone.app().save_report(r#"{"form": "pdf"}"#, full);
    assert!(reply.contains("disk_full"), "{reply}");
    assert!(list(&phone).is_empty());
    phone.ask(json!({"do": "report_make", "form": "csv"}));
    let reply = phone.app().save_report(r#"{"form": "csv"}"#, full);
    assert!(reply.contains("disk_full"), "{reply}");
    assert!(newest(&phone).contains("| Shown on the screen. |"));
    phone.ask(json!({"do": "card_set", "alias": "Green Ladder"}));
    let show = phone.ask(json!({"do": "show", "what": "history"}));
    let id = show["show"].as_str().expect("an id");
    let reply = phone.app().save_file(id, full);
    assert!(reply.contains("disk_full"), "{reply}");
    assert!(newest(&phone).contains("| Shown on the screen. |"));
}

#[test]
fn the_list_outlives_a_kill_is_read_a_page_at_a_time_and_is_cleared() {
    let mut phone = somebody_who_lifted();
    for days in 1..=5 {
        phone.ask(json!({"do": "report_make", "form": "note", "since_days": days}));
    }
    phone.kill_and_unlock();
    let first = phone.ask(json!({"do": "departures", "limit": 3}));
    assert_eq!(first["more"], true);
    assert_eq!(first["entries"][0]["parts"][0], "The last 5 days");
    let last = &first["entries"][2]["id"];
    let next = phone.ask(json!({"do": "departures", "limit": 3, "before": last}));
    assert_eq!(next["more"], false);
    assert_eq!(next["entries"].as_array().map(Vec::len), Some(2));
    assert_eq!(next["entries"][1]["parts"][0], "The last day");
    assert_eq!(
        phone.refused(json!({"do": "departures", "limit": 0})),
        "out_of_range at limit"
    );
    phone.ask(json!({"do": "departures_clear"}));
    assert!(list(&phone).is_empty());
}

#[test]
fn the_list_itself_leaves_with_nothing() {
    let phone = somebody_who_lifted();
    phone.ask(json!({"do": "report_make", "form": "note"}));
    phone.ask(json!({"do": "departures_clear"}));
    let made = |form: &str| phone.ask(json!({"do": "report_make", "form": form}))["text"].take();
    let (note, table) = (made("note"), made("csv"));
    phone.ask(json!({"do": "report_make", "form": "pdf", "how": "saved"}));
    assert_eq!((made("note"), made("csv")), (note, table));
}
