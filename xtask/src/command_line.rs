//! The program that answers questions and reads recordings, which is built when it is asked for: the page can be served without it.

use crate::command::{Outcome, cargo, output_of};
use crate::paths;
use std::process::{Command, ExitCode};

/// The commands that it is handed, with all that follows them.
pub const COMMANDS: [&str; 3] = ["ask", "read", "course"];

/// Runs it where this was run, with the same standard input and output, and ends as it ends.
pub fn hand_over(words: &[String]) -> Outcome<ExitCode> {
    let mut command = program(&[]);
    let status = command
        .current_dir(std::env::current_dir().map_err(|error| error.to_string())?)
        .args(words)
        .status()
        .map_err(|error| {
            format!("cargo could not be started ({error}): put it on PATH, then run this again.")
        })?;
    let code = status.code().and_then(|code| u8::try_from(code).ok());
    Ok(code.map_or(ExitCode::FAILURE, ExitCode::from))
}

/// The core's tables as JSON.
pub fn tables() -> Outcome<String> {
    // Nothing is computed, so nothing is optimised.
    let soon = ["core", "recordings"]
        .map(|name| format!("profile.dev.package.fasterby-{name}.opt-level=0"));
    output_of(
        program(&["--config", &soon[0], "--config", &soon[1]]).arg("tables"),
        "The tables for the page could not be taken from the core: see the compiler's message above.",
    )
}

/// What follows are the program's own arguments.
fn program(options: &[&str]) -> Command {
    let mut command = cargo();
    command
        .args(["run", "--quiet", "--package", "fasterby-command-line"])
        .arg("--manifest-path")
        .arg(paths::root().join("Cargo.toml"))
        .args(options)
        .arg("--");
    command
}
