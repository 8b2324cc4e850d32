//! The browsers that the page is tested in, and what they need, found or installed by the system's package manager.

use crate::command::{Outcome, command, on_path, output_of, run, say};
use crate::setup::turn;
use std::path::{Path, PathBuf};
use std::process::Stdio;
use std::sync::Mutex;

/// A program that a package manager brings.
struct Program {
    /// As a sentence names it.
    name: &'static str,
    /// The variable that says where it is.
    variable: &'static str,
    /// What it may be called on the path.
    called: &'static [&'static str],
    /// Where macOS has it.
    apps: &'static [&'static str],
    packages: Packages,
}

/// What package managers call the packages that bring a program; none where that is not known.
struct Packages {
    apt: &'static [&'static str],
    dnf: &'static [&'static str],
    pacman: &'static [&'static str],
    brew: &'static [&'static str],
}

const CHROMIUM: Program = Program {
    name: "Chromium",
    variable: "CHROME",
    called: &[
        "chromium",
        "chromium-browser",
        "google-chrome",
        "google-chrome-stable",
    ],
    apps: &[
        "Chromium.app/Contents/MacOS/Chromium",
        "Google Chrome.app/Contents/MacOS/Google Chrome",
    ],
    packages: Packages {
        apt: &["chromium"],
        dnf: &["chromium"],
        pacman: &["chromium"],
        brew: &["--cask", "chromium"],
    },
};
const CHROMIUM_WITHOUT_WINDOWS: Program = Program {
    name: "Chromium without windows",
    variable: "CHROME",
    called: &["chromium-headless-shell"],
    apps: &[],
    packages: Packages {
        apt: &["chromium-headless-shell"],
        dnf: &[],
        pacman: &[],
        brew: &[],
    },
};
const FIREFOX: Program = Program {
    name: "Firefox",
    variable: "FIREFOX",
    called: &["firefox-esr", "firefox"],
    apps: &["Firefox.app/Contents/MacOS/firefox"],
    packages: Packages {
        apt: &["firefox-esr"],
        dnf: &["firefox"],
        pacman: &["firefox"],
        brew: &["--cask", "firefox"],
    },
};
const WEBKIT: Program = Program {
    name: "WebKitGTK's driver, WebKitWebDriver (there is one on Linux only),",
    variable: "WEBKIT_DRIVER",
    called: &["WebKitWebDriver"],
    apps: &[],
    packages: Packages {
        apt: &["webkit2gtk-driver"],
        dnf: &[],
        pacman: &[],
        brew: &[],
    },
};
const XVFB: Program = Program {
    name: "Xvfb",
    variable: "XVFB",
    called: &["Xvfb"],
    apps: &[],
    packages: Packages {
        apt: &["xvfb"],
        dnf: &["xorg-x11-server-Xvfb"],
        pacman: &["xorg-server-xvfb"],
        brew: &[],
    },
};

/// A package manager works for one at a time; who waits finds afterwards what was installed.
static SYSTEM: Mutex<()> = Mutex::new(());

/// Installs what is missing of all of them, by one call where that can be: each looks at all that the system holds.
pub fn ahead() {
    let _turn = turn(&SYSTEM);
    let missing: Vec<&Packages> = [CHROMIUM_WITHOUT_WINDOWS, FIREFOX, WEBKIT, XVFB]
        .iter()
        .filter(|program| program.find().is_none())
        .map(|program| &program.packages)
        .collect();
    // What fails is tried again, and told, by the step that needs it.
    if !missing.is_empty() {
        drop(install(&missing));
    }
}

/// A Chromium, or a browser built from it.
pub fn chromium() -> Outcome<PathBuf> {
    CHROMIUM.find_or_install()
}

/// Chromium without windows, which opens a page in half the time; where no package brings it, Chromium itself.
pub fn chromium_without_windows() -> Outcome<PathBuf> {
    CHROMIUM_WITHOUT_WINDOWS
        .find_or_install()
        .or_else(|_| chromium())
}

/// Firefox, of the long support or the newest.
pub fn firefox() -> Outcome<PathBuf> {
    FIREFOX.find_or_install()
}

/// The driver of WebKit as GTK has it, which brings the browser with it.
pub fn webkit_driver() -> Outcome<PathBuf> {
    WEBKIT.find_or_install()
}

/// A display that nobody sees.
pub fn xvfb() -> Outcome<PathBuf> {
    XVFB.find_or_install()
}

impl Program {
    fn find(&self) -> Option<PathBuf> {
        let named = std::env::var_os(self.variable).map(PathBuf::from);
        let app = || {
            self.apps
                .iter()
                .map(|app| Path::new("/Applications").join(app))
                .find(|app| app.is_file())
        };
        named
            .filter(|path| path.is_file())
            .or_else(|| on_path(self.called))
            .or_else(app)
    }

    fn find_or_install(&self) -> Outcome<PathBuf> {
        let _turn = turn(&SYSTEM);
        if let Some(found) = self.find() {
            return Ok(found);
        }
        let cure = format!(
            "{} is missing: install it with the system's packages, or set {} to its path.",
            self.name, self.variable
        );
        install(&[&self.packages]).map_err(|_| cure.clone())?;
        self.find().ok_or(cure)
    }
}

/// Installs packages with whatever manager there is.
fn install(packages: &[&Packages]) -> Outcome {
    /// Manager, what it does first, how it installs, what it calls the packages, and whether it wants the administrator's rights.
    type Way<'a> = (
        &'a str,
        &'a [&'a str],
        &'a [&'a str],
        fn(&Packages) -> &'static [&'static str],
        bool,
    );
    let ways: [Way<'_>; 4] = [
        (
            "apt-get",
            &["update", "--quiet"],
            // What it recommends beside them (printing, notices, a codec for every film) no page needs.
            &["install", "--quiet", "--yes", "--no-install-recommends"],
            |of| of.apt,
            true,
        ),
        ("dnf", &[], &["install", "--assumeyes"], |of| of.dnf, true),
        (
            "pacman",
            &[],
            &["--sync", "--noconfirm"],
            |of| of.pacman,
            true,
        ),
        ("brew", &[], &["install"], |of| of.brew, false),
    ];
    let (manager, first, how, named, as_root) = ways
        .into_iter()
        .find(|(manager, ..)| on_path(&[manager]).is_some())
        .ok_or("")?;
    let names: Vec<&str> = packages.iter().flat_map(|of| named(of)).copied().collect();
    if names.is_empty() {
        return Err(String::new());
    }
    say(&format!("installing {} with {manager}", names.join(" ")));
    let is_root = output_of(command("id").arg("-u"), "").is_ok_and(|id| id.trim() == "0");
    let mut calls = vec![[how, &names].concat()];
    if !first.is_empty() {
        calls.insert(0, first.to_vec());
    }
    for arguments in calls {
        let mut call = if as_root && !is_root {
            let mut sudo = command("sudo");
            sudo.arg(manager);
            sudo
        } else {
            command(manager)
        };
        // Hundreds of lines of names; what goes wrong is told beside them.
        run(
            call.args(arguments)
                .env("DEBIAN_FRONTEND", "noninteractive")
                .stdout(Stdio::null()),
            "",
        )?;
    }
    Ok(())
}
