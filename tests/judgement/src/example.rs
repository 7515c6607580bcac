//! Requests that read like sentences: a well person before a box on the floor, and what is different today.

use lifting::advise::advice::{Advice, Alternative, Caution, Outcome};
use lifting::advise::change::{Change, ChangeStep};
use lifting::advise::{Request, advise};
use lifting::body::{BackState, Balance, Condition, Kneeling, PainToday, Person, Sex, WarningSign};
use lifting::plan::Plan;
use lifting::progress::History;
use lifting::quantity::{
    Centimetres, Kilograms, Metres, Minutes, PainScore, Repetitions, Stature, Weeks,
};
use lifting::reason::{Reason, ReasonId, Value};
use lifting::task::{Height, HeightWord, Helper, LoadMass, Reach, ReachWord, Task};
use lifting::way::Way;

/// A mass in kilograms.
#[must_use]
pub const fn kg(mass: f64) -> Kilograms {
    Kilograms::clamped(mass)
}

/// A length in centimetres.
#[must_use]
pub const fn cm(length: f64) -> Centimetres {
    Centimetres::clamped(length)
}

/// A time in weeks.
#[must_use]
pub const fn weeks(time: f64) -> Weeks {
    Weeks::clamped(time)
}

/// A pain score.
#[must_use]
pub const fn pain(score: u8) -> PainScore {
    PainScore::of(score)
}

/// A request, told step by step.
#[derive(Debug, Clone)]
pub struct Example {
    /// What will be asked.
    pub request: Request,
}

/// A well person, everything asked, before a box of this many kilograms: on the floor, close, easy to
/// hold, once.
#[must_use]
pub fn a_box(mass: f64) -> Example {
    let none = Some(PainScore::NONE);
    let person = Person {
        pain: PainToday {
            back: none,
            knee_left: none,
            knee_right: none,
            hip_left: none,
            hip_right: none,
            shoulders: none,
        },
        back_state: Some(BackState::Steady),
        balance: Some(Balance::Good),
        fell_last_year: Some(false),
        can_kneel: Some(Kneeling::Yes),
        ..Person::default()
    };
    let task = Task {
        awkward: Some(false),
        start: Some(Height::Word(HeightWord::Floor)),
        reach: Some(Reach::Word(ReachWord::Close)),
        repetitions: Some(Repetitions::ONCE),
        ..Task::of(LoadMass::Known(kg(mass)))
    };
    Example {
        request: Request::new(person, task),
    }
}

impl Example {
    /// Anything else about the person.
    #[must_use]
    pub fn person(mut self, change: impl FnOnce(&mut Person)) -> Self {
        change(&mut self.request.person);
        self
    }

    /// Anything else about the task.
    #[must_use]
    pub fn task(mut self, change: impl FnOnce(&mut Task)) -> Self {
        change(&mut self.request.task);
        self
    }

    /// Back pain now.
    #[must_use]
    pub fn back(self, score: u8) -> Self {
        self.person(|person| person.pain.back = Some(pain(score)))
    }

    /// How the back behaves.
    #[must_use]
    pub fn back_state(self, state: BackState) -> Self {
        self.person(|person| person.back_state = Some(state))
    }

    /// Pain in the left and the right knee.
    #[must_use]
    pub fn knees(self, left: u8, right: u8) -> Self {
        self.person(|person| {
            person.pain.knee_left = Some(pain(left));
            person.pain.knee_right = Some(pain(right));
        })
    }

    /// Pain in the left and the right hip.
    #[must_use]
    pub fn hips(self, left: u8, right: u8) -> Self {
        self.person(|person| {
            person.pain.hip_left = Some(pain(left));
            person.pain.hip_right = Some(pain(right));
        })
    }

    /// Pain in the shoulders.
    #[must_use]
    pub fn shoulders(self, score: u8) -> Self {
        self.person(|person| person.pain.shoulders = Some(pain(score)))
    }

    /// Balance today.
    #[must_use]
    pub fn balance(self, balance: Balance) -> Self {
        self.person(|person| person.balance = Some(balance))
    }

    /// Whether the person can kneel.
    #[must_use]
    pub fn kneels(self, kneeling: Kneeling) -> Self {
        self.person(|person| person.can_kneel = Some(kneeling))
    }

    /// One more warning sign that is true now.
    #[must_use]
    pub fn sign(self, sign: WarningSign) -> Self {
        self.person(|person| {
            person.signs.insert(sign);
        })
    }

    /// One more known condition.
    #[must_use]
    pub fn has(self, condition: Condition) -> Self {
        self.person(|person| {
            person.conditions.insert(condition);
        })
    }

    /// A person of this stature, in cm.
    #[must_use]
    pub fn stature(self, stature: f64) -> Self {
        self.person(|person| person.stature = Stature::new(stature).ok())
    }

    /// A person of this sex.
    #[must_use]
    pub fn sex(self, sex: Sex) -> Self {
        self.person(|person| person.sex = Some(sex))
    }

    /// It stands at this height.
    #[must_use]
    pub fn from(self, word: HeightWord) -> Self {
        self.task(|task| task.start = Some(Height::Word(word)))
    }

    /// It stands at this height, in cm.
    #[must_use]
    pub fn from_cm(self, height: f64) -> Self {
        self.task(|task| task.start = Some(Height::Measured(cm(height))))
    }

    /// It goes to this height, in cm.
    #[must_use]
    pub fn to_cm(self, height: f64) -> Self {
        self.task(|task| task.end = Some(Height::Measured(cm(height))))
    }

    /// It is this far away.
    #[must_use]
    pub fn reach(self, word: ReachWord) -> Self {
        self.task(|task| task.reach = Some(Reach::Word(word)))
    }

