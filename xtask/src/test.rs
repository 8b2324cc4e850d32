//! Every check of the project, step by step, and a closing line that counts them.

use crate::command::{Outcome, cargo, command, on_path, output_of, run, say};
use crate::content::read_text;
use crate::{browsers, build, paths, serve, setup};
use serde_json::Value;
use std::num::NonZero;
use std::path::PathBuf;
use std::process::ExitCode;
use std::time::Instant;
use wasm_bindgen_cli_support::Bindgen;

/// The program of the tests that check the core from outside. In wasm it holds those whose rows must come out the same there.
const CHECKS: &str = "checks";

/// Leaves out the bindings, which are for the browser alone.
const WITHOUT_BINDINGS: &[&str] = &[
    "--exclude",
    "fasterby-web",
    "--exclude",
    "fasterby-web-recordings",
];

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
    // The tools apart, as their own dependencies are built already, with the features they have by themselves.
    [
        &[&["--workspace", "--exclude", "xtask"], WITHOUT_BINDINGS].concat()[..],
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
        cargo()
            .args(["test", "--quiet", "--workspace", "--exclude", "xtask"])
            .args(WITHOUT_BINDINGS)
            .arg("--doc"),
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
        cargo().args([
            "test",
            "--no-run",
            "--package",
            "fasterby-tests",
            "--test",
            CHECKS,
            "--target",
            "wasm32-unknown-unknown",
            "--message-format=json-render-diagnostics",
        ]),
        "The tests do not compile to wasm: see the compiler's message above.",
    )?;
    run(
        command("node")
            .arg("tests/wasm/run.mjs")
            .arg(bound_for_node(CHECKS, &compiled)?),
        "A Rust test failed in wasm: see its message above.",
    )
}

/// A test program with the script that calls it, made from what cargo says it compiled.
fn bound_for_node(name: &str, compiled: &str) -> Outcome<PathBuf> {
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
    // The type checker uses one processor.
    std::thread::scope(|scope| {
        let types = scope.spawn(|| {
            run(
                command("node")
                    .arg(paths::node_program("tsc"))
                    .arg("--project")
                    .arg(paths::www()),
                "The type checker found a fault in the page's scripts: see its message above.",
            )
        });
        let tests = run(
            command("node").args([
                "--import",
                "./tests/page/tables.js",
                "--test",
                // Node's own choice leaves one idle.
                &format!("--test-concurrency={}", processors()),
                "tests/page/",
            ]),
            "A test of the page's scripts failed in Node: see its message above.",
        );
        let types = types
            .join()
            .unwrap_or_else(|_| Err("The type checker broke off.".into()));
        types.and(tests)
    })
}

fn processors() -> usize {
    std::thread::available_parallelism().map_or(1, NonZero::get)
}

fn browser() -> Outcome {
    build::build()?;
    setup::browser_test_packages()?;
    let programs = [
        ("XTASK", std::env::current_exe().unwrap_or_default()),
        ("CHROME", browsers::chromium_without_windows()?),
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
        ("FIREFOX", browsers::firefox()?),
        ("WEBKIT_DRIVER", browsers::webkit_driver()?),
        ("XVFB", browsers::xvfb()?),
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
