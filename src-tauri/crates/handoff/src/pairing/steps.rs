//! The steps of a pairing before it is one.

use super::check_words::{self, Derived};
use super::offer::{Offer, OfferError};
use super::{Pairing, check_words::WORDS};
use crate::card::{Alias, Card, CardError, KeyId, Role};
use crate::device_keys::DeviceKeys;
use crate::random::{NoRandomness, Random, make_bytes};

/// How long an offer holds after it was first shown, in milliseconds: five minutes. The fresh numbers
/// must not give anyone time to search for matching words.
pub const VALID_FOR_MS: i64 = 5 * 60 * 1000;

/// Why a pairing goes no further.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
#[non_exhaustive]
pub enum PairError {
    /// What was scanned is no offer.
    #[error("what was scanned: {0}")]
    Offer(OfferError),
    /// What was scanned is this device's own offer.
    #[error("this device's own offer")]
    OwnCard,
    /// More than five minutes since the offer was shown, or the clock went back. Start again.
    #[error("too late")]
    TooLate,
    /// The keys given do not make a card.
    #[error("own card: {0}")]
    Card(CardError),
    /// No random numbers.
    #[error("no random numbers")]
    Randomness,
    /// 64 MiB for the check words could not be had.
    #[error("not enough memory")]
    Memory,
}

/// This device shows its offer.
#[derive(Debug)]
pub struct Shown {
    offer: Offer,
    bytes: Vec<u8>,
    at_ms: i64,
}

/// The other's offer has been read.
#[derive(Debug)]
pub struct Scanned {
    mine: Offer,
    theirs: Offer,
    change: CardChange,
    at_ms: i64,
}

/// How the scanned card stands to the pairings there are.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum CardChange {
    /// Neither keys nor alias are known.
    New,
    /// The same device under the same alias: pairing again replaces the pairing.
    Again,
    /// The same device under another alias.
    Renamed {
        /// What it was called.
        was: Alias,
    },
    /// A known alias with other keys: a new phone, or somebody else who took the name. To be said
    /// loudly, before the words are compared.
    OtherKeys {
        /// The key ids that had this alias so far.
        were: Vec<KeyId>,
    },
}

/// The words are on the screen; nobody, or one side, has agreed.
#[derive(Debug)]
pub struct Compared {
    mine: KeyId,
    theirs: Card,
    words: [&'static str; WORDS],
    pairing_id: [u8; 16],
    at_ms: i64,
    holder_agreed: bool,
    other_agreed: bool,
}

/// Whose word it is that both screens show the same.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum By {
    /// The holder of this device.
    Holder,
    /// The other person, asked by the holder.
    Other,
}

/// After one side agreed.
#[derive(Debug)]
pub enum Agreed {
    /// The other side has yet to.
    One(Compared),
    /// Both have: this is a pairing.
    Both(Pairing),
}

impl Shown {
    /// Makes an offer with a fresh number. `now_ms` is the time since 1970 in milliseconds.
    ///
    /// # Errors
    /// [`PairError::Randomness`], [`PairError::Card`].
    pub fn begin(
        keys: &DeviceKeys,
        alias: Alias,
        role: Role,
        now_ms: i64,
        random: &mut Random<'_>,
    ) -> Result<Self, PairError> {
        let card = keys.card(alias, role).map_err(PairError::Card)?;
        let nonce = make_bytes(random).map_err(|NoRandomness| PairError::Randomness)?;
        let offer = Offer::new(card, nonce);
        let bytes = offer
            .to_bytes()
            .ok_or(PairError::Card(CardError::Malformed))?;
        Ok(Self {
            offer,
            bytes,
            at_ms: now_ms,
        })
    }

    /// The bytes to be drawn as a symbol.
    #[must_use]
    pub fn offer(&self) -> &[u8] {
        &self.bytes
    }

    /// Milliseconds left at `now_ms`; zero when void.
    #[must_use]
    pub fn left_ms(&self, now_ms: i64) -> i64 {
        left_ms(self.at_ms, now_ms)
    }

