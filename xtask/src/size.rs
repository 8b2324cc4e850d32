//! What the built page weighs, beside its bounds.

use crate::command::Outcome;
use crate::{build, serve};
use flate2::Compression;
use std::process::ExitCode;

/// Bounds of what a first visit fetches, compressed by brotli; 1 KB is 1,000 bytes.
const FIRST_LOAD_BOUND_BYTES: usize = 200_000;
const WASM_BOUND_BYTES: usize = 120_000;
/// What hosts of static files use for files that they compress once.
const BROTLI_QUALITY: i32 = 11;
const BROTLI_WINDOW_BITS: i32 = 22;

struct Weight {
    raw: usize,
    gzip: usize,
    brotli: usize,
}

/// Prints the table; the run fails if a bound is passed.
pub fn size() -> Outcome<ExitCode> {
    build::build()?;
    println!("{:<34}{:>10}{:>10}{:>10}", "bytes", "raw", "gzip", "brotli");
    let (mut total, mut module) = (Weight { raw: 0, gzip: 0, brotli: 0 }, 0);
    for (path, content) in build::shipped()? {
        let weight = weigh(&content);
        print_row(&path, &weight);
        total = Weight {
            raw: total.raw + weight.raw,
            gzip: total.gzip + weight.gzip,
            brotli: total.brotli + weight.brotli,
        };
        if path.ends_with(".wasm") {
            module += weight.brotli;
        }
    }
    print_row("first load, everything kept offline", &total);
    let first_load_fits = print_bound("first load", total.brotli, FIRST_LOAD_BOUND_BYTES);
    let module_fits = print_bound("of which wasm", module, WASM_BOUND_BYTES);
    Ok(if first_load_fits && module_fits { ExitCode::SUCCESS } else { ExitCode::FAILURE })
}

fn weigh(content: &[u8]) -> Weight {
    let parameters =
        brotli::enc::BrotliEncoderParams { quality: BROTLI_QUALITY, lgwin: BROTLI_WINDOW_BITS, ..Default::default() };
    let mut compressed = Vec::new();
    // Reading from and writing into memory does not fail.
    brotli::BrotliCompress(&mut &content[..], &mut compressed, &parameters).ok();
    Weight { raw: content.len(), gzip: serve::gzip(content, Compression::best()).len(), brotli: compressed.len() }
}

fn print_row(name: &str, weight: &Weight) {
    println!("{name:<34}{:>10}{:>10}{:>10}", weight.raw, weight.gzip, weight.brotli);
}

fn print_bound(name: &str, bytes: usize, bound: usize) -> bool {
    let verdict = if bytes <= bound { "within" } else { "OVER" };
    println!(
        "{name:<14} {bytes:>8} of {bound} bytes, {verdict} the bound ({:.0} %)",
        100.0 * bytes as f64 / bound as f64
    );
    bytes <= bound
}
