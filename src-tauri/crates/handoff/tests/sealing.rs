//! Parcels between paired phones, and parcels under a code.
#![cfg(test)]

mod support;

use handoff::{
    Code, Freshness, LONGEST_VALIDITY_MS, MOST_PAYLOAD, NoRandomness, OpenError, OpenUnpairedError,
    Outgoing, Purpose, Recognised, SealError, Seen, derive_counter, open, open_unpaired, recognise,
    seal, seal_unpaired,
};
use support::{DAY, NOON, clinician, fixed, noise, pair, patient, phone, plan, random};

#[test]
fn a_plan_arrives_and_is_from_whom_it_says() {
    let (here, there) = pair(&clinician(), &patient());
    let parcel = seal(&here, &clinician().keys, &plan(7, b"a plan"), &mut random).unwrap();
    let recipient = here.theirs().key_id();
    let recognised = recognise(&parcel).unwrap();
    assert_eq!(
        recognised,
        Recognised::Paired {
            purpose: Purpose::Plan,
            recipient
        }
    );
    let opened = open(&parcel, &patient().keys, &[there], NOON).unwrap();
    assert_eq!(*opened.payload, b"a plan");
    assert_eq!((opened.purpose, opened.counter), (Purpose::Plan, 7));
    assert_eq!(
        (opened.issued_at_ms, opened.expires_at_ms),
        (NOON, NOON + DAY)
    );
    assert_eq!(opened.sender, here.mine());
}

/// Head 10, recipient 8, route 8, key 32, tag 16, signature 64, checksum 4, numbers and times 31; a stream
/// of bytes that do not pack has five more (RFC 1951, section 3.2.4). Stated in docs/formats/handoff.md.
#[test]
fn costs_173_bytes_beside_the_packed_payload() {
    let (here, _) = pair(&clinician(), &patient());
    let payload = noise(700, 5);
    let counter = derive_counter(None, NOON);
    let what = plan(counter, &payload);
    let parcel = seal(&here, &clinician().keys, &what, &mut random).unwrap();
    assert_eq!(parcel.len(), 700 + 5 + 173);
}

#[test]
fn two_parcels_of_the_same_plan_have_nothing_in_common_that_links_them() {
    let (here, _) = pair(&clinician(), &patient());
    let seal = || seal(&here, &clinician().keys, &plan(7, b"a plan"), &mut random).unwrap();
    let (one, other) = (seal(), seal());
    assert_eq!(one[..18], other[..18], "head and recipient");
    let same = one[18..]
        .iter()
        .zip(&other[18..])
        .filter(|(a, b)| a == b)
        .count();
    assert!(same < 8, "{same} bytes of {}", one.len());
}

#[test]
fn every_flipped_bit_is_refused() {
    let (here, there) = pair(&clinician(), &patient());
    let parcel = seal(&here, &clinician().keys, &plan(7, b"a plan"), &mut random).unwrap();
    for bit in 0..parcel.len() * 8 {
        let mut bad = parcel.clone();
        bad[bit / 8] ^= 1 << (bit % 8);
        let opened = open(&bad, &patient().keys, std::slice::from_ref(&there), NOON);
        let expected = match bit {
            0..32 => vec![OpenError::Foreign],
            // The length: a larger one looks as if the rest were missing.
            56..80 => vec![OpenError::Damaged, OpenError::Truncated],
            _ => vec![OpenError::Damaged],
        };
        assert!(expected.contains(&opened.unwrap_err()), "bit {bit}");
        // With a checksum that fits, as somebody would make who tampers on purpose.
        let covered = bad.len() - 4;
        let checksum = crc32fast::hash(&bad[..covered]).to_be_bytes();
        bad[covered..].copy_from_slice(&checksum);
        if bit < covered * 8 {
            let opened = open(&bad, &patient().keys, std::slice::from_ref(&there), NOON);
            assert!(opened.is_err(), "bit {bit} with a checksum");
        }
    }
}

#[test]
fn every_shortened_parcel_is_refused_as_cut() {
    let (here, there) = pair(&clinician(), &patient());
    let parcel = seal(&here, &clinician().keys, &plan(7, b"a plan"), &mut random).unwrap();
    for end in 1..parcel.len() {
        let opened = open(
            &parcel[..end],
            &patient().keys,
            std::slice::from_ref(&there),
            NOON,
        );
        assert_eq!(opened, Err(OpenError::Truncated), "{end}");
    }
}

