//! Deflate (RFC 1951), with a bound on what comes out.

use miniz_oxide::deflate::compress_to_vec;
use miniz_oxide::inflate::TINFLStatus;
use miniz_oxide::inflate::core::inflate_flags::TINFL_FLAG_USING_NON_WRAPPING_OUTPUT_BUF;
use miniz_oxide::inflate::core::{DecompressorOxide, decompress};
use zeroize::Zeroizing;

/// No stream of n bytes unpacks to more than this many times n (RFC 1951: 258 bytes from two bits).
const MOST_TIMES: usize = 1032;

/// Best compression: parcels are small, and each byte saved makes a coarser symbol.
const LEVEL: u8 = 9;

/// The stream for `plain`.
pub(crate) fn deflate(plain: &[u8]) -> Zeroizing<Vec<u8>> {
    Zeroizing::new(compress_to_vec(plain, LEVEL))
}

/// Why bytes do not unpack.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
pub enum InflateError {
    /// More would come out than was allowed.
    #[error("too long")]
    TooLong,
    /// Not one whole stream that ends where the bytes end.
    #[error("not a whole stream")]
    Malformed,
}

/// What the stream `packed` holds. Nothing much over `most` bytes is ever taken from memory.
///
/// # Errors
/// [`InflateError::TooLong`] if it holds more than `most` bytes, [`InflateError::Malformed`] if it is not
/// one whole stream that fills `packed`.
pub fn inflate(packed: &[u8], most: usize) -> Result<Zeroizing<Vec<u8>>, InflateError> {
    let room = packed.len().saturating_mul(MOST_TIMES).min(most);
    let mut plain = Zeroizing::new(vec![0; room.saturating_add(1)]);
    let (status, taken, given) = decompress(
        &mut DecompressorOxide::new(),
        packed,
        &mut plain,
        0,
        TINFL_FLAG_USING_NON_WRAPPING_OUTPUT_BUF,
    );
    match status {
        TINFLStatus::HasMoreOutput => Err(InflateError::TooLong),
        TINFLStatus::Done if given > most => Err(InflateError::TooLong),
        TINFLStatus::Done if taken == packed.len() => {
            plain.truncate(given);
            Ok(plain)
        }
        _ => Err(InflateError::Malformed),
    }
}

#[cfg(test)]
mod tests {
    use super::{InflateError, deflate, inflate};

    #[test]
    fn what_is_packed_comes_back() {
        for length in [0, 1, 1_000, 100_000] {
            let plain: Vec<u8> = (0..length).map(|at| (at % 251) as u8).collect();
            let back = inflate(&deflate(&plain), plain.len()).unwrap();
            assert_eq!(*back, plain, "{length}");
        }
    }

    #[test]
    fn one_byte_over_the_bound_is_too_long() {
        let packed = deflate(&[7; 1_000]);
        assert_eq!(inflate(&packed, 999), Err(InflateError::TooLong));
        assert_eq!(inflate(&packed, 1_000).unwrap().len(), 1_000);
    }

    /// RFC 1951, section 3.2.4: a stored block of three bytes, written by hand.
    #[test]
    fn reads_a_stream_written_by_hand() {
        let stored = [0x01, 3, 0, 0xfc, 0xff, b'a', b'b', b'c'];
        assert_eq!(*inflate(&stored, 3).unwrap(), b"abc");
    }

    #[test]
    fn a_bomb_stops_at_the_bound() {
        let bomb = deflate(&vec![0; 10_000_000]);
        assert!(bomb.len() < 20_000);
        assert_eq!(inflate(&bomb, 256 * 1024), Err(InflateError::TooLong));
    }

    #[test]
    fn refuses_a_stream_that_is_cut_or_goes_on() {
        let packed = deflate(b"laundry basket, from the floor");
        let goes_on = [&packed[..], &[0]].concat();
        for bytes in [&packed[..packed.len() - 1], &goes_on, &[]] {
            assert_eq!(inflate(bytes, 100), Err(InflateError::Malformed));
        }
    }
}
