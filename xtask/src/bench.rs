//! Speed beside its bounds: the core natively, then core and page in a browser.

use crate::command::{Outcome, command, program_of_tests, run, say};
use crate::{browsers, build, paths, serve, setup};

/// Says where the native measurements leave the ride files that they make, for those in the browser.
const RIDES: &str = "FASTERBY_RIDES";

/// Says which Python times IPOPT beside the core's own plans.
const PYTHON: &str = "FASTERBY_ORACLE_PYTHON";

fn rides() -> std::path::PathBuf {
    paths::kept("made-rides")
}

/// Prints both tables.
pub fn bench() -> Outcome {
    say("the core, natively");
    run(
        program_of_tests("bench", "alone")
            .args(["--profile", "bench"])
            .env(RIDES, rides())
            .env(PYTHON, setup::oracle_python()?),
        "The native measurements did not finish: see the message above.",
    )?;
    build::build()?;
    setup::browser_test_packages()?;
    let chromium = browsers::chromium()?;
    let server = serve::Server::bind(paths::dist(), 0)?;
    let address = server.address();
    server.run_aside();
    say("core and page, in Chromium");
    run(
        command("node")
            .arg("tests/browser/bench.mjs")
            .env("FASTERBY_ADDRESS", address)
            .env("CHROME", chromium)
            .env(RIDES, rides()),
        "The measurements in the browser did not finish: see the message above.",
    )
}
