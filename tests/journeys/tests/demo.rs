//! Invented data, for looking around: some weeks of lifts, and the question of the next morning.

use journeys::engines::Setting;
use journeys::in_both_engines;
use journeys::person::Answer;
use journeys::phone::Phone;
use serde_json::Value;

in_both_engines!(invented_weeks_can_be_looked_through);

fn invented_weeks_can_be_looked_through(phone: &mut Phone) {
    phone.close();
    phone.set_up(Setting {
        demo: true,
        ..Setting::default()
    });
    phone.start();
    phone.expect_screen("home");
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

fn entries(phone: &Phone) -> u64 {
    let count = "return document.querySelectorAll('[data-entry]').length;";
    phone.run(count, &Value::Null).as_u64().unwrap_or_default()
}
