//! Documents for other clinical software, against a published model library.

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
    what: "a model library takes the documents for other software",
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
    write.args(["the_document_keeps", "--quiet"]);
    write.env("HEFTWELL_DOCUMENTS", &documents);
    child::run(write)?;
    let mut check = child::program(python::for_checks(FOLDER)?);
    check.arg(Path::new(FOLDER).join("check_documents.py"));
    check.arg(documents);
    child::run(check)
}
