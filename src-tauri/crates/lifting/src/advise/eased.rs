//! How much a change eases the back by the posture model: said with the change, and used to put the more helpful of
//! two changes first that are equally little trouble. Which changes there are is decided without it.

use super::advice::{Advice, Outcome};
use super::change::{BackShare, Change, ChangeStep};
use super::facts::Facts;
use super::request::Request;
use crate::loads::summary;
use crate::quantity::NewtonMetres;
use crate::task::{LoadMass, Task};
use crate::way::Way;

/// Shares nearer than this count as equal: the model is no finer. House rule.
const SHARE_STEP: f64 = 0.05;

/// Says it of every change that moves or lightens a load of known mass, where something is to be changed first.
pub(super) fn tell(request: &Request, advice: &mut Advice) {
    if !matches!(request.task.mass, LoadMass::Known(_)) {
        return; // how much lighter it would be is not known either
    }
    let Outcome::LiftWithChange { ways, changes } = &mut advice.outcome else {
        return;
    };
    // The first way of which there is a posture: arms that reach far leave some without.
    let modelled = |way: Way| Some((way, moment(request, &request.task, way)?));
    let Some((first, now)) = ways.iter().find_map(modelled) else {
        return;
    };
    for change in changes
        .iter_mut()
        .filter(|change| seen_by_the_model(change))
    {
        // The same way where it still serves: what differs is then the change alone.
        let same = change.ways.iter().find(|way| *way == first);
        let way = same.unwrap_or(change.ways.first);
        let after = moment(request, &change.apply(&request.task), way);
        change.back = after.and_then(|after| BackShare::left(after, now));
    }
    most_help_first(changes);
}

fn moment(request: &Request, task: &Task, way: Way) -> Option<NewtonMetres> {
    let loads = summary::of(&Facts::of(request, task), &[way]);
    loads.first().map(|loads| loads.moment_l5s1)
}

/// A planar, slow body sees where a load is and how heavy, not how it is held, how often or how far it goes.
fn seen_by_the_model(change: &Change) -> bool {
    change.steps.iter().any(|step| {
        moves_it_once(step)
            || matches!(
                step,
                ChangeStep::Split { .. }
                    | ChangeStep::Lighten { .. }
                    | ChangeStep::SecondPerson { .. }
                    | ChangeStep::ThreePeople { .. }
            )
    })
}

/// Changes that move the load, or its place, once before the lift: equally little trouble. House rule.
const fn moves_it_once(step: &ChangeStep) -> bool {
    matches!(
        step,
        ChangeStep::BringCloser { .. }
            | ChangeStep::RaiseStart { .. }
            | ChangeStep::RaiseEnd { .. }
            | ChangeStep::LowerEnd { .. }
    )
}

/// Among the changes of equally little trouble the one that eases the back most comes first, in the places that
/// these changes have; one that the model cannot see stays behind those it can.
fn most_help_first(changes: &mut [Change]) {
    let little = |change: &Change| matches!(change.steps.as_slice(), [step] if moves_it_once(step));
    let mut ordered: Vec<Change> = changes.iter().filter(|one| little(one)).cloned().collect();
    ordered.sort_by_key(|change| {
        change
            .back
            .map_or(i64::MAX, |back| (back.value() / SHARE_STEP).round() as i64)
    });
    let places = changes.iter_mut().filter(|one| little(one));
    for (place, change) in places.zip(ordered) {
        *place = change;
    }
}
