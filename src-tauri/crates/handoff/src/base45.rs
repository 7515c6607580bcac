//! Base45 (RFC 9285): bytes as the characters of a QR symbol's alphanumeric mode.

/// RFC 9285, table 1.
const ALPHABET: &[u8; 45] = b"0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ $%*+-./:";

/// Why a text is no Base45.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
pub enum Base45Error {
    /// A character that is not in the alphabet.
    #[error("a character that is not in the alphabet")]
    Character,
    /// One character too many or too few: no bytes make a text this long.
    #[error("a length that no bytes give")]
    Length,
    /// A group that stands for more than its bytes can hold.
    #[error("a group that is too large")]
    Group,
}

/// The text for `bytes`: three characters for two bytes, two for a last single one.
#[must_use]
pub fn encode(bytes: &[u8]) -> String {
    bytes
        .chunks(2)
        .flat_map(|group| {
            let (value, characters) = match group {
                [high, low] => (u32::from(*high) * 256 + u32::from(*low), 3),
                _ => (group.iter().copied().map(u32::from).sum(), 2),
            };
            (0..characters).map(move |place| character(value / 45_u32.pow(place)))
        })
        .collect()
}

/// Characters that `bytes` bytes take.
#[must_use]
pub fn length(bytes: usize) -> usize {
    bytes / 2 * 3 + bytes % 2 * 2
}

/// The bytes of `text`.
///
/// # Errors
/// See [`Base45Error`].
pub fn decode(text: &str) -> Result<Vec<u8>, Base45Error> {
    let mut bytes = Vec::with_capacity(text.len() / 3 * 2 + 1);
    for group in text.as_bytes().chunks(3) {
        let mut value = 0;
        for character in group.iter().rev() {
            value = value * 45 + digit(*character)?;
        }
        match (group.len(), u16::try_from(value)) {
            (3, Ok(value)) => bytes.extend(value.to_be_bytes()),
            (2, Ok(value)) => bytes.push(u8::try_from(value).map_err(|_| Base45Error::Group)?),
            (3, Err(_)) => return Err(Base45Error::Group),
            _ => return Err(Base45Error::Length),
        }
    }
    Ok(bytes)
}

fn character(value: u32) -> char {
    let at = usize::try_from(value % 45).unwrap_or(0);
    ALPHABET.get(at).copied().map_or('0', char::from)
}

fn digit(character: u8) -> Result<u32, Base45Error> {
    ALPHABET
        .iter()
        .zip(0..)
        .find(|(known, _)| **known == character)
        .map(|(_, value)| value)
        .ok_or(Base45Error::Character)
}

#[cfg(test)]
mod tests {
    use super::{Base45Error, decode, encode, length};

    /// RFC 9285, sections 4.3 and 4.4.
    #[test]
    fn published_examples_both_ways() {
        for (bytes, text) in [
            (&b"AB"[..], "BB8"),
            (b"Hello!!", "%69 VD92EX0"),
            (b"base-45", "UJCLQE7W581"),
            (b"ietf!", "QED8WEX0"),
            (b"", ""),
        ] {
            assert_eq!(encode(bytes), text);
            assert_eq!(decode(text).unwrap(), bytes);
            assert_eq!(length(bytes.len()), text.len());
        }
    }

    /// RFC 9285, section 6: "GGW" is 65,535 and "GGX" would be 65,536. ":::" is 91,124.
    #[test]
    fn refuses_groups_that_are_too_large() {
        assert_eq!(decode("FGW"), Ok(vec![0xff, 0xff]));
        assert_eq!(decode("GGW"), Err(Base45Error::Group));
        assert_eq!(decode(":::"), Err(Base45Error::Group));
        assert_eq!(decode("U5"), Ok(vec![0xff]));
        assert_eq!(decode("V5"), Err(Base45Error::Group));
        assert_eq!(decode("::"), Err(Base45Error::Group));
    }

    #[test]
    fn refuses_other_characters_and_lengths() {
        assert_eq!(decode("bb8"), Err(Base45Error::Character));
        assert_eq!(decode("BB8_"), Err(Base45Error::Character));
        assert_eq!(decode("BBñ"), Err(Base45Error::Character));
        assert_eq!(decode("BB8B"), Err(Base45Error::Length));
        assert_eq!(decode("0"), Err(Base45Error::Length));
    }
}
