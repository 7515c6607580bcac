//! What leaves in the open, read by libraries of others.

use std::path::Path;

use crate::child;
use crate::needs::{COMPILE, PYTHON};
use crate::plan::{How, Step};
use crate::python;
use crate::tree;
use crate::trouble::Trouble;

/// The step.
pub(crate) const STEP: Step = Step {
    name: "interop",
    what: "libraries of others read what leaves in the open",
    needs: &[COMPILE, PYTHON],
    run,
};

/// Where the check and the list of what it imports lie.
const FOLDER: &str = "tests/interop";

fn run(_: &How) -> Result<(), Trouble> {
    let documents = tree::target().join("checks").join("documents");
    std::fs::create_dir_all(&documents).map_err(|why| Trouble::File {
        path: documents.clone(),
        why,
    })?;
    let mut write = child::cargo(&["test", "--locked", "-p", "app", "--test", "use_cases"]);
    write.args(["--", "report::", "review::", "sheet::", "--quiet"]);
    write.env("HEFTWELL_DOCUMENTS", &documents);
    child::run(write)?;
    let python = python::for_checks(FOLDER)?;
    for script in [
        "check_documents.py",
        "check_pages.py",
        "check_plan_sheets.py",
    ] {
        let mut check = child::program(&python);
        check.arg(Path::new(FOLDER).join(script)).arg(&documents);
        child::run(check)?;
    }
    Ok(())
}
