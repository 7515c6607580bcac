//! Installing what is missing with apt, on Debian and its relatives; plain words elsewhere.

use crate::child;
use crate::needs::Need;
use crate::trouble::Trouble;

/// Makes sure that every need is met, installing packages where that can be done.
///
/// # Errors
/// [`Trouble::Missing`] where there is no apt, no right to use it, or no such package.
pub(crate) fn install(needs: &[Need]) -> Result<(), Trouble> {
    let missing = unmet(needs);
    if missing.is_empty() {
        return Ok(());
    }
    if !child::is_on_path("apt-get") {
        return Err(ask_user(&missing, "This machine has no apt-get"));
    }
    if !is_root() && !child::is_on_path("sudo") {
        return Err(ask_user(
            &missing,
            "Installing packages takes root, and there is no sudo here",
        ));
    }
    for need in &missing {
        println!("missing: {}", need.what);
    }
    apt(&["update"])?;
    let mut words = vec!["install", "-y", "--no-install-recommends"];
    words.extend(packages(&missing, apt_knows)?);
    apt(&words)?;
    let still = unmet(&missing);
    if still.is_empty() {
        Ok(())
    } else {
        Err(ask_user(
            &still,
            "apt-get ran, but these are still not found",
        ))
    }
}

fn unmet(needs: &[Need]) -> Vec<Need> {
    needs
        .iter()
        .filter(|need| !need.is_met())
        .copied()
        .collect()
}

/// One package for each need: the first that apt knows.
fn packages(needs: &[Need], knows: impl Fn(&str) -> bool) -> Result<Vec<&'static str>, Trouble> {
    let mut chosen = Vec::new();
    let mut unknown = Vec::new();
    for need in needs {
        match need.packages.iter().find(|name| knows(name)) {
            Some(name) => chosen.push(*name),
            None => unknown.push(*need),
        }
    }
    if unknown.is_empty() {
        Ok(chosen)
    } else {
        Err(ask_user(&unknown, "apt has no package for these"))
    }
}

/// Whether apt could install a package of this name.
fn apt_knows(name: &str) -> bool {
    let mut command = child::program("apt-cache");
    command.args(["policy", name]).env("LC_ALL", "C");
    child::ask(command).is_some_and(|text| {
        text.lines()
            .any(|line| line.trim_start().starts_with("Candidate:") && !line.contains("(none)"))
    })
}

fn apt(words: &[&str]) -> Result<(), Trouble> {
    let mut command = if is_root() {
        child::program("env")
    } else {
        let mut sudo = child::program("sudo");
        sudo.arg("env");
        sudo
    };
    command
        .args(["DEBIAN_FRONTEND=noninteractive", "apt-get"])
        .args(words);
    child::run(command)
}

fn ask_user(needs: &[Need], because: &'static str) -> Trouble {
    Trouble::Missing {
        what: needs
            .iter()
            .map(|need| {
                format!(
                    "{} (Debian, Ubuntu: {})",
                    need.what,
                    need.packages.join(" or ")
                )
            })
            .collect(),
        because,
    }
}

/// Whether we may install packages without asking: the owner of our own process is root.
#[cfg(unix)]
fn is_root() -> bool {
    use std::os::unix::fs::MetadataExt;
    std::fs::metadata("/proc/self").is_ok_and(|process| process.uid() == 0)
}

#[cfg(not(unix))]
fn is_root() -> bool {
    false
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::needs::{JOURNEYS, Proof};

    const LOST: Need = Need {
        what: "a lost thing",
        proof: Proof::Program(&["no-such-program-here"]),
        packages: &["lost-thing", "lost-thing-old"],
    };

    #[test]
    fn takes_the_first_package_apt_knows() {
        let chosen = packages(&[LOST], |name| name == "lost-thing-old").unwrap();
        assert_eq!(chosen, ["lost-thing-old"]);
    }

    #[test]
    fn says_in_words_what_apt_does_not_know() {
        let trouble = packages(&[LOST], |_| false).unwrap_err().to_string();
        assert!(trouble.contains("a lost thing (Debian, Ubuntu: lost-thing or lost-thing-old)"));
    }

    #[test]
    fn a_met_need_is_not_installed() {
        let there = Need {
            proof: Proof::Program(&["sh"]),
            ..LOST
        };
        assert!(install(&[there]).is_ok());
    }

    #[test]
    fn ubuntu_names_are_known_for_the_browser() {
        let ubuntu = |name: &str| !matches!(name, "chromium" | "chromium-driver");
        let chosen = packages(JOURNEYS, ubuntu).unwrap();
        assert!(chosen.contains(&"chromium-browser"));
        assert!(chosen.contains(&"chromium-chromedriver"));
    }
}
