//! `headless web`: opens the app, serves its page, and clears up at the end.

use std::convert::Infallible;
use std::io::{self, Write};
use std::path::{Path, PathBuf};
use std::sync::Arc;
use std::time::Duration;

use app::{App, Taken};
use headless::web::{Answering, Server};
use headless::{Answer, Handed, Take};

use super::{Trouble, vault};

/// How often the vault is asked whether it has been left alone for too long.
const TICK: Duration = Duration::from_secs(5);

/// Serves until Ctrl+C or the system's request to end. A temporary vault is removed then.
pub(crate) fn serve(vault: Option<PathBuf>, demo: bool) -> Result<(), Trouble> {
    let (folder, temporary) = match vault {
        Some(folder) => (folder, None),
        None => {
            let temporary = tempfile::Builder::new().prefix("heftwell-").tempdir()?;
            // A temporary folder may be open to all; the app makes its own for this user alone.
            (temporary.path().join("vault"), Some(temporary))
        }
    };
    let served = serve_folder(&folder, demo);
    // Only now: the app has closed its files.
    if let Some(temporary) = temporary {
        temporary.close()?;
    }
    served
}

fn serve_folder(folder: &Path, demo: bool) -> Result<(), Trouble> {
    let app = vault::open(folder)?;
    if demo {
        app::demo::fill(&app)?;
    }
    let (commands, bytes) = (Arc::clone(&app), Arc::clone(&app));
    let answer: Answer = Arc::new(move |line| commands.answer(line));
    let take: Take = Arc::new(move |handed| hand_in(&bytes, handed));
    let runtime = tokio::runtime::Builder::new_current_thread()
        .enable_all()
        .build()?;
    let served = runtime.block_on(async {
        let mut end = End::listen()?;
        let server = Server::bind(Answering { answer, take }).await?;
        say(&server.opening_address())?;
        tokio::select! {
            never = server.serve() => match never? {},
            never = lock_when_idle(&app) => match never {},
            () = end.wait() => Ok(()),
        }
    });
    app.lock_now();
    served
}

fn hand_in(app: &App, handed: &Handed) -> String {
    match handed {
        Handed::Json(body) => app.take_json(body),
        Handed::Raw {
            kind,
            width,
            height,
            bytes,
        } => app.take(Taken {
            kind,
            width: *width,
            height: *height,
            bytes,
        }),
    }
}

async fn lock_when_idle(app: &App) -> Infallible {
    let mut ticks = tokio::time::interval(TICK);
    loop {
        ticks.tick().await;
        app.lock();
    }
}

/// The first line of output is the address, for people and for programs that start this one.
fn say(address: &str) -> io::Result<()> {
    let mut output = io::stdout().lock();
    writeln!(output, "{address}")?;
    output.flush()
}

/// The requests to end, heard from the moment this exists.
#[cfg(unix)]
struct End {
    interrupt: tokio::signal::unix::Signal,
    terminate: tokio::signal::unix::Signal,
}

#[cfg(unix)]
impl End {
    fn listen() -> io::Result<Self> {
        use tokio::signal::unix::{SignalKind, signal};
        Ok(Self {
            interrupt: signal(SignalKind::interrupt())?,
            terminate: signal(SignalKind::terminate())?,
        })
    }

    async fn wait(&mut self) {
        tokio::select! {
            _ = self.interrupt.recv() => (),
            _ = self.terminate.recv() => (),
        }
    }
}

/// The request to end.
#[cfg(not(unix))]
struct End;

#[cfg(not(unix))]
impl End {
    fn listen() -> io::Result<Self> {
        Ok(Self)
    }

    async fn wait(&mut self) {
        // A console that cannot be listened to ends the program by itself.
        let _ = tokio::signal::ctrl_c().await;
    }
}
