//! What the steps need from the machine, how each is recognised, and which package brings it.

use crate::child;

/// One thing a step needs.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) struct Need {
    /// Its name in plain words, for people without apt.
    pub(crate) what: &'static str,
    /// How to tell that it is there.
    pub(crate) proof: Proof,
    /// Debian and Ubuntu packages that bring it; the first one apt knows is taken.
    pub(crate) packages: &'static [&'static str],
}

/// How to tell that a thing is there: by use, not by package name, so that any origin counts.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Proof {
    /// One of these programs is on the search path.
    Program(&'static [&'static str]),
    /// `pkg-config` knows this library.
    Library(&'static str),
    /// This command line succeeds.
    Runs(&'static [&'static str]),
    /// This folder exists.
    Folder(&'static str),
}

impl Need {
    /// Whether the thing is there already.
    pub(crate) fn is_met(&self) -> bool {
        match self.proof {
            Proof::Program(names) => names.iter().any(|name| child::is_on_path(name)),
            Proof::Library(name) => {
                let mut command = child::program("pkg-config");
                command.args(["--exists", name]);
                child::ask(command).is_some()
            }
            Proof::Runs(words) => words.split_first().is_some_and(|(name, rest)| {
                let mut command = child::program(name);
                command.args(rest);
                child::ask(command).is_some()
            }),
            Proof::Folder(path) => std::path::Path::new(path).is_dir(),
        }
    }
}

/// What compiling the encrypted store's C code takes (SQLCipher and OpenSSL from source).
pub(crate) const COMPILE: &[Need] = &[
    Need {
        what: "a C compiler",
        proof: Proof::Program(&["cc"]),
        packages: &["build-essential"],
    },
    Need {
        what: "make",
        proof: Proof::Program(&["make"]),
        packages: &["make"],
    },
    Need {
        what: "perl with its standard modules (OpenSSL's build asks for them)",
        proof: Proof::Runs(&[
            "perl",
            "-MFindBin",
            "-MIPC::Cmd",
            "-MTime::Piece",
            "-e",
            "1",
        ]),
        packages: &["perl"],
    },
    Need {
        what: "pkg-config",
        proof: Proof::Program(&["pkg-config"]),
        packages: &["pkg-config"],
    },
];

/// What the window takes.
pub(crate) const WINDOW: &[Need] = &[Need {
    what: "WebKitGTK 4.1 with its development files",
    proof: Proof::Library("webkit2gtk-4.1"),
    packages: &["libwebkit2gtk-4.1-dev"],
}];

/// What the fuzzer's own code takes.
pub(crate) const FUZZ: &[Need] = &[Need {
    what: "a C++ compiler",
    proof: Proof::Program(&["c++"]),
    packages: &["g++"],
}];

/// What the UI logic tests take.
pub(crate) const SCRIPT: &[Need] = &[Need {
    what: "Node.js 18.15 or newer (it has a test runner)",
    proof: Proof::Runs(&["node", "--test", "--test-reporter=spec", "--version"]),
    packages: &["nodejs"],
}];

/// What the independent reader of our formats takes.
pub(crate) const PYTHON: &[Need] = &[Need {
    what: "Python 3 with venv",
    proof: Proof::Runs(&["python3", "-c", "import venv, ensurepip"]),
    packages: &["python3-venv"],
}];

/// What reading our symbols with other decoders takes.
pub(crate) const PEERS: &[Need] = &[Need {
    what: "zbar (reads symbols)",
    proof: Proof::Runs(&[
        "python3",
        "-c",
        "import ctypes.util, sys; sys.exit(ctypes.util.find_library('zbar') is None)",
    ]),
    packages: &["libzbar0t64", "libzbar0"],
}];

/// What is fetched from the npm registry for checks only.
pub(crate) const NPM: &[Need] = &[Need {
    what: "npm (brings the engine that audits accessibility, and a schema)",
    proof: Proof::Program(&["npm"]),
    packages: &["npm"],
}];

/// What the journeys take: both engines with their drivers, a screen, letters.
pub(crate) const JOURNEYS: &[Need] = &[
    Need {
        what: "WebKitWebDriver (drives the window)",
        proof: Proof::Program(&["WebKitWebDriver"]),
        packages: &["webkit2gtk-driver"],
    },
    Need {
        what: "faketime (an app whose clock is ahead)",
        proof: Proof::Program(&["faketime"]),
        packages: &["faketime"],
    },
    Need {
        what: "Xvfb (a screen in memory)",
        proof: Proof::Program(&["Xvfb"]),
        packages: &["xvfb"],
    },
    Need {
        what: "Chromium",
        proof: Proof::Program(&["chromium", "chromium-browser"]),
        packages: &["chromium", "chromium-browser"],
    },
    Need {
        what: "chromedriver (drives Chromium)",
        proof: Proof::Program(&["chromedriver"]),
        packages: &["chromium-driver", "chromium-chromedriver"],
    },
    Need {
        what: "fonts to draw letters with",
        proof: Proof::Folder("/usr/share/fonts/truetype/dejavu"),
        packages: &["fonts-dejavu-core"],
    },
];

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_program_that_exists_is_met_and_another_is_not() {
        let need = |names| Need {
            what: "",
            proof: Proof::Program(names),
            packages: &[],
        };
        assert!(need(&["no-such-program-here", "sh"]).is_met());
        assert!(!need(&["no-such-program-here"]).is_met());
    }

    #[test]
    fn a_command_line_counts_only_when_it_succeeds() {
        let need = |words| Need {
            what: "",
            proof: Proof::Runs(words),
            packages: &[],
        };
        assert!(need(&["sh", "-c", "exit 0"]).is_met());
        assert!(!need(&["sh", "-c", "exit 1"]).is_met());
    }

    #[test]
    fn every_need_names_a_package_and_is_said_in_words() {
        for need in [COMPILE, WINDOW, FUZZ, SCRIPT, PYTHON, PEERS, NPM, JOURNEYS].concat() {
            assert!(!need.packages.is_empty());
            assert!(!need.what.is_empty());
        }
    }
}
