//! Invented data, for looking around: some weeks of lifts, the question of the next morning, and people who are helped.

use journeys::engines::Setting;
use journeys::in_both_engines;
use journeys::person::Answer;
use journeys::phone::Phone;
use serde_json::json;

in_both_engines!(
    invented_weeks_can_be_looked_through,
    invented_people_are_there_with_plans_and_a_shift,
);

/// Starts with the invented data.
fn fill(phone: &mut Phone) {
    phone.close();
    phone.set_up(Setting {
        demo: true,
        ..Setting::default()
    });
    phone.start();
    phone.expect_screen("home");
}

fn invented_weeks_can_be_looked_through(phone: &mut Phone) {
    fill(phone);
    phone.picture("home");

    phone.count_taps_anew();
    let morning = phone.tap("[data-morning]");
    assert!(morning.starts_with("morning/"), "{morning}");
    phone.picture("morning");
    phone.count_taps_anew();
    phone.give(Answer::Pain(2));
    phone.picture("usual");
    phone.give(Answer::Pick("yes"));
    assert!(
        phone.taps() <= 2,
        "the next morning takes {} taps",
        phone.taps()
    );
    phone.expect_screen("home");
    assert!(!phone.has("[data-morning]"), "it is asked once");

    phone.tap("a[href='#/history']");
    phone.picture("history");
    let all = entries(phone);
    assert!(all > 3, "{all} entries");
    phone.open_all();
    phone.touch("input[name=show][value=left]");
    phone.wait_until("fewer entries", |phone| entries(phone) < all);
    let left = entries(phone);
    assert!(left > 0);
    phone.touch("input[name=show][value=done]");
    phone.wait_until("the other entries", |phone| entries(phone) == all - left);
    phone.picture("history-done");
}

/// The invented home-care worker: three people, a care plan, and yesterday's shift.
fn invented_people_are_there_with_plans_and_a_shift(phone: &mut Phone) {
    fill(phone);
    phone.open("people");
    phone.picture("people");
    assert_eq!(count(phone, "[data-person]"), 3);
    phone.tap("[data-person]");
    phone.expect("[data-move=bed_to_chair]");
    phone.picture("person");
    phone.open("shift");
    phone.picture("shift");
    assert_eq!(count(phone, "[data-entry]"), 4);
    phone.tap("#hand-over");
    phone.open_all();
    phone.picture("handed-over");
    phone.open("what-left");
    phone.expect(".gone__entry");
    phone.picture("what-left");
}

fn entries(phone: &Phone) -> u64 {
    count(phone, "[data-entry]")
}

fn count(phone: &Phone, selector: &str) -> u64 {
    let count = "return document.querySelectorAll(arguments[0]).length;";
    let found = phone.run(count, &json!(selector));
    found.as_u64().unwrap_or_default()
}
