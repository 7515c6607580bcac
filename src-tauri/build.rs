//! Lists our commands, so that a page may call it and nothing else, and watches `ui/`.

#![allow(clippy::print_stdout, reason = "cargo reads a build script's stdout")]

fn main() {
    // The page is embedded at compile time: a file added to it must cause a new build.
    println!("cargo::rerun-if-changed=../ui");
    let manifest =
        tauri_build::AppManifest::new().commands(&["command", "take", "save", "save_report"]);
    let attributes = tauri_build::Attributes::new().app_manifest(manifest);
    if let Err(error) = tauri_build::try_build(attributes) {
        println!("cargo::error={error:#}");
    }
}
