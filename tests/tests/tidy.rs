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
    "recordings",
    "web",
    "web-recordings",
    "www",
    "tests",
    "command-line",
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
/// Functions of which physics and statistics are made.
const PHYSICS: &[&str] = &[
    "pow", "exp", "expm1", "log", "log1p", "log2", "log10", "sqrt", "cbrt", "hypot", "sin", "cos",
    "tan", "asin", "acos", "atan", "atan2", "sinh", "cosh", "tanh",
];
/// Constants of physics, of conversions and of statistics, however many digits are written.
const CONSTANTS: &[f64] = &[
    // Gravity, gases and the standard atmosphere.
    9.8,
    9.81,
    9.806,
    9.80665,
    9.7803253359,
    287.0,
    287.05,
    287.053,
    287.058,
    461.5,
    461.495,
    8.314,
    8.31446,
    8.314462618,
    0.0289644,
    0.0289652,
    0.018015,
    273.15,
    288.15,
    0.0065,
    5.2559,
    5.25588,
    101325.0,
    1013.25,
    101.325,
    1.204,
    1.2041,
    1.225,
    1.226,
    0.622,
    0.378,
    611.2,
    6.112,
    17.62,
    17.67,
    243.12,
    243.5,
    // Conversions.
    1609.344,
    1.609344,
    0.3048,
    0.44704,
    2.23694,
    0.45359237,
    2.20462,
    3.28084,
    13595.1,
    33.8639,
    // The normal distribution.
    0.67449,
    1.2816,
    1.28155,
    1.645,
    1.64485,
    1.96,
    1.959964,
    2.576,
    2.57583,
    0.3989,
    0.39894,
    0.2316419,
    0.31938153,
];
/// What a function or value of statistics calls itself.
const STATISTICS: &[&str] = &[
    "quantile",
    "percentile",
    "variance",
    "gauss",
    "polynomial",
    "regression",
    "normalbelow",
    "normalabove",
    "normalcdf",
    "normaldensity",
    "standardnormal",
    "loglikelihood",
];
/// The units at the end of a quantity's name; `px` is none, as a drawing may multiply what it draws.
const UNITS: &[&str] = &[
    "w", "kg", "m", "m2", "m_s", "s", "n", "j", "kg_m3", "hpa", "pa", "c", "deg", "rad", "h",
];
/// What of this the page may hold, where, and why. One that is no longer needed is to be taken out.
const MAY_COMPUTE: &[(&str, &[&str], &str)] = &[
    (
        "www/units.js",
        &[
            "9.80665",
            "13595.1",
            "0.3048",
            "0.45359237",
            "1609.344",
            "Math.log10",
        ],
        "conversions of units, by definition, and which units are decimal multiples",
    ),
    (
        "www/questions/hold-or-fade/charts.js",
        &["left_s * left_s"],
        "where a ring stands on a share that is drawn",
    ),
    ("www/parts/axes.js", &["Math.log10"], "decimal places"),
    (
        "www/parts/number-text.js",
        &["Math.log10"],
        "decimal places",
    ),
    ("www/parts/number.js", &["Math.log10"], "decimal places"),
    (
        "www/parts/compass.js",
        &["Math.cos", "Math.sin", "Math.sqrt"],
        "where a bearing lies on the screen, and areas that compare",
    ),
    (
        "www/parts/contour-map.js",
        &[
            "Math.hypot",
            "Math.sqrt",
            "Math.sin",
            "Math.cos",
            "Math.atan2",
        ],
        "lines on the screen",
    ),
    (
        "www/parts/keep-still.js",
        &["Math.hypot"],
        "distances on the screen",
    ),
    (
        "www/parts/labels.js",
        &["Math.hypot"],
        "distances on the screen",
    ),
    (
        "www/parts/leg-figure.js",
        &["Math.hypot"],
        "a drawn leg, whose joints the core gives",
    ),
];
/// Questions that the core answers and the page does not ask, and why. One that has a page is to be taken out.
const ANSWERED_WITHOUT_A_PAGE: &[(&str, &str)] = &[(
    "course",
    "asked where the course is given, among the rider's numbers",
)];
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
    for pure in ["core", "recordings"] {
        let library = text(&root().join(pure).join("src/lib.rs"));
        assert!(library.contains("#![forbid(unsafe_code)]"), "{pure}");
    }
    let folders = ["core", "recordings", "web", "web-recordings"];
    for path in folders.map(|folder| with_ending(folder, &["rs"])).concat() {
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

/// A script without its comments and quoted texts, line by line as it stands; templates stay, as they may hold code.
fn code_of(script: &str) -> String {
    let mut code = String::new();
    let mut rest = script;
    while let Some(sign) = rest.chars().next() {
        let end = if rest.starts_with("//") {
            rest.find('\n').unwrap_or(rest.len())
        } else if rest.starts_with("/*") {
            rest.find("*/").map_or(rest.len(), |at| at + 2)
        } else if sign == '"' || (sign == '\'' && !code.ends_with(char::is_alphanumeric)) {
            end_of_quoted(rest, sign)
        } else {
            code.push(sign);
            rest = &rest[sign.len_utf8()..];
            continue;
        };
        code.extend(rest[..end].chars().filter(|c| *c == '\n'));
        code.push(' ');
        rest = &rest[end..];
    }
    code
}

/// Where a text that begins with its quotation mark ends, on its own line at the latest.
fn end_of_quoted(text: &str, mark: char) -> usize {
    let mut escaped = false;
    for (at, c) in text.char_indices().skip(1) {
        if c == '\n' || (c == mark && !escaped) {
            return at + c.len_utf8();
        }
        escaped = c == '\\' && !escaped;
    }
    text.len()
}

/// Whether a name or path such as `answer.power_w.value` says that it is a quantity, and in which unit.
fn unit_of(name: &str) -> Option<&'static str> {
    let name = name.trim_end_matches(".value").rsplit('.').next()?;
    UNITS
        .iter()
        .filter(|unit| {
            name.strip_suffix(**unit)
                .is_some_and(|before| before.ends_with('_'))
        })
        .max_by_key(|unit| unit.len())
        .copied()
}

