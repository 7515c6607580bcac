//! The log of a plan, as the progress rule takes it, and where it leaves the plan today.

use super::moment::from_record;
use super::plan::{mass, to_judge};
use chrono::{DateTime, Datelike, FixedOffset, NaiveDate};
use lifting::body::{BackState, Person};
use lifting::plan::Plan;
use lifting::progress::{self, History, Progress, Proposal, Session};
use lifting::quantity::{Kilograms, PainScore};
use lifting::review::Day;
use record::{
    BackToUsual, HistoryPractice, Moment, NextMorning, Pain, PracticeEntry, PracticeEvent, Way,
};

/// Milliseconds in a minute.
const MINUTE_MS: i64 = 60_000;

/// One entry of the log, from this phone or handed over.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Noted {
    /// When, in the time of that place.
    pub(crate) at: DateTime<FixedOffset>,
    /// The version of the plan.
    pub(crate) version: u32,
    /// What it is.
    pub(crate) event: PracticeEvent,
    /// The way that was practised.
    pub(crate) way: Option<Way>,
    /// With how much, or the level from then on, grams.
    pub(crate) grams: Option<u32>,
    /// Worst pain while practising.
    pub(crate) pain: Option<Pain>,
    /// How it was the next morning, if it was asked, and when that was last answered.
    pub(crate) morning: Option<Morning>,
}

/// How it was the morning after practice.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Morning {
    /// When it was answered; `None`: not handed over.
    pub(crate) at: Option<DateTime<FixedOffset>>,
    /// Pain, if it was told.
    pub(crate) pain: Option<Pain>,
    /// Back to usual, if it was told.
    pub(crate) back_to_usual: Option<BackToUsual>,
}

impl From<&PracticeEntry> for Noted {
    fn from(entry: &PracticeEntry) -> Self {
        Self {
            at: from_record(entry.at),
            version: entry.version,
            event: entry.event,
            way: entry.way,
            grams: entry.grams,
            pain: entry.pain,
            morning: entry.morning.map(|morning| Morning {
                at: Some(from_record(morning.at)),
                pain: morning.pain,
                back_to_usual: morning.back_to_usual,
            }),
        }
    }
}

/// An entry that was handed over, in the time of the place where the history was made.
#[must_use]
pub(crate) fn handed(entry: &HistoryPractice, offset_min: i16) -> Noted {
    Noted {
        at: from_record(Moment {
            at_ms: entry.at_min.saturating_mul(MINUTE_MS),
            offset_min,
        }),
        version: entry.version,
        event: entry.event,
        way: entry.way,
        grams: Some(entry.grams).filter(|grams| *grams > 0),
        pain: entry.pain,
        morning: entry.morning_asked.then_some(Morning {
            at: None,
            pain: entry.morning_pain,
            back_to_usual: entry.back_to_usual,
        }),
    }
}

/// As an entry goes into a history.
#[must_use]
pub(crate) fn to_hand(entry: &PracticeEntry) -> HistoryPractice {
    HistoryPractice {
        at_min: entry.at.at_ms.div_euclid(MINUTE_MS),
        version: entry.version,
        event: entry.event,
        way: entry.way,
        grams: entry.grams.unwrap_or(0),
        pain: entry.pain,
        morning_asked: entry.morning.is_some(),
        morning_pain: entry.morning.and_then(|morning| morning.pain),
        back_to_usual: entry.morning.and_then(|morning| morning.back_to_usual),
    }
}

/// Where a plan stands on one day, by its log.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct PlanDay {
    /// The plan at the level in practice; on the day of a flare-up, at the level before it.
    pub(crate) plan: Plan,
    /// The level today. `None`: the plan sets nothing to practise.
    pub(crate) level: Option<Kilograms>,
    /// The level that the plan itself sets.
    pub(crate) base: Option<Kilograms>,
    /// Whether a flare-up was told today.
    pub(crate) flare_today: bool,
    /// Practice so far.
    pub(crate) sessions: Vec<Session>,
    today: Day,
    /// The level before the flare-up from which it is on the way back.
    before_flare: Option<Kilograms>,
    /// When an offered step was left last.
    left_at: Option<DateTime<FixedOffset>>,
    /// When something about practice was noted last.
    told_at: Option<DateTime<FixedOffset>>,
}

