//! Identifiers: a new random one for every resource, so that nothing in two documents can be linked by them.

use crate::failure::Failure;
use crate::world::World;
use door::ErrorCode;
use serde_json::{Value, json};

/// The system of identifiers that are themselves addresses (hl7.org/fhir/R4/identifier-registry.html).
pub(super) const SYSTEM: &str = "urn:ietf:rfc:3986";

/// A version 4 UUID (RFC 9562, section 5.4).
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) struct Id(String);

impl Id {
    fn make(world: &dyn World) -> Result<Self, Failure> {
        let mut bytes = [0; 16];
        world
            .fill_random(&mut bytes)
            .map_err(|_| Failure::new(ErrorCode::StorageFailed))?;
        Ok(Self::from_bytes(bytes))
    }

    fn from_bytes(bytes: [u8; 16]) -> Self {
        let mut number = u128::from_be_bytes(bytes);
        number = number & !(0xf << 76) | 0x4 << 76;
        number = number & !(0x3 << 62) | 0x2 << 62;
        let part = |shift: u32, mask: u128| number >> shift & mask;
        Self(format!(
            "{:08x}-{:04x}-{:04x}-{:04x}-{:012x}",
            part(96, 0xffff_ffff),
            part(80, 0xffff),
            part(64, 0xffff),
            part(48, 0xffff),
            part(0, 0xffff_ffff_ffff),
        ))
    }

    /// The identifier of the resource itself.
    pub(super) fn text(&self) -> &str {
        &self.0
    }

    /// As an address.
    pub(super) fn url(&self) -> String {
        format!("urn:uuid:{}", self.0)
    }

    /// A reference to it.
    pub(super) fn reference(&self) -> Value {
        json!({ "reference": self.url() })
    }
}

/// Identifiers of one document.
#[derive(Debug)]
pub(super) struct Ids {
    pub(super) bundle: Id,
    pub(super) composition: Id,
    pub(super) patient: Id,
    pub(super) device: Id,
    pub(super) provenance: Id,
    pub(super) plan: Id,
    /// For the mass and for pain.
    pub(super) goals: [Id; 2],
    /// For each lift: itself, and pain before, during and the next morning.
    pub(super) lifts: Vec<[Id; 4]>,
    /// For each entry of the log of a plan: itself, and pain during and the next morning.
    pub(super) practice: Vec<[Id; 3]>,
}

impl Ids {
    pub(super) fn make(world: &dyn World, lifts: usize, practice: usize) -> Result<Self, Failure> {
        let make = || Id::make(world);
        Ok(Self {
            bundle: make()?,
            composition: make()?,
            patient: make()?,
            device: make()?,
            provenance: make()?,
            plan: make()?,
            goals: [make()?, make()?],
            lifts: (0..lifts)
                .map(|_| Ok([make()?, make()?, make()?, make()?]))
                .collect::<Result<_, Failure>>()?,
            practice: (0..practice)
                .map(|_| Ok([make()?, make()?, make()?]))
                .collect::<Result<_, Failure>>()?,
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// The version 4 example of RFC 9562, appendix A.3: the two fixed fields are set in it already.
    #[test]
    fn random_bytes_become_a_version_4_uuid() {
        let bytes = 0x919108f7_52d1_4320_9bac_f847db4148a8_u128.to_be_bytes();
        assert_eq!(
            Id::from_bytes(bytes).text(),
            "919108f7-52d1-4320-9bac-f847db4148a8"
        );
        let zero = Id::from_bytes([0; 16]);
        assert_eq!(zero.url(), "urn:uuid:00000000-0000-4000-8000-000000000000");
    }
}
