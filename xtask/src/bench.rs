//! Speed beside its bounds: the core natively, then core and page in a browser.

use crate::command::{Outcome, cargo, command, run, say};
use crate::{build, paths, serve, setup};

/// Prints both tables.
pub fn bench() -> Outcome {
    say("the core, natively");
    run(
        cargo().args([
            "run",
            "--quiet",
            "--profile",
            "bench",
            "--package",
            "fasterby-tests",
            "--bin",
            "bench",
        ]),
        "The native measurements did not finish: see the message above.",
    )?;
    build::build()?;
    setup::browser_test_packages()?;
    let chromium = setup::chromium()?;
    let server = serve::Server::bind(paths::dist(), 0)?;
    let address = server.address();
    server.run_aside();
    say("core and page, in Chromium");
    run(
        command("node")
            .arg("tests/browser/bench.mjs")
            .env("FASTERBY_ADDRESS", address)
            .env("CHROME", chromium),
        "The measurements in the browser did not finish: see the message above.",
    )
}
