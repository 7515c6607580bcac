//! Every rule that can speak: its id, its step, whose rule it is, where it comes from and how sure it is.

use super::{Authority, Sure};
use crate::naming::named;

macro_rules! reasons {
    ($($(#[$doc:meta])* $member:ident = $id:literal: $step:literal, $authority:ident, $source:literal, $sure:ident;)+) => {
        named!(
            /// Why. One id for each rule that can speak.
            ReasonId { $($(#[$doc])* $member = $id),+ }
        );

        impl ReasonId {
            /// The step of the judgement, 1 to 7, at which it speaks.
            #[must_use]
            pub const fn step(self) -> u8 {
                match self { $(Self::$member => $step),+ }
            }

            /// Whose rule it is.
            #[must_use]
            pub const fn authority(self) -> Authority {
                match self { $(Self::$member => Authority::$authority),+ }
            }

            /// A source id of `docs/method/sources.md`, or `house_rule`, or `common_practice`.
            #[must_use]
            pub const fn source(self) -> &'static str {
                match self { $(Self::$member => $source),+ }
            }

            /// How sure it is.
            #[must_use]
            pub const fn sure(self) -> Sure {
                match self { $(Self::$member => Sure::$sure),+ }
            }
        }
    };
}

reasons! {
    // 1. Warning signs
    /// An emergency sign is open. Argument `sign`.
    SignEmergency = "sign_emergency": 1, Emergency, "red_flags", Published;
    /// A same-day sign is open. Argument `sign`.
    SignSameDay = "sign_same_day": 1, Emergency, "red_flags", Published;
    // 2. Who may be advised
    /// The load is a person or an animal.
    LoadIsAlive = "load_is_alive": 2, Law, "house_rule", House;
    /// Surgery in the last three months and no written limit.
    SurgeryNoLimit = "surgery_no_limit": 2, Plan, "post_surgery_limits", House;
    /// A complicated pregnancy.
    PregnancyComplicated = "pregnancy_complicated": 2, Plan, "pregnancy_lifting", Published;
    /// Under 16 without a clinician's plan.
    ChildNoPlan = "child_no_plan": 2, Law, "house_rule", House;
    /// The plan is past its review date by more than its grace. Argument `overdue` when known.
    PlanTooOld = "plan_too_old": 2, Plan, "house_rule", House;
    // 3. The plan
    /// Heavier than the plan's ceiling. Arguments `mass` when known, `max`.
    OverPlanCeiling = "over_plan_ceiling": 3, Plan, "plan", House;
    /// More lifts in one go than the plan allows. Arguments `times` when asked, `max`.
    OverPlanTimes = "over_plan_times": 3, Plan, "plan", House;
    /// As many goes as the plan allows in a day are done. Arguments `done`, `max`.
    PlanBoutsDone = "plan_bouts_done": 3, Plan, "plan", House;
    /// A region hurts more than the plan allows. Arguments `region`, `pain`, `max`.
    OverPainCeiling = "over_pain_ceiling": 3, Plan, "plan", House;
    /// The plan has a pain ceiling, and pain in back or a knee was not asked. Arguments `region`, `max`.
    PainNotAsked = "pain_not_asked": 3, Plan, "house_rule", House;
    /// The plan rules this way out.
    PlanAvoids = "plan_avoids": 3, Plan, "plan", House;
    /// The plan puts this way first.
    PlanPrefers = "plan_prefers": 3, Plan, "plan", House;
    /// The plan does not list this way.
    PlanNotListed = "plan_not_listed": 3, Plan, "plan", House;
    /// The plan is past its review date; its limits stay, what it relaxed lapses.
    PlanExpired = "plan_expired": 3, Plan, "house_rule", House;
    /// The plan sets when pain counts as severe for this person. Argument `region`.
    PlanSetsBands = "plan_sets_bands": 3, Plan, "plan", House;
    /// The surgeon's limit in the plan holds.
    SurgeonLimit = "surgeon_limit": 3, Plan, "post_surgery_limits", House;
    // 4. The task
    /// The lifting index is over 1. Arguments `index`, `limit`.
    IndexOverOne = "index_over_one": 4, Practice, "niosh_1994", Published;
    /// The lifting index is 3 or more. Arguments `index`, `limit`.
    IndexOverThree = "index_over_three": 4, Practice, "niosh_1994", House;
    /// Within the published limit for healthy adults. Arguments `index`, `limit`.
    IndexWithinOne = "index_within_one": 4, Practice, "niosh_1994", Published;
    /// Beyond what the equation covers. Argument `what`.
    OutsideEquation = "outside_equation": 4, Practice, "niosh_1994", Published;
    /// The equation does not cover this way; the standing figure is shown. Argument `what`.
    NotCovered = "not_covered": 4, Practice, "niosh_1994", Published;
    /// Over the guideline weight used as a first screen. Argument `guide`.
    OverGuideWeight = "over_guide_weight": 4, Practice, "hse_l23", Published;
    /// The mass is not known. Argument `high` when guessed.
    MassUnknown = "mass_unknown": 4, Practice, "common_practice", House;
    /// Big, floppy, shifting or without a grip.
    Bulky = "bulky": 4, Practice, "common_practice", House;
    /// Arms nearly straight. Argument `reach`.
    FarReach = "far_reach": 4, Practice, "house_rule", House;
    /// Carried farther than the guidance for one go. Argument `distance`.
    LongCarry = "long_carry": 4, Practice, "hse_l23", Published;
    /// Above the shoulder, and balance is poor or not known.
    HighAndUnsteady = "high_and_unsteady": 4, Today, "house_rule", House;
    /// Above the shoulder, and the shoulders hurt severely.
    HighAndShoulder = "high_and_shoulder": 4, Today, "house_rule", House;
    /// Pregnant: from below mid-shin, or overhead.
    PregnancyLowOrOverhead = "pregnancy_low_or_overhead": 4, Practice, "pregnancy_lifting", Published;
    /// Pregnant: the reach is longer, so the limit is lower.
    PregnancyReach = "pregnancy_reach": 4, Practice, "pregnancy_lifting", Published;
    /// A hernia, and more than the published limit.
    HerniaHeavy = "hernia_heavy": 4, Today, "house_rule", House;
    /// A hernia: an aid or help first.
    HerniaAid = "hernia_aid": 4, Today, "house_rule", House;
    /// A hernia and a trifle: stop if the lump hurts.
    HerniaLight = "hernia_light": 4, Today, "house_rule", House;
    // 5. Each way
    /// Back pain is severe. Argument `pain`.
    BackSevere = "back_severe": 5, Today, "common_practice", House;
    /// The back catches without warning.
    BackVolatile = "back_volatile": 5, Today, "common_practice", House;
    /// How the back behaves was not asked, and it hurts at 4 or more: judged as if it catches.
    BackStateNotAsked = "back_state_not_asked": 5, Today, "house_rule", House;
    /// Today is a flare-up.
    BackFlare = "back_flare": 5, Today, "common_practice", House;
    /// Back pain was not asked; taken as severe.
    BackNotAsked = "back_not_asked": 5, Today, "house_rule", House;
    /// A knee hurts severely. Arguments `region`, `pain`.
    KneeSevere = "knee_severe": 5, Today, "common_practice", House;
    /// A knee was not asked; taken as severe. Argument `region`.
    KneeNotAsked = "knee_not_asked": 5, Today, "house_rule", House;
    /// Neither knee may be on the ground.
    NoKneeToKneelOn = "no_knee_to_kneel_on": 5, Today, "common_practice", House;
    /// Kneel on the other knee. Argument `region`: the knee to kneel on.
    KneelOn = "kneel_on": 5, Today, "common_practice", House;
    /// Cannot kneel.
    CannotKneel = "cannot_kneel": 5, Today, "common_practice", House;
    /// Kneeling was not asked; taken as no.
    KneelNotAsked = "kneel_not_asked": 5, Today, "house_rule", House;
    /// Kneels on one side only, nobody knows which, and one knee is severe.
    KneelSideNotKnown = "kneel_side_not_known": 5, Today, "house_rule", House;
    /// A hip hurts severely. Arguments `region`, `pain`.
    HipSevere = "hip_severe": 5, Today, "common_practice", House;
    /// Neither hip may stand alone.
    NoHipToStandOn = "no_hip_to_stand_on": 5, Today, "common_practice", House;
    /// Stand on the other leg. Argument `region`: the hip to stand on.
    StandOn = "stand_on": 5, Today, "common_practice", House;
    /// Hips were not asked; taken as not limiting.
    HipNotAsked = "hip_not_asked": 5, Today, "house_rule", House;
    /// Shoulders were not asked; taken as not limiting.
    ShoulderNotAsked = "shoulder_not_asked": 5, Today, "house_rule", House;
    /// Balance is not good.
    BalanceNotGood = "balance_not_good": 5, Today, "common_practice", House;
    /// Balance was not asked; taken as poor.
    BalanceNotAsked = "balance_not_asked": 5, Today, "house_rule", House;
    /// Good balance, but a fall in the last year.
    FellLastYear = "fell_last_year": 5, Today, "house_rule", House;
    /// More than 2.3 kg. Argument `mass` when known.
    OverLight = "over_light": 5, Practice, "common_practice", House;
    /// More than twice.
    MoreThanTwice = "more_than_twice": 5, Practice, "common_practice", House;
    /// A long run tires knees and thighs.
    LongRun = "long_run": 5, Practice, "common_practice", House;
    /// It takes two hands.
    NeedsTwoHands = "needs_two_hands": 5, Practice, "common_practice", House;
    /// Too high for a half-kneel. Argument `start`.
    TooHighToKneel = "too_high_to_kneel": 5, Practice, "house_rule", House;
    /// Weak bones or a past fracture of the spine: no rounding under load.
    NoLoadedRounding = "no_loaded_rounding": 5, Practice, "osteoporosis_flexion", Estimate;
    /// A new knee, not yet healed: no kneeling.
    NewKneeNoKneeling = "new_knee_no_kneeling": 5, Practice, "house_rule", House;
    /// A replaced knee may kneel if it can.
    OldKneeMayKneel = "old_knee_may_kneel": 5, Practice, "kneeling_after_replacement", Published;
    /// Recent surgery on the low back: no rounding under load.
    BackSurgery = "back_surgery": 5, Practice, "house_rule", House;
    /// A replaced hip: not on that leg alone; ask about deep bending.
    ReplacedHip = "replaced_hip": 5, Practice, "house_rule", House;
    /// Worn hips: deep hip bending moves back in the ranking; it may still come first.
    WornHip = "worn_hip": 5, Practice, "house_rule", House;
    /// Worn knees: deep knee bending moves back in the ranking; it may still come first.
    WornKnee = "worn_knee": 5, Practice, "house_rule", House;
    /// Already at or above knuckle height.
    NoLowWayNeeded = "no_low_way_needed": 5, Practice, "house_rule", House;
    // 6. Ranking
    /// Eases the knee.
    HingeEasesKnee = "hinge_eases_knee": 6, Practice, "common_practice", House;
    /// Moves the most weight.
    HingeMovesMost = "hinge_moves_most": 6, Practice, "common_practice", House;
    /// Bears long runs of light lifts.
    HingeLongRun = "hinge_long_run": 6, Practice, "common_practice", House;
    /// Suits a severe or easily provoked back.
    SquatForBack = "squat_for_back": 6, Practice, "common_practice", House;
    /// Suits a few lifts of more than a trifle.
    SquatFewLifts = "squat_few_lifts": 6, Practice, "common_practice", House;
    /// On one knee you can tip it and feel it first.
    LungeToTest = "lunge_to_test": 6, Practice, "common_practice", House;
    /// On one knee you can hug what is hard to hold.
    LungeToHug = "lunge_to_hug": 6, Practice, "common_practice", House;
    /// On one knee the trunk stays upright.
    LungeForBack = "lunge_for_back": 6, Practice, "common_practice", House;
    /// Studies find less weight acceptable kneeling; trade practice says heavy.
    LungeStudiesDiffer = "lunge_studies_differ": 6, Practice, "kneeling_acceptable_weight", Published;
    /// Once or twice with something light.
    FreeBendLight = "free_bend_light": 6, Practice, "common_practice", House;
    /// Light, one hand, eases the knee.
    GolferLight = "golfer_light": 6, Practice, "common_practice", House;
    /// Bears long runs of light lifts.
    GolferLongRun = "golfer_long_run": 6, Practice, "common_practice", House;
    /// Used for most of the last two weeks: an equal one goes first. Argument `way`.
    Variety = "variety": 6, Practice, "common_practice", House;
    /// The posture model finds another way lighter on the low back; trade practice decides. Argument `way`.
    ModelDiffers = "model_differs": 6, Practice, "posture_model", Estimate;
    /// Even within the published weight, the model's force on the low back passes 3400 N. Arguments `way`, `force`.
    ForceOverActionLimit = "force_over_action_limit": 6, Practice, "niosh_1981", Published;
    /// Lifting on and on at this pace costs more energy than is published for this long. Arguments `rate`, `limit`.
    EnergyOverLimit = "energy_over_limit": 6, Practice, "niosh_1994", Published;
    // 7. Outcome
    /// No way is left.
    NoWayLeft = "no_way_left": 7, Today, "house_rule", House;
    /// Only ways that may not come first are left. Argument `what` where one thing holds all of them back:
    /// `long_run`, `hip`.
    OnlySecondBestLeft = "only_second_best_left": 7, Practice, "house_rule", House;
    /// No change that is enough was found.
    NoChangeFound = "no_change_found": 7, Practice, "house_rule", House;
    // Progress: what next in the plan
    /// Two good sessions running.
    TwoGoodSessions = "two_good_sessions": 3, Plan, "pain_monitoring", House;
    /// Fewer than two sessions at this level.
    TooFewSessions = "too_few_sessions": 3, Plan, "pain_monitoring", House;
    /// Pain during was past the limit. Arguments `pain`, `max`.
    PainOverDuring = "pain_over_during": 3, Plan, "pain_monitoring", House;
    /// Pain during was acceptable, not low. Argument `pain`.
    PainAcceptableDuring = "pain_acceptable_during": 3, Plan, "pain_monitoring", House;
    /// Not back to usual by next morning.
    NotSettled = "not_settled": 3, Plan, "pain_monitoring", House;
    /// Pain rose over the week.
    WeekRising = "week_rising": 3, Plan, "pain_monitoring", House;
    /// A flare-up: step down for a few days.
    FlareStepDown = "flare_step_down": 3, Plan, "house_rule", House;
    /// The next step would be over the strictest of the plan's ceilings. Argument `max`.
    AtCeiling = "at_ceiling": 3, Plan, "plan", House;
    /// The clinician unlocks the steps.
    StepsLocked = "steps_locked": 3, Plan, "plan", House;
    /// Something about the last sessions is not known.
    HistoryIncomplete = "history_incomplete": 3, Plan, "house_rule", House;
    /// No plan in force whose level in practice is known.
    NoLevelKnown = "no_level_known": 3, Plan, "house_rule", House;
    // Moving a person: see `docs/method/transfer.md`
    /// A sign of the person that needs help now. Argument `what`.
    ClientSignEmergency = "client_sign_emergency": 1, Emergency, "after_fall", Published;
    /// A new sign of the person that the office must hear of today. Argument `what`.
    ClientSignToday = "client_sign_today": 1, Emergency, "house_rule", House;
    /// On the floor and perhaps hurt.
    FloorHurt = "floor_hurt": 1, Emergency, "osha_3182", Published;
    /// On the floor and not yet checked from head to foot.
    FloorNotChecked = "floor_not_checked": 1, Emergency, "osha_3182", Published;
    /// The worker is under 16.
    WorkerIsChild = "worker_is_child": 2, Law, "house_rule", House;
    /// The person does not want it.
    ClientSaysNo = "client_says_no": 2, Law, "house_rule", House;
    /// Today is not as the care plan says.
    CarePlanDiffers = "care_plan_differs": 3, Plan, "plan", House;
    /// The care plan covers this move.
    CarePlanCovers = "care_plan_covers": 3, Plan, "plan", House;
    /// The care plan is past its date: what it forbids holds, what it unlocked does not.
    CarePlanOld = "care_plan_old": 3, Plan, "house_rule", House;
    /// No care plan for this move; published rules stand in.
    CarePlanNone = "care_plan_none": 3, Plan, "house_rule", House;
    /// The care plan names other ways.
    CarePlanOtherWay = "care_plan_other_way": 3, Plan, "plan", House;
    /// The care plan asks for more workers. Argument `people`.
    CarePlanMoreWorkers = "care_plan_more_workers": 3, Plan, "plan", House;
    /// Sources differ on the belt; the care plan allows it for steadying.
    BeltByPlan = "belt_by_plan": 3, Plan, "plan", House;
    /// Within the published limit for each worker. Arguments `share`, `limit`.
    ShareWithinLimit = "share_within_limit": 4, Practice, "waters_2007", Published;
    /// Over the published limit for each worker. Arguments `share`, `limit`, `people`.
    ShareOverLimit = "share_over_limit": 4, Practice, "waters_2007", Published;
    /// How much of the person's mass staff would bear is not known.
    ShareNotKnown = "share_not_known": 4, Practice, "va_care_form", Published;
    /// The person's mass is not known.
    ClientMassNotKnown = "client_mass_not_known": 4, Practice, "house_rule", House;
    /// What was said lowers the limit. Arguments `limit`, `what`.
    LimitLowered = "limit_lowered": 4, Practice, "waters_2007", House;
    /// The limit is meant for a person who follows and does not move suddenly.
    LimitNeedsFollowing = "limit_needs_following": 4, Practice, "waters_2007", Published;
    /// The mass of a limb, from published shares. Arguments `share`, `what`.
    LimbMass = "limb_mass": 4, Practice, "limb_mass", Published;
    /// A limb would be held longer than the published figures say.
    HeldTooLong = "held_too_long": 4, Practice, "aorn_2011", Published;
    /// Very heavy: the rated load of the equipment has to be read.
    CheckRatedLoad = "check_rated_load": 4, Practice, "va_care_form", Published;
    /// Holding this low down is more than lifting figures allow for this body.
    LowWorkTooMuch = "low_work_too_much": 4, Practice, "niosh_1994", House;
    /// The worker may not bear any part today. Argument `what`.
    WorkerBearsNothing = "worker_bears_nothing": 5, Today, "house_rule", House;
    /// Takes little or no weight on the legs. Argument `what`.
    LegsDoNotCarry = "legs_do_not_carry": 5, Practice, "osha_3182", Published;
    /// Does not follow simple steps. Argument `what`.
    DoesNotFollow = "does_not_follow": 5, Practice, "osha_3182", Published;
    /// Arms are not strong. Argument `what`.
    ArmsNotStrong = "arms_not_strong": 5, Practice, "osha_3182", Published;
    /// Cannot do it alone.
    CannotAlone = "cannot_alone": 5, Practice, "osha_3182", Published;
    /// The help given changes from moment to moment.
    HelpUnpredictable = "help_unpredictable": 5, Practice, "va_care_form", Published;
    /// Two sources differ on the belt; alone, the stricter one holds.
    BeltAlone = "belt_alone": 5, Practice, "vha_2014", Published;
    /// No lifting of people by hand.
    NoLiftByHand = "no_lift_by_hand": 5, Practice, "vha_2014", Published;
    /// A chair that does not recline leaves nothing to slide on.
    ChairDoesNotRecline = "chair_does_not_recline": 5, Practice, "osha_3182", Published;
    /// Sources differ on two who lift by hand; the care plan names it.
    HandsByPlan = "hands_by_plan": 3, Plan, "plan", House;
    /// Never by hand from the floor.
    NeverFromFloor = "never_from_floor": 5, Practice, "osha_3182", Published;
    /// Never catch somebody who falls.
    NeverCatch = "never_catch": 5, Practice, "vha_2014", Published;
    /// Equipment is not there, or not trained on. Argument `what`.
    EquipmentMissing = "equipment_missing": 5, Law, "osha_3182", Published;
    /// More workers are needed. Argument `people`.
    TooFewWorkers = "too_few_workers": 5, Law, "osha_3182", Published;
    /// Does it alone: stand by.
    StandBySuits = "stand_by_suits": 5, Practice, "osha_3182", Published;
    /// Takes part of the weight and follows: a stand aid.
    StandAidSuits = "stand_aid_suits": 5, Practice, "osha_3182", Published;
    /// Takes part of the weight and follows: stand and pivot with a belt.
    BeltSuits = "belt_suits": 5, Practice, "osha_3182", Published;
    /// Strong arms and follows: a slide board.
    SlideBoardSuits = "slide_board_suits": 5, Practice, "osha_3182", Published;
    /// A full sling hoist with two.
    HoistSuits = "hoist_suits": 5, Practice, "osha_3182", Published;
    /// A slide sheet with two or three.
    SlideSheetSuits = "slide_sheet_suits": 5, Practice, "osha_3182", Published;
    /// Unhurt and able: rises alone with guidance.
    SelfRiseSuits = "self_rise_suits": 5, Practice, "osha_3182", Published;
    /// Sits up or shifts with the own arms, guided.
    GuidedSuits = "guided_suits": 5, Practice, "house_rule", House;
    /// A limb within the limit may be held by hand.
    HoldSuits = "hold_suits": 5, Practice, "aorn_2011", Published;
    /// Nothing that is here and allowed moves this person now.
    NoMoveLeft = "no_move_left": 7, Practice, "house_rule", House;
}
