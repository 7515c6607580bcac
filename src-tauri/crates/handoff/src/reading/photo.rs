//! Picture files.

use std::io::Cursor;

use image::{DynamicImage, GrayImage, ImageReader, Limits, imageops};

use super::{MOST_PIXELS, ReadingError, SIDES, read_grey};
use crate::guard::guarded;

/// Longest file, in bytes: 64 MiB (house rule: above the photos of today's phones).
const LONGEST_FILE: usize = 64 * 1024 * 1024;
/// Most memory for unpacking, in bytes: four for each of the most pixels.
const MOST_MEMORY: u64 = 4 * MOST_PIXELS;
/// Longer side of the copy that is tried first: a symbol that fills a third of it has some three pixels a
/// module, and noise is averaged away.
const FIRST_SIDE: u32 = 1600;

/// Reads the symbol in a picture file (PNG, JPEG or WebP), on a smaller copy first.
///
/// # Errors
/// [`ReadingError::NotAPicture`], [`ReadingError::Size`], [`ReadingError::NotFound`].
pub fn read_photo(file: &[u8]) -> Result<String, ReadingError> {
    let picture = guarded(|| unpack(file)).unwrap_or(Err(ReadingError::NotAPicture))?;
    let (width, height) = picture.dimensions();
    if width.max(height) > FIRST_SIDE {
        let smaller = shrink(&picture);
        let found = read_grey(smaller.as_raw(), smaller.width(), smaller.height());
        if found.is_ok() {
            return found;
        }
    }
    read_grey(picture.as_raw(), width, height)
}

fn unpack(file: &[u8]) -> Result<GrayImage, ReadingError> {
    if file.len() > LONGEST_FILE {
        return Err(ReadingError::Size);
    }
    let reader = || {
        ImageReader::new(Cursor::new(file))
            .with_guessed_format()
            .map_err(|_| ReadingError::NotAPicture)
    };
    let (width, height) = reader()?
        .into_dimensions()
        .map_err(|_| ReadingError::NotAPicture)?;
    let count = u64::from(width) * u64::from(height);
    if !SIDES.contains(&width) || !SIDES.contains(&height) || count > MOST_PIXELS {
        return Err(ReadingError::Size);
    }
    let mut limits = Limits::default();
    limits.max_image_width = Some(*SIDES.end());
    limits.max_image_height = Some(*SIDES.end());
    limits.max_alloc = Some(MOST_MEMORY);
    let mut reader = reader()?;
    reader.limits(limits);
    let picture = reader.decode().map_err(|_| ReadingError::NotAPicture)?;
    Ok(grey_on_white(picture))
}

/// Grey values; what is see-through is taken as white, as a page would show it.
fn grey_on_white(picture: DynamicImage) -> GrayImage {
    if !picture.color().has_alpha() {
        return picture.into_luma8();
    }
    let with_alpha = picture.into_luma_alpha8();
    GrayImage::from_fn(with_alpha.width(), with_alpha.height(), |x, y| {
        let [grey, alpha] = with_alpha.get_pixel(x, y).0;
        let mixed = (u16::from(grey) * u16::from(alpha) + 255 * (255 - u16::from(alpha))) / 255;
        image::Luma([u8::try_from(mixed).unwrap_or(255)])
    })
}

fn shrink(picture: &GrayImage) -> GrayImage {
    let (width, height) = picture.dimensions();
    let longer = width.max(height).max(1);
    let scaled = |side: u32| {
        let side = u64::from(side) * u64::from(FIRST_SIDE) / u64::from(longer);
        u32::try_from(side)
            .unwrap_or(FIRST_SIDE)
            .max(*SIDES.start())
    };
    imageops::thumbnail(picture, scaled(width), scaled(height))
}
