//! The revised NIOSH lifting equation, whole: single task, twist, significant control at the destination,
//! how often and how long with recovery, and the composite index of several tasks.
//!
//! `RWL = LC × HM × VM × DM × AM × FM × CM` and `LI = load ÷ RWL` (Waters, Putz-Anderson & Garg 1994,
//! DHHS (NIOSH) 94-110). It holds for healthy adults who lift with two hands, standing. It does not cover
//! one hand, kneeling or sitting, cramped rooms, loads that shift, people, carrying, pushing or pulling.
//! `docs/method/niosh.md` gives the equations, ranges and our choices.
//!
//! Every type here is tagged with its [`UnitSystem`]: metric and US figures are two printed sets of constants,
//! never conversions of each other, and cannot be mixed.

mod composite;
mod duration;
mod frequency;
mod multipliers;
mod single;
mod task;
mod units;

pub use super::pace::{Hours, PerMinute};
pub use composite::{CompositeIndex, Share, composite};
pub use duration::{Duration, duration};
pub use frequency::{VerticalBand, fm};
pub use multipliers::{am, cm, dm, hm, vm};
pub use single::{FrequencyIndependent, Multiplier, NotCovered, PointScore, TaskLimit, task_limit};
pub use task::{LiftingTask, estimated_reach};
pub use units::{Length, Load, Metric, UnitSystem, Units, Us};
