//! From starting the program to seeing its first screen, against a window that does nothing.
//!
//! Both are release builds and run alone on a screen in memory; the screen's memory is looked at every few
//! milliseconds. What counts is the moment when the picture that stays is there, not a heading before it.
//! A release build cannot be driven by a web driver, and need not be: nothing in the program knows that it
//! is watched.

use std::path::Path;
use std::process::{Child, Command, Stdio};

use crate::clock::{Mark, median_ratio, pause, quantile, tell, tell_ratio};
use crate::place;
use crate::screen::Screen;
use crate::trouble::Trouble;

/// Starts of each, in turn; the first of each warms the disk's cache and is not counted.
const ROUNDS: usize = 21;
/// Between two looks, in milliseconds: often enough to be exact to a hundredth, seldom enough not to be in
/// the way.
const LOOK_MS: u64 = 10;
/// A picture that stays this long is the last one.
const STAYS_US: f64 = 1_200_000.0;
/// A window that shows nothing for so long shows nothing at all.
const LIMIT_US: f64 = 60_000_000.0;
/// So many of the pixels looked at are letters, not a frame or a caret.
const LETTERS: usize = 40;
/// The last picture is there when this share of it is: smooth edges and carets come and go.
const SHARE: f64 = 0.95;
/// The target: at most so many times as long as the bare window (house rule).
const TARGET: f64 = 1.3;

/// Measures both.
///
/// # Errors
/// [`Trouble::NotBuilt`], [`Trouble::Ended`], and what starting gives.
pub(crate) fn measure() -> Result<(), Trouble> {
    let app = place::built("heftwell")?;
    let bare = place::built("bare-window")?;
    let screen = Screen::start()?;
    let (mut ours, mut theirs) = (Vec::new(), Vec::new());
    let mut first = Vec::new();
    let mut blank = (0, 0);
    for round in 0..ROUNDS {
        let there = start(&bare, &screen)?;
        let here = start(&app, &screen)?;
        blank.0 += usize::from(here.is_none());
        blank.1 += usize::from(there.is_none());
        if let (Some(here), Some(there)) = (here, there)
            && round > 0
        {
            theirs.push(there.last_us);
            ours.push(here.last_us);
            first.push(here.first_us);
        }
    }
    println!(
        "{} pairs counted; blank for {} s: app {} times, bare window {} times",
        ours.len(),
        LIMIT_US / 1e6,
        blank.0,
        blank.1
    );
    tell("start: bare window, its page", &theirs);
    tell("start: app, anything at all", &first);
    tell("start: app, first question (new vault)", &ours);
    let ratio = median_ratio(&ours, &theirs);
    tell_ratio("start: app to bare window", ratio);
    // Whatever else the machine does can only add: the quickest starts are the least disturbed.
    let quickest = |us: &[f64]| quantile(us, 0.1);
    let undisturbed = quickest(&ours) / quickest(&theirs);
    println!(
        "{:<44} app {:>13.1} us   bare {:>9.1} us",
        "start: quickest tenth",
        quickest(&ours),
        quickest(&theirs)
    );
    tell_ratio("start: app to bare window, quickest tenth", undisturbed);
    tell_ratio("start: that to the target of 1.3", ratio / TARGET);
    Ok(())
}

/// When something was seen, from the start of the program.
struct Seen {
    first_us: f64,
    last_us: f64,
}

/// Starts a program and ends it again; nothing if its window stayed blank.
fn start(program: &Path, screen: &Screen) -> Result<Option<Seen>, Trouble> {
    let home = tempfile::tempdir()?;
    let began = Mark::now();
    let mut running = Command::new(program)
        .env("DISPLAY", &screen.name)
        .env("GDK_BACKEND", "x11")
        .env("NO_AT_BRIDGE", "1")
        .env("HEFTWELL_HOME", home.path().join("vault"))
        .env("HOME", home.path())
        .env("XDG_CACHE_HOME", home.path())
        .env("XDG_CONFIG_HOME", home.path())
        .env("XDG_DATA_HOME", home.path())
        .env_remove("WAYLAND_DISPLAY")
        .env_remove("TAURI_WEBVIEW_AUTOMATION")
        .stdout(Stdio::null())
        .stderr(Stdio::null())
        .spawn()?;
    let looks = watch(screen, began);
    let ended = running.try_wait()?;
    end(&mut running)?;
    wait_until_empty(screen)?;
    match ended {
        Some(status) => Err(Trouble::Ended(program.to_path_buf(), status)),
        None => Ok(seen(&looks?)),
    }
}

/// Looks until the picture stays: when, and how much was drawn.
fn watch(screen: &Screen, began: Mark) -> Result<Vec<(f64, usize)>, Trouble> {
    let mut looks = Vec::new();
    let (mut drawn, mut since) = (0, 0.0);
    loop {
        let us = began.us();
        let now = screen.drawn()?;
        looks.push((us, now));
        if changed(drawn, now) {
            (drawn, since) = (now, us);
        }
        let stays = drawn > LETTERS && us - since > STAYS_US;
        if stays || us > LIMIT_US {
            return Ok(looks);
        }
        pause(LOOK_MS);
    }
}

/// Whether two counts are two pictures.
fn changed(before: usize, now: usize) -> bool {
    now.abs_diff(before) as f64 > (1.0 - SHARE) * before.max(now) as f64
}

fn seen(looks: &[(f64, usize)]) -> Option<Seen> {
    let (_, last) = *looks.last()?;
    let first = looks.iter().find(|(_, drawn)| *drawn > LETTERS)?;
    // From the end backwards: a busy picture before the last one does not count.
    let stayed = looks
        .iter()
        .rev()
        .take_while(|(_, drawn)| !changed(last, *drawn))
        .last()?;
    (last > LETTERS).then_some(Seen {
        first_us: first.0,
        last_us: stayed.0,
    })
}

fn end(running: &mut Child) -> Result<(), Trouble> {
    running.kill()?;
    running.wait()?;
    Ok(())
}

fn wait_until_empty(screen: &Screen) -> Result<(), Trouble> {
    let began = Mark::now();
    while screen.drawn()? > 0 {
        if began.us() > LIMIT_US {
            return Err(Trouble::Answer("Xvfb"));
        }
        pause(LOOK_MS);
    }
    Ok(())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_picture_that_stays_counts_and_not_the_heading_before_it() {
        let looks = [
            (10.0, 0),
            (20.0, 900),
            (30.0, 900),
            (40.0, 5_000),
            (50.0, 5_050),
        ];
        let seen = seen(&looks).unwrap();
        assert_eq!((seen.first_us, seen.last_us), (20.0, 40.0));
    }

    #[test]
    fn a_blank_window_is_not_seen() {
        assert!(seen(&[(10.0, 0), (20.0, 20)]).is_none());
        assert!(seen(&[]).is_none());
    }
}
