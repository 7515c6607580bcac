//! headless
fn main() {}
