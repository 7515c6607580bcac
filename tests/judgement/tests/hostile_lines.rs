//! Hostile lines: every file of `tests/vectors` has one fault, named by the file, and says which error is
//! expected; every input kept from fuzzing is replayed. Nothing may panic, and no text that was sent may
//! come back in an error.

#![cfg(test)]

use door::{DoorError, ErrorCode, answer, answer_alone};
use serde::Deserialize;
use serde_json::Value;
use std::fs;
use std::path::{Path, PathBuf};

/// Text that stands for a passphrase in the vectors.
const SECRET: &str = "heron";

/// The longest error line a hostile line may cause, in bytes.
const LONGEST_ERROR: usize = 400;

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Vector {
    line: Option<String>,
    #[serde(default)]
    parts: Vec<Part>,
    code: String,
    field: Option<String>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Part {
    text: String,
    times: usize,
}

impl Vector {
    fn line(&self) -> String {
        let parts = self.parts.iter().map(|part| part.text.repeat(part.times));
        self.line.iter().cloned().chain(parts).collect()
    }
}

fn files(folder: &str) -> Vec<PathBuf> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR"))
        .join("..")
        .join(folder);
    let mut files: Vec<PathBuf> = fs::read_dir(&folder)
        .unwrap()
        .map(|entry| entry.unwrap().path())
        // Folders hold the vectors of other parts.
        .filter(|path| path.is_file())
        .collect();
    files.sort();
    assert!(!files.is_empty(), "{} is empty", folder.display());
    files
}

fn vectors() -> Vec<(String, Vector)> {
    let read = |path: PathBuf| {
        let name = path.file_stem().unwrap().to_string_lossy().into_owned();
        let vector = toml::from_str(&fs::read_to_string(&path).unwrap());
        (
            name.clone(),
            vector.unwrap_or_else(|error| panic!("{name}: {error}")),
        )
    };
    files("vectors").into_iter().map(read).collect()
}

/// What a line is answered: the code and the field, or why the reply is no proper error.
fn error_of(line: &str) -> Result<(String, Option<String>), String> {
    let reply = answer_alone(line);
    let value: Value = serde_json::from_str(&reply).map_err(|error| error.to_string())?;
    let error = value
        .get("error")
        .ok_or_else(|| format!("no error: {reply:.120}"))?;
    let code = error["code"].as_str().ok_or("no code")?;
    let known = ErrorCode::from_id(code).ok_or("a code that is not in the list")?;
    let field = error["field"].as_str();
    let expected = field.map_or_else(
        || DoorError::new(known),
        |field| DoorError::at(known, field),
    );
    if reply != expected.to_json_line() {
        return Err(format!(
            "the message is made from more than code and field: {reply}"
        ));
    }
    if reply.contains(SECRET) || reply.len() > LONGEST_ERROR || reply.contains('\n') {
        return Err(format!("the reply says too much: {reply}"));
    }
    Ok((code.to_owned(), field.map(str::to_owned)))
}

#[test]
fn every_fault_has_its_code_and_field() {
    let vectors = vectors();
    let mut wrong = Vec::new();
    for (name, vector) in &vectors {
        let expected = Ok((vector.code.clone(), vector.field.clone()));
        let found = error_of(&vector.line());
        if found != expected {
            wrong.push(format!("{name}: expected {expected:?}, found {found:?}"));
        }
    }
    println!(
        "{} hostile lines, {} answered otherwise than expected",
        vectors.len(),
        wrong.len()
    );
    assert!(wrong.is_empty(), "\n{}", wrong.join("\n"));
    assert!(vectors.len() >= 60);
}

#[test]
fn every_code_of_reading_has_a_vector() {
    let vectors = vectors();
    for code in [
        ErrorCode::BadJson,
        ErrorCode::TooLong,
        ErrorCode::DuplicateKey,
        ErrorCode::NotAnObject,
        ErrorCode::UnknownCommand,
        ErrorCode::UnknownField,
        ErrorCode::MissingField,
        ErrorCode::WrongType,
        ErrorCode::NotAChoice,
        ErrorCode::OutOfRange,
        ErrorCode::AnswerNeeded,
        ErrorCode::Contradiction,
    ] {
        assert!(
            vectors.iter().any(|(_, vector)| vector.code == code.id()),
            "{}",
            code.id()
        );
    }
}

#[test]
fn a_vector_cut_anywhere_is_still_answered() {
    for (name, vector) in vectors() {
        let line = vector.line();
        let ends = line
            .char_indices()
            .map(|(end, _)| end)
            .filter(|end| *end <= 600);
        for end in ends {
            let cut = line.get(..end).unwrap();
            assert!(
                serde_json::from_str::<Value>(&answer_alone(cut)).is_ok(),
                "{name} cut at {end}"
            );
        }
    }
}

#[test]
fn what_fuzzing_kept_is_answered_in_one_line() {
    let inputs = files("fuzz/corpus/command_line");
    for path in &inputs {
        let bytes = fs::read(path).unwrap();
        let line = String::from_utf8_lossy(&bytes);
        let Some(reply) = answer(&line) else { continue };
        let reply: Value = serde_json::from_str(&reply).unwrap();
        let keys: Vec<&String> = reply.as_object().unwrap().keys().collect();
        assert!(keys == ["ok"] || keys == ["error"], "{}", path.display());
    }
    println!("{} inputs kept from fuzzing", inputs.len());
}
