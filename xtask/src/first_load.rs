//! What a first visit fetches before it sees an answer, found in what esbuild says of its bundles.

use crate::command::Outcome;
use crate::content::read_text;
use crate::{build, paths};
use serde_json::Value;
use std::collections::{BTreeMap, BTreeSet};

/// What a first visit fetches before it sees an answer, but for the files of a version.
const FILES: [&str; 4] = ["index.html", "start.js", "icon.svg", "manifest.webmanifest"];
/// What it fetches of a version, but for the parts of its scripts.
const FILES_OF_A_VERSION: [&str; 3] = [STYLE, SCRIPT, build::FIRST_WASM];
const STYLE: &str = "style.css";
const SCRIPT: &str = "app.js";
/// Scripts that `app.js` imports when they are wanted, and wants at a first visit: the question that opens, and its words.
const WANTED_FIRST: [&str; 5] = [
    "questions/power-or-drag/view.js",
    "words/en/page.js",
    "words/en/power-or-drag.js",
    "words/en/shared.js",
    "words/en/units.js",
];

/// Those of the shipped files that a first visit fetches before it sees an answer.
pub fn files(version: &str) -> Outcome<BTreeSet<String>> {
    let scripts = scripts(&outputs()?, &WANTED_FIRST);
    let versioned = FILES_OF_A_VERSION
        .into_iter()
        .map(String::from)
        .chain(scripts);
    let versioned = versioned.map(|path| format!("{version}/{path}"));
    Ok(FILES
        .into_iter()
        .map(String::from)
        .chain(versioned)
        .collect())
}

/// The page that opens a version: it names the version and its style, and has a line for each part of its scripts, so that the
/// browser fetches them beside each other instead of one after the other. Words are left out: only the scripts know the reader's
/// language.
pub fn page_of(version: &str, page: &str) -> Outcome<String> {
    let wanted: Vec<&str> = WANTED_FIRST
        .iter()
        .copied()
        .filter(|source| !source.starts_with("words/"))
        .collect();
    let mut scripts = scripts(&outputs()?, &wanted);
    scripts.insert(SCRIPT.into());
    Ok(opening(version, page, &scripts))
}

fn opening(version: &str, page: &str, scripts: &BTreeSet<String>) -> String {
    let lines: String = scripts
        .iter()
        .map(|path| format!("<link rel=\"modulepreload\" href=\"{version}/{path}\">\n"))
        .collect();
    page.replacen("<html ", &format!("<html data-version=\"{version}\" "), 1)
        .replacen(
            &format!("href=\"{STYLE}\""),
            &format!("href=\"{version}/{STYLE}\""),
            1,
        )
        .replacen("</head>", &(lines + "</head>"), 1)
}

/// By the name of its file, the language of each part that holds one catalogue of texts.
pub fn languages() -> Outcome<BTreeMap<String, String>> {
    let outputs = outputs()?;
    let all = outputs.as_object().into_iter().flatten();
    Ok(all
        .filter_map(|(path, output)| {
            let catalogue = output["entryPoint"].as_str()?.strip_prefix("words/")?;
            let (language, _) = catalogue.split_once('/')?;
            let (_, name) = path.rsplit_once('/')?;
            Some((name.to_string(), language.to_string()))
        })
        .collect())
}

fn outputs() -> Outcome<Value> {
    let bundled: Value = serde_json::from_str(&read_text(&paths::kept(build::WHAT_WAS_BUNDLED))?)
        .map_err(|error| {
        format!("What esbuild says of its bundles cannot be read: {error}.")
    })?;
    Ok(bundled["outputs"].clone())
}

/// The parts of `app.js` and of the scripts that it wants first.
fn scripts(outputs: &Value, wanted: &[&str]) -> BTreeSet<String> {
    let wanted: Vec<String> = wanted
        .iter()
        .filter_map(|source| part_of(outputs, source))
        .collect();
    let parts = wanted
        .iter()
        .map(String::as_str)
        .chain([SCRIPT])
        .flat_map(|script| needed_at_once(outputs, script));
    parts.chain(wanted.iter().cloned()).collect()
}

/// The part that was made of a script which is imported only when it is wanted.
fn part_of(outputs: &Value, source: &str) -> Option<String> {
    let mut made = outputs.as_object()?.iter();
    let (path, _) = made.find(|(_, output)| output["entryPoint"] == source)?;
    path.rsplit('/').next().map(String::from)
}

/// The parts that a script imports, and those that they import, but for what is imported only when it is wanted.
fn needed_at_once(outputs: &Value, script: &str) -> BTreeSet<String> {
    let mut found = BTreeSet::new();
    let mut ahead = vec![script.to_string()];
    while let Some(script) = ahead.pop() {
        let named = |path: &str| path.rsplit('/').next() == Some(script.as_str());
        let output = outputs
            .as_object()
            .and_then(|outputs| outputs.iter().find(|(path, _)| named(path)));
        let imports = output
            .and_then(|(_, output)| output["imports"].as_array())
            .into_iter()
            .flatten();
        let at_once = imports.filter(|import| import["kind"] == "import-statement");
        for path in at_once.filter_map(|import| import["path"].as_str()?.rsplit('/').next()) {
            if found.insert(path.to_string()) {
                ahead.push(path.to_string());
            }
        }
    }
    found
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_is_imported_only_when_wanted_is_not_needed_at_once() {
        let outputs = serde_json::json!({
            "out/app.js": { "imports": [
                { "path": "out/part-A.js", "kind": "import-statement" },
                { "path": "out/part-C.js", "kind": "dynamic-import" },
            ] },
            "out/part-A.js": { "imports": [{ "path": "out/part-B.js", "kind": "import-statement" }] },
            "out/part-C.js": { "imports": [{ "path": "out/part-D.js", "kind": "import-statement" }] },
        });
        assert_eq!(
            needed_at_once(&outputs, "app.js"),
            ["part-A.js", "part-B.js"].map(String::from).into()
        );
    }

    #[test]
    fn the_page_names_its_version_and_the_parts_of_its_scripts() {
        let page = "<html lang=\"en\"><head><link href=\"style.css\"></head><p></p>";
        let opened = opening(
            "v-1f",
            page,
            &["app.js", "part-A.js"].map(String::from).into(),
        );
        let lines = "<link rel=\"modulepreload\" href=\"v-1f/app.js\">\n\
                     <link rel=\"modulepreload\" href=\"v-1f/part-A.js\">\n";
        let head = format!("<head><link href=\"v-1f/style.css\">{lines}</head>");
        assert_eq!(
            opened,
            format!("<html data-version=\"v-1f\" lang=\"en\">{head}<p></p>")
        );
    }
}
