//! A test phone: the app on it, and what a person does with it and sees on it.

mod see;
mod touch;

use std::path::Path;

use serde_json::Value;

use crate::engines::{self, Engine, Kind, Setting};
use crate::picture;
use crate::trouble::Trouble;

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