#[test]
fn another_device_cannot_open_it_and_says_so() {
    let (here, _) = pair(&clinician(), &patient());
    let parcel = seal(&here, &clinician().keys, &plan(7, b"a plan"), &mut random).unwrap();
    let ben = phone("Ben", handoff::Role::Lift, 3);
    let (_, bens) = pair(&clinician(), &ben);
    assert_eq!(
        open(&parcel, &ben.keys, &[bens], NOON),
        Err(OpenError::WrongRecipient)
    );
    let own = open(&parcel, &clinician().keys, &[here], NOON);
    assert_eq!(own, Err(OpenError::WrongRecipient), "nor can the sender");
}

#[test]
fn a_pairing_that_was_ended_makes_the_sender_unknown() {
    let (here, _) = pair(&clinician(), &patient());
    let parcel = seal(&here, &clinician().keys, &plan(7, b"a plan"), &mut random).unwrap();
    assert_eq!(
        open(&parcel, &patient().keys, &[], NOON),
        Err(OpenError::UnknownSender)
    );
    let other = phone("Physio South", handoff::Role::Treat, 5);
    let (_, with_other) = pair(&other, &patient());
    let opened = open(&parcel, &patient().keys, &[with_other], NOON);
    assert_eq!(opened, Err(OpenError::UnknownSender));
}

/// Whoever knows all public keys and the pairing's id, but not the sender's secret, can seal. The
/// signature inside is what stops them.
#[test]
fn knowing_the_pairing_is_not_enough_to_forge() {
    let (here, there) = pair(&clinician(), &patient());
    let mut forged_secrets = clinician().keys.to_secret_bytes().to_vec();
    forged_secrets[40] ^= 1;
    let forger = handoff::DeviceKeys::from_secret_bytes(&forged_secrets).unwrap();
    let parcel = seal(&here, &forger, &plan(7, b"a plan"), &mut random);
    assert_eq!(parcel, Err(SealError::OtherKeys));
    // The same with a pairing that names the forger's keys as its own.
    let shown = support::Phone {
        keys: forger,
        ..clinician()
    };
    let (forged, _) = pair(&shown, &patient());
    let parcel = seal(&forged, &shown.keys, &plan(7, b"a plan"), &mut random).unwrap();
    let opened = open(&parcel, &patient().keys, &[there], NOON);
    assert_eq!(opened, Err(OpenError::UnknownSender));
}

#[test]
fn expires_to_the_millisecond() {
    let (here, there) = pair(&clinician(), &patient());
    let parcel = seal(&here, &clinician().keys, &plan(7, b"a plan"), &mut random).unwrap();
    let there = [there];
    assert!(open(&parcel, &patient().keys, &there, NOON + DAY - 1).is_ok());
    let late = open(&parcel, &patient().keys, &there, NOON + DAY);
    assert_eq!(late, Err(OpenError::Expired));
}

#[test]
fn refuses_to_seal_what_nobody_could_open() {
    let (here, _) = pair(&clinician(), &patient());
    let refuse = |what: Outgoing<'_>| seal(&here, &clinician().keys, &what, &mut random).err();
    let long = vec![0; MOST_PAYLOAD + 1];
    assert_eq!(refuse(plan(1, &long)), Some(SealError::TooLong));
    for valid in [0, -1, LONGEST_VALIDITY_MS + 1] {
        let expires_at_ms = NOON + valid;
        let what = Outgoing {
            expires_at_ms,
            ..plan(1, b"x")
        };
        assert_eq!(refuse(what), Some(SealError::Times), "{valid}");
    }
    let without = seal(
        &here,
        &clinician().keys,
        &plan(1, b"x"),
        &mut |_: &mut [u8]| Err(NoRandomness),
    );
    assert_eq!(without, Err(SealError::Randomness));
}

#[test]
fn the_longest_payload_passes() {
    let (here, there) = pair(&clinician(), &patient());
    let long = noise(MOST_PAYLOAD, 3);
    let parcel = seal(&here, &clinician().keys, &plan(1, &long), &mut random).unwrap();
    let opened = open(&parcel, &patient().keys, &[there], NOON).unwrap();
    assert_eq!(*opened.payload, long);
}

