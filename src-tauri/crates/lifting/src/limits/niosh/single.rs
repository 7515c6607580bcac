//! One task: its points scored, and the governing figures.

use super::duration::{Duration, duration};
use super::frequency::{VerticalBand, fm};
use super::multipliers::{am, cm, dm, hm, vm};
use super::task::LiftingTask;
use super::units::{Length, Load, Metric, UnitSystem};
use crate::naming::named;
use crate::quantity::Degrees;

named!(
    /// A multiplier, in the order of the equation.
    Multiplier {
        /// Horizontal: reach.
        Horizontal = "hm",
        /// Vertical: height of the hands.
        Vertical = "vm",
        /// Distance moved up or down.
        Distance = "dm",
        /// Asymmetry: twist.
        Asymmetry = "am",
        /// Frequency: how often and how long.
        Frequency = "fm",
        /// Coupling: grip.
        Coupling = "cm",
    }
);

named!(
    /// Something about the task that the equation does not cover, besides what has a cut-off.
    NotCovered {
        /// More than 8 hours of lifting.
        OverEightHours = "over_eight_hours",
        /// The destination is above 175 cm or 70 in and is not scored.
        DestinationTooHigh = "destination_too_high",
    }
);

/// The equation at one point of the lift. Multipliers are unrounded, 0 to 1.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PointScore<S: UnitSystem = Metric> {
    /// The load constant.
    pub lc: Load<S>,
    /// Horizontal multiplier.
    pub hm: f64,
    /// Vertical multiplier.
    pub vm: f64,
    /// Distance multiplier.
    pub dm: f64,
    /// Asymmetry multiplier.
    pub am: f64,
    /// Frequency multiplier.
    pub fm: f64,
    /// Coupling multiplier.
    pub cm: f64,
    /// The recommended weight limit; 0 beyond a cut-off.
    pub rwl: Load<S>,
    /// Largest load ÷ RWL. `None` when the RWL is 0.
    pub lifting_index: Option<f64>,
}

/// The task as if it were done once: what strength it asks for, whatever the pace.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct FrequencyIndependent<S: UnitSystem = Metric> {
    /// Frequency-independent recommended weight limit: the RWL with FM = 1.
    pub firwl: Load<S>,
    /// Frequency-independent lifting index: largest load ÷ FIRWL. `None` when the FIRWL is 0.
    pub fili: Option<f64>,
}

/// The published limit for one task and healthy adults. Where two points are scored, the smaller limit governs.
#[derive(Debug, Clone, PartialEq)]
pub struct TaskLimit<S: UnitSystem = Metric> {
    /// Where the load is gripped.
    pub origin: PointScore<S>,
    /// Where it is put down; scored only when significant control is needed there.
    pub destination: Option<PointScore<S>>,
    /// The smaller of the points' frequency-independent figures.
    pub frequency_independent: FrequencyIndependent<S>,
    /// Single-task recommended weight limit: the smaller RWL of the points scored.
    pub strwl: Load<S>,
    /// Single-task lifting index: average load ÷ STRWL. `None` when the STRWL is 0.
    pub stli: Option<f64>,
    /// Multipliers that are 0 at a scored point, in the order of the equation.
    pub outside: Vec<Multiplier>,
    /// What the equation does not cover about this task.
    pub not_covered: Vec<NotCovered>,
}

impl<S: UnitSystem> TaskLimit<S> {
    /// The recommended weight limit that governs; 0 beyond a cut-off.
    #[must_use]
    pub const fn governing_rwl(&self) -> Load<S> {
        self.strwl
    }

    /// The lifting index that governs: largest load ÷ governing RWL. `None` beyond a cut-off.
    #[must_use]
    pub fn governing_index(&self) -> Option<f64> {
        self.points()
            .map(|point| point.lifting_index)
            .reduce(|a, b| Some(a?.max(b?)))
            .flatten()
    }

    /// The points scored, the origin first.
    pub fn points(&self) -> impl Iterator<Item = PointScore<S>> + '_ {
        std::iter::once(self.origin).chain(self.destination)
    }
}

