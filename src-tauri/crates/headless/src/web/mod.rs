//! `headless web`: the app's page in a browser on this machine, and nobody else's.
//!
//! The page and its data are as private as the window's, so every request passes the [`gate`]:
//! the address listens on 127.0.0.1 only, on a port the system picks; the first visit needs a
//! one-time token that only this program's output shows and is answered with a cookie; `Host`,
//! `Origin`, method, content type and size are exact.
//!
//! Known limit: a browser sends cookies to every port of a host, so another program that this
//! user starts on 127.0.0.1 and visits with the same browser would see the cookie.

mod embedded;
pub mod gate;
mod reply;
mod secret;
pub mod server;

pub use server::{Answering, Server, ServerError};
