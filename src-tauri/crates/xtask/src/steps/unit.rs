//! Unit tests, laws, reference values and replayed fuzz inputs: all that `cargo test` runs.

use std::path::Path;

use crate::child;
use crate::needs::COMPILE;
use crate::plan::Step;
use crate::steps::{QUICK_PACKAGES, select};
use crate::tree;
use crate::trouble::Trouble;

/// All default members.
pub(crate) const WHOLE: Step = Step {
    name: "unit",
    what: "unit tests, laws, reference values, replayed inputs",
    needs: &[COMPILE],
    run: |_| child::run(child::cargo(&["test", "--locked"])),
};

/// The packages that build in seconds, without the tests that take long.
pub(crate) const QUICK: Step = Step {
    name: "unit",
    what: "tests that take seconds",
    needs: &[],
    run: |_| quick(),
};

/// Test files that go through hundreds of thousands of cases.
const SLOW: &[&str] = &["laws", "sweep"];

fn quick() -> Result<(), Trouble> {
    let names = test_names(&tree::root())?;
    let mut command = child::cargo(&["test", "--locked"]);
    command.args(select(QUICK_PACKAGES));
    command.args(["--lib", "--bins"]);
    for name in names.iter().filter(|name| !SLOW.contains(&name.as_str())) {
        command.args(["--test", name]);
    }
    child::run(command)
}

/// The names cargo gives the test files of the quick packages.
fn test_names(root: &Path) -> Result<Vec<String>, Trouble> {
    let mut names = Vec::new();
    for package in QUICK_PACKAGES {
        for home in ["src-tauri/crates", "tests"] {
            names.extend(names_in(&root.join(home).join(package).join("tests"))?);
        }
    }
    Ok(names)
}

/// A test is a file, or a folder with a `main.rs`.
fn names_in(folder: &Path) -> Result<Vec<String>, Trouble> {
    let files = tree::files(folder, ".rs")?;
    let names = files.iter().filter_map(|file| {
        let inner = file.strip_prefix(folder).ok()?;
        let mut parts = inner.iter().map(|part| part.to_string_lossy());
        match (parts.next()?, parts.next(), parts.next()) {
            (name, None, None) => Some(name.trim_end_matches(".rs").to_owned()),
            (name, Some(main), None) if main == "main.rs" => Some(name.into_owned()),
            _ => None,
        }
    });
    Ok(names.collect())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn tests_are_named_as_cargo_names_them() {
        let names = names_in(&tree::root().join("src-tauri/crates/xtask/tests")).unwrap();
        assert_eq!(names, ["house"]);
    }

    #[test]
    fn every_slow_test_is_there_to_be_left_out() {
        let names = test_names(&tree::root()).unwrap();
        assert!(
            SLOW.iter()
                .all(|slow| names.iter().any(|name| name == slow))
        );
    }
}
