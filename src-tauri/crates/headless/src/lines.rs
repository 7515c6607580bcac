//! `headless lines`: one JSON line in, one JSON line out, until the input ends.

use std::io::{self, BufRead, Read, Write};

use crate::{Answer, LONGEST_LINE};

/// Answers every line of `input` on `output`, in order, each as soon as it is there.
///
/// An empty line is skipped. A line that is too long is read past, never held in memory whole,
/// and is handed on cut just over the bound, so that the door itself refuses it; bytes that are
/// not UTF-8 are replaced, so that the door sees no valid JSON.
///
/// # Errors
/// Only when `input` cannot be read or `output` cannot be written.
pub fn answer_lines(
    mut input: impl BufRead,
    mut output: impl Write,
    answer: &Answer,
) -> io::Result<()> {
    let mut bytes = Vec::new();
    while read_line(&mut input, &mut bytes)? {
        let line = String::from_utf8_lossy(&bytes);
        if line.trim().is_empty() {
            continue;
        }
        let mut reply = answer(&line);
        reply.push('\n');
        output.write_all(reply.as_bytes())?;
        output.flush()?;
    }
    Ok(())
}

/// Reads one line without its end into `bytes`; false at the end of the input.
fn read_line(input: &mut impl BufRead, bytes: &mut Vec<u8>) -> io::Result<bool> {
    bytes.clear();
    let most = LONGEST_LINE as u64 + 2;
    if input.by_ref().take(most).read_until(b'\n', bytes)? == 0 {
        return Ok(false);
    }
    let whole = bytes.last() == Some(&b'\n');
    if whole {
        bytes.pop();
    } else if bytes.len() > LONGEST_LINE {
        skip_line(input)?;
    }
    Ok(true)
}

/// Reads past the rest of a line.
fn skip_line(input: &mut impl BufRead) -> io::Result<()> {
    loop {
        let held = input.fill_buf()?;
        if held.is_empty() {
            return Ok(());
        }
        let end = held.iter().position(|byte| *byte == b'\n');
        let (used, done) = end.map_or((held.len(), false), |at| (at + 1, true));
        input.consume(used);
        if done {
            return Ok(());
        }
    }
}

#[cfg(test)]
mod tests {
    use std::sync::Arc;

    use super::*;

    fn lengths(input: &[u8]) -> String {
        let answer: Answer = Arc::new(|line| line.len().to_string());
        let mut output = Vec::new();
        answer_lines(input, &mut output, &answer).unwrap();
        String::from_utf8(output).unwrap()
    }

    #[test]
    fn each_line_gets_one_line_and_the_last_needs_no_end() {
        assert_eq!(lengths(b"{}\n{\"a\":1}\n\n   \r\nlast"), "2\n7\n4\n");
        assert_eq!(lengths(b""), "");
    }

    #[test]
    fn a_line_of_any_length_is_cut_just_over_the_bound_and_the_next_is_whole() {
        for length in [
            LONGEST_LINE - 1,
            LONGEST_LINE,
            LONGEST_LINE + 1,
            LONGEST_LINE + 2,
            5_000_000,
        ] {
            let mut input = vec![b'x'; length];
            input.extend_from_slice(b"\nnext\n");
            let output = lengths(&input);
            let (first, rest) = output.split_once('\n').unwrap();
            let first: usize = first.parse().unwrap();
            assert_eq!(first > LONGEST_LINE, length > LONGEST_LINE, "{length}");
            assert!(first <= LONGEST_LINE + 2);
            assert_eq!(rest, "4\n");
        }
    }

    #[test]
    fn bytes_that_are_no_text_reach_the_door_as_replaced_text() {
        assert_eq!(lengths(b"\xff\xfe\n"), "6\n");
    }
}
