//! The app on a folder, locked when left alone.

use std::path::Path;
use std::sync::Arc;

use app::{App, AppError, SystemWorld};

/// Opens the app on `folder`, which need not exist yet.
pub(crate) fn open(folder: &Path) -> Result<Arc<App>, AppError> {
    App::open(folder, Box::new(SystemWorld)).map(Arc::new)
}
