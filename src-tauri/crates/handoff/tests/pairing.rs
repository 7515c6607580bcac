//! Two people pair their phones.
#![cfg(test)]

mod support;

use handoff::{
    Agreed, By, CardChange, Compared, DeviceKeys, OfferError, PairError, Pairing, Role, SealError,
    Shown, VALID_FOR_MS, seal,
};
use support::{NOON, clinician, fixed, pair, patient, phone, plan};

fn compared(shown: &Shown, offer: &[u8]) -> Compared {
    shown.scan(offer, &[], NOON).unwrap().compare(NOON).unwrap()
}

#[test]
fn both_screens_show_the_same_words_whoever_scans_first() {
    let (one, other) = (clinician().show(1, NOON), patient().show(2, NOON));
    let here = compared(&one, other.offer());
    let there = compared(&other, one.offer());
    assert_eq!(here.words(), there.words());
    assert_eq!(here.theirs().alias().as_str(), "Ada");
    assert_eq!(there.theirs().role(), Role::Treat);
}

#[test]
fn a_fresh_number_gives_other_words() {
    let other = patient().show(2, NOON);
    let first = compared(&clinician().show(1, NOON), other.offer());
    let again = compared(&clinician().show(3, NOON), other.offer());
    assert_ne!(first.words(), again.words());
}

#[test]
fn somebody_between_the_screens_makes_the_words_differ() {
    let (one, other) = (clinician().show(1, NOON), patient().show(2, NOON));
    let between = phone("Ada", Role::Lift, 66).show(2, NOON);
    let here = compared(&one, between.offer());
    let there = compared(&other, one.offer());
    assert_ne!(here.words(), there.words());
}

#[test]
fn one_side_alone_is_not_enough_however_often_it_agrees() {
    let (one, other) = (clinician().show(1, NOON), patient().show(2, NOON));
    let mut waiting = compared(&one, other.offer());
    for _ in 0..3 {
        let Agreed::One(still) = waiting.agree(By::Other, NOON).unwrap() else {
            panic!("only the other side agreed")
        };
        waiting = still;
    }
    assert!(matches!(
        waiting.agree(By::Holder, NOON),
        Ok(Agreed::Both(_))
    ));
}

#[test]
fn is_void_after_five_minutes_at_every_step() {
    let late = NOON + VALID_FOR_MS;
    let (one, other) = (clinician().show(1, NOON), patient().show(2, NOON));
    assert_eq!(one.left_ms(late - 1), 1);
    assert_eq!(one.left_ms(late), 0);
    let scanned = one.scan(other.offer(), &[], late);
    assert_eq!(scanned.err(), Some(PairError::TooLate));
    let scanned = one.scan(other.offer(), &[], late - 1).unwrap();
    assert_eq!(scanned.compare(late).err(), Some(PairError::TooLate));
    let words = compared(&one, other.offer());
    assert_eq!(
        words.agree(By::Holder, late).err(),
        Some(PairError::TooLate)
    );
}

#[test]
fn a_clock_that_went_back_makes_it_void() {
    let (one, other) = (clinician().show(1, NOON), patient().show(2, NOON));
    let scanned = one.scan(other.offer(), &[], NOON - 1);
    assert_eq!(scanned.err(), Some(PairError::TooLate));
    let scanned = one.scan(other.offer(), &[], i64::MIN);
    assert_eq!(scanned.err(), Some(PairError::TooLate));
}

#[test]
fn refuses_its_own_offer_and_what_is_no_offer() {
    let one = clinician().show(1, NOON);
    let scanned = one.scan(one.offer(), &[], NOON);
    assert_eq!(scanned.err(), Some(PairError::OwnCard));
    let scanned = one.scan(b"https", &[], NOON);
    assert_eq!(scanned.err(), Some(PairError::Offer(OfferError::Foreign)));
    // After a bad scan the same offer can still be used.
    assert!(one.scan(patient().show(2, NOON).offer(), &[], NOON).is_ok());
}

#[test]
fn says_how_the_card_stands_to_those_known() {
    let (known, _) = pair(&clinician(), &patient());
    let known = [known];
    let one = clinician().show(1, NOON);
    let change = |other: support::Phone| {
        let offer = other.show(2, NOON);
        one.scan(offer.offer(), &known, NOON)
            .unwrap()
            .change()
            .clone()
    };
    assert_eq!(change(patient()), CardChange::Again);
    assert_eq!(change(phone("Ben", Role::Lift, 3)), CardChange::New);
    let was = known[0].theirs().alias().clone();
    assert_eq!(
        change(phone("Ada B.", Role::Lift, 2)),
        CardChange::Renamed { was }
    );
    let were = vec![known[0].theirs().key_id()];
    for alias in ["Ada", "ADA", "ada"] {
        let changed = change(phone(alias, Role::Lift, 4));
        assert_eq!(
            changed,
            CardChange::OtherKeys { were: were.clone() },
            "{alias}"
        );
    }
}

#[test]
fn a_kept_pairing_comes_back_and_anything_else_does_not() {
    let (pairing, _) = pair(&clinician(), &patient());
    let kept = pairing.to_bytes();
    assert_eq!(Pairing::from_bytes(&kept).unwrap(), pairing);
    for end in 0..kept.len() {
        assert!(Pairing::from_bytes(&kept[..end]).is_err(), "{end}");
    }
    assert!(Pairing::from_bytes(&[&kept[..], &[0]].concat()).is_err());
}

#[test]
fn both_sides_hold_the_same_pairing_with_each_other() {
    let (here, there) = pair(&clinician(), &patient());
    assert_eq!(here.id(), there.id());
    assert_eq!(here.mine(), there.theirs().key_id());
    assert_eq!(there.mine(), here.theirs().key_id());
}

#[test]
fn after_a_new_install_the_old_pairing_cannot_seal() {
    let (pairing, _) = pair(&clinician(), &patient());
    let new = DeviceKeys::make(&mut support::random).unwrap();
    let sealed = seal(&pairing, &new, &plan(1, b"x"), &mut fixed(9));
    assert_eq!(sealed, Err(SealError::OtherKeys));
}
