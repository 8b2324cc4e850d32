//! Running other programs, with a sentence for whoever must act when one fails.

use std::ffi::OsStr;
use std::path::PathBuf;
use std::process::{Command, Stdio};

/// A result whose error is one sentence that names what went wrong and the cure.
pub type Outcome<T = ()> = Result<T, String>;

/// A command run from the top of the project.
pub fn command(program: impl AsRef<OsStr>) -> Command {
    let mut command = Command::new(program);
    command.current_dir(crate::paths::root());
    command
}

/// The cargo that started this run, so that the toolchain stays the same.
pub fn cargo() -> Command {
    command(std::env::var_os("CARGO").unwrap_or_else(|| "cargo".into()))
}

/// A program of the tests' crate, which is built with one of its features; what follows are more arguments of cargo, then the program's own.
pub fn program_of_tests(name: &str, feature: &str) -> Command {
    let mut command = cargo();
    command.args([
        "run",
        "--quiet",
        "--package",
        "fasterby-tests",
        "--bin",
        name,
        "--features",
        feature,
    ]);
    command
}

/// Tells what happens next.
pub fn say(what: &str) {
    println!("· {what}");
}

/// Runs to the end with the terminal's own output; a failure becomes `sentence`.
pub fn run(command: &mut Command, sentence: &str) -> Outcome {
    let status = command.stdin(Stdio::null()).status();
    let succeeded = status
        .map_err(|error| not_started(command, &error))?
        .success();
    if succeeded {
        Ok(())
    } else {
        Err(sentence.to_string())
    }
}

/// Runs to the end and gives what was printed; a failure becomes `sentence`.
pub fn output_of(command: &mut Command, sentence: &str) -> Outcome<String> {
    let output = command
        .stdin(Stdio::null())
        .stderr(Stdio::inherit())
        .output();
    let output = output.map_err(|error| not_started(command, &error))?;
    if output.status.success() {
        Ok(String::from_utf8_lossy(&output.stdout).into_owned())
    } else {
        Err(sentence.to_string())
    }
}

fn not_started(command: &Command, error: &std::io::Error) -> String {
    format!(
        "`{}` could not be started ({error}): install it or put it on PATH, then run this again.",
        command.get_program().display()
    )
}

/// The first of `names` that is a file in a folder of PATH.
pub fn on_path(names: &[&str]) -> Option<PathBuf> {
    let path = std::env::var_os("PATH")?;
    let folders: Vec<PathBuf> = std::env::split_paths(&path).collect();
    names
        .iter()
        .flat_map(|name| folders.iter().map(move |folder| folder.join(name)))
        .find(|candidate| candidate.is_file())
}
