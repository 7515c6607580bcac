//! What a device shows to be paired with: its card and a number used once.

use crate::card::{Card, CardError};
use crate::parcel::{Header, Kind, RecogniseError, frame_up};

/// Bytes of the number used once.
pub(crate) const NONCE_BYTES: usize = 16;
/// Longest offer, in bytes (house rule: a card with forty characters of four bytes each is below 300).
const LONGEST: usize = 512;

/// A card with a fresh number, as it stands in a symbol.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Offer {
    card: Card,
    nonce: [u8; NONCE_BYTES],
}

/// Why bytes are not an offer.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
#[non_exhaustive]
pub enum OfferError {
    /// Not something this app made.
    #[error("not one of ours")]
    Foreign,
    /// Made by a newer version.
    #[error("made by a newer version")]
    Newer,
    /// Ends too early.
    #[error("ends too early")]
    Truncated,
    /// Changed on the way.
    #[error("damaged")]
    Damaged,
    /// A parcel, not an offer to pair.
    #[error("not an offer to pair")]
    OtherKind,
    /// Whole, but the card in it cannot be used.
    #[error("card: {0}")]
    Card(CardError),
}

impl Offer {
    pub(crate) fn new(card: Card, nonce: [u8; NONCE_BYTES]) -> Self {
        Self { card, nonce }
    }

    /// The whole offer as bytes: header, nonce, card, checksum.
    pub(crate) fn to_bytes(&self) -> Option<Vec<u8>> {
        frame_up(Kind::Offer, 0, &self.signed_part())
    }

    /// Nonce and card, which is what both devices hash.
    pub(crate) fn signed_part(&self) -> Vec<u8> {
        [&self.nonce[..], &self.card.to_bytes()].concat()
    }

    /// Reads an offer.
    ///
    /// # Errors
    /// See [`OfferError`].
    pub fn from_bytes(bytes: &[u8]) -> Result<Self, OfferError> {
        let (header, body) = Header::read(bytes)?;
        if header.kind != Kind::Offer {
            return Err(OfferError::OtherKind);
        }
        if header.purpose != 0 {
            return Err(OfferError::Newer);
        }
        let malformed = OfferError::Card(CardError::Malformed);
        if body.len() > LONGEST {
            return Err(malformed);
        }
        let (nonce, card) = body.split_first_chunk().ok_or(malformed)?;
        let card = Card::from_bytes(card).map_err(|error| match error {
            CardError::Newer => OfferError::Newer,
            other => OfferError::Card(other),
        })?;
        Ok(Self::new(card, *nonce))
    }

    /// The card in it.
    #[must_use]
    pub fn card(&self) -> &Card {
        &self.card
    }
}

impl From<RecogniseError> for OfferError {
    fn from(error: RecogniseError) -> Self {
        match error {
            RecogniseError::Foreign => Self::Foreign,
            RecogniseError::Newer => Self::Newer,
            RecogniseError::Truncated => Self::Truncated,
            RecogniseError::Damaged => Self::Damaged,
        }
    }
}
