//! The page, built into `dist/`: the core as WebAssembly, the scripts and styles as bundles, the rest as it stands.

use crate::command::{Outcome, cargo, command, output_of, program_of_tests, run, say};
use crate::content::{files_under, fingerprint, integrity, read, read_text, write};
use crate::one_file::{Parts, one_file, two_bytes_a_sign};
use crate::{command_line, first_load, packed, paths, setup};
use serde_json::{Value, json};
use std::collections::BTreeMap;
use std::fs::{self, File};
use std::path::{Path, PathBuf};
use std::process::Command;
use wasm_bindgen_cli_support::Bindgen;

/// What stands on the scripts of a first visit, which are one part: entry in `www`, and the file of a version without its extension.
const PAGE_BUNDLES: [(&str, &str); 2] = [("app.js", "app"), ("embed/place.js", SHOWS_ELSEWHERE)];
/// What every script of these begins with.
const FIRST_LOAD: &str = "delivery/first-load.js";
/// What stands on its own.
const OTHER_BUNDLES: [(&str, &str); 5] = [
    ("worker.js", "worker"),
    ("recordings/worker.js", "recordings-worker"),
    ("style/index.css", "style"),
    ("embed/element.js", "element"),
    ("embed/frame.js", "frame"),
];
/// The element for other sites is small, and fetches this when it is near the window.
const SHOWS_ELSEWHERE: &str = "place";
/// Scripts whose addresses stay: each is small, and finds the version that it wants.
const ENTRIES: [(&str, &str); 4] = [
    ("delivery/start.js", "start"),
    ("delivery/embed-v1.js", "embed/v1"),
    ("delivery/frame-entry.js", "embed/frame"),
    ("embed/frame-height.js", "frame-height"),
];
/// The address that other sites used before addresses had versions.
const EARLIER_EMBED: (&str, &str) = ("embed.js", "import \"./embed/v1.js\";\n");
/// What pages of other origins load besides the files of a version.
pub const OPEN_TO_OTHERS: [&str; 4] = [
    EARLIER_EMBED.0,
    "embed/v1.js",
    "frame-height.js",
    VERSION_FILE,
];
/// The page that other sites put into a frame.
pub const FRAME: &str = "embed/frame.html";
/// Says which version lies there.
const VERSION_FILE: &str = "version.json";
/// Names the files of a version, in its folder.
const LIST_FILE: &str = "files.json";
/// How the name of a version's folder begins.
const VERSION_MARK: &str = "v-";
/// Extensions that are copied as they are.
const COPIED: [&str; 8] = [
    "html",
    "svg",
    "png",
    "ico",
    "webp",
    "webmanifest",
    "json",
    "txt",
];
/// Files of `www` that belong to its tools, not to the page.
const OF_THE_TOOLS: [&str; 2] = ["package", "tsconfig"];

/// What esbuild says of the page's bundles.
pub const WHAT_WAS_BUNDLED: &str = "bundles.json";
const NOT_BUNDLED: &str = "esbuild could not bundle the page: see its message above.";
/// What esbuild makes the script of the page as one file from, and what unpacks that.
const ONE_FILE_ENTRIES: [&str; 2] = [
    "script=delivery/one-file-start.js",
    "loader=delivery/one-file-loader.js",
];

const PAGE: &str = "index.html";
/// The page by the address that visitors use, from the folder that it lies in.
const PAGE_ADDRESS: &str = "./";
const OFFLINE: &str = "offline.js";
/// The page as one file, to take away.
pub const ONE_FILE: &str = "fasterby.html";
/// The module that a first visit fetches, in the folder of its version.
pub const FIRST_WASM: &str = "wasm/first_bg.wasm";
/// The module that answers everything.
const WHOLE_WASM: &str = "wasm/whole_bg.wasm";
/// The module that reads recordings, fetched by their worker when a first file is opened.
pub const RECORDINGS_WASM: &str = "wasm/recordings_bg.wasm";
/// The core is compiled twice, the readers of recordings by themselves: name of the module, its crate, and what cargo is told to
/// leave out.
const MODULES: [(&str, &str, &[&str]); 3] = [
    ("first", "fasterby-web", &["--no-default-features"]),
    ("whole", "fasterby-web", &[]),
    (RECORDINGS, "fasterby-web-recordings", &[]),
];
const RECORDINGS: &str = "recordings";

