//! A hand that leans on the thigh or on furniture: what the statics keep, and the published reductions.
//!
//! Source of the figures: `tests/reference/technique_comparisons.toml`, rows `kingma2016_hand_on_thigh` and
//! `rohlmann2014_support`. How hard people pressed is not in the abstracts: 60 N is what puts hinge and squat into the
//! published range (an estimate, `docs/method/loads.md`).

#![cfg(test)]

use lifting::advise::Request;
use lifting::advise::facts::Facts;
use lifting::body::{Person, Sex};
use lifting::loads::lift::{Lift, NoLift, lift, lift_leaning};
use lifting::loads::spine::LeverArm;
use lifting::loads::statics::{GRAVITY, Joint};
use lifting::loads::support::{HandSupport, NoSupport, Push, Rest};
use lifting::posture::skeleton::Segment;
use lifting::quantity::{BodyMass, Centimetres, Kilograms, Stature};
use lifting::task::{Height, LoadMass, Task};
use lifting::way::Way;
use serde::Deserialize;

/// A young man of the published samples: about 1.80 m and 76 kg.
fn request(kg: f64, height_cm: f64) -> Request {
    let person = Person {
        sex: Some(Sex::Male),
        stature: Some(Stature::clamped(180.0)),
        mass: Some(BodyMass::clamped(76.0)),
        ..Person::default()
    };
    let task = Task {
        start: Some(Height::Measured(Centimetres::clamped(height_cm))),
        awkward: Some(false),
        ..Task::of(LoadMass::Known(Kilograms::clamped(kg)))
    };
    Request::new(person, task)
}

fn leaning(way: Way, kg: f64, height_cm: f64, on: Rest, push: f64) -> Result<Lift, NoLift> {
    let request = request(kg, height_cm);
    let support = HandSupport {
        on,
        push: Push::new(push).unwrap(),
        height: HandSupport::TABLE,
    };
    let facts = Facts::of(&request, &request.task);
    lift_leaning(way, &facts, LeverArm::USUAL, Some(&support))
}

fn free(way: Way, kg: f64, height_cm: f64) -> Lift {
    let request = request(kg, height_cm);
    lift(way, &Facts::of(&request, &request.task), LeverArm::USUAL).unwrap()
}

/// A pencil off the floor.
const PENCIL: (f64, f64) = (0.01, 3.0);
/// What reproduces the published range, N.
const USUAL_PUSH: f64 = 60.0;

#[derive(Deserialize)]
struct Published {
    one_hand_and_support: Vec<Row>,
}

#[derive(Deserialize)]
struct Row {
    id: String,
    pencil_moment_reduction_pct: Option<[f64; 2]>,
    compression_reduction_up_to_pct: Option<f64>,
    reduction_pct: Option<f64>,
}

fn published(id: &str) -> Row {
    let path = concat!(
        env!("CARGO_MANIFEST_DIR"),
        "/../reference/technique_comparisons.toml"
    );
    let all: Published = toml::from_str(&std::fs::read_to_string(path).unwrap()).unwrap();
    all.one_hand_and_support
        .into_iter()
        .find(|row| row.id == id)
        .unwrap()
}

/// By how much less, in percent.
fn less(with: f64, without: f64) -> f64 {
    100.0 * (1.0 - with / without)
}

#[test]
fn a_hand_on_the_thigh_eases_the_back_as_published() {
    let row = published("kingma2016_hand_on_thigh");
    let [least, most] = row.pencil_moment_reduction_pct.unwrap();
    for way in [Way::HipHinge, Way::Squat] {
        let with = leaning(way, PENCIL.0, PENCIL.1, Rest::Thigh, USUAL_PUSH).unwrap();
        let without = free(way, PENCIL.0, PENCIL.1);
        let moment = less(with.peak.moment_nm, without.peak.moment_nm);
        assert!(
            (least - 1.0..=most + 1.0).contains(&moment),
            "{}: {moment:.1} %",
            way.id()
        );
        let pressed = less(
            with.disc_at_peak.compression_n,
            without.disc_at_peak.compression_n,
        );
        let up_to = row.compression_reduction_up_to_pct.unwrap();
        assert!(
            pressed > 5.0 && pressed < up_to + 1.0,
            "{}: {pressed:.1} %",
            way.id()
        );
    }
}

