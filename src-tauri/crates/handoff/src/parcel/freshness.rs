//! Whether what was opened is new, judged on what the caller has kept.

use minicbor::Encoder;

use super::open::Opened;
use crate::cbor::Map;

/// Numbers remembered (house rule: enough to tell a replay of anything a person may still have at hand).
const REMEMBERED: usize = 8;

const COUNTERS: u64 = 1;
const DIGESTS: u64 = 2;

/// How a parcel stands to those accepted before it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Freshness {
    /// Newer than all of them: may be accepted.
    New,
    /// The newest one again: there is nothing to do.
    SameAgain,
    /// Older than the newest one, and not among those remembered.
    Older,
    /// Accepted once before, and a newer one has come since.
    Replayed,
    /// Another content under a number that was used before. The sender's phone may have been brought
    /// back from an old copy; pair again.
    NumberTwice,
}

/// The last numbers accepted, newest last. Kept by the caller for each pairing and purpose, so that a
/// plan and a care plan do not stand in each other's way.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Seen {
    accepted: Vec<(u64, [u8; 32])>,
}

/// Bytes that are not kept numbers.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
#[error("not kept numbers")]
pub struct SeenError;

impl Seen {
    /// How `opened` stands to what was accepted.
    #[must_use]
    pub fn judge(&self, opened: &Opened) -> Freshness {
        let Some((newest, _)) = self.accepted.last() else {
            return Freshness::New;
        };
        if opened.counter > *newest {
            return Freshness::New;
        }
        let known = self
            .accepted
            .iter()
            .find(|(counter, _)| *counter == opened.counter);
        match known {
            Some((_, digest)) if *digest != opened.digest => Freshness::NumberTwice,
            Some((counter, _)) if counter == newest => Freshness::SameAgain,
            Some(_) => Freshness::Replayed,
            None => Freshness::Older,
        }
    }

    /// Remembers `opened` as accepted, if it is new. To be kept in the same step as what was accepted.
    pub fn accept(&mut self, opened: &Opened) {
        if self.judge(opened) == Freshness::New {
            self.accepted.push((opened.counter, opened.digest));
            let surplus = self.accepted.len().saturating_sub(REMEMBERED);
            self.accepted.drain(..surplus);
        }
    }

    /// Remembers `opened` as accepted, if it is new, or older than the newest and not kept: for what may be taken
    /// in any order. Of more than are remembered, the lowest numbers are forgotten.
    pub fn accept_late(&mut self, opened: &Opened) {
        match self.judge(opened) {
            Freshness::New => self.accept(opened),
            Freshness::Older => {
                let at = self
                    .accepted
                    .partition_point(|(counter, _)| *counter < opened.counter);
                self.accepted.insert(at, (opened.counter, opened.digest));
                let surplus = self.accepted.len().saturating_sub(REMEMBERED);
                self.accepted.drain(..surplus);
            }
            Freshness::SameAgain | Freshness::Replayed | Freshness::NumberTwice => {}
        }
    }

    /// The newest number accepted.
    #[must_use]
    pub fn newest(&self) -> Option<u64> {
        self.accepted.last().map(|(counter, _)| *counter)
    }

    /// The canonical bytes, for the vault: a map of numbers (1) and digests (2), newest last.
    #[must_use]
    pub fn to_bytes(&self) -> Vec<u8> {
        let mut encoder = Encoder::new(Vec::new());
        let count = self.accepted.len() as u64;
        // Writing to a Vec cannot fail.
        let written = encoder.map(2).and_then(|e| {
            e.u64(COUNTERS)?.array(count)?;
            for (counter, _) in &self.accepted {
                e.u64(*counter)?;
            }
            e.u64(DIGESTS)?.array(count)?;
            for (_, digest) in &self.accepted {
                e.bytes(digest)?;
            }
            Ok(())
        });
        debug_assert!(written.is_ok());
        encoder.into_writer()
    }

    /// Takes kept numbers back from the vault.
    ///
    /// # Errors
    /// [`SeenError`] for anything that [`to_bytes`](Self::to_bytes) does not write.
    pub fn from_bytes(bytes: &[u8]) -> Result<Self, SeenError> {
        let map = Map::read(bytes, &[COUNTERS, DIGESTS]).map_err(|_| SeenError)?;
        let counters: Vec<u64> = decode(map.item(COUNTERS))?;
        let digests: Vec<minicbor::bytes::ByteArray<32>> = decode(map.item(DIGESTS))?;
        if counters.len() != digests.len()
            || counters.len() > REMEMBERED
            || !counters.is_sorted_by(|one, next| one < next)
        {
            return Err(SeenError);
        }
        let digests = digests.into_iter().map(<[u8; 32]>::from);
        Ok(Self {
            accepted: counters.into_iter().zip(digests).collect(),
        })
    }
}

fn decode<'b, T: minicbor::Decode<'b, ()>>(
    item: Result<&'b [u8], crate::cbor::MapError>,
) -> Result<T, SeenError> {
    minicbor::decode(item.map_err(|_| SeenError)?).map_err(|_| SeenError)
}

/// The number of the next parcel through a pairing in one direction: above the last one used, and at
/// least the clock in seconds since 1970. So a phone brought back from an old copy does not send numbers
/// that the other side has seen.
#[must_use]
pub fn derive_counter(last_used: Option<u64>, now_ms: i64) -> u64 {
    let clock = u64::try_from(now_ms / 1000).unwrap_or(0);
    last_used.map_or(clock, |last| clock.max(last.saturating_add(1)))
}
