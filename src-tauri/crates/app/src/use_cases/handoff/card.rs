//! This device's own card.

use super::device::{own, own_role, read_alias, role_id};
use crate::call::Call;
use crate::failure::Failure;
use crate::use_cases::Nothing;
use crate::words::{Arg, Words};
use serde::{Deserialize, Serialize};

/// The reply of `card` and `card_set`.
#[derive(Debug, Serialize)]
pub(crate) struct CardView {
    alias: Option<String>,
    role: &'static str,
    suggest: String,
}

/// The card, with a name to take for those who have none.
///
/// # Errors
/// `randomness_failed`; what the vault gives.
pub(crate) fn card(call: &mut Call<'_>, _: Nothing) -> Result<CardView, Failure> {
    view(call)
}

/// The command `card_set`.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct SetCard {
    alias: String,
}

/// Sets what others call the holder. Those who are paired already keep the name they have.
///
/// # Errors
/// `alias_length`, `alias_character`; what the vault gives.
pub(crate) fn card_set(call: &mut Call<'_>, asked: SetCard) -> Result<CardView, Failure> {
    let alias = read_alias(&asked.alias)?;
    let (mut device, _) = own(call)?;
    device.alias = Some(alias.as_str().to_owned());
    call.vault()?.device().save(&device)?;
    view(call)
}

fn view(call: &Call<'_>) -> Result<CardView, Failure> {
    let (device, _) = own(call)?;
    Ok(CardView {
        alias: device.alias,
        role: role_id(own_role(call)?),
        suggest: suggest(call, &call.state.words)?,
    })
}

/// A name that is nobody's: a colour and a thing, by chance.
fn suggest(call: &Call<'_>, words: &Words) -> Result<String, Failure> {
    let mut chance = [0; 2];
    call.world.fill_random(&mut chance)?;
    let [colour, thing] = chance;
    Ok(words.format(
        "handoff-suggest",
        &[
            (
                "colour",
                pick(&words.text("handoff-suggest-colours"), colour),
            ),
            ("thing", pick(&words.text("handoff-suggest-things"), thing)),
        ],
    ))
}

fn pick(list: &str, chance: u8) -> Arg {
    let all: Vec<&str> = list.split(". ").collect();
    let at = usize::from(chance) % all.len().max(1);
    Arg::text(all.get(at).copied().unwrap_or_default())
}
