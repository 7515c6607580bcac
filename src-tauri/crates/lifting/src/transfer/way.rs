//! The ways to move a person.

use crate::naming::named;

named!(
    /// A way to move a person.
    PeopleWay {
        /// The person does it; staff stand by.
        StandBy = "stand_by",
        /// Stand and pivot, steadied by a belt.
        StandPivotBelt = "stand_pivot_belt",
        /// A powered aid that helps to stand.
        StandAid = "stand_aid",
        /// Seated, across a slide board.
        SlideBoard = "slide_board",
        /// A full sling hoist, two workers.
        HoistTwo = "hoist_two",
        /// A slide sheet or other sliding aid, two workers or more.
        SlideSheetTwo = "slide_sheet_two",
        /// The person rises or shifts by own strength, guided.
        GuidedSelfRise = "guided_self_rise",
        /// By hand, within the published limit.
        ManualLift = "manual_lift",
    }
);

impl PeopleWay {
    /// Whether a device takes the person's weight, or sliding replaces lifting.
    #[must_use]
    pub const fn by_device(self) -> bool {
        matches!(self, Self::StandAid | Self::HoistTwo | Self::SlideSheetTwo)
    }
}
