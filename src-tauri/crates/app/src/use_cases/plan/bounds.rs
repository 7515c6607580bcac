//! What the fields of a plan may hold. All of it is a house rule.

/// Cues on the page: more are not remembered.
pub(super) const CUES: usize = 3;
/// Heaviest ceiling, in grams.
pub(super) const MOST_GRAMS: u32 = 100_000;
/// Largest step, in grams.
pub(super) const MOST_STEP_GRAMS: u32 = 10_000;
/// Most lifts in one go, and most goes in a day.
pub(super) const MOST_TIMES: u32 = 200;
/// Longest grace, in weeks.
pub(super) const MOST_GRACE_WEEKS: u32 = 12;
/// Most things to practise: more are not kept up.
pub(super) const ITEMS: usize = 3;
/// Most sets, and most times in each.
pub(super) const MOST_SETS: u32 = 20;
/// Most days a week.
pub(super) const MOST_DAYS: u32 = 7;
/// Most good days before a step.
pub(super) const MOST_GOOD_DAYS: u32 = 30;
/// Most days until a plan is looked at again: as long as a parcel may be valid.
pub(super) const MOST_REVIEW_DAYS: i32 = 400;
/// Longest name of a plan, in characters.
pub(super) const LONGEST_TITLE: usize = 60;
/// Longest typed sentence, in characters.
pub(super) const LONGEST_SENTENCE: usize = 200;
/// Longest step for a flare-up, in characters: it is read by somebody in pain.
pub(super) const LONGEST_STEP: usize = 60;
/// Longest reason that stays on this phone, in characters.
pub(super) const LONGEST_PRIVATE: usize = 700;
/// Longest text of whom to call, in characters: a number and hours.
pub(super) const LONGEST_CALL: usize = 60;
/// Longest notes, in characters: the longest plan of all still fits on one page of paper.
pub(super) const LONGEST_NOTES: usize = 700;
