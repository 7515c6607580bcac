//! Making a vault, so that a stop at any moment leaves either none or a whole one.

use crate::keys::{Cost, DataKey, Passphrase, Random, Slots, save};
use crate::{Folder, Vault, VaultError, VaultState, atomic, connection, erase, migrate};

/// Makes a vault in `folder`.
///
/// In order: the database under a name of its own, the slots, then the database's real name. Before the
/// last rename [`Folder::state`] says that there is no vault, and a new try starts over.
pub(crate) fn create(
    folder: &Folder,
    passphrase: &Passphrase,
    cost: Cost,
    random: &mut Random<'_>,
) -> Result<Vault, VaultError> {
    atomic::create_folder(folder.path())?;
    if folder.state()? == VaultState::Present {
        return Err(VaultError::Exists);
    }
    erase::finish(folder)?;
    let key = DataKey::make(random)?;
    let unfinished = folder.unfinished_database();
    remove_unfinished(folder)?;
    atomic::create_empty(&unfinished)?;
    let connection = connection::open(&unfinished, &key.derive_database_key())?;
    migrate::upgrade(&connection, folder, migrate::STEPS)?;
    connection::checkpoint(&connection)?;
    // The last connection to close takes the log with it, so the main file is all there is.
    connection.close().map_err(|(_, error)| error)?;
    let vault_id = connection::read_salt(&unfinished)?;
    save(
        folder,
        &Slots::make(vault_id, &key, passphrase, cost, random)?,
    )?;
    atomic::rename(&unfinished, &folder.database())?;
    Vault::open_with_key(folder, &key, &vault_id)
}

/// What an interrupted try left behind. Nothing was ever kept in it.
fn remove_unfinished(folder: &Folder) -> Result<(), VaultError> {
    for ending in ["", "-wal", "-shm", "-journal"] {
        let mut name = folder.unfinished_database().into_os_string();
        name.push(ending);
        atomic::remove(name.as_ref())?;
    }
    Ok(())
}
