//! Every way to be turned away with bytes at `/take`. What it shares with commands is tried here again.

#![cfg(feature = "app")]
#![cfg(test)]
#![allow(
    clippy::unwrap_used,
    clippy::panic,
    reason = "a test stops at the first surprise"
)]

#[allow(dead_code, reason = "shared with the refusals of commands")]
mod visitor;

use app::LONGEST_FILE;
use visitor::{Visit, Visitor};

#[test]
fn a_frame_is_taken_raw_and_as_text() {
    let visitor = Visitor::inside();
    let reply = visitor.say(&visitor.frame());
    assert_eq!(reply.status, 200);
    assert_eq!(reply.header("content-type"), Some("application/json"));
    assert_eq!(reply.body, "frame 2x3 6");

    let text = r#"{"kind":"frame","width":2,"height":3,"base64":"YWJjZGVm"}"#;
    let visit = Visit {
        path: "/take".to_owned(),
        ..visitor.command(text)
    };
    assert_eq!(visitor.say(&visit).body, text);
}

#[test]
fn a_photo_and_a_file_need_no_size() {
    let visitor = Visitor::inside();
    for kind in ["photo", "file"] {
        let visit = Visit {
            more: vec![("x-kind", kind.to_owned())],
            ..visitor.frame()
        };
        assert_eq!(visitor.say(&visit).body, format!("{kind} 0x0 6"));
    }
}

#[test]
fn without_our_host_origin_or_cookie_nothing_is_taken() {
    let visitor = Visitor::inside();
    let port = visitor.port;
    let strange = Visit {
        cookie: None,
        ..visitor.frame()
    };
    assert_eq!(visitor.say(&strange).status, 403);
    for origin in [
        vec![],
        vec!["null".to_owned()],
        vec!["http://example.org".to_owned()],
        vec![format!("http://localhost:{port}")],
    ] {
        let visit = Visit {
            origin: origin.clone(),
            ..visitor.frame()
        };
        assert_eq!(visitor.say(&visit).status, 403, "{origin:?}");
    }
    for host in [
        format!("localhost:{port}"),
        "rebound.example.org".to_owned(),
    ] {
        let visit = Visit {
            host: vec![host.clone()],
            ..visitor.frame()
        };
        assert_eq!(visitor.say(&visit).status, 421, "{host}");
    }
    for site in ["same-site", "cross-site", "none"] {
        let visit = visitor.frame().with("sec-fetch-site", site);
        assert_eq!(visitor.say(&visit).status, 403, "{site}");
    }
}

#[test]
fn only_bytes_and_json_are_taken() {
    let visitor = Visitor::inside();
    for kind in [
        None,
        Some("text/plain"),
        Some("application/x-www-form-urlencoded"),
        Some("multipart/form-data; boundary=x"),
        Some("application/octet-stream; x=y"),
        Some("image/jpeg"),
    ] {
        let visit = Visit {
            kind: kind.map(str::to_owned),
            ..visitor.frame()
        };
        assert_eq!(visitor.say(&visit).status, 415, "{kind:?}");
    }
    // And bytes are no command.
    let visit = Visit {
        path: "/command".to_owned(),
        ..visitor.frame()
    };
    assert_eq!(visitor.say(&visit).status, 415);
}

#[test]
fn other_methods_are_refused() {
    let visitor = Visitor::inside();
    for method in ["GET", "HEAD", "PUT", "DELETE", "OPTIONS", "PATCH"] {
        let reply = visitor.say(&Visit {
            method,
            ..visitor.frame()
        });
        assert_eq!(
            (reply.status, reply.header("allow")),
            (405, Some("POST")),
            "{method}"
        );
    }
}

#[test]
fn bytes_that_do_not_say_once_what_they_are_are_refused() {
    let visitor = Visitor::inside();
    for kinds in [vec![], vec!["photo", "file"]] {
        let named = kinds.iter().map(|kind| ("x-kind", (*kind).to_owned()));
        let visit = Visit {
            more: named.collect(),
            ..visitor.frame()
        };
        assert_eq!(visitor.say(&visit).status, 400, "{kinds:?}");
    }
    // A size that is no number is none; the app then refuses the frame.
    for size in ["-1", "4294967297", "two", ""] {
        let visit = Visit {
            more: vec![("x-kind", "frame".to_owned()), ("x-width", size.to_owned())],
            ..visitor.frame()
        };
        assert_eq!(visitor.say(&visit).body, "frame 0x0 6", "{size}");
    }
}

#[test]
fn a_body_over_the_bound_is_refused_declared_or_not() {
    let visitor = Visitor::inside();
    let photo = |length: usize, chunked| Visit {
        more: vec![("x-kind", "photo".to_owned())],
        body: vec![1; length],
        chunked,
        ..visitor.frame()
    };
    assert_eq!(visitor.say(&photo(LONGEST_FILE, false)).status, 200);
    for chunked in [false, true] {
        assert_eq!(visitor.say(&photo(LONGEST_FILE + 1, chunked)).status, 413);
    }
    // Commands stay as short as they were.
    let long = Visit {
        body: vec![b'x'; headless::LONGEST_LINE + 1],
        ..visitor.command("")
    };
    assert_eq!(visitor.say(&long).status, 413);
}
