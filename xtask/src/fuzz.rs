//! Altered files against the readers of recordings.

use crate::command::{Outcome, cargo, run};

/// Runs each kind of file for so long.
pub fn recordings(seconds: u64) -> Outcome {
    run(
        cargo()
            .args([
                "run",
                "--quiet",
                "--package",
                "fasterby-tests",
                "--bin",
                "fuzz-recordings",
            ])
            .arg(seconds.to_string()),
        "A reader of recordings failed on an altered file: see the message above.",
    )
}
