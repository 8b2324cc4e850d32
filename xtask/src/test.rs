//! Every check of the project, step by step, and a closing line that counts them.

use crate::command::{Outcome, cargo, command, on_path, output_of, run, say};
use crate::content::read_text;
use crate::{build, paths, serve, setup};
use serde_json::Value;
use std::path::PathBuf;
use std::process::ExitCode;
use std::time::Instant;
use wasm_bindgen_cli_support::Bindgen;

/// The test programs that also run in wasm: those that hold the core to rows which must come out the same in wasm.
const ALSO_IN_WASM: [&str; 4] = ["published", "oracle", "fit", "ride_plan"];

struct Step {
    name: &'static str,
    what: &'static str,
    check: fn() -> Outcome,
}

const STEPS: [Step; 10] = [
    Step {
        name: "format",
        what: "the code is formatted",
        check: format,
    },
    Step {
        name: "lint",
        what: "the code has no warnings",
        check: lint,
    },
    Step {
        name: "rust",
        what: "Rust tests, natively",
        check: rust,
    },
    Step {
        name: "doc",
        what: "examples in the documentation",
        check: doc,
    },
    Step {
        name: "oracle",
        what: "independent answers are as committed",
        check: oracle,
    },
    Step {
        name: "wasm",
        what: "Rust tests in wasm",
        check: wasm,
    },
    Step {
        name: "types",
        what: "the page's types are those of the core",
        check: types,
    },
    Step {
        name: "page",
        what: "the page's scripts: their types, and what needs no browser",
        check: page,
    },
    Step {
        name: "browser",
        what: "the built page in Chromium",
        check: browser,
    },
    Step {
        name: "browsers",
        what: "the built page in Firefox and in WebKit",
        check: browsers,
    },
];

/// Runs all steps, or the named one, and prints `N passed, N failed` last.
pub fn test(only: Option<&str>) -> Outcome<ExitCode> {
    let chosen: Vec<&Step> = STEPS
        .iter()
        .filter(|step| only.is_none_or(|name| name == step.name))
        .collect();
    if chosen.is_empty() {
        let names: Vec<&str> = STEPS.iter().map(|step| step.name).collect();
        return Err(format!(
            "`{}` is not a step; these are: {}.",
            only.unwrap_or_default(),
            names.join(", ")
        ));
    }
    if only.is_none() {
        setup::ahead();
        // Each module is long made by one processor alone: the first steps use the others. What fails is told by the step that needs it.
        std::thread::spawn(|| drop(build::build()));
    }
    let outcomes: Vec<(&Step, Outcome)> = chosen
        .into_iter()
        .map(|step| (step, perform(step)))
        .collect();
    let failures = outcomes
        .iter()
        .filter_map(|(step, outcome)| Some((step.name, outcome.as_ref().err()?)));
    println!();
    failures
        .clone()
        .for_each(|(name, sentence)| println!("{name}: {sentence}"));
    let failed = failures.count();
    println!("{} passed, {failed} failed", outcomes.len() - failed);
    Ok(if failed == 0 {
        ExitCode::SUCCESS
    } else {
        ExitCode::FAILURE
    })
}

/// Prints the steps by name.
pub fn list() {
    STEPS
        .iter()
        .for_each(|step| println!("{:<9}{}", step.name, step.what));
}

fn perform(step: &Step) -> Outcome {
    println!("\n{}: {}", step.name, step.what);
    let begun = Instant::now();
    let outcome = (step.check)();
    let verdict = if outcome.is_ok() { "passed" } else { "FAILED" };
    println!(
        "{}: {verdict} in {:.0} s",
        step.name,
        begun.elapsed().as_secs_f64()
    );
    outcome
}

fn format() -> Outcome {
    run(
        cargo().args(["fmt", "--all", "--check"]),
        "Some Rust is not formatted: run `cargo fmt --all`.",
    )?;
    setup::node_packages()?;
    run(
        command(paths::node_program("biome")).args(["format", "--max-diagnostics=20"]),
        "A script, style or page is not formatted: run `www/node_modules/.bin/biome check --write`.",
    )
}

fn lint() -> Outcome {
    const SENTENCE: &str = "clippy has something to say: see its message above.";
    setup::node_packages()?;
    run(
        command(paths::node_program("biome")).args(["lint", "--error-on-warnings"]),
        "The linter found a fault in a script, style or page: see its message above.",
    )?;
    setup::wasm_target()?;
    run(
        cargo().args([
            "clippy",
            "--quiet",
            "--workspace",
            "--all-targets",
            "--all-features",
            "--",
            "-D",
            "warnings",
        ]),
        SENTENCE,
    )?;
    // The module of the first visit is the same code with less of it.
    [&[][..], &["--no-default-features"]]
        .into_iter()
        .try_for_each(|options| {
            run(
                cargo()
                    .args([
                        "clippy",
                        "--quiet",
                        "--package",
                        "fasterby-web",
                        "--target",
                        "wasm32-unknown-unknown",
                    ])
                    .args(options)
                    .args(["--", "-D", "warnings"]),
                SENTENCE,
            )
        })
}

