//! Handing over, told as examples: two phones look at each other's screens. What one shows is drawn as a grey
//! picture, as a camera would see it on a good day, and given to the other.

mod cards;
mod codes;
mod document;
mod files;
mod handing;
mod how_often;
mod many;
mod pairing;
mod plan_fields;
mod plans;
mod practice;
mod practice_parts;
mod refusals;
mod review;
mod scanning;
pub(crate) mod screens;
