//! Whether the vault is open, and when it locks itself.

use crate::exchange::Exchange;
use crate::failure::Failure;
use door::ErrorCode;
use std::time::Duration;
use vault::Vault;

/// Seconds without a command after which the vault locks. House rule.
pub(crate) const IDLE_LOCK_S: u32 = 180;

/// A point of [`World::uptime`](crate::world::World::uptime).
pub(crate) type Uptime = Duration;

/// Locked, or open since some time.
pub(crate) enum Session {
    /// No vault is open; its key is not in memory.
    Locked,
    /// The vault is open.
    Open {
        /// The vault.
        vault: Box<Vault>,
        /// What a hand-over holds meanwhile.
        exchange: Box<Exchange>,
        /// When the last command came that needed it.
        last_used: Uptime,
    },
}

impl Session {
    /// An open vault, used now.
    #[must_use]
    pub(crate) fn open(vault: Vault, now: Uptime) -> Self {
        Self::Open {
            vault: Box::new(vault),
            exchange: Box::default(),
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

    /// The open vault, with what a hand-over holds.
    ///
    /// # Errors
    /// `locked`.
    pub(crate) fn exchange(&mut self) -> Result<(&Vault, &mut Exchange), Failure> {
        match self {
            Self::Open {
                vault, exchange, ..
            } => Ok((vault, exchange)),
            Self::Locked => Err(Failure::new(ErrorCode::Locked)),
        }
    }

    /// Whether a scan screen is open.
    #[must_use]
    pub(crate) const fn is_scanning(&self) -> bool {
        match self {
            Self::Open { exchange, .. } => exchange.scan.is_some(),
            Self::Locked => false,
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
    pub(crate) fn touch(&mut self, now: Uptime) {
        if let Self::Open { last_used, .. } = self {
            *last_used = now;
        }
    }

    /// Locks when idle for too long. Setting the clock changes nothing: the wait is not measured by it.
    pub(crate) fn lock_if_idle(&mut self, now: Uptime) {
        if let Self::Open { last_used, .. } = self
            && now.saturating_sub(*last_used) >= Duration::from_secs(IDLE_LOCK_S.into())
        {
            self.lock();
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
