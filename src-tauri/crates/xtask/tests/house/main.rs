//! Rules of the house that no compiler checks: which package may use which, what the screens may
//! do, how long a file may be. Each rule's checker is first tried on made-up offenders.

#![cfg(test)]

mod arrows;
mod manifests;
mod network;
mod pages;
mod screens;
mod sizes;
mod tree;
