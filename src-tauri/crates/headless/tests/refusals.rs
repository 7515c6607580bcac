//! Every way to be turned away by `headless web`, spoken to in plain bytes as an attacker would.

#![cfg(feature = "app")]
#![allow(
    clippy::unwrap_used,
    clippy::panic,
    reason = "a test stops at the first surprise"
)]

#[allow(dead_code, reason = "shared with the ways to hand in bytes")]
mod visitor;

use visitor::{Visit, Visitor};

#[test]
fn the_opening_address_works_once_and_leads_to_the_page() {
    let visitor = Visitor::new();
    let reply = visitor.say(&visitor.opening_visit());
    assert_eq!(reply.status, 303);
    assert_eq!(reply.header("location"), Some("/"));
    let cookie = reply.header("set-cookie").unwrap();
    for attribute in ["; HttpOnly", "; SameSite=Strict", "; Path=/"] {
        assert!(cookie.contains(attribute), "{cookie}");
    }
    assert!(!cookie.contains("Domain"));

    let again = visitor.say(&visitor.opening_visit());
    assert_eq!(again.status, 403);
    assert_eq!(again.header("set-cookie"), None);
}

#[test]
fn a_wrong_token_is_refused_and_does_not_use_up_the_right_one() {
    let visitor = Visitor::new();
    for wrong in ["", "0", &"0".repeat(64), "../", "%00"] {
        let visit = Visit::get(&format!("/open/{wrong}"));
        assert_eq!(visitor.say(&visit).status, 403, "{wrong}");
    }
    let preview = Visit {
        method: "HEAD",
        ..visitor.opening_visit()
    };
    assert_eq!(visitor.say(&preview).status, 405);
    assert_eq!(visitor.say(&visitor.opening_visit()).status, 303);
}

#[test]
fn a_command_from_our_page_is_answered() {
    let visitor = Visitor::inside();
    let reply = visitor.say(&visitor.command("{\"do\":\"hello\"}"));
    assert_eq!(reply.status, 200);
    assert_eq!(reply.header("content-type"), Some("application/json"));
    assert_eq!(reply.body, "{\"do\":\"hello\"}");
}

#[test]
fn without_the_cookie_nothing_is_shown_not_even_what_exists() {
    let visitor = Visitor::inside();
    for cookie in [None, Some("heftwell=1"), Some("heftwell-1=0"), Some("")] {
        for path in ["/", "/index.html", "/no-such-file", "/command"] {
            let visit = Visit {
                cookie: cookie.map(str::to_owned),
                ..Visit::get(path)
            };
            assert_eq!(visitor.say(&visit).status, 403, "{path} {cookie:?}");
        }
        let command = Visit {
            cookie: cookie.map(str::to_owned),
            ..visitor.command("{}")
        };
        assert_eq!(visitor.say(&command).status, 403, "{cookie:?}");
    }
}

#[test]
fn any_other_host_is_refused() {
    let visitor = Visitor::inside();
    let port = visitor.port;
    for host in [
        format!("localhost:{port}"),
        "127.0.0.1".to_owned(),
        format!("127.0.0.1:{}", u32::from(port) + 1),
        format!("127.0.0.1:{port}.example.org"),
        format!("rebound.example.org:{port}"),
        format!("127.0.0.1:{port}, 127.0.0.1:{port}"),
        String::new(),
    ] {
        let visit = Visit {
            host: vec![host.clone()],
            ..visitor.command("{}")
        };
        assert_eq!(visitor.say(&visit).status, 421, "{host}");
    }
    let ours = format!("127.0.0.1:{port}");
    let twice = Visit {
        host: vec![ours.clone(), ours],
        ..visitor.command("{}")
    };
    assert!([400, 421].contains(&visitor.say(&twice).status));
    let none = Visit {
        host: vec![],
        ..visitor.command("{}")
    };
    assert!([400, 421].contains(&visitor.say(&none).status));
    let forwarded = Visit::get("http://example.org/");
    let forwarded = Visit {
        cookie: visitor.cookie.clone(),
        ..forwarded
    };
    assert_eq!(visitor.say(&forwarded).status, 421);
}

#[test]
fn a_command_from_any_other_page_is_refused() {
    let visitor = Visitor::inside();
    let port = visitor.port;
    for origin in [
        "null".to_owned(),
        "http://example.org".to_owned(),
        format!("http://localhost:{port}"),
        format!("https://127.0.0.1:{port}"),
        format!("http://127.0.0.1:{port}/"),
        "http://127.0.0.1".to_owned(),
    ] {
        let visit = Visit {
            origin: vec![origin.clone()],
            ..visitor.command("{}")
        };
        assert_eq!(visitor.say(&visit).status, 403, "{origin}");
    }
    let none = Visit {
        origin: vec![],
        ..visitor.command("{}")
    };
    assert_eq!(visitor.say(&none).status, 403);
    let ours = format!("http://127.0.0.1:{port}");
    let twice = Visit {
        origin: vec![ours.clone(), ours],
        ..visitor.command("{}")
    };
    assert_eq!(visitor.say(&twice).status, 403);
}

