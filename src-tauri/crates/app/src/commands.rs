//! The table of commands: a name, whether it may be used while locked, and the use case behind it.

use crate::call::Call;
use crate::failure::Failure;
use crate::use_cases::departure::{list as left_list, tell};
use crate::use_cases::handoff::{accepting, card, pair, people, question, scan, showing, summary};
use crate::use_cases::patients;
use crate::use_cases::plan::{following, making, practice, preview};
use crate::use_cases::{
    care, erase, first_start, hello, history, home, keep, morning, passphrase, report, saved,
    settings, signs, unlock, walk,
};
use serde::Serialize;
use serde::de::DeserializeOwned;
use serde_json::{Map, Value};

/// A command's body, without its name.
pub(crate) type Body = Map<String, Value>;

/// One command.
pub(crate) struct Command {
    /// Its name, the value of `do`.
    pub(crate) name: &'static str,
    /// Whether it may be used while the vault is locked.
    pub(crate) while_locked: bool,
    /// Whether it counts as somebody using the app: what a screen asks by itself does not.
    pub(crate) counts_as_use: bool,
    /// The use case: body in, reply line out.
    pub(crate) run: fn(&mut Call<'_>, Body) -> Result<String, Failure>,
}

/// Reads the body into the use case's own type, runs it, and writes its reply.
fn typed<T: DeserializeOwned, R: Serialize>(
    call: &mut Call<'_>,
    body: Body,
    use_case: fn(&mut Call<'_>, T) -> Result<R, Failure>,
) -> Result<String, Failure> {
    let input = door::read(body)?;
    let reply = use_case(call, input)?;
    Ok(door::ok_line(&reply))
}

macro_rules! commands {
    ($($name:literal, $when:ident, $use_case:path;)+) => {
        &[$(Command {
            name: $name,
            while_locked: commands!(@ $when),
            counts_as_use: commands!(@use $when),
            run: |call, body| typed(call, body, $use_case),
        }),+]
    };
    (@ always) => { true };
    (@ unlocked) => { false };
    (@ quietly) => { false };
    (@use unlocked) => { true };
    (@use $other:ident) => { false };
}

/// Every command of this crate. Those of the door (`advise`, `task_limit`, `pose`) come on top.
pub(crate) const COMMANDS: &[Command] = commands![
    "hello", always, hello::hello;
    "words", always, hello::words;
    "language_set", always, hello::language_set;
    "first_start", always, first_start::first_start;
    "unlock", always, unlock::unlock;
    "lock", always, unlock::lock;
    "signs", always, signs::signs;
    "home", unlocked, home::home;
    "walk_start", unlocked, walk::start;
    "walk_page", unlocked, walk::page;
    "walk_answer", unlocked, walk::answer;
    "walk_drop", unlocked, walk::drop_it;
    "walk_confirm", unlocked, walk::confirm;
    "figure", unlocked, walk::figure::figure;
    "about_start", unlocked, walk::about_start;
    "people", unlocked, care::people::people;
    "person", unlocked, care::people::person;
    "person_keep", unlocked, care::people::person_keep;
    "person_drop", unlocked, care::people::person_drop;
    "person_forget", unlocked, care::people::person_forget;
    "care_plan", unlocked, care::plan::care_plan;
    "care_plan_keep", unlocked, care::plan::care_plan_keep;
    "care_plan_drop", unlocked, care::plan::care_plan_drop;
    "trained", unlocked, care::trained::trained;
    "trained_set", unlocked, care::trained::trained_set;
    "move_start", unlocked, care::walk::move_start;
    "move_page", unlocked, care::walk::move_page;
    "move_answer", unlocked, care::walk::move_answer;
    "move_drop", unlocked, care::walk::move_drop;
    "own_start", unlocked, care::own::own_start;
    "own_quick", unlocked, care::own::own_quick;
    "move_report", unlocked, care::walk::move_report;
    "move_refuse", unlocked, care::walk::move_refuse;
    "move_keep", unlocked, care::log::move_keep;
    "move_entry", unlocked, care::log::move_entry;
    "move_more", unlocked, care::log::move_more;
    "move_undo", unlocked, care::log::move_undo;
    "shift", unlocked, care::shift::shift;
    "shift_hand_over", unlocked, care::shift::shift_hand_over;
    "shift_erase", unlocked, care::shift::shift_erase;
    "lift_keep", unlocked, keep::lift_keep;
    "lift_pain", unlocked, keep::lift_pain;
    "lift_undo", unlocked, keep::lift_undo;
    "morning", unlocked, morning::morning;
    "history", unlocked, history::history;
    "history_entry", unlocked, history::history_entry;
    "departures", unlocked, left_list::departures;
    "departures_clear", unlocked, left_list::departures_clear;
    "departure_note", unlocked, tell::departure_note;
    "look_back", unlocked, report::look_back;
    "report_summary", unlocked, report::report_summary;
    "report_make", unlocked, report::report_make;
    "saved_keep", unlocked, saved::saved_keep;
    "saved_drop", unlocked, saved::saved_drop;
    "settings", unlocked, settings::settings;
    "settings_set", unlocked, settings::settings_set;
    "passphrase_change", unlocked, passphrase::passphrase_change;
    "erase_everything", unlocked, erase::erase_everything;
    "sign_clear", unlocked, signs::sign_clear;
    "card", unlocked, card::card;
    "card_set", unlocked, card::card_set;
    "pairings", unlocked, people::pairings;
    "pairing_rename", unlocked, people::pairing_rename;
    "pairing_end", unlocked, people::pairing_end;
    "pair_start", unlocked, pair::pair_start;
    "pair_compare", unlocked, pair::pair_compare;
    "pair_agree", unlocked, pair::pair_agree;
    "scan_start", unlocked, scan::scan_start;
    "scan_stop", unlocked, scan::scan_stop;
    "parcel_code", unlocked, question::parcel_code;
    "parcel_question", unlocked, question::parcel_question;
    "parcel_accept", unlocked, accepting::parcel_accept;
    "parcel_decline", unlocked, accepting::parcel_decline;
    "show_summary", unlocked, summary::show_summary;
    "show", unlocked, showing::show;
    "show_frames", quietly, showing::show_frames;
    "show_code", unlocked, showing::show_code;
    "show_file", unlocked, showing::show_file;
    "show_end", unlocked, showing::show_end;
    "patients", unlocked, patients::list::patients;
    "patient", unlocked, patients::page::patient;
    "patient_new", unlocked, patients::keep::patient_new;
    "patient_rename", unlocked, patients::keep::patient_rename;
    "patient_remove", unlocked, patients::keep::patient_remove;
    "patient_note", unlocked, patients::keep::patient_note;
    "patient_note_remove", unlocked, patients::keep::patient_note_remove;
    "plan_patterns", unlocked, making::plan_patterns;
    "plan_new", unlocked, making::plan_new;
    "plan_edit", unlocked, making::plan_edit;
    "plan_set", unlocked, making::plan_set;
    "plan_preview", unlocked, preview::plan_preview;
    "plan_list", unlocked, making::plan_list;
    "plan_now", unlocked, following::plan_now;
    "plan_stop", unlocked, following::plan_stop;
    "practice_keep", unlocked, practice::keep::practice_keep;
    "practice_undo", unlocked, practice::keep::practice_undo;
    "practice_list", unlocked, practice::list::practice_list;
    "step_answer", unlocked, practice::step::step_answer;
    "flare_start", unlocked, practice::flare::flare_start;
];

/// The command with this name.
#[must_use]
pub(crate) fn find(name: &str) -> Option<&'static Command> {
    COMMANDS.iter().find(|command| command.name == name)
}

/// The names of all commands, those of the door among them: what `docs/commands.md` has to document.
pub fn command_names() -> impl Iterator<Item = &'static str> {
    COMMANDS
        .iter()
        .map(|command| command.name)
        .chain(door::COMMANDS)
}
