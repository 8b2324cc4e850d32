//! The page, built into `dist/`: the core as WebAssembly, the scripts and styles as bundles, the rest as it stands.

use crate::command::{Outcome, cargo, command, output_of, run, say};
use crate::content::{files_under, fingerprint, read, read_text, write};
use crate::one_file::{Parts, dense_gzip, one_file};
use crate::{first_load, paths, setup};
use fasterby_core::questions;
use std::collections::BTreeMap;
use std::fs::{self, File};
use std::path::{Path, PathBuf};
use std::process::Command;
use wasm_bindgen_cli_support::Bindgen;

/// What stands on the scripts of a first visit, which are one part: entry in `www`, and the file in `dist` without its extension.
const PAGE_BUNDLES: [(&str, &str); 2] = [("app.js", "app"), ("embed/place.js", SHOWS_ELSEWHERE)];
/// What every script of these begins with.
const FIRST_LOAD: &str = "delivery/first-load.js";
/// What stands on its own.
const OTHER_BUNDLES: [(&str, &str); 5] = [
    ("worker.js", "worker"),
    ("style/index.css", "style"),
    ("embed/element.js", "embed"),
    ("embed/frame.js", "frame"),
    ("embed/frame-height.js", "frame-height"),
];
/// The element for other sites is small, and fetches this when it is near the window.
const SHOWS_ELSEWHERE: &str = "place";
/// Extensions that are copied as they are.
const COPIED: [&str; 8] = ["html", "svg", "png", "ico", "webp", "webmanifest", "json", "txt"];
/// Files of `www` that belong to its tools, not to the page.
const OF_THE_TOOLS: [&str; 2] = ["package", "tsconfig"];

/// What esbuild says of the page's bundles.
pub const WHAT_WAS_BUNDLED: &str = "bundles.json";
const NOT_BUNDLED: &str = "esbuild could not bundle the page: see its message above.";
/// What esbuild makes the script of the page as one file from, and what unpacks that.
const ONE_FILE_ENTRIES: [&str; 2] = ["script=delivery/one-file-start.js", "loader=delivery/one-file-loader.js"];

const PAGE: &str = "index.html";
const OFFLINE: &str = "offline.js";
/// The page as one file, to take away.
pub const ONE_FILE: &str = "fasterby.html";
/// The module that a first visit fetches.
pub const FIRST_WASM: &str = "wasm/first_bg.wasm";
/// The module that answers everything.
pub const WHOLE_WASM: &str = "wasm/whole_bg.wasm";
/// The core is compiled twice: name of the module in `dist/wasm`, and what cargo is told to leave out.
const MODULES: [(&str, &[&str]); 2] = [("first", &["--no-default-features"]), ("whole", &[])];
/// Builds everything that changed.
pub fn build() -> Outcome {
    let _turn = take_turn()?;
    setup::wasm_target()?;
    setup::node_packages()?;
    write_types()?;
    write_tables()?;
    for (name, options) in MODULES {
        bind(name, &compile(name, options)?)?;
    }
    bundle()?;
    copy()?;
    remove_leftovers()?;
    write_one_file()?;
    write_offline()
}

/// The files of the built page that a visitor's browser fetches, by path: the glue and its types are only for building.
pub fn shipped() -> Outcome<BTreeMap<String, Vec<u8>>> {
    let mut files = files_under(&paths::dist())?;
    files.retain(|path, _| !path.starts_with("wasm/") || path == FIRST_WASM || path == WHOLE_WASM);
    Ok(files)
}

/// The TypeScript of the core's structs, as generated now.
pub fn generated_types() -> Outcome<String> {
    // Nothing is computed, so nothing is optimised.
    let soon = ["--config", "profile.dev.package.fasterby-core.opt-level=0"];
    output_of(
        cargo()
            .args(["run", "--quiet", "--package", "fasterby-tests", "--features", "types", "--bin", "types"])
            .args(soon),
        "The types for the page could not be generated from the core: see the compiler's message above.",
    )
}

/// Where the generated types are committed.
pub fn types_file() -> PathBuf {
    paths::www().join("types/core.d.ts")
}

/// Two builds at once would write over each other.
fn take_turn() -> Outcome<File> {
    let path = paths::kept("build.lock");
    write(&path, b"")?;
    File::open(&path)
        .and_then(|file| file.lock().map(|()| file))
        .map_err(|error| format!("The build could not be locked against a second one: {error}."))
}

fn write_types() -> Outcome {
    say("types of the core for the page");
    write(&types_file(), generated_types()?.as_bytes())
}

/// The core's bounds and citations as its module would give them: the page opens with them, before the module is there.
fn write_tables() -> Outcome {
    let tables = serde_json::json!({ "fields": questions::fields(), "sources": questions::sources() });
    write(&tables_file(), tables.to_string().as_bytes())
}

fn tables_file() -> PathBuf {
    paths::kept("tables.json")
}

