//! The listener: takes requests, lets the gate decide, answers.

use std::convert::Infallible;
use std::net::Ipv4Addr;
use std::sync::Arc;
use std::time::Duration;

use http_body_util::{BodyExt, LengthLimitError, Limited};
use hyper::Request;
use hyper::body::{Bytes, Incoming};
use hyper::header::HeaderName;
use hyper::http::request::Parts;
use hyper::server::conn::http1;
use hyper::service::service_fn;
use hyper_util::rt::{TokioIo, TokioTimer};
use tokio::net::{TcpListener, TcpStream};
use tokio::sync::Semaphore;

use super::embedded;
use super::gate::{self, Form, Gate, Pass, Refusal};
use super::reply::{self, Reply};
use crate::{Answer, Handed, LONGEST_LINE, Take};

/// How long a head or a body may take to arrive; house rule, all traffic is local.
const PATIENCE: Duration = Duration::from_secs(10);
/// What bytes are, and the size of a frame, where they are handed in raw.
const KIND: HeaderName = HeaderName::from_static("x-kind");
const WIDTH: HeaderName = HeaderName::from_static("x-width");
const HEIGHT: HeaderName = HeaderName::from_static("x-height");
/// How many connections are open at once; a browser holds about six.
const MOST_CONNECTIONS: usize = 32;

/// Why the page cannot be served.
#[derive(Debug, thiserror::Error)]
pub enum ServerError {
    /// No port, or the listener broke.
    #[error("cannot listen on 127.0.0.1: {0}")]
    Listen(#[from] std::io::Error),
    /// No randomness for the token and the cookie.
    #[error("the system gives no randomness: {0}")]
    Randomness(#[from] app::RandomnessError),
}

/// What answers: commands, and bytes handed in.
#[derive(Clone)]
pub struct Answering {
    /// Commands.
    pub answer: Answer,
    /// Frames, photos and files.
    pub take: Take,
}

/// A listener on 127.0.0.1 that is ready to be visited.
pub struct Server {
    listener: TcpListener,
    gate: Arc<Gate>,
    answering: Answering,
}

impl Server {
    /// Listens on a port that the system picks. Must be called inside a tokio runtime.
    ///
    /// # Errors
    /// See [`ServerError`].
    pub async fn bind(answering: Answering) -> Result<Self, ServerError> {
        let listener = TcpListener::bind((Ipv4Addr::LOCALHOST, 0)).await?;
        let gate = Arc::new(Gate::new(listener.local_addr()?.port())?);
        Ok(Self {
            listener,
            gate,
            answering,
        })
    }

    /// The address that opens the page, once.
    pub fn opening_address(&self) -> String {
        self.gate.opening_address()
    }

    /// Serves until the future is dropped.
    ///
    /// # Errors
    /// When the listener itself breaks; a broken connection ends only itself.
    pub async fn serve(self) -> Result<Infallible, ServerError> {
        let places = Arc::new(Semaphore::new(MOST_CONNECTIONS));
        loop {
            let place = Arc::clone(&places).acquire_owned().await;
            let (stream, _) = self.listener.accept().await?;
            let (gate, answering) = (Arc::clone(&self.gate), self.answering.clone());
            tokio::spawn(async move {
                converse(stream, gate, answering).await;
                drop(place);
            });
        }
    }
}

/// Answers the requests of one connection.
async fn converse(stream: TcpStream, gate: Arc<Gate>, answering: Answering) {
    let service = service_fn(|request| {
        let (gate, answering) = (Arc::clone(&gate), answering.clone());
        async move { Ok::<_, Infallible>(respond(request, &gate, answering).await) }
    });
    let connection = http1::Builder::new()
        .timer(TokioTimer::new())
        .header_read_timeout(PATIENCE)
        .serve_connection(TokioIo::new(stream), service);
    // A browser that hangs up in the middle is no failure of ours.
    let _ = connection.await;
}

async fn respond(request: Request<Incoming>, gate: &Gate, answering: Answering) -> Reply {
    let (head, body) = request.into_parts();
    let replied = match gate.check(&head) {
        Ok(Pass::Enter) => Ok(reply::enter(&gate.set_cookie())),
        Ok(Pass::File(path)) => embedded::find(&path)
            .map(|file| reply::file(&file))
            .ok_or(Refusal::NotFound),
        Ok(Pass::Command) => command(body, answering.answer).await.map(reply::json),
        Ok(Pass::Take(form)) => take(&head, form, body, answering.take)
            .await
            .map(reply::json),
        Err(refusal) => Err(refusal),
    };
    replied.unwrap_or_else(reply::refuse)
}

/// Lets the app answer a command away from the listener's thread.
async fn command(body: Incoming, answer: Answer) -> Result<String, Refusal> {
    let bytes = read(body, LONGEST_LINE).await?;
    let line = String::from_utf8(bytes.to_vec()).map_err(|_| Refusal::Body)?;
    tokio::task::spawn_blocking(move || answer(&line))
        .await
        .map_err(|_| Refusal::Body)
}

/// Hands bytes to the app away from the listener's thread.
async fn take(head: &Parts, form: Form, body: Incoming, take: Take) -> Result<String, Refusal> {
    let bytes = read(body, form.longest()).await?.to_vec();
    let side = |name| gate::only(head, name).and_then(|side| side.parse().ok());
    let handed = match form {
        Form::Raw => Handed::Raw {
            kind: gate::only(head, &KIND).ok_or(Refusal::Body)?.to_owned(),
            width: side(&WIDTH).unwrap_or_default(),
            height: side(&HEIGHT).unwrap_or_default(),
            bytes,
        },
        Form::Json => Handed::Json(bytes),
    };
    tokio::task::spawn_blocking(move || take(&handed))
        .await
        .map_err(|_| Refusal::Body)
}

/// Reads a body within its bounds.
async fn read(body: Incoming, longest: usize) -> Result<Bytes, Refusal> {
    let whole = tokio::time::timeout(PATIENCE, Limited::new(body, longest).collect());
    match whole.await {
        Ok(Ok(collected)) => Ok(collected.to_bytes()),
        Ok(Err(error)) if error.is::<LengthLimitError>() => Err(Refusal::TooLong),
        Ok(Err(_)) | Err(_) => Err(Refusal::Body),
    }
}
