//! What Lighthouse thinks of the built page, on the phone that it emulates, beside the bounds.

use crate::command::{Outcome, command, output_of, say};
use crate::content::read_text;
use crate::{browsers, build, paths, serve};
use serde_json::Value;
use std::path::Path;

/// Fetched when it is asked for: too large to install with the page's own tools.
const LIGHTHOUSE: &str = "lighthouse@12.8.2";
/// Its categories, and the least score of each. A busy machine loses points of performance.
const BOUNDS: [(&str, u32); 3] = [
    ("accessibility", 100),
    ("best-practices", 100),
    ("performance", 95),
];
const STORY: &str = "start-here";
/// What the score of performance is made of.
const METRICS: [&str; 4] = [
    "first-contentful-paint",
    "largest-contentful-paint",
    "total-blocking-time",
    "cumulative-layout-shift",
];
/// Now and then the browser gives it no trace of a visit.
const TRIES: usize = 3;
const NO_SCORE: &str = "Lighthouse gave no score of performance: try again on a quieter machine.";
const FAILED: &str = "Lighthouse did not finish: see its message above; it is fetched by npm, which needs a network.";

/// Prints the scores, and under each that is not full what took points.
pub fn lighthouse() -> Outcome {
    build::build()?;
    let chromium = browsers::chromium()?;
    let server = serve::Server::bind(paths::dist(), 0)?;
    let address = server.address();
    server.run_aside();
    for page in pages()? {
        say(&format!("Lighthouse at /{page}"));
        let report = report_of(&format!("{address}{page}"), &chromium)?;
        let metrics = METRICS.map(|metric| {
            let audit = &report["audits"][metric];
            format!(
                "{} {}",
                audit["title"].as_str().unwrap_or(metric),
                audit["displayValue"].as_str().unwrap_or("unknown")
            )
        });
        println!("{}", metrics.join(", "));
        for (category, least) in BOUNDS {
            let score = percent(&report["categories"][category]["score"]);
            println!(
                "{category:<16}{score:>4} of {least}{}",
                if score >= least { "" } else { ", UNDER" }
            );
            lost(&report, category)
                .iter()
                .for_each(|line| println!("    {line}"));
        }
    }
    Ok(())
}

/// The page as it opens, the story, and each question that has a page.
fn pages() -> Outcome<Vec<String>> {
    let has_page = |id: &&str| {
        let script = format!("questions/{id}.js");
        paths::www().join(script).is_file()
    };
    let tables: Value = serde_json::from_str(&read_text(&build::tables_file())?)
        .map_err(|error| error.to_string())?;
    let questions = tables["questions"].as_array().into_iter().flatten();
    let ids = questions
        .filter_map(|question| question["id"].as_str())
        .filter(has_page);
    let opened = [STORY].into_iter().chain(ids);
    Ok([String::new()]
        .into_iter()
        .chain(opened.map(|id| format!("#{id}")))
        .collect())
}

/// One visit, again where it gave no score of performance.
fn report_of(address: &str, chromium: &Path) -> Outcome<Value> {
    let mut outcome = Err(NO_SCORE.to_string());
    for _ in 0..TRIES {
        outcome = visit(address, chromium);
        if outcome.is_ok() {
            break;
        }
    }
    outcome
}

fn visit(address: &str, chromium: &Path) -> Outcome<Value> {
    let report = output_of(
        command("npx")
            .args(["--yes", LIGHTHOUSE, address, "--quiet", "--output=json"])
            .args([
                "--only-categories",
                &BOUNDS.map(|(category, _)| category).join(","),
            ])
            .arg("--chrome-flags=--headless=new --no-sandbox")
            .env("CHROME_PATH", chromium),
        FAILED,
    )?;
    let report: Value = serde_json::from_str(&report)
        .map_err(|error| format!("Lighthouse's report cannot be read: {error}."))?;
    let has_score = report["categories"]["performance"]["score"].is_number();
    has_score
        .then_some(report)
        .ok_or_else(|| NO_SCORE.to_string())
}

fn percent(score: &Value) -> u32 {
    (100.0 * score.as_f64().unwrap_or(0.0)).round() as u32
}

/// The audits that count in a category and took points from it.
fn lost(report: &Value, category: &str) -> Vec<String> {
    let counted = report["categories"][category]["auditRefs"]
        .as_array()
        .into_iter()
        .flatten();
    counted
        .filter(|audit| audit["weight"].as_f64().is_some_and(|weight| weight > 0.0))
        .filter_map(|audit| {
            let audit = &report["audits"][audit["id"].as_str()?];
            let score = audit["score"].as_f64().filter(|&score| score < 1.0)?;
            let title = audit["title"].as_str().unwrap_or_default();
            Some(format!(
                "{title}: {:.0}, {}",
                100.0 * score,
                audit["displayValue"].as_str().unwrap_or("not passed")
            ))
        })
        .collect()
}
