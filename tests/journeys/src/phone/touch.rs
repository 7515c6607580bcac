//! What a finger does.

use std::path::Path;
use std::time::Duration;

use serde_json::{Value, json};

use super::{Phone, text_of};
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

/// The text of the problem box, if there is one.
const PROBLEM: &str = r"
const box = document.querySelector('error-summary [role=alert]');
const busy = document.getElementById('main')?.getAttribute('aria-busy') !== 'false';
return box && !busy ? box.innerText : null;";

impl Phone {
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

    /// Picks a file in a field for files.
    pub fn choose_file(&mut self, selector: &str, file: &Path) {
        self.taps += 1;
        self.type_in(selector, &file.display().to_string());
    }

    /// Empties a field.
    pub fn clear(&mut self, selector: &str) {
        self.run(
            "document.querySelector(arguments[0]).value = '';",
            &json!(selector),
        );
    }

    /// Unfolds everything that can be unfolded.
    pub fn open_all(&mut self) {
        self.run(
            "for (const node of document.querySelectorAll('details')) node.open = true;",
            &Value::Null,
        );
    }
}
