//! What the worker is trained on. Equipment that is not in it is never offered.

use super::walk::worker_of;
use super::worker::trained as kept;
use crate::call::Call;
use crate::failure::Failure;
use crate::moving::options::TRAINING;
use crate::moving::page::trained_question;
use crate::use_cases::Nothing;
use crate::walk::page::QuestionView;
use door::ErrorCode;
use serde::{Deserialize, Serialize};

/// The reply of `trained` and `trained_set`.
#[derive(Debug, Serialize)]
pub(crate) struct Trained {
    question: QuestionView,
}

/// The question about training, with what was told.
///
/// # Errors
/// What the vault gives.
pub(crate) fn trained(call: &mut Call<'_>, _: Nothing) -> Result<Trained, Failure> {
    let told = kept(call.vault()?)?;
    Ok(Trained {
        question: trained_question(call.reader()?, told.as_ref()),
    })
}

/// The command `trained_set`.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct SetTrained {
    equipment: Vec<String>,
}

/// Keeps what the worker is trained on.
///
/// # Errors
/// `not_a_choice`; what the vault gives.
pub(crate) fn trained_set(call: &mut Call<'_>, asked: SetTrained) -> Result<Trained, Failure> {
    keep(call, asked.equipment, "equipment")?;
    trained(call, Nothing {})
}

/// Keeps a training.
///
/// # Errors
/// `not_a_choice` at this field; what the vault gives.
pub(crate) fn keep(call: &Call<'_>, ids: Vec<String>, field: &str) -> Result<(), Failure> {
    let known = |id: &String| TRAINING.iter().any(|piece| piece.id() == id);
    if !ids.iter().all(known) {
        return Err(Failure::at(ErrorCode::NotAChoice, field));
    }
    Ok(call.vault()?.worker().save(&worker_of(ids))?)
}
