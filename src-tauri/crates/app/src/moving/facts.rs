//! What is known of a person, as answers, and answers as what is kept.

use super::flow::{Given, MoveWalk};
use super::ids::MoveQuestion as Q;
use super::options::{BANDS, SECOND, SHARES, THIRD};
use crate::walk::answer::Answer;
use lifting::transfer::client::Move;
use lifting::transfer::moves::{equipment_of, takings};
use record::{Ability, CareMove, CarePerson, Follows, Help, Hold, Limb, Moment, WeightBearing};

/// What was noted of this move, if anything was.
#[must_use]
pub(crate) fn noted(person: &CarePerson, what: Move) -> Option<&CareMove> {
    person.moves.iter().find(|one| one.what == what.id())
}

/// What was noted before, as answers to this move's questions. Whether they come up is the walk's to say.
#[must_use]
pub(crate) fn kept(person: &CarePerson, what: Move) -> Given {
    let none = CareMove::of(what.id().to_owned());
    let this = noted(person, what).unwrap_or(&none);
    let yes_no = |said: bool| if said { "yes" } else { "no" };
    let choices: [(Q, Option<&str>); 9] = [
        (Q::Legs, person.legs.map(WeightBearing::id)),
        (Q::Follows, person.follows.map(Follows::id)),
        (Q::Arms, person.arms_strong.map(yes_no)),
        (Q::Mass, person.mass_g.and_then(band)),
        (Q::Able, this.able.map(Ability::id)),
        (Q::Help, help(this)),
        (Q::Limb, this.limb.map(Limb::id)),
        (Q::Hold, this.hold.map(Hold::id)),
        (Q::Reclines, this.chair_reclines.map(yes_no)),
    ];
    let mut kept: Given = choices
        .into_iter()
        .filter_map(|(question, id)| Some((question, Answer::choice(id?))))
        .filter(|(question, _)| may_need(what, *question))
        .collect();
    if let Some(here) = here(person, this, what) {
        kept.insert(Q::Here, here);
    }
    kept
}

/// Whether the rows of a move ever look at this answer.
fn may_need(what: Move, question: Q) -> bool {
    // Every way through the questions of the move: with all answers open, and with each first answer.
    let starts = ["fully", "partly", "not", "full", "part", "none"];
    let none = Given::new();
    starts.iter().any(|start| {
        let mut given: Given = [
            (Q::Legs, *start),
            (Q::Able, *start),
            (Q::Follows, "yes"),
            (Q::Help, "quarter"),
            (Q::Independent, "no"),
        ]
        .into_iter()
        .map(|(question, id)| (question, Answer::choice(id)))
        .collect();
        given.remove(&question);
        let walk = MoveWalk {
            what,
            plan: None,
            given: &given,
            kept: &none,
        };
        walk.asks(question)
    })
}

fn band(grams: u32) -> Option<&'static str> {
    BANDS
        .iter()
        .find(|(_, upper)| grams <= *upper)
        .map(|(id, _)| *id)
}

fn help(noted: &CareMove) -> Option<&'static str> {
    match (noted.help?, noted.share_permille) {
        (Help::SomeLift, Some(share)) => SHARES
            .iter()
            .find(|(_, permille)| share <= *permille)
            .or(SHARES.last())
            .map(|(id, _)| *id),
        (Help::SomeLift, None) => None,
        (help, _) => Some(help.id()),
    }
}

/// Who and what is there: as noted; with a care plan, also what its ways take.
fn here(person: &CarePerson, noted: &CareMove, what: Move) -> Option<Answer> {
    let plan = noted.plan.as_ref();
    if plan.is_none() && (person.equipment.is_none() || noted.workers.is_none()) {
        return None;
    }
    let offered = equipment_of(what);
    let planned = plan.into_iter().flat_map(|plan| plan.equipment.iter());
    let there = person.equipment.iter().flatten().chain(planned);
    let mut ticked: Vec<&str> = there
        .map(String::as_str)
        .filter(|id| offered.iter().any(|piece| piece.id() == *id))
        .collect();
    let workers = plan
        .and_then(|plan| plan.workers)
        .or(noted.workers)
        .unwrap_or(1);
    if workers >= 2 {
        ticked.push(SECOND);
    }
    if workers >= 3 {
        ticked.push(THIRD);
    }
    Some(Answer::choices(ticked))
}

