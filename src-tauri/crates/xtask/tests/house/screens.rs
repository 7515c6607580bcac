//! What the screens' files may not do. One file speaks to Rust; nothing comes from elsewhere;
//! no markup is made from strings; nothing is kept in the page.

use crate::tree::{self, Source};

/// The one file that may name the bridge.
const BRIDGE_FILE: &str = "ui/backend.js";

/// Words of the bridge, for [`BRIDGE_FILE`] alone.
const BRIDGE: &[&str] = &["__TAURI", "fetch(", "invoke("];

/// The one address that is a name and not a place.
const SVG: &str = "http://www.w3.org/2000/svg";

/// Words that no file may hold, each with the reason.
const BANNED: &[(&str, &str)] = &[
    ("http://", "nothing comes from elsewhere"),
    ("https://", "nothing comes from elsewhere"),
    ("XMLHttpRequest", "only backend.js speaks to Rust"),
    ("WebSocket", "only backend.js speaks to Rust"),
    ("EventSource", "only backend.js speaks to Rust"),
    ("sendBeacon", "only backend.js speaks to Rust"),
    ("innerHTML", "markup from strings"),
    ("outerHTML", "markup from strings"),
    ("insertAdjacentHTML", "markup from strings"),
    ("createContextualFragment", "markup from strings"),
    ("DOMParser", "markup from strings"),
    ("document.write", "markup from strings"),
    ("setHTML", "markup from strings"),
    ("eval(", "code from strings"),
    ("new Function", "code from strings"),
    ("localStorage", "health data rests in the vault only"),
    ("sessionStorage", "health data rests in the vault only"),
    ("indexedDB", "health data rests in the vault only"),
    ("document.cookie", "health data rests in the vault only"),
    ("console.", "health data does not go to a log"),
    ("debugger", "left over"),
    ("TODO", "left over"),
    ("FIXME", "left over"),
    ("style=", "inline style, which the content policy refuses"),
    (
        "\"style\"",
        "inline style, which the content policy refuses",
    ),
    ("cssText", "inline style, which the content policy refuses"),
    ("<style", "inline style, which the content policy refuses"),
    ("@import", "one request after another; link the file"),
    (
        "javascript:",
        "inline script, which the content policy refuses",
    ),
];

/// Every word in `sources` that should not be there.
fn banned_words(sources: &[Source]) -> Vec<String> {
    let mut faults = Vec::new();
    for source in sources {
        for (number, line) in source.text.lines().enumerate() {
            let line = line.replace(SVG, "");
            let place = format!("{}:{}", source.path, number + 1);
            for (word, why) in BANNED {
                if line.contains(word) {
                    faults.push(format!("{place}: {word} ({why})"));
                }
            }
            for word in BRIDGE {
                if line.contains(word) && source.path != BRIDGE_FILE {
                    faults.push(format!(
                        "{place}: {word} (only {BRIDGE_FILE} speaks to Rust)"
                    ));
                }
            }
        }
    }
    faults
}

/// Inline scripts and event attributes in a page.
fn inline_scripts(page: &Source) -> Vec<String> {
    let mut faults = Vec::new();
    for (number, line) in page.text.lines().enumerate() {
        let place = format!("{}:{}", page.path, number + 1);
        if line.contains("<script") && !line.contains("src=") {
            faults.push(format!("{place}: a script without src"));
        }
        let event = |word: &str| word.starts_with("on") && word.contains("=\"");
        if line.split_whitespace().any(event) {
            faults.push(format!("{place}: an event attribute"));
        }
    }
    faults
}

/// What a script imports, as paths from the root.
fn imports(script: &Source) -> Vec<String> {
    script
        .text
        .lines()
        .filter(|line| {
            line.starts_with("import") || line.contains(" from \"") || line.contains("import(")
        })
        .filter_map(|line| line.split(['"', '\'']).nth(1))
        .map(|path| resolve(&script.path, path))
        .collect()
}

/// A relative path, seen from a file; other paths are left as they are.
fn resolve(from: &str, path: &str) -> String {
    if !path.starts_with('.') {
        return path.to_owned();
    }
    let mut parts: Vec<&str> = from.split('/').collect();
    parts.pop();
    for part in path.split('/') {
        match part {
            "." => {}
            ".." => {
                parts.pop();
            }
            name => parts.push(name),
        }
    }
    parts.join("/")
}

/// Imports that go against the map: parts know no screen and do not speak to Rust themselves.
fn wrong_imports(scripts: &[Source], exists: impl Fn(&str) -> bool) -> Vec<String> {
    let mut faults = Vec::new();
    for script in scripts {
        for path in imports(script) {
            let from_part = script.path.starts_with("ui/parts/");
            if !path.starts_with("ui/") || !exists(&path) {
                faults.push(format!(
                    "{} imports {path}, which is not there",
                    script.path
                ));
            } else if from_part && (path.starts_with("ui/screens/") || path == BRIDGE_FILE) {
                faults.push(format!("{} must not import {path}", script.path));
            }
        }
    }
    faults
}

#[test]
fn no_file_of_the_screens_holds_a_banned_word() {
    let faults = banned_words(&tree::sources("ui", &[".js", ".css", ".html", ".svg"]));
    assert!(faults.is_empty(), "{faults:#?}");
}

#[test]
fn no_page_holds_inline_script() {
    for page in tree::sources("ui", &[".html", ".svg"]) {
        let faults = inline_scripts(&page);
        assert!(faults.is_empty(), "{faults:#?}");
    }
}

#[test]
fn imports_follow_the_map() {
    let scripts = tree::sources("ui", &[".js"]);
    let faults = wrong_imports(&scripts, |path| tree::root().join(path).is_file());
    assert!(faults.is_empty(), "{faults:#?}");
}

#[test]
fn made_up_offenders_are_found() {
    let offender = |path, text, count: usize| {
        let found = banned_words(&[Source::made_up(path, text)]);
        assert_eq!(found.len(), count, "{text}: {found:?}");
    };
    offender("ui/screens/home.js", "a.innerHTML = b;", 1);
    offender("ui/screens/home.js", "window.__TAURI__.core.invoke('x')", 2);
    offender("ui/screens/home.js", "await fetch('/command')", 1);
    offender("ui/backend.js", "await fetch('/command')", 0);
    offender("ui/index.html", "<p style=\"x\">", 1);
    offender("ui/a.js", "make(\"http://www.w3.org/2000/svg\", name)", 0);
    offender("ui/a.js", "load(\"https://fonts.example/x\")", 1);
}

#[test]
fn made_up_inline_scripts_are_found() {
    let found = |text| inline_scripts(&Source::made_up("ui/index.html", text)).len();
    assert_eq!(found("<script>x()</script>"), 1);
    assert_eq!(found("<button onclick=\"x()\">"), 1);
    assert_eq!(found("<script type=\"module\" src=\"app.js\"></script>"), 0);
}

#[test]
fn made_up_imports_against_the_map_are_found() {
    let script = |path, line| wrong_imports(&[Source::made_up(path, line)], |_| true);
    let part = "ui/parts/pain/pain.js";
    assert_eq!(
        script(part, "import { ask } from \"../../backend.js\";").len(),
        1
    );
    assert_eq!(
        script(part, "import { x } from '../../screens/home.js';").len(),
        1
    );
    assert_eq!(
        script(part, "import { x } from \"../button/button.js\";").len(),
        0
    );
    assert_eq!(script("ui/app.js", "import x from \"lodash\";").len(), 1);
    assert_eq!(
        script(
            "ui/screens/home.js",
            "import { ask } from \"../backend.js\";"
        )
        .len(),
        0
    );
}
