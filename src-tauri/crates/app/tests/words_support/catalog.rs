//! The message files of one language, taken apart by Fluent's own parser.

use app::words::Language;
use fluent_syntax::ast::{
    Entry, Expression, InlineExpression, Message as Parsed, Pattern, PatternElement,
};
use std::collections::BTreeSet;
use std::path::Path;

/// One message.
#[derive(Debug)]
pub(crate) struct Message {
    pub(crate) id: String,
    /// Name of its file, without folder.
    pub(crate) file: String,
    /// The heading (`##`) it stands under.
    pub(crate) section: String,
    /// Names of its values.
    pub(crate) variables: BTreeSet<String>,
    /// What it can read like: one text for each combination of forms, with sample values.
    pub(crate) texts: Vec<String>,
}

/// Every message of a language, in the order of its files.
///
/// Panics on anything that Fluent does not read in full.
pub(crate) fn messages(language: Language) -> Vec<Message> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR"))
        .join("words")
        .join(language.id());
    let mut files: Vec<_> = std::fs::read_dir(&folder)
        .expect("the folder of a language")
        .map(|entry| entry.expect("a file").path())
        .filter(|path| path.extension().is_some_and(|ending| ending == "ftl"))
        .collect();
    files.sort();
    files
        .iter()
        .flat_map(|path| of_file(path, language))
        .collect()
}

fn of_file(path: &Path, language: Language) -> Vec<Message> {
    let file = path
        .file_name()
        .expect("a name")
        .to_string_lossy()
        .into_owned();
    let text = std::fs::read_to_string(path).expect("a message file");
    let resource = fluent_syntax::parser::parse(text.as_str())
        .unwrap_or_else(|(_, errors)| panic!("{}: {errors:?}", path.display()));
    let mut section = String::new();
    let mut found = Vec::new();
    for entry in &resource.body {
        match entry {
            Entry::GroupComment(comment) => section = comment.content.join(" "),
            Entry::Message(message) => found.push(one(message, &file, &section, language)),
            Entry::Junk { content } => panic!("{}: not read: {content}", path.display()),
            _ => {}
        }
    }
    found
}

fn one(message: &Parsed<&str>, file: &str, section: &str, language: Language) -> Message {
    let pattern = message.value.as_ref().expect("a message has a text");
    let mut variables = BTreeSet::new();
    let texts = texts(pattern, language, &mut variables);
    Message {
        id: message.id.name.to_owned(),
        file: file.to_owned(),
        section: section.to_owned(),
        variables,
        texts,
    }
}

fn texts(
    pattern: &Pattern<&str>,
    language: Language,
    variables: &mut BTreeSet<String>,
) -> Vec<String> {
    let mut texts = vec![String::new()];
    for element in &pattern.elements {
        let next = match element {
            PatternElement::TextElement { value } => vec![(*value).to_owned()],
            PatternElement::Placeable { expression } => expressed(expression, language, variables),
        };
        texts = texts
            .iter()
            .flat_map(|before| next.iter().map(move |after| format!("{before}{after}")))
            .collect();
    }
    texts
}

fn expressed(
    expression: &Expression<&str>,
    language: Language,
    variables: &mut BTreeSet<String>,
) -> Vec<String> {
    match expression {
        Expression::Inline(inline) => vec![inlined(inline, language, variables)],
        Expression::Select { selector, variants } => {
            let _ = inlined(selector, language, variables);
            variants
                .iter()
                .flat_map(|variant| texts(&variant.value, language, variables))
                .collect()
        }
    }
}

fn inlined(
    inline: &InlineExpression<&str>,
    language: Language,
    variables: &mut BTreeSet<String>,
) -> String {
    match inline {
        InlineExpression::VariableReference { id } => {
            variables.insert(id.name.to_owned());
            sample(id.name, language).to_owned()
        }
        InlineExpression::StringLiteral { value } => (*value).to_owned(),
        other => panic!("only values and plain text stand in our messages, not {other:?}"),
    }
}

/// What a value may read like.
fn sample(name: &str, language: Language) -> &'static str {
    let english = language == Language::English;
    match name {
        "n" | "count" | "day" | "hour" | "minute" | "pain" | "parts" | "seconds" => "5",
        "each" | "guide" | "high" | "limit" | "mass" | "max" | "to" => "5 kg",
        "region" if english => "your left knee",
        "region" => "la rodilla izquierda",
        "side" if english => "left",
        "side" => "izquierda",
        "way" | "ways" if english => "squat",
        "way" | "ways" => "sentadilla",
        "first" | "second" | "why" if english => "you cannot kneel",
        "first" | "second" | "why" => "no puede arrodillarse",
        "steps" if english => "Turn your feet.",
        "steps" => "Gire los pies.",
        _ => "5",
    }
}
