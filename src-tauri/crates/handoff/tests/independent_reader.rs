//! The reader in `docs/formats/read_handoff.py`, which shares no code with this crate, opens what this
//! crate sealed: the kept vectors and freshly made ones.
//!
//! It needs Python with a few packages, so it is not among the plain tests:
//! `python3 -m venv venv && venv/bin/pip install argon2-cffi pynacl cryptography cbor2`, then
//! `HEFTWELL_PYTHON=$PWD/venv/bin/python cargo test -p handoff --test independent_reader -- --include-ignored`.
#![cfg(test)]

mod support;

use std::fs;
use std::path::{Path, PathBuf};
use std::process::Command;

use handoff::{seal, seal_unpaired};
use support::{clinician, hex, noise, pair, patient, plan, random};

const ROOT: &str = concat!(env!("CARGO_MANIFEST_DIR"), "/../../..");

fn read(files: &[PathBuf]) -> Option<String> {
    let python = std::env::var_os("HEFTWELL_PYTHON")?;
    let reader = Path::new(ROOT).join("docs/formats/read_handoff.py");
    let output = Command::new(python)
        .arg("-B")
        .arg(reader)
        .args(files)
        .output()
        .unwrap();
    assert!(
        output.status.success(),
        "{}",
        String::from_utf8_lossy(&output.stderr)
    );
    Some(String::from_utf8(output.stdout).unwrap())
}

#[test]
#[ignore = "needs Python with packages: see the top of this file"]
fn independent_reader_opens_the_kept_vectors() {
    let folder = Path::new(ROOT).join("tests/vectors/handoff/frozen");
    let names = [
        "paired",
        "unpaired",
        "offers",
        "frames",
        "care_plan_by_an_independent_sealer",
    ];
    let Some(printed) = read(&names.map(|name| folder.join(format!("{name}.toml")))) else {
        return;
    };
    let lines: Vec<&str> = printed.lines().collect();
    let payload = hex(b"an invented plan, sealed by this crate");
    for line in &lines[..2] {
        assert!(
            line.contains(&format!("\"payload\": \"{payload}\"")),
            "{line}"
        );
        assert!(line.contains("\"counter\": 1795597920"), "{line}");
    }
    assert!(
        lines[0].contains("\"from\": \"Physio North\", \"role\": 3"),
        "{}",
        lines[0]
    );
    assert!(
        lines[1].contains("\"from\": \"not verified\""),
        "{}",
        lines[1]
    );
    let words = "\"words\": [\"ring\", \"make\", \"wool\", \"gasp\", \"wedding\", \"step\"]";
    assert!(lines[2].contains(words), "{}", lines[2]);
    let frames = fs::read_to_string(folder.join("frames.toml")).unwrap();
    let parcel = frames.split('"').nth(1).unwrap();
    assert!(lines[3].contains(parcel), "{}", lines[3]);
    let care = "\"code\": \"A7\", \"by\": \"Blue Kettle\", \"moves\": [{\"what\": \"bed_to_chair\"";
    assert!(lines[4].contains(care), "{}", lines[4]);
}

#[test]
#[ignore = "needs Python with packages: see the top of this file"]
fn independent_reader_opens_fresh_parcels() {
    let folder = tempfile::tempdir().unwrap();
    let (here, there) = pair(&clinician(), &patient());
    let payload = noise(3_000, 4);
    let what = plan(9, &payload);
    let parcel = seal(&here, &clinician().keys, &what, &mut random).unwrap();
    let paired = format!(
        "parcel = \"{}\"\nkeys = \"{}\"\npairing = \"{}\"\n",
        hex(&parcel),
        hex(patient().keys.to_secret_bytes().as_slice()),
        hex(&there.to_bytes())
    );
    let sealed = seal_unpaired(&what, &mut random).unwrap();
    let words = sealed.code.words().join(" ");
    let unpaired = format!("parcel = \"{}\"\ncode = \"{words}\"\n", hex(&sealed.parcel));
    let files = [("paired.toml", paired), ("unpaired.toml", unpaired)].map(|(name, text)| {
        let path = folder.path().join(name);
        fs::write(&path, text).unwrap();
        path
    });
    let Some(printed) = read(&files) else { return };
    assert_eq!(printed.matches(&hex(&payload)).count(), 2, "{printed}");
}
