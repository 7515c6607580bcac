//! Two phones in one journey: one shows, the other looks. A look is a picture of the one's screen, handed to
//! the other as a photo; tests of the live camera make a film of the same pictures.

use std::fs;
use std::path::{Path, PathBuf};

use serde_json::{Value, json};

use crate::engines::Kind;
use crate::phone::Phone;
use crate::wait;

/// More symbols than any parcel of a journey needs.
const MOST_SYMBOLS: usize = 60;

/// Pictures of symbols in a folder of their own.
pub struct Symbols {
    folder: tempfile::TempDir,
    count: usize,
}

impl Symbols {
    /// An empty folder.
    ///
    /// # Panics
    /// When there is no temporary folder.
    pub fn new() -> Self {
        match tempfile::tempdir() {
            Ok(folder) => Self { folder, count: 0 },
            Err(error) => panic!("no temporary folder: {error}"),
        }
    }

    /// Where they are, as `symbol_000.png` and so on.
    pub fn folder(&self) -> &Path {
        self.folder.path()
    }

    /// How many.
    pub fn count(&self) -> usize {
        self.count
    }

    fn path(&self, at: usize) -> PathBuf {
        self.folder.path().join(format!("symbol_{at:03}.png"))
    }

    fn add(&mut self, picture: &[u8]) {
        let path = self.path(self.count);
        if let Err(error) = fs::write(&path, picture) {
            panic!("{}: {error}", path.display());
        }
        self.count += 1;
    }
}

impl Default for Symbols {
    fn default() -> Self {
        Self::new()
    }
}

impl Phone {
    /// Gives the card a name.
    pub fn name_card(&mut self, alias: &str) {
        self.open("hand/card");
        self.clear("#alias");
        self.type_in("#alias", alias);
        self.tap("#keep");
    }

    /// Pictures of what the screen shows: of one symbol, or of `count` of a sequence, one after the other.
    pub fn look_at_symbols(&mut self, count: usize) -> Symbols {
        let mut symbols = Symbols::new();
        symbols.add(&self.picture_of_symbol());
        if !self.has("#next") {
            return symbols;
        }
        if self.run(
            "return document.getElementById('next').hidden;",
            &Value::Null,
        ) == json!(true)
        {
            self.touch("#pause");
        }
        while symbols.count() < count {
            let before = self.shown_symbol();
            self.touch("#next");
            self.wait_until("the next symbol", |phone| phone.shown_symbol() != before);
            symbols.add(&self.picture_of_symbol());
        }
        symbols
    }

    /// The symbol alone in Chromium. WebKit gives a black picture of a canvas alone, so there the whole screen.
    fn picture_of_symbol(&self) -> Vec<u8> {
        match self.kind() {
            Kind::Browser => self.picture_of("hand-screen canvas"),
            Kind::Window => {
                self.run(
                    "document.querySelector('hand-screen').scrollIntoView({ block: 'center' });",
                    &Value::Null,
                );
                self.picture_of_all()
            }
        }
    }

    /// Hands pictures of symbols to the scan screen, one after the other, until it goes on to another
    /// screen; gives that screen's address.
    pub fn take_photos(&mut self, symbols: &Symbols) -> String {
        let here = self.screen();
        for at in 0..symbols.count() {
            self.hand_in(&symbols.path(at));
            if self.screen() != here {
                return self.settled();
            }
        }
        self.fail("the pictures lead to no other screen");
    }

    /// Hands one picture to the scan screen, which leads to `screen`.
    pub fn take_photo(&mut self, picture: &Path, screen: &str) {
        self.hand_in(picture);
        self.expect_screen(screen);
        self.settled();
    }

    /// Hands a picture in and waits until something has come of it.
    fn hand_in(&mut self, picture: &Path) {
        let here = self.screen();
        let before = self.run(TAKEN, &Value::Null);
        self.choose_file("#photo", picture);
        let came = wait::until(wait::LIMIT, || {
            let is_new = self.screen() != here || self.run(TAKEN, &Value::Null) != before;
            is_new.then_some(())
        });
        if came.is_none() {
            self.fail(&format!("nothing comes of {}", picture.display()));
        }
    }

