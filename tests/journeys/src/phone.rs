//! A test phone: the app on it, and what a person does with it and sees on it.

use std::path::Path;
use std::time::Duration;

use serde_json::{Value, json};

use crate::engines::{self, Engine, Kind, Setting};
use crate::picture;
use crate::trouble::Trouble;
use crate::wait;

/// Presses what a finger would hit in the middle of the element; says why if it cannot.
const PRESS: &str = r"
const node = document.querySelector(arguments[0]);
if (!node) return 'is not there';
if (node.disabled) return 'is disabled';
node.scrollIntoView({ block: 'center' });
const box = node.getBoundingClientRect();
const hit = document.elementFromPoint(box.left + box.width / 2, box.top + box.height / 2);
if (!hit || !(node === hit || node.contains(hit) || hit.contains(node) && hit.matches('label'))) {
  return 'is covered by ' + (hit ? hit.outerHTML.slice(0, 120) : 'nothing at all');
}
node.click();
return null;";

/// Marks the heading that is shown, so that the next one can be told from it.
const MARK: &str =
    "const heading = document.querySelector('#main h1'); if (heading) heading.seen = true;";

/// The address after the #, once the page is drawn and has a heading that is not marked.
const NEW_SCREEN: &str = r"
const main = document.getElementById('main');
const heading = main?.querySelector('h1[tabindex]');
const ready = heading && !heading.seen && main.getAttribute('aria-busy') === 'false';
return ready ? location.hash : null;";

/// The text of the problem box, if there is one.
const PROBLEM: &str = r"
const box = document.querySelector('error-summary [role=alert]');
const busy = document.getElementById('main')?.getAttribute('aria-busy') !== 'false';
return box && !busy ? box.innerText : null;";

/// Lets the engine paint what the page already is: a picture may otherwise show the screen before.
const PAINT: &str = r"
const done = arguments[arguments.length - 1];
requestAnimationFrame(() => requestAnimationFrame(() => done(true)));";

/// Names of messages that have no words: they show up in brackets.
const WORDLESS: &str = r"
const found = document.body.innerText.match(/\[[a-z][a-z0-9]*(-[a-z0-9]+)+\]|\{\s*\$\w+\s*\}|undefined|NaN|null/);
return found ? found[0] : null;";

/// A phone with the app on it. Every failure is a panic that names the screen and leaves a picture.
pub struct Phone {
    kind: Kind,
    journey: &'static str,
    folder: tempfile::TempDir,
    setting: Setting,
    engine: Option<Box<dyn Engine>>,
    taps: u32,
    pictures: u32,
}

impl Phone {
    /// A new phone with the app started for the first time.
    pub fn new(kind: Kind, journey: &'static str) -> Self {
        let mut phone = Self::switched_off(kind, journey);
        phone.start();
        phone
    }

    /// A new phone with the app not yet started.
    pub fn switched_off(kind: Kind, journey: &'static str) -> Self {
        let folder = match tempfile::tempdir() {
            Ok(folder) => folder,
            Err(error) => panic!("no temporary folder: {error}"),
        };
        Self {
            kind,
            journey,
            folder,
            setting: Setting::default(),
            engine: None,
            taps: 0,
            pictures: 0,
        }
    }

    /// Sets the system to dark or light colours; it counts from the next start.
    pub fn set_up(&mut self, setting: Setting) {
        self.setting = setting;
    }

    /// Starts the app and waits for its first screen.
    pub fn start(&mut self) {
        match engines::start(self.kind, self.folder.path(), self.setting) {
            Ok(engine) => self.engine = Some(engine),
            Err(trouble) => panic!("{}: {trouble}", self.kind.name()),
        }
        self.wait_for_screen("the first screen");
    }

    /// Closes the app as its owner does.
    pub fn close(&mut self) {
        let closed = self.take_engine().close();
        self.must("closing the app", closed);
    }

    /// Ends the app at once, in whatever it is doing.
    pub fn kill(&mut self) {
        let killed = self.take_engine().kill();
        self.must("ending the app", killed);
    }

    /// The folder with the vault.
    pub fn folder(&self) -> &Path {
        self.folder.path()
    }

    /// Which engine it has.
    pub fn kind(&self) -> Kind {
        self.kind
    }

