//! The part of the W3C WebDriver standard that journeys use, engine by engine the same.

use serde_json::{Value, json};

use crate::http;
use crate::trouble::Trouble;
use crate::wait;

/// The key under which the standard hands out elements.
const ELEMENT: &str = "element-6066-11e4-a52e-4f735466cecf";

/// An open session with a driver.
#[derive(Debug)]
pub struct Session {
    port: u16,
    root: String,
    open: bool,
}

/// An element of the page, valid until the page replaces it.
#[derive(Debug, Clone)]
pub struct Element(String);

impl Session {
    /// Waits for the driver at `port` and opens a session.
    ///
    /// # Errors
    /// When the driver does not come up or refuses the capabilities.
    pub fn open(port: u16, capabilities: &Value) -> Result<Self, Trouble> {
        let up = wait::until(wait::LIMIT, || http::send(port, "GET", "/status", "").ok());
        up.ok_or_else(|| Trouble::InVain(format!("a driver at port {port}")))?;
        let body = json!({ "capabilities": { "alwaysMatch": capabilities } });
        let value = call(port, "POST", "/session", &body)?;
        let id = text(&value, "sessionId")?;
        Ok(Self {
            port,
            root: format!("/session/{id}"),
            open: true,
        })
    }

    /// Opens an address.
    ///
    /// # Errors
    /// As every command: [`Trouble::Refused`], [`Trouble::Connection`], [`Trouble::Shape`].
    pub fn go(&self, address: &str) -> Result<(), Trouble> {
        self.post("/url", &json!({ "url": address })).map(drop)
    }

    /// The address that is open.
    ///
    /// # Errors
    /// As every command.
    pub fn address(&self) -> Result<String, Trouble> {
        let value = self.call("GET", "/url", &Value::Null)?;
        value
            .as_str()
            .map(str::to_owned)
            .ok_or_else(|| Trouble::Shape("/url".into(), "text"))
    }

    /// Finds the first element for a CSS selector; `None` when there is none now.
    ///
    /// # Errors
    /// As every command.
    pub fn find(&self, selector: &str) -> Result<Option<Element>, Trouble> {
        let body = json!({ "using": "css selector", "value": selector });
        match self.post("/element", &body) {
            Ok(value) => text(&value, ELEMENT).map(|id| Some(Element(id))),
            Err(Trouble::Refused { error, .. }) if error == "no such element" => Ok(None),
            Err(trouble) => Err(trouble),
        }
    }

    /// Presses an element with a real pointer.
    ///
    /// # Errors
    /// Also when something else covers it.
    pub fn click(&self, element: &Element) -> Result<(), Trouble> {
        self.post(&format!("/element/{}/click", element.0), &json!({}))
            .map(drop)
    }

    /// Types into an element, key by key.
    ///
    /// # Errors
    /// Also when the element takes no text.
    pub fn type_text(&self, element: &Element, words: &str) -> Result<(), Trouble> {
        self.post(
            &format!("/element/{}/value", element.0),
            &json!({ "text": words }),
        )
        .map(drop)
    }

    /// Presses one key, named as in the standard's table (as `\u{E004}` for Tab), on whatever has
    /// the focus.
    ///
    /// # Errors
    /// As every command.
    pub fn press(&self, key: char) -> Result<(), Trouble> {
        let key = key.to_string();
        let actions = json!({ "actions": [{ "type": "key", "id": "keys", "actions": [
            { "type": "keyDown", "value": key }, { "type": "keyUp", "value": key },
        ]}]});
        self.post("/actions", &actions).map(drop)
    }

    /// Runs a function body in the page and gives what it returns. `arguments[0]` is `argument`.
    ///
    /// # Errors
    /// Also when the script throws.
    pub fn run(&self, script: &str, argument: &Value) -> Result<Value, Trouble> {
        self.post(
            "/execute/sync",
            &json!({ "script": script, "args": [argument] }),
        )
    }

    /// As [`Session::run`], for a script that calls `arguments[1]` with its result later.
    ///
    /// # Errors
    /// Also when the script takes too long.
    pub fn run_later(&self, script: &str, argument: &Value) -> Result<Value, Trouble> {
        self.post(
            "/execute/async",
            &json!({ "script": script, "args": [argument] }),
        )
    }

    /// Gives scripts of [`Session::run_later`] this long, in milliseconds.
    ///
    /// # Errors
    /// As every command.
    pub fn allow_scripts(&self, milliseconds: u32) -> Result<(), Trouble> {
        self.post("/timeouts", &json!({ "script": milliseconds }))
            .map(drop)
    }

    /// A picture of what is visible: a PNG file in base64.
    ///
    /// # Errors
    /// As every command.
    pub fn picture(&self) -> Result<String, Trouble> {
        let value = self.call("GET", "/screenshot", &Value::Null)?;
        value
            .as_str()
            .map(str::to_owned)
            .ok_or_else(|| Trouble::Shape("/screenshot".into(), "text"))
    }

    /// A picture of one element: a PNG file in base64.
    ///
    /// # Errors
    /// As every command.
    pub fn picture_of(&self, element: &Element) -> Result<String, Trouble> {
        let path = format!("/element/{}/screenshot", element.0);
        let value = self.call("GET", &path, &Value::Null)?;
        value
            .as_str()
            .map(str::to_owned)
            .ok_or(Trouble::Shape(path, "text"))
    }

    /// Gives the window another size, in CSS pixels.
    ///
    /// # Errors
    /// As every command.
    pub fn resize(&self, width: u32, height: u32) -> Result<(), Trouble> {
        self.post("/window/rect", &json!({ "width": width, "height": height }))
            .map(drop)
    }

    /// A command that only this engine has.
    ///
    /// # Errors
    /// As every command.
    pub fn post(&self, path: &str, body: &Value) -> Result<Value, Trouble> {
        self.call("POST", path, body)
    }

    /// Ends the session and with it the browser.
    ///
    /// # Errors
    /// As every command.
    pub fn close(mut self) -> Result<(), Trouble> {
        self.open = false;
        self.call("DELETE", "", &Value::Null).map(drop)
    }

    /// Leaves the session without a word to the driver, whose browser is gone already.
    pub fn forget(mut self) {
        self.open = false;
    }

    fn call(&self, method: &'static str, path: &str, body: &Value) -> Result<Value, Trouble> {
        call(self.port, method, &format!("{}{path}", self.root), body)
    }
}

impl Drop for Session {
    fn drop(&mut self) {
        if self.open {
            // The driver may be gone already; then so is the browser.
            let _ = self.call("DELETE", "", &Value::Null);
        }
    }
}

fn call(port: u16, method: &'static str, path: &str, body: &Value) -> Result<Value, Trouble> {
    let sent = if body.is_null() {
        String::new()
    } else {
        body.to_string()
    };
    let reply = http::send(port, method, path, &sent)?;
    let mut parsed: Value = serde_json::from_str(&reply.body).unwrap_or_default();
    let value = parsed.get_mut("value").map(Value::take);
    let value = value.ok_or_else(|| Trouble::Shape(path.to_owned(), "a value"))?;
    if reply.status == 200 {
        return Ok(value);
    }
    Err(Trouble::Refused {
        method,
        path: path.to_owned(),
        error: text(&value, "error").unwrap_or_default(),
        message: text(&value, "message").unwrap_or_default(),
    })
}

fn text(value: &Value, key: &'static str) -> Result<String, Trouble> {
    let found = value.get(key).and_then(Value::as_str);
    found
        .map(str::to_owned)
        .ok_or_else(|| Trouble::Shape(value.to_string(), key))
}
