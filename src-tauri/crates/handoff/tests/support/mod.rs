//! Two invented phones and what passes between them.
#![allow(dead_code, reason = "each test file uses its own share")]
#![allow(
    clippy::unwrap_used,
    clippy::panic,
    reason = "a test may stop at the first surprise"
)]

use handoff::{
    Agreed, Alias, By, DeviceKeys, NoRandomness, Outgoing, Pairing, Purpose, Role, Shown,
};

/// 25 November 2026, 9:12 UTC, in milliseconds since 1970.
pub(crate) const NOON: i64 = 1_795_597_920_000;
/// One day in milliseconds.
pub(crate) const DAY: i64 = 24 * 60 * 60 * 1000;

/// A device with its keys.
pub(crate) struct Phone {
    pub(crate) keys: DeviceKeys,
    pub(crate) alias: &'static str,
    pub(crate) role: Role,
}

/// A phone whose keys are `seed` over and over: the same in every run.
pub(crate) fn phone(alias: &'static str, role: Role, seed: u8) -> Phone {
    Phone {
        keys: DeviceKeys::from_secret_bytes(&[seed; 64]).unwrap(),
        alias,
        role,
    }
}

pub(crate) fn clinician() -> Phone {
    phone("Physio North", Role::Treat, 1)
}

pub(crate) fn patient() -> Phone {
    phone("Ada", Role::Lift, 2)
}

impl Phone {
    /// Starts a pairing with a number used once made of `nonce`.
    pub(crate) fn show(&self, nonce: u8, now_ms: i64) -> Shown {
        let alias = Alias::new(self.alias).unwrap();
        Shown::begin(&self.keys, alias, self.role, now_ms, &mut fixed(nonce)).unwrap()
    }
}

/// Both phones scan each other, both people agree.
pub(crate) fn pair(one: &Phone, other: &Phone) -> (Pairing, Pairing) {
    let (shown, shown_there) = (one.show(11, NOON), other.show(22, NOON));
    let here = finish(&shown, shown_there.offer());
    let there = finish(&shown_there, shown.offer());
    (here, there)
}

fn finish(shown: &Shown, offer: &[u8]) -> Pairing {
    let compared = shown.scan(offer, &[], NOON).unwrap().compare(NOON).unwrap();
    let Agreed::One(compared) = compared.agree(By::Holder, NOON).unwrap() else {
        panic!("one side is not enough")
    };
    let Agreed::Both(pairing) = compared.agree(By::Other, NOON).unwrap() else {
        panic!("both agreed")
    };
    pairing
}

/// A plan of this number, valid for a day.
pub(crate) fn plan(counter: u64, payload: &[u8]) -> Outgoing<'_> {
    Outgoing {
        purpose: Purpose::Plan,
        counter,
        issued_at_ms: NOON,
        expires_at_ms: NOON + DAY,
        payload,
    }
}

/// Randomness that is none: every byte is `value`.
pub(crate) fn fixed(value: u8) -> impl FnMut(&mut [u8]) -> Result<(), NoRandomness> {
    move |bytes| {
        bytes.fill(value);
        Ok(())
    }
}

/// The operating system's randomness.
#[allow(clippy::disallowed_methods, reason = "stands in for the app's World")]
pub(crate) fn random(bytes: &mut [u8]) -> Result<(), NoRandomness> {
    getrandom::fill(bytes).map_err(|_| NoRandomness)
}

/// Bytes that do not pack, the same in every run (a linear congruential generator, Knuth's constants).
pub(crate) fn noise(length: usize, seed: u64) -> Vec<u8> {
    let mut state = seed;
    (0..length)
        .map(|_| {
            state = state
                .wrapping_mul(6_364_136_223_846_793_005)
                .wrapping_add(1_442_695_040_888_963_407);
            (state >> 56) as u8
        })
        .collect()
}

pub(crate) fn hex(bytes: &[u8]) -> String {
    bytes.iter().map(|byte| format!("{byte:02x}")).collect()
}

pub(crate) fn bytes(hex: &str) -> Vec<u8> {
    let digits: Vec<char> = hex.chars().filter(|c| !c.is_whitespace()).collect();
    digits
        .chunks(2)
        .map(|pair| u8::from_str_radix(&pair.iter().collect::<String>(), 16).unwrap())
        .collect()
}
