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
    let variable = |name: &str| std::env::var(name).ok().filter(|value| !value.is_empty());
    let mut command = child::cargo(&["run", "--locked"]);
    if has_screen(variable) && !wish.browser {
        debian::install(&[COMPILE, WINDOW].concat())?;
        println!("The first build takes some minutes. Then a window opens.");
        command.args(window(wish));
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
        let folder = vault_folder(variable);
        match &folder {
            Some(folder) if keeps(wish) => println!("What you enter is kept in {folder}."),
            _ => println!("What you enter is thrown away at the end, unless you name a --vault."),
        }
        command.args(browser(wish, folder.as_deref()));
    }
    child::run(command)
}

/// The words after `cargo run` for the window.
fn window(wish: &Wish) -> Vec<&str> {
    let mut words = vec!["--package", "heftwell", "--"];
    words.extend(handed_on(wish));
    words
}

/// The words after `cargo run` for the page.
fn browser<'a>(wish: &'a Wish, folder: Option<&'a str>) -> Vec<&'a str> {
    let mut words = vec!["--package", "headless", "--", "web"];
    if let (Some(folder), true) = (folder, keeps(wish)) {
        words.extend(["--vault", folder]);
    }
    words.extend(handed_on(wish));
    words
}

fn handed_on(wish: &Wish) -> impl Iterator<Item = &str> {
    let demo = wish.demo.then_some("--demo");
    demo.into_iter().chain(wish.rest.iter().map(String::as_str))
}

/// Whether the page keeps its data where the window keeps it. Invented data never goes there, and
/// a folder that the user names comes first.
fn keeps(wish: &Wish) -> bool {
    !wish.demo && !wish.rest.iter().any(|word| word == "--vault")
}

/// Where the window keeps its data on Linux, so that page and window show the same.
fn vault_folder(variable: impl Fn(&str) -> Option<String>) -> Option<String> {
    if let Some(folder) = variable("HEFTWELL_HOME") {
        return Some(folder);
    }
    if !cfg!(target_os = "linux") {
        return None;
    }
    let data = variable("XDG_DATA_HOME")
        .or_else(|| variable("HOME").map(|home| format!("{home}/.local/share")))?;
    Some(format!("{data}/org.heftwell.app/vault"))
}

/// Whether a window could be shown. Windows and macOS always have a screen for us.
fn has_screen(variable: impl Fn(&str) -> Option<String>) -> bool {
    cfg!(any(windows, target_os = "macos"))
        || ["DISPLAY", "WAYLAND_DISPLAY"]
            .iter()
            .any(|name| variable(name).is_some())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[cfg(target_os = "linux")]
    #[test]
    fn either_display_variable_means_a_screen() {
        assert!(has_screen(|name| (name == "DISPLAY").then(|| ":0".into())));
        assert!(has_screen(
            |name| (name == "WAYLAND_DISPLAY").then(|| "wayland-0".into())
        ));
        assert!(!has_screen(|_| None));
    }

    #[cfg(target_os = "linux")]
    #[test]
    fn the_page_keeps_its_data_where_the_window_does() {
        let home = |name: &str| (name == "HOME").then(|| "/home/ana".to_owned());
        let vault = vault_folder(home);
        assert_eq!(
            vault.as_deref(),
            Some("/home/ana/.local/share/org.heftwell.app/vault")
        );
        assert_eq!(
            browser(&Wish::default(), Some("/v")),
            ["--package", "headless", "--", "web", "--vault", "/v"]
        );
    }

    #[test]
    fn a_named_home_comes_first() {
        let both = |name: &str| Some(format!("/{name}"));
        assert_eq!(vault_folder(both).as_deref(), Some("/HEFTWELL_HOME"));
    }

    #[test]
    fn invented_data_never_goes_into_the_users_own_folder() {
        let wish = Wish {
            demo: true,
            ..Wish::default()
        };
        assert_eq!(
            browser(&wish, Some("/v")),
            ["--package", "headless", "--", "web", "--demo"]
        );
    }

    #[test]
    fn further_words_are_handed_on_and_a_named_vault_wins() {
        let wish = Wish {
            rest: vec!["--vault".into(), "x".into()],
            ..Wish::default()
        };
        assert_eq!(
            window(&wish),
            ["--package", "heftwell", "--", "--vault", "x"]
        );
        assert_eq!(
            browser(&wish, Some("/v")),
            ["--package", "headless", "--", "web", "--vault", "x"]
        );
    }
}
