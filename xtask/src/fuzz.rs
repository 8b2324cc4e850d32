//! Altered files against the readers of recordings.

use crate::command::{Outcome, program_of_tests, run};

/// Runs each kind of file for so long.
pub fn recordings(seconds: u64) -> Outcome {
    run(
        program_of_tests("fuzz-recordings", "alone").arg(seconds.to_string()),
        "A reader of recordings failed on an altered file: see the message above.",
    )
}
