//! What the core says in English is said in every other language of the page too.

#![cfg(not(target_arch = "wasm32"))]

use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::path::{Path, PathBuf};

use fasterby_core::fields::FIELDS;
use fasterby_core::sources::SOURCES;

const LANGUAGES: &[&str] = &["de", "fr"];
/// Citations are the same in every language.
const CITATIONS: &str = "sources.rs";

fn root() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR"))
        .parent()
        .expect("the tests lie in the repository")
        .to_owned()
}

/// The sentences of a language, by the core's own: the strings of the catalogue, a key and its text in turn.
fn catalogue(language: &str) -> BTreeMap<String, String> {
    let path = root().join("www/words").join(language).join("core.js");
    let text = fs::read_to_string(path).expect("a catalogue");
    let (_, entries) = text
        .split_once("export default {")
        .expect("an object of texts");
    let strings = script_strings(entries);
    assert_eq!(strings.len() % 2, 0, "{language}: a key without a text");
    strings
        .chunks(2)
        .map(|pair| (pair[0].clone(), pair[1].clone()))
        .collect()
}

/// The string literals of a script without comments, in either quotes.
fn script_strings(script: &str) -> Vec<String> {
    let mut found = Vec::new();
    let mut rest = script.chars().peekable();
    while let Some(quote) = rest.by_ref().find(|c| matches!(c, '"' | '\'')) {
        found.push(rest_of_literal(&mut rest, quote));
    }
    found
}

fn rust_files(folder: &Path, found: &mut Vec<PathBuf>) {
    for entry in fs::read_dir(folder).expect("a folder") {
        let path = entry.expect("an entry").path();
        if path.is_dir() {
            rust_files(&path, found);
        } else if path.extension().is_some_and(|ending| ending == "rs") {
            found.push(path);
        }
    }
}

/// The string literals of a Rust file, but for comments and its unit tests.
fn literals(source: &str) -> Vec<String> {
    let source = source.split("#[cfg(test)]").next().unwrap_or_default();
    let mut found = Vec::new();
    let mut rest = source.chars().peekable();
    while let Some(c) = rest.next() {
        match c {
            '/' if rest.peek() == Some(&'/') => {
                while rest.peek().is_some_and(|&next| next != '\n') {
                    rest.next();
                }
            }
            // A character such as '"'.
            '\'' => {
                let ahead: Vec<char> = rest.clone().take(3).collect();
                let length = match ahead[..] {
                    ['\\', _, '\''] => 3,
                    [_, '\'', ..] => 2,
                    _ => 0,
                };
                for _ in 0..length {
                    rest.next();
                }
            }
            '"' => found.push(rest_of_literal(&mut rest, '"')),
            _ => {}
        }
    }
    found
}

/// A literal after its opening quote, as Rust and scripts escape alike.
fn rest_of_literal(rest: &mut std::iter::Peekable<std::str::Chars<'_>>, quote: char) -> String {
    let mut literal = String::new();
    while let Some(c) = rest.next() {
        match c {
            _ if c == quote => break,
            '\\' => match rest.next() {
                Some('\n') => {
                    while rest.peek().is_some_and(|next| next.is_whitespace()) {
                        rest.next();
                    }
                }
                Some('n') => literal.push('\n'),
                Some(escaped) => literal.push(escaped),
                None => {}
            },
            other => literal.push(other),
        }
    }
    literal
}

/// What the core may say: literals that end like a sentence, notes of fields, and what was taken from sources.
fn sentences() -> BTreeSet<String> {
    let mut files = Vec::new();
    rust_files(&root().join("core/src"), &mut files);
    let mut said: BTreeSet<String> = files
        .iter()
        .filter(|path| !path.ends_with(CITATIONS))
        .flat_map(|path| literals(&fs::read_to_string(path).expect("a file")))
        .filter(|literal| literal.contains(' ') && literal.ends_with('.'))
        .collect();
    said.extend(FIELDS.iter().map(|field| field.note.to_owned()));
    said.extend(SOURCES.iter().map(|source| source.figure.to_owned()));
    said
}

/// The placeholders of a sentence, the nameless ones by their number.
fn placeholders(sentence: &str) -> BTreeSet<String> {
    let mut nameless = 0;
    let inner = sentence
        .split('{')
        .skip(1)
        .filter_map(|after| after.split_once('}'))
        .map(|(name, _)| name);
    inner
        .map(|name| {
            if name.is_empty() {
                nameless += 1;
                return (nameless - 1).to_string();
            }
            name.to_owned()
        })
        .collect()
}

#[test]
fn every_sentence_of_the_core_is_translated() {
    let said = sentences();
    assert!(said.len() > 100, "the sentences of the core were not found");
    for language in LANGUAGES {
        let book = catalogue(language);
        // A message may be put together from the field and the rest of the sentence.
        let ends_a_sentence =
            |part: &str| book.keys().any(|key| key.ends_with(&format!("}} {part}")));
        let missing: Vec<_> = said
            .iter()
            .filter(|said| !book.contains_key(*said) && !ends_a_sentence(said))
            .collect();
        assert!(
            missing.is_empty(),
            "www/words/{language}/core.js lacks {missing:#?}"
        );
    }
}

#[test]
fn a_translation_has_the_placeholders_of_its_sentence() {
    for language in LANGUAGES {
        for (sentence, translation) in catalogue(language) {
            assert_eq!(
                placeholders(&sentence),
                placeholders(&translation),
                "{language}: {sentence}"
            );
        }
    }
}

#[test]
fn no_translation_is_of_a_sentence_that_is_no_longer_said() {
    let said = sentences();
    for language in LANGUAGES {
        for sentence in catalogue(language)
            .into_keys()
            .filter(|sentence| sentence.ends_with('.'))
        {
            let known = said.contains(&sentence)
                || said
                    .iter()
                    .any(|part| sentence.ends_with(&format!("}} {part}")));
            assert!(known, "{language}: the core does not say “{sentence}”");
        }
    }
}
