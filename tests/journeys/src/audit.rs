//! An accessibility audit of the screen that is shown, by a reference engine (axe-core).

use std::fs;
use std::path::PathBuf;
use std::process::Command;
use std::sync::OnceLock;

use serde_json::{Value, json};

use crate::binaries::target_folder;
use crate::phone::Phone;
use crate::trouble::Trouble;

/// The engine's version on the npm registry. It is fetched for the tests and is no part of the app.
const VERSION: &str = "4.14.1";

/// Runs the rules for WCAG 2.2 A and AA and for good practice.
const AUDIT: &str = r"
const done = arguments[arguments.length - 1];
axe.run(document, { runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'] })
  .then(({ violations, passes }) => done({
    passes: passes.length,
    findings: violations.map(({ id, impact, help, nodes }) =>
      ({ id, impact, help, at: nodes.map(({ html }) => html.slice(0, 200)) })),
  }), (error) => done({ failed: String(error) }));";

impl Phone {
    /// What the audit finds on the screen that is serious or critical, as JSON.
    pub fn audit(&self) -> Vec<String> {
        let session = self.engine().session();
        let engine = self.must("the audit engine", source());
        if self.run("return typeof axe;", &Value::Null) != json!("object") {
            self.must("the audit engine", session.run(engine, &Value::Null));
        }
        let report = self.must("the audit", session.run_later(AUDIT, &Value::Null));
        let passes = report.get("passes").and_then(Value::as_u64);
        let findings = report.get("findings").and_then(Value::as_array);
        let (Some(findings), Some(1..)) = (findings, passes) else {
            self.fail(&format!("the audit did not run: {report}"));
        };
        let is_grave = |finding: &&Value| {
            let impact = finding.get("impact").and_then(Value::as_str);
            matches!(impact, Some("serious" | "critical"))
        };
        findings
            .iter()
            .filter(is_grave)
            .map(|one| format!("{one:#}"))
            .collect()
    }

    /// Fails if the audit finds anything serious or critical on the screen.
    pub fn expect_accessible(&self, name: &str) {
        let findings = self.audit();
        if !findings.is_empty() {
            self.fail(&format!(
                "the audit of {name} finds:\n{}",
                findings.join("\n")
            ));
        }
    }
}

/// The engine's source, fetched once into the target folder.
fn source() -> Result<&'static str, Trouble> {
    static SOURCE: OnceLock<String> = OnceLock::new();
    if let Some(source) = SOURCE.get() {
        return Ok(source);
    }
    let folder = target_folder().join(format!("axe-core-{VERSION}"));
    let file = folder.join("package/axe.min.js");
    if !file.exists() {
        fetch(&folder)?;
    }
    let source = fs::read_to_string(&file).map_err(|error| Trouble::File(file, error))?;
    Ok(SOURCE.get_or_init(|| source))
}

fn fetch(folder: &PathBuf) -> Result<(), Trouble> {
    // Two tests may fetch at once: each unpacks in a folder of its own, and the first one counts.
    let own = tempfile::tempdir_in(target_folder())?;
    let package = format!("axe-core@{VERSION}");
    run(
        Command::new("npm")
            .args(["pack", "--silent", &package])
            .current_dir(own.path()),
        "npm",
    )?;
    let archive = format!("axe-core-{VERSION}.tgz");
    run(
        Command::new("tar")
            .args(["-xzf", &archive])
            .current_dir(own.path()),
        "tar",
    )?;
    let renamed = fs::rename(own.path(), folder);
    if renamed.is_err() && !folder.join("package").exists() {
        return Err(Trouble::Silent("npm pack".to_owned()));
    }
    Ok(())
}

fn run(command: &mut Command, name: &'static str) -> Result<(), Trouble> {
    match command.output() {
        Ok(output) if output.status.success() => Ok(()),
        Ok(output) => Err(Trouble::Start {
            what: name.to_owned(),
            error: std::io::Error::other(String::from_utf8_lossy(&output.stderr).into_owned()),
        }),
        Err(_) => Err(Trouble::Missing {
            what: name.to_owned(),
            install: name,
        }),
    }
}
