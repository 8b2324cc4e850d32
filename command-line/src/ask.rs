//! One question on the command line: the request on standard input, the answer alone on standard output.

use crate::Outcome;
use std::io::{Read, Write};
use std::process::ExitCode;

/// More than the core accepts, so that it is the core that says "too large".
const MOST_BYTES: u64 = 64 << 20;
/// The exit code for a request that the core refuses with a named error.
const REFUSED: u8 = 2;

pub fn ask(question: &str) -> Outcome<ExitCode> {
    let mut request = Vec::new();
    std::io::stdin()
        .take(MOST_BYTES)
        .read_to_end(&mut request)
        .map_err(|error| format!("The request on standard input cannot be read: {error}."))?;
    let (answer, code) = match fasterby_core::ask_json(question, &String::from_utf8_lossy(&request))
    {
        Ok(answer) => (answer, ExitCode::SUCCESS),
        Err(error) => (error, ExitCode::from(REFUSED)),
    };
    writeln!(std::io::stdout(), "{answer}")
        .map_err(|error| format!("The answer cannot be written to standard output: {error}."))?;
    Ok(code)
}
