//! Takes the texts of symbols until a parcel is whole.

use super::frame::{Frame, NotAFrame};
use super::session::{Session, Step};
use crate::base45;
use crate::parcel::{RecogniseError, recognise};

/// Parcels collected side by side (house rule). One frame of another parcel, shown by mistake or on
/// purpose, must not throw away what is in; a stranger's frames must not take memory without end.
const MOST_SESSIONS: usize = 3;
/// Longest text of a symbol, in characters: version 40, level L, alphanumeric (ISO/IEC 18004, table 7).
const LONGEST_TEXT: usize = 4296;

/// How much of a parcel is in.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Progress {
    /// Symbols in hand. May go past `needed` by a few.
    pub in_hand: usize,
    /// Symbols that are needed.
    pub needed: usize,
}

/// What a text led to.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Taken {
    /// A whole parcel or offer: open it.
    Whole(Vec<u8>),
    /// A frame of a sequence: go on.
    Part(Progress),
    /// The frames of this sequence do not fit together: they were thrown away, go on.
    Spoiled,
}

/// Why a text was put aside. What is in hand stays.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
#[non_exhaustive]
pub enum FrameError {
    /// A symbol of something else.
    #[error("not one of ours")]
    Foreign,
    /// Made by a newer version.
    #[error("made by a newer version")]
    Newer,
    /// Ends too early.
    #[error("ends too early")]
    Truncated,
    /// Its checksum does not fit.
    #[error("damaged")]
    Damaged,
    /// Whole, with numbers that no sender of ours writes.
    #[error("out of bounds")]
    OutOfBounds,
}

/// What is in so far. Lives as long as the scan screen is open.
#[derive(Debug, Default)]
pub struct Collector {
    /// The one fed last comes last.
    sessions: Vec<Session>,
}

impl Collector {
    /// Nothing yet.
    #[must_use]
    pub fn new() -> Self {
        Self::default()
    }

    /// Takes the text of one symbol.
    ///
    /// # Errors
    /// See [`FrameError`].
    pub fn take(&mut self, text: &str) -> Result<Taken, FrameError> {
        if text.len() > LONGEST_TEXT {
            return Err(FrameError::Foreign);
        }
        let bytes = base45::decode(text).map_err(|_| FrameError::Foreign)?;
        match Frame::from_bytes(&bytes) {
            Ok(frame) => Ok(self.take_frame(frame)),
            Err(NotAFrame::Foreign) => {
                recognise(&bytes)?;
                Ok(Taken::Whole(bytes))
            }
            Err(NotAFrame::Newer) => Err(FrameError::Newer),
            Err(NotAFrame::Damaged) => Err(FrameError::Damaged),
            Err(NotAFrame::OutOfBounds) => Err(FrameError::OutOfBounds),
        }
    }

    /// Throws away what is in.
    pub fn clear(&mut self) {
        self.sessions.clear();
    }

    fn take_frame(&mut self, frame: Frame) -> Taken {
        let shape = frame.shape;
        let known = self
            .sessions
            .iter()
            .position(|session| session.shape == shape);
        let mut session = match known {
            Some(at) => self.sessions.remove(at),
            None => Session::new(shape),
        };
        let taken = match session.take(frame) {
            Step::Whole(parcel) => return Taken::Whole(parcel),
            Step::Spoiled => Taken::Spoiled,
            Step::More => Taken::Part(Progress {
                in_hand: session.in_hand(),
                needed: shape.needed(),
            }),
        };
        if self.sessions.len() >= MOST_SESSIONS {
            self.sessions.remove(0);
        }
        self.sessions.push(session);
        taken
    }
}

impl From<RecogniseError> for FrameError {
    fn from(error: RecogniseError) -> Self {
        match error {
            RecogniseError::Foreign => Self::Foreign,
            RecogniseError::Newer => Self::Newer,
            RecogniseError::Truncated => Self::Truncated,
            RecogniseError::Damaged => Self::Damaged,
        }
    }
}
