//! Starting patterns for common situations. Every number and every choice in them is a house rule to begin
//! from; all of it can be changed. They lean on the trade practice in `docs/method/judgement.md` and on the
//! pain-monitoring model (hold from 4, a step back above 5, two good days before a step).

use record::{
    Ceiling, Day, HeightWord, NextMorning, Pain, Plan, PlanWay, Practice, Progression, Way,
    WayStanding, Wording,
};

/// Weeks after the review date during which limits stay.
const GRACE_WEEKS: u32 = 4;

/// One pattern.
pub(crate) struct Pattern {
    /// Its id. Words: `plan-pattern-<id>` and `plan-pattern-<id>-text`.
    pub(crate) id: &'static str,
    ceiling_g: u32,
    floor_g: u32,
    times_a_bout: u32,
    bouts_a_day: u32,
    pain_ceiling: Option<Pain>,
    preferred: &'static [Way],
    not_allowed: &'static [(Way, &'static str)],
    cues: &'static [&'static str],
    /// Way, grams, sets, times, days a week.
    practice: Option<(Way, u32, u32, u32, u32)>,
    step_g: u32,
    is_locked: bool,
    /// Days until it is looked at again.
    review_days: u32,
    notes: &'static [&'static str],
}

/// Every pattern, in the order in which they are offered.
pub(crate) const PATTERNS: &[Pattern] = &[
    Pattern {
        id: "sore_back",
        ceiling_g: 10_000,
        floor_g: 6_000,
        times_a_bout: 5,
        bouts_a_day: 4,
        pain_ceiling: Pain::new(5),
        preferred: &[Way::Squat, Way::Lunge],
        not_allowed: &[(Way::FreeBend, "plan-why-bend")],
        cues: &["plan-cue-close", "plan-cue-slow", "plan-cue-stop"],
        practice: Some((Way::Squat, 4_000, 2, 6, 3)),
        step_g: 500,
        is_locked: false,
        review_days: 28,
        notes: &["plan-note-flare"],
    },
    Pattern {
        id: "after_flare",
        ceiling_g: 4_000,
        floor_g: 2_000,
        times_a_bout: 2,
        bouts_a_day: 3,
        pain_ceiling: Pain::new(3),
        preferred: &[Way::Lunge, Way::Squat],
        not_allowed: &[
            (Way::Hinge, "plan-why-fold-back"),
            (Way::FreeBend, "plan-why-bend"),
        ],
        cues: &["plan-cue-close", "plan-cue-kneel", "plan-cue-stop"],
        practice: None,
        step_g: 500,
        is_locked: true,
        review_days: 14,
        notes: &["plan-note-flare"],
    },
    Pattern {
        id: "sore_knee",
        ceiling_g: 10_000,
        floor_g: 8_000,
        times_a_bout: 8,
        bouts_a_day: 4,
        pain_ceiling: Pain::new(5),
        preferred: &[Way::Hinge],
        not_allowed: &[],
        cues: &["plan-cue-hips-back", "plan-cue-close", "plan-cue-slow"],
        practice: Some((Way::Hinge, 5_000, 2, 8, 3)),
        step_g: 500,
        is_locked: false,
        review_days: 28,
        notes: &[],
    },
    Pattern {
        id: "both_knees",
        ceiling_g: 8_000,
        floor_g: 6_000,
        times_a_bout: 6,
        bouts_a_day: 4,
        pain_ceiling: Pain::new(5),
        preferred: &[Way::Hinge],
        not_allowed: &[
            (Way::Squat, "plan-why-deep-knee"),
            (Way::Lunge, "plan-why-kneel"),
        ],
        cues: &["plan-cue-hips-back", "plan-cue-hand", "plan-cue-close"],
        practice: Some((Way::Hinge, 4_000, 2, 6, 3)),
        step_g: 500,
        is_locked: false,
        review_days: 28,
        notes: &[],
    },
    Pattern {
        id: "sore_hip",
        ceiling_g: 8_000,
        floor_g: 5_000,
        times_a_bout: 5,
        bouts_a_day: 4,
        pain_ceiling: Pain::new(5),
        preferred: &[Way::Squat],
        not_allowed: &[(Way::Golfer, "plan-why-one-leg")],
        cues: &["plan-cue-close", "plan-cue-slow", "plan-cue-stop"],
        practice: Some((Way::Squat, 3_000, 2, 6, 3)),
        step_g: 500,
        is_locked: false,
        review_days: 28,
        notes: &[],
    },
    Pattern {
        id: "after_surgery",
        // A common first limit in surgeons' letters is 10 lb; the letter itself decides.
        ceiling_g: 4_500,
        floor_g: 2_000,
        times_a_bout: 2,
        bouts_a_day: 3,
        pain_ceiling: Pain::new(3),
        preferred: &[Way::Squat],
        not_allowed: &[
            (Way::Hinge, "plan-why-surgery"),
            (Way::FreeBend, "plan-why-surgery"),
            (Way::Golfer, "plan-why-surgery"),
        ],
        cues: &["plan-cue-close", "plan-cue-no-twist", "plan-cue-stop"],
        practice: None,
        step_g: 500,
        is_locked: true,
        review_days: 14,
        notes: &["plan-note-surgeon"],
    },
    Pattern {
        id: "thin_bones",
        ceiling_g: 6_000,
        floor_g: 3_000,
        times_a_bout: 4,
        bouts_a_day: 4,
        pain_ceiling: Pain::new(4),
        preferred: &[Way::Squat, Way::Lunge],
        not_allowed: &[(Way::FreeBend, "plan-why-bones")],
        cues: &["plan-cue-long-back", "plan-cue-close", "plan-cue-no-twist"],
        practice: Some((Way::Squat, 2_000, 2, 6, 3)),
        step_g: 500,
        is_locked: true,
        review_days: 56,
        notes: &[],
    },
    Pattern {
        id: "building_up",
        ceiling_g: 15_000,
        floor_g: 12_000,
        times_a_bout: 10,
        bouts_a_day: 5,
        pain_ceiling: Pain::new(5),
        preferred: &[Way::Hinge, Way::Squat],
        not_allowed: &[],
        cues: &["plan-cue-long-back", "plan-cue-close", "plan-cue-breathe"],
        practice: Some((Way::Hinge, 6_000, 3, 8, 3)),
        step_g: 1_000,
        is_locked: false,
        review_days: 28,
        notes: &["plan-note-vary"],
    },
];