    /// Takes the other device's offer. This offer stays as it is, so a bad scan can be tried again.
    ///
    /// # Errors
    /// [`PairError::TooLate`], [`PairError::Offer`], [`PairError::OwnCard`].
    pub fn scan(&self, offer: &[u8], known: &[Pairing], now_ms: i64) -> Result<Scanned, PairError> {
        in_time(self.at_ms, now_ms)?;
        let theirs = Offer::from_bytes(offer).map_err(PairError::Offer)?;
        let mine = self.offer.card();
        if theirs.card().sealing_key() == mine.sealing_key()
            || theirs.card().signing_key() == mine.signing_key()
        {
            return Err(PairError::OwnCard);
        }
        Ok(Scanned {
            mine: self.offer.clone(),
            change: compare_to(known, theirs.card()),
            theirs,
            at_ms: self.at_ms,
        })
    }
}

impl Scanned {
    /// The other's card.
    #[must_use]
    pub fn theirs(&self) -> &Card {
        self.theirs.card()
    }

    /// How that card stands to the pairings there are.
    #[must_use]
    pub fn change(&self) -> &CardChange {
        &self.change
    }

    /// Derives the check words. Takes a while: 64 MiB and three passes of Argon2id.
    ///
    /// # Errors
    /// [`PairError::TooLate`], [`PairError::Memory`].
    pub fn compare(self, now_ms: i64) -> Result<Compared, PairError> {
        in_time(self.at_ms, now_ms)?;
        let Derived { words, pairing_id } =
            check_words::derive(&self.mine, &self.theirs).map_err(|_| PairError::Memory)?;
        Ok(Compared {
            mine: self.mine.card().key_id(),
            theirs: self.theirs.card().clone(),
            words,
            pairing_id,
            at_ms: self.at_ms,
            holder_agreed: false,
            other_agreed: false,
        })
    }
}

impl Compared {
    /// The words to show; the other screen must show the same.
    #[must_use]
    pub fn words(&self) -> [&'static str; WORDS] {
        self.words
    }

    /// The other's card.
    #[must_use]
    pub fn theirs(&self) -> &Card {
        &self.theirs
    }

    /// One side says that the words are the same. If they are not, drop this instead.
    ///
    /// # Errors
    /// [`PairError::TooLate`]: the pairing is void and must start again.
    pub fn agree(mut self, by: By, now_ms: i64) -> Result<Agreed, PairError> {
        in_time(self.at_ms, now_ms)?;
        match by {
            By::Holder => self.holder_agreed = true,
            By::Other => self.other_agreed = true,
        }
        if self.holder_agreed && self.other_agreed {
            let pairing = Pairing::new(self.mine, self.theirs, self.pairing_id, now_ms);
            Ok(Agreed::Both(pairing))
        } else {
            Ok(Agreed::One(self))
        }
    }
}

fn left_ms(at_ms: i64, now_ms: i64) -> i64 {
    match now_ms.checked_sub(at_ms) {
        Some(gone @ 0..VALID_FOR_MS) => VALID_FOR_MS - gone,
        _ => 0,
    }
}

fn in_time(at_ms: i64, now_ms: i64) -> Result<(), PairError> {
    if left_ms(at_ms, now_ms) > 0 {
        Ok(())
    } else {
        Err(PairError::TooLate)
    }
}

fn compare_to(known: &[Pairing], card: &Card) -> CardChange {
    let has_both_keys = |pairing: &&Pairing| pairing.theirs().keys() == card.keys();
    if let Some(same) = known.iter().find(has_both_keys) {
        let was = same.theirs().alias();
        return if was == card.alias() {
            CardChange::Again
        } else {
            CardChange::Renamed { was: was.clone() }
        };
    }
    let were: Vec<KeyId> = known
        .iter()
        .map(Pairing::theirs)
        .filter(|theirs| theirs.alias().sounds_like(card.alias()))
        .map(Card::key_id)
        .collect();
    if were.is_empty() {
        CardChange::New
    } else {
        CardChange::OtherKeys { were }
    }
}
