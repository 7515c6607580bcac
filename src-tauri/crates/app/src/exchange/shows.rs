//! Parcels on the screen.

use std::collections::BTreeMap;

use crate::use_cases::departure::Leaving;
use handoff::{Code, Showing};

/// Most parcels shown side by side (house rule): the oldest makes room.
const MOST: usize = 4;

/// One parcel on the screen.
pub(crate) struct Show {
    /// Its symbols; `None`: too long for symbols, it goes as a file.
    pub(crate) showing: Option<Showing>,
    /// Its bytes.
    pub(crate) parcel: Vec<u8>,
    /// What opens it, if nobody is paired.
    pub(crate) code: Option<Code>,
    /// The name of its file.
    pub(crate) file_name: String,
    /// What leaves with it.
    pub(crate) leaving: Leaving,
}

/// What is being shown, by a number that is used once while the app is open.
#[derive(Default)]
pub(crate) struct Shows {
    last: u32,
    open: BTreeMap<u32, Show>,
}

impl Shows {
    /// Begins to show; gives its id.
    pub(crate) fn add(&mut self, show: Show) -> String {
        self.last = self.last.wrapping_add(1);
        if self.open.len() >= MOST {
            self.open.pop_first();
        }
        self.open.insert(self.last, show);
        self.last.to_string()
    }

    /// What is shown under this id.
    #[must_use]
    pub(crate) fn find(&self, id: &str) -> Option<&Show> {
        self.open.get(&id.parse().ok()?)
    }

    /// Ends a show; whether there was one.
    pub(crate) fn end(&mut self, id: &str) -> bool {
        let id = id.parse().ok();
        id.is_some_and(|id| self.open.remove(&id).is_some())
    }
}
