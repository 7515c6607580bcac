/**
 * The one file that talks to Rust. A command goes out as one JSON line and one
 * JSON line comes back, through the app window or, in a browser, over loopback.
 */

/**
 * Carries out one command.
 * @param {string} name the command, such as "home"
 * @param {object} [body] its fields
 * @returns {Promise<object>} what stands under "ok" in the reply
 * @throws {{code: string, field: string|null, message: string}} what stands under "error";
 *   code "unreachable" (with an empty message) when no reply came at all
 */
export async function ask(name, body = {}) {
  const line = JSON.stringify({ do: name, ...body });
  return opened(() => bridge()?.invoke("command", { line }) ?? post("/command", line, { "content-type": "application/json" }));
}

/**
 * Hands bytes in: a frame of the camera as grey pixels, a picture file, or a sealed file.
 * @param {"frame"|"photo"|"file"} kind
 * @param {Uint8Array} bytes
 * @param {{width?: number, height?: number}} [size] of a frame, in pixels
 * @returns {Promise<object>} as `ask`, which it fails like
 */
export async function take(kind, bytes, { width = 0, height = 0 } = {}) {
  const headers = { "x-kind": kind, "x-width": String(width), "x-height": String(height) };
  return opened(() => {
    if (!bridge()) {
      return post("/take", bytes, { "content-type": "application/octet-stream", ...headers });
    }
    // Android's bridge carries text only.
    return /Android/.test(globalThis.navigator?.userAgent)
      ? bridge().invoke("take", { kind, width, height, base64: toBase64(bytes) })
      : bridge().invoke("take", bytes, { headers });
  });
}

/**
 * Saves the sealed file of what is shown among the person's files.
 * @param {string} show its id
 * @returns {Promise<{path: string}|null>} null in a browser, which saves files itself
 */
export async function save(show) {
  return bridge() ? opened(() => bridge().invoke("save", { show })) : null;
}

/** Saves what `report_make` makes of the same fields, as `save` does with a sealed file. */
export async function saveReport(asked) {
  return bridge() ? opened(() => bridge().invoke("save_report", { asked: JSON.stringify(asked) })) : null;
}

/** What stands under "ok" in the reply; everything else is thrown. */
async function opened(carry) {
  let reply;
  try {
    reply = JSON.parse(await carry());
  } catch {
    throw unreachable();
  }
  if (reply?.ok !== undefined) {
    return reply.ok;
  }
  throw reply?.error ?? unreachable();
}

function bridge() {
  return globalThis.__TAURI__?.core;
}

async function post(address, body, headers) {
  const reply = await fetch(address, { method: "POST", credentials: "same-origin", headers, body });
  return reply.text();
}

function toBase64(bytes) {
  let text = "";
  for (let at = 0; at < bytes.length; at += 0x8000) {
    text += String.fromCharCode(...bytes.subarray(at, at + 0x8000));
  }
  return btoa(text);
}

function unreachable() {
  return { code: "unreachable", field: null, message: "" };
}
