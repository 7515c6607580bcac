//! Numbers that tell things apart over devices, and secrets that are only kept.

use std::fmt;

use minicbor::{Decode, Decoder, Encode, Encoder};
use zeroize::{Zeroize, Zeroizing};

/// Sixteen random bytes that name one thing on every device it comes to.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Identity(pub [u8; 16]);

/// Secret bytes: never shown, wiped when dropped.
#[derive(Clone, PartialEq, Eq)]
pub struct SecretBytes(Zeroizing<Vec<u8>>);

impl SecretBytes {
    /// Takes bytes over.
    #[must_use]
    pub fn new(bytes: Vec<u8>) -> Self {
        Self(Zeroizing::new(bytes))
    }

    /// The bytes.
    #[must_use]
    pub fn bytes(&self) -> &[u8] {
        &self.0
    }
}

impl Drop for SecretBytes {
    fn drop(&mut self) {
        self.0.zeroize();
    }
}

impl fmt::Debug for SecretBytes {
    fn fmt(&self, formatter: &mut fmt::Formatter<'_>) -> fmt::Result {
        formatter.write_str("SecretBytes(…)")
    }
}

impl<C> Encode<C> for Identity {
    fn encode<W: minicbor::encode::Write>(
        &self,
        encoder: &mut Encoder<W>,
        _: &mut C,
    ) -> Result<(), minicbor::encode::Error<W::Error>> {
        encoder.bytes(&self.0)?.ok()
    }
}

impl<'b, C> Decode<'b, C> for Identity {
    fn decode(decoder: &mut Decoder<'b>, _: &mut C) -> Result<Self, minicbor::decode::Error> {
        let bytes = decoder.bytes()?;
        let bytes = bytes
            .try_into()
            .map_err(|_| minicbor::decode::Error::message("an identity has sixteen bytes"))?;
        Ok(Self(bytes))
    }
}

impl<C> Encode<C> for SecretBytes {
    fn encode<W: minicbor::encode::Write>(
        &self,
        encoder: &mut Encoder<W>,
        _: &mut C,
    ) -> Result<(), minicbor::encode::Error<W::Error>> {
        encoder.bytes(&self.0)?.ok()
    }
}

impl<'b, C> Decode<'b, C> for SecretBytes {
    fn decode(decoder: &mut Decoder<'b>, _: &mut C) -> Result<Self, minicbor::decode::Error> {
        Ok(Self::new(decoder.bytes()?.to_vec()))
    }
}