    /// It is this far away, in cm.
    #[must_use]
    pub fn reach_cm(self, reach: f64) -> Self {
        self.task(|task| task.reach = Some(Reach::Measured(cm(reach))))
    }

    /// This many times.
    #[must_use]
    pub fn times(self, count: u32) -> Self {
        self.task(|task| task.repetitions = Some(Repetitions::of(count)))
    }

    /// Over this many minutes.
    #[must_use]
    pub fn within_min(self, span: f64) -> Self {
        self.task(|task| task.span = Some(Minutes::clamped(span)))
    }

    /// Carried this many metres.
    #[must_use]
    pub fn carried_m(self, distance: f64) -> Self {
        self.task(|task| task.carry = Some(Metres::clamped(distance)))
    }

    /// Big, floppy, shifting, or without a good grip.
    #[must_use]
    pub fn hard_to_hold(self) -> Self {
        self.task(|task| task.awkward = Some(true))
    }

    /// It can be carried in parts.
    #[must_use]
    pub fn in_parts(self) -> Self {
        self.task(|task| task.divisible = Some(true))
    }

    /// Nobody has weighed it; a guess in kilograms from low to high.
    #[must_use]
    pub fn guessed(self, low: f64, high: f64) -> Self {
        self.task(|task| {
            task.mass = LoadMass::Untested {
                low: Some(kg(low)),
                high: Some(kg(high)),
            };
        })
    }

    /// Nobody has any idea of the mass.
    #[must_use]
    pub fn no_idea_of_the_mass(self) -> Self {
        self.task(|task| {
            task.mass = LoadMass::Untested {
                low: None,
                high: None,
            };
        })
    }

    /// Another person is there, who manages this many kilograms alone if that is known.
    #[must_use]
    pub fn helper(self, own_limit: Option<f64>) -> Self {
        self.task(|task| {
            task.helpers.push(Helper {
                own_limit: own_limit.map(kg),
            });
        })
    }

    /// A clinician's plan.
    #[must_use]
    pub fn plan(mut self, plan: Plan) -> Self {
        self.request.plan = Some(plan);
        self
    }

    /// The last sessions.
    #[must_use]
    pub const fn history(mut self, history: History) -> Self {
        self.request.history = Some(history);
        self
    }

    /// Used this often in the last two weeks.
    #[must_use]
    pub fn recently(mut self, way: Way, times: u32) -> Self {
        self.request.recent.0.insert(way, times);
        self
    }

    /// This many goes of lifting are done today.
    #[must_use]
    pub const fn bouts_today(mut self, done: u32) -> Self {
        self.request.bouts_today = done;
        self
    }

    /// What the judgement says.
    #[must_use]
    pub fn ask(&self) -> Answer {
        Answer(advise(&self.request))
    }
}

/// What the judgement said.
#[derive(Debug, Clone, PartialEq)]
pub struct Answer(
    /// All of it.
    pub Advice,
);

impl Answer {
    /// The outcome's id.
    #[must_use]
    pub const fn outcome(&self) -> &'static str {
        self.0.outcome.id()
    }

    /// Whether it is a plain lift.
    #[must_use]
    pub const fn lifts(&self) -> bool {
        matches!(self.0.outcome, Outcome::Lift { .. })
    }

    /// Ways offered as it stands, best first.
    #[must_use]
    pub fn ways(&self) -> Vec<Way> {
        self.0.outcome.ways()
    }

    /// The way offered first.
    #[must_use]
    pub fn first(&self) -> Option<Way> {
        self.ways().first().copied()
    }

    /// Whether a way is offered, now or once something is changed.
    #[must_use]
    pub fn offers(&self, way: Way) -> bool {
        let once_changed = self.0.outcome.changes().iter();
        self.ways().contains(&way)
            || once_changed
                .flat_map(|change| change.ways.iter())
                .any(|other| other == way)
    }

    /// Why a way may not be used; empty when it may.
    #[must_use]
    pub fn why_not(&self, way: Way) -> Vec<ReasonId> {
        let out = self.0.ruled_out.iter().find(|out| out.way == way);
        out.map(|out| out.because.clone()).unwrap_or_default()
    }

    /// Whether a rule speaks.
    #[must_use]
    pub fn says(&self, id: ReasonId) -> bool {
        self.0.reasons.iter().any(|reason| reason.id == id)
    }

    /// The value of this name that belongs to the first reason with this id.
    #[must_use]
    pub fn value(&self, id: ReasonId, name: &str) -> Option<Value> {
        let reason: &Reason = self.0.reasons.iter().find(|reason| reason.id == id)?;
        let (_, value) = reason.values.iter().find(|(key, _)| *key == name)?;
        Some(*value)
    }

    /// Whether a caution is shown.
    #[must_use]
    pub fn warns(&self, caution: Caution) -> bool {
        self.0.cautions.contains(&caution)
    }

    /// Whether another way to get it done is offered.
    #[must_use]
    pub fn suggests(&self, alternative: Alternative) -> bool {
        self.0.alternatives.contains(&alternative)
    }

    /// The changes, smallest first.
    #[must_use]
    pub fn changes(&self) -> &[Change] {
        self.0.outcome.changes()
    }

    /// The change that consists of this kind of step alone.
    #[must_use]
    pub fn change(&self, kind: &str) -> Option<ChangeStep> {
        self.changes()
            .iter()
            .find_map(|change| match change.steps.as_slice() {
                [step] if step.id() == kind => Some(*step),
                _ => None,
            })
    }

    /// The kinds of the steps of every change.
    #[must_use]
    pub fn kinds(&self) -> Vec<Vec<&'static str>> {
        let kinds = |change: &Change| change.steps.iter().map(ChangeStep::id).collect();
        self.changes().iter().map(kinds).collect()
    }
}
