//! Warning signs: the whole list at first use and each week, one tap before each lift, a short list on a
//! bad day. The burden is a house rule; the signs and their tiers belong to the judgement.

use super::body::RATED;
use crate::walk::answer::Answer;
use crate::walk::flow::Walk;
use crate::walk::ids::QuestionId;
use crate::walk::question::{Choice, Group, Kind, Question};

const fn signs(kind: Kind, asked: fn(&Walk<'_>) -> bool) -> Question {
    Question {
        group: Group::Signs,
        kind,
        not_sure: true,
        asked,
    }
}

/// A pain score from which the short list is shown. House rule.
pub(crate) const SHORT_LIST_FROM: u8 = 8;

/// One tap before each lift, unless the whole list is due anyway. "Not sure" opens the list.
pub(crate) const TODAY: Question = signs(
    Kind::Choice(&[Choice::words("no"), Choice::words("yes")]),
    |walk| {
        walk.is_about_today()
            && (walk.has(QuestionId::SignsToday)
                || !(walk.whole_list_due || walk.has(QuestionId::SignsFull)))
    },
);

/// The whole list: when it is due, and when something is new or scary today.
pub(crate) const FULL: Question = signs(
    Kind::Choices(&[
        Choice::sign("saddle_numb"),
        Choice::sign("bladder_bowel"),
        Choice::sign("both_legs_weak"),
        Choice::sign("chest_breath"),
        Choice::sign("stroke_signs"),
        Choice::sign("major_trauma"),
        Choice::sign("hernia_bad"),
        Choice::sign("fever_unwell"),
        Choice::sign("dizzy_faint"),
        Choice::sign("one_leg_weaker"),
        Choice::sign("no_weight_bear"),
        Choice::sign("locked_knee"),
        Choice::sign("hot_joint"),
        Choice::sign("calf_swollen"),
        Choice::sign("minor_trauma_fragile"),
        Choice::sign("cancer_history"),
        Choice::sign("weight_loss"),
        Choice::sign("night_pain"),
        Choice::sign("post_op_recent"),
    ]),
    |walk| {
        let today = QuestionId::SignsToday;
        walk.is_about_today()
            && (walk.whole_list_due
                || walk.chose(today, "yes")
                || walk.is_not_sure(today)
                || (walk.has(QuestionId::SignsFull) && !walk.has(today)))
    },
);

/// The short list in a flare or at high pain: pressed nerves, infection, trauma. Not asked when the whole
/// list, which has all of them, was gone through in this walk.
pub(crate) const FLARE: Question = signs(
    Kind::Choices(&[
        Choice::sign("saddle_numb"),
        Choice::sign("bladder_bowel"),
        Choice::sign("both_legs_weak"),
        Choice::sign("fever_unwell"),
        Choice::sign("major_trauma"),
    ]),
    |walk| {
        let bad_day = walk.chose(QuestionId::BackState, "flare")
            || RATED.iter().any(|region| {
                matches!(walk.answer(*region), Some(Answer::Pain(score)) if *score >= SHORT_LIST_FROM)
            });
        walk.is_about_today() && bad_day && !walk.asks(QuestionId::SignsFull)
    },
);

#[cfg(test)]
mod tests {
    use super::*;
    use lifting::body::WarningSign;
    use std::collections::BTreeSet;

    #[test]
    fn the_whole_list_has_every_sign_once() {
        let listed: BTreeSet<&str> = FULL.kind.options().iter().map(|option| option.id).collect();
        let known: BTreeSet<&str> = WarningSign::ALL.iter().map(|sign| sign.id()).collect();
        assert_eq!(listed, known);
    }

    #[test]
    fn the_short_list_is_part_of_the_whole_list() {
        for option in FLARE.kind.options() {
            assert!(FULL.kind.options().contains(option));
        }
    }
}
