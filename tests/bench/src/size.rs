//! How large the programs and the screens are.

use std::path::Path;
use std::process::{Command, Stdio};

use crate::clock::tell_ratio;
use crate::place;
use crate::trouble::Trouble;

/// All files of the screens together, at most (house rule).
const MOST_UI_BYTES: f64 = 150_000.0;

/// Adds up bytes, packed and as they are.
///
/// # Errors
/// [`Trouble::NotBuilt`], and what reading or packing gives.
pub(crate) fn measure() -> Result<(), Trouble> {
    let app = tell_file("heftwell, release, stripped", &place::built("heftwell")?)?;
    let bare = tell_file(
        "bare window, release, stripped",
        &place::built("bare-window")?,
    )?;
    tell_ratio("size: app to bare window", app / bare);
    let (mut plain, mut packed, mut files) = (0, 0, 0);
    let mut folders = vec![place::root().join("ui")];
    while let Some(folder) = folders.pop() {
        for entry in std::fs::read_dir(folder)? {
            let path = entry?.path();
            if path.is_dir() {
                folders.push(path);
            } else {
                plain += std::fs::metadata(&path)?.len();
                packed += gzipped(&path)?;
                files += 1;
            }
        }
    }
    println!("ui/: {files} files, {plain} bytes, {packed} bytes with gzip -9 file by file");
    tell_ratio(
        "size: ui/ to the target of 150 kB",
        plain as f64 / MOST_UI_BYTES,
    );
    Ok(())
}

fn tell_file(what: &str, path: &Path) -> Result<f64, Trouble> {
    let plain = std::fs::metadata(path)?.len();
    println!("{what}: {plain} bytes, {} with gzip -9", gzipped(path)?);
    Ok(plain as f64)
}

fn gzipped(path: &Path) -> Result<u64, Trouble> {
    let output = Command::new("gzip")
        .args(["-9", "-c"])
        .arg(path)
        .stderr(Stdio::inherit())
        .output()?;
    if output.status.success() {
        Ok(output.stdout.len() as u64)
    } else {
        Err(Trouble::Answer("gzip"))
    }
}
