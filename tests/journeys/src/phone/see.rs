//! What the eye sees.

use serde_json::{Value, json};

use super::{Phone, text_of};
use crate::{picture, wait};

/// The address after the #, once the page is drawn and has a heading that is not marked.
const NEW_SCREEN: &str = r"
const main = document.getElementById('main');
const heading = main?.querySelector('h1[tabindex]');
const ready = heading && !heading.seen && main.getAttribute('aria-busy') === 'false';
return ready ? location.hash : null;";

/// Lets the engine paint what the page already is: a picture may otherwise show the screen before.
const PAINT: &str = r"
const done = arguments[arguments.length - 1];
requestAnimationFrame(() => requestAnimationFrame(() => done(true)));";

/// Names of messages that have no words: they show up in brackets.
const WORDLESS: &str = r"
const found = document.body.innerText.match(/\[[a-z][a-z0-9]*(-[a-z0-9]+)+\]|\{\s*\$\w+\s*\}|\bundefined\b|\bNaN\b|\bnull\b/);
return found ? found[0] : null;";

impl Phone {
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
        // A space that does not break looks like any other.
        text_of(&words).unwrap_or_default().replace('\u{a0}', " ")
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

    /// Waits until something is so.
    pub fn wait_until(&self, what: &str, is_so: impl Fn(&Self) -> bool) {
        if wait::until(wait::LIMIT, || is_so(self).then_some(())).is_none() {
            self.fail(&format!("waited in vain for {what}"));
        }
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

    /// A picture of what is visible, as a PNG file.
    pub fn picture_of_all(&self) -> Vec<u8> {
        let session = self.engine().session();
        let painted = session.run_later(PAINT, &Value::Null);
        self.must("painting", painted);
        let taken = session.picture().and_then(|base64| picture::read(&base64));
        self.must("a picture", taken)
    }

    /// A picture of one element, as a PNG file.
    pub fn picture_of(&self, selector: &str) -> Vec<u8> {
        let session = self.engine().session();
        let painted = session.run_later(PAINT, &Value::Null);
        self.must("painting", painted);
        let found = wait::until(wait::LIMIT, || session.find(selector).ok().flatten());
        let Some(element) = found else {
            self.fail(&format!("{selector} is not there"));
        };
        let taken = session
            .picture_of(&element)
            .and_then(|base64| picture::read(&base64));
        self.must(selector, taken)
    }

    /// Waits for another screen than the one whose heading is marked; gives its address.
    pub(super) fn wait_for_screen(&self, after: &str) -> String {
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
}
