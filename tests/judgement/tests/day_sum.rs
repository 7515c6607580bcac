//! A day's sum of modelled loads beside the own usual days: arithmetic on paper, and what holds for every day.

#![cfg(test)]

use judgement::example::a_box;
use lifting::loads::exposure::{BesideUsual, DaySum, ENOUGH_DAYS, Handled, beside_usual};
use lifting::quantity::{NewtonMetres, Newtons, Repetitions};
use proptest::prelude::*;

fn handled(newtons: f64, newton_metres: f64, times: u32) -> Handled {
    Handled {
        compression: Newtons::of(newtons),
        moment: NewtonMetres::of(newton_metres),
        times: Repetitions::of(times),
    }
}

fn near(found: BesideUsual, compression: f64, moment: f64) {
    assert!((found.compression - compression).abs() < 1e-12, "{found:?}");
    assert!((found.moment - moment).abs() < 1e-12, "{found:?}");
}

#[test]
fn two_lifts_of_2_kn_beside_days_of_one_are_twice_as_much() {
    let usual = vec![DaySum::of(&[handled(2000.0, 100.0, 1)]); 5];
    let today = DaySum::of(&[handled(2000.0, 100.0, 2)]);
    near(beside_usual(&today, &usual).unwrap(), 2.0, 2.0);
    near(beside_usual(&DaySum::of(&[]), &usual).unwrap(), 0.0, 0.0);
}

/// 1 × 3000 + 4 × 1500 = 9000 N beside a middle day of 6000 N; 200 + 4 × 50 = 400 N·m beside 500.
#[test]
fn every_lift_counts_as_often_as_it_was_done_and_the_middle_day_is_usual() {
    let day = |newtons, newton_metres| DaySum::of(&[handled(newtons, newton_metres, 1)]);
    let usual = [
        day(1000.0, 500.0),
        day(90_000.0, 500.0),
        day(6000.0, 500.0),
        day(5000.0, 500.0),
        day(8000.0, 500.0),
    ];
    let today = DaySum::of(&[handled(3000.0, 200.0, 1), handled(1500.0, 50.0, 4)]);
    near(beside_usual(&today, &usual).unwrap(), 1.5, 0.8);
}

#[test]
fn too_few_days_or_days_of_rest_say_nothing() {
    let day = DaySum::of(&[handled(2000.0, 100.0, 1)]);
    let mut usual = vec![day; ENOUGH_DAYS - 1];
    assert_eq!(beside_usual(&day, &usual), None);
    usual.push(DaySum::of(&[]));
    assert_eq!(beside_usual(&day, &usual), None, "a day without a lift");
    usual.push(day);
    assert!(beside_usual(&day, &usual).is_some());
}

#[test]
fn it_takes_what_the_model_found() {
    let loads = a_box(6.0).ask().0.loads;
    let once = Handled::of(&loads[0], Repetitions::ONCE);
    let usual = vec![DaySum::of(&[once]); 5];
    let thrice = DaySum::of(&[Handled::of(&loads[0], Repetitions::of(3))]);
    near(beside_usual(&thrice, &usual).unwrap(), 3.0, 3.0);
}

fn any_day() -> impl Strategy<Value = Vec<Handled>> {
    let lift = (1.0..9000.0f64, 1.0..500.0f64, 1u32..200)
        .prop_map(|(force, moment, times)| handled(force, moment, times));
    prop::collection::vec(lift, 1..12)
}

fn any_days() -> impl Strategy<Value = Vec<Vec<Handled>>> {
    prop::collection::vec(any_day(), ENOUGH_DAYS..15)
}

fn sums(days: &[Vec<Handled>]) -> Vec<DaySum> {
    days.iter().map(|day| DaySum::of(day)).collect()
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(1_000))]

    #[test]
    fn one_more_lift_is_never_less(day in any_day(), more in any_day(), usual in any_days()) {
        let usual = sums(&usual);
        let before = beside_usual(&DaySum::of(&day), &usual).unwrap();
        let after = beside_usual(&DaySum::of(&[day, more].concat()), &usual).unwrap();
        prop_assert!(after.compression > before.compression && after.moment > before.moment);
    }

    #[test]
    fn order_does_not_matter(day in any_day(), usual in any_days()) {
        let (mut turned, mut later) = (day.clone(), usual.clone());
        turned.reverse();
        later.reverse();
        let one = beside_usual(&DaySum::of(&day), &sums(&usual)).unwrap();
        let other = beside_usual(&DaySum::of(&turned), &sums(&later)).unwrap();
        prop_assert!((one.compression / other.compression - 1.0).abs() < 1e-9);
        prop_assert!((one.moment / other.moment - 1.0).abs() < 1e-9);
    }

    /// The unsure lever arm of the back muscle, and a model that is off by a factor, fall out of the comparison.
    #[test]
    fn a_factor_on_every_load_changes_nothing(day in any_day(), usual in any_days(), factor in 0.2..5.0f64) {
        let scaled = |day: &Vec<Handled>| -> Vec<Handled> {
            day.iter()
                .map(|lift| handled(lift.compression.value() * factor, lift.moment.value() * factor, lift.times.count()))
                .collect()
        };
        let one = beside_usual(&DaySum::of(&day), &sums(&usual)).unwrap();
        let days: Vec<Vec<Handled>> = usual.iter().map(scaled).collect();
        let other = beside_usual(&DaySum::of(&scaled(&day)), &sums(&days)).unwrap();
        prop_assert!((one.compression / other.compression - 1.0).abs() < 1e-9);
        prop_assert!((one.moment / other.moment - 1.0).abs() < 1e-9);
    }

    #[test]
    fn it_is_always_a_plain_number(force in any::<f64>(), moment in any::<f64>(), times in any::<u32>(), usual in any_days()) {
        let force = if force.is_infinite() { f64::NAN } else { force.clamp(-1e12, 1e12) };
        let moment = if moment.is_infinite() { f64::NAN } else { moment.clamp(-1e12, 1e12) };
        let found = beside_usual(&DaySum::of(&[handled(force, moment, times)]), &sums(&usual)).unwrap();
        prop_assert!(found.compression.is_finite() && found.compression >= 0.0);
        prop_assert!(found.moment.is_finite() && found.moment >= 0.0);
    }
}