fn rust() -> Outcome {
    const SENTENCE: &str = "A Rust test failed: see its message above.";
    setup::sample_recordings()?;
    let nextest = on_path(&["cargo-nextest"]).is_some();
    let runner: &[&str] = if nextest {
        &["nextest", "run"]
    } else {
        &["test", "--quiet", "--lib", "--bins", "--tests"]
    };
    // Apart, as the tools' own dependencies are built already, with the features they have by themselves.
    [
        &["--workspace", "--exclude", "xtask"][..],
        &["--package", "xtask"],
    ]
    .into_iter()
    .try_for_each(|packages| {
        run(
            cargo().args(runner).arg("--no-fail-fast").args(packages),
            SENTENCE,
        )
    })
}

fn doc() -> Outcome {
    run(
        cargo().args([
            "test",
            "--quiet",
            "--workspace",
            "--exclude",
            "xtask",
            "--doc",
        ]),
        "An example in the documentation failed: see its message above.",
    )
}

fn oracle() -> Outcome {
    let python = setup::oracle_python()?;
    run(
        command(python).arg("tests/oracle/check.py"),
        "The independent answers differ from the committed ones: see the message above.",
    )
}

fn wasm() -> Outcome {
    setup::wasm_target()?;
    let compiled = output_of(
        cargo()
            .args([
                "test",
                "--no-run",
                "--package",
                "fasterby-tests",
                "--target",
                "wasm32-unknown-unknown",
                "--message-format=json-render-diagnostics",
            ])
            .args(ALSO_IN_WASM.iter().flat_map(|name| ["--test", name])),
        "The tests do not compile to wasm: see the compiler's message above.",
    )?;
    let programs = ALSO_IN_WASM
        .into_iter()
        .map(|name| bound(name, &compiled))
        .collect::<Outcome<Vec<PathBuf>>>()?;
    run(
        command("node").arg("tests/wasm/run.mjs").args(programs),
        "A Rust test failed in wasm: see its message above.",
    )
}

/// A test program with the script that calls it, made from what cargo says it compiled.
fn bound(name: &str, compiled: &str) -> Outcome<PathBuf> {
    let module = compiled
        .lines()
        .filter_map(|line| serde_json::from_str::<Value>(line).ok())
        .find(|message| message["target"]["name"] == name && message["executable"].is_string())
        .ok_or_else(|| format!("cargo does not say where it compiled the tests `{name}` to."))?;
    let folder = paths::kept("wasm-tests");
    Bindgen::new()
        .input_path(module["executable"].as_str().unwrap_or_default())
        .out_name(name)
        .typescript(false)
        // The tests are exports that only the module itself names.
        .export_wasm(true)
        .nodejs_module(true)
        .and_then(|bindgen| bindgen.generate(&folder))
        .map_err(|error| format!("wasm-bindgen could not bind the tests `{name}`: {error:#}."))?;
    Ok(folder.join(format!("{name}.js")))
}

fn types() -> Outcome {
    let committed = read_text(&build::types_file()).unwrap_or_default();
    if committed == build::generated_types()? {
        Ok(())
    } else {
        Err("`www/types/core.d.ts` is not what the core's structs give: run `cargo xtask build` and commit the file."
            .into())
    }
}

fn page() -> Outcome {
    build::build()?;
    run(
        command("node")
            .arg(paths::node_program("tsc"))
            .arg("--project")
            .arg(paths::www()),
        "The type checker found a fault in the page's scripts: see its message above.",
    )?;
    run(
        command("node").args([
            "--import",
            "./tests/page/tables.js",
            "--test",
            "tests/page/",
        ]),
        "A test of the page's scripts failed in Node: see its message above.",
    )
}

fn browser() -> Outcome {
    build::build()?;
    setup::browser_test_packages()?;
    let programs = [
        ("XTASK", std::env::current_exe().unwrap_or_default()),
        ("CHROME", setup::chromium_without_windows()?),
    ];
    playwright(
        "tests/browser",
        &programs,
        "A test of the page failed in Chromium: see its message above.",
    )
}

fn browsers() -> Outcome {
    build::build()?;
    setup::browser_test_packages()?;
    let programs = [
        ("FIREFOX", setup::firefox()?),
        ("WEBKIT_DRIVER", setup::webkit_driver()?),
        ("XVFB", setup::xvfb()?),
    ];
    playwright(
        "tests/browsers",
        &programs,
        "A test of the page failed in Firefox or in WebKit: see its message above.",
    )
}

/// Serves the built page while the tests of a folder run, which find programs under the names given.
fn playwright(folder: &str, programs: &[(&str, PathBuf)], sentence: &str) -> Outcome {
    let server = serve::Server::bind(paths::dist(), 0)?;
    let address = server.address();
    server.run_aside();
    say(&format!("the page is at {address}"));
    run(
        command("node")
            .arg(paths::node_program("playwright"))
            .args([
                "test",
                "--config",
                &format!("{folder}/playwright.config.js"),
            ])
            .env("FASTERBY_ADDRESS", address)
            .envs(programs.iter().map(|(name, program)| (name, program))),
        sentence,
    )
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_test_program_that_says_it_runs_in_wasm_does() {
        let folder = paths::root().join("tests/tests");
        let mut marked: Vec<String> = std::fs::read_dir(folder)
            .unwrap()
            .map(|entry| entry.unwrap().path())
            .filter(|path| read_text(path).unwrap().contains("#[wasm_bindgen_test"))
            .map(|path| path.file_stem().unwrap().to_string_lossy().into_owned())
            .collect();
        let mut run = ALSO_IN_WASM.map(String::from);
        marked.sort();
        run.sort();
        assert_eq!(marked, run);
    }
}