impl PlanDay {
    /// Reads the log of one plan, oldest entry first. Entries of other versions tell of a flare-up only.
    #[must_use]
    pub(crate) fn of(plan: &record::Plan, log: &[Noted], now: DateTime<FixedOffset>) -> Self {
        let judged = to_judge(plan, now);
        let mut day = Self {
            level: judged.current,
            base: judged.current,
            plan: judged,
            flare_today: false,
            sessions: Vec::new(),
            today: day_of(now.date_naive()),
            before_flare: None,
            left_at: None,
            told_at: None,
        };
        let mut before_today = None;
        let mut morning_before = None;
        for noted in log.iter().filter(|noted| noted.at <= now) {
            let is_today = noted.at.date_naive() == now.date_naive();
            let is_of_this = noted.version == plan.version;
            if noted.event == PracticeEvent::Flare && is_today {
                day.flare_today = true;
                before_today = is_of_this.then(|| (day.level, day.in_a_flare()));
            }
            if is_of_this {
                day.take(noted, plan.next_morning, &mut morning_before);
            }
        }
        if day.flare_today {
            let (before, level) = before_today.unwrap_or((day.level, day.in_a_flare()));
            day.plan.current = before;
            day.level = level;
        } else {
            day.plan.current = day.level;
        }
        day
    }

    fn take(
        &mut self,
        noted: &Noted,
        rule: Option<NextMorning>,
        morning_before: &mut Option<Pain>,
    ) {
        match noted.event {
            PracticeEvent::Done => {
                self.sessions.push(Session {
                    day: day_of(noted.at.date_naive()),
                    at_level: true,
                    during: noted.pain.map(score),
                    settled: settled(noted.morning, rule, *morning_before),
                });
                let morning = noted.morning;
                *morning_before = morning.and_then(|morning| morning.pain).or(*morning_before);
                let told = morning.and_then(|morning| morning.at);
                self.told_at = self.told_at.max(Some(noted.at)).max(told);
            }
            PracticeEvent::Left => {}
            PracticeEvent::StepUp | PracticeEvent::StepDown | PracticeEvent::Flare => {
                self.before_flare = match noted.event {
                    PracticeEvent::Flare => self.before_flare.or(self.level),
                    _ => None,
                };
                // Whatever the entry says, no level is above the ceiling.
                if let Some(grams) = noted.grams.filter(|_| self.level.is_some()) {
                    let within = progress::take(&self.plan, mass(grams), Progress::Hold);
                    self.level = Some(within);
                }
                for session in &mut self.sessions {
                    session.at_level = false;
                }
            }
            PracticeEvent::OfferLeft => self.left_at = Some(noted.at),
        }
    }

    /// The level in a flare-up told now. One told again on the way back goes one step down from where it is.
    #[must_use]
    pub(crate) fn in_a_flare(&self) -> Option<Kilograms> {
        let level = self.level?;
        Some(match self.before_flare {
            None => progress::in_a_flare(&self.plan, level),
            Some(_) => progress::take(&self.plan, level, Progress::StepDown),
        })
    }

    /// The level after the proposal was taken.
    fn next(&self, level: Kilograms, progress: Progress) -> Kilograms {
        match (progress, self.before_flare) {
            (Progress::StepUp, Some(before)) => progress::after_a_flare(&self.plan, level, before),
            _ => progress::take(&self.plan, level, progress),
        }
    }

