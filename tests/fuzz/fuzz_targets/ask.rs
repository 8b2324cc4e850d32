//! Arbitrary bytes: the first picks the question, the rest is the request.

#![no_main]

use fasterby_fuzz::{check, question};
use libfuzzer_sys::fuzz_target;

fuzz_target!(|bytes: &[u8]| {
    if let Some((&first, rest)) = bytes.split_first()
        && let Ok(request) = std::str::from_utf8(rest)
    {
        check(question(first), request);
    }
});