    /// Waits until the scan screen says that there is no camera: tests have none.
    pub fn expect_no_camera(&self) {
        let opening = "return document.getElementById('scan-state')?.dataset.camera ?? 'opening';";
        self.wait_until("what is said of the camera", |phone| {
            phone.run(opening, &Value::Null) != json!("opening")
        });
    }

    /// Hands pictures to the scan screen until it says that it does not take them; gives what it says.
    pub fn refused_photo(&mut self, symbols: &Symbols) -> String {
        for at in 0..symbols.count() {
            self.hand_in(&symbols.path(at));
            let said = self.problem();
            if !said.is_empty() {
                return said;
            }
        }
        self.fail("the pictures are not refused");
    }

    /// Hands one picture to the scan screen, which does not take it; gives what it says.
    pub fn refused_photo_of(&mut self, picture: &Path) -> String {
        self.hand_in(picture);
        self.wait_until("a problem", |phone| !phone.problem().is_empty());
        self.problem()
    }

    /// The words that are shown to be read aloud.
    pub fn big_words(&self) -> Vec<String> {
        let words = self.run(BIG_WORDS, &Value::Null);
        let words = words.as_array().cloned().unwrap_or_default();
        words
            .iter()
            .filter_map(|word| word.as_str().map(str::to_owned))
            .collect()
    }

    /// The sealed files that the window has saved in this start's home.
    pub fn saved_files(&self) -> Vec<PathBuf> {
        let mut folders = vec![self.engine().home().to_owned()];
        let mut found = Vec::new();
        while let Some(folder) = folders.pop() {
            for entry in fs::read_dir(folder).into_iter().flatten().flatten() {
                let path = entry.path();
                if path.is_dir() {
                    folders.push(path);
                } else if path.extension().is_some_and(|ending| ending == "heft") {
                    found.push(path);
                }
            }
        }
        found
    }

    fn problem(&self) -> String {
        let said = self.run(
            "return document.querySelector('error-summary [role=alert]')?.innerText ?? '';",
            &Value::Null,
        );
        said.as_str().unwrap_or_default().to_owned()
    }

    /// Shows what is chosen on the pages that ask, from "what leaves" on.
    pub fn show_it(&mut self) -> Symbols {
        self.expect_screen("hand/give/leaves");
        self.tap("#show");
        self.look_at_symbols(MOST_SYMBOLS.min(12))
    }

    /// Waits until the screen is drawn, and gives its address.
    pub fn settled(&self) -> String {
        self.wait_until("a drawn screen", |phone| {
            phone.run("return document.getElementById('main').getAttribute('aria-busy') === 'false' && document.querySelector('#main h1[tabindex]') !== null;", &Value::Null)
                == json!(true)
        });
        self.screen()
    }

    fn shown_symbol(&self) -> Value {
        self.run(
            "return document.querySelector('hand-screen canvas').toDataURL();",
            &Value::Null,
        )
    }
}

/// How many pictures the scan screen has looked at.
const TAKEN: &str = "return document.querySelector('hand-camera')?.dataset.taken ?? '0';";

/// The words that are shown large.
const BIG_WORDS: &str =
    "return [...document.querySelectorAll('.big-words b')].map((word) => word.innerText);";

/// Pairs two phones that have their cards named, each looking at the other's screen.
pub fn pair(one: &mut Phone, other: &mut Phone) {
    one.open("hand/pair");
    other.open("hand/pair");
    let ones = one.look_at_symbols(1);
    let others = other.look_at_symbols(1);
    one.tap("#scan");
    one.take_photos(&others);
    other.tap("#scan");
    other.take_photos(&ones);
    let words = [one, other].map(read_words_and_agree);
    let [ones, others] = words;
    assert_eq!(ones, others, "both show the same words");
    assert_eq!(ones.len(), 6);
}

/// From the page that shows the offer: compares the words, ticks both, and pairs. Gives the words.
pub fn read_words_and_agree(phone: &mut Phone) -> Vec<String> {
    phone.expect_screen("hand/pair");
    phone.tap("#compare");
    let words = phone.big_words();
    phone.touch("input[value=same]");
    phone.touch("input[value=other]");
    phone.tap("#agree");
    phone.expect_screen("hand");
    words
}