    /// The level that the proposal leads to; on the day of a flare-up the one that it left.
    #[must_use]
    pub(crate) fn proposed(&self, proposal: &Proposal) -> Option<Kilograms> {
        let level = self.level?;
        Some(if self.flare_today {
            level
        } else {
            self.next(level, proposal.progress)
        })
    }

    /// How much more the step up that is still to be earned will be.
    #[must_use]
    pub(crate) fn next_step(&self) -> Option<Kilograms> {
        let level = self.level?;
        let next = self.next(level, Progress::StepUp);
        Some(Kilograms::clamped(next.value() - level.value()))
    }

    /// What the rule is asked.
    #[must_use]
    pub(crate) fn history(&self) -> History {
        progress::history(&self.sessions, &self.plan, self.today, self.flare_today)
    }

    /// What the rule proposes to somebody.
    #[must_use]
    pub(crate) fn proposal(&self, person: &Person) -> Proposal {
        progress::propose(person, Some(&self.plan), &self.history())
    }

    /// Good sessions in a row at this level.
    #[must_use]
    pub(crate) fn good(&self) -> u32 {
        progress::good_in_a_row(&self.sessions, &self.plan, self.today)
    }

    /// Good sessions that a step up still needs.
    #[must_use]
    pub(crate) fn still_needed(&self) -> u32 {
        progress::sessions_needed(Some(&self.plan)).saturating_sub(self.good())
    }

    /// The level after the proposal, where it may be offered: not while the clinician has locked the steps, nor on the
    /// day of a flare-up, nor again before something new was noted.
    #[must_use]
    pub(crate) fn offered(&self, proposal: &Proposal) -> Option<Kilograms> {
        let level = self.level?;
        let was_left = self.left_at.is_some() && self.left_at >= self.told_at;
        if self.plan.steps_locked || self.flare_today || was_left {
            return None;
        }
        let next = self.next(level, proposal.progress);
        let moves = match proposal.progress {
            Progress::StepUp => next > level,
            Progress::StepDown => next < level,
            Progress::Hold => false,
        };
        moves.then_some(next)
    }

    /// The plan as it is judged by today. In a flare-up nothing above the level of that day.
    #[must_use]
    pub(crate) fn to_judge(&self) -> Plan {
        let mut plan = self.plan.clone();
        if let Some(level) = self.level.filter(|_| self.flare_today) {
            plan.max = Some(plan.max.map_or(level, |max| max.at_most(level)));
        }
        plan
    }

    /// What is said of somebody on this day beyond what they said of themselves.
    pub(crate) fn mark(&self, person: &mut Person) {
        if self.flare_today {
            person.back_state = Some(BackState::Flare);
        }
    }

    /// What the rule is asked when a lift is judged: a step counts only once it was taken, a flare-up at once.
    #[must_use]
    pub(crate) fn history_for_a_lift(&self) -> Option<History> {
        self.flare_today.then(|| History {
            flare_today: Some(true),
            ..History::default()
        })
    }
}

/// Whether it was settled the next morning, as the plan asks. A plan that does not say asks for back to usual.
fn settled(
    morning: Option<Morning>,
    rule: Option<NextMorning>,
    morning_before: Option<Pain>,
) -> Option<bool> {
    let morning = morning?;
    let compared = match rule {
        Some(NextMorning::NoWorse) => morning.pain.zip(morning_before),
        Some(NextMorning::BackToUsual) | None => None,
    };
    if let Some((pain, before)) = compared {
        return Some(pain <= before);
    }
    match morning.back_to_usual? {
        BackToUsual::Yes => Some(true),
        BackToUsual::No => Some(false),
        BackToUsual::NotSure => None,
    }
}

const fn score(pain: Pain) -> PainScore {
    PainScore::of(pain.rating())
}

/// A date as the review counts days.
#[must_use]
pub(crate) fn day_of(date: NaiveDate) -> Day {
    Day::of(date.num_days_from_ce())
}

#[cfg(test)]
#[path = "practice_tests.rs"]
mod tests;
