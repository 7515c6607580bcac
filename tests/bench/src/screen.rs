//! A screen in memory, and how much is drawn on it.

use std::io::{BufRead, BufReader};
use std::path::PathBuf;
use std::process::{Child, Command, Stdio};

use crate::trouble::Trouble;

/// As large as the windows, so that nothing but one window is ever seen.
const SIZE: &str = "360x780x24";
/// Bytes of a pixel: at a depth of 24 bits the server keeps 32.
const PIXEL: usize = 4;
/// Only every so many-th pixel is looked at. No divisor of the width, so that no column is left out.
const EVERY: usize = 7;
/// Where the X window dump format (XWDFile.h, version 7) keeps the header's size and the number of
/// colours, each a big-endian 32-bit number; a colour takes 12 bytes.
const HEADER_SIZE_AT: usize = 0;
const COLOURS_AT: usize = 19 * 4;
const COLOUR: usize = 12;

/// The screen; gone with the value.
pub(crate) struct Screen {
    server: Child,
    /// Its name for `DISPLAY`.
    pub(crate) name: String,
    memory: PathBuf,
    _folder: tempfile::TempDir,
}

impl Screen {
    /// Starts one with a free number.
    ///
    /// # Errors
    /// When Xvfb cannot be started.
    pub(crate) fn start() -> Result<Self, Trouble> {
        let folder = tempfile::tempdir()?;
        let mut server = Command::new("Xvfb")
            .args(["-displayfd", "1", "-screen", "0", SIZE])
            .args(["-nolisten", "tcp", "-fbdir"])
            .arg(folder.path())
            .stdout(Stdio::piped())
            .stderr(Stdio::null())
            .spawn()?;
        let mut number = String::new();
        let out = server.stdout.take().ok_or(Trouble::Answer("Xvfb"))?;
        BufReader::new(out).read_line(&mut number)?;
        Ok(Self {
            server,
            name: format!(":{}", number.trim()),
            memory: folder.path().join("Xvfb_screen0"),
            _folder: folder,
        })
    }

    /// How many of the pixels looked at differ from the most usual colour: none on an empty window, some once there are
    /// letters.
    ///
    /// # Errors
    /// When the screen's memory cannot be read.
    pub(crate) fn drawn(&self) -> Result<usize, Trouble> {
        let bytes = std::fs::read(&self.memory)?;
        Ok(pixels(&bytes).map_or(0, drawn))
    }
}

impl Drop for Screen {
    fn drop(&mut self) {
        let _ = self.server.kill();
        let _ = self.server.wait();
    }
}

/// What follows the header and the colours.
fn pixels(dump: &[u8]) -> Option<&[u8]> {
    let word = |at: usize| {
        let bytes = dump.get(at..at + 4)?.first_chunk::<4>()?;
        usize::try_from(u32::from_be_bytes(*bytes)).ok()
    };
    let start = word(HEADER_SIZE_AT)? + word(COLOURS_AT)? * COLOUR;
    dump.get(start..)
}

/// Pixels looked at that are not of the colour that most have (found by majority vote: Boyer and Moore 1981).
fn drawn(pixels: &[u8]) -> usize {
    let (mut usual, mut votes) = (&[][..], 0_usize);
    let looked_at = || pixels.chunks_exact(PIXEL).step_by(EVERY);
    for pixel in looked_at() {
        if votes == 0 {
            usual = pixel;
        }
        votes = if pixel == usual { votes + 1 } else { votes - 1 };
    }
    looked_at().filter(|pixel| *pixel != usual).count()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn an_empty_screen_has_nothing_drawn_and_letters_count() {
        let ground = [9, 9, 9, 0].repeat(100 * EVERY);
        assert_eq!(drawn(&ground), 0);
        let mut lettered = ground;
        lettered[..2 * EVERY * PIXEL].fill(1);
        assert_eq!(drawn(&lettered), 2);
        assert_eq!(drawn(&[]), 0);
    }

    #[test]
    fn pixels_follow_header_and_colours() {
        let mut dump = vec![0; 100 + 2 * COLOUR];
        dump[..4].copy_from_slice(&100_u32.to_be_bytes());
        dump[COLOURS_AT..COLOURS_AT + 4].copy_from_slice(&2_u32.to_be_bytes());
        dump.extend([1, 2, 3, 4]);
        assert_eq!(pixels(&dump), Some(&[1, 2, 3, 4][..]));
        assert_eq!(pixels(&dump[..50]), None);
    }
}
