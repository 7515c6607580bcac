//! Sealing and opening a parcel, what it costs in bytes, and how many frames a camera must see of it.

use handoff::{
    Agreed, Alias, By, Collector, Density, DeviceKeys, NoRandomness, Outgoing, Pairing, Purpose,
    Role, Showing, Shown, Taken, lay_out, open, open_unpaired, seal, seal_unpaired,
};

use crate::clock::{median, quantile, tell, tell_ratio, try_time};
use crate::quarter;
use crate::trouble::Trouble;

/// An invented moment: 25 November 2026, in milliseconds since 1970.
const NOW: i64 = 1_795_597_920_000;
const DAY: i64 = 24 * 60 * 60 * 1000;

/// Bytes of a parcel.
const SIZES: [usize; 4] = [2_000, 5_000, 10_000, 20_000];
/// Frames in a hundred that the camera misses.
const LOSSES: [u32; 3] = [0, 20, 40];
/// Tries of each; each begins somewhere else in the sequence.
const TRIES: u32 = 200;
/// Parcels sealed and opened.
const ROUNDS: usize = 50;
/// More frames than any try takes.
const MOST_FRAMES: u32 = 2_000;

const NAME: &str = "the hand-off";

/// Measures.
///
/// # Errors
/// [`Trouble::Answer`] when something is refused that is in order.
pub(crate) fn measure() -> Result<(), Trouble> {
    println!("bytes  loss   frames in one go     ideal    mean   p95   mean to ideal");
    for size in SIZES {
        for loss in LOSSES {
            until_done(size, loss)?;
        }
    }
    quarter::measure()?;
    sealing()
}

/// A payload sealed for a paired device.
///
/// # Errors
/// [`Trouble::Answer`] when it is refused.
pub(crate) fn sealed(payload: &[u8]) -> Result<Vec<u8>, Trouble> {
    let (keys, pairing) = pair(1, 2)?;
    let what = Outgoing {
        purpose: Purpose::History,
        counter: 7,
        issued_at_ms: NOW,
        expires_at_ms: NOW + DAY,
        payload,
    };
    seal(&pairing, &keys, &what, &mut random).map_err(|_| Trouble::Answer(NAME))
}

/// Frames shown until the parcel is whole, against as many as a perfect code would need.
fn until_done(size: usize, loss: u32) -> Result<(), Trouble> {
    let Ok(Showing::Many(sequence)) = lay_out(&noise(size, 7), Density::Standard) else {
        return Err(Trouble::Answer(NAME));
    };
    let mut chance = Chance(u64::from(loss) + size as u64);
    let mut shown = Vec::new();
    for _ in 0..TRIES {
        let first = chance.below(60_000);
        let mut collector = Collector::new();
        let done = (0..MOST_FRAMES).find(|at| {
            let lost = chance.below(100) < loss;
            !lost
                && matches!(
                    collector.take(&sequence.text(first + at)),
                    Ok(Taken::Whole(_))
                )
        });
        shown.push(f64::from(done.ok_or(Trouble::Answer(NAME))? + 1));
    }
    let needed = sequence.needed() as f64;
    let ideal = needed / (1.0 - f64::from(loss) / 100.0);
    let mean = shown.iter().sum::<f64>() / shown.len() as f64;
    println!(
        "{size:>6} {loss:>4} %  {needed:>16} {ideal:>9.1} {mean:>7.1} {:>5}   {:.3}",
        quantile(&shown, 0.95),
        mean / ideal
    );
    Ok(())
}

