//! xtask
fn main() {}
