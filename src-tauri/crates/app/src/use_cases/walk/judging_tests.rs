use super::{goes_today, recent};
use crate::convert::{advice, body, moment};
use crate::walk::answer::Answers;
use crate::walk::flow::{Purpose, Walk};
use chrono::{DateTime, Duration, FixedOffset};
use lifting::advise::{Request, advise};
use lifting::body::Person;
use lifting::task::{LoadMass, Task};
use lifting::way::Way;
use record::Lift;
use vault::{Cost, Folder, Passphrase, Vault};

fn now() -> DateTime<FixedOffset> {
    DateTime::parse_from_rfc3339("2026-11-25T09:12:00+01:00").unwrap()
}

/// A lift of nothing in particular.
fn lift(days_ago: i64, done: bool, way: Option<record::Way>) -> Lift {
    let at = moment::to_record(now() - Duration::days(days_ago));
    let none = Answers::default();
    let walk = Walk {
        purpose: Purpose::Lift,
        given: &none,
        kept: &none,
        whole_list_due: false,
        times_a_bout: None,
    };
    let any = Request::new(
        Person::default(),
        Task::of(LoadMass::Untested {
            low: None,
            high: None,
        }),
    );
    Lift {
        at,
        title: "A lift".to_owned(),
        task: record::Task::default(),
        body: body::to_record(&walk, at, None),
        advice: advice::to_record(&advise(&any)),
        done,
        way,
        instead: None,
    }
}

#[test]
fn ways_used_in_the_last_two_weeks_are_counted() {
    let folder = tempfile::tempdir().unwrap();
    let passphrase = Passphrase::new("seven wet pears in a row".to_owned());
    let mut counting = 0_u8;
    let mut random = |bytes: &mut [u8]| {
        counting = counting.wrapping_add(1);
        bytes.fill(counting);
        Ok(())
    };
    let folder = Folder::new(folder.path());
    let vault = Vault::create_at_cost(&folder, &passphrase, Cost::FLOOR, &mut random).unwrap();
    for kept in [
        lift(15, true, Some(record::Way::Hinge)),
        lift(13, true, Some(record::Way::Hinge)),
        lift(2, true, Some(record::Way::Squat)),
        lift(1, true, Some(record::Way::Squat)),
        lift(1, true, None),
        lift(0, false, None),
    ] {
        vault.lifts().add(&kept).unwrap();
    }
    let used = recent(&vault, now()).unwrap().0;
    assert_eq!(
        used.into_iter().collect::<Vec<_>>(),
        [(Way::HipHinge, 1), (Way::Squat, 2)]
    );
    assert_eq!(goes_today(&vault, now()).unwrap(), 0, "decided against");
    let (today, yesterday) = (lift(0, true, None), lift(1, true, None));
    for kept in [&today, &today, &yesterday] {
        vault.lifts().add(kept).unwrap();
    }
    assert_eq!(goes_today(&vault, now()).unwrap(), 2);
}
