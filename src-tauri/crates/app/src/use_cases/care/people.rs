//! The people who are helped: by code and picture, never by name unless the employer allows it.

use super::sending::can_leave;
use super::standing::MoveStanding;
use crate::call::Call;
use crate::card::IdText;
use crate::convert::moment;
use crate::failure::Failure;
use crate::moving::people::{MoveRow, PICTURES, Who, moves};
use crate::moving::text::{move_name, person_lines};
use crate::use_cases::Nothing;
use crate::use_cases::departure::forget_code;
use crate::use_cases::keep::{Kept, not_found_at_id};
use crate::words::message_id;
use door::ErrorCode;
use handoff::Alias;
use record::CarePerson;
use serde::{Deserialize, Serialize};
use vault::CarePersonId;

/// Most characters of a code. House rule: longer invites a name.
pub(super) const LONGEST_CODE: usize = 12;
/// Most people. House rule: more would be a list to search.
pub(super) const MOST_PEOPLE: usize = 60;

/// The reply of `people`.
#[derive(Debug, Serialize)]
pub(crate) struct People {
    people: Vec<Who>,
    /// A code and a picture that nobody has yet.
    suggest: Suggest,
    pictures: Vec<IdText>,
    /// The walk that is not finished.
    draft: Option<OpenMove>,
}

#[derive(Debug, Serialize)]
struct OpenMove {
    person: Who,
    move_text: String,
}

#[derive(Debug, Serialize)]
struct Suggest {
    code: String,
    picture: &'static str,
}

/// Everybody, by code.
///
/// # Errors
/// What the vault gives.
pub(crate) fn people(call: &mut Call<'_>, _: Nothing) -> Result<People, Failure> {
    let all = call.vault()?.care_people().all()?;
    let mut people: Vec<Who> = all
        .iter()
        .map(|(id, person)| Who::of(id.0, person))
        .collect();
    people.sort_by_key(|who| who.code.to_lowercase());
    let free_code = (1..)
        .map(code)
        .find(|code| people.iter().all(|who| who.code != *code));
    let is_free = |picture: &&&str| people.iter().all(|who| who.picture != ***picture);
    let free_picture = PICTURES.iter().find(is_free);
    let draft = match MoveStanding::open(call) {
        Ok(standing) => Some(OpenMove {
            move_text: move_name(call.reader()?, standing.what.id()),
            person: standing.who(),
        }),
        Err(failure) if failure.code == ErrorCode::NoDraft => None,
        Err(failure) => return Err(failure),
    };
    Ok(People {
        draft,
        suggest: Suggest {
            code: free_code.unwrap_or_default(),
            picture: free_picture.copied().unwrap_or(PICTURES[0]),
        },
        people,
        pictures: pictures(call)?,
    })
}

/// Every picture, with its name.
fn pictures(call: &Call<'_>) -> Result<Vec<IdText>, Failure> {
    let words = call.reader()?.words;
    let named = PICTURES.iter().map(|id| IdText {
        id: (*id).to_owned(),
        text: words.text(&message_id("care-picture", id)),
    });
    Ok(named.collect())
}

/// A code out of nothing but a count: A1 to A9, then B1 to B9.
fn code(count: u32) -> String {
    let at = count.saturating_sub(1);
    let letter = char::from_u32(u32::from(b'A') + (at / 9) % 26).unwrap_or('A');
    format!("{letter}{}", at % 9 + 1)
}

/// A command that names a person.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct OnePerson {
    id: i64,
}

/// The reply of `person`.
#[derive(Debug, Serialize)]
pub(crate) struct PersonView {
    person: Who,
    moves: Vec<MoveRow>,
    facts: Vec<String>,
    pictures: Vec<IdText>,
    /// Whether there are care plans that can be handed over.
    gives: bool,
}

/// One person: the moves, and what is known.
///
/// # Errors
/// `not_found`; what the vault gives.
pub(crate) fn person(call: &mut Call<'_>, asked: OnePerson) -> Result<PersonView, Failure> {
    let found = find(call, asked.id, "id")?;
    let reader = call.reader()?;
    Ok(PersonView {
        person: Who::of(asked.id, &found),
        moves: moves(reader, &found, call.now.date_naive()),
        facts: person_lines(reader, &found),
        gives: can_leave(&found),
        pictures: pictures(call)?,
    })
}

