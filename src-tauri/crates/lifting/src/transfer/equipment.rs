//! Equipment for moving people. Listed as there means: works, in date, and the worker is trained on it.

use crate::naming::named;

named!(
    /// A piece of equipment.
    Equipment {
        /// A gait or transfer belt.
        Belt = "belt",
        /// A board to slide across, seated.
        SlideBoard = "slide_board",
        /// A powered sit-to-stand aid.
        StandAid = "stand_aid",
        /// A full sling hoist.
        Hoist = "hoist",
        /// A slide sheet or other friction-reducing sheet.
        SlideSheet = "slide_sheet",
        /// A chair whose arms drop or come off.
        RemovableArmChair = "removable_arm_chair",
        /// A hoist made to reach into a car.
        CarHoist = "car_hoist",
        /// A board or roller for sliding from bed to another surface.
        LateralAid = "lateral_aid",
        /// A sling for one limb, for the hoist.
        LimbSling = "limb_sling",
        /// A stool or rest for the foot.
        FootStool = "foot_stool",
        /// A bed whose height and backrest move.
        AdjustableBed = "adjustable_bed",
    }
);
