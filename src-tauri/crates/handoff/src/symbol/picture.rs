//! A symbol as a picture: grey pixels, PNG, SVG path.

use std::fmt::Write as _;
use std::io::Cursor;

use image::{ExtendedColorType, ImageEncoder, codecs::png::PngEncoder};

use super::{DrawError, QUIET_ZONE, Symbol};

/// Most pixels on a side of a picture drawn here (house rule).
const MOST_PIXELS: usize = 4096;

/// Grey pixels, row by row from the top, 0 black to 255 white.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Grey {
    /// Pixels in a row.
    pub width: u32,
    /// Rows.
    pub height: u32,
    /// `width` × `height` values.
    pub pixels: Vec<u8>,
}

impl Symbol {
    /// Modules on a side with the quiet zone.
    #[must_use]
    pub fn side_with_quiet_zone(&self) -> usize {
        self.side + 2 * QUIET_ZONE
    }

    /// The symbol with its quiet zone, each module `scale` × `scale` pixels.
    ///
    /// # Errors
    /// [`DrawError::Picture`] for a scale of nothing, or a side of more than 4,096 pixels.
    pub fn grey(&self, scale: usize) -> Result<Grey, DrawError> {
        let side = self
            .side_with_quiet_zone()
            .checked_mul(scale)
            .filter(|side| (1..=MOST_PIXELS).contains(side))
            .ok_or(DrawError::Picture)?;
        let white = vec![255_u8; side];
        let mut pixels = Vec::with_capacity(side * side);
        let blank = |pixels: &mut Vec<u8>| {
            (0..QUIET_ZONE * scale).for_each(|_| pixels.extend(&white));
        };
        blank(&mut pixels);
        for row in self.rows() {
            let margin = std::iter::repeat_n(false, QUIET_ZONE);
            let line: Vec<u8> = margin
                .clone()
                .chain(row.iter().copied())
                .chain(margin)
                .flat_map(|dark| std::iter::repeat_n(if dark { 0 } else { 255 }, scale))
                .collect();
            (0..scale).for_each(|_| pixels.extend(&line));
        }
        blank(&mut pixels);
        let side = u32::try_from(side).map_err(|_| DrawError::Picture)?;
        Ok(Grey {
            width: side,
            height: side,
            pixels,
        })
    }

    /// The same as a PNG file.
    ///
    /// # Errors
    /// [`DrawError::Picture`].
    pub fn png(&self, scale: usize) -> Result<Vec<u8>, DrawError> {
        let grey = self.grey(scale)?;
        let mut file = Cursor::new(Vec::new());
        PngEncoder::new(&mut file)
            .write_image(&grey.pixels, grey.width, grey.height, ExtendedColorType::L8)
            .map_err(|_| DrawError::Picture)?;
        Ok(file.into_inner())
    }

    /// The dark modules as the `d` of one SVG path, in module units, with the quiet zone around: draw it
    /// in a `viewBox` of 0 0 n n, n being [`side_with_quiet_zone`](Self::side_with_quiet_zone), on white,
    /// with crisp edges.
    #[must_use]
    pub fn svg_path(&self) -> String {
        let mut path = String::new();
        for (y, row) in self.rows().enumerate() {
            let mut x = 0;
            for run in row.chunk_by(|one, next| one == next) {
                if run.first() == Some(&true) {
                    let (left, top, width) = (x + QUIET_ZONE, y + QUIET_ZONE, run.len());
                    // Writing to a String cannot fail.
                    let _ = write!(path, "M{left} {top}h{width}v1h-{width}z");
                }
                x += run.len();
            }
        }
        path
    }
}