/// The pattern with this id.
#[must_use]
pub(crate) fn find(id: &str) -> Option<&'static Pattern> {
    PATTERNS.iter().find(|pattern| pattern.id == id)
}

impl Pattern {
    /// Writes the pattern into a plan that has only its names and its number. `today` is the day it is made.
    pub(crate) fn fill(&self, plan: &mut Plan, today: Day) {
        let ours = |ids: &[&str]| {
            ids.iter()
                .map(|id| Wording::Ours((*id).to_owned()))
                .collect()
        };
        let way = |way: Way, standing, why: Option<&str>| PlanWay {
            way,
            standing,
            why: why.map(|id| Wording::Ours(id.to_owned())),
        };
        let preferred = self.preferred.iter();
        let preferred = preferred.map(|one| way(*one, WayStanding::Preferred, None));
        let not_allowed = self.not_allowed.iter();
        let not_allowed =
            not_allowed.map(|(one, why)| way(*one, WayStanding::NotAllowed, Some(why)));
        let days = i32::try_from(self.review_days).unwrap_or_default();
        plan.title = Wording::Ours(crate::words::message_id("plan-pattern", self.id));
        plan.pattern = Some(self.id.to_owned());
        plan.review_on = Day(today.0.saturating_add(days));
        plan.grace_weeks = GRACE_WEEKS;
        plan.ceiling_g = Some(self.ceiling_g);
        plan.ceilings = vec![Ceiling {
            start: HeightWord::Floor,
            grams: self.floor_g,
        }];
        plan.times_a_bout = Some(self.times_a_bout);
        plan.bouts_a_day = Some(self.bouts_a_day);
        plan.pain_ceiling = self.pain_ceiling;
        plan.next_morning = Some(NextMorning::BackToUsual);
        plan.ways = preferred.chain(not_allowed).collect();
        plan.cues = ours(self.cues);
        plan.practice = self.practice.map_or_else(Vec::new, |practice| {
            let (way, grams, sets, times, days_a_week) = practice;
            vec![Practice {
                way,
                grams,
                sets,
                times,
                days_a_week,
            }]
        });
        plan.progression = Progression {
            step_g: Some(self.step_g),
            good_days: Some(2),
            hold_from: Pain::new(4),
            back_over: Pain::new(5),
            is_locked: self.is_locked,
        };
        plan.notes = ours(self.notes);
    }
}
