//! What the window may and may not do, read from the very files that the build embeds.

#![allow(
    clippy::unwrap_used,
    clippy::indexing_slicing,
    reason = "a test stops at the first surprise"
)]

use serde_json::{Value, json};

fn configuration() -> Value {
    serde_json::from_str(include_str!("../tauri.conf.json")).unwrap()
}

#[test]
fn the_page_may_load_only_what_is_part_of_the_app() {
    let policy = configuration()["app"]["security"]["csp"].clone();
    let policy = policy.as_str().unwrap();
    let parts: Vec<&str> = policy.split("; ").collect();
    assert_eq!(parts[0], "default-src 'none'");
    for closed in [
        "base-uri 'none'",
        "form-action 'none'",
        "frame-ancestors 'none'",
    ] {
        assert!(parts.contains(&closed), "{closed}");
    }
    for loose in ["unsafe", "data:", "https:", "*", "asset:", "wasm"] {
        assert!(!policy.contains(loose), "{loose}");
    }
    // The one http address is the bridge itself, answered inside the process.
    assert_eq!(
        policy.replace("http://ipc.localhost", "").find("http"),
        None
    );
}

#[test]
fn there_is_one_window_and_it_may_call_our_four_commands() {
    let app = &configuration()["app"];
    assert_eq!(app["windows"].as_array().unwrap().len(), 1);
    assert_eq!(app["windows"][0]["label"], "main");
    assert_eq!(
        app["windows"][0]["create"], false,
        "made in code, with its refusals"
    );
    assert_eq!(app["security"]["freezePrototype"], true);
    assert_eq!(app["security"]["capabilities"], json!(["main"]));
    assert_eq!(app["security"].get("assetProtocol"), None);
    assert_eq!(
        app["security"].get("dangerousDisableAssetCspModification"),
        None
    );

    let capability: Value =
        serde_json::from_str(include_str!("../capabilities/main.json")).unwrap();
    assert_eq!(capability["windows"], json!(["main"]));
    assert_eq!(
        capability["permissions"],
        json!([
            "allow-command",
            "allow-take",
            "allow-save",
            "allow-save-report"
        ])
    );
    assert_eq!(capability["local"], true);
    assert_eq!(capability.get("remote"), None);
    let files = std::fs::read_dir(concat!(env!("CARGO_MANIFEST_DIR"), "/capabilities")).unwrap();
    assert_eq!(files.count(), 1);
}

#[test]
fn nothing_is_loaded_from_a_development_server() {
    let build = &configuration()["build"];
    assert_eq!(build, &json!({ "frontendDist": "../ui" }));
}

#[test]
fn ios_is_told_why_the_camera_is_asked_for() {
    // Without the text the system ends the app at the first request.
    let list = include_str!("../Info.ios.plist");
    let (_, after) = list
        .split_once("<key>NSCameraUsageDescription</key>")
        .unwrap();
    let text = after
        .split_once("<string>")
        .unwrap()
        .1
        .split_once("</string>")
        .unwrap()
        .0;
    assert!(text.len() > 20);
}
