//! Maps with integer keys in canonical CBOR (RFC 8949 section 4.2.1), read strictly.
//!
//! A decoder that takes the last of two equal keys, or stops before the end, would let two byte strings
//! mean the same card. So the whole is checked first: one map that fills the bytes, keys in order and
//! once, shortest heads, no floats, tags, null or indefinite lengths. Unknown keys are passed over,
//! unless key 0 lists them as "must be understood".

use std::collections::BTreeMap;

/// Deepest nesting accepted: an offer's parts use three levels.
const DEEPEST: u8 = 8;
/// The key of the list of keys that a reader must know.
const MUST: u64 = 0;

/// Why bytes are not such a map.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum MapError {
    /// Not one canonical map.
    NotCanonical,
    /// Names a key that must be understood and is not.
    MustUnderstand,
    /// A field is missing or of another type.
    Field,
}

/// The fields of one map, by key.
pub(crate) struct Map<'b>(BTreeMap<u64, &'b [u8]>);

impl<'b> Map<'b> {
    /// Reads a map whose known keys are `known`.
    pub(crate) fn read(bytes: &'b [u8], known: &[u64]) -> Result<Self, MapError> {
        let mut cursor = Cursor { rest: bytes };
        let fields = cursor.fields(0).ok_or(MapError::NotCanonical)?;
        if !cursor.rest.is_empty() {
            return Err(MapError::NotCanonical);
        }
        let map = Self(fields);
        if let Some(must) = map.0.get(&MUST) {
            let must: Vec<u64> = minicbor::decode(must).map_err(|_| MapError::Field)?;
            if must.iter().any(|key| !known.contains(key)) {
                return Err(MapError::MustUnderstand);
            }
        }
        Ok(map)
    }

    /// The raw item under `key`.
    pub(crate) fn item(&self, key: u64) -> Result<&'b [u8], MapError> {
        self.0.get(&key).copied().ok_or(MapError::Field)
    }

    /// The byte string under `key`.
    pub(crate) fn bytes(&self, key: u64) -> Result<&'b [u8], MapError> {
        minicbor::Decoder::new(self.item(key)?)
            .bytes()
            .map_err(|_| MapError::Field)
    }

    /// The byte string of exactly `N` bytes under `key`.
    pub(crate) fn array<const N: usize>(&self, key: u64) -> Result<[u8; N], MapError> {
        self.bytes(key)?.try_into().map_err(|_| MapError::Field)
    }

    /// The text under `key`.
    pub(crate) fn text(&self, key: u64) -> Result<&'b str, MapError> {
        minicbor::decode(self.item(key)?).map_err(|_| MapError::Field)
    }

    /// The unsigned number under `key`.
    pub(crate) fn unsigned(&self, key: u64) -> Result<u64, MapError> {
        minicbor::decode(self.item(key)?).map_err(|_| MapError::Field)
    }

    /// The signed number under `key`.
    pub(crate) fn signed(&self, key: u64) -> Result<i64, MapError> {
        minicbor::decode(self.item(key)?).map_err(|_| MapError::Field)
    }
}

struct Cursor<'b> {
    rest: &'b [u8],
}

