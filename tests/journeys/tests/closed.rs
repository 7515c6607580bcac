//! What the page cannot do, tried from inside the page itself, and what is left on the disk.

#![allow(
    clippy::unwrap_used,
    clippy::indexing_slicing,
    reason = "a test stops at the first surprise"
)]

use std::fs;
use std::io::Read;
use std::net::{Ipv4Addr, TcpListener};
use std::path::{Path, PathBuf};
use std::time::Duration;

use journeys::engines::Kind;
use journeys::in_both_engines;
use journeys::person::AN_EVERYDAY_BOX;
use journeys::phone::Phone;
use serde_json::{Value, json};

in_both_engines!(
    the_page_reaches_nothing_outside,
    the_page_runs_no_code_but_its_own,
    the_page_gets_no_camera_no_place_no_store,
    nothing_readable_is_left_on_the_disk,
);

const PASSPHRASE: &str = "three tins of beans";

/// Somebody who listens outside, and whether anybody came.
struct Outside(TcpListener);

impl Outside {
    fn new() -> Self {
        let listener = TcpListener::bind((Ipv4Addr::LOCALHOST, 0)).unwrap();
        listener.set_nonblocking(true).unwrap();
        Self(listener)
    }

    fn address(&self) -> String {
        format!("http://{}/", self.0.local_addr().unwrap())
    }

    /// What was sent to it; a mere connection, such as browsers open in advance, carries nothing.
    fn was_told(&self) -> Option<String> {
        while let Ok((mut stream, _)) = self.0.accept() {
            stream.set_nonblocking(false).unwrap();
            stream
                .set_read_timeout(Some(Duration::from_millis(300)))
                .unwrap();
            let mut bytes = [0; 2000];
            let count = stream.read(&mut bytes).unwrap_or_default();
            if count > 0 {
                return Some(String::from_utf8_lossy(&bytes[..count]).into_owned());
            }
        }
        None
    }
}

/// Runs an attempt that gives what it saw, and lets the engine go on for a moment.
fn attempt(phone: &Phone, script: &str, argument: &Value) -> Value {
    let script = format!(
        "const done = arguments[arguments.length - 1]; const given = arguments[0];
         const pause = () => new Promise((resolve) => setTimeout(resolve, 300));
         (async () => {{ {script} }})().then(done, (error) => done('refused: ' + error));"
    );
    phone.must(
        "an attempt",
        phone.engine().session().run_later(&script, argument),
    )
}

fn the_page_reaches_nothing_outside(phone: &mut Phone) {
    let outside = Outside::new();
    let address = json!(outside.address());
    for script in [
        "await fetch(given, { mode: 'no-cors' }); return 'sent';",
        "const image = new Image(); image.src = given; document.body.append(image); await pause(); image.remove(); return image.naturalWidth;",
        "const frame = document.createElement('iframe'); frame.src = given; document.body.append(frame); await pause(); frame.remove();",
        "const script = document.createElement('script'); script.src = given; document.body.append(script); await pause(); script.remove();",
        "const link = document.createElement('link'); link.rel = 'stylesheet'; link.href = given; document.head.append(link); await pause(); link.remove();",
        "const socket = new WebSocket(given.replace('http', 'ws')); await pause(); socket.close();",
        "return navigator.sendBeacon(given, 'x');",
        "const form = document.createElement('form'); form.action = given; form.method = 'post'; document.body.append(form); form.submit(); await pause(); form.remove();",
        "await import(given);",
    ] {
        attempt(phone, script, &address);
        assert_eq!(outside.was_told(), None, "{script}");
    }
    if phone.kind() == Kind::Window {
        // A person's browser may go anywhere; the app's own window may not.
        for script in [
            "location.href = given; await pause();",
            "location.replace(given); await pause();",
            "const opened = window.open(given); await pause(); return opened === null;",
            "const link = document.createElement('a'); link.href = given; link.target = '_blank'; document.body.append(link); link.click(); await pause(); link.remove();",
            "const link = document.createElement('a'); link.href = given; link.download = 'x'; document.body.append(link); link.click(); await pause(); link.remove();",
        ] {
            attempt(phone, script, &address);
            assert_eq!(outside.was_told(), None, "{script}");
            assert_eq!(
                phone.run("return location.protocol;", &Value::Null),
                json!("tauri:")
            );
        }
        the_bridge_takes_one_command(phone);
    }
    // The page still works.
    phone.tap("#begin");
}

/// The window's bridge has some eighty commands of its own; only ours are open.
fn the_bridge_takes_one_command(phone: &Phone) {
    let reply = attempt(
        phone,
        "return window.__TAURI__.core.invoke('command', { line: given });",
        &json!("nonsense"),
    );
    assert!(reply.as_str().unwrap().contains("bad_json"), "{reply}");
    for command in [
        "plugin:app|version",
        "plugin:event|emit",
        "plugin:event|listen",
        "plugin:path|resolve_directory",
        "plugin:window|close",
        "plugin:window|create",
        "plugin:window|set_title",
        "plugin:webview|create_webview_window",
        "plugin:webview|print",
        "plugin:resources|close",
        "plugin:image|from_path",
        "plugin:menu|new",
        "plugin:fs|read_text_file",
        "plugin:shell|open",
        "other",
    ] {
        let script = "return ['done', await window.__TAURI__.core.invoke(given, {})];";
        let reply = attempt(phone, script, &json!(command));
        assert!(
            reply
                .as_str()
                .is_some_and(|text| text.starts_with("refused")),
            "{command}: {reply}"
        );
    }
}

