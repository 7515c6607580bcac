//! The help text.

/// What `cargo xtask help` prints.
pub(crate) const HELP: &str = "\
cargo xtask <command>

  start            install what is missing, then open the app
                   (no screen: serves the same app to a browser on this machine)
  test             install what the tests need, then run every check and test
  check            the quick part in seconds: no web view, no database
  bench [PART]     measure speed and size, in a release build
                   (parts: judgement figure vault start size)
  fuzz [MINUTES] [TARGET]
                   throw made-up input at the parsers, 10 minutes each unless told
  pixels           film one screen and let another one's camera read it, several times
  docs             build the code's own pages, with every warning an error
  help             this text

options
  --only STEP      test, check: run only this step (or a,b,c)
  --fix            test, check: repair what a tool can repair
  --demo           start: fill the app with invented people and lifts
  --browser        start: serve to a browser even if there is a screen
  -- WORDS         start: hand these words on to the app

steps of test: format clippy deny unit dynamics statistics interop formats peers ui journeys pixels
steps of check: format clippy unit
";