impl<'b> Cursor<'b> {
    fn fields(&mut self, depth: u8) -> Option<BTreeMap<u64, &'b [u8]>> {
        let (5, pairs) = self.head()? else {
            return None;
        };
        let mut fields = BTreeMap::new();
        for _ in 0..pairs {
            let (0, key) = self.head()? else {
                return None;
            };
            if fields
                .last_key_value()
                .is_some_and(|(last, _)| *last >= key)
            {
                return None;
            }
            let before = self.rest;
            self.item(depth + 1)?;
            let length = before.len() - self.rest.len();
            fields.insert(key, before.get(..length)?);
        }
        Some(fields)
    }

    fn item(&mut self, depth: u8) -> Option<()> {
        if depth > DEEPEST {
            return None;
        }
        if self.rest.first().is_some_and(|first| first >> 5 == 5) {
            return self.fields(depth).map(|_| ());
        }
        let (major, value) = self.head()?;
        match major {
            0 => Some(()),
            1 => i64::try_from(value).ok().map(|_| ()),
            2 => self.take(value).map(|_| ()),
            3 => std::str::from_utf8(self.take(value)?).ok().map(|_| ()),
            4 => (0..value).try_for_each(|_| self.item(depth + 1)),
            7 if value == 20 || value == 21 => Some(()),
            _ => None,
        }
    }

    /// Major type and argument of the next head, in its shortest form.
    fn head(&mut self) -> Option<(u8, u64)> {
        let [first] = *self.take(1)? else {
            return None;
        };
        let major = first >> 5;
        let (value, least) = match first & 0x1f {
            small @ 0..=23 => (u64::from(small), 0),
            // In major type 7 the longer forms are floats and unassigned values.
            _ if major == 7 => return None,
            24 => (self.argument(1)?, 24),
            25 => (self.argument(2)?, 1 << 8),
            26 => (self.argument(4)?, 1 << 16),
            27 => (self.argument(8)?, 1 << 32),
            _ => return None,
        };
        (value >= least).then_some((major, value))
    }

    fn argument(&mut self, length: u64) -> Option<u64> {
        let bytes = self.take(length)?;
        Some(
            bytes
                .iter()
                .fold(0, |sum, &byte| (sum << 8) | u64::from(byte)),
        )
    }

    fn take(&mut self, length: u64) -> Option<&'b [u8]> {
        let (taken, rest) = self.rest.split_at_checked(usize::try_from(length).ok()?)?;
        self.rest = rest;
        Some(taken)
    }
}

#[cfg(test)]
mod tests {
    use super::{Map, MapError};

    #[test]
    fn reads_fields_and_passes_over_unknown_ones() {
        // {1: 7, 2: h'0102', 9: [true]}
        let bytes = [0xa3, 1, 7, 2, 0x42, 1, 2, 9, 0x81, 0xf5];
        let map = Map::read(&bytes, &[1, 2]).unwrap();
        assert_eq!(map.unsigned(1), Ok(7));
        assert_eq!(map.array(2), Ok([1, 2]));
        assert_eq!(map.unsigned(3), Err(MapError::Field));
        assert_eq!(map.array::<3>(2), Err(MapError::Field));
    }

    #[test]
    fn refuses_a_key_it_must_understand() {
        let bytes = [0xa2, 0, 0x81, 9, 9, 1];
        assert_eq!(
            Map::read(&bytes, &[1]).err(),
            Some(MapError::MustUnderstand)
        );
        assert!(Map::read(&bytes, &[9]).is_ok());
    }

    /// `minicbor` alone takes the last of two equal keys and does not look past the end.
    #[test]
    fn refuses_what_a_lenient_decoder_takes() {
        let refused: [(&str, &[u8]); 9] = [
            ("a key twice", &[0xa2, 1, 7, 1, 8]),
            ("keys out of order", &[0xa2, 2, 7, 1, 8]),
            ("bytes after the end", &[0xa1, 1, 7, 0]),
            ("a number in a long form", &[0xa1, 1, 0x18, 7]),
            ("an indefinite length", &[0xbf, 1, 7, 0xff]),
            ("a float", &[0xa1, 1, 0xf9, 0, 0]),
            ("a tag", &[0xa1, 1, 0xc0, 7]),
            ("null", &[0xa1, 1, 0xf6]),
            ("text that is not UTF-8", &[0xa1, 1, 0x61, 0xff]),
        ];
        for (fault, bytes) in refused {
            assert_eq!(
                Map::read(bytes, &[1]).err(),
                Some(MapError::NotCanonical),
                "{fault}"
            );
        }
    }

    #[test]
    fn refuses_nesting_without_end_and_lengths_without_bytes() {
        let deep = [&[0xa1_u8, 1][..], &[0x81; 60_000]].concat();
        assert_eq!(Map::read(&deep, &[1]).err(), Some(MapError::NotCanonical));
        let long = [0xbb, 0xff, 0xff, 0xff, 0xff, 0xff, 0xff, 0xff, 0xff];
        assert_eq!(Map::read(&long, &[1]).err(), Some(MapError::NotCanonical));
    }
}
