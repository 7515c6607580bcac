//! `history` and `recent`: what happened lately.

use crate::choice::Choice;
use crate::error::DoorError;
use crate::section::Section;
use lifting::advise::RecentUse;
use lifting::progress::{History, Trend};
use lifting::way::Way;
use serde::Deserialize;
use std::collections::BTreeMap;

const HISTORY: Section = Section("history");
const RECENT: Section = Section("recent");

/// The highest count taken. House rule.
const MOST: u32 = 10_000;

/// How practice went, as it stands on the wire. A missing key and `null` both mean "not asked".
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct HistoryWire {
    sessions_at_level: Option<u32>,
    worst_during: Option<u8>,
    settled_next_morning: Option<bool>,
    week_trend: Option<Choice<Trend>>,
    flare_today: Option<bool>,
}

impl HistoryWire {
    /// The history, every number checked.
    pub(crate) fn checked(self) -> Result<History, DoorError> {
        Ok(History {
            sessions_at_level: HISTORY.count("sessions_at_level", self.sessions_at_level, MOST)?,
            worst_during: HISTORY.pain("worst_during", self.worst_during)?,
            settled_next_morning: self.settled_next_morning,
            week_trend: self.week_trend.map(|trend| trend.0),
            flare_today: self.flare_today,
        })
    }
}

/// How often each way was used in the last two weeks, and goes done today, as it stands on the wire.
#[derive(Debug, Default, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct RecentWire {
    hinge: Option<u32>,
    squat: Option<u32>,
    lunge: Option<u32>,
    free_bend: Option<u32>,
    golfer: Option<u32>,
    upright: Option<u32>,
    bouts_today: Option<u32>,
}

/// What happened lately.
pub(crate) struct Recent {
    /// Ways used.
    pub(crate) used: RecentUse,
    /// Goes of lifting done today.
    pub(crate) bouts_today: u32,
}

impl RecentWire {
    /// The counts, every one checked.
    pub(crate) fn checked(self) -> Result<Recent, DoorError> {
        let given = [
            (Way::HipHinge, self.hinge),
            (Way::Squat, self.squat),
            (Way::HalfKneelingLunge, self.lunge),
            (Way::FreeBend, self.free_bend),
            (Way::GolfersLift, self.golfer),
            (Way::Upright, self.upright),
        ];
        let mut counts = BTreeMap::new();
        for (way, count) in given {
            if let Some(count) = RECENT.count(way.id(), count, MOST)? {
                counts.insert(way, count);
            }
        }
        let bouts_today = RECENT.count("bouts_today", self.bouts_today, MOST)?;
        Ok(Recent {
            used: RecentUse(counts),
            bouts_today: bouts_today.unwrap_or(0),
        })
    }
}
