//! The data key, and the slots that wrap it.
//!
//! Which one do I need? [`DataKey`] is the random key of a vault and gives the keys for single uses;
//! `slot` wraps it under a passphrase; `slots` is the layout of the file; `store` keeps two copies of it.

mod cost;
mod data_key;
mod passphrase;
mod random;
mod slot;
mod slots;
mod store;

pub use cost::{Cost, CostOutOfBounds};
pub(crate) use data_key::{DataKey, DatabaseKey, LogKey};
pub use passphrase::Passphrase;
pub use random::{NoRandomness, Random};
pub(crate) use slots::{Slots, VAULT_ID_BYTES};
pub(crate) use store::{load, restore_copies, save};
