//! One posture with its loads, against one inverse-dynamics evaluation of a general library (MuJoCo) on
//! the same postures.

use std::hint::black_box;
use std::io::{BufRead, BufReader, Write};
use std::process::{Child, ChildStdin, ChildStdout, Command, Stdio};

use lifting::advise::Request;
use lifting::advise::facts::Facts;
use lifting::body::Person;
use lifting::loads::lift::lift;
use lifting::loads::spine::LeverArm;
use lifting::loads::statics::equilibrium;
use lifting::quantity::{BodyMass, Centimetres, Kilograms, PainScore, Stature};
use lifting::task::{Height, LoadMass, Task};
use lifting::way::Way;
use serde_json::Value;

use crate::clock::{median, median_ratio, tell, tell_ratio, time};
use crate::place;
use crate::trouble::Trouble;

/// Rounds over all postures, theirs and ours in turn.
const ROUNDS: usize = 7;

/// Measures both, or says what is missing.
///
/// # Errors
/// [`Trouble::Answer`] when the script answers something else than was agreed on.
pub(crate) fn measure() -> Result<(), Trouble> {
    let Some(python) = place::python("dynamics") else {
        println!("not measured: `cargo xtask test --only dynamics` sets up the library first");
        return Ok(());
    };
    let mut theirs = Theirs::start(&python)?;
    let poses: Vec<(Way, Request)> = theirs.questions()?.iter().filter_map(asked).collect();
    println!("{} postures in both", poses.len());
    let (mut library, mut call) = (Vec::new(), Vec::new());
    let (mut whole, mut moments) = (Vec::new(), Vec::new());
    for _ in 0..ROUNDS {
        let answer = theirs.round()?;
        library.push(number(&answer, "evaluation_us")?);
        call.push(number(&answer, "call_us")?);
        let (posture, statics) = ours(&poses);
        whole.push(posture);
        moments.push(statics);
    }
    theirs.end()?;
    tell("ours: posture, path and loads", &whole);
    tell("ours: joint moments of a solved posture", &moments);
    tell("library: one inverse dynamics, called", &library);
    tell("library: an empty call from Python", &call);
    let bare: Vec<f64> = library
        .iter()
        .zip(&call)
        .map(|(all, call)| all - call)
        .collect();
    tell_ratio(
        "whole posture to one evaluation",
        median_ratio(&whole, &library),
    );
    tell_ratio(
        "whole posture to it without the call",
        median_ratio(&whole, &bare),
    );
    tell_ratio(
        "joint moments to it without the call",
        median_ratio(&moments, &bare),
    );
    Ok(())
}

/// Medians over the postures, in microseconds: the whole, and the moments of what is solved already.
fn ours(poses: &[(Way, Request)]) -> (f64, f64) {
    let (mut whole, mut moments) = (Vec::new(), Vec::new());
    for (way, request) in poses {
        let facts = Facts::of(request, &request.task);
        whole.push(time(|| lift(*way, black_box(&facts), LeverArm::USUAL)));
        if let Ok(solved) = lift(*way, &facts, LeverArm::USUAL) {
            // One call is shorter than the clock's own step.
            let many = 20.0;
            let took = time(|| {
                for _ in 0..20 {
                    black_box(equilibrium(black_box(&solved.lowest)));
                }
            });
            moments.push(took / many);
        }
    }
    (median(&whole), median(&moments))
}

/// A question of the script as a request.
fn asked(question: &Value) -> Option<(Way, Request)> {
    let wanted = question.get("way")?.as_str()?;
    let way = Way::ALL.iter().copied().find(|way| way.id() == wanted)?;
    let at = |path: &str| question.pointer(path).and_then(Value::as_f64);
    let length = |path: &str| at(path).map(Centimetres::clamped);
    let pain = |path: &str| {
        let score = question.pointer(path)?.as_u64()?;
        u8::try_from(score).ok().map(PainScore::of)
    };
    let mut person = Person {
        stature: Stature::new(at("/person/stature_cm")?).ok(),
        mass: BodyMass::new(at("/person/mass_kg")?).ok(),
        ..Person::default()
    };
    person.pain.knee_left = pain("/person/knee_left_nrs");
    person.pain.knee_right = pain("/person/knee_right_nrs");
    let task = Task {
        start: length("/object/start_height_cm").map(Height::Measured),
        width: length("/object/width_cm"),
        depth: length("/object/depth_cm"),
        ..Task::of(LoadMass::Known(Kilograms::clamped(at("/object/mass_kg")?)))
    };
    Some((way, Request::new(person, task)))
}

/// The script, which evaluates all postures once for each line it is sent.
struct Theirs {
    script: Child,
    to: ChildStdin,
    from: BufReader<ChildStdout>,
}

const NAME: &str = "the script of the dynamics library";

impl Theirs {
    fn start(python: &std::path::Path) -> Result<Self, Trouble> {
        let mut script = Command::new(python)
            .arg(place::root().join("tests/bench/inverse_dynamics.py"))
            .arg(std::env::current_exe()?)
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
        })
    }

    /// The questions whose postures it has built.
    fn questions(&mut self) -> Result<Vec<Value>, Trouble> {
        match self.line()? {
            Value::Array(questions) => Ok(questions),
            _ => Err(Trouble::Answer(NAME)),
        }
    }

    fn round(&mut self) -> Result<Value, Trouble> {
        writeln!(self.to, "round")?;
        self.line()
    }

    fn line(&mut self) -> Result<Value, Trouble> {
        let mut line = String::new();
        self.from.read_line(&mut line)?;
        serde_json::from_str(&line).map_err(|_| Trouble::Answer(NAME))
    }

    fn end(mut self) -> Result<(), Trouble> {
        drop(self.to);
        self.script.wait()?;
        Ok(())
    }
}

fn number(answer: &Value, name: &str) -> Result<f64, Trouble> {
    answer
        .get(name)
        .and_then(Value::as_f64)
        .ok_or(Trouble::Answer(NAME))
}
