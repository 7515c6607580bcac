//! The listener: takes requests, lets the gate decide, answers.

use std::convert::Infallible;
use std::net::Ipv4Addr;
use std::sync::Arc;
use std::time::Duration;

use http_body_util::{BodyExt, LengthLimitError, Limited};
use hyper::Request;
use hyper::body::Incoming;
use hyper::server::conn::http1;
use hyper::service::service_fn;
use hyper_util::rt::{TokioIo, TokioTimer};
use tokio::net::{TcpListener, TcpStream};
use tokio::sync::Semaphore;

use super::embedded;
use super::gate::{Gate, Pass, Refusal};
use super::reply::{self, Reply};
use crate::{Answer, LONGEST_LINE};

/// How long a head or a body may take to arrive; house rule, all traffic is local.
const PATIENCE: Duration = Duration::from_secs(10);
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

/// A listener on 127.0.0.1 that is ready to be visited.
pub struct Server {
    listener: TcpListener,
    gate: Arc<Gate>,
    answer: Answer,
}

impl Server {
    /// Listens on a port that the system picks. Must be called inside a tokio runtime.
    ///
    /// # Errors
    /// See [`ServerError`].
    pub async fn bind(answer: Answer) -> Result<Self, ServerError> {
        let listener = TcpListener::bind((Ipv4Addr::LOCALHOST, 0)).await?;
        let gate = Arc::new(Gate::new(listener.local_addr()?.port())?);
        Ok(Self {
            listener,
            gate,
            answer,
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
            let (gate, answer) = (Arc::clone(&self.gate), Arc::clone(&self.answer));
            tokio::spawn(async move {
                converse(stream, gate, answer).await;
                drop(place);
            });
        }
    }
}

/// Answers the requests of one connection.
async fn converse(stream: TcpStream, gate: Arc<Gate>, answer: Answer) {
    let service = service_fn(|request| {
        let (gate, answer) = (Arc::clone(&gate), Arc::clone(&answer));
        async move { Ok::<_, Infallible>(respond(request, &gate, answer).await) }
    });
    let connection = http1::Builder::new()
        .timer(TokioTimer::new())
        .header_read_timeout(PATIENCE)
        .serve_connection(TokioIo::new(stream), service);
    // A browser that hangs up in the middle is no failure of ours.
    let _ = connection.await;
}

async fn respond(request: Request<Incoming>, gate: &Gate, answer: Answer) -> Reply {
    let (head, body) = request.into_parts();
    let replied = match gate.check(&head) {
        Ok(Pass::Enter) => Ok(reply::enter(&gate.set_cookie())),
        Ok(Pass::File(path)) => embedded::find(&path)
            .map(|file| reply::file(&file))
            .ok_or(Refusal::NotFound),
        Ok(Pass::Command) => command(body, answer).await.map(reply::json),
        Err(refusal) => Err(refusal),
    };
    replied.unwrap_or_else(reply::refuse)
}

/// Reads the body within its bounds and lets the app answer it away from the listener's thread.
async fn command(body: Incoming, answer: Answer) -> Result<String, Refusal> {
    let whole = tokio::time::timeout(PATIENCE, Limited::new(body, LONGEST_LINE).collect());
    let bytes = match whole.await {
        Ok(Ok(collected)) => collected.to_bytes(),
        Ok(Err(error)) if error.is::<LengthLimitError>() => return Err(Refusal::TooLong),
        Ok(Err(_)) | Err(_) => return Err(Refusal::Body),
    };
    let line = String::from_utf8(bytes.to_vec()).map_err(|_| Refusal::Body)?;
    tokio::task::spawn_blocking(move || answer(&line))
        .await
        .map_err(|_| Refusal::Body)
}
