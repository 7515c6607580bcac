//! Base64 (RFC 4648, section 4): how bytes travel inside a JSON line.

const ALPHABET: &[u8; 64] = b"ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/";
const PADDING: char = '=';

/// The text for `bytes`.
#[must_use]
pub(crate) fn encode(bytes: &[u8]) -> String {
    let mut text = String::with_capacity(bytes.len().div_ceil(3) * 4);
    for group in bytes.chunks(3) {
        let mut padded = [0; 4];
        let places = padded.iter_mut().skip(1);
        places.zip(group).for_each(|(to, from)| *to = *from);
        let value = u32::from_be_bytes(padded);
        for place in 0..4 {
            text.push(if place <= group.len() {
                digit(value >> (18 - 6 * place))
            } else {
                PADDING
            });
        }
    }
    text
}

/// The bytes of `text`, which must be padded; `None` for anything that [`encode`] does not write.
#[must_use]
pub(crate) fn decode(text: &str) -> Option<Vec<u8>> {
    if !text.len().is_multiple_of(4) {
        return None;
    }
    let digits = text.trim_end_matches(PADDING);
    if text.len() - digits.len() > 2 {
        return None;
    }
    let mut bytes = Vec::with_capacity(text.len() / 4 * 3);
    for group in digits.as_bytes().chunks(4) {
        let mut value = 0;
        for place in 0..4 {
            value = value << 6 | group.get(place).map_or(Some(0), |digit| read(*digit))?;
        }
        let [_, first, second, third] = u32::to_be_bytes(value);
        let whole = [first, second, third];
        let (used, unused) = whole.split_at_checked(group.len().saturating_sub(1))?;
        // Bits beyond the last byte are zero, or two texts would mean the same.
        if group.len() < 2 || unused.iter().any(|byte| *byte != 0) {
            return None;
        }
        bytes.extend(used);
    }
    Some(bytes)
}

fn digit(value: u32) -> char {
    let at = usize::try_from(value & 0x3f).unwrap_or(0);
    ALPHABET.get(at).copied().map_or('A', char::from)
}

fn read(digit: u8) -> Option<u32> {
    Some(match digit {
        b'A'..=b'Z' => u32::from(digit - b'A'),
        b'a'..=b'z' => u32::from(digit - b'a') + 26,
        b'0'..=b'9' => u32::from(digit - b'0') + 52,
        b'+' => 62,
        b'/' => 63,
        _ => return None,
    })
}

#[cfg(test)]
mod tests {
    use super::{decode, encode};

    /// RFC 4648, section 10.
    #[test]
    fn published_examples_both_ways() {
        for (bytes, text) in [
            ("", ""),
            ("f", "Zg=="),
            ("fo", "Zm8="),
            ("foo", "Zm9v"),
            ("foob", "Zm9vYg=="),
            ("fooba", "Zm9vYmE="),
            ("foobar", "Zm9vYmFy"),
        ] {
            assert_eq!(encode(bytes.as_bytes()), text);
            assert_eq!(decode(text).unwrap(), bytes.as_bytes());
        }
        assert_eq!(encode(&[0xfb, 0xff, 0xbf]), "+/+/");
    }

    #[test]
    fn what_is_never_written_is_refused() {
        for text in [
            "Zg", "Zg=", "Zh==", "Zm9=", "Z===", "====", "Zm9v=", "Zm 9", "Zm9-", "=Zg=",
        ] {
            assert_eq!(decode(text), None, "{text}");
        }
    }
}
