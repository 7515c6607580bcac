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
const own = (node) => [...node.childNodes].some((child) => child.nodeType === 3 && child.data.trim());
for (const node of document.body.querySelectorAll('*')) {
  if (!own(node) || node.closest('svg, script, style')) continue;
  const range = document.createRange();
  range.selectNodeContents(node);
  const text = range.getBoundingClientRect();
  if (text.width < 2 || text.height < 2) continue;
  for (let box = node; box && box !== document.documentElement; box = box.parentElement) {
    const style = getComputedStyle(box);
    if (style.overflowX === 'visible' && style.overflowY === 'visible') continue;
    const edge = box.getBoundingClientRect();
    if (edge.width < 2 || edge.height < 2) break;
    const scrolls = /auto|scroll/.test(style.overflowY);
    const sideways = text.right > edge.right + 2 || text.left < edge.left - 2;
    const upright = !scrolls && (text.bottom > edge.bottom + 2 || text.top < edge.top - 2);
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
    /// Fails if anything on the screen sticks out to the side, is cut, or is too small to touch.
    pub fn expect_nothing_cut(&self, name: &str) {
        for (what, script) in [
            ("sticks out", SIDEWAYS),
            ("is cut", CUT),
            ("is too small to touch", SMALL),
        ] {
            let found = self.run(script, &Value::Null);
            let found = found.as_array().cloned().unwrap_or_default();
            if !found.is_empty() {
                let list: Vec<String> = found.iter().map(ToString::to_string).collect();
                self.fail(&format!("on {name} something {what}:\n{}", list.join("\n")));
            }
        }
    }

    /// Sets the text to twice its usual size, or back.
    pub fn double_text(&self, double: bool) {
        self.run(DOUBLE, &json!(if double { "200%" } else { "" }));
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