    /// How often a finger touched the screen since the last [`Phone::count_taps_anew`].
    pub fn taps(&self) -> u32 {
        self.taps
    }

    /// Starts to count at zero.
    pub fn count_taps_anew(&mut self) {
        self.taps = 0;
    }

    /// The engine, for what only a test does.
    pub fn engine(&self) -> &dyn Engine {
        match &self.engine {
            Some(engine) => engine.as_ref(),
            None => panic!("the app on this phone is not started"),
        }
    }

    /// Touches an element, named by a CSS selector, that leads to another screen; gives its address.
    pub fn tap(&mut self, selector: &str) -> String {
        self.run(MARK, &Value::Null);
        self.touch(selector);
        self.wait_for_screen(selector)
    }

    /// Opens a screen by its address, as the phone's own Back and Forward do.
    pub fn open(&mut self, screen: &str) -> String {
        self.run(MARK, &Value::Null);
        self.run("location.hash = '#/' + arguments[0];", &json!(screen));
        self.wait_for_screen(screen)
    }

    /// Presses an element with a real pointer until `screen` is shown. A finger is slower than a
    /// driver: a touch right after a new page is dropped by the page, as an accidental double tap.
    pub fn point_at(&mut self, selector: &str, screen: &str) {
        let session = self.engine().session();
        let arrived = wait::until(wait::LIMIT, || {
            if self.screen() == screen {
                return Some(());
            }
            let element = session.find(selector).ok().flatten()?;
            // Between finding and pressing the page may have changed: then it is looked for again.
            let _ = session.click(&element);
            wait::until(Duration::from_millis(600), || {
                (self.screen() == screen).then_some(())
            })
        });
        if arrived.is_none() {
            self.fail(&format!("pressing {selector} does not lead to {screen}"));
        }
        self.taps += 1;
        self.wait_for_screen(selector);
    }

    /// Touches an element that leaves the screen as it is, such as a box to tick.
    pub fn touch(&mut self, selector: &str) {
        self.taps += 1;
        let mut why = Value::Null;
        let pressed = wait::until(wait::LIMIT, || {
            why = self.run(PRESS, &json!(selector));
            why.is_null().then_some(())
        });
        if pressed.is_none() {
            self.fail(&format!(
                "{selector} {}",
                why.as_str().unwrap_or("cannot be touched")
            ));
        }
    }

    /// Touches an element that brings up a problem, and gives the problem's words.
    pub fn tap_in_vain(&mut self, selector: &str) -> String {
        self.touch(selector);
        let problem = wait::until(wait::LIMIT, || text_of(&self.run(PROBLEM, &Value::Null)));
        problem.unwrap_or_else(|| self.fail(&format!("{selector} brings up no problem")))
    }

    /// Types into a field.
    pub fn type_in(&mut self, selector: &str, words: &str) {
        let session = self.engine().session();
        let found = wait::until(wait::LIMIT, || session.find(selector).ok().flatten());
        let Some(field) = found else {
            self.fail(&format!("there is no field {selector}"))
        };
        let typed = session.type_text(&field, words);
        self.must(selector, typed);
    }

    /// Unfolds everything that can be unfolded.
    pub fn open_all(&mut self) {
        self.run(
            "for (const node of document.querySelectorAll('details')) node.open = true;",
            &Value::Null,
        );
    }

    /// Empties a field.
    pub fn clear(&mut self, selector: &str) {
        self.run(
            "document.querySelector(arguments[0]).value = '';",
            &json!(selector),
        );
    }

    /// The address of the screen that is shown, without "#/".
    pub fn screen(&self) -> String {
        let hash = self.run("return location.hash;", &Value::Null);
        text_of(&hash)
            .unwrap_or_default()
            .trim_start_matches("#/")
            .to_owned()
    }

    /// Waits until a screen is shown.
    pub fn expect_screen(&self, name: &str) {
        if wait::until(wait::LIMIT, || (self.screen() == name).then_some(())).is_none() {
            self.fail(&format!("this is not the screen {name}"));
        }
    }

    /// The words on the screen, as they are shown.
    pub fn words(&self) -> String {
        let words = self.run("return document.body.innerText;", &Value::Null);
        text_of(&words).unwrap_or_default()
    }

