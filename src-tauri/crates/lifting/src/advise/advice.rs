//! What the judgement answers: one outcome, with its reasons, cautions and other ways to get it done.

use super::change::Change;
use crate::limits::niosh::TaskLimit;
use crate::loads::summary::WayLoads;
use crate::naming::named;
use crate::quantity::Kilograms;
use crate::reason::{Reason, ReasonId};
use crate::way::Way;

named!(
    /// Something to heed, shown with the advice. Most serious first.
    Caution {
        /// Get emergency help now.
        EmergencyNow = "emergency_now",
        /// Get medical advice today.
        SameDayAdvice = "same_day_advice",
        /// On the floor: look for injury first.
        CheckInjuryFirst = "check_injury_first",
        /// Never lift a person from the floor by hand.
        NoManualFloorLift = "no_manual_floor_lift",
        /// The person is not as the care plan says: report it.
        ClientChangedReport = "client_changed_report",
        /// Over the plan's ceiling.
        OverPlanCeiling = "over_plan_ceiling",
        /// Pain is over the plan's ceiling.
        OverPainCeiling = "over_pain_ceiling",
        /// The surgeon's limit comes first.
        SurgeonLimitFirst = "surgeon_limit_first",
        /// A child lifts with an adult and a clinician's plan only.
        AdultAndClinician = "adult_and_clinician",
        /// The plan is past its review date.
        PlanExpired = "plan_expired",
        /// Pregnant: nothing from low down, nothing overhead.
        PregnancyNoFloorOverhead = "pregnancy_no_floor_overhead",
        /// The mass is not known: test it first.
        WeightUnknownTest = "weight_unknown_test",
        /// More than 35 lb (15.9 kg) of a person for one worker: equipment.
        Over35lbEquipment = "over_35lb_equipment",
        /// It takes two workers or more.
        TwoWorkers = "two_workers",
        /// The worker's own body limits it today.
        WorkerOwnBody = "worker_own_body",
        /// Toward the person's stronger side.
        StrongerSide = "stronger_side",
        /// An aid or another person first.
        AidOrHelpFirst = "aid_or_help_first",
        /// No rounding of the back under load.
        NoLoadedRounding = "no_loaded_rounding",
        /// Not on one leg.
        NoSingleLeg = "no_single_leg",
        /// A hand on something firm.
        HoldSupport = "hold_support",
        /// The load close to the body.
        KeepClose = "keep_close",
        /// Turn with the feet.
        NoTwist = "no_twist",
        /// Rest, and change the way.
        PaceAndMix = "pace_and_mix",
        /// Two people manage about two thirds of the sum of their limits.
        TeamTwoThirds = "team_two_thirds",
        /// Tell the office.
        ReportToOffice = "report_to_office",
    }
);

named!(
    /// Another way to get it done, in the order in which they are offered.
    Alternative {
        /// Keep to the surgeon's written limit.
        FollowSurgeonLimit = "follow_surgeon_limit",
        /// Call the clinician.
        CallClinician = "call_clinician",
        /// Leave it, or do it later.
        LeaveIt = "leave_it",
        /// Ask somebody.
        AskPerson = "ask_person",
        /// In parts.
        SplitLoad = "split_load",
        /// Have it raised first.
        RaiseStart = "raise_start",
        /// Slide, roll, tip, or walk it corner to corner.
        SlideOrRoll = "slide_or_roll",
        /// A trolley, sack truck or basket on wheels.
        Trolley = "trolley",
        /// A grabber.
        Reacher = "reacher",
        /// A long-handled tool, or sit to do it.
        LongToolOrSit = "long_tool_or_sit",
        /// Spread over the day or several days.
        SpreadOverDays = "spread_over_days",
        /// Two together.
        TwoPerson = "two_person",
        /// Wait for help.
        WaitForHelp = "wait_for_help",
        /// Equipment.
        UseEquipment = "use_equipment",
    }
);

named!(
    /// How soon somebody should be told or seen.
    Urgency {
        /// Nobody needs to be told.
        None = "none",
        /// Tell the clinician at the next occasion.
        Routine = "routine",
        /// Medical advice today.
        SameDay = "same_day",
        /// Emergency help now.
        Emergency = "emergency",
    }
);

/// Ways in order of rank: there is always a first.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Ranked {
    /// The way offered first.
    pub first: Way,
    /// Others that serve, best first.
    pub others: Vec<Way>,
}

impl Ranked {
    /// From a list, best first. `None` when it is empty.
    #[must_use]
    pub fn from_list(list: &[Way]) -> Option<Self> {
        let (first, others) = list.split_first()?;
        Some(Self {
            first: *first,
            others: others.to_vec(),
        })
    }

