//! Closed lists whose members have a wire id: one declaration gives the enum, its ids and the list of all.

/// Declares an enum with a stable id for each member.
macro_rules! named {
    ($(#[$doc:meta])* $name:ident { $($(#[$member_doc:meta])* $member:ident = $id:literal),+ $(,)? }) => {
        $(#[$doc])*
        #[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
        pub enum $name { $($(#[$member_doc])* $member),+ }

        impl $name {
            /// Every member, in order.
            pub const ALL: &'static [Self] = &[$(Self::$member),+];

            /// The stable id used on the wire and in texts.
            #[must_use]
            pub const fn id(self) -> &'static str {
                match self { $(Self::$member => $id),+ }
            }

            /// The member with this id.
            #[must_use]
            pub fn from_id(id: &str) -> Option<Self> {
                match id { $($id => Some(Self::$member),)+ _ => None }
            }
        }
    };
}

pub(crate) use named;