/// The module that answers everything is to be fast too; a first visit waits for the size of its own, and reading a file is soon
/// done in any case. For size (`-Os`), the module that answers everything takes nine times as long to optimise and is 1 % smaller.
fn optimised_for(name: &str) -> &'static [&'static str] {
    if name == "whole" {
        &["-O2"]
    } else {
        &["-Oz", "--converge"]
    }
}

/// Files by path, with `/` between names.
pub type Files = BTreeMap<String, Vec<u8>>;

/// Builds everything that changed, and gives the name of the version.
pub fn build() -> Outcome<String> {
    let _turn = take_turn()?;
    setup::wasm_target()?;
    setup::node_packages()?;
    tables_and_modules()?;
    write_integrity()?;
    bundle()?;
    let versioned = versioned()?;
    let version = format!("{VERSION_MARK}{}", fingerprint_of(&versioned));
    let mut site = entries(&version)?;
    site.insert(ONE_FILE.into(), made_one_file(&versioned)?);
    site.extend(
        versioned
            .into_iter()
            .map(|(path, content)| (format!("{version}/{path}"), content)),
    );
    let kept = kept_offline(&site, &first_load::languages()?);
    site.insert(
        VERSION_FILE.into(),
        json!({ "version": version }).to_string().into_bytes(),
    );
    site.insert(OFFLINE.into(), offline(&kept)?);
    publish(&site)?;
    Ok(version)
}

/// Makes what is compiled side by side: each module waits long for one processor.
fn tables_and_modules() -> Outcome {
    std::thread::scope(|scope| {
        let mut making = Vec::from(MODULES.map(|(name, package, options)| {
            scope.spawn(move || bind(name, &compile(name, package, options)?))
        }));
        making.push(scope.spawn(write_tables));
        making.into_iter().try_for_each(|made| {
            made.join()
                .unwrap_or_else(|_| Err("A part of the build broke off.".into()))
        })
    })
}

/// The files of the built page, by path.
pub fn shipped() -> Outcome<Files> {
    files_under(&paths::dist())
}

/// Whether a file lies in the folder of a version, and so never changes.
pub fn is_of_a_version(path: &str) -> bool {
    path.starts_with(VERSION_MARK) && path.contains('/')
}

/// Whether the page keeps a file on a device for use without a network.
pub fn is_kept_offline(path: &str) -> bool {
    let shows_elsewhere = ["place.js", "frame.js"].map(|name| format!("/{name}"));
    let is_for_others = OPEN_TO_OTHERS.contains(&path)
        || path.starts_with("embed/")
        || shows_elsewhere.iter().any(|name| path.ends_with(name));
    // The whole module answers all that the first one does.
    !is_for_others && ![OFFLINE, ONE_FILE].contains(&path) && !path.ends_with(FIRST_WASM)
}

