//! The repository's own rules: layers of the core import only those before them, sources are cited, the page computes no
//! physics and asks no other server, and nothing names the machine that it was written on.

#![cfg(not(target_arch = "wasm32"))]

use std::collections::BTreeSet;
use std::fs;
use std::path::{Path, PathBuf};

use fasterby_core::fields::FIELDS;
use fasterby_core::questions::QUESTIONS;
use fasterby_core::sources::{SOURCES, find};

/// The layers of the core: one folder each, which may import itself and those before it.
const LAYERS: &[&str] = &[
    "numerics",
    "inputs",
    "physics",
    "physiology",
    "riding",
    "uncertainty",
    "measuring",
    "scenario",
    "questions",
];
/// What the top level may hold beside folders whose name begins with a dot.
const TOP_LEVEL: &[&str] = &[
    "Cargo.toml",
    "Cargo.lock",
    "biome.json",
    "rust-toolchain.toml",
    "README.md",
    "DEVELOPERS.md",
    "LICENSE",
    "core",
    "web",
    "www",
    "tests",
    "xtask",
];
/// Folders that hold what is built, fetched or found, not what is written.
const NOT_WRITTEN: &[&str] = &[
    "target",
    "dist",
    "node_modules",
    "test-results",
    "playwright-report",
    "__pycache__",
    "corpus",
    "artifacts",
];
/// Functions of which physics is made. Drawing needs some of them, in `parts`; converting units needs none but may.
const PHYSICS: &[&str] = &[
    "pow", "exp", "expm1", "log", "log1p", "log2", "log10", "sqrt", "cbrt", "hypot", "sin", "cos",
    "tan", "asin", "acos", "atan", "atan2", "sinh", "cosh", "tanh",
];
/// Names that a document or picture gives its own language by; nothing is asked of them.
const NAMESPACES: &str = "http://www.w3.org/";

fn root() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR"))
        .parent()
        .expect("the tests lie in the repository")
        .to_owned()
}

fn name(path: &Path) -> &str {
    path.file_name()
        .and_then(|name| name.to_str())
        .expect("a plain name")
}

fn entries(folder: &Path) -> Vec<PathBuf> {
    let mut all: Vec<_> = fs::read_dir(folder)
        .expect("a folder")
        .map(|entry| entry.expect("an entry").path())
        .collect();
    all.sort();
    all
}

/// Every written file below a folder of the repository.
fn written(folder: &str) -> Vec<PathBuf> {
    let mut files = Vec::new();
    let mut folders = vec![root().join(folder)];
    while let Some(folder) = folders.pop() {
        for path in entries(&folder) {
            match path.is_dir() {
                // A folder, or a file in a worktree.
                _ if name(&path) == ".git" => {}
                true if NOT_WRITTEN.contains(&name(&path)) => {}
                true => folders.push(path),
                false => files.push(path),
            }
        }
    }
    files
}

fn with_ending(folder: &str, endings: &[&str]) -> Vec<PathBuf> {
    let ends = |path: &PathBuf| {
        path.extension()
            .and_then(|e| e.to_str())
            .is_some_and(|e| endings.contains(&e))
    };
    written(folder).into_iter().filter(ends).collect()
}

/// The text of a file; none if it is no text.
fn text(path: &Path) -> String {
    String::from_utf8(fs::read(path).expect("a file")).unwrap_or_default()
}

/// A path as people write it.
fn shown(path: &Path) -> String {
    path.strip_prefix(root())
        .unwrap_or(path)
        .display()
        .to_string()
}

/// The words of a text, where letters, digits, `_` and the given signs make a word.
fn words<'a>(text: &'a str, signs: &'a [char]) -> impl Iterator<Item = &'a str> {
    text.split(move |c: char| !(c.is_alphanumeric() || c == '_' || signs.contains(&c)))
}

