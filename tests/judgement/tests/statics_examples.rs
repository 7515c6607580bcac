//! Worked textbook examples of static loads on the body, to the printed precision.
//!
//! Source: `tests/reference/statics_examples.toml` (OpenStax College Physics 9.6 and University Physics 12.2, CC BY;
//! Serway & Vuille). Their bodies are not ours, so what is checked is the same lever rule our spine model uses.

#![cfg(test)]

use lifting::loads::spine::{LeverArm, disc_forces};
use lifting::posture::skeleton::{Angles, Arm, Leg};

const G: f64 = 9.80;

fn leaning(trunk_deg: f64) -> Angles {
    let leg = Leg {
        thigh: 0.0,
        shank: 0.0,
        foot: 0.0,
    };
    let arm = Arm {
        upper: 0.0,
        fore: 0.0,
    };
    let trunk = trunk_deg.to_radians();
    Angles {
        left: leg,
        right: leg,
        pelvis: trunk,
        trunk,
        arm_left: arm,
        arm_right: arm,
    }
}

#[test]
fn lifting_with_the_back_openstax() {
    // Upper body 55.0 kg at 0.350 m, box 30.0 kg at 0.500 m, back muscle at 0.0800 m: printed 4.20 × 10³ N, 5.04 times
    // the weight of 833 N.
    let moment = (55.0 * 0.350 + 30.0 * 0.500) * G;
    let weight = (55.0 + 30.0) * G;
    let forces = disc_forces(&leaning(61.0), moment, weight, LeverArm::new(0.08).unwrap());
    assert!((forces.muscle_n - 4195.6).abs() < 0.1, "{forces:?}");
    assert!((forces.muscle_n / weight - 5.04).abs() < 0.005);
}

#[test]
fn the_lever_arm_is_a_visible_parameter() {
    // 5 cm gives 1.6 times the muscle force of 8 cm.
    let force =
        |metres| disc_forces(&leaning(45.0), 200.0, 600.0, LeverArm::new(metres).unwrap()).muscle_n;
    assert!((force(0.05) / force(0.08) - 1.6).abs() < 1e-12);
    assert!(LeverArm::new(0.01).is_err() && LeverArm::new(f64::NAN).is_err());
}

#[test]
fn a_weight_straight_above_the_disc_only_presses() {
    let forces = disc_forces(&leaning(0.0), 0.0, 500.0, LeverArm::USUAL);
    assert!((forces.compression_n - 500.0).abs() < 1e-9 && forces.shear_n.abs() < 1e-9);
}