/// The TypeScript of the core's structs, as generated now.
pub fn generated_types() -> Outcome<String> {
    // Nothing is computed, so nothing is optimised.
    let soon = ["--config", "profile.dev.package.fasterby-core.opt-level=0"];
    output_of(
        program_of_tests("types", "types").args(soon),
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

/// Writes the types that the page's scripts are checked against. The page itself has no need of them.
pub fn write_types() -> Outcome {
    say("types of the core for the page");
    write(&types_file(), generated_types()?.as_bytes())
}

/// The core's bounds and citations as its module would give them: the page opens with them, before the module is there. The notes
/// of fields, the citations, the core's sentences and the most of each, which are seldom needed, are files of their own, fetched with what
/// needs them.
fn write_tables() -> Outcome {
    say("the core's tables");
    let mut tables: Value =
        serde_json::from_str(&command_line::tables()?).map_err(|error| error.to_string())?;
    for (name, file) in [
        ("notes", notes_file()),
        ("sources", sources_file()),
        ("messages", messages_file()),
        ("most", most_file()),
    ] {
        let apart = tables
            .as_object_mut()
            .and_then(|tables| tables.remove(name));
        write(&file, apart.unwrap_or_default().to_string().as_bytes())?;
    }
    write(&tables_file(), tables.to_string().as_bytes())
}

fn notes_file() -> PathBuf {
    paths::kept("notes.json")
}

fn messages_file() -> PathBuf {
    paths::kept("messages.json")
}

fn sources_file() -> PathBuf {
    paths::kept("sources.json")
}

fn most_file() -> PathBuf {
    paths::kept("most.json")
}

/// Where the core's tables lie once the page is built.
pub fn tables_file() -> PathBuf {
    paths::kept("tables.json")
}

fn compile(name: &str, package: &str, options: &[&str]) -> Outcome<PathBuf> {
    say(&format!("WebAssembly, the {name} module"));
    // In a folder of its own: cargo would build the one over the other, each time anew.
    let folder = paths::kept("wasm-target").join(name);
    // The module is published: it should not tell where it was built.
    let cargo_home = std::env::var("CARGO_HOME")
        .or_else(|_| std::env::var("HOME").map(|home| format!("{home}/.cargo")));
    let renamed = [
        (cargo_home.ok(), "cargo"),
        (Some(paths::root().display().to_string()), "fasterby"),
    ];
    let flags = renamed
        .into_iter()
        .filter_map(|(from, to)| Some(format!("--remap-path-prefix={}={to}", from?)));
    run(
        cargo()
            .args([
                "build",
                "--quiet",
                "--release",
                "--package",
                package,
                "--target",
                "wasm32-unknown-unknown",
            ])
            .args(options)
            .arg(format!("--target-dir={}", folder.display()))
            .env(
                "CARGO_ENCODED_RUSTFLAGS",
                flags.collect::<Vec<_>>().join("\u{1f}"),
            ),
        "The core or the readers of recordings do not compile for the browser: see the compiler's message above.",
    )?;
    let file = package.replace('-', "_");
    Ok(folder.join(format!("wasm32-unknown-unknown/release/{file}.wasm")))
}

/// Makes a module and its glue, then optimises; skipped while the compiled core and the tools are the same.
fn bind(name: &str, compiled: &Path) -> Outcome {
    let stamp = paths::kept(&format!("wasm-stamp-{name}"));
    let tools = read(&paths::www().join("package-lock.json"))?;
    let inputs = fingerprint([read(compiled)?.as_slice(), tools.as_slice()]);
    let made = |outputs: String| format!("{inputs} {outputs}");
    if read_text(&stamp)
        .is_ok_and(|kept| fingerprint_of_package(name).is_ok_and(|outputs| kept == made(outputs)))
    {
        return Ok(());
    }
    say("binding and optimising");
    let package = package(name);
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
    let module = module_file(name);
    run(
        command("node")
            .arg(paths::node_program("wasm-opt"))
            .args(optimised_for(name))
            .arg(&module)
            .arg("-o")
            .arg(&module),
        "wasm-opt could not optimise the core: remove www/node_modules and run this again.",
    )?;
    write(&stamp, made(fingerprint_of_package(name)?).as_bytes())
}

fn fingerprint_of_package(name: &str) -> Outcome<String> {
    let package = package(name);
    Ok(fingerprint([
        read(&package.join(format!("{name}_bg.wasm")))?.as_slice(),
        read(&package.join(format!("{name}.js")))?.as_slice(),
    ]))
}

/// Where a module lies with its glue. The page's type checker looks here too.
fn package(name: &str) -> PathBuf {
    paths::kept("wasm").join(name)
}

fn module_file(name: &str) -> PathBuf {
    package(name).join(format!("{name}_bg.wasm"))
}

/// The modules' hashes, which go into the scripts: a module of another version is refused.
fn write_integrity() -> Outcome {
    let modules = MODULES
        .iter()
        .map(|(name, ..)| Ok((*name, integrity(&read(&module_file(name))?))));
    let modules: BTreeMap<&str, String> = modules.collect::<Outcome<_>>()?;
    write(&integrity_file(), json!(modules).to_string().as_bytes())
}

fn integrity_file() -> PathBuf {
    paths::kept("integrity.json")
}

fn bundle() -> Outcome {
    say("scripts and styles");
    let bundles = bundles();
    // What an earlier run split off is not part of this one.
    if bundles.is_dir() {
        fs::remove_dir_all(&bundles)
            .map_err(|error| format!("The earlier bundles cannot be removed: {error}."))?;
    }
    run(
        split(&PAGE_BUNDLES)
            .arg(format!("--inject:{FIRST_LOAD}"))
            .arg(format!(
                "--metafile={}",
                paths::kept(WHAT_WAS_BUNDLED).display()
            )),
        NOT_BUNDLED,
    )?;
    run(
        split(&OTHER_BUNDLES).arg(format!("--external:./{SHOWS_ELSEWHERE}.js")),
        NOT_BUNDLED,
    )?;
    run(
        esbuild_of(&ENTRIES).arg(format!("--outdir={}", entry_bundles().display())),
        NOT_BUNDLED,
    )
}

/// Bundles whose shared and later scripts are parts of their own. Parts lie beside the bundles, so that `import.meta.url` leads
/// to the same folder from each of them.
fn split(wanted: &[(&str, &str)]) -> Command {
    let mut esbuild = esbuild_of(wanted);
    esbuild
        .args(["--splitting", "--chunk-names=part-[hash]"])
        .arg(format!("--outdir={}", version_bundles().display()));
    esbuild
}

/// Modules, each from an entry in `www`.
fn esbuild_of(wanted: &[(&str, &str)]) -> Command {
    let mut esbuild = esbuild();
    esbuild
        .args(wanted.iter().map(|(entry, name)| format!("{name}={entry}")))
        .arg("--format=esm");
    esbuild
}

fn esbuild() -> Command {
    let mut esbuild = command("node");
    esbuild
        .current_dir(paths::www())
        .arg(paths::node_program("esbuild"))
        .args([
            "--bundle",
            "--minify",
            "--target=es2022",
            "--charset=utf8",
            "--log-level=warning",
        ])
        .args(MODULES.map(|(name, ..)| {
            format!(
                "--alias:fasterby-{name}={}",
                package(name).join(format!("{name}.js")).display()
            )
        }))
        .arg(format!(
            "--alias:d3-interpolate={}",
            paths::www().join("parts/interpolate-numbers.js").display()
        ))
        .arg(format!(
            "--alias:fasterby-integrity={}",
            integrity_file().display()
        ))
        .arg(format!(
            "--alias:fasterby-tables={}",
            tables_file().display()
        ))
        .arg(format!("--alias:fasterby-notes={}", notes_file().display()))
        .arg(format!(
            "--alias:fasterby-messages={}",
            messages_file().display()
        ))
        .arg(format!(
            "--alias:fasterby-sources={}",
            sources_file().display()
        ))
        .arg(format!("--alias:fasterby-most={}", most_file().display()));
    esbuild
}

/// Where esbuild leaves its bundles.
fn bundles() -> PathBuf {
    paths::kept("bundles")
}

/// Those of a version, and the parts split off them.
fn version_bundles() -> PathBuf {
    bundles().join("version")
}

fn entry_bundles() -> PathBuf {
    bundles().join("entries")
}

/// What changes from version to version, by path in the folder of one.
fn versioned() -> Outcome<Files> {
    let mut files = files_under(&version_bundles())?;
    for (name, ..) in MODULES {
        files.insert(format!("wasm/{name}_bg.wasm"), read(&module_file(name))?);
    }
    let list = json!(files.keys().collect::<Vec<_>>()).to_string();
    files.insert(LIST_FILE.into(), list.into_bytes());
    Ok(files)
}

/// What keeps its address, for a version.
fn entries(version: &str) -> Outcome<Files> {
    let mut files = files_under(&paths::www())?;
    files.retain(|path, _| is_copied(path));
    if let Some(page) = files.get_mut(PAGE) {
        *page = first_load::page_of(version, &String::from_utf8_lossy(page))?.into_bytes();
    }
    for (path, content) in files_under(&entry_bundles())? {
        let script = String::from_utf8_lossy(&content);
        files.insert(
            path,
            with_values(&script, &[("__VERSION__", json!(version))]).into_bytes(),
        );
    }
    files.insert(EARLIER_EMBED.0.into(), EARLIER_EMBED.1.into());
    Ok(files)
}

fn is_copied(path: &str) -> bool {
    let has_extension = |extensions: &[&str]| {
        path.rsplit_once('.')
            .is_some_and(|(_, last)| extensions.contains(&last))
    };
    has_extension(&COPIED) && !OF_THE_TOOLS.iter().any(|start| path.starts_with(start))
}

/// Everything in one HTML file: what the page opens with packed together, and what it needs only then.
fn made_one_file(versioned: &Files) -> Outcome<Vec<u8>> {
    let folder = paths::kept("one-file");
    run(
        esbuild()
            .args(ONE_FILE_ENTRIES)
            .args(["--format=iife", "--conditions=one-file"])
            // The binding's own way to the module, which is not taken here.
            .arg("--define:import.meta.url=location.href")
            .arg(format!("--outdir={}", folder.display())),
        NOT_BUNDLED,
    )?;
    let part = |path: &str| versioned.get(path).map_or(&[][..], Vec::as_slice);
    let script = read_text(&folder.join("script.js"))?;
    let style = part("style.css");
    let packed = [
        packed_parts(&folder, "page", &[style, script.as_bytes()])?,
        packed_parts(
            &folder,
            "modules",
            &[part(WHOLE_WASM), part(RECORDINGS_WASM)],
        )?,
    ];
    let parts = Parts {
        style: &String::from_utf8_lossy(style),
        loader: &read_text(&folder.join("loader.js"))?,
        script: &script,
        packed: &packed.join("\n"),
        icon: &read(&paths::www().join("icon.svg"))?,
    };
    let page = one_file(&read_text(&paths::www().join(PAGE))?, &parts)?;
    Ok(two_bytes_a_sign(&page))
}

/// The element that holds parts of the page as one file; `delivery/packed-parts.js` finds it by its name.
fn packed_parts(folder: &Path, name: &str, parts: &[&[u8]]) -> Outcome<String> {
    let packed = packed_once(&folder.join(name).with_extension("lzma"), &parts.concat())?;
    Ok(packed::element(name, parts, &packed))
}

/// Packs as densely as possible, which takes a second, unless just this was packed there before.
fn packed_once(path: &Path, content: &[u8]) -> Outcome<Vec<u8>> {
    let stamp = path.with_added_extension("stamp");
    let wanted = integrity(content);
    if !path.is_file() || !read(&stamp).is_ok_and(|present| present == wanted.as_bytes()) {
        write(path, &packed::lzma(content)?)?;
        write(&stamp, wanted.as_bytes())?;
    }
    read(path)
}

/// Files by address, each with the hash that it must have.
type Hashes = BTreeMap<String, String>;

/// What the page keeps on a device: what every reader needs, and the texts of each language.
#[derive(Default)]
struct Kept {
    files: Hashes,
    texts: BTreeMap<String, Hashes>,
}

fn kept_offline(site: &Files, languages: &BTreeMap<String, String>) -> Kept {
    let mut kept = Kept::default();
    for (path, content) in site.iter().filter(|(path, _)| is_kept_offline(path)) {
        let files = match language_of(languages, path) {
            Some(language) => kept.texts.entry(language.to_string()).or_default(),
            None => &mut kept.files,
        };
        let address = if path == PAGE { PAGE_ADDRESS } else { path };
        files.insert(address.to_string(), integrity(content));
    }
    kept
}

/// The language that a file of a version has texts of.
pub fn language_of<'a>(languages: &'a BTreeMap<String, String>, path: &str) -> Option<&'a str> {
    let (_, name) = path.rsplit_once('/')?;
    languages.get(name).map(String::as_str)
}

