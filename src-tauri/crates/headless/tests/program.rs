//! The program itself, as a person or another program starts it.

#![cfg(feature = "app")]
#![allow(clippy::unwrap_used, reason = "a test stops at the first surprise")]

use std::io::{BufRead, BufReader, Read, Write};
use std::net::TcpStream;
use std::path::Path;
use std::process::{Command, Output, Stdio};

fn headless() -> Command {
    Command::new(env!("CARGO_BIN_EXE_headless"))
}

/// Gives `lines` to `headless lines` and takes what it prints.
fn lines(more: &[&str], lines: &[u8]) -> Output {
    let mut command = headless();
    command
        .arg("lines")
        .args(more)
        .stdin(Stdio::piped())
        .stdout(Stdio::piped());
    let mut child = command.spawn().unwrap();
    child.stdin.take().unwrap().write_all(lines).unwrap();
    child.wait_with_output().unwrap()
}

#[test]
fn lines_without_a_vault_answer_what_needs_none_and_refuse_the_rest() {
    let input = b"{\"do\":\"advise\"}\n{\"do\":\"home\"}\nnonsense\n{\"do\":\"unlock\",\"passphrase\":\"x\"}\n";
    let output = lines(&[], input);
    assert!(output.status.success());
    let text = String::from_utf8(output.stdout).unwrap();
    let codes: Vec<&str> = text
        .lines()
        .map(|line| line.split('"').nth(5).unwrap())
        .collect();
    assert_eq!(
        codes,
        [
            "missing_field",
            "unknown_command",
            "bad_json",
            "unknown_command"
        ]
    );
}

#[test]
fn lines_without_a_vault_give_reasons_in_words() {
    let ask = concat!(
        r#"{"do":"advise","task":"object","person":{"flags":[],"back_nrs":8,"back_state":"volatile"},"#,
        r#""object":{"mass_known":true,"mass_kg":6,"start_height":"floor"}}"#,
        "\n",
    );
    let text = String::from_utf8(lines(&[], ask.as_bytes()).stdout).unwrap();
    assert!(text.starts_with(r#"{"ok":"#), "{text}");
    assert!(text.contains(r#""text":""#), "{text}");
}

#[test]
fn lines_with_a_vault_answer_every_command_and_keep_what_they_are_told() {
    let folder = tempfile::tempdir().unwrap();
    let vault = folder.path().join("new");
    let vault = vault.to_str().unwrap();
    let start = concat!(
        r#"{"do":"hello"}"#,
        "\n",
        r#"{"do":"first_start","use":"lift","passphrase":"ten bags of flour","again":"ten bags of flour","units":"kg"}"#,
        "\n",
        r#"{"do":"home"}"#,
        "\n",
    );
    let output = lines(&["--vault", vault], start.as_bytes());
    let text = String::from_utf8(output.stdout).unwrap();
    assert_eq!(
        text.lines()
            .filter(|line| line.starts_with(r#"{"ok":"#))
            .count(),
        3,
        "{text}"
    );

    let again = concat!(
        r#"{"do":"home"}"#,
        "\n",
        r#"{"do":"unlock","passphrase":"ten bags of flour"}"#,
        "\n",
    );
    let text = String::from_utf8(lines(&["--vault", vault], again.as_bytes()).stdout).unwrap();
    let replies: Vec<&str> = text.lines().collect();
    assert!(replies[0].contains(r#""code":"locked""#), "{text}");
    assert_eq!(replies[1], r#"{"ok":{"use":"lift"}}"#);
}

#[test]
fn words_that_make_no_sense_are_answered_with_how_to_call_it() {
    let output = headless().arg("serve").output().unwrap();
    assert_eq!(output.status.code(), Some(2));
    assert!(
        String::from_utf8(output.stderr)
            .unwrap()
            .contains("headless web")
    );
}

#[test]
fn a_vault_in_a_place_that_cannot_be_used_is_told() {
    let output = headless()
        .args(["web", "--vault", "/dev/null/vault"])
        .output()
        .unwrap();
    assert_eq!(output.status.code(), Some(1));
    assert!(!output.stderr.is_empty());
    assert!(output.stdout.is_empty());
}

#[test]
#[cfg(unix)]
fn the_page_is_served_until_asked_to_end_and_leaves_no_vault_behind() {
    let temporary = tempfile::tempdir().unwrap();
    let folders = || std::fs::read_dir(temporary.path()).unwrap().count();
    let mut child = headless()
        .arg("web")
        .env("TMPDIR", temporary.path())
        .stdout(Stdio::piped())
        .spawn()
        .unwrap();
    let mut address = String::new();
    BufReader::new(child.stdout.as_mut().unwrap())
        .read_line(&mut address)
        .unwrap();
    assert_eq!(folders(), 1);
    let folder = std::fs::read_dir(temporary.path())
        .unwrap()
        .next()
        .unwrap()
        .unwrap();
    assert!(mode_is_private(&folder.path().join("vault")));

    let (host, path) = address
        .trim()
        .strip_prefix("http://")
        .unwrap()
        .split_once('/')
        .unwrap();
    let mut stream = TcpStream::connect(host).unwrap();
    write!(
        stream,
        "GET /{path} HTTP/1.1\r\nhost: {host}\r\nconnection: close\r\n\r\n"
    )
    .unwrap();
    let mut reply = String::new();
    stream.read_to_string(&mut reply).unwrap();
    assert!(reply.starts_with("HTTP/1.1 303 "), "{reply}");

    let ended = Command::new("kill")
        .arg("-TERM")
        .arg(child.id().to_string())
        .status()
        .unwrap();
    assert!(ended.success());
    assert!(child.wait().unwrap().success());
    assert_eq!(folders(), 0);
}

#[cfg(unix)]
fn mode_is_private(folder: &Path) -> bool {
    use std::os::unix::fs::PermissionsExt;
    folder.metadata().unwrap().permissions().mode() & 0o077 == 0
}
