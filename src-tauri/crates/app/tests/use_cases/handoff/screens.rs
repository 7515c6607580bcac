//! Two screens that look at each other.

use crate::phone::TestPhone;
use app::Taken;
use serde_json::{Value, json};

/// Pixels a module is drawn with.
const SCALE: usize = 4;
/// White modules around a symbol (ISO/IEC 18004, section 9.1).
const QUIET: usize = 4;

/// A grey picture.
pub(crate) struct Picture {
    pub(crate) side: usize,
    pub(crate) pixels: Vec<u8>,
}

/// Draws what a phone shows: black on white, with the quiet zone.
pub(crate) fn draw(symbol: &Value) -> Picture {
    let size = usize::try_from(symbol["size"].as_u64().expect("a size")).expect("small");
    let bits = from_base64(symbol["bits"].as_str().expect("bits"));
    assert_eq!(bits.len(), (size * size).div_ceil(8), "one bit a module");
    let is_dark = |x: usize, y: usize| {
        let (Some(x), Some(y)) = (x.checked_sub(QUIET), y.checked_sub(QUIET)) else {
            return false;
        };
        let at = y * size + x;
        x < size && y < size && bits[at / 8] & (0x80 >> (at % 8)) != 0
    };
    let side = (size + 2 * QUIET) * SCALE;
    let pixels = (0..side * side)
        .map(|at| {
            if is_dark(at % side / SCALE, at / side / SCALE) {
                0
            } else {
                255
            }
        })
        .collect();
    Picture { side, pixels }
}

/// Base64 (RFC 4648) read apart from the app's own.
pub(crate) fn from_base64(text: &str) -> Vec<u8> {
    let alphabet = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/";
    let bits: Vec<bool> = text
        .trim_end_matches('=')
        .chars()
        .map(|digit| alphabet.find(digit).expect("a digit"))
        .flat_map(|value| (0..6).rev().map(move |bit| value >> bit & 1 == 1))
        .collect();
    bits.chunks_exact(8)
        .map(|byte| byte.iter().fold(0, |sum, bit| sum << 1 | u8::from(*bit)))
        .collect()
}

impl TestPhone {
    /// Holds a picture before the camera; gives the reply, `ok` or `error`.
    pub(crate) fn see(&self, picture: &Picture) -> Value {
        let side = u32::try_from(picture.side).expect("small");
        self.take("frame", side, side, &picture.pixels)
    }

    /// Hands bytes in as the scan screen does; gives the whole reply.
    pub(crate) fn take(&self, kind: &str, width: u32, height: u32, bytes: &[u8]) -> Value {
        let line = self.app().take(Taken {
            kind,
            width,
            height,
            bytes,
        });
        serde_json::from_str(&line).expect("a reply is JSON")
    }

    /// Holds a picture before the camera, which must be taken; gives `ok`.
    #[track_caller]
    pub(crate) fn scan(&self, picture: &Picture) -> Value {
        let mut reply = self.see(picture);
        assert!(reply["ok"].is_object(), "{reply}");
        reply["ok"].take()
    }

    /// Gives the holder a name for others.
    pub(crate) fn called(self, alias: &str) -> Self {
        self.ask(json!({"do": "card_set", "alias": alias}));
        self
    }

    /// A phone of somebody who treats people, or who lifts, with a name for others.
    pub(crate) fn of(name: &'static str, used_for: &str, alias: &str) -> Self {
        let phone = Self::with_an_owner(name);
        phone.ask(json!({"do": "settings_set", "use": used_for}));
        phone.called(alias)
    }
}

/// Shows both offers to the other phone; gives what each says when it compares.
#[track_caller]
pub(crate) fn look_at_each_other(one: &TestPhone, other: &TestPhone) -> [Value; 2] {
    let offers = [one, other].map(|phone| draw(&phone.ask(json!({"do": "pair_start"}))["symbol"]));
    [(one, &offers[1]), (other, &offers[0])].map(|(phone, offer)| {
        phone.ask(json!({"do": "scan_start", "for": "pair"}));
        let reply = phone.scan(offer);
        assert_eq!(reply["next"], "compare", "{reply}");
        phone.ask(json!({"do": "scan_stop"}));
        phone.ask(json!({"do": "pair_compare"}))
    })
}

