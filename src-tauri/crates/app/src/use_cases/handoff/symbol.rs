//! Symbols on the wire.

use crate::base64;
use handoff::Symbol;
use serde::Serialize;

/// A symbol without its quiet zone: one bit a module, rows from the top, 1 for dark, no padding between rows.
#[derive(Debug, Serialize)]
pub(crate) struct SymbolView {
    size: usize,
    bits: String,
}

impl SymbolView {
    /// The wire form of a symbol.
    #[must_use]
    pub(crate) fn of(symbol: &Symbol) -> Self {
        let modules: Vec<bool> = symbol.rows().flatten().copied().collect();
        let bytes: Vec<u8> = modules
            .chunks(8)
            .map(|byte| {
                let bits = byte.iter().fold(0, |sum, dark| sum << 1 | u8::from(*dark));
                bits << (8 - byte.len())
            })
            .collect();
        Self {
            size: symbol.side(),
            bits: base64::encode(&bytes),
        }
    }
}