/// Gives the service worker the files to keep, and a version that changes with any of them.
fn offline(kept: &Kept) -> Outcome<Vec<u8>> {
    let source = read_text(&paths::www().join(OFFLINE))?;
    let named = kept
        .files
        .iter()
        .chain(kept.texts.values().flatten())
        .flat_map(|(address, hash)| [address.as_bytes(), hash.as_bytes()]);
    let version = fingerprint(named.chain([source.as_bytes()]));
    let values = [
        ("__VERSION__", json!(version)),
        ("__FILES__", json!(kept.files)),
        ("__TEXTS__", json!(kept.texts)),
    ];
    Ok(with_values(&source, &values).into_bytes())
}

/// Fills placeholders, which stand in a script as strings.
fn with_values(source: &str, values: &[(&str, serde_json::Value)]) -> String {
    values
        .iter()
        .fold(source.to_string(), |filled, (placeholder, value)| {
            filled.replace(&format!("\"{placeholder}\""), &value.to_string())
        })
}

fn fingerprint_of(files: &Files) -> String {
    fingerprint(
        files
            .iter()
            .flat_map(|(path, content)| [path.as_bytes(), content.as_slice()]),
    )
}

/// Puts the site where it is served from, each file whole at once, as the page may be open meanwhile: first what the entries lead
/// to, then the entries, the service worker last. Then what an earlier build left is removed.
fn publish(site: &Files) -> Outcome {
    let rank = |path: &str| (!is_of_a_version(path), path == OFFLINE);
    let mut paths_in_order: Vec<&String> = site.keys().collect();
    paths_in_order.sort_by_key(|path| rank(path));
    paths_in_order
        .into_iter()
        .try_for_each(|path| write(&paths::dist().join(path), &site[path]))?;
    remove_leftovers(site)
}

