//! Where a value stands in a command, written like `object.mass_kg` or `tasks[0].h_cm`.

use std::fmt;

/// The longest key shown in a path, in characters. House rule.
const LONGEST_KEY: usize = 48;

#[derive(Debug, Clone, PartialEq, Eq)]
enum Step {
    Key(String),
    Index(usize),
}

/// A path from the command's object inwards.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub(crate) struct Path(Vec<Step>);

impl Path {
    /// Goes into a key. A key that is too long or has other signs than letters, digits, `_` and `-`
    /// is shown as `?`: a path goes into logs and screens.
    pub(crate) fn push_key(&mut self, key: &str) {
        let plain = |sign: char| sign.is_ascii_alphanumeric() || sign == '_' || sign == '-';
        let shown = !key.is_empty() && key.len() <= LONGEST_KEY && key.chars().all(plain);
        self.0.push(Step::Key(if shown {
            key.to_owned()
        } else {
            "?".to_owned()
        }));
    }

    /// Goes into a place in a list.
    pub(crate) fn push_index(&mut self, index: usize) {
        self.0.push(Step::Index(index));
    }

    /// Goes back out.
    pub(crate) fn pop(&mut self) {
        self.0.pop();
    }

    /// Turns a path gathered from the inside out the right way round.
    pub(crate) fn reversed(mut self) -> Self {
        self.0.reverse();
        self
    }

    /// Whether it is the command itself.
    pub(crate) fn is_root(&self) -> bool {
        self.0.is_empty()
    }
}

impl fmt::Display for Path {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        for (place, step) in self.0.iter().enumerate() {
            match step {
                Step::Key(key) if place == 0 => f.write_str(key)?,
                Step::Key(key) => write!(f, ".{key}")?,
                Step::Index(index) => write!(f, "[{index}]")?,
            }
        }
        Ok(())
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn path(build: impl Fn(&mut Path)) -> String {
        let mut path = Path::default();
        build(&mut path);
        path.to_string()
    }

    #[test]
    fn keys_and_places_read_like_code() {
        let text = path(|path| {
            path.push_key("tasks");
            path.push_index(2);
            path.push_key("h_cm");
        });
        assert_eq!(text, "tasks[2].h_cm");
    }

    #[test]
    fn strange_keys_are_not_repeated() {
        for key in ["", "a b", "<b>", "ключ", "\u{0}", &"k".repeat(49)] {
            assert_eq!(path(|path| path.push_key(key)), "?");
        }
    }
}
