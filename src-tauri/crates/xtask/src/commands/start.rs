//! `start`: opens the app, in a window where there is a screen, else on a page for a browser.

use crate::args::Wish;
use crate::child;
use crate::debian;
use crate::needs::{COMPILE, WINDOW};
use crate::trouble::Trouble;

/// Installs what is missing, then builds and opens the app.
///
/// # Errors
/// What installing, building or the app gives.
pub(crate) fn run(wish: &Wish) -> Result<(), Trouble> {
    let window = !wish.browser && has_screen(|name| std::env::var(name).ok());
    if window {
        debian::install(&[COMPILE, WINDOW].concat())?;
        println!("The first build takes some minutes. Then a window opens.");
    } else {
        debian::install(COMPILE)?;
        if !wish.browser {
            println!("This machine has no screen (no DISPLAY, no WAYLAND_DISPLAY).");
        }
        println!(
            "Heftwell will be served to a browser on this machine only.\n\
             The first build takes some minutes. Then open the address it prints.\n\
             Press Ctrl+C here to end it."
        );
    }
    let mut command = child::cargo(&["run", "--locked", "--quiet"]);
    command.args(words(window, wish));
    child::run(command)
}

/// The words after `cargo run`.
fn words(window: bool, wish: &Wish) -> Vec<&str> {
    let mut words = if window {
        vec!["--package", "heftwell", "--"]
    } else {
        vec!["--package", "headless", "--", "web"]
    };
    if wish.demo {
        words.push("--demo");
    }
    words.extend(wish.rest.iter().map(String::as_str));
    words
}

/// Whether a window could be shown. Windows and macOS always have a screen for us.
fn has_screen(variable: impl Fn(&str) -> Option<String>) -> bool {
    cfg!(any(windows, target_os = "macos"))
        || ["DISPLAY", "WAYLAND_DISPLAY"]
            .iter()
            .any(|name| variable(name).is_some_and(|value| !value.is_empty()))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[cfg(target_os = "linux")]
    #[test]
    fn a_screen_is_a_display_variable_with_a_value() {
        assert!(has_screen(|name| (name == "DISPLAY").then(|| ":0".into())));
        assert!(has_screen(
            |name| (name == "WAYLAND_DISPLAY").then(|| "wayland-0".into())
        ));
        assert!(!has_screen(|_| None));
        assert!(!has_screen(|_| Some(String::new())));
    }

    #[test]
    fn demo_and_further_words_reach_both_shells() {
        let wish = Wish {
            demo: true,
            rest: vec!["--folder".into(), "x".into()],
            ..Wish::default()
        };
        assert_eq!(
            words(true, &wish),
            ["--package", "heftwell", "--", "--demo", "--folder", "x"]
        );
        assert_eq!(
            words(false, &wish),
            [
                "--package",
                "headless",
                "--",
                "web",
                "--demo",
                "--folder",
                "x"
            ]
        );
    }
}
