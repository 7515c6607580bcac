//! Watches `ui/`: it is embedded, and a file added to it must cause a new build.

#![allow(clippy::print_stdout, reason = "cargo reads a build script's stdout")]

fn main() {
    println!("cargo::rerun-if-changed=../../../ui");
    println!("cargo::rerun-if-changed=build.rs");
}
