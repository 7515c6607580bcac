//! One declaration for an enum that is kept as an integer code and spoken of by a text id.

/// Declares an enum, its frozen codes, its ids and its CBOR form (one unsigned integer).
macro_rules! codes {
    ($(#[$about:meta])* $name:ident { $($(#[$note:meta])* $variant:ident = $code:literal $id:literal,)+ }) => {
        $(#[$about])*
        #[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
        pub enum $name { $($(#[$note])* $variant,)+ }

        impl $name {
            /// Every value, in code order.
            pub const ALL: &'static [Self] = &[$(Self::$variant),+];

            /// The integer it is kept as; fixed for ever.
            #[must_use]
            pub const fn code(self) -> u32 {
                match self { $(Self::$variant => $code),+ }
            }

            /// The text id the rest of the app knows it by.
            #[must_use]
            pub const fn id(self) -> &'static str {
                match self { $(Self::$variant => $id),+ }
            }

            /// The value with this code, if there is one.
            #[must_use]
            pub const fn from_code(code: u32) -> Option<Self> {
                match code { $($code => Some(Self::$variant),)+ _ => None }
            }

            /// The value with this text id, if there is one.
            #[must_use]
            pub fn from_id(id: &str) -> Option<Self> {
                match id { $($id => Some(Self::$variant),)+ _ => None }
            }
        }

        impl<C> minicbor::Encode<C> for $name {
            fn encode<W: minicbor::encode::Write>(
                &self, encoder: &mut minicbor::Encoder<W>, _: &mut C,
            ) -> Result<(), minicbor::encode::Error<W::Error>> {
                encoder.u32(self.code())?.ok()
            }
        }

        impl<'b, C> minicbor::Decode<'b, C> for $name {
            fn decode(decoder: &mut minicbor::Decoder<'b>, _: &mut C) -> Result<Self, minicbor::decode::Error> {
                let code = decoder.u32()?;
                Self::from_code(code).ok_or_else(|| minicbor::decode::Error::unknown_variant(i64::from(code)))
            }
        }
    };
}

pub(crate) use codes;
