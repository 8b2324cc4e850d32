//! The core's tables of fields, questions and sources, for the build of the page, alone on standard output.

use crate::Outcome;
use std::io::Write;
use std::process::ExitCode;

/// Prints the tables as JSON.
pub fn tables() -> Outcome<ExitCode> {
    let tables = serde_json::to_string(&fasterby_core::questions::tables())
        .map_err(|error| error.to_string())?;
    writeln!(std::io::stdout(), "{tables}")
        .map_err(|error| format!("The tables cannot be written to standard output: {error}."))?;
    Ok(ExitCode::SUCCESS)
}
