//! Checks that bytes are one canonical CBOR item, before anything is read from them.
//!
//! The rules are those of RFC 8949 section 4.2.1 (shortest heads, definite lengths, sorted keys),
//! narrowed to what records use: map keys are unsigned integers; no floats, no tags, no null.
//! A decoder that takes the last of two equal keys, or stops reading before the end, would let two
//! byte strings mean the same record; after this check it cannot.

use crate::RecordError;

/// Deepest nesting accepted. Records use seven levels; the limit bounds the recursion below.
const DEEPEST: u8 = 16;

/// Accepts exactly one canonical item that fills `bytes`.
pub(crate) fn check(bytes: &[u8]) -> Result<(), RecordError> {
    let mut cursor = Cursor { rest: bytes };
    cursor.item(0)?;
    if cursor.rest.is_empty() {
        Ok(())
    } else {
        Err(RecordError::Trailing)
    }
}

struct Cursor<'b> {
    rest: &'b [u8],
}

impl<'b> Cursor<'b> {
    fn item(&mut self, depth: u8) -> Result<(), RecordError> {
        if depth > DEEPEST {
            return Err(RecordError::NotCanonical("nested too deep"));
        }
        let (major, value) = self.head()?;
        match major {
            0 => Ok(()),
            1 if i64::try_from(value).is_ok() => Ok(()),
            1 => Err(RecordError::NotCanonical("a number below the 64-bit range")),
            2 => self.take(value).map(|_| ()),
            3 => match std::str::from_utf8(self.take(value)?) {
                Ok(_) => Ok(()),
                Err(_) => Err(RecordError::NotCanonical("text that is not UTF-8")),
            },
            4 => (0..value).try_for_each(|_| self.item(depth + 1)),
            5 => self.map(value, depth),
            6 => Err(RecordError::NotCanonical("a tag")),
            // Major type 7: only false and true. Floats and null have no use in a record.
            _ if value == 20 || value == 21 => Ok(()),
            _ => Err(RecordError::NotCanonical("a float or a simple value")),
        }
    }

    fn map(&mut self, pairs: u64, depth: u8) -> Result<(), RecordError> {
        let mut previous = None;
        for _ in 0..pairs {
            let (0, key) = self.head()? else {
                return Err(RecordError::NotCanonical(
                    "a key that is not an unsigned integer",
                ));
            };
            match previous {
                Some(before) if before == key => return Err(RecordError::KeyTwice),
                Some(before) if before > key => {
                    return Err(RecordError::NotCanonical("keys out of order"));
                }
                _ => previous = Some(key),
            }
            self.item(depth + 1)?;
        }
        Ok(())
    }

    /// Major type and argument of the next head, in its shortest form.
    fn head(&mut self) -> Result<(u8, u64), RecordError> {
        let (&first, rest) = self.rest.split_first().ok_or(RecordError::Short)?;
        self.rest = rest;
        let major = first >> 5;
        let (value, least) = match first & 0x1f {
            small @ 0..=23 => (u64::from(small), 0),
            24 => (self.argument(1)?, 24),
            // In major type 7 the two- to eight-byte forms are floats.
            25..=27 if major == 7 => {
                return Err(RecordError::NotCanonical("a float or a simple value"));
            }
            25 => (self.argument(2)?, 1 << 8),
            26 => (self.argument(4)?, 1 << 16),
            27 => (self.argument(8)?, 1 << 32),
            _ => {
                return Err(RecordError::NotCanonical(
                    "an indefinite or reserved length",
                ));
            }
        };
        if value < least {
            return Err(RecordError::NotCanonical(
                "a number in a longer form than needed",
            ));
        }
        Ok((major, value))
    }

    fn argument(&mut self, length: u64) -> Result<u64, RecordError> {
        Ok(self
            .take(length)?
            .iter()
            .fold(0, |sum, &byte| (sum << 8) | u64::from(byte)))
    }

    fn take(&mut self, length: u64) -> Result<&'b [u8], RecordError> {
        let length = usize::try_from(length).map_err(|_| RecordError::Short)?;
        let (taken, rest) = self
            .rest
            .split_at_checked(length)
            .ok_or(RecordError::Short)?;
        self.rest = rest;
        Ok(taken)
    }
}