/// Workers there by an answer: this one, and those who are ticked.
#[must_use]
pub(crate) fn workers(here: &Answer) -> u32 {
    match here {
        Answer::Choices(ticked) if ticked.contains(THIRD) => 3,
        Answer::Choices(ticked) if ticked.contains(SECOND) => 2,
        _ => 1,
    }
}

/// Notes what was answered about the person, for the next time. What was not sure is asked again. What is
/// missing today is not taken for what is always there.
pub(crate) fn note(person: &mut CarePerson, walk: &MoveWalk<'_>, now: Moment) {
    let chosen = |question: Q| match walk.given.get(&question) {
        Some(Answer::Choice(id)) => Some(id.as_str()),
        _ => None,
    };
    let mut told = false;
    macro_rules! take {
        ($place:expr, $value:expr) => {
            if let Some(value) = $value {
                $place = Some(value);
                told = true;
            }
        };
    }
    take!(
        person.legs,
        chosen(Q::Legs).and_then(WeightBearing::from_id)
    );
    take!(
        person.follows,
        chosen(Q::Follows).and_then(Follows::from_id)
    );
    take!(person.arms_strong, chosen(Q::Arms).map(|id| id == "yes"));
    take!(person.mass_g, chosen(Q::Mass).and_then(grams));
    let here = walk
        .given
        .get(&Q::Here)
        .filter(|_| !walk.chose(Q::Same, "missing"));
    if let Some(Answer::Choices(ticked)) = here {
        let offered = equipment_of(walk.what);
        let elsewhere = person.equipment.iter().flatten();
        let mut there: Vec<String> = elsewhere
            .filter(|id| offered.iter().all(|piece| piece.id() != *id))
            .cloned()
            .collect();
        there.extend(
            ticked
                .iter()
                .filter(|id| offered.iter().any(|piece| piece.id() == *id))
                .cloned(),
        );
        person.equipment = Some(there);
        told = true;
    }
    if told {
        person.noted_at = Some(now);
    }
    note_move(person, walk, now, here);
}

fn note_move(person: &mut CarePerson, walk: &MoveWalk<'_>, now: Moment, here: Option<&Answer>) {
    let chosen = |question: Q| match walk.given.get(&question) {
        Some(Answer::Choice(id)) => Some(id.as_str()),
        _ => None,
    };
    let this = of_move(person, walk.what);
    let mut told = false;
    macro_rules! take {
        ($place:expr, $value:expr) => {
            if let Some(value) = $value {
                $place = Some(value);
                told = true;
            }
        };
    }
    take!(this.able, chosen(Q::Able).and_then(Ability::from_id));
    take!(this.limb, chosen(Q::Limb).and_then(Limb::from_id));
    take!(this.hold, chosen(Q::Hold).and_then(Hold::from_id));
    take!(
        this.chair_reclines,
        chosen(Q::Reclines).map(|id| id == "yes")
    );
    take!(this.workers, here.map(workers));
    if let Some(id) = chosen(Q::Help) {
        let share = SHARES.iter().find(|(name, _)| *name == id);
        this.share_permille = share.map(|(_, permille)| *permille);
        this.help = share.map_or_else(|| Help::from_id(id), |_| Some(Help::SomeLift));
        told = true;
    }
    if told {
        this.noted_at = Some(now);
    }
    person
        .moves
        .retain(|one| *one != CareMove::of(one.what.clone()));
}

/// The entry of a move; made if there is none.
pub(crate) fn of_move(person: &mut CarePerson, what: Move) -> &mut CareMove {
    let at = person.moves.iter().position(|one| one.what == what.id());
    let at = at.unwrap_or_else(|| {
        person.moves.push(CareMove::of(what.id().to_owned()));
        person.moves.len() - 1
    });
    #[allow(clippy::indexing_slicing, reason = "found or pushed just above")]
    &mut person.moves[at]
}

/// The upper end of a band, in grams.
#[must_use]
pub(crate) fn grams(band: &str) -> Option<u32> {
    BANDS
        .iter()
        .find(|(id, _)| *id == band)
        .map(|(_, grams)| *grams)
}

/// Equipment that these ways take for a move, each once.
#[must_use]
pub(crate) fn equipment_for(what: Move, ways: &[String]) -> Vec<String> {
    let mut all: Vec<String> = Vec::new();
    for taking in takings(what) {
        if ways.iter().any(|way| way == taking.way.id()) {
            for piece in taking.equipment {
                if !all.iter().any(|id| id == piece.id()) {
                    all.push(piece.id().to_owned());
                }
            }
        }
    }
    all
}
