//! Finding a QR symbol in a picture.
//!
//! [`read_grey`] takes a frame of a camera, [`read_photo`] a picture file. Both give the symbol's text.
//! Only the text is taken: what decoders call raw bytes is sometimes the content and sometimes the code
//! words, and Base45 needs neither.

mod photo;
mod stretch;

use image::GrayImage;
use image::imageops::{self, FilterType};
use rxing::common::HybridBinarizer;
use rxing::{
    BarcodeFormat, BinaryBitmap, DecodeHints, Luma8LuminanceSource, MultiFormatReader, Reader,
};

use crate::guard::guarded;

pub use photo::read_photo;

/// Fewest and most pixels on a side (house rule: the smallest symbol needs some 60, no camera gives more).
const SIDES: std::ops::RangeInclusive<u32> = 16..=16_384;
/// Most pixels in all: 64 million.
const MOST_PIXELS: u64 = 64_000_000;

/// Most pixels of a picture that is tried at twice its size: a square out of 1280 × 720.
const MOST_DOUBLED: u64 = 720 * 720;

/// Why no text was read.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
#[non_exhaustive]
pub enum ReadingError {
    /// No symbol was found, or it could not be read. With a camera: go on.
    #[error("no symbol found")]
    NotFound,
    /// Width and height are out of bounds, or do not fit the number of pixels.
    #[error("width and height do not fit")]
    Size,
    /// The file is not a picture of a kind that is read here (PNG, JPEG, WebP), or it is damaged.
    #[error("not a picture")]
    NotAPicture,
}

/// Reads the symbol in `width` × `height` grey pixels, row by row from the top, 0 black to 255 white.
/// Tries once more with the contrast stretched, and a small picture once more at twice its size.
///
/// # Errors
/// [`ReadingError::Size`], [`ReadingError::NotFound`].
pub fn read_grey(pixels: &[u8], width: u32, height: u32) -> Result<String, ReadingError> {
    let count = u64::from(width) * u64::from(height);
    let is_bounded = SIDES.contains(&width) && SIDES.contains(&height) && count <= MOST_PIXELS;
    if !is_bounded || u64::try_from(pixels.len()) != Ok(count) {
        return Err(ReadingError::Size);
    }
    decode(pixels, width, height)
        .or_else(|| decode(&stretch::stretch(pixels)?, width, height))
        .or_else(|| decode_doubled(pixels, width, height))
        .ok_or(ReadingError::NotFound)
}

/// Small pictures once more at twice the size: the reader rounds modules of three pixels to whole ones.
fn decode_doubled(pixels: &[u8], width: u32, height: u32) -> Option<String> {
    if u64::from(width) * u64::from(height) > MOST_DOUBLED {
        return None;
    }
    let picture = GrayImage::from_raw(width, height, pixels.to_vec())?;
    let (width, height) = (2 * width, 2 * height);
    let doubled = imageops::resize(&picture, width, height, FilterType::Triangle);
    decode(doubled.as_raw(), width, height)
}

fn decode(pixels: &[u8], width: u32, height: u32) -> Option<String> {
    let hints = DecodeHints {
        PossibleFormats: Some([BarcodeFormat::QR_CODE].into_iter().collect()),
        TryHarder: Some(false),
        ..DecodeHints::default()
    };
    guarded(|| {
        let source = Luma8LuminanceSource::new(pixels.to_vec(), width, height).ok()?;
        let mut bitmap = BinaryBitmap::new(HybridBinarizer::new(source));
        let found = MultiFormatReader::default().decode_with_hints(&mut bitmap, &hints);
        found.ok().map(|found| found.getText().to_owned())
    })?
}
