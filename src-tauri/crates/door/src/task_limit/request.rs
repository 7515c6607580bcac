//! Tasks of the equation as they stand on the wire, one type for each unit system.

use crate::choice::Choice;
use crate::error::{DoorError, ErrorCode};
use lifting::limits::niosh::{Hours, Length, LiftingTask, Load, Metric, PerMinute, Units, Us};
use lifting::quantity::{Degrees, OutOfRange};
use lifting::task::Coupling;
use serde::Deserialize;

/// Only the unit system.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct UnitsOnly {
    pub(super) units: Option<Choice<Units>>,
}

macro_rules! command {
    (
        $(#[$doc:meta])* $command:ident, $task:ident, $system:ty,
        $h:ident, $v_origin:ident, $v_destination:ident, $h_destination:ident, $load_avg:ident, $load_max:ident
    ) => {
        $(#[$doc])*
        #[derive(Debug, Deserialize)]
        #[serde(deny_unknown_fields)]
        pub(super) struct $command {
            #[serde(rename = "units")]
            _units: Option<Choice<Units>>,
            tasks: Vec<$task>,
        }

        impl $command {
            /// The tasks, every number checked.
            pub(super) fn checked(self) -> Result<Vec<LiftingTask<$system>>, DoorError> {
                self.tasks.into_iter().enumerate().map(|(place, task)| task.checked(place)).collect()
            }
        }

        #[derive(Debug, Deserialize)]
        #[serde(deny_unknown_fields)]
        pub(super) struct $task {
            $h: f64,
            $v_origin: f64,
            $v_destination: f64,
            a_origin_deg: f64,
            a_destination_deg: Option<f64>,
            $h_destination: Option<f64>,
            control_at_destination: bool,
            lifts_per_min: f64,
            hours: f64,
            recovery_hours: Option<f64>,
            coupling: Choice<Coupling>,
            $load_avg: f64,
            $load_max: f64,
        }

        impl $task {
            /// The angle at the destination may stay unknown where the destination is not scored.
            fn checked(self, place: usize) -> Result<LiftingTask<$system>, DoorError> {
                let at = At(place);
                if self.control_at_destination && self.a_destination_deg.is_none() {
                    return Err(at.fault(ErrorCode::MissingField, "a_destination_deg"));
                }
                let task = LiftingTask {
                    h: at.number(stringify!($h), self.$h, Length::new)?,
                    v_origin: at.number(stringify!($v_origin), self.$v_origin, Length::new)?,
                    v_destination: at.number(stringify!($v_destination), self.$v_destination, Length::new)?,
                    a_origin: at.number("a_origin_deg", self.a_origin_deg, Degrees::new)?,
                    a_destination: at.number(
                        "a_destination_deg",
                        self.a_destination_deg.unwrap_or(Degrees::MIN),
                        Degrees::new,
                    )?,
                    h_destination: at.maybe(stringify!($h_destination), self.$h_destination, Length::new)?,
                    control_at_destination: self.control_at_destination,
                    lifts_per_min: at.number("lifts_per_min", self.lifts_per_min, PerMinute::new)?,
                    hours: at.number("hours", self.hours, Hours::new)?,
                    recovery_hours: at.maybe("recovery_hours", self.recovery_hours, Hours::new)?,
                    coupling: self.coupling.0,
                    load_avg: at.number(stringify!($load_avg), self.$load_avg, Load::new)?,
                    load_max: at.number(stringify!($load_max), self.$load_max, Load::new)?,
                };
                if task.load_avg.value() > task.load_max.value() {
                    return Err(at.fault(ErrorCode::Contradiction, stringify!($load_avg)));
                }
                Ok(task)
            }
        }
    };
}

command!(
    /// The command in centimetres and kilograms.
    MetricCommand, MetricTask, Metric,
    h_cm, v_origin_cm, v_destination_cm, h_destination_cm, load_avg_kg, load_max_kg
);

command!(
    /// The command in inches and pounds.
    UsCommand, UsTask, Us,
    h_in, v_origin_in, v_destination_in, h_destination_in, load_avg_lb, load_max_lb
);

/// The place of a task in the list, for paths.
#[derive(Clone, Copy)]
struct At(usize);

impl At {
    fn fault(self, code: ErrorCode, key: &str) -> DoorError {
        DoorError::at(code, format!("tasks[{}].{key}", self.0))
    }

    fn number<T>(
        self,
        key: &str,
        number: f64,
        make: fn(f64) -> Result<T, OutOfRange>,
    ) -> Result<T, DoorError> {
        make(number).map_err(|_| self.fault(ErrorCode::OutOfRange, key))
    }

    fn maybe<T>(
        self,
        key: &str,
        number: Option<f64>,
        make: fn(f64) -> Result<T, OutOfRange>,
    ) -> Result<Option<T>, DoorError> {
        number
            .map(|number| self.number(key, number, make))
            .transpose()
    }
}
