//! heftwell
fn main() {}
