/**
 * Builds page nodes. Text goes in as text only, never as markup.
 */

/**
 * One element.
 * @param {string} tag such as "button" or the name of one of our parts
 * @param {object} [given] attributes; also `text`, `on` (listeners by event) and
 *   `props` (values set on the element itself). null, undefined and false are left out.
 * @param {...(Node|string|null|false|undefined|Array)} children
 * @returns {HTMLElement}
 */
export function make(tag, given = {}, ...children) {
  const node = document.createElement(tag);
  const { text, on, props, ...attributes } = given;
  for (const [name, value] of Object.entries(attributes)) {
    if (value !== null && value !== undefined && value !== false) {
      node.setAttribute(name, value === true ? "" : value);
    }
  }
  if (text !== undefined && text !== null) {
    node.textContent = text;
  }
  for (const [event, listener] of Object.entries(on ?? {})) {
    node.addEventListener(event, listener);
  }
  Object.assign(node, props);
  node.append(...present(children));
  return node;
}

/** A button that does `act`. `kind` is main, second, quiet or row. */
export function button(text, kind, act, given = {}) {
  return make("button", { type: "button", class: `button button--${kind}`, text, on: { click: act }, ...given });
}

/** A link to one of our own pages. */
export function link(text, hash, given = {}) {
  return make("a", { href: hash, text, ...given });
}

/** A paragraph, or nothing if there is no text. */
export function para(text, className) {
  return text ? make("p", { class: className, text }) : null;
}

/** The heading of a page; it takes focus when the page opens. */
export function heading(text, given = {}) {
  return make("h1", { tabindex: "-1", text, ...given });
}

/** A question and what answers it, named by its heading. */
export function group(title, ...children) {
  return make("div", { class: "question", role: "group", "aria-labelledby": "title" }, heading(title, { id: "title" }), ...children);
}

/** The button that sends a form. */
export function submit(text, id) {
  return make("button", { type: "submit", class: "button button--main", id, text });
}

/** What is unfolded by a tap on `text`. */
export function fold(text, given, ...children) {
  return make("details", given, make("summary", { text }), ...children);
}

/** Tells whoever listens what was tapped in one of our parts. */
export function tell(part, name, detail = null) {
  part.dispatchEvent(new CustomEvent(name, { detail, bubbles: true }));
}

/** A group of nodes under a second-level heading, or nothing if all are missing. */
export function section(title, ...children) {
  const inside = present(children);
  return inside.length === 0 ? null : make("section", { class: "section" }, make("h2", { text: title }), ...inside);
}

/** A long page that scrolls above one button, which stays in reach of the thumb and covers nothing. */
export function scrollAbove(action, ...children) {
  return [make("div", { class: "scroll" }, ...children), actions(action)];
}

/** The buttons at the foot of a page. */
export function actions(...children) {
  return make("div", { class: "actions" }, ...children);
}

function present(children) {
  return children.flat(Infinity).filter((child) => child !== null && child !== undefined && child !== false);
}
