//! From a pattern to a plan.

use super::Pattern;
use record::{
    Ceiling, Day, HeightWord, NextMorning, Pain, Plan, PlanWay, Practice, Progression, Way,
    WayStanding, Wording,
};

/// Weeks after the review date during which limits stay. House rule.
const GRACE_WEEKS: u32 = 4;

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
        let practice = self.practice.iter();
        plan.practice = practice
            .map(|&(way, grams, sets, times, days_a_week)| Practice {
                way,
                grams,
                sets,
                times,
                days_a_week,
            })
            .collect();
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
