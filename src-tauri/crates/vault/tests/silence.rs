//! SQLCipher writes its errors to standard error unless told not to. Ours writes nothing there.
#![allow(
    clippy::unwrap_used,
    clippy::indexing_slicing,
    reason = "a test may stop at the first surprise"
)]

mod support;

use std::env;
use std::fs;
use std::process::Command;

use support::{Place, lift};
use vault::{Passphrase, Vault};

const RUN: &str = "HEFTWELL_TEST_RUN";

#[test]
fn nothing_is_written_to_standard_error_whatever_fails() {
    let output = Command::new(env::current_exe().unwrap())
        .args([
            "--exact",
            "everything_that_fails",
            "--ignored",
            "--nocapture",
            "--test-threads=1",
        ])
        .env(RUN, "1")
        .output()
        .unwrap();
    assert!(output.status.success());
    assert_eq!(String::from_utf8(output.stderr).unwrap(), "");
}

#[test]
#[ignore = "run by the test above, as a process of its own"]
fn everything_that_fails() {
    if env::var_os(RUN).is_none() {
        return;
    }
    let place = Place::new();
    let vault = place.create();
    for number in 0..50 {
        vault.lifts().add(&lift(&format!("lift {number}"))).unwrap();
    }
    drop(vault);
    let whole = fs::read(place.file("vault.db")).unwrap();
    assert!(Vault::open(&place.folder, &Passphrase::new("wrong".to_owned())).is_err());
    for at in [100, 4_096 * 2 + 100, whole.len() - 1] {
        let mut damaged = whole.clone();
        damaged[at] ^= 1;
        fs::write(place.file("vault.db"), damaged).unwrap();
        assert!(place.open().is_err());
    }
    let other = Place::new();
    drop(other.create());
    fs::copy(other.file("vault.db"), place.file("vault.db")).unwrap();
    assert!(place.open().is_err());
    fs::write(place.file("vault.db"), &whole[..5_000]).unwrap();
    assert!(place.open().is_err());
}
