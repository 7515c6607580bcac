//! Measurements. Each claim is a ratio of two things measured in turn within one run, so that a busy
//! machine slows both alike; a time by itself is only told beside it. No test depends on any of it.
//!
//! `bench` measures all; `bench judgement vault` only those. `bench lines` answers JSON lines, for the
//! script that evaluates the same postures with a library of others.

#![forbid(unsafe_code)]
#![allow(
    clippy::print_stdout,
    clippy::print_stderr,
    reason = "a command line tool talks to its user through both streams"
)]

use std::io::{BufRead, Write};
use std::process::ExitCode;

mod clock;
mod figure;
mod handing;
mod judge;
mod looking;
mod paper;
mod place;
mod quarter;
mod reading;
mod request;
mod screen;
mod size;
mod start;
mod store;
mod trouble;

use trouble::Trouble;

/// A part of the measurements: its name and what measures it.
type Part = (&'static str, fn() -> Result<(), Trouble>);

const PARTS: [Part; 9] = [
    ("judgement", judge::measure),
    ("figure", figure::measure),
    ("vault", store::measure),
    ("looking", looking::measure),
    ("handing", handing::measure),
    ("paper", paper::measure),
    ("reading", reading::measure),
    ("start", start::measure),
    ("size", size::measure),
];

fn main() -> ExitCode {
    let words: Vec<String> = std::env::args().skip(1).collect();
    match run(&words) {
        Ok(()) => ExitCode::SUCCESS,
        Err(trouble) => {
            eprintln!("bench: {trouble}");
            ExitCode::FAILURE
        }
    }
}

fn run(words: &[String]) -> Result<(), Trouble> {
    if words == ["lines"] {
        return answer_lines();
    }
    let known = |word: &String| PARTS.iter().any(|(name, _)| name == word);
    if let Some(stranger) = words.iter().find(|word| !known(word)) {
        return Err(Trouble::Word(stranger.clone()));
    }
    for (name, measure) in PARTS {
        if words.is_empty() || words.iter().any(|word| word == name) {
            println!("\n== {name}");
            measure()?;
        }
    }
    Ok(())
}

fn answer_lines() -> Result<(), Trouble> {
    let mut out = std::io::stdout().lock();
    for line in std::io::stdin().lock().lines() {
        writeln!(out, "{}", door::answer_alone(&line?))?;
    }
    Ok(())
}
