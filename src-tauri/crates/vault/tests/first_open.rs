//! The first vaults of a process may be opened by several threads at the same moment.
//!
//! SQLite calls itself ready before SQLCipher's part is set up (`sqlite3_initialize` in SQLite 3.54.1 lets go
//! of its lock, then runs `SQLITE_EXTRA_INIT`), so a second thread could be refused its key. It can only happen
//! once in a process: the parent runs this very test program again and again as a child. By itself it is rare;
//! with `pthread_mutex_lock` made slow now and then it struck in a third of the processes, and no more since.
#![allow(clippy::unwrap_used, reason = "a test may stop at the first surprise")]

mod support;

use std::env;
use std::process::Command;
use std::sync::Barrier;
use std::thread;

use support::Place;

const PROCESSES: usize = 10;
const THREADS: usize = 8;

#[test]
fn the_first_opens_of_a_process_may_come_together() {
    for process in 0..PROCESSES {
        let child = Command::new(env::current_exe().unwrap())
            .args(["--exact", "the_child", "--ignored", "--test-threads=1"])
            .output()
            .unwrap();
        assert!(
            child.status.success(),
            "process {process}: {}",
            String::from_utf8_lossy(&child.stdout)
        );
    }
}

#[test]
#[ignore = "run as a child by the test above"]
fn the_child() {
    let places: Vec<Place> = (0..THREADS).map(|_| Place::new()).collect();
    let start = Barrier::new(THREADS);
    thread::scope(|scope| {
        for place in &places {
            scope.spawn(|| {
                start.wait();
                drop(place.create());
            });
        }
    });
}