#[test]
fn a_layer_of_the_core_imports_only_itself_and_those_before_it() {
    let place = |layer: &str| LAYERS.iter().position(|&known| known == layer);
    let mut wrong = Vec::new();
    for path in with_ending("core/src", &["rs"]) {
        let inside = path
            .strip_prefix(root().join("core/src"))
            .expect("a file of the core");
        let first = inside.components().next().expect("a name");
        let layer = first.as_os_str().to_str().expect("a plain name");
        if layer == "lib.rs" {
            continue;
        }
        let Some(own) = place(layer) else {
            wrong.push(format!(
                "{layer} is no layer: move it into one of {LAYERS:?}"
            ));
            continue;
        };
        for after in text(&path).split("crate::").skip(1) {
            let imported = words(after, &[]).next().unwrap_or_default();
            if place(imported).is_none_or(|theirs| theirs > own) {
                wrong.push(format!(
                    "{} imports {imported}, which is above {layer}",
                    shown(&path)
                ));
            }
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

#[test]
fn every_layer_says_what_belongs_there_and_what_it_may_import() {
    for layer in LAYERS
        .iter()
        .filter(|layer| root().join("core/src").join(layer).exists())
    {
        let module = text(&root().join("core/src").join(layer).join("mod.rs"));
        let head: String = module
            .lines()
            .take_while(|line| line.starts_with("//!"))
            .collect();
        assert!(
            head.contains("mport"),
            "core/src/{layer}/mod.rs says nothing of imports"
        );
    }
}

#[test]
fn the_core_and_its_bindings_forbid_what_is_unsafe() {
    assert!(text(&root().join("core/src/lib.rs")).contains("#![forbid(unsafe_code)]"));
    for path in [with_ending("core", &["rs"]), with_ending("web", &["rs"])].concat() {
        let uses = words(&text(&path), &[]).any(|word| word == "unsafe");
        assert!(!uses, "{}", shown(&path));
    }
}

/// A word such as `picard-2008`.
fn is_dated_key(word: &str) -> bool {
    word.split_once('-').is_some_and(|(author, year)| {
        author.len() > 1
            && author.chars().all(|c| c.is_ascii_lowercase())
            && (2..=4).contains(&year.len())
            && year.chars().all(|c| c.is_ascii_digit())
    })
}

#[test]
fn every_source_that_is_cited_exists() {
    let citing = [
        with_ending("core", &["rs"]),
        with_ending("www", &["js", "html"]),
        with_ending("tests/src", &["rs"]),
    ];
    for path in citing.concat() {
        for word in words(&text(&path), &['-']).filter(|word| is_dated_key(word)) {
            assert!(find(word).is_some(), "{} cites {word}", shown(&path));
        }
    }
    for field in FIELDS {
        assert!(
            field.source.is_empty() || find(field.source).is_some(),
            "{} cites {}",
            field.key,
            field.source
        );
    }
}

#[test]
fn every_source_is_cited_somewhere() {
    let citing = [
        with_ending("core", &["rs"]),
        with_ending("www", &["js", "html"]),
        with_ending("tests", &["rs"]),
    ]
    .concat();
    let cited: BTreeSet<String> = citing
        .iter()
        .filter(|path| !path.ends_with("core/src/sources.rs"))
        .flat_map(|path| {
            words(&text(path), &['-'])
                .map(str::to_owned)
                .collect::<Vec<_>>()
        })
        .collect();
    let idle: Vec<_> = SOURCES
        .iter()
        .map(|source| source.key)
        .filter(|&key| !cited.contains(key))
        .collect();
    assert!(idle.is_empty(), "nothing cites {}", idle.join(", "));
}

#[test]
fn nothing_names_a_folder_of_the_machine() {
    let folders: Vec<String> = ["work", "tmp", "root", "home"]
        .iter()
        .map(|name| format!("/{name}/"))
        .collect();
    for path in written("") {
        let text = text(&path);
        for folder in &folders {
            // Part of a longer path is a folder of the house.
            let begins = |at: usize| {
                let before = text[..at].chars().next_back();
                !before.is_some_and(|c| c.is_alphanumeric() || "._-/*".contains(c))
            };
            let named = text
                .match_indices(folder.as_str())
                .any(|(at, _)| begins(at));
            assert!(!named, "{} names {folder}", shown(&path));
        }
    }
}

#[test]
fn the_page_computes_no_physics() {
    let mut wrong = Vec::new();
    for path in with_ending("www", &["js"]) {
        if path.starts_with(root().join("www/parts")) || path.ends_with("www/units.js") {
            continue;
        }
        let text = text(&path);
        let used = text
            .split("Math.")
            .skip(1)
            .map(|after| words(after, &[]).next().unwrap_or_default());
        wrong.extend(
            used.filter(|name| PHYSICS.contains(name))
                .map(|name| format!("{}: Math.{name}", shown(&path))),
        );
        // Powers of ten are decimal places.
        wrong.extend(
            text.replace("10 ** ", "")
                .contains(" ** ")
                .then(|| format!("{}: **", shown(&path))),
        );
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

#[test]
fn the_page_asks_no_other_place() {
    let scripts_and_pages = ["js", "mjs", "html", "css", "svg", "webmanifest"];
    for path in with_ending("www", &scripts_and_pages) {
        let text = text(&path);
        for (at, _) in text.match_indices("://") {
            let begins = text[..at]
                .rfind(|c: char| !c.is_ascii_alphabetic())
                .map_or(0, |i| i + 1);
            let address = &text[begins..];
            assert!(
                address.starts_with(NAMESPACES),
                "{}: {}",
                shown(&path),
                address.lines().next().unwrap_or_default()
            );
        }
        let other_origin = [
            "src=\"//",
            "href=\"//",
            "url(//",
            "import(\"//",
            "fetch(\"//",
        ];
        assert!(
            !other_origin.iter().any(|start| text.contains(start)),
            "{}",
            shown(&path)
        );
    }
}

#[test]
fn the_top_level_holds_what_it_may() {
    let ignored = text(&root().join(".gitignore"));
    for path in entries(&root()) {
        let name = name(&path);
        let built = ignored
            .lines()
            .any(|line| line.trim_start_matches('/') == name);
        assert!(
            name.starts_with('.') || built || TOP_LEVEL.contains(&name),
            "{name} stands at the top level"
        );
    }
}

#[test]
fn every_script_asks_to_be_type_checked() {
    for path in [
        with_ending("www", &["js", "mjs"]),
        with_ending("tests", &["js", "mjs"]),
    ]
    .concat()
    {
        assert!(
            text(&path).starts_with("// @ts-check\n"),
            "{}",
            shown(&path)
        );
    }
}

#[test]
fn the_page_asks_the_questions_that_the_core_answers() {
    let folder = root().join("www/questions");
    let index = text(&folder.join("index.js"));
    let imported: BTreeSet<&str> = index
        .lines()
        .filter(|line| line.starts_with("import "))
        .filter_map(|line| line.split_once("from \"./")?.1.split_once(".js\""))
        .map(|(name, _)| name)
        .collect();
    assert_eq!(
        imported,
        BTreeSet::from_iter(QUESTIONS.iter().map(|question| question.id))
    );
    for path in entries(&folder).iter().filter(|path| path.is_file()) {
        let script = name(path).trim_end_matches(".js");
        assert!(
            script == "index" || imported.contains(script),
            "{} is in no list",
            shown(path)
        );
        if script != "index" {
            let says = text(path).contains(&format!("\"{script}\""));
            assert!(says, "{} goes by another name", shown(path));
        }
    }
}

#[test]
fn a_question_has_a_folder_of_its_own_in_the_core() {
    let folder = root().join("core/src/questions");
    for question in QUESTIONS.iter().map(|question| question.id) {
        let file = folder.join(question.replace('-', "_")).join("mod.rs");
        assert!(file.is_file(), "{}", shown(&file));
    }
}
