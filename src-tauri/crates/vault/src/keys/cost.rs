//! How much work one try at the passphrase costs.

/// Argon2id parameters, always within bounds.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Cost {
    memory_kib: u32,
    passes: u32,
    lanes: u32,
}

/// Parameters below the floor or above the cap.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
#[error("Argon2id parameters out of bounds")]
pub struct CostOutOfBounds;

impl Cost {
    /// 64 MiB, 3 passes, 1 lane: RFC 9106 section 4, second recommended option, for a single thread.
    pub const STANDARD: Self = Self {
        memory_kib: 64 * 1024,
        passes: 3,
        lanes: 1,
    };

    /// 19 MiB, 2 passes, 1 lane: the least that is accepted (OWASP Password Storage Cheat Sheet, Argon2id).
    pub const FLOOR: Self = Self {
        memory_kib: 19 * 1024,
        passes: 2,
        lanes: 1,
    };

    /// 256 MiB, 10 passes, 4 lanes: the most that is accepted (house rule). A stored header is not to be
    /// trusted with the phone's memory or battery.
    pub const CAP: Self = Self {
        memory_kib: 256 * 1024,
        passes: 10,
        lanes: 4,
    };

    /// Parameters from outside.
    ///
    /// # Errors
    /// [`CostOutOfBounds`] below [`FLOOR`](Self::FLOOR) or above [`CAP`](Self::CAP) in any of the three.
    pub fn new(memory_kib: u32, passes: u32, lanes: u32) -> Result<Self, CostOutOfBounds> {
        let within = (Self::FLOOR.memory_kib..=Self::CAP.memory_kib).contains(&memory_kib)
            && (Self::FLOOR.passes..=Self::CAP.passes).contains(&passes)
            && (Self::FLOOR.lanes..=Self::CAP.lanes).contains(&lanes);
        if within {
            Ok(Self {
                memory_kib,
                passes,
                lanes,
            })
        } else {
            Err(CostOutOfBounds)
        }
    }

    /// Memory in KiB.
    #[must_use]
    pub const fn memory_kib(self) -> u32 {
        self.memory_kib
    }

    /// Passes over that memory.
    #[must_use]
    pub const fn passes(self) -> u32 {
        self.passes
    }

    /// Lanes.
    #[must_use]
    pub const fn lanes(self) -> u32 {
        self.lanes
    }
}

#[cfg(test)]
mod tests {
    use super::{Cost, CostOutOfBounds};

    #[test]
    fn accepts_the_floor_and_the_cap_and_nothing_beyond() {
        assert_eq!(Cost::new(19_456, 2, 1), Ok(Cost::FLOOR));
        assert_eq!(Cost::new(262_144, 10, 4), Ok(Cost::CAP));
        for (memory_kib, passes, lanes) in [
            (19_455, 2, 1),
            (19_456, 1, 1),
            (19_456, 2, 0),
            (262_145, 3, 1),
            (65_536, 11, 1),
            (65_536, 3, 5),
        ] {
            assert_eq!(Cost::new(memory_kib, passes, lanes), Err(CostOutOfBounds));
        }
        assert_eq!(
            Cost::new(u32::MAX, u32::MAX, u32::MAX),
            Err(CostOutOfBounds)
        );
    }
}
