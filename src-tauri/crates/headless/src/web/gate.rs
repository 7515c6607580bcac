//! Who may pass: every check on a request's head, in one place and without any I/O.

use std::sync::atomic::{AtomicBool, Ordering};

use hyper::header::{CONTENT_LENGTH, CONTENT_TYPE, COOKIE, HOST, HeaderName, ORIGIN};
use hyper::http::request::Parts;
use hyper::{Method, StatusCode};

use app::{LONGEST_FILE, LONGEST_JSON};

use super::secret::Secret;
use crate::LONGEST_LINE;

/// The one address that takes commands.
const COMMAND: &str = "/command";
/// The one address that takes frames, photos and files.
const TAKE: &str = "/take";
/// The opening address, before the token.
const OPEN: &str = "/open/";
const FETCH_SITE: HeaderName = HeaderName::from_static("sec-fetch-site");

/// What a request that passed may have.
#[derive(Debug, PartialEq, Eq)]
pub enum Pass {
    /// The first visit: the cookie, and on to the page.
    Enter,
    /// A file of the page, by its path under `ui/`; it may not exist.
    File(String),
    /// The answer to the command in the body.
    Command,
    /// What is said to the bytes in the body.
    Take(Form),
}

/// How bytes are handed in.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Form {
    /// As they are, with their kind and size in the head.
    Raw,
    /// As text in a JSON object, with their kind and size.
    Json,
}

impl Form {
    /// The longest body, in bytes.
    pub(super) fn longest(self) -> usize {
        match self {
            Self::Raw => LONGEST_FILE,
            Self::Json => LONGEST_JSON,
        }
    }
}

/// Why a request is turned away.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
pub enum Refusal {
    /// `Host` is missing, doubled, or not exactly our address (a name that someone pointed here).
    #[error("this is not the address to use")]
    Host,
    /// Another page's script or form sent this.
    #[error("another page may not use this one")]
    Origin,
    /// The opening token is wrong or was used before.
    #[error("this opening address is used up or wrong: start the program again")]
    Token,
    /// The cookie is missing or wrong.
    #[error("open the address that the program printed first")]
    Session,
    /// No such page.
    #[error("there is nothing here")]
    NotFound,
    /// Not GET or HEAD on the page, not POST on the command address.
    #[error("this method is not taken here; allowed: {0}")]
    Method(&'static str),
    /// The body is not declared as `application/json`.
    #[error("only application/json is taken")]
    NotJson,
    /// The body is not declared as bytes or as JSON.
    #[error("only application/octet-stream and application/json are taken")]
    NotBytes,
    /// The body is over the bound of its address, such as [`LONGEST_LINE`].
    #[error("the body is too long")]
    TooLong,
    /// The body did not arrive whole and in time, is not UTF-8, or is not what its head says.
    #[error("the body cannot be read")]
    Body,
}

impl Refusal {
    /// The status code to answer with.
    pub fn status(self) -> StatusCode {
        match self {
            Self::Host => StatusCode::MISDIRECTED_REQUEST,
            Self::Origin | Self::Token | Self::Session => StatusCode::FORBIDDEN,
            Self::NotFound => StatusCode::NOT_FOUND,
            Self::Method(_) => StatusCode::METHOD_NOT_ALLOWED,
            Self::NotJson | Self::NotBytes => StatusCode::UNSUPPORTED_MEDIA_TYPE,
            Self::TooLong => StatusCode::PAYLOAD_TOO_LARGE,
            Self::Body => StatusCode::BAD_REQUEST,
        }
    }
}

/// What the gate knows: its own address, the opening token and the cookie.
#[derive(Debug)]
pub struct Gate {
    host: String,
    origin: String,
    cookie_name: String,
    cookie: Secret,
    token: Secret,
    token_used: AtomicBool,
}

impl Gate {
    /// A gate for 127.0.0.1 at `port`, with a new token and a new cookie.
    ///
    /// # Errors
    /// When the system has no randomness to give.
    pub fn new(port: u16) -> Result<Self, app::RandomnessError> {
        let host = format!("127.0.0.1:{port}");
        Ok(Self {
            origin: format!("http://{host}"),
            // Cookies are kept per host, not per port: two at once must not share a name.
            cookie_name: format!("heftwell-{port}"),
            cookie: Secret::new()?,
            token: Secret::new()?,
            token_used: AtomicBool::new(false),
            host,
        })
    }

    /// The address that opens the page, once.
    pub fn opening_address(&self) -> String {
        format!("{}{OPEN}{}", self.origin, self.token.word())
    }