/// One point of the lift before frequency: what the composite index needs too.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Point<S: UnitSystem> {
    hm: f64,
    vm: f64,
    dm: f64,
    am: f64,
    cm: f64,
    pub(super) band: VerticalBand,
    pub(super) firwl: Load<S>,
}

impl<S: UnitSystem> Point<S> {
    fn at(task: &LiftingTask<S>, h: Length<S>, v: Length<S>, a: Degrees) -> Self {
        let (hm, vm, dm) = (hm(h), vm(v), dm(task.v_origin, task.v_destination));
        let (am, cm) = (am(a), cm(task.coupling, v));
        let firwl = Load::of(S::LOAD_CONSTANT * hm * vm * dm * am * cm);
        Self {
            hm,
            vm,
            dm,
            am,
            cm,
            band: VerticalBand::of(v),
            firwl,
        }
    }

    fn scored(&self, task: &LiftingTask<S>, duration: Duration) -> PointScore<S> {
        let fm = fm(task.lifts_per_min, duration, self.band);
        let rwl = Load::of(self.firwl.value() * fm);
        PointScore {
            lc: Load::of(S::LOAD_CONSTANT),
            hm: self.hm,
            vm: self.vm,
            dm: self.dm,
            am: self.am,
            fm,
            cm: self.cm,
            rwl,
            lifting_index: index(task.load_max, rwl),
        }
    }
}

/// The points to score: the origin, and the destination when significant control is needed there.
pub(super) fn points<S: UnitSystem>(task: &LiftingTask<S>) -> (Point<S>, Option<Point<S>>) {
    let origin = Point::at(task, task.h, task.v_origin, task.a_origin);
    let destination = task.control_at_destination.then(|| {
        Point::at(
            task,
            task.reach_at_destination(),
            task.v_destination,
            task.a_destination,
        )
    });
    (origin, destination)
}

/// Load ÷ limit; undefined when there is no limit to divide by.
pub(super) fn index<S: UnitSystem>(load: Load<S>, limit: Load<S>) -> Option<f64> {
    (limit.value() > 0.0).then(|| load.value() / limit.value())
}

/// The published limit for one task.
#[must_use]
pub fn task_limit<S: UnitSystem>(task: &LiftingTask<S>) -> TaskLimit<S> {
    let duration = duration(task.hours, task.recovery_hours);
    let (at_origin, at_destination) = points(task);
    let origin = at_origin.scored(task, duration);
    let destination = at_destination.map(|point| point.scored(task, duration));
    let strwl = destination.map_or(origin.rwl, |point| point.rwl.at_most(origin.rwl));
    let firwl = at_destination.map_or(at_origin.firwl, |point| {
        point.firwl.at_most(at_origin.firwl)
    });
    let unscored_too_high = !task.control_at_destination && task.v_destination.value() > S::V_MAX;
    let not_covered = [
        (
            duration == Duration::OverEightHours,
            NotCovered::OverEightHours,
        ),
        (unscored_too_high, NotCovered::DestinationTooHigh),
    ];
    TaskLimit {
        outside: outside(&origin, destination.as_ref()),
        origin,
        destination,
        frequency_independent: FrequencyIndependent {
            firwl,
            fili: index(task.load_max, firwl),
        },
        strwl,
        stli: index(task.load_avg, strwl),
        not_covered: not_covered
            .into_iter()
            .filter_map(|(holds, what)| holds.then_some(what))
            .collect(),
    }
}

/// Multipliers that are 0 at a scored point.
fn outside<S: UnitSystem>(
    origin: &PointScore<S>,
    destination: Option<&PointScore<S>>,
) -> Vec<Multiplier> {
    let beyond = |multiplier: Multiplier| {
        let value = |point: &PointScore<S>| match multiplier {
            Multiplier::Horizontal => point.hm,
            Multiplier::Vertical => point.vm,
            Multiplier::Distance => point.dm,
            Multiplier::Asymmetry => point.am,
            Multiplier::Frequency => point.fm,
            Multiplier::Coupling => point.cm,
        };
        value(origin) <= 0.0 || destination.is_some_and(|point| value(point) <= 0.0)
    };
    Multiplier::ALL
        .iter()
        .copied()
        .filter(|multiplier| beyond(*multiplier))
        .collect()
}
