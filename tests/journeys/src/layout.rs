//! Whether everything on a screen can be read and reached: nothing cut, nothing off to the side.

use serde_json::{Value, json};

use crate::phone::Phone;

/// Lists what sticks out to the side, by more than a rounding of one pixel.
const SIDEWAYS: &str = r"
const width = document.documentElement.clientWidth;
const found = [];
if (document.documentElement.scrollWidth > width + 1) found.push('the page scrolls sideways');
for (const node of document.body.querySelectorAll('*')) {
  const box = node.getBoundingClientRect();
  const style = getComputedStyle(node);
  if (box.width < 2 || box.height < 2 || style.visibility === 'hidden' || node.closest('svg')) continue;
  if (box.right > width + 1 || box.left < -1) found.push(node.outerHTML.slice(0, 160));
}
return found;";

/// Lists elements whose text is cut by their own or an ancestor's box. Text for screen readers
/// only is cut to one pixel on purpose.
const CUT: &str = r"
const found = [];
const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
for (let text = walker.nextNode(); text; text = walker.nextNode()) {
  const node = text.parentElement;
  if (!text.data.trim() || node.closest('svg, script, style')) continue;
  const range = document.createRange();
  range.selectNode(text);
  const place = range.getBoundingClientRect();
  if (place.width < 2 || place.height < 2) continue;
  for (let box = node; box && box !== document.documentElement; box = box.parentElement) {
    const style = getComputedStyle(box);
    if (style.overflowX === 'visible' && style.overflowY === 'visible') continue;
    const edge = box.getBoundingClientRect();
    if (edge.width < 2 || edge.height < 2) break;
    const scrolls = /auto|scroll/.test(style.overflowY);
    const sideways = place.right > edge.right + 2 || place.left < edge.left - 2;
    const upright = !scrolls && (place.bottom > edge.bottom + 2 || place.top < edge.top - 2);
    if (sideways || upright) found.push(node.outerHTML.slice(0, 160));
  }
}
return found;";

/// Lists things to touch that are smaller than 24 by 24 CSS pixels and not part of a sentence
/// (WCAG 2.2, success criterion 2.5.8; a box counts with its label).
const SMALL: &str = r"
const found = [];
for (const node of document.querySelectorAll('a[href], button, input, select, summary')) {
  const target = node.closest('label') ?? node;
  const box = target.getBoundingClientRect();
  if (box.width === 0 || node.closest('p')) continue;
  if (box.width < 24 || box.height < 24) found.push(node.outerHTML.slice(0, 160));
}
return found;";

/// Text at twice the usual size, as somebody sets it who cannot read small letters.
const DOUBLE: &str = "document.documentElement.style.fontSize = arguments[0];";

impl Phone {
    /// Everything on the screen that sticks out to the side, is cut, or is too small to touch.
    pub fn what_is_cut(&self) -> Vec<String> {
        let checks = [
            ("sticks out", SIDEWAYS),
            ("is cut", CUT),
            ("is too small", SMALL),
        ];
        let mut all = Vec::new();
        for (what, script) in checks {
            let found = self.run(script, &Value::Null);
            let found = found.as_array().cloned().unwrap_or_default();
            all.extend(found.iter().map(|node| format!("{what}: {node}")));
        }
        all
    }

    /// Fails if anything on the screen sticks out to the side, is cut, or is too small to touch.
    pub fn expect_nothing_cut(&self, name: &str) {
        let found = self.what_is_cut();
        if !found.is_empty() {
            self.fail(&format!("on {name}:\n{}", found.join("\n")));
        }
    }

    /// Sets the text to twice its usual size, or back.
    pub fn double_text(&self, double: bool) {
        self.run(DOUBLE, &json!(if double { "200%" } else { "" }));
    }

    /// Fails unless the page follows a system that is set to dark colours.
    pub fn expect_dark(&self) {
        let dark = "return matchMedia('(prefers-color-scheme: dark)').matches;";
        if self.run(dark, &Value::Null) != json!(true) {
            self.fail("the page does not see that the system is dark");
        }
    }

    /// Makes the page this wide, in CSS pixels, and waits until it is.
    pub fn set_width(&self, width: u32) {
        self.must("another width", self.engine().set_width(width));
        let is = || {
            self.run("return document.documentElement.clientWidth;", &Value::Null) == json!(width)
        };
        if crate::wait::until(crate::wait::LIMIT, || is().then_some(())).is_none() {
            self.fail(&format!("the page does not become {width} pixels wide"));
        }
    }
}
