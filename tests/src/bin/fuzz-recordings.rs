//! Altered files against the readers of recordings, so many seconds for each kind: `cargo xtask fuzz-recordings SECONDS`.
//! A failure prints the seed of its file.

use fasterby_tests::altered::{altered, check};
use fasterby_tests::made_rides::{csv, fit, gpx, tcx};
use fastrand::Rng;
use std::panic::catch_unwind;
use std::process::ExitCode;
use std::time::{Duration, Instant};

const RECORDS: usize = 40;

fn main() -> ExitCode {
    let words: Vec<String> = std::env::args().skip(1).collect();
    let seconds = words
        .first()
        .and_then(|word| word.parse().ok())
        .unwrap_or(60);
    let first_seed = words.get(1).and_then(|word| word.parse().ok()).unwrap_or(0);
    let utf16: Vec<u8> = "\u{feff}"
        .encode_utf16()
        .chain(gpx(RECORDS).encode_utf16())
        .flat_map(u16::to_le_bytes)
        .collect();
    let kinds: [(&str, Vec<Vec<u8>>); 4] = [
        (
            "FIT",
            vec![
                fit(RECORDS, false),
                fit(RECORDS, true),
                [fit(9, false), fit(9, true)].concat(),
            ],
        ),
        ("GPX", vec![gpx(RECORDS).into_bytes(), utf16]),
        ("TCX", vec![tcx(RECORDS).into_bytes()]),
        (
            "CSV",
            vec![
                csv(RECORDS).into_bytes(),
                csv(RECORDS)
                    .replace(',', ";")
                    .replace('.', ",")
                    .into_bytes(),
            ],
        ),
    ];
    let outcomes = kinds
        .map(|(kind, files)| for_so_long(kind, &files, Duration::from_secs(seconds), first_seed));
    if outcomes.contains(&false) {
        ExitCode::FAILURE
    } else {
        ExitCode::SUCCESS
    }
}

fn for_so_long(kind: &str, files: &[Vec<u8>], long: Duration, first_seed: u64) -> bool {
    let begun = Instant::now();
    let (mut tried, mut read, mut failed, mut slowest) = (0_u64, 0_u64, 0_u64, Duration::ZERO);
    while begun.elapsed() < long {
        let seed = first_seed + tried;
        let mut random = Rng::with_seed(seed);
        let file = &files[random.usize(..files.len())];
        let bytes = altered(file, &mut random);
        let length = 1 << random.u32(4..17);
        let start = Instant::now();
        match catch_unwind(|| check(&bytes, length)) {
            Ok(was_read) => read += u64::from(was_read),
            Err(_) => {
                eprintln!("{kind}: seed {seed}");
                failed += 1;
            }
        }
        slowest = slowest.max(start.elapsed());
        tried += 1;
    }
    println!(
        "{kind}: {tried} altered files, {read} of them read, {failed} failures, slowest {:.1} ms",
        slowest.as_secs_f64() * 1e3
    );
    failed == 0
}
