//! What can go wrong, as a stable code, the field it happened at, and a sentence made from both.

use serde::Serialize;

macro_rules! error_codes {
    ($($(#[$doc:meta])* $member:ident = $id:literal, $says:literal;)+) => {
        /// Every code a reply can carry. The ids are stable: a caller may rely on them.
        #[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
        pub enum ErrorCode { $($(#[$doc])* $member),+ }

        impl ErrorCode {
            /// Every code, in order.
            pub const ALL: &'static [Self] = &[$(Self::$member),+];

            /// The stable id used on the wire.
            #[must_use]
            pub const fn id(self) -> &'static str {
                match self { $(Self::$member => $id),+ }
            }

            /// The code with this id.
            #[must_use]
            pub fn from_id(id: &str) -> Option<Self> {
                match id { $($id => Some(Self::$member),)+ _ => None }
            }

            /// What it means, in plain English.
            #[must_use]
            pub const fn says(self) -> &'static str {
                match self { $(Self::$member => $says),+ }
            }
        }
    };
}

error_codes! {
    /// The line is not JSON, or is nested too deep.
    BadJson = "bad_json", "this is not one line of JSON";
    /// The line or one text in it is too long.
    TooLong = "too_long", "this is too long";
    /// A key stands twice in one object.
    DuplicateKey = "duplicate_key", "this key is given twice";
    /// The line is JSON, but no object.
    NotAnObject = "not_an_object", "the line must be one JSON object";
    /// No command has this name.
    UnknownCommand = "unknown_command", "there is no such command";
    /// The command has no such field.
    UnknownField = "unknown_field", "there is no such field here";
    /// A field that is needed is not there.
    MissingField = "missing_field", "this field is needed";
    /// A field holds the wrong kind of value.
    WrongType = "wrong_type", "this is the wrong kind of value";
    /// A word is not in the list of the field.
    NotAChoice = "not_a_choice", "this is not one of the choices";
    /// A number is outside its range.
    OutOfRange = "out_of_range", "this number is out of range";
    /// The question must be answered before there can be advice.
    AnswerNeeded = "answer_needed", "this must be asked and answered first";
    /// Two values cannot both be true.
    Contradiction = "contradiction", "this does not fit with another value";
    /// The command or task is not built yet.
    NotBuilt = "not_built", "this is not built yet";
    /// The way cannot be done with this body and load.
    NoPosture = "no_posture", "this way cannot be done here";
    /// The app is locked.
    Locked = "locked", "the app is locked";
    /// The first start was done before.
    AlreadySetUp = "already_set_up", "the app is set up already";
    /// The first start was not done yet.
    NotSetUp = "not_set_up", "the app is not set up yet";
    /// The passphrase has too few characters.
    PassphraseShort = "passphrase_short", "the passphrase is too short";
    /// The two passphrases differ.
    PassphraseMismatch = "passphrase_mismatch", "the two passphrases differ";
    /// The passphrase does not open the vault.
    WrongPassphrase = "wrong_passphrase", "the passphrase does not open the vault";
    /// Too many tries; a wait is on.
    TryLater = "try_later", "too many tries, try again later";
    /// The vault's files are not there.
    VaultMissing = "vault_missing", "the vault is not there";
    /// The vault's files cannot be read.
    VaultDamaged = "vault_damaged", "the vault is damaged";
    /// The file is not one of ours.
    VaultForeign = "vault_foreign", "this is not a vault of this app";
    /// The vault was written by a newer version.
    VaultNewer = "vault_newer", "the vault is from a newer version";
    /// No room is left on the device.
    DiskFull = "disk_full", "there is no room left on the device";
    /// Reading or writing failed.
    StorageFailed = "storage_failed", "reading or writing failed";
    /// Not everything could be erased; the next start goes on with it.
    EraseUnfinished = "erase_unfinished", "not everything could be erased";
    /// The device gave no random numbers.
    RandomnessFailed = "randomness_failed", "the device gave no random numbers";
    /// Nothing has this id.
    NotFound = "not_found", "there is no such entry";
    /// No draft is open.
    NoDraft = "no_draft", "no draft is open";
    /// The draft is not at this question.
    QuestionNotOpen = "question_not_open", "this question is not open";
    /// The question does not offer this answer.
    AnswerNotOffered = "answer_not_offered", "this answer is not offered";
    /// The holder has not said what others call them.
    AliasNeeded = "alias_needed", "a name for others to see is needed";
    /// The name is empty or too long.
    AliasLength = "alias_length", "this name is empty or too long";
    /// The name holds a character that is not shown.
    AliasCharacter = "alias_character", "this name holds a character that is not shown";
    /// More than five minutes since the offer was shown.
    PairExpired = "pair_expired", "this took too long, start pairing again";
    /// The other device's offer was not scanned.
    PairNothingScanned = "pair_nothing_scanned", "nothing was scanned yet";
    /// The pairing belongs to other keys of this device.
    PairAgain = "pair_again", "this pairing is no longer of use, pair again";
    /// Nobody is paired under this id.
    UnknownPairing = "unknown_pairing", "nobody is paired under this id";
    /// The scan screen is not open.
    ScanNotStarted = "scan_not_started", "the scan screen is not open";
    /// Nothing came in that could be decided on.
    NoParcel = "no_parcel", "nothing came in";
    /// The code does not open the parcel.
    CodeWrong = "code_wrong", "this code does not open it";
    /// Nothing is shown under this id.
    UnknownShow = "unknown_show", "nothing is shown under this id";
    /// Two parts of the plan cannot both hold.
    PlanContradiction = "plan_contradiction", "this does not fit with the rest of the plan";
    /// There is no plan with this id.
    UnknownPlan = "unknown_plan", "there is no such plan";
    /// Nothing would be handed over.
    NothingToShow = "nothing_to_show", "there is nothing to hand over";
    /// A fault of ours.
    Internal = "internal", "something went wrong inside the app";
}

/// A failure, ready for the wire. Made from code and field only: no value and no foreign error text can
/// reach it, so no passphrase can.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
#[error("{message}")]
pub struct DoorError {
    /// The stable code.
    pub code: ErrorCode,
    /// Where, as a path like `object.mass_kg` or `tasks[0].h_cm`. `None`: the line as a whole.
    pub field: Option<String>,
    /// A sentence for people.
    pub message: String,
}

impl DoorError {
    /// A failure of the line as a whole.
    #[must_use]
    pub fn new(code: ErrorCode) -> Self {
        Self {
            code,
            field: None,
            message: format!("{}.", code.says()),
        }
    }

    /// A failure at a field.
    #[must_use]
    pub fn at(code: ErrorCode, field: impl Into<String>) -> Self {
        let field = field.into();
        let message = format!("{field}: {}.", code.says());
        Self {
            code,
            field: Some(field),
            message,
        }
    }

    /// The same failure with a sentence in the user's language.
    #[must_use]
    pub fn saying(mut self, message: String) -> Self {
        self.message = message;
        self
    }

    /// The reply line, without a line break.
    #[must_use]
    pub fn to_json_line(&self) -> String {
        let body = Body {
            code: self.code.id(),
            field: self.field.as_deref(),
            message: &self.message,
        };
        serde_json::to_string(&Failed { error: body }).unwrap_or_else(|_| INTERNAL.to_owned())
    }
}

/// The reply when even a failure cannot be written. Cannot happen with the types above.
const INTERNAL: &str = r#"{"error":{"code":"internal","field":null,"message":"something went wrong inside the app."}}"#;

#[derive(Serialize)]
struct Failed<'a> {
    error: Body<'a>,
}

#[derive(Serialize)]
struct Body<'a> {
    code: &'a str,
    field: Option<&'a str>,
    message: &'a str,
}

#[derive(Serialize)]
struct Done<'a, T> {
    ok: &'a T,
}

