//! What the built page weighs, beside its bounds.

use crate::command::Outcome;
use crate::{build, compress, first_load};
use std::collections::BTreeMap;
use std::ops::AddAssign;
use std::process::ExitCode;

/// Bounds of what a first visit fetches before it sees an answer, compressed by brotli; 1 KB is 1,000 bytes.
const FIRST_LOAD_BOUND_BYTES: usize = 200_000;
const WASM_BOUND_BYTES: usize = 120_000;
/// Bound of the module that reads recordings, likewise compressed; it is fetched when a first file is opened.
const RECORDINGS_BOUND_BYTES: usize = 60_000;
/// Bound of what is kept on a device for use without a network, likewise compressed, with the texts of one language.
const KEPT_BOUND_BYTES: usize = 800_000;
/// Bound of the page as one file, as it lies on a disk.
const ONE_FILE_BOUND_BYTES: usize = 1_000_000;

#[derive(Default)]
struct Weight {
    raw: usize,
    gzip: usize,
    brotli: usize,
}

impl AddAssign<&Weight> for Weight {
    fn add_assign(&mut self, other: &Weight) {
        self.raw += other.raw;
        self.gzip += other.gzip;
        self.brotli += other.brotli;
    }
}

/// Prints the table; the run fails if a bound is passed.
pub fn size() -> Outcome<ExitCode> {
    let version = build::build()?;
    let weights: Vec<_> = build::shipped()?
        .iter()
        .map(|(path, content)| (path.clone(), weigh(content)))
        .collect();
    let one_file = weights
        .iter()
        .find(|(path, _)| path == build::ONE_FILE)
        .map_or(0, |(_, weight)| weight.raw);
    let first_load = first_load::files(&version)?;
    let (first, mut later): (Vec<_>, Vec<_>) = weights
        .into_iter()
        .partition(|(path, _)| first_load.contains(path));
    later.retain(|(path, _)| build::is_kept_offline(path));
    let is_module = |path: &str| path.ends_with(build::FIRST_WASM);
    let module = first
        .iter()
        .find(|(path, _)| is_module(path))
        .map_or(0, |(_, weight)| weight.brotli);

    let languages = first_load::languages()?;
    let mut texts: BTreeMap<&str, usize> = BTreeMap::new();
    for (path, weight) in first.iter().chain(&later) {
        if let Some(language) = build::language_of(&languages, path) {
            *texts.entry(language).or_default() += weight.brotli;
        }
    }

    let recordings = later
        .iter()
        .find(|(path, _)| path.ends_with(build::RECORDINGS_WASM))
        .map_or(usize::MAX, |(_, weight)| weight.brotli);

    for (language, weight) in &texts {
        println!("texts of {language}, brotli      {weight:>8}");
    }
    println!("{:<44}{:>10}{:>10}{:>10}", "bytes", "raw", "gzip", "brotli");
    let mut total = Weight::default();
    print_rows(&first, &mut total);
    print_row("= first load", &total);
    let first_load = total.brotli;
    print_rows(&later, &mut total);
    print_row("= all of it", &total);
    // What a first visit fetches is kept too, but for the module that the whole one stands for, and the texts of one language.
    let kept =
        total.brotli - module - texts.values().sum::<usize>() + texts.values().max().unwrap_or(&0);

    let bounds = [
        print_bound("first load, brotli", first_load, FIRST_LOAD_BOUND_BYTES),
        print_bound("of which wasm, brotli", module, WASM_BOUND_BYTES),
        print_bound("recordings, brotli", recordings, RECORDINGS_BOUND_BYTES),
        print_bound(
            "kept for use without a network, brotli",
            kept,
            KEPT_BOUND_BYTES,
        ),
        print_bound("page as one file, raw", one_file, ONE_FILE_BOUND_BYTES),
    ];
    Ok(if bounds == [true; 5] {
        ExitCode::SUCCESS
    } else {
        ExitCode::FAILURE
    })
}

fn weigh(content: &[u8]) -> Weight {
    Weight {
        raw: content.len(),
        gzip: compress::gzip(content).len(),
        brotli: compress::brotli(content).len(),
    }
}

fn print_rows(rows: &[(String, Weight)], total: &mut Weight) {
    for (path, weight) in rows {
        print_row(path, weight);
        *total += weight;
    }
}

fn print_row(name: &str, weight: &Weight) {
    println!(
        "{name:<44}{:>10}{:>10}{:>10}",
        weight.raw, weight.gzip, weight.brotli
    );
}

fn print_bound(name: &str, bytes: usize, bound: usize) -> bool {
    let verdict = if bytes <= bound { "within" } else { "OVER" };
    println!(
        "{name:<22} {bytes:>8} of {bound} bytes, {verdict} the bound ({:.0} %)",
        100.0 * bytes as f64 / bound as f64
    );
    bytes <= bound
}