    /// The `Set-Cookie` value for the browser that came with the token.
    pub(super) fn set_cookie(&self) -> String {
        format!(
            "{}={}; Path=/; HttpOnly; SameSite=Strict",
            self.cookie_name,
            self.cookie.word()
        )
    }

    /// Checks a request's head.
    ///
    /// # Errors
    /// See [`Refusal`]; the first check that fails names it.
    pub fn check(&self, head: &Parts) -> Result<Pass, Refusal> {
        // A request to be forwarded names its target in the first line, past the Host header.
        if head.uri.authority().is_some() || only(head, &HOST) != Some(&self.host) {
            return Err(Refusal::Host);
        }
        self.check_origin(head)?;
        let path = head.uri.path();
        let reads = matches!(head.method, Method::GET | Method::HEAD);
        if let Some(token) = path.strip_prefix(OPEN) {
            // HEAD is not taken: a link preview must not use up the token.
            if head.method != Method::GET {
                return Err(Refusal::Method("GET"));
            }
            return self.enter(token);
        }
        if !self.has_cookie(head) {
            return Err(Refusal::Session);
        }
        if path == COMMAND {
            if head.method != Method::POST {
                return Err(Refusal::Method("POST"));
            }
            return check_command(head);
        }
        if path == TAKE {
            if head.method != Method::POST {
                return Err(Refusal::Method("POST"));
            }
            return check_take(head);
        }
        if !reads {
            return Err(Refusal::Method("GET, HEAD"));
        }
        let file = path.strip_prefix('/').ok_or(Refusal::NotFound)?;
        Ok(Pass::File(if file.is_empty() {
            "index.html".to_owned()
        } else {
            file.to_owned()
        }))
    }

    /// A command must say that it comes from our page; nothing may say that it comes from another.
    fn check_origin(&self, head: &Parts) -> Result<(), Refusal> {
        let reads = matches!(head.method, Method::GET | Method::HEAD);
        let origin_fits = match (count(head, &ORIGIN), only(head, &ORIGIN)) {
            (0, _) => reads,
            (_, Some(origin)) => origin == self.origin,
            _ => false,
        };
        let site_fits = match (count(head, &FETCH_SITE), only(head, &FETCH_SITE)) {
            (0, _) | (_, Some("same-origin")) => true,
            (_, Some("none")) => reads,
            _ => false,
        };
        if origin_fits && site_fits {
            Ok(())
        } else {
            Err(Refusal::Origin)
        }
    }

    fn enter(&self, token: &str) -> Result<Pass, Refusal> {
        if self.token.matches(token) && !self.token_used.swap(true, Ordering::SeqCst) {
            Ok(Pass::Enter)
        } else {
            Err(Refusal::Token)
        }
    }

    fn has_cookie(&self, head: &Parts) -> bool {
        only(head, &COOKIE).is_some_and(|cookies| {
            cookies
                .split("; ")
                .filter_map(|cookie| cookie.split_once('='))
                .any(|(name, value)| name == self.cookie_name && self.cookie.matches(value))
        })
    }
}

fn check_command(head: &Parts) -> Result<Pass, Refusal> {
    // A plain form can send three content types without asking first; this is none of them.
    if only(head, &CONTENT_TYPE) != Some("application/json") {
        return Err(Refusal::NotJson);
    }
    check_length(head, LONGEST_LINE)?;
    Ok(Pass::Command)
}

fn check_take(head: &Parts) -> Result<Pass, Refusal> {
    // As with commands: neither of the two is what a plain form can send.
    let form = match only(head, &CONTENT_TYPE) {
        Some("application/octet-stream") => Form::Raw,
        Some("application/json") => Form::Json,
        _ => return Err(Refusal::NotBytes),
    };
    check_length(head, form.longest())?;
    Ok(Pass::Take(form))
}

/// A body that says beforehand that it is too long is not even read.
fn check_length(head: &Parts, longest: usize) -> Result<(), Refusal> {
    let declared = only(head, &CONTENT_LENGTH).and_then(|length| length.parse::<usize>().ok());
    if declared.is_some_and(|length| length > longest) {
        return Err(Refusal::TooLong);
    }
    Ok(())
}

fn count(head: &Parts, name: &HeaderName) -> usize {
    head.headers.get_all(name).iter().count()
}

/// The header's value if it is there exactly once and is plain text.
pub(super) fn only<'h>(head: &'h Parts, name: &HeaderName) -> Option<&'h str> {
    let mut values = head.headers.get_all(name).iter();
    match (values.next(), values.next()) {
        (Some(value), None) => value.to_str().ok(),
        _ => None,
    }
}