/// The reply line of a success, without a line break. A value that cannot be written gives `internal`.
#[must_use]
pub fn ok_line<T: Serialize>(value: &T) -> String {
    serde_json::to_string(&Done { ok: value })
        .unwrap_or_else(|_| DoorError::new(ErrorCode::Internal).to_json_line())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_code_has_its_own_id_and_is_found_by_it() {
        for code in ErrorCode::ALL {
            assert_eq!(ErrorCode::from_id(code.id()), Some(*code));
        }
        let ids: std::collections::BTreeSet<_> =
            ErrorCode::ALL.iter().map(|code| code.id()).collect();
        assert_eq!(ids.len(), ErrorCode::ALL.len());
    }

    #[test]
    fn a_failure_names_code_field_and_a_sentence() {
        let line = DoorError::at(ErrorCode::OutOfRange, "person.back_nrs").to_json_line();
        assert_eq!(
            line,
            r#"{"error":{"code":"out_of_range","field":"person.back_nrs","message":"person.back_nrs: this number is out of range."}}"#
        );
    }

    #[test]
    fn a_failure_of_the_whole_line_has_no_field() {
        let line = DoorError::new(ErrorCode::BadJson).to_json_line();
        assert!(line.contains(r#""field":null"#), "{line}");
    }

    #[test]
    fn what_cannot_be_written_is_our_fault() {
        let line = ok_line(&std::collections::BTreeMap::from([((1, 2), 3)]));
        assert!(line.contains(r#""code":"internal""#), "{line}");
    }
}
