//! Carries out what the command line asks for.

#[cfg(feature = "app")]
mod page;
#[cfg(feature = "app")]
mod vault;

use std::io;
use std::path::Path;
use std::sync::Arc;

#[cfg(feature = "app")]
use app::Sentences;
#[cfg(feature = "app")]
use app::words::{Language, Units};
use headless::Answer;
use headless::arguments::Arguments;
use headless::lines::answer_lines;

/// Why it cannot go on.
#[derive(Debug, thiserror::Error)]
pub(crate) enum Trouble {
    /// Input or output broke.
    #[error("cannot read or write: {0}")]
    Stream(#[from] io::Error),
    /// The vault's folder cannot be used.
    #[cfg(feature = "app")]
    #[error("{0}")]
    App(#[from] app::AppError),
    /// The demo data cannot be made.
    #[cfg(feature = "app")]
    #[error("no demo data: {0}")]
    Demo(#[from] app::demo::DemoError),
    /// The page cannot be served.
    #[cfg(feature = "app")]
    #[error("{0}")]
    Server(#[from] headless::web::ServerError),
    /// This program was built for the door's own commands only.
    #[cfg(not(feature = "app"))]
    #[error("this program was built without the app: only `lines` without a vault is left")]
    WithoutApp,
}

/// Carries it out, to the end of the input or until it is told to end.
pub(crate) fn run(arguments: Arguments) -> Result<(), Trouble> {
    match arguments {
        Arguments::Lines { vault: None } => lines(&door_alone()),
        Arguments::Lines {
            vault: Some(folder),
        } => lines(&with_vault(&folder)?),
        #[cfg(feature = "app")]
        Arguments::Web { vault, demo } => page::serve(vault, demo),
        #[cfg(not(feature = "app"))]
        Arguments::Web { .. } => Err(Trouble::WithoutApp),
    }
}

fn lines(answer: &Answer) -> Result<(), Trouble> {
    Ok(answer_lines(
        io::stdin().lock(),
        io::stdout().lock(),
        answer,
    )?)
}

/// The commands that need no vault, and no others; reasons with sentences, in English and kilograms.
#[cfg(feature = "app")]
fn door_alone() -> Answer {
    let texts = Sentences::new(Language::English, Units::Kilograms);
    let unknown = door::answer_alone;
    Arc::new(move |line| door::answer_with(line, &texts).unwrap_or_else(|| unknown(line)))
}

/// The commands that need no vault, and no others; reasons by their ids only.
#[cfg(not(feature = "app"))]
fn door_alone() -> Answer {
    Arc::new(door::answer_alone)
}

#[cfg(feature = "app")]
fn with_vault(folder: &Path) -> Result<Answer, Trouble> {
    let app = vault::open(folder)?;
    Ok(Arc::new(move |line| app.answer(line)))
}

#[cfg(not(feature = "app"))]
fn with_vault(_: &Path) -> Result<Answer, Trouble> {
    Err(Trouble::WithoutApp)
}