/// Published: compression falls in all techniques but the stoop.
#[test]
fn in_a_free_bend_it_eases_the_disc_least() {
    let eased = |way| {
        let with = leaning(way, PENCIL.0, PENCIL.1, Rest::Thigh, USUAL_PUSH).unwrap();
        less(
            with.disc_at_peak.compression_n,
            free(way, PENCIL.0, PENCIL.1).disc_at_peak.compression_n,
        )
    };
    let bend = eased(Way::FreeBend);
    assert!(bend < eased(Way::HipHinge) && bend < eased(Way::Squat));
}

/// Published: about 30 % less in the body, leaning on a wash basin.
#[test]
fn a_hand_on_furniture_reaches_the_published_third_with_a_push_an_arm_can_give() {
    let third = published("rohlmann2014_support").reduction_pct.unwrap();
    let without = free(Way::HipHinge, PENCIL.0, PENCIL.1);
    let eased = |push| {
        let with = leaning(Way::HipHinge, PENCIL.0, PENCIL.1, Rest::Furniture, push).unwrap();
        less(
            with.disc_at_peak.compression_n,
            without.disc_at_peak.compression_n,
        )
    };
    assert!(eased(40.0) < third && eased(140.0) > third);
}

#[test]
fn the_ground_feels_nothing_of_a_hand_on_the_thigh_and_the_knee_neither() {
    for way in Way::FROM_LOW {
        let (none, some) = (
            leaning(way, 2.0, 10.0, Rest::Thigh, 0.0).unwrap(),
            leaning(way, 2.0, 10.0, Rest::Thigh, 120.0).unwrap(),
        );
        let ground = |lift: &Lift| -> f64 {
            let feet = lift.equilibrium.contacts.iter();
            feet.filter(|contact| contact.at.z < 1e-9)
                .map(|contact| contact.force_n.z)
                .sum()
        };
        let weight = (76.0 + 2.0) * GRAVITY;
        assert!((ground(&none) - weight).abs() < 1e-6, "{}", way.id());
        assert!((ground(&some) - weight).abs() < 1e-6, "{}", way.id());
        for joint in [Joint::KneeLeft, Joint::KneeRight, Joint::AnkleLeft] {
            let (before, after) = (
                none.equilibrium.moment(joint),
                some.equilibrium.moment(joint),
            );
            assert!((before - after).abs() < 1e-9, "{} {}", way.id(), joint.id());
        }
    }
}

#[test]
fn a_hand_on_furniture_takes_its_push_off_the_ground() {
    for way in [Way::HipHinge, Way::Squat, Way::HalfKneelingLunge] {
        let lift = leaning(way, 2.0, 10.0, Rest::Furniture, 80.0).unwrap();
        let contacts = &lift.equilibrium.contacts;
        let ground: f64 = contacts
            .iter()
            .filter(|contact| contact.on != Segment::HandLeft)
            .map(|contact| contact.force_n.z)
            .sum();
        assert!((ground - ((76.0 + 2.0) * GRAVITY - 80.0)).abs() < 1e-6);
        assert!(contacts.iter().all(|contact| contact.force_n.z >= 0.0));
    }
}

#[test]
fn body_load_and_hand_are_in_balance_and_more_push_never_asks_more_of_the_back() {
    let mut solved = 0;
    for way in Way::FROM_LOW {
        for on in Rest::ALL {
            for height in [2.0, 15.0, 30.0, 45.0] {
                for kg in [0.1, 2.0, 8.0, 20.0] {
                    let mut before = f64::INFINITY;
                    for push in [0.0, 30.0, 60.0, 120.0, 240.0] {
                        let Ok(lift) = leaning(way, kg, height, *on, push) else {
                            continue;
                        };
                        solved += 1;
                        let (force, moment) = lift.equilibrium.residual;
                        assert!(force.abs() <= 1e-9 && moment.abs() <= 1e-9);
                        assert!(lift.equilibrium.moment(Joint::L5S1) <= before + 1e-9);
                        before = lift.equilibrium.moment(Joint::L5S1);
                        assert_eq!(lift.equilibrium.load.len(), 1, "the other hand lifts");
                    }
                }
            }
        }
    }
    assert!(solved > 300, "{solved}");
}

#[test]
fn pressing_so_hard_that_the_body_tips_is_refused() {
    let hard = leaning(Way::GolfersLift, 0.1, 3.0, Rest::Furniture, 400.0);
    assert_eq!(hard.err(), Some(NoLift::Support(NoSupport::TipsOver)));
    assert!(Push::new(-1.0).is_err() && Push::new(f64::NAN).is_err() && Push::new(501.0).is_err());
}
