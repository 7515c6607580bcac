//! Pictures of screens, kept for people to look at.

use std::fs;
use std::path::PathBuf;

use crate::binaries::target_folder;
use crate::trouble::Trouble;

/// Keeps a PNG file given in base64 as `target/journeys/NAME.png`.
///
/// # Errors
/// When it is no base64 or the file cannot be written.
pub fn keep(name: &str, base64: &str) -> Result<PathBuf, Trouble> {
    let folder = target_folder().join("journeys");
    let path = folder.join(format!("{name}.png"));
    let bytes = decode(base64).ok_or_else(|| Trouble::Shape(name.to_owned(), "base64"))?;
    fs::create_dir_all(&folder)
        .and_then(|()| fs::write(&path, bytes))
        .map_err(|error| Trouble::File(path.clone(), error))?;
    Ok(path)
}

/// The bytes of a picture given in base64.
///
/// # Errors
/// When it is no base64.
pub fn read(base64: &str) -> Result<Vec<u8>, Trouble> {
    decode(base64).ok_or_else(|| Trouble::Shape("a picture".to_owned(), "base64"))
}

/// Standard base64 (RFC 4648, section 4).
fn decode(text: &str) -> Option<Vec<u8>> {
    let mut bytes = Vec::with_capacity(text.len() / 4 * 3);
    let (mut held, mut bits) = (0_u32, 0);
    for letter in text.trim_end_matches('=').bytes() {
        let value = match letter {
            b'A'..=b'Z' => letter - b'A',
            b'a'..=b'z' => letter - b'a' + 26,
            b'0'..=b'9' => letter - b'0' + 52,
            b'+' => 62,
            b'/' => 63,
            _ => return None,
        };
        held = held << 6 | u32::from(value);
        bits += 6;
        if bits >= 8 {
            bits -= 8;
            bytes.push(u8::try_from(held >> bits & 0xff).ok()?);
            held &= (1 << bits) - 1;
        }
    }
    Some(bytes)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_examples_of_rfc_4648_section_10_are_read() {
        for (text, base64) in [
            ("", ""),
            ("f", "Zg=="),
            ("fo", "Zm8="),
            ("foo", "Zm9v"),
            ("foob", "Zm9vYg=="),
            ("fooba", "Zm9vYmE="),
            ("foobar", "Zm9vYmFy"),
        ] {
            assert_eq!(decode(base64).unwrap(), text.as_bytes(), "{base64}");
        }
        assert_eq!(decode("Zg=*"), None);
    }
}
