//! Counting syllables by spelling. Good to a few in a hundred, which is all that reading measures need.

use app::words::Language;

/// Syllables of a word; at least one. A figure counts as one.
pub(crate) fn of(word: &str, language: Language) -> usize {
    let letters: Vec<char> = word
        .to_lowercase()
        .chars()
        .filter(|letter| letter.is_alphabetic())
        .collect();
    match language {
        Language::English => english(&letters),
        Language::Spanish => spanish(&letters),
    }
    .max(1)
}

/// Groups of vowels, less endings that are not heard, more for vowels that are heard apart.
fn english(letters: &[char]) -> usize {
    let vowel = |letter: char| "aeiouyáéíóú".contains(letter);
    let mut groups = 0;
    let mut before = ' ';
    for letter in letters {
        if vowel(*letter) && !vowel(before) {
            groups += 1;
        }
        before = *letter;
    }
    let word: String = letters.iter().collect();
    let silent = silent_ending(&word, vowel);
    let apart = ["ia", "io", "eo", "iu", "ua"]
        .iter()
        .map(|pair| word.matches(pair).count())
        .sum::<usize>();
    let not_apart = [
        "tia", "tio", "cia", "cio", "sio", "gio", "qua", "peo", "gua",
    ]
    .iter()
    .map(|sound| word.matches(sound).count())
    .sum::<usize>();
    (groups + apart.saturating_sub(not_apart)).saturating_sub(usize::from(silent))
}

fn silent_ending(word: &str, vowel: impl Fn(char) -> bool) -> bool {
    let before = |ending: &str| {
        word.strip_suffix(ending)
            .and_then(|stem| stem.chars().last())
    };
    let heard_es = ["s", "x", "z", "c", "g", "ch", "sh"];
    if let Some(last) = before("e") {
        let syllabic_l = last == 'l' && word.len() > 3 && ends_in_consonant_l(word);
        return !vowel(last) && !syllabic_l;
    }
    if let Some(last) = before("ed") {
        return !vowel(last) && !"td".contains(last);
    }
    if let Some(stem) = word.strip_suffix("es") {
        let syllabic_l = stem.ends_with('l') && ends_in_consonant_l(&format!("{stem}e"));
        return !stem.chars().last().is_some_and(&vowel)
            && !heard_es.iter().any(|end| stem.ends_with(end))
            && !syllabic_l;
    }
    false
}

/// `table`, `people`: the l is a syllable of its own.
fn ends_in_consonant_l(word: &str) -> bool {
    word.strip_suffix("le")
        .and_then(|stem| stem.chars().last())
        .is_some_and(|last| !"aeiouy".contains(last))
}

/// Nuclei: weak vowels without accent join the vowel beside them; the u of que, qui, gue, gui is not heard.
fn spanish(letters: &[char]) -> usize {
    let mut nuclei = 0;
    let mut before: Option<char> = None;
    for (at, letter) in letters.iter().enumerate() {
        let next = letters.get(at + 1).copied();
        let silent_u = *letter == 'u'
            && matches!(
                at.checked_sub(1).and_then(|at| letters.get(at)),
                Some('q' | 'g')
            )
            && matches!(next, Some('e' | 'i' | 'é' | 'í'));
        let final_y = *letter == 'y' && next.is_none();
        if silent_u {
            continue;
        }
        if !"aeiouáéíóúü".contains(*letter) && !final_y {
            before = None;
            continue;
        }
        let weak = "iuüy".contains(*letter);
        let joins = before.is_some_and(|vowel| (weak && vowel != *letter) || "iuü".contains(vowel));
        let hiatus = "íú".contains(*letter) || before.is_some_and(|vowel| "íú".contains(vowel));
        if !joins || hiatus {
            nuclei += 1;
        }
        before = Some(*letter);
    }
    nuclei
}
