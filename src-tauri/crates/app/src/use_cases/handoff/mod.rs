//! Handing plans and histories over: cards, pairing, scanning, accepting, showing.

pub(crate) mod accepting;
pub(crate) mod card;
pub(crate) mod device;
pub(crate) mod opening;
pub(crate) mod pair;
pub(crate) mod people;
pub(crate) mod question;
mod question_care;
pub(crate) mod scan;
pub(crate) mod showing;
pub(crate) mod summary;
pub(crate) mod symbol;
pub(crate) mod taking;

/// Bytes as lower-case hex: how an id looks on the wire.
#[must_use]
pub(crate) fn hex(bytes: &[u8]) -> String {
    use std::fmt::Write;
    bytes.iter().fold(String::new(), |mut text, byte| {
        // Writing to a String cannot fail.
        let _ = write!(text, "{byte:02x}");
        text
    })
}

/// The identity with this hex form.
#[must_use]
pub(crate) fn identity(text: &str) -> Option<record::Identity> {
    if text.len() != 32 || !text.bytes().all(|digit| digit.is_ascii_hexdigit()) {
        return None;
    }
    let number = u128::from_str_radix(text, 16).ok()?;
    Some(record::Identity(number.to_be_bytes()))
}

#[cfg(test)]
mod tests {
    use super::{hex, identity};

    #[test]
    fn an_id_looks_the_same_both_ways() {
        let text = "00112233445566778899aabbccddeeff";
        assert_eq!(hex(&identity(text).unwrap().0), text);
        for wrong in ["", "00", "+0112233445566778899aabbccddeeff"] {
            assert_eq!(identity(wrong), None, "{wrong}");
        }
    }
}
