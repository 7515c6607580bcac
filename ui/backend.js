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
  let reply;
  try {
    reply = JSON.parse(await carry(line));
  } catch {
    throw unreachable();
  }
  if (reply?.ok !== undefined) {
    return reply.ok;
  }
  throw reply?.error ?? unreachable();
}

function carry(line) {
  const bridge = globalThis.__TAURI__?.core;
  return bridge ? bridge.invoke("command", { line }) : post(line);
}

async function post(line) {
  const reply = await fetch("/command", {
    method: "POST",
    credentials: "same-origin",
    headers: { "content-type": "application/json" },
    body: line,
  });
  return reply.text();
}

function unreachable() {
  return { code: "unreachable", field: null, message: "" };
}