#[test]
fn newer_older_again_and_replayed_are_told_apart() {
    let (here, there) = pair(&clinician(), &patient());
    let there = [there];
    let opened = |counter, payload: &[u8]| {
        let parcel = seal(
            &here,
            &clinician().keys,
            &plan(counter, payload),
            &mut random,
        )
        .unwrap();
        open(&parcel, &patient().keys, &there, NOON).unwrap()
    };
    let mut seen = Seen::default();
    let (first, second) = (opened(5, b"first"), opened(9, b"second"));
    assert_eq!(seen.judge(&first), Freshness::New);
    seen.accept(&first);
    assert_eq!(seen.judge(&first), Freshness::SameAgain);
    seen.accept(&second);
    assert_eq!(seen.judge(&first), Freshness::Replayed);
    assert_eq!(seen.judge(&opened(7, b"between")), Freshness::Older);
    assert_eq!(seen.judge(&opened(9, b"another")), Freshness::NumberTwice);
    assert_eq!(seen.judge(&opened(5, b"another")), Freshness::NumberTwice);
    assert_eq!(seen.judge(&opened(10, b"third")), Freshness::New);
    // What is not new changes nothing.
    let before = seen.clone();
    seen.accept(&first);
    assert_eq!(seen, before);
    assert_eq!(Seen::from_bytes(&seen.to_bytes()).unwrap(), seen);
    assert!(Seen::from_bytes(&[0xa0]).is_err());
}

#[test]
fn what_was_seen_is_bounded_and_keeps_the_newest() {
    let (here, there) = pair(&clinician(), &patient());
    let there = [there];
    let mut seen = Seen::default();
    for counter in 1..=20 {
        let parcel = seal(&here, &clinician().keys, &plan(counter, b"x"), &mut random).unwrap();
        seen.accept(&open(&parcel, &patient().keys, &there, NOON).unwrap());
    }
    assert_eq!(seen.newest(), Some(20));
    assert!(seen.to_bytes().len() < 400);
}

#[test]
fn numbers_rise_also_when_a_phone_was_brought_back_or_the_clock_is_wrong() {
    let seconds = u64::try_from(NOON / 1000).unwrap();
    assert_eq!(derive_counter(None, NOON), seconds);
    assert_eq!(derive_counter(Some(3), NOON), seconds);
    assert_eq!(derive_counter(Some(seconds), NOON), seconds + 1);
    assert_eq!(derive_counter(Some(seconds + 50), NOON), seconds + 51);
    assert_eq!(derive_counter(Some(3), -1), 4);
    assert_eq!(derive_counter(Some(u64::MAX), NOON), u64::MAX);
}

#[test]
fn a_code_opens_its_parcel_and_no_other() {
    let sealed = seal_unpaired(&plan(1, b"a plan"), &mut random).unwrap();
    let spoken = sealed.code.words().join(" ");
    let code = Code::typed(&spoken).unwrap();
    let opened = open_unpaired(&sealed.parcel, &code, NOON).unwrap();
    assert_eq!(*opened.payload, b"a plan");
    let again = seal_unpaired(&plan(1, b"a plan"), &mut random).unwrap();
    let wrong = open_unpaired(&again.parcel, &code, NOON);
    assert_eq!(wrong, Err(OpenUnpairedError::WrongCode));
    let late = open_unpaired(&sealed.parcel, &code, NOON + DAY);
    assert_eq!(late, Err(OpenUnpairedError::Expired));
}

#[test]
fn a_parcel_of_one_kind_is_not_taken_for_the_other() {
    let (here, there) = pair(&clinician(), &patient());
    let parcel = seal(&here, &clinician().keys, &plan(7, b"a plan"), &mut random).unwrap();
    let sealed = seal_unpaired(&plan(1, b"a plan"), &mut fixed(8)).unwrap();
    let code = sealed.code;
    let opened = open_unpaired(&parcel, &code, NOON);
    assert_eq!(opened, Err(OpenUnpairedError::OtherKind));
    let opened = open(&sealed.parcel, &patient().keys, &[there], NOON);
    assert_eq!(opened, Err(OpenError::OtherKind));
    let offer = clinician().show(1, NOON);
    let opened = open(offer.offer(), &patient().keys, &[], NOON);
    assert_eq!(opened, Err(OpenError::OtherKind));
    assert_eq!(recognise(offer.offer()), Ok(Recognised::Offer));
}
