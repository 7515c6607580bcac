//! `fuzz`: throws made-up input at the parsers for a while. `test` only replays what was found.

use std::path::{Path, PathBuf};

use crate::args::Wish;
use crate::child;
use crate::debian;
use crate::needs::{COMPILE, FUZZ};
use crate::tools;
use crate::tree;
use crate::trouble::Trouble;

/// Minutes for each target unless told.
const MINUTES: u64 = 10;

/// Runs every fuzz target, or the named one, for so many minutes.
///
/// # Errors
/// [`Trouble::Argument`] for minutes that are no number, and what building or a target gives.
pub(crate) fn run(wish: &Wish) -> Result<(), Trouble> {
    let (minutes, named) = read(&wish.words)?;
    debian::install(&[COMPILE, FUZZ].concat())?;
    let fuzz = tools::FUZZ.ready()?;
    for target in targets(&fuzz, named)? {
        println!("\n== {target}: {minutes} minutes");
        let mut command = child::program(&fuzz);
        command.args(["run", "--fuzz-dir", FOLDER, "--sanitizer", "none", &target]);
        command.args(inputs(&target)?);
        command.args(["--", &format!("-max_total_time={}", minutes * 60)]);
        let words = tree::root().join(FOLDER).join(format!("{target}.dict"));
        if words.is_file() {
            command.arg(format!("-dict={}", words.display()));
        }
        allow_unstable(&mut command);
        child::run(command)?;
    }
    Ok(())
}

/// Where inputs come from. The first folder also takes what is found, so that the kept corpus,
/// which is in the tree, only grows when somebody means it to.
fn inputs(target: &str) -> Result<Vec<PathBuf>, Trouble> {
    let found = tree::target().join("fuzz-found").join(target);
    std::fs::create_dir_all(&found).map_err(|why| Trouble::File {
        path: found.clone(),
        why,
    })?;
    let kept = tree::root().join(FOLDER).join("corpus").join(target);
    Ok(if kept.is_dir() {
        vec![found, kept]
    } else {
        vec![found]
    })
}

const FOLDER: &str = "tests/fuzz";

/// Coverage feedback is an unstable compiler flag; this lets the stable compiler take it, so that
/// no second toolchain is needed. Nothing that is shipped is built this way.
fn allow_unstable(command: &mut std::process::Command) {
    command.env("RUSTC_BOOTSTRAP", "1");
}

fn read(words: &[String]) -> Result<(u64, Option<&str>), Trouble> {
    match words {
        [] => Ok((MINUTES, None)),
        [minutes] => Ok((number(minutes)?, None)),
        [minutes, target] => Ok((number(minutes)?, Some(target))),
        _ => Err(Trouble::Argument(
            "fuzz takes minutes and one target".to_owned(),
        )),
    }
}

fn number(word: &str) -> Result<u64, Trouble> {
    match word.parse() {
        Ok(minutes @ 1..=1440) => Ok(minutes),
        _ => Err(Trouble::Argument(format!(
            "{word} is no number of minutes from 1 to 1440"
        ))),
    }
}

fn targets(fuzz: &Path, named: Option<&str>) -> Result<Vec<String>, Trouble> {
    if let Some(name) = named {
        return Ok(vec![name.to_owned()]);
    }
    let mut command = child::program(fuzz);
    command.args(["list", "--fuzz-dir", FOLDER]);
    let names = child::ask(command).unwrap_or_default();
    let names: Vec<_> = names.lines().map(str::to_owned).collect();
    if names.is_empty() {
        return Err(Trouble::Nothing("tests/fuzz has no targets"));
    }
    Ok(names)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn words(line: &str) -> Vec<String> {
        line.split_whitespace().map(str::to_owned).collect()
    }

    #[test]
    fn ten_minutes_unless_told() {
        assert_eq!(read(&[]).unwrap(), (10, None));
        assert_eq!(read(&words("3")).unwrap(), (3, None));
        assert_eq!(read(&words("3 line")).unwrap(), (3, Some("line")));
    }

    #[test]
    fn refuses_minutes_that_make_no_sense() {
        for line in ["line", "0", "-1", "1441", "3 line more"] {
            assert!(read(&words(line)).is_err(), "{line}");
        }
    }
}
