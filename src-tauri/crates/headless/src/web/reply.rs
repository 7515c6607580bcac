//! What goes back, always with the strict headers.

use http_body_util::Full;
use hyper::body::Bytes;
use hyper::header::{ALLOW, CONTENT_TYPE, HeaderName, HeaderValue, LOCATION, SET_COOKIE};
use hyper::{Response, StatusCode};

use super::embedded::Embedded;
use super::gate::Refusal;

/// As in the window, except that commands go to our own address and not over the bridge.
const POLICY: &str = "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' blob:; \
     media-src 'self' blob: mediastream:; connect-src 'self'; base-uri 'none'; form-action 'none'; \
     frame-ancestors 'none'";

const STRICT: [(&str, &str); 8] = [
    ("content-security-policy", POLICY),
    ("cache-control", "no-store"),
    ("cross-origin-opener-policy", "same-origin"),
    ("cross-origin-resource-policy", "same-origin"),
    (
        "permissions-policy",
        "camera=(self), microphone=(), geolocation=()",
    ),
    ("referrer-policy", "no-referrer"),
    ("x-content-type-options", "nosniff"),
    ("x-frame-options", "DENY"),
];

/// A whole answer.
pub(crate) type Reply = Response<Full<Bytes>>;

/// A file of the page.
pub(crate) fn file(file: &Embedded) -> Reply {
    strict(
        StatusCode::OK,
        HeaderValue::from_static(file.kind),
        Bytes::from_static(file.bytes),
    )
}

/// The answer to a command.
pub(crate) fn json(line: String) -> Reply {
    strict(
        StatusCode::OK,
        HeaderValue::from_static("application/json"),
        Bytes::from(line),
    )
}

/// The cookie, and on to the page.
pub(crate) fn enter(cookie: &str) -> Reply {
    let mut reply = text(StatusCode::SEE_OTHER, String::new());
    reply
        .headers_mut()
        .insert(LOCATION, HeaderValue::from_static("/"));
    if let Ok(cookie) = HeaderValue::from_str(cookie) {
        reply.headers_mut().insert(SET_COOKIE, cookie);
    }
    reply
}

/// A refusal, as one plain sentence.
pub(crate) fn refuse(refusal: Refusal) -> Reply {
    let mut reply = text(refusal.status(), format!("{refusal}\n"));
    if let Refusal::Method(allowed) = refusal {
        reply
            .headers_mut()
            .insert(ALLOW, HeaderValue::from_static(allowed));
    }
    reply
}

fn text(status: StatusCode, text: String) -> Reply {
    strict(
        status,
        HeaderValue::from_static("text/plain; charset=utf-8"),
        Bytes::from(text),
    )
}

fn strict(status: StatusCode, kind: HeaderValue, bytes: Bytes) -> Reply {
    let mut reply = Response::new(Full::new(bytes));
    *reply.status_mut() = status;
    reply.headers_mut().insert(CONTENT_TYPE, kind);
    for (name, value) in STRICT {
        reply.headers_mut().insert(
            HeaderName::from_static(name),
            HeaderValue::from_static(value),
        );
    }
    reply
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_page_is_as_closed_here_as_in_the_window() {
        let window = include_str!("../../../../tauri.conf.json");
        let bridge = "connect-src ipc: http://ipc.localhost";
        assert!(window.contains(&POLICY.replace("connect-src 'self'", bridge)));
    }
}
