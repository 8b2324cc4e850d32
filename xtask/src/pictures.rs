//! The pictures of the page that README.md shows, taken of the built page.

use crate::command::{Outcome, command, run, say};
use crate::{browsers, build, paths, serve, setup};

/// Takes the pictures anew.
pub fn pictures() -> Outcome {
    build::build()?;
    setup::browser_test_packages()?;
    let chromium = browsers::chromium_without_windows()?;
    let server = serve::Server::bind(paths::dist(), 0)?;
    let address = server.address();
    server.run_aside();
    say("pictures of the page");
    run(
        command("node")
            .arg("tests/browser/pictures.mjs")
            .env("FASTERBY_ADDRESS", address)
            .env("CHROME", chromium),
        "The pictures could not be taken: see the message above.",
    )
}
