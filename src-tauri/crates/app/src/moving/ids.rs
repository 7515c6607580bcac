//! Questions of the walk before a move, in the order in which they are asked.

macro_rules! questions {
    ($($(#[$doc:meta])* $name:ident = $id:literal,)+) => {
        /// A question of the walk before a move.
        #[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
        pub(crate) enum MoveQuestion { $($(#[$doc])* $name,)+ }

        impl MoveQuestion {
            /// Every question, in the order of asking.
            pub(crate) const ALL: &'static [Self] = &[$(Self::$name),+];

            /// The stable id.
            #[must_use]
            pub(crate) const fn id(self) -> &'static str {
                match self { $(Self::$name => $id),+ }
            }

            /// The question with this id.
            #[must_use]
            pub(crate) fn from_id(id: &str) -> Option<Self> {
                match id { $($id => Some(Self::$name),)+ _ => None }
            }
        }
    };
}

questions! {
    /// On the floor: looked over, and hurt or not. Before anything else.
    Unhurt = "unhurt",
    /// Anything new in the person, or in the worker.
    New = "new",
    /// Which signs are new in the person.
    Signs = "signs",
    /// Whether all is as the care plan says, or as it was noted.
    Same = "same",
    /// What is not as the care plan says.
    Differs = "differs",
    /// Which limb is held.
    Limb = "limb",
    /// On the floor: gets up alone.
    Independent = "independent",
    /// How far the person can help.
    Able = "able",
    /// Weight on the legs.
    Legs = "legs",
    /// Follows simple steps.
    Follows = "follows",
    /// Strong arms.
    Arms = "arms",
    /// How much staff lift.
    Help = "help",
    /// How heavy the person is.
    Mass = "mass",
    /// How long the limb is held.
    Hold = "hold",
    /// The chair reclines.
    Reclines = "reclines",
    /// Who and what is there.
    Here = "here",
    /// What makes it harder on the hands. Only on demand.
    Harder = "harder",
}
