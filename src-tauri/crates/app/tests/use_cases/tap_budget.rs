//! How many taps it takes from the start button to the advice: the day's first at most 15, then at most 8,
//! a saved task at most 3.

use crate::phone::TestPhone;
use crate::script::Script;
use serde_json::json;

#[test]
fn the_first_lift_of_the_day_takes_at_most_fifteen_taps() {
    let phone = TestPhone::with_an_owner("orchard");
    let walked = phone.walk(&Script::ordinary(), None);
    assert!(walked.taps <= 15, "{} taps: {:?}", walked.taps, walked.met);
    assert_eq!(walked.page["page"], "advice");
}

#[test]
fn the_day_on_which_the_whole_list_is_due_takes_no_more() {
    let phone = TestPhone::with_an_owner("orchard");
    phone.later(8 * 24 * 60);
    let walked = phone.walk(&Script::ordinary(), None);
    assert!(walked.taps <= 15, "{} taps: {:?}", walked.taps, walked.met);
}

#[test]
fn a_new_lift_with_todays_body_kept_takes_at_most_eight_taps() {
    let phone = TestPhone::with_an_owner("orchard");
    phone.lift(&Script::ordinary());
    phone.later(60);
    let walked = phone.walk(&Script::ordinary(), None);
    assert!(walked.taps <= 8, "{} taps: {:?}", walked.taps, walked.met);
    assert_eq!(walked.page["page"], "advice");
}

#[test]
fn a_saved_task_takes_at_most_three_taps() {
    let phone = TestPhone::with_an_owner("orchard");
    let id = phone.lift(&Script::ordinary());
    let saved = phone.ask(json!({"do": "saved_keep", "name": "Box", "from": id}))["id"].as_i64();
    phone.later(60);
    let walked = phone.walk(&Script::ordinary(), saved);
    assert!(walked.taps <= 3, "{} taps: {:?}", walked.taps, walked.met);
    assert_eq!(walked.page["page"], "advice");
    assert_eq!(walked.page["saved"], json!(saved));
}

#[test]
fn a_bad_day_takes_one_page_more_and_no_lift_is_worth_skipping_it() {
    let phone = TestPhone::with_an_owner("orchard");
    let flare = Script::ordinary().but("back_state", json!({"choice": "flare"}));
    assert!(phone.walk(&flare, None).taps <= 16);
    assert!(
        phone.walk(&flare, None).taps <= 8,
        "the short list holds as long as the body"
    );
}