fn compile(name: &str, options: &[&str]) -> Outcome<PathBuf> {
    say(&format!("core as WebAssembly, the {name} module"));
    // In a folder of its own: cargo would build the one over the other, each time anew.
    let folder = paths::kept("wasm-target").join(name);
    // The module is published: it should not tell where it was built.
    let cargo_home =
        std::env::var("CARGO_HOME").or_else(|_| std::env::var("HOME").map(|home| format!("{home}/.cargo")));
    let renamed = [(cargo_home.ok(), "cargo"), (Some(paths::root().display().to_string()), "fasterby")];
    let flags = renamed.into_iter().filter_map(|(from, to)| Some(format!("--remap-path-prefix={}={to}", from?)));
    run(
        cargo()
            .args(["build", "--quiet", "--release", "--package", "fasterby-web", "--target", "wasm32-unknown-unknown"])
            .args(options)
            .arg(format!("--target-dir={}", folder.display()))
            .env("CARGO_ENCODED_RUSTFLAGS", flags.collect::<Vec<_>>().join("\u{1f}")),
        "The core does not compile for the browser: see the compiler's message above.",
    )?;
    Ok(folder.join("wasm32-unknown-unknown/release/fasterby_web.wasm"))
}

/// Makes a module and its glue, then optimises; skipped while the compiled core and the tools are the same.
fn bind(name: &str, compiled: &Path) -> Outcome {
    let stamp = paths::kept(&format!("wasm-stamp-{name}"));
    let tools = read(&paths::www().join("package-lock.json"))?;
    let inputs = fingerprint([read(compiled)?.as_slice(), tools.as_slice()]);
    let made = |outputs: String| format!("{inputs} {outputs}");
    if read_text(&stamp).is_ok_and(|kept| fingerprint_of_package(name).is_ok_and(|outputs| kept == made(outputs))) {
        return Ok(());
    }
    say("binding and optimising");
    let package = paths::kept("wasm").join(name);
    Bindgen::new()
        .input_path(compiled)
        .out_name(name)
        .typescript(true)
        .remove_name_section(true)
        .remove_producers_section(true)
        // Lets `init()` find the module by itself, as the command-line tool's output does.
        .omit_default_module_path(false)
        .web(true)
        .and_then(|bindgen| bindgen.generate(&package))
        .map_err(|error| format!("wasm-bindgen could not bind the core: {error:#}."))?;
    let module = package.join(format!("{name}_bg.wasm"));
    run(
        command("node").arg(paths::node_program("wasm-opt")).arg("-Os").arg(&module).arg("-o").arg(&module),
        "wasm-opt could not optimise the core: remove www/node_modules and run this again.",
    )?;
    publish(&package, &paths::dist().join("wasm"))?;
    write(&stamp, made(fingerprint_of_package(name)?).as_bytes())
}

/// Puts made files where they are served from, each whole at once: the page may be open meanwhile.
fn publish(from: &Path, to: &Path) -> Outcome {
    files_under(from)?.iter().try_for_each(|(path, content)| write(&to.join(path), content))
}

fn fingerprint_of_package(name: &str) -> Outcome<String> {
    let package = paths::dist().join("wasm");
    Ok(fingerprint([
        read(&package.join(format!("{name}_bg.wasm")))?.as_slice(),
        read(&package.join(format!("{name}.js")))?.as_slice(),
    ]))
}

fn bundle() -> Outcome {
    say("scripts and styles");
    let bundles = bundles();
    // What an earlier run split off is not part of this one.
    if bundles.is_dir() {
        fs::remove_dir_all(&bundles).map_err(|error| format!("The earlier bundles cannot be removed: {error}."))?;
    }
    run(
        split(&PAGE_BUNDLES)
            .arg(format!("--inject:{FIRST_LOAD}"))
            .arg(format!("--metafile={}", paths::kept(WHAT_WAS_BUNDLED).display())),
        NOT_BUNDLED,
    )?;
    run(split(&OTHER_BUNDLES).arg(format!("--external:./{SHOWS_ELSEWHERE}.js")), NOT_BUNDLED)?;
    publish(&bundles, &paths::dist())
}

/// Bundles whose shared and later scripts are parts of their own. Parts lie beside the bundles, so that `import.meta.url` leads
/// to the same folder from each of them.
fn split(bundles_wanted: &[(&str, &str)]) -> Command {
    let mut esbuild = esbuild();
    esbuild
        .args(bundles_wanted.iter().map(|(entry, name)| format!("{name}={entry}")))
        .args(["--format=esm", "--splitting", "--chunk-names=part-[hash]"])
        .arg(format!("--outdir={}", bundles().display()));
    esbuild
}

fn esbuild() -> Command {
    let mut esbuild = command("node");
    esbuild
        .current_dir(paths::www())
        .arg(paths::node_program("esbuild"))
        .args(["--bundle", "--minify", "--target=es2022", "--charset=utf8", "--log-level=warning"])
        .args(MODULES.map(|(name, _)| format!("--alias:fasterby-{name}=../dist/wasm/{name}.js")))
        .arg(format!("--alias:fasterby-tables={}", tables_file().display()));
    esbuild
}

