//! Randomness, as it comes in from the caller.

use std::convert::Infallible;

use rand_core::{TryCryptoRng, TryRng};

/// No random numbers could be had.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
#[error("no random numbers")]
pub struct NoRandomness;

/// Fills a buffer from the operating system's random source, or says that it cannot.
pub type Random<'a> = dyn FnMut(&mut [u8]) -> Result<(), NoRandomness> + 'a;

/// Fresh random bytes.
pub(crate) fn make_bytes<const N: usize>(random: &mut Random<'_>) -> Result<[u8; N], NoRandomness> {
    let mut bytes = [0; N];
    random(&mut bytes)?;
    Ok(bytes)
}

/// The caller's randomness in the shape `hpke` asks for, which cannot fail.
///
/// A failure is remembered instead; whoever uses this must ask [`failed`](Self::failed) before using
/// what came out.
pub(crate) struct Remembering<'r, 'a> {
    random: &'r mut Random<'a>,
    failed: bool,
}

impl<'r, 'a> Remembering<'r, 'a> {
    pub(crate) fn new(random: &'r mut Random<'a>) -> Self {
        Self {
            random,
            failed: false,
        }
    }

    pub(crate) fn failed(&self) -> bool {
        self.failed
    }
}

impl TryRng for Remembering<'_, '_> {
    type Error = Infallible;

    fn try_next_u32(&mut self) -> Result<u32, Infallible> {
        let mut bytes = [0; 4];
        self.try_fill_bytes(&mut bytes)?;
        Ok(u32::from_le_bytes(bytes))
    }

    fn try_next_u64(&mut self) -> Result<u64, Infallible> {
        let mut bytes = [0; 8];
        self.try_fill_bytes(&mut bytes)?;
        Ok(u64::from_le_bytes(bytes))
    }

    fn try_fill_bytes(&mut self, bytes: &mut [u8]) -> Result<(), Infallible> {
        self.failed |= (self.random)(bytes).is_err();
        Ok(())
    }
}

impl TryCryptoRng for Remembering<'_, '_> {}