/// Both kinds of parcel, in turn.
fn sealing() -> Result<(), Trouble> {
    let failed = |_| Trouble::Answer(NAME);
    let (keys, pairing) = pair(1, 2)?;
    let (keys_there, pairing_there) = pair(2, 1)?;
    let payload = noise(4_000, 3);
    let what = Outgoing {
        purpose: Purpose::Plan,
        counter: 7,
        issued_at_ms: NOW,
        expires_at_ms: NOW + DAY,
        payload: &payload,
    };
    let (mut sealed, mut opened) = (Vec::new(), Vec::new());
    let (mut by_code, mut with_code) = (Vec::new(), Vec::new());
    for _ in 0..ROUNDS {
        sealed
            .push(try_time(|| seal(&pairing, &keys, &what, &mut random)).map_err(|_| failed(()))?);
        let parcel = seal(&pairing, &keys, &what, &mut random).map_err(|_| failed(()))?;
        opened.push(
            try_time(|| {
                open(
                    &parcel,
                    &keys_there,
                    std::slice::from_ref(&pairing_there),
                    NOW,
                )
            })
            .map_err(|_| failed(()))?,
        );
        by_code.push(try_time(|| seal_unpaired(&what, &mut random)).map_err(|_| failed(()))?);
        let parcel = seal_unpaired(&what, &mut random).map_err(|_| failed(()))?;
        with_code.push(
            try_time(|| open_unpaired(&parcel.parcel, &parcel.code, NOW))
                .map_err(|_| failed(()))?,
        );
    }
    tell("seal 4,000 bytes for a paired device", &sealed);
    tell("open it", &opened);
    tell("seal them under a code", &by_code);
    tell("open it", &with_code);
    tell_ratio(
        "a code to a pairing, opening",
        median(&with_code) / median(&opened),
    );
    let paired = seal(&pairing, &keys, &what, &mut random).map_err(|_| failed(()))?;
    let unpaired = seal_unpaired(&what, &mut random).map_err(|_| failed(()))?;
    println!(
        "bytes beside 4,000 that do not pack: paired {}, under a code {}",
        paired.len() - payload.len(),
        unpaired.parcel.len() - payload.len()
    );
    Ok(())
}

/// The keys of an invented device, and its pairing with another.
///
/// # Errors
/// [`Trouble::Answer`] when something is refused that is in order.
pub(crate) fn pair(mine: u8, theirs: u8) -> Result<(DeviceKeys, Pairing), Trouble> {
    let keys =
        |seed: u8| DeviceKeys::from_secret_bytes(&[seed; 64]).map_err(|_| Trouble::Answer(NAME));
    let show = |seed: u8| {
        let alias = Alias::new("Blue Kettle").map_err(|_| Trouble::Answer(NAME))?;
        Shown::begin(
            &keys(seed)?,
            alias,
            Role::Lift,
            NOW,
            &mut |bytes: &mut [u8]| {
                bytes.fill(seed);
                Ok(())
            },
        )
        .map_err(|_| Trouble::Answer(NAME))
    };
    let (shown, other) = (show(mine)?, show(theirs)?);
    let compared = shown
        .scan(other.offer(), &[], NOW)
        .map_err(|_| Trouble::Answer(NAME))?
        .compare(NOW)
        .map_err(|_| Trouble::Answer(NAME))?;
    let Ok(Agreed::One(compared)) = compared.agree(By::Holder, NOW) else {
        return Err(Trouble::Answer(NAME));
    };
    match compared.agree(By::Other, NOW) {
        Ok(Agreed::Both(pairing)) => Ok((keys(mine)?, pairing)),
        _ => Err(Trouble::Answer(NAME)),
    }
}

/// A linear congruential generator (Knuth's constants): the same in every run.
struct Chance(u64);

impl Chance {
    fn below(&mut self, bound: u32) -> u32 {
        self.0 = self
            .0
            .wrapping_mul(6_364_136_223_846_793_005)
            .wrapping_add(1_442_695_040_888_963_407);
        u32::try_from((self.0 >> 33) % u64::from(bound)).unwrap_or(0)
    }
}

/// Bytes that do not pack.
fn noise(length: usize, seed: u64) -> Vec<u8> {
    let mut chance = Chance(seed);
    (0..length)
        .map(|_| u8::try_from(chance.below(256)).unwrap_or(0))
        .collect()
}

/// The operating system's randomness.
#[allow(clippy::disallowed_methods, reason = "stands in for the app's World")]
fn random(bytes: &mut [u8]) -> Result<(), NoRandomness> {
    getrandom::fill(bytes).map_err(|_| NoRandomness)
}