fn the_page_runs_no_code_but_its_own(phone: &mut Phone) {
    for script in [
        "const script = document.createElement('script'); script.textContent = 'window.came = true'; document.body.append(script); await pause(); script.remove();",
        "const node = document.createElement('button'); node.setAttribute('onclick', 'window.came = true'); document.body.append(node); node.click(); await pause(); node.remove();",
        "const link = document.createElement('a'); link.href = 'javascript:void(window.came = true)'; document.body.append(link); link.click(); await pause(); link.remove();",
        "const script = document.createElement('script'); script.src = URL.createObjectURL(new Blob(['window.came = true'])); document.body.append(script); await pause(); script.remove();",
        "const script = document.createElement('script'); script.src = 'data:text/javascript,window.came = true'; document.body.append(script); await pause(); script.remove();",
        "setTimeout('window.came = true', 0); await pause();",
        "const style = document.createElement('style'); style.textContent = 'body { --came: 1 }'; document.head.append(style); await pause(); if (getComputedStyle(document.body).getPropertyValue('--came')) window.came = true; style.remove();",
        "document.body.setAttribute('style', '--came: 1'); await pause(); if (getComputedStyle(document.body).getPropertyValue('--came')) window.came = true; document.body.removeAttribute('style');",
    ] {
        attempt(phone, script, &Value::Null);
        assert_eq!(
            phone.run("return window.came ?? false;", &Value::Null),
            json!(false),
            "{script}"
        );
    }
    if phone.kind() == Kind::Window {
        let frozen =
            "return [Object.prototype, Array.prototype, Function.prototype].some(Object.isFrozen);";
        assert_eq!(
            phone.run(frozen, &Value::Null),
            json!(true),
            "prototypes are frozen"
        );
    }
}

fn the_page_gets_no_camera_no_place_no_store(phone: &mut Phone) {
    phone.first_start(PASSPHRASE);
    phone.tap("#check-lift");
    phone.walk_to("advice", &[AN_EVERYDAY_BOX]);
    for script in [
        "await navigator.mediaDevices.getUserMedia({ video: true }); return 'given';",
        "await navigator.mediaDevices.getUserMedia({ audio: true }); return 'given';",
        "return new Promise((given, refused) => navigator.geolocation.getCurrentPosition(given, (error) => refused(error.code)));",
        "if (await Notification.requestPermission() === 'granted') return 'given'; throw 'no';",
    ] {
        let reply = attempt(phone, script, &Value::Null);
        assert!(
            reply
                .as_str()
                .is_some_and(|text| text.starts_with("refused")),
            "{script}: {reply}"
        );
    }
    let stores = "return [localStorage.length, sessionStorage.length, document.cookie, (await indexedDB.databases()).length];";
    assert_eq!(attempt(phone, stores, &Value::Null), json!([0, 0, "", 0]));
}

fn nothing_readable_is_left_on_the_disk(phone: &mut Phone) {
    phone.first_start(PASSPHRASE);
    phone.tap("#check-lift");
    phone.walk_to("advice", &[AN_EVERYDAY_BOX]);
    phone.tap("#save");
    phone.type_in("#name", "Zanzibar crate");
    phone.tap("#keep");
    phone.tap("#did");
    phone.tap("#skip");
    phone.expect("[data-saved]");
    // As it stands while the app is open, then after a kill.
    let mut places = vec![phone.folder().to_owned()];
    if phone.kind() == Kind::Window {
        places.push(phone.engine().home().to_owned());
    }
    let files: Vec<PathBuf> = places.iter().flat_map(|place| files_under(place)).collect();
    assert!(
        files.iter().any(|file| file.ends_with("vault.db")),
        "{files:?}"
    );
    for file in &files {
        let bytes = fs::read(file).unwrap_or_default();
        let plain = bytes.starts_with(b"SQLite format 3");
        assert!(
            !(plain && file.starts_with(phone.folder())),
            "{}",
            file.display()
        );
        for word in ["Zanzibar", PASSPHRASE, "six_pack", "back_state"] {
            let narrow = word.as_bytes();
            let wide: Vec<u8> = word.encode_utf16().flat_map(u16::to_le_bytes).collect();
            for pattern in [narrow, &wide] {
                let found = bytes.windows(pattern.len()).any(|window| window == pattern);
                assert!(!found, "{word} can be read in {}", file.display());
            }
        }
    }
}

fn files_under(folder: &Path) -> Vec<PathBuf> {
    let entries = fs::read_dir(folder).into_iter().flatten().flatten();
    entries
        .flat_map(|entry| match entry.file_type() {
            Ok(kind) if kind.is_dir() => files_under(&entry.path()),
            Ok(kind) if kind.is_file() => vec![entry.path()],
            _ => vec![],
        })
        .collect()
}
