//! Any bytes as a command line: the door must answer with one line of JSON, `ok` or a known error, and the
//! same again. What it found is kept in `corpus/command_line` and replayed by `tests/judgement`.

#![no_main]

use door::{DoorError, ErrorCode};
use libfuzzer_sys::fuzz_target;
use serde_json::Value;

fuzz_target!(|bytes: &[u8]| {
    let line = String::from_utf8_lossy(bytes);
    let Some(reply) = door::answer(&line) else {
        return;
    };
    assert!(!reply.contains('\n'));
    let value: Value = serde_json::from_str(&reply).expect("the reply is JSON");
    match value.get("error") {
        Some(error) => {
            let code = error["code"]
                .as_str()
                .and_then(ErrorCode::from_id)
                .expect("a known code");
            let expected = match error["field"].as_str() {
                Some(field) => DoorError::at(code, field),
                None => DoorError::new(code),
            };
            assert_eq!(reply, expected.to_json_line());
        }
        None => assert!(value["ok"].is_object()),
    }
    assert_eq!(door::answer(&line).as_deref(), Some(reply.as_str()));
});
