//! The command line, read into one struct.

use crate::trouble::Trouble;

/// What the user asked for.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub(crate) struct Wish {
    /// Which subcommand.
    pub(crate) command: Verb,
    /// Steps to run; empty means all.
    pub(crate) only: Vec<String>,
    /// Repair instead of only reporting.
    pub(crate) fix: bool,
    /// Start with invented data.
    pub(crate) demo: bool,
    /// Serve to a browser even with a screen.
    pub(crate) browser: bool,
    /// Words after the subcommand that are no options.
    pub(crate) words: Vec<String>,
    /// Everything after `--`, handed on untouched.
    pub(crate) rest: Vec<String>,
}

/// The subcommands.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub(crate) enum Verb {
    /// Open the app.
    Start,
    /// Every check and test.
    Test,
    /// The quick part.
    Check,
    /// Measurements.
    Bench,
    /// Live fuzzing.
    Fuzz,
    /// From screen to camera.
    Pixels,
    /// The code's own pages.
    Docs,
    /// The help text.
    #[default]
    Help,
}

/// Reads the words after `cargo xtask`.
///
/// # Errors
/// [`Trouble::Argument`] for a word that is unknown or does not belong to the subcommand.
pub(crate) fn read(words: impl Iterator<Item = String>) -> Result<Wish, Trouble> {
    let mut words = words;
    let mut wish = Wish {
        command: verb(words.next().as_deref())?,
        ..Wish::default()
    };
    while let Some(word) = words.next() {
        match word.as_str() {
            "--only" => {
                let steps = words
                    .next()
                    .ok_or_else(|| bad("--only needs a step's name"))?;
                wish.only.extend(steps.split(',').map(str::to_owned));
            }
            "--fix" => wish.fix = true,
            "--demo" => wish.demo = true,
            "--browser" => wish.browser = true,
            "--" => wish.rest = words.by_ref().collect(),
            "-h" | "--help" => wish.command = Verb::Help,
            _ if word.starts_with('-') => return Err(bad(&format!("there is no option {word}"))),
            _ => wish.words.push(word),
        }
    }
    belongs(&wish)?;
    Ok(wish)
}

fn verb(word: Option<&str>) -> Result<Verb, Trouble> {
    match word {
        Some("start") => Ok(Verb::Start),
        Some("test") => Ok(Verb::Test),
        Some("check") => Ok(Verb::Check),
        Some("bench") => Ok(Verb::Bench),
        Some("fuzz") => Ok(Verb::Fuzz),
        Some("pixels") => Ok(Verb::Pixels),
        Some("docs") => Ok(Verb::Docs),
        None | Some("help" | "-h" | "--help") => Ok(Verb::Help),
        Some(other) => Err(bad(&format!("there is no command {other}"))),
    }
}

/// Refuses options the subcommand would silently ignore.
fn belongs(wish: &Wish) -> Result<(), Trouble> {
    let stepped = matches!(wish.command, Verb::Test | Verb::Check | Verb::Help);
    let starting = matches!(wish.command, Verb::Start | Verb::Help);
    let worded = matches!(wish.command, Verb::Bench | Verb::Fuzz | Verb::Help);
    if !stepped && (!wish.only.is_empty() || wish.fix) {
        return Err(bad("--only and --fix belong to test and check"));
    }
    if !starting && (wish.demo || wish.browser || !wish.rest.is_empty()) {
        return Err(bad("--demo, --browser and -- belong to start"));
    }
    match wish.words.first() {
        Some(word) if !worded => Err(bad(&format!("what should {word} mean here?"))),
        _ => Ok(()),
    }
}

fn bad(text: &str) -> Trouble {
    Trouble::Argument(text.to_owned())
}

#[cfg(test)]
mod tests {
    use super::*;

    fn read_line(line: &str) -> Result<Wish, Trouble> {
        read(line.split_whitespace().map(str::to_owned))
    }

    #[test]
    fn nothing_means_help() {
        assert_eq!(read_line("").unwrap().command, Verb::Help);
    }

    #[test]
    fn reads_steps_separated_by_commas_or_repeated() {
        let wish = read_line("test --only format,clippy --only ui --fix").unwrap();
        assert_eq!(wish.only, ["format", "clippy", "ui"]);
        assert!(wish.fix);
    }

    #[test]
    fn hands_on_what_follows_two_dashes() {
        let wish = read_line("start --demo -- --folder x --only y").unwrap();
        assert!(wish.demo);
        assert_eq!(wish.rest, ["--folder", "x", "--only", "y"]);
    }

    #[test]
    fn keeps_the_words_of_fuzz_and_bench() {
        assert_eq!(read_line("bench vault").unwrap().words, ["vault"]);
        assert_eq!(read_line("fuzz 3 line").unwrap().words, ["3", "line"]);
    }

    #[test]
    fn refuses_what_would_be_ignored() {
        for line in [
            "bench --fix",
            "test --demo",
            "start extra",
            "check --fast",
            "dance",
            "test --only",
        ] {
            assert!(read_line(line).is_err(), "{line}");
        }
    }
}
