//! Reading symbols off bad frames: our reader, zbar and zxing-cpp on the very same pixels, one frame after
//! another.

use std::fmt;
use std::io::{BufRead, BufReader, Write};
use std::path::Path;
use std::process::{Child, ChildStdin, ChildStdout, Command, Stdio};

use handoff::{Symbol, read_grey};
use serde_json::Value;

use crate::clock::{Mark, median, quantile};
use crate::place;
use crate::trouble::Trouble;

/// Versions, each with the most characters of the alphanumeric mode at level L (ISO/IEC 18004:2015, table 7).
const VERSIONS: [(u8, usize); 5] = [(10, 395), (15, 758), (20, 1249), (25, 1853), (30, 2520)];

/// Sizes of a frame.
const SIZES: [(u32, u32); 2] = [(640, 480), (1280, 720)];

/// What is wrong with a frame.
const CASES: [&str; 9] = [
    "tilted", "turned", "blurred", "shaken", "noisy", "flat", "glare", "moire", "combined",
];

/// Held too far away: told apart, since fewer pixels a module are beyond any reader.
const FAR: &str = "far";

/// Frames of each case.
const EACH: u32 = 12;

/// The characters of Base45 (RFC 9285, table 1).
const BASE45: &[u8; 45] = b"0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ $%*+-./:";

/// Measures, or says what is missing.
///
/// # Errors
/// [`Trouble::Answer`] when the script answers something else than was agreed on.
pub(crate) fn measure() -> Result<(), Trouble> {
    let Some(python) = place::python("handoff_peers") else {
        println!("not measured: `cargo xtask test --only peers` sets up the decoders first");
        return Ok(());
    };
    let folder = tempfile::tempdir()?;
    let mut camera = Camera::start(&python, folder.path())?;
    for size in SIZES {
        println!("\n{} x {}", size.0, size.1);
        println!(
            "version                    ours   zbar  zxing-cpp   our time to the quicker of them"
        );
        for (version, length) in VERSIONS {
            let text = text_of(length, u64::from(version));
            let symbol =
                Symbol::of_sequence(&text, version).map_err(|_| Trouble::Answer(DRAWING))?;
            write_symbol(&symbol, &folder.path().join(format!("v{version}.pgm")))?;
            let mut all = Tally::default();
            for case in CASES {
                for number in 0..EACH {
                    camera.shoot(&mut all, &text, size, version, case, number)?;
                }
            }
            println!("{version:>7}, nine cases      {all}");
            let mut far = Tally::default();
            for number in 0..EACH {
                camera.shoot(&mut far, &text, size, version, FAR, number)?;
            }
            println!("{version:>7}, held far away   {far}");
        }
    }
    camera.end()
}

/// What was read, and how quickly.
#[derive(Debug, Default)]
struct Tally {
    frames: u32,
    ours: u32,
    zbar: u32,
    zxing: u32,
    wrong: u32,
    ratios: Vec<f64>,
}

impl fmt::Display for Tally {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let share = |read: u32| 100.0 * f64::from(read) / f64::from(self.frames.max(1));
        write!(
            f,
            "{:>5.1}  {:>5.1}  {:>9.1}   median {:.2}, p95 {:.2}; {} wrong of {}",
            share(self.ours),
            share(self.zbar),
            share(self.zxing),
            median(&self.ratios),
            quantile(&self.ratios, 0.95),
            self.wrong,
            self.frames
        )
    }
}

/// The script that makes frames and asks the others.
struct Camera<'a> {
    script: Child,
    to: ChildStdin,
    from: BufReader<ChildStdout>,
    folder: &'a Path,
}

const NAME: &str = "the script of the other decoders";
const DRAWING: &str = "the drawing of symbols";

impl<'a> Camera<'a> {
    fn start(python: &Path, folder: &'a Path) -> Result<Self, Trouble> {
        let mut script = Command::new(python)
            .arg(place::root().join("tests/bench/degraded_frames.py"))
            .arg(folder)
            .env("OMP_NUM_THREADS", "1")
            .stdin(Stdio::piped())
            .stdout(Stdio::piped())
            .spawn()?;
        let to = script.stdin.take().ok_or(Trouble::Answer(NAME))?;
        let from = script.stdout.take().ok_or(Trouble::Answer(NAME))?;
        Ok(Self {
            script,
            to,
            from: BufReader::new(from),
            folder,
        })
    }

    /// One frame, read by all three.
    fn shoot(
        &mut self,
        tally: &mut Tally,
        text: &str,
        (width, height): (u32, u32),
        version: u8,
        case: &str,
        number: u32,
    ) -> Result<(), Trouble> {
        writeln!(self.to, "{width} {height} {version} {case} {number}")?;
        let mut line = String::new();
        self.from.read_line(&mut line)?;
        let answer: Value = serde_json::from_str(&line).map_err(|_| Trouble::Answer(NAME))?;
        let pixels = std::fs::read(self.folder.join("frame.grey"))?;
        let start = Mark::now();
        let ours = read_grey(&pixels, width, height).ok();
        let took = start.us();
        let us = |name: &str| answer.get(name).and_then(Value::as_f64);
        let (Some(zbar_us), Some(zxing_us)) = (us("zbar_us"), us("zxing_us")) else {
            return Err(Trouble::Answer(NAME));
        };
        let read = |name: &str| answer.get(name).and_then(Value::as_str) == Some(text);
        tally.frames += 1;
        tally.ours += u32::from(ours.as_deref() == Some(text));
        tally.wrong += u32::from(ours.is_some_and(|ours| ours != text));
        tally.zbar += u32::from(read("zbar"));
        tally.zxing += u32::from(read("zxing"));
        tally.ratios.push(took / zbar_us.min(zxing_us));
        Ok(())
    }

    fn end(mut self) -> Result<(), Trouble> {
        drop(self.to);
        self.script.wait()?;
        Ok(())
    }
}

/// Characters without a pattern, the same in every run (a linear congruential generator, Knuth's constants).
fn text_of(length: usize, seed: u64) -> String {
    let mut state = seed;
    (0..length)
        .filter_map(|_| {
            state = state
                .wrapping_mul(6_364_136_223_846_793_005)
                .wrapping_add(1_442_695_040_888_963_407);
            let place = usize::try_from((state >> 33) % 45).ok()?;
            BASE45.get(place).copied().map(char::from)
        })
        .collect()
}

/// One pixel a module, as a portable grey map.
fn write_symbol(symbol: &Symbol, path: &Path) -> Result<(), Trouble> {
    let grey = symbol.grey(1).map_err(|_| Trouble::Answer(DRAWING))?;
    let mut file = format!("P5\n{} {}\n255\n", grey.width, grey.height).into_bytes();
    file.extend_from_slice(&grey.pixels);
    Ok(std::fs::write(path, file)?)
}
