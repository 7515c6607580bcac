//! Stretching the contrast of a flat picture.

/// Share of the pixels at each end that may go fully black or white: one in a hundred.
const TAIL: usize = 100;

/// The picture with its greys spread from black to white; `None` if they are already, or if all are one.
pub(super) fn stretch(pixels: &[u8]) -> Option<Vec<u8>> {
    let mut counts = [0_usize; 256];
    for pixel in pixels {
        if let Some(count) = counts.get_mut(usize::from(*pixel)) {
            *count += 1;
        }
    }
    let tail = pixels.len() / TAIL;
    let low = (0..=255_u8)
        .zip(counts)
        .scan(0, running)
        .find(|(_, sum)| *sum > tail)?
        .0;
    let down = (0..=255_u8).zip(counts).rev();
    let high = down.scan(0, running).find(|(_, sum)| *sum > tail)?.0;
    let span = high
        .checked_sub(low)
        .filter(|span| (1..255).contains(span))?;
    let spread = |pixel: &u8| {
        let above = u32::from(pixel.saturating_sub(low)) * 255 / u32::from(span);
        u8::try_from(above).unwrap_or(255)
    };
    Some(pixels.iter().map(spread).collect())
}

fn running(sum: &mut usize, (grey, count): (u8, usize)) -> Option<(u8, usize)> {
    *sum += count;
    Some((grey, *sum))
}

#[cfg(test)]
mod tests {
    use super::stretch;

    #[test]
    fn two_greys_become_black_and_white() {
        let flat = [vec![100; 500], vec![140; 500]].concat();
        let stretched = stretch(&flat).unwrap();
        assert_eq!(stretched, [vec![0; 500], vec![255; 500]].concat());
    }

    #[test]
    fn a_few_bright_spots_do_not_count() {
        let glare = [vec![100; 495], vec![140; 495], vec![255; 9]].concat();
        assert_eq!(stretch(&glare).unwrap()[600], 255);
    }

    #[test]
    fn nothing_to_stretch() {
        assert_eq!(stretch(&[7; 1000]), None);
        assert_eq!(stretch(&[]), None);
        assert_eq!(stretch(&[vec![0; 500], vec![255; 500]].concat()), None);
    }
}