/// Products of two quantities, and quotients of two in different units: formulas of physics.
fn formulas(line: &str) -> Vec<String> {
    let named = |c: char| c.is_alphanumeric() || "_.".contains(c);
    let mut found = Vec::new();
    for operator in [" * ", " / "] {
        for (at, _) in line.match_indices(operator) {
            let (before, after) = (&line[..at], &line[at + operator.len()..]);
            let left = &before[before.rfind(|c| !named(c)).map_or(0, |i| i + 1)..];
            let right = &after[..after.find(|c| !named(c)).unwrap_or(after.len())];
            if let (Some(one), Some(other)) = (unit_of(left), unit_of(right))
                && (operator == " * " || one != other)
            {
                found.push(format!("{left}{operator}{right}"));
            }
        }
    }
    found
}

/// What of physics and statistics a script computes.
fn computed(script: &str) -> Vec<String> {
    let code = code_of(script);
    let mut found = Vec::new();
    for line in code.lines() {
        let functions = line
            .split("Math.")
            .skip(1)
            .map(|after| words(after, &[]).next().unwrap_or_default());
        found.extend(
            functions
                .filter(|name| PHYSICS.contains(name))
                .map(|name| format!("Math.{name}")),
        );
        // Powers of ten are decimal places.
        found.extend(
            line.replace("10 ** ", "")
                .contains("**")
                .then(|| "**".to_owned()),
        );
        for word in words(line, &['.']) {
            let number = word
                .parse::<f64>()
                .ok()
                .filter(|_| word.contains('.') || word.len() > 2);
            found.extend(
                number
                    .filter(|number| CONSTANTS.contains(number))
                    .map(|_| word.to_owned()),
            );
            let name = word.to_lowercase();
            let is_name = !word.starts_with(|c: char| c.is_ascii_digit());
            found.extend(
                (is_name && STATISTICS.iter().any(|known| name.contains(known)))
                    .then(|| word.to_owned()),
            );
        }
        found.extend(formulas(line));
    }
    found
}

#[test]
fn the_page_computes_no_physics() {
    let mut wrong = BTreeSet::new();
    let mut used = BTreeSet::new();
    for path in with_ending("www", &["js"]) {
        // Words and citations are texts.
        if path.starts_with(root().join("www/words")) {
            continue;
        }
        let file = shown(&path);
        let may = MAY_COMPUTE.iter().find(|(name, ..)| *name == file);
        for what in computed(&text(&path)) {
            match may.and_then(|(_, allowed, _)| allowed.iter().find(|one| **one == what)) {
                Some(one) => {
                    used.insert((file.clone(), *one));
                }
                None => {
                    wrong.insert(format!("{file}: {what}"));
                }
            }
        }
    }
    for (file, allowed, reason) in MAY_COMPUTE {
        for one in allowed
            .iter()
            .filter(|one| !used.contains(&((*file).to_owned(), **one)))
        {
            wrong.insert(format!(
                "{file} no longer holds {one} ({reason}): take the exception out"
            ));
        }
    }
    assert!(wrong.is_empty(), "{}", Vec::from_iter(wrong).join("\n"));
}

