//! What ends a walk at once: somebody on the floor, a new sign, a no, a fall.

use super::{choice, ids, report, somebody, ticks, walk, worker};
use serde_json::json;

#[test]
fn on_the_floor_the_check_comes_first_and_nobody_is_lifted_by_hand() {
    let phone = worker("willow");
    let person = somebody(&phone, "A7");
    let start = phone.ask(json!({"do": "move_start", "person": person, "move": "floor_to_chair"}));
    assert_eq!(start["question"]["id"], "unhurt");
    assert_eq!(
        start["facts"].as_array().map(Vec::len),
        Some(4),
        "what to look at"
    );

    let hurt = [("unhurt", choice("hurt"))];
    let (page, _, _) = walk(&phone, person, "floor_to_chair", &hurt);
    assert_eq!(page["card"]["urgency"], "emergency");
    assert_eq!(page["card"]["who"][0]["id"], "emergency_number");

    let not_looked = [("unhurt", choice("not_looked"))];
    let (page, _, _) = walk(&phone, person, "floor_to_chair", &not_looked);
    assert_eq!(page["card"]["outcome"], "do_not_lift");

    for (here, way) in [
        (ticks(&["second", "third"]), None),
        (ticks(&["second", "hoist"]), Some("hoist_two")),
    ] {
        let stays = [
            ("unhurt", choice("unhurt")),
            ("new", choice("nothing")),
            ("same", choice("changed")),
            ("independent", choice("no")),
            ("here", here),
        ];
        let (page, _, _) = walk(&phone, person, "floor_to_chair", &stays);
        assert_eq!(ids(&page, "ways"), way.into_iter().collect::<Vec<_>>());
        assert!(ids(&page, "reasons").contains(&"never_from_floor") || way.is_some());
    }
}

#[test]
fn a_new_sign_or_a_no_ends_it_at_once() {
    let phone = worker("willow");
    let person = somebody(&phone, "A7");
    let dizzy = [("new", choice("in_them")), ("signs", ticks(&["dizzy"]))];
    let (page, met, _) = walk(&phone, person, "bed_to_chair", &dizzy);
    assert_eq!(met, ["new", "signs"]);
    assert_eq!(page["card"]["outcome"], "do_not_lift");
    assert_eq!(page["card"]["urgency"], "same_day");
    assert!(report(&phone).contains("New today: Dizzy"));

    let no = [("new", choice("they_say_no"))];
    let (page, _, _) = walk(&phone, person, "bed_to_chair", &no);
    assert!(ids(&page, "reasons").contains(&"client_says_no"));

    let chest = [
        ("new", choice("in_them")),
        ("signs", ticks(&["chest_pain"])),
    ];
    let (page, _, _) = walk(&phone, person, "bed_to_chair", &chest);
    assert_eq!(page["card"]["urgency"], "emergency");
}

#[test]
fn catching_is_answered_at_once() {
    let phone = worker("willow");
    let person = somebody(&phone, "A7");
    let (page, met, _) = walk(&phone, person, "catch", &[]);
    assert!(met.is_empty());
    assert_eq!(
        page["card"]["headline"],
        "Do not catch them. Guide the fall."
    );
}