/// The person with this id.
///
/// # Errors
/// `not_found` at this field; what the vault gives.
pub(crate) fn find(call: &Call<'_>, id: i64, field: &str) -> Result<CarePerson, Failure> {
    let found = call.vault()?.care_people().find(CarePersonId(id))?;
    found.ok_or_else(|| Failure::at(ErrorCode::NotFound, field))
}

/// The command `person_keep`.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct KeepPerson {
    #[serde(default)]
    id: Option<i64>,
    code: String,
    picture: String,
}

/// Keeps a new person, or another code and picture of one.
///
/// # Errors
/// `missing_field` for an empty code, `too_long`, `alias_character`, `contradiction` for a code or a picture with a code that
/// somebody has, `not_a_choice` for the picture, `out_of_range` when there are too many, `not_found`; what the
/// vault gives.
pub(crate) fn person_keep(call: &mut Call<'_>, asked: KeepPerson) -> Result<Kept, Failure> {
    let code = asked.code.split_whitespace().collect::<Vec<_>>().join(" ");
    if code.is_empty() {
        return Err(Failure::at(ErrorCode::MissingField, "code"));
    }
    if code.chars().count() > LONGEST_CODE {
        return Err(Failure::at(ErrorCode::TooLong, "code"));
    }
    // As for what devices are called: nothing hidden in it, so that it looks the same wherever it is read.
    let code = Alias::typed(&code)
        .map_err(|_| Failure::at(ErrorCode::AliasCharacter, "code"))?
        .as_str()
        .to_owned();
    if !PICTURES.contains(&asked.picture.as_str()) {
        return Err(Failure::at(ErrorCode::NotAChoice, "picture"));
    }
    let vault = call.vault()?;
    let all = vault.care_people().all()?;
    let taken = |(id, other): &(CarePersonId, CarePerson)| {
        Some(id.0) != asked.id && other.code.to_lowercase() == code.to_lowercase()
    };
    if all.iter().any(taken) {
        return Err(Failure::at(ErrorCode::Contradiction, "code"));
    }
    if let Some(id) = asked.id {
        let mut person = find(call, id, "id")?;
        person.code = code;
        person.picture = asked.picture;
        vault.care_people().save(CarePersonId(id), &person)?;
        return Ok(Kept { id });
    }
    if all.len() >= MOST_PEOPLE {
        return Err(Failure::at(ErrorCode::OutOfRange, "code"));
    }
    let id = vault.care_people().add(&CarePerson {
        code,
        picture: asked.picture,
        since: moment::to_record(call.now),
        legs: None,
        follows: None,
        arms_strong: None,
        mass_g: None,
        equipment: None,
        noted_at: None,
        moves: Vec::new(),
        plans: None,
    })?;
    Ok(Kept { id: id.0 })
}

/// Removes a person with all that is known of them, their code in the list of what left among it. Entries of the log
/// keep the code of their day.
///
/// # Errors
/// `not_found`; what the vault gives.
pub(crate) fn person_drop(call: &mut Call<'_>, asked: OnePerson) -> Result<Nothing, Failure> {
    let person = find(call, asked.id, "id")?;
    call.vault()?.together(|vault| {
        forget_code(vault, &person.code)?;
        vault.care_people().remove(CarePersonId(asked.id))
    })?;
    Ok(Nothing {})
}

/// Forgets what was noted of a person, so that it is asked anew. Care plans stay.
///
/// # Errors
/// `not_found`; what the vault gives.
pub(crate) fn person_forget(call: &mut Call<'_>, asked: OnePerson) -> Result<Nothing, Failure> {
    let mut person = find(call, asked.id, "id")?;
    person.legs = None;
    person.follows = None;
    person.arms_strong = None;
    person.mass_g = None;
    person.equipment = None;
    person.noted_at = None;
    for one in &mut person.moves {
        let plan = one.plan.take();
        *one = record::CareMove {
            plan,
            ..record::CareMove::of(one.what.clone())
        };
    }
    person.moves.retain(|one| one.plan.is_some());
    call.vault()?
        .care_people()
        .save(CarePersonId(asked.id), &person)
        .map_err(not_found_at_id)?;
    Ok(Nothing {})
}
