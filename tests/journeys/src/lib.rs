//! Drives the real app as a person does: the window through WebKitWebDriver under Xvfb, and the
//! loopback page in Chromium with a phone's measures, with the same journeys for both.
//!
//! The client is our own: the few commands of the W3C WebDriver standard that journeys use, over
//! plain sockets. A missing driver is a failure with its package's name, never a skipped test.
//!
//! A journey is a function that takes a [`phone::Phone`]; [`in_both_engines!`] makes a test of it
//! for each engine. Pictures of every screen that a journey asks for are left in
//! `target/journeys/`.

#![allow(
    clippy::panic,
    reason = "all of this crate is test code: a journey stops at the first surprise"
)]

pub mod audit;
pub mod binaries;
pub mod child;
pub mod driver;
pub mod engines;
pub mod handing;
pub mod http;
pub mod layout;
pub mod person;
pub mod phone;
pub mod picture;
pub mod tour;
pub mod trouble;
pub mod wait;

/// Makes two tests of one journey: `NAME::window` and `NAME::browser`.
#[macro_export]
macro_rules! in_both_engines {
    ($($journey:ident),+ $(,)?) => { $(
        mod $journey {
            #[test]
            fn window() {
                super::$journey(&mut $crate::phone::Phone::new(
                    $crate::engines::Kind::Window, stringify!($journey)));
            }
            #[test]
            fn browser() {
                super::$journey(&mut $crate::phone::Phone::new(
                    $crate::engines::Kind::Browser, stringify!($journey)));
            }
        }
    )+ };
}
