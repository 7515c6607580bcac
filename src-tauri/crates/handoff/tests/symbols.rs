//! Our symbols, drawn and read again.
#![cfg(test)]

mod support;

use handoff::{
    Density, DrawError, Grey, QUIET_ZONE, ReadingError, Showing, Symbol, base45, lay_out,
    read_grey, read_photo,
};
use proptest::prelude::*;
use support::noise;

fn symbol(bytes: usize, seed: u64) -> Symbol {
    match lay_out(&noise(bytes, seed), Density::Standard).unwrap() {
        Showing::One(symbol) => symbol,
        Showing::Many(many) => many.symbol(seed as u32).unwrap(),
    }
}

fn read(grey: &Grey) -> Result<String, ReadingError> {
    read_grey(&grey.pixels, grey.width, grey.height)
}

/// Decoders disagree about what "raw bytes" are; the text of an alphanumeric symbol is always the text.
#[test]
fn what_is_drawn_is_read_whatever_the_bytes() {
    for seed in 0..60 {
        let symbol = symbol(100 + seed as usize * 25, seed);
        assert_eq!(
            read(&symbol.grey(4).unwrap()).as_deref(),
            Ok(symbol.text()),
            "{seed}"
        );
    }
}

/// Capacities of alphanumeric mode: ISO/IEC 18004, table 7.
#[test]
fn versions_hold_what_the_standard_says() {
    for (version, level_l, level_m) in [
        (1, 25, 20),
        (15, 758, 600),
        (20, 1249, 970),
        (25, 1853, 1451),
    ] {
        let fits = |length| Symbol::of_sequence(&"A".repeat(length), version);
        assert!(fits(level_l).is_ok(), "{version}-L");
        assert_eq!(fits(level_l + 1), Err(DrawError::TooLong), "{version}-L");
        let single = Symbol::single(&"A".repeat(level_m), 40).unwrap();
        assert_eq!(single.version(), version, "{version}-M");
        let single = Symbol::single(&"A".repeat(level_m + 1), version);
        assert_eq!(single, Err(DrawError::TooLong), "{version}-M");
    }
}

/// Stated in docs/formats/handoff.md.
#[test]
fn one_symbol_holds_967_bytes_and_400_for_weak_cameras() {
    for (density, most) in [(Density::Standard, 967), (Density::Weak, 400)] {
        let is_one = |bytes| matches!(lay_out(&noise(bytes, 1), density), Ok(Showing::One(_)));
        assert!(is_one(most), "{density:?}");
        assert!(!is_one(most + 1), "{density:?}");
    }
}

#[test]
fn frames_fill_their_versions_to_the_last_character() {
    assert_eq!(base45::length(816 + 16), 1248);
    assert_eq!(base45::length(488 + 16), 756);
}

#[test]
fn has_a_white_border_of_four_modules() {
    let symbol = symbol(500, 1);
    let grey = symbol.grey(3).unwrap();
    let side = grey.width as usize;
    assert_eq!(side, (symbol.side() + 8) * 3);
    let border = QUIET_ZONE * 3;
    for (at, pixel) in grey.pixels.iter().enumerate() {
        let (x, y) = (at % side, at / side);
        let is_border = |at: usize| at < border || at >= side - border;
        assert!(!(is_border(x) || is_border(y)) || *pixel == 255, "{x} {y}");
    }
}

#[test]
fn the_file_and_the_path_show_the_same_modules() {
    let symbol = symbol(500, 1);
    assert_eq!(
        read_photo(&symbol.png(4).unwrap()).as_deref(),
        Ok(symbol.text())
    );
    // Filled by hand from the path's runs.
    let side = symbol.side_with_quiet_zone();
    let mut pixels = vec![255_u8; side * side];
    for run in symbol.svg_path().split('M').skip(1) {
        let number = |text: &str| text.parse::<usize>().unwrap();
        let (place, rest) = run.split_once('h').unwrap();
        let (x, y) = place.split_once(' ').unwrap();
        let width = number(rest.split_once('v').unwrap().0);
        assert!(run.ends_with(&format!("v1h-{width}z")));
        pixels[number(y) * side + number(x)..][..width].fill(0);
    }
    assert_eq!(pixels, symbol.grey(1).unwrap().pixels);
}