#[test]
fn physics_in_a_script_is_found() {
    for (script, what) in [
        ("const g = 9.80665;", "9.80665"),
        ("const r = p / (287.05 * t);", "287.05"),
        ("t - 0.0065 * height", "0.0065"),
        ("low - 1.960 * sd", "1.960"),
        ("speed ** 3", "**"),
        ("speed**3", "**"),
        ("`${Math.exp(x)}`", "Math.exp"),
        ("0.5 * rho * cda_m2 * speed_m_s", "cda_m2 * speed_m_s"),
        (
            "answer.power_w.value / answer.speed_m_s.value",
            "answer.power_w.value / answer.speed_m_s.value",
        ),
        ("export function quantile(sorted) {}", "quantile"),
    ] {
        assert!(
            computed(script).contains(&what.to_owned()),
            "{script}: {:?}",
            computed(script)
        );
    }
    for plain in [
        "// 0.5 * rho * v ** 3, and 9.81",
        "/** 287.05 */ const a_px = 3;",
        "const text = \"9.81 m/s²\";",
        "value_w / other_w",
        "size_px * 1.15",
        "10 ** digits",
    ] {
        assert_eq!(computed(plain), Vec::<String>::new(), "{plain}");
    }
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
    let mut answered = BTreeSet::from_iter(QUESTIONS.iter().map(|question| question.id));
    for (id, reason) in ANSWERED_WITHOUT_A_PAGE {
        assert!(
            !imported.contains(id) && !folder.join(id).exists(),
            "{id} has a page ({reason}): take the exception out"
        );
        assert!(answered.remove(id), "the core does not answer {id}");
    }
    assert_eq!(imported, answered);
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

/// What tries every question from outside, and the README, must know each of them.
#[test]
fn a_question_is_told_of_and_tried_wherever_every_question_is() {
    let readme = text(&root().join("README.md"));
    let hostile = text(&root().join("tests/tests/hostile.rs"));
    let in_browser = text(&root().join("tests/browser/support/questions.js"));
    for question in QUESTIONS.iter().map(|question| question.id) {
        assert!(
            readme.contains(&format!("`{question}`")),
            "README.md does not name {question}"
        );
        let tried = ["extremes_of", "tried_at_extremes"]
            .iter()
            .any(|with| hostile.contains(&format!("{with}(\"{question}\"")));
        assert!(
            tried,
            "tests/tests/hostile.rs does not try the extremes of {question}"
        );
        let has_page = !ANSWERED_WITHOUT_A_PAGE
            .iter()
            .any(|(id, _)| *id == question);
        assert!(
            !has_page || in_browser.contains(&format!("id: \"{question}\"")),
            "tests/browser/support/questions.js does not name {question}"
        );
    }
}

/// A question's file holds declarations and composition; what is longer holds an algorithm, which belongs in a layer below.
const MOST_LINES_OF_A_QUESTION: usize = 300;

#[test]
fn a_file_of_a_question_is_short() {
    let files = with_ending("core/src/questions", &["rs"]);
    assert!(files.len() > 30, "the questions were not found");
    let long: Vec<_> = files
        .iter()
        .map(|path| (shown(path), text(path).lines().count()))
        .filter(|(_, lines)| *lines > MOST_LINES_OF_A_QUESTION)
        .collect();
    assert!(long.is_empty(), "{long:?}");
}

#[test]
fn every_file_of_tests_is_part_of_their_program_and_says_where_it_runs() {
    let program = text(&root().join("tests/tests/main.rs"));
    for path in with_ending("tests/tests", &["rs"]) {
        let part = name(&path).trim_end_matches(".rs");
        if part == "main" {
            continue;
        }
        assert!(
            program.contains(&format!("\nmod {part};\n")),
            "tests/tests/main.rs does not name {part}: nothing runs it"
        );
        let only_natively = text(&path).contains("\n#![cfg(not(target_arch = \"wasm32\"))]\n");
        let in_wasm_too =
            text(&path).contains("use wasm_bindgen_test::wasm_bindgen_test as test;\n");
        assert!(
            only_natively != in_wasm_too,
            "{part} must say whether it runs in wasm too, and with what"
        );
    }
}
