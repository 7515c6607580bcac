//! Prepares the bare window as Tauri asks for it.

#![allow(clippy::print_stdout, reason = "cargo reads a build script's stdout")]

fn main() {
    println!("cargo::rerun-if-changed=bare-window/page");
    if let Err(error) = tauri_build::try_build(tauri_build::Attributes::new()) {
        println!("cargo::error={error:#}");
    }
}