#[test]
fn a_flat_picture_is_read_after_its_contrast_was_stretched() {
    let symbol = symbol(800, 1);
    let mut grey = symbol.grey(4).unwrap();
    for pixel in &mut grey.pixels {
        *pixel = 120 + *pixel / 25;
    }
    assert_eq!(read(&grey).as_deref(), Ok(symbol.text()));
}

#[test]
fn a_symbol_turned_and_off_centre_is_read() {
    let symbol = symbol(600, 2);
    let grey = symbol.grey(4).unwrap();
    let side = grey.width as usize;
    let (width, height) = (1280, 720);
    let mut pixels = vec![200_u8; width * height];
    for y in 0..side {
        for x in 0..side {
            // A quarter turn, placed left of the middle.
            pixels[(x + 40) * width + 200 + side - 1 - y] = grey.pixels[y * side + x];
        }
    }
    assert_eq!(read_grey(&pixels, 1280, 720).as_deref(), Ok(symbol.text()));
}

#[test]
fn refuses_sizes_that_do_not_fit_and_pictures_without_a_symbol() {
    assert_eq!(read_grey(&[0; 100], 10, 10), Err(ReadingError::Size));
    assert_eq!(read_grey(&[0; 100], 20, 20), Err(ReadingError::Size));
    assert_eq!(read_grey(&[], u32::MAX, u32::MAX), Err(ReadingError::Size));
    assert_eq!(
        read_grey(&[128; 64 * 64], 64, 64),
        Err(ReadingError::NotFound)
    );
    assert_eq!(read_photo(b"GIF89a"), Err(ReadingError::NotAPicture));
    assert_eq!(read_photo(&[]), Err(ReadingError::NotAPicture));
    let png = symbol(300, 1).png(4).unwrap();
    assert_eq!(
        read_photo(&png[..png.len() / 2]),
        Err(ReadingError::NotAPicture)
    );
}

/// A PNG head that promises 60,000 × 60,000 pixels must not take 3.6 GB before it is refused.
#[test]
fn a_picture_that_promises_too_much_is_refused_by_its_head() {
    let mut png = symbol(300, 1).png(4).unwrap();
    png[16..20].copy_from_slice(&60_000_u32.to_be_bytes());
    png[20..24].copy_from_slice(&60_000_u32.to_be_bytes());
    let checksum = crc32fast::hash(&png[12..29]).to_be_bytes();
    png[29..33].copy_from_slice(&checksum);
    assert_eq!(read_photo(&png), Err(ReadingError::Size));
}

#[test]
fn refuses_to_draw_what_is_no_picture() {
    let symbol = symbol(300, 1);
    assert_eq!(symbol.grey(0).err(), Some(DrawError::Picture));
    assert_eq!(symbol.grey(1_000).err(), Some(DrawError::Picture));
    assert_eq!(symbol.grey(usize::MAX).err(), Some(DrawError::Picture));
    assert_eq!(Symbol::single("abc", 25).err(), Some(DrawError::Character));
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(48))]

    #[test]
    fn no_pixels_make_it_panic(seed in any::<u64>(), width in 16_u32..200, height in 16_u32..200, levels in 1_u8..=255) {
        let mut pixels = noise((width * height) as usize, seed);
        pixels.iter_mut().for_each(|pixel| *pixel -= *pixel % levels);
        let _ = read_grey(&pixels, width, height);
    }

    #[test]
    fn no_damage_to_a_symbol_makes_it_panic(seed in any::<u64>(), length in 20_usize..900, spots in 0_usize..400) {
        let mut grey = symbol(length, seed).grey(2).unwrap();
        let places = noise(spots * 3, seed);
        for place in places.chunks(3) {
            let at = usize::from(place[0]) * 65_536 + usize::from(place[1]) * 256 + usize::from(place[2]);
            let at = at % grey.pixels.len();
            let end = (at + 24).min(grey.pixels.len());
            grey.pixels[at..end].fill(place[2]);
        }
        let _ = read(&grey);
    }

    #[test]
    fn no_damage_to_a_file_makes_it_panic(seed in any::<u64>(), spots in 1_usize..40) {
        let mut png = symbol(300, seed).png(2).unwrap();
        for place in noise(spots * 3, seed).chunks(3) {
            let at = (usize::from(place[0]) * 256 + usize::from(place[1])) % png.len();
            png[at] = place[2];
        }
        let _ = read_photo(&png);
    }
}
