//! The worker's own body today. It stays private: no text for the office and no entry of the log holds it.

use super::standing::MoveStanding;
use super::worker;
use crate::call::Call;
use crate::convert::moment;
use crate::failure::Failure;
use crate::moving::ids::MoveQuestion;
use crate::use_cases::Nothing;
use crate::use_cases::walk::own;
use crate::walk::page::Page;
use door::ErrorCode;
use record::{BackState, Balance, BodyToday, Kneel, Pain};
use serde::Deserialize;

/// The command `own_start`.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct StartOwn {
    #[serde(default)]
    sign: bool,
}

/// Asks the worker about today, before somebody is moved. A move that waits asks once more if anything is new.
///
/// # Errors
/// What the vault gives.
pub(crate) fn own_start(call: &mut Call<'_>, asked: StartOwn) -> Result<Page, Failure> {
    if asked.sign
        && let Ok(mut standing) = MoveStanding::open(call)
    {
        standing.given.remove(&MoveQuestion::New);
        standing.keep(call.vault()?)?;
    }
    own::begin(call, asked.sign)
}

/// Keeps in one tap that nothing hurts, nothing is new, balance is good and kneeling is possible.
///
/// # Errors
/// `question_not_open` while more has to be asked; what the vault gives.
pub(crate) fn own_quick(call: &mut Call<'_>, _: Nothing) -> Result<Nothing, Failure> {
    if !worker::today(call)?.may_be_quick {
        return Err(Failure::new(ErrorCode::QuestionNotOpen));
    }
    let none = Pain::new(0);
    call.vault()?.body_today().save(&BodyToday {
        at: moment::to_record(call.now),
        back: none,
        back_state: Some(BackState::Steady),
        knee_left: none,
        knee_right: none,
        hip_left: none,
        hip_right: none,
        shoulders: none,
        balance: Some(Balance::Good),
        kneel: Some(Kneel::Yes),
        signs: None,
    })?;
    Ok(Nothing {})
}
