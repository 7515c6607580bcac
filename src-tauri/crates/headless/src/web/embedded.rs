//! The page's files, part of the program itself.

use include_dir::{Dir, include_dir};

static UI: Dir<'_> = include_dir!("$CARGO_MANIFEST_DIR/../../../ui");

/// A file of the page.
pub(crate) struct Embedded {
    /// Its content type.
    pub(crate) kind: &'static str,
    /// Its bytes.
    pub(crate) bytes: &'static [u8],
}

/// Finds a file by its exact path under `ui/`; only kinds that a page is made of.
///
/// The look-up is in a fixed list, so no path can lead out of it.
pub(crate) fn find(path: &str) -> Option<Embedded> {
    let kind = match path.rsplit_once('.')?.1 {
        "html" => "text/html; charset=utf-8",
        "css" => "text/css; charset=utf-8",
        "js" => "text/javascript; charset=utf-8",
        "json" => "application/json",
        "svg" => "image/svg+xml",
        "png" => "image/png",
        "woff2" => "font/woff2",
        _ => return None,
    };
    UI.get_file(path).map(|file| Embedded {
        kind,
        bytes: file.contents(),
    })
}