fn remove_leftovers(site: &Files) -> Outcome {
    let dist = paths::dist();
    let cannot =
        |path: &str, error: std::io::Error| format!("`dist/{path}` cannot be removed: {error}.");
    for path in files_under(&dist)?
        .into_keys()
        .filter(|path| !site.contains_key(path))
    {
        fs::remove_file(dist.join(&path)).map_err(|error| cannot(&path, error))?;
        // A folder that is not empty stays.
        Path::new(&path)
            .ancestors()
            .skip(1)
            .filter(|folder| *folder != Path::new(""))
            .for_each(|folder| {
                fs::remove_dir(dist.join(folder)).ok();
            });
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
    fn placeholders_are_filled() {
        let values = [
            ("__VERSION__", json!("v-1f")),
            ("__FILES__", json!({ "./": "sha256-a" })),
        ];
        assert_eq!(
            with_values(r#"const a = "__VERSION__", b = ("__FILES__");"#, &values),
            r#"const a = "v-1f", b = ({"./":"sha256-a"});"#
        );
    }

    #[test]
    fn the_page_keeps_its_own_files_and_not_those_for_other_sites() {
        for kept in [
            "index.html",
            "start.js",
            "icon.svg",
            "v-1f/app.js",
            "v-1f/wasm/whole_bg.wasm",
        ] {
            assert!(is_kept_offline(kept), "{kept}");
        }
        for other in [
            "offline.js",
            "fasterby.html",
            "version.json",
            "embed.js",
            "embed/v1.js",
            "embed/frame.html",
            "frame-height.js",
            "v-1f/wasm/first_bg.wasm",
        ] {
            assert!(!is_kept_offline(other), "{other}");
        }
    }

    #[test]
    fn only_files_in_the_folder_of_a_version_are_of_one() {
        assert!(is_of_a_version("v-1f/app.js"));
        assert!(!is_of_a_version("v-1f"));
        assert!(!is_of_a_version("version.json"));
        assert!(!is_of_a_version("embed/v1.js"));
    }
}