#[test]
fn what_the_browser_marks_as_cross_site_is_refused() {
    let visitor = Visitor::inside();
    for (site, status) in [
        ("same-origin", 200),
        ("same-site", 403),
        ("cross-site", 403),
        ("none", 403),
    ] {
        let visit = visitor.command("{}").with("sec-fetch-site", site);
        assert_eq!(visitor.say(&visit).status, status, "{site}");
    }
    for (site, refused) in [
        ("none", false),
        ("same-origin", false),
        ("cross-site", true),
    ] {
        let visit = Visit {
            cookie: visitor.cookie.clone(),
            ..Visit::get("/no-such-file")
        };
        let visit = visit.with("sec-fetch-site", site);
        assert_eq!(visitor.say(&visit).status == 403, refused, "{site}");
    }
}

#[test]
fn only_json_is_taken() {
    let visitor = Visitor::inside();
    for kind in [
        None,
        Some("text/plain"),
        Some("application/x-www-form-urlencoded"),
        Some("multipart/form-data; boundary=x"),
        Some("application/json, text/plain"),
        Some("application/jsonp"),
        Some("text/plain; application/json"),
    ] {
        let visit = Visit {
            kind: kind.map(str::to_owned),
            ..visitor.command("{}")
        };
        assert_eq!(visitor.say(&visit).status, 415, "{kind:?}");
    }
}

#[test]
fn other_methods_are_refused_and_the_allowed_ones_named() {
    let visitor = Visitor::inside();
    for method in [
        "GET", "HEAD", "PUT", "DELETE", "OPTIONS", "PATCH", "TRACE", "SPLICE",
    ] {
        let reply = visitor.say(&Visit {
            method,
            ..visitor.command("{}")
        });
        assert_eq!(
            (reply.status, reply.header("allow")),
            (405, Some("POST")),
            "{method}"
        );
    }
    for method in ["POST", "PUT", "DELETE", "OPTIONS", "TRACE"] {
        let visit = Visit {
            method,
            path: "/".into(),
            ..visitor.command("{}")
        };
        let reply = visitor.say(&visit);
        assert_eq!(
            (reply.status, reply.header("allow")),
            (405, Some("GET, HEAD")),
            "{method}"
        );
    }
}

#[test]
fn a_body_over_the_bound_is_refused_declared_or_not() {
    let visitor = Visitor::inside();
    let fits = "x".repeat(headless::LONGEST_LINE);
    assert_eq!(visitor.say(&visitor.command(&fits)).status, 200);
    let over = "x".repeat(headless::LONGEST_LINE + 1);
    assert_eq!(visitor.say(&visitor.command(&over)).status, 413);
    let undeclared = Visit {
        chunked: true,
        ..visitor.command(&over)
    };
    assert_eq!(visitor.say(&undeclared).status, 413);
    let undeclared = Visit {
        chunked: true,
        ..visitor.command(&fits)
    };
    assert_eq!(visitor.say(&undeclared).status, 200);
}

#[test]
fn a_body_that_is_no_text_is_refused() {
    let visitor = Visitor::inside();
    let visit = Visit {
        body: vec![0xff, 0xfe],
        ..visitor.command("")
    };
    assert_eq!(visitor.say(&visit).status, 400);
}

#[test]
fn no_path_leads_out_of_the_page() {
    let visitor = Visitor::inside();
    for path in [
        "/../Cargo.toml",
        "/..%2fCargo.toml",
        "/%2e%2e/Cargo.toml",
        "//etc/passwd",
        "/etc/passwd",
        "/./index.html",
        "/index.html%00.js",
        "/open",
    ] {
        let visit = Visit {
            cookie: visitor.cookie.clone(),
            ..Visit::get(path)
        };
        assert_eq!(visitor.say(&visit).status, 404, "{path}");
    }
}

#[test]
fn every_reply_is_strict() {
    let visitor = Visitor::inside();
    let page = Visit {
        cookie: visitor.cookie.clone(),
        ..Visit::get("/")
    };
    for visit in [
        visitor.command("{}"),
        page,
        Visit::get("/"),
        visitor.opening_visit(),
    ] {
        let reply = visitor.say(&visit);
        let policy = reply.header("content-security-policy").unwrap();
        for part in [
            "default-src 'none'",
            "script-src 'self'",
            "frame-ancestors 'none'",
        ] {
            assert!(policy.contains(part), "{policy}");
        }
        assert!(!policy.contains("unsafe"));
        assert_eq!(reply.header("cache-control"), Some("no-store"));
        assert_eq!(reply.header("x-content-type-options"), Some("nosniff"));
        assert_eq!(reply.header("x-frame-options"), Some("DENY"));
        assert_eq!(reply.header("referrer-policy"), Some("no-referrer"));
        assert_eq!(
            reply.header("cross-origin-resource-policy"),
            Some("same-origin")
        );
        assert_eq!(reply.header("access-control-allow-origin"), None);
    }
}

#[test]
fn it_listens_on_loopback_only() {
    let visitor = Visitor::new();
    assert!(visitor.address.ip().is_loopback());
    // Another address of the loopback network is another machine as far as the listener goes.
    assert!(std::net::TcpStream::connect(("127.0.0.2", visitor.port)).is_err());
}