    /// All of them, best first.
    pub fn iter(&self) -> impl Iterator<Item = Way> + '_ {
        std::iter::once(self.first).chain(self.others.iter().copied())
    }
}

/// How soon care is needed.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum HowSoon {
    /// Today.
    SameDay,
    /// Now.
    Emergency,
}

/// The one outcome of an advice.
#[derive(Debug, Clone, PartialEq)]
pub enum Outcome {
    /// If you choose to lift, this way. Never a clearance.
    Lift {
        /// Ways left, ranked.
        ways: Ranked,
    },
    /// Change something first.
    LiftWithChange {
        /// Ways for the task once changed, ranked.
        ways: Ranked,
        /// Smallest first; each is enough alone. Never empty.
        changes: Vec<Change>,
    },
    /// Not as it stands. Changes, where there are any, are among the other ways to get it done.
    DoNotLift {
        /// Smallest first; each is enough alone. May be empty.
        changes: Vec<Change>,
        /// Whether the clinician should hear of it.
        tell_clinician: bool,
    },
    /// A warning sign: no word on how to lift around it.
    SeekCare {
        /// How soon.
        how_soon: HowSoon,
    },
    /// We cannot advise; others can.
    Refuse,
}

impl Outcome {
    /// The wire id.
    #[must_use]
    pub const fn id(&self) -> &'static str {
        match self {
            Self::Lift { .. } => "lift",
            Self::LiftWithChange { .. } => "lift_with_change",
            Self::DoNotLift { .. } => "do_not_lift",
            Self::SeekCare { .. } => "seek_care",
            Self::Refuse => "refuse",
        }
    }

    /// How soon somebody should be told or seen.
    #[must_use]
    pub const fn urgency(&self) -> Urgency {
        match self {
            Self::SeekCare {
                how_soon: HowSoon::Emergency,
            } => Urgency::Emergency,
            Self::SeekCare {
                how_soon: HowSoon::SameDay,
            } => Urgency::SameDay,
            Self::Refuse
            | Self::DoNotLift {
                tell_clinician: true,
                ..
            } => Urgency::Routine,
            Self::Lift { .. } | Self::LiftWithChange { .. } | Self::DoNotLift { .. } => {
                Urgency::None
            }
        }
    }

    /// Ways offered, best first; empty for every outcome that offers none.
    #[must_use]
    pub fn ways(&self) -> Vec<Way> {
        match self {
            Self::Lift { ways } | Self::LiftWithChange { ways, .. } => ways.iter().collect(),
            Self::DoNotLift { .. } | Self::SeekCare { .. } | Self::Refuse => Vec::new(),
        }
    }

    /// Changes found, smallest first.
    #[must_use]
    pub fn changes(&self) -> &[Change] {
        match self {
            Self::LiftWithChange { changes, .. } | Self::DoNotLift { changes, .. } => changes,
            Self::Lift { .. } | Self::SeekCare { .. } | Self::Refuse => &[],
        }
    }

    /// How permissive it is: 3 lift, 2 with a change, 1 do not lift, 0 no advice on lifting.
    #[must_use]
    pub const fn permissiveness(&self) -> u8 {
        match self {
            Self::Lift { .. } => 3,
            Self::LiftWithChange { .. } => 2,
            Self::DoNotLift { .. } => 1,
            Self::SeekCare { .. } | Self::Refuse => 0,
        }
    }
}

/// A way that may not be used for this body, load and day.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct RuledOut {
    /// The way.
    pub way: Way,
    /// Why; never empty.
    pub because: Vec<ReasonId>,
}

/// The whole answer.
#[derive(Debug, Clone, PartialEq)]
pub struct Advice {
    /// What to do.
    pub outcome: Outcome,
    /// Ways that may not be used, with reasons.
    pub ruled_out: Vec<RuledOut>,
    /// What to heed, most serious first.
    pub cautions: Vec<Caution>,
    /// Other ways to get it done, in the order to offer them.
    pub alternatives: Vec<Alternative>,
    /// Every reason met on the way, in order of authority.
    pub reasons: Vec<Reason>,
    /// The heaviest load for today; only with a plan whose level in practice is known.
    pub heaviest_today: Option<Kilograms>,
    /// The published limit for healthy adults on this task; absent when no lift was judged.
    pub limit: Option<TaskLimit>,
    /// What each offered way costs by the posture model; empty when none was asked or no way is offered.
    pub loads: Vec<WayLoads>,
}
