//! Any bytes as the text of a symbol: what Base45 takes, it gives back. What was found is kept in
//! `corpus/handoff_base45` and replayed by `handoff`'s own tests.

#![no_main]

use handoff::base45;
use libfuzzer_sys::fuzz_target;

fuzz_target!(|bytes: &[u8]| {
    let text = String::from_utf8_lossy(bytes);
    if let Ok(decoded) = base45::decode(&text) {
        assert_eq!(base45::encode(&decoded), text);
    }
    assert_eq!(base45::decode(&base45::encode(bytes)).as_deref(), Ok(bytes));
});