    /// Waits until something is so.
    pub fn wait_until(&self, what: &str, is_so: impl Fn(&Self) -> bool) {
        if wait::until(wait::LIMIT, || is_so(self).then_some(())).is_none() {
            self.fail(&format!("waited in vain for {what}"));
        }
    }

    /// Whether an element is on the screen.
    pub fn has(&self, selector: &str) -> bool {
        self.run(
            "return document.querySelector(arguments[0]) !== null;",
            &json!(selector),
        ) == json!(true)
    }

    /// Waits until an element is on the screen.
    pub fn expect(&self, selector: &str) {
        if wait::until(wait::LIMIT, || self.has(selector).then_some(())).is_none() {
            self.fail(&format!("{selector} is not there"));
        }
    }

    /// Runs a script in the page.
    pub fn run(&self, script: &str, argument: &Value) -> Value {
        let result = self.engine().session().run(script, argument);
        result.unwrap_or_else(|trouble| panic!("{}: {trouble}", self.place()))
    }

    /// Runs a script in the page that returns a promise, and gives what it comes to.
    pub fn ask_later(&self, script: &str) -> Value {
        let script = format!(
            "const done = arguments[arguments.length - 1];
             (async () => {{ {script} }})().then(done, (error) => done(String(error)));"
        );
        let result = self.engine().session().run_later(&script, &Value::Null);
        self.must("a script", result)
    }

    /// Keeps a picture of the screen.
    pub fn picture(&mut self, name: &str) {
        self.pictures += 1;
        let file = format!(
            "{}-{}-{:02}-{name}",
            self.journey,
            self.kind.name(),
            self.pictures
        );
        let painted = self.engine().session().run_later(PAINT, &Value::Null);
        self.must("painting", painted);
        let kept = self
            .engine()
            .session()
            .picture()
            .and_then(|base64| picture::keep(&file, &base64));
        self.must("a picture", kept.map(drop));
    }

    /// Ends the journey: says where, why and what is on the screen, and leaves a picture.
    pub fn fail(&self, why: &str) -> ! {
        let session = self.engine().session();
        let file = format!("FAILED-{}-{}", self.journey, self.kind.name());
        let picture = session
            .picture()
            .and_then(|base64| picture::keep(&file, &base64));
        let picture = picture.map_or_else(|_| "none".to_owned(), |path| path.display().to_string());
        panic!(
            "{}: {why}\n--- on the screen ---\n{}\n--- picture: {picture}",
            self.place(),
            self.words()
        );
    }

    /// Goes on if `result` is good.
    pub fn must<T>(&self, what: &str, result: Result<T, Trouble>) -> T {
        match result {
            Ok(value) => value,
            Err(trouble) => panic!("{}: {what}: {trouble}", self.place()),
        }
    }

    fn wait_for_screen(&self, after: &str) -> String {
        let session = self.engine().session();
        // The page may be loading: then there is no document to ask, and that is no failure yet.
        let ask = || {
            session
                .run(NEW_SCREEN, &Value::Null)
                .ok()
                .as_ref()
                .and_then(text_of)
        };
        let Some(hash) = wait::until(wait::LIMIT, ask) else {
            self.fail(&format!("no new screen after {after}"));
        };
        if let Some(name) = text_of(&self.run(WORDLESS, &Value::Null)) {
            self.fail(&format!("instead of words this screen shows {name}"));
        }
        hash.trim_start_matches("#/").to_owned()
    }

    fn take_engine(&mut self) -> Box<dyn Engine> {
        match self.engine.take() {
            Some(engine) => engine,
            None => panic!("the app on this phone is not started"),
        }
    }

    fn place(&self) -> String {
        let hash = self.engine.as_ref().and_then(|engine| {
            engine
                .session()
                .run("return location.hash;", &Value::Null)
                .ok()
        });
        let screen = hash
            .as_ref()
            .and_then(text_of)
            .unwrap_or_else(|| "no page".to_owned());
        format!("{} ({}) at {screen}", self.journey, self.kind.name())
    }
}

fn text_of(value: &Value) -> Option<String> {
    value.as_str().map(str::to_owned)
}
