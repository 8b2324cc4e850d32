//! What each step needs on a fresh machine, found or installed.

use crate::command::{Outcome, cargo, command, on_path, output_of, run, say};
use crate::content::{fingerprint, read, write};
use crate::paths;
use std::path::{Path, PathBuf};

/// The version of `wasm-bindgen` in Cargo.toml; its test runner must match it.
const WASM_BINDGEN: &str = "0.2.130";
const WASM_TARGET: &str = "wasm32-unknown-unknown";

const NO_NODE: &str = "The page's tools need Node.js 20 or later with npm: install both, then run this again.";
const NO_PYTHON: &str = "The independent answers need Python 3.11 or later with its venv module: install both \
    (Debian: python3-venv), then run this again.";

/// Rust's library for the browser's target.
pub fn wasm_target() -> Outcome {
    let mut query = command("rustc");
    query.args(["--print", "target-libdir", "--target", WASM_TARGET]);
    let folder =
        output_of(&mut query, "`rustc` does not know the target wasm32-unknown-unknown: install Rust with rustup.")?;
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
    let lock = read(&paths::www().join("package-lock.json"))?;
    let installed = paths::www().join("node_modules/.installed-lock");
    let wanted = fingerprint([lock.as_slice()]);
    if read(&installed).is_ok_and(|present| present == wanted.as_bytes()) {
        return Ok(());
    }
    on_path(&["npm"]).filter(|_| on_path(&["node"]).is_some()).ok_or(NO_NODE)?;
    say("installing the page's npm packages");
    // No package's own script is run: all of these work without.
    run(
        command("npm").args(["ci", "--ignore-scripts", "--no-audit", "--no-fund"]).current_dir(paths::www()),
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
    link_folder(Path::new("../www/node_modules"), &link)
        .map_err(|error| format!("`tests/node_modules` cannot be linked to `www/node_modules`: {error}."))
}

#[cfg(unix)]
fn link_folder(to: &Path, link: &Path) -> std::io::Result<()> {
    std::os::unix::fs::symlink(to, link)
}

#[cfg(windows)]
fn link_folder(to: &Path, link: &Path) -> std::io::Result<()> {
    std::os::windows::fs::symlink_dir(to, link)
}

/// The program that runs Rust tests inside a browser: on PATH, kept from before, or installed now.
pub fn wasm_test_runner() -> Outcome<PathBuf> {
    const NAME: &str = "wasm-bindgen-test-runner";
    let tools = paths::kept("tools");
    let kept = tools.join("bin").join(NAME);
    let found = on_path(&[NAME]).into_iter().chain([kept.clone()]);
    if let Some(runner) = found.into_iter().find(|program| is_right_version(program)) {
        return Ok(runner);
    }
    say("installing wasm-bindgen's test runner (a few minutes, once)");
    run(
        cargo().args(["install", "wasm-bindgen-cli", "--version", WASM_BINDGEN, "--root"]).arg(&tools),
        "wasm-bindgen's test runner could not be installed: run `cargo install wasm-bindgen-cli --version 0.2.130` with a network.",
    )?;
    Ok(kept)
}

fn is_right_version(runner: &Path) -> bool {
    runner.is_file()
        && output_of(command(runner).arg("--version"), "").is_ok_and(|text| text.trim().ends_with(WASM_BINDGEN))
}

/// A Chromium, or a browser built from it.
pub fn chromium() -> Outcome<PathBuf> {
    let find = || {
        named_by("CHROME")
            .or_else(|| on_path(&["chromium", "chromium-browser", "google-chrome", "google-chrome-stable"]))
            .or_else(|| {
                let installed =
                    ["Chromium.app/Contents/MacOS/Chromium", "Google Chrome.app/Contents/MacOS/Google Chrome"];
                installed.iter().map(|app| Path::new("/Applications").join(app)).find(|app| app.is_file())
            })
    };
    find_or_install(find, "Chromium", "CHROME")
}

/// The driver through which Rust's tests steer Chromium.
pub fn chromedriver() -> Outcome<PathBuf> {
    let find = || named_by("CHROMEDRIVER").or_else(|| on_path(&["chromedriver"]));
    find_or_install(find, "chromedriver", "CHROMEDRIVER")
}

fn named_by(variable: &str) -> Option<PathBuf> {
    std::env::var_os(variable).map(PathBuf::from).filter(|path| path.is_file())
}

fn find_or_install(find: impl Fn() -> Option<PathBuf>, name: &str, variable: &str) -> Outcome<PathBuf> {
    if let Some(found) = find() {
        return Ok(found);
    }
    let cure = format!("{name} is missing: install it with the system's packages, or set {variable} to its path.");
    install_chromium().map_err(|_| cure.clone())?;
    find().ok_or(cure)
}

fn install_chromium() -> Outcome {
    /// Manager, arguments, and whether it wants the administrator's rights.
    const WAYS: [(&str, &[&[&str]], bool); 4] = [
        ("apt-get", &[&["update"], &["install", "--yes", "chromium", "chromium-driver"]], true),
        ("dnf", &[&["install", "--assumeyes", "chromium", "chromedriver"]], true),
        ("pacman", &[&["--sync", "--noconfirm", "chromium"]], true),
        ("brew", &[&["install", "--cask", "chromium", "chromedriver"]], false),
    ];
    let (manager, calls, as_root) = WAYS.into_iter().find(|(manager, ..)| on_path(&[manager]).is_some()).ok_or("")?;
    say(&format!("installing Chromium and its driver with {manager}"));
    let is_root = output_of(command("id").arg("-u"), "").is_ok_and(|id| id.trim() == "0");
    for arguments in calls {
        let mut call = if as_root && !is_root {
            let mut sudo = command("sudo");
            sudo.arg(manager);
            sudo
        } else {
            command(manager)
        };
        run(call.args(*arguments).env("DEBIAN_FRONTEND", "noninteractive"), "")?;
    }
    Ok(())
}

/// A Python of the project's own with the packages of `tests/oracle/requirements.txt`.
pub fn oracle_python() -> Outcome<PathBuf> {
    let requirements = paths::root().join("tests/oracle/requirements.txt");
    let folder = paths::kept("oracle-venv");
    let python = folder.join("bin/python");
    let installed = folder.join("installed-requirements");
    let wanted = fingerprint([read(&requirements)?.as_slice()]);
    if python.is_file() && read(&installed).is_ok_and(|present| present == wanted.as_bytes()) {
        return Ok(python);
    }
    let system = on_path(&["python3", "python"]).ok_or(NO_PYTHON)?;
    say("setting up Python for the independent answers");
    run(command(system).args(["-m", "venv", "--clear"]).arg(&folder), NO_PYTHON)?;
    run(
        command(&python).args(["-m", "pip", "install", "--quiet", "--requirement"]).arg(&requirements),
        "The packages of tests/oracle/requirements.txt could not be installed: see pip's message above; it needs a network.",
    )?;
    write(&installed, wanted.as_bytes())?;
    Ok(python)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::content::read_text;

    #[test]
    fn the_test_runner_is_of_the_version_that_is_locked() {
        let lock = read_text(&paths::root().join("Cargo.lock")).unwrap();
        assert!(lock.contains(&format!("name = \"wasm-bindgen\"\nversion = \"{WASM_BINDGEN}\"")));
    }
}