/// Pairs two phones; gives the id that both know the pairing by.
#[track_caller]
pub(crate) fn pair(one: &TestPhone, other: &TestPhone) -> String {
    let [mine, theirs] = look_at_each_other(one, other);
    assert_eq!(mine["words"], theirs["words"]);
    let agree = json!({"do": "pair_agree", "same": true, "other_says_so": true});
    let [mine, theirs] = [one, other].map(|phone| phone.ask(agree.clone())["id"].clone());
    assert_eq!(mine, theirs);
    mine.as_str().expect("an id").to_owned()
}

/// What a phone shows to be handed over.
pub(crate) fn plan_for(plan: &Value, to: &str) -> Value {
    json!({"do": "show", "what": "plan", "plan": plan, "to": to})
}

/// A history, since so many days, without names.
pub(crate) fn history_for(since_days: u32, to: &str) -> Value {
    json!({"do": "show", "what": "history", "since_days": since_days, "to": to})
}

/// Begins to show; gives the first symbols as pictures, as many as are needed.
#[track_caller]
pub(crate) fn shown(phone: &TestPhone, what: Value) -> Vec<Picture> {
    let show = phone.ask(what);
    frames(phone, &show, 0, show["need"].as_u64().expect("a number"))
}

/// Some symbols of a show, as pictures.
#[track_caller]
pub(crate) fn frames(phone: &TestPhone, show: &Value, from: u64, count: u64) -> Vec<Picture> {
    let reply = phone.ask(json!({
        "do": "show_frames", "show": show["show"], "from": from, "count": count,
    }));
    let symbols = reply["symbols"].as_array().expect("symbols");
    symbols.iter().map(draw).collect()
}

/// Holds pictures before the camera one after the other; gives the last reply.
#[track_caller]
pub(crate) fn look(phone: &TestPhone, pictures: &[Picture]) -> Value {
    phone.ask(json!({"do": "scan_start", "for": "parcel"}));
    let replies = pictures.iter().map(|picture| phone.scan(picture));
    let last = replies.last().expect("a picture");
    phone.ask(json!({"do": "scan_stop"}));
    last
}

/// Looks at what is shown, which must be taken in; gives the question about it.
#[track_caller]
pub(crate) fn asked_about(phone: &TestPhone, pictures: &[Picture]) -> Value {
    let reply = look(phone, pictures);
    assert_eq!(reply["next"], "accept", "{reply}");
    phone.ask(json!({"do": "parcel_question"}))
}

/// Looks at what is shown and takes it.
#[track_caller]
pub(crate) fn taken(phone: &TestPhone, pictures: &[Picture]) -> Value {
    asked_about(phone, pictures);
    phone.ask(json!({"do": "parcel_accept"}))
}

/// Looks at what is shown, which must be refused; gives the sentence.
#[track_caller]
pub(crate) fn refusal(phone: &TestPhone, pictures: &[Picture]) -> String {
    let reply = look(phone, pictures);
    assert_eq!(reply["state"], "refused", "{reply}");
    reply["text"].as_str().expect("a sentence").to_owned()
}

/// Makes a plan as a pattern; gives its id.
#[track_caller]
pub(crate) fn plan(phone: &TestPhone, pattern: &str, whom: &str) -> Value {
    phone.ask(json!({"do": "plan_new", "pattern": pattern, "for": whom}))["id"].clone()
}

/// The bytes of what is shown, as the file that could be shared.
#[track_caller]
pub(crate) fn file(phone: &TestPhone, show: &Value) -> Vec<u8> {
    let file = phone.ask(json!({"do": "show_file", "show": show["show"]}));
    from_base64(file["base64"].as_str().expect("bytes"))
}
