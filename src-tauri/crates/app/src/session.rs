//! Whether the vault is open, and when it locks itself.

use crate::failure::Failure;
use chrono::{DateTime, Duration, FixedOffset};
use door::ErrorCode;
use vault::Vault;

/// Seconds without a command after which the vault locks. House rule.
pub(crate) const IDLE_LOCK_S: u32 = 180;

/// Locked, or open since some time.
pub(crate) enum Session {
    /// No vault is open; its key is not in memory.
    Locked,
    /// The vault is open.
    Open {
        /// The vault.
        vault: Box<Vault>,
        /// When the last command came that needed it.
        last_used: DateTime<FixedOffset>,
    },
}

impl Session {
    /// An open vault, used now.
    #[must_use]
    pub(crate) fn open(vault: Vault, now: DateTime<FixedOffset>) -> Self {
        Self::Open {
            vault: Box::new(vault),
            last_used: now,
        }
    }

    /// The open vault.
    ///
    /// # Errors
    /// `locked`.
    pub(crate) fn vault(&self) -> Result<&Vault, Failure> {
        match self {
            Self::Open { vault, .. } => Ok(vault),
            Self::Locked => Err(Failure::new(ErrorCode::Locked)),
        }
    }

    /// The open vault, for a change to the vault itself.
    pub(crate) fn vault_mut(&mut self) -> Option<&mut Vault> {
        match self {
            Self::Open { vault, .. } => Some(vault),
            Self::Locked => None,
        }
    }

    /// Whether no vault is open.
    #[must_use]
    pub(crate) const fn is_locked(&self) -> bool {
        matches!(self, Self::Locked)
    }

    /// Notes that the vault was used.
    pub(crate) fn touch(&mut self, now: DateTime<FixedOffset>) {
        if let Self::Open { last_used, .. } = self {
            *last_used = now;
        }
    }

    /// Locks when idle for too long. A clock that was set back locks too: how long it was idle is not known.
    pub(crate) fn lock_if_idle(&mut self, now: DateTime<FixedOffset>) {
        if let Self::Open { last_used, .. } = self {
            let idle = now.signed_duration_since(*last_used);
            if idle < Duration::zero() || idle >= Duration::seconds(i64::from(IDLE_LOCK_S)) {
                self.lock();
            }
        }
    }

    /// Closes the vault and wipes its keys.
    pub(crate) fn lock(&mut self) {
        if let Self::Open { vault, .. } = self {
            // What was kept is on the disk already; this only tidies the files.
            let _ = vault.settle();
        }
        *self = Self::Locked;
    }
}