/// Everything in one HTML file. The core is in the script, compressed, and the script is packed once more with it.
fn write_one_file() -> Outcome {
    let folder = paths::kept("one-file");
    let packed = folder.join("core.gz");
    write(&packed, &dense_gzip(&read(&paths::dist().join(WHOLE_WASM))?))?;
    run(
        esbuild()
            .args(ONE_FILE_ENTRIES)
            .args(["--format=iife", "--conditions=one-file", "--loader:.gz=binary"])
            .arg(format!("--alias:fasterby-packed={}", packed.display()))
            // The binding's own way to the module, which is not taken here.
            .arg("--define:import.meta.url=location.href")
            .arg(format!("--outdir={}", folder.display())),
        NOT_BUNDLED,
    )?;
    let dist = paths::dist();
    let parts = Parts {
        style: &read_text(&dist.join("style.css"))?,
        loader: &read_text(&folder.join("loader.js"))?,
        script: &read_text(&folder.join("script.js"))?,
        icon: &read(&dist.join("icon.svg"))?,
    };
    write(&dist.join(ONE_FILE), one_file(&read_text(&paths::www().join(PAGE))?, &parts)?.as_bytes())
}

/// Where esbuild leaves its bundles, and the parts split off them, before they are published.
fn bundles() -> PathBuf {
    paths::kept("bundles")
}

fn is_copied(path: &str) -> bool {
    let has_extension = |extensions: &[&str]| path.rsplit_once('.').is_some_and(|(_, last)| extensions.contains(&last));
    has_extension(&COPIED) && !OF_THE_TOOLS.iter().any(|start| path.starts_with(start))
}

/// What is copied from `www` as it stands.
fn copies() -> Outcome<BTreeMap<String, Vec<u8>>> {
    let mut files = files_under(&paths::www())?;
    files.retain(|path, _| is_copied(path));
    Ok(files)
}

fn copy() -> Outcome {
    let mut files = copies()?;
    if let Some(page) = files.get_mut(PAGE) {
        *page = first_load::with_preloads(&String::from_utf8_lossy(page))?.into_bytes();
    }
    files.iter().try_for_each(|(path, content)| write(&paths::dist().join(path), content))
}

/// Gives the service worker the list of files to keep and a version that changes with any of them.
fn write_offline() -> Outcome {
    let source_path = paths::www().join(OFFLINE);
    if !source_path.is_file() {
        return Ok(());
    }
    let source = read_text(&source_path)?;
    let mut files = shipped()?;
    files.retain(|path, _| path != OFFLINE && path != ONE_FILE);
    let named = files.iter().flat_map(|(path, content)| [path.as_bytes(), content.as_slice()]);
    let version = fingerprint(named.chain([source.as_bytes()]));
    let paths: Vec<&String> = files.keys().collect();
    write(&paths::dist().join(OFFLINE), with_version_and_files(&source, &version, &paths).as_bytes())
}

/// The placeholders stand in the source as names or as strings of the same.
fn with_version_and_files(source: &str, version: &str, files: &[&String]) -> String {
    let version = serde_json::json!(version).to_string();
    let files = serde_json::json!(files).to_string();
    source
        .replace("\"__VERSION__\"", &version)
        .replace("\"__FILES__\"", &files)
        .replace("__VERSION__", &version)
        .replace("__FILES__", &files)
}

/// Removes what an earlier build left in `dist/`, so that only what is built is published.
fn remove_leftovers() -> Outcome {
    let mut kept: Vec<String> = copies()?.into_keys().collect();
    kept.extend([OFFLINE.into(), ONE_FILE.into()]);
    kept.extend(files_under(&bundles())?.into_keys());
    let is_of_a_module = |path: &str| MODULES.iter().any(|(name, _)| path.starts_with(&format!("wasm/{name}")));
    for path in files_under(&paths::dist())?.into_keys() {
        if !kept.contains(&path) && !is_of_a_module(&path) {
            fs::remove_file(paths::dist().join(&path))
                .map_err(|error| format!("`dist/{path}` cannot be removed: {error}."))?;
        }
    }
    Ok(())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_page_is_copied_and_its_tools_are_not() {
        assert!(is_copied("index.html"));
        assert!(is_copied("icons/mark.svg"));
        assert!(is_copied("manifest.webmanifest"));
        assert!(!is_copied("package.json"));
        assert!(!is_copied("package-lock.json"));
        assert!(!is_copied("tsconfig.json"));
        assert!(!is_copied("app.js"));
        assert!(!is_copied("types/core.d.ts"));
    }

    #[test]
    fn placeholders_are_filled_whether_names_or_strings() {
        let file = String::from("app.js");
        let filled = |source| with_version_and_files(source, "1f", &[&file]);
        assert_eq!(filled("const a = __VERSION__, b = __FILES__;"), r#"const a = "1f", b = ["app.js"];"#);
        assert_eq!(filled(r#"const a = "__VERSION__";"#), r#"const a = "1f";"#);
    }
}
