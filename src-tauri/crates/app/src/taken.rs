//! A picture or a file that the scan screen hands in: the one thing that does not come as a JSON line.

use crate::base64;
use crate::failure::Failure;
use door::ErrorCode;
use handoff::ReadingError;
use serde::Deserialize;
use serde_json::Value;

/// Most pixels on a side of a camera frame (house rule).
const MOST_SIDE: u32 = 1920;
/// Longest photo or file, in bytes: 12 MB (house rule: above the photos of today's phones).
pub const LONGEST_FILE: usize = 12 * 1000 * 1000;
/// Longest JSON form: the longest file in base64, and room for the rest.
pub const LONGEST_JSON: usize = LONGEST_FILE / 3 * 4 + 1024;

/// What was handed in. `width` and `height` count for a frame only.
#[derive(Debug, Clone, Copy)]
pub struct Taken<'a> {
    /// `frame`: grey pixels, row by row, `width` × `height` bytes. `photo`: a JPEG, PNG or WebP file. `file`:
    /// a sealed file.
    pub kind: &'a str,
    /// Pixels in a row.
    pub width: u32,
    /// Rows.
    pub height: u32,
    /// The bytes.
    pub bytes: &'a [u8],
}

/// The same inside JSON, for bridges without raw bodies.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct TakenJson {
    kind: String,
    #[serde(default)]
    width: u32,
    #[serde(default)]
    height: u32,
    base64: String,
}

/// What was found in it.
#[derive(Debug, PartialEq, Eq)]
pub(crate) enum Found {
    /// No symbol: go on.
    Nothing,
    /// A symbol, and what it says.
    Text(String),
    /// A sealed file.
    Bytes(Vec<u8>),
    /// Not a picture that is read here.
    NotAPicture,
}

impl TakenJson {
    /// Takes the JSON form apart.
    ///
    /// # Errors
    /// `too_long`, `bad_json`.
    pub(crate) fn read(body: &[u8]) -> Result<Self, Failure> {
        if body.len() > LONGEST_JSON {
            return Err(Failure::new(ErrorCode::TooLong));
        }
        serde_json::from_slice(body).map_err(|_| Failure::new(ErrorCode::BadJson))
    }

    /// The bytes in it.
    ///
    /// # Errors
    /// `wrong_type` at `base64`.
    pub(crate) fn bytes(&self) -> Result<Vec<u8>, Failure> {
        base64::decode(&self.base64).ok_or_else(|| Failure::at(ErrorCode::WrongType, "base64"))
    }

    /// The raw form around `bytes`.
    #[must_use]
    pub(crate) fn around<'a>(&'a self, bytes: &'a [u8]) -> Taken<'a> {
        Taken {
            kind: &self.kind,
            width: self.width,
            height: self.height,
            bytes,
        }
    }
}

/// Looks for a symbol, or takes the file as it is. Knows nothing of the vault, so it needs no lock.
///
/// # Errors
/// `not_a_choice` at `kind`; `out_of_range` at `width` or `height`; `wrong_type` at `bytes` when their number
/// does not fit; `too_long` at `bytes`.
pub(crate) fn look(taken: &Taken<'_>) -> Result<Found, Failure> {
    match taken.kind {
        "frame" => frame(taken),
        "photo" => {
            bounded(taken.bytes)?;
            Ok(found(handoff::read_photo(taken.bytes)))
        }
        "file" => {
            bounded(taken.bytes)?;
            Ok(Found::Bytes(taken.bytes.to_vec()))
        }
        _ => Err(Failure::at(ErrorCode::NotAChoice, "kind")),
    }
}

fn frame(taken: &Taken<'_>) -> Result<Found, Failure> {
    for (side, field) in [(taken.width, "width"), (taken.height, "height")] {
        if !(1..=MOST_SIDE).contains(&side) {
            return Err(Failure::at(ErrorCode::OutOfRange, field));
        }
    }
    let count = u64::from(taken.width) * u64::from(taken.height);
    if u64::try_from(taken.bytes.len()) != Ok(count) {
        return Err(Failure::at(ErrorCode::WrongType, "bytes"));
    }
    Ok(found(handoff::read_grey(
        taken.bytes,
        taken.width,
        taken.height,
    )))
}

/// Name and bytes of a file in the reply of `show_file` or `report_make`; `None` for any other reply.
pub(crate) fn read_file(reply: &str) -> Option<(String, Vec<u8>)> {
    let reply: Value = serde_json::from_str(reply).ok()?;
    let text = |name: &str| reply.get("ok")?.get(name)?.as_str();
    Some((text("name")?.to_owned(), base64::decode(text("base64")?)?))
}

fn bounded(bytes: &[u8]) -> Result<(), Failure> {
    if bytes.len() > LONGEST_FILE {
        Err(Failure::at(ErrorCode::TooLong, "bytes"))
    } else {
        Ok(())
    }
}

fn found(read: Result<String, ReadingError>) -> Found {
    match read {
        Ok(text) => Found::Text(text),
        Err(ReadingError::NotAPicture) => Found::NotAPicture,
        // A frame or a photo too small for any symbol holds none.
        Err(_) => Found::Nothing,
    }
}
