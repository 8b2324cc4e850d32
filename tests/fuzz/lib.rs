//! What holds for every request, however it came about.

use serde_json::Value;

/// Asks, and panics where the core breaks its word: the answer is an object, an error names its kind and says a sentence.
pub fn check(question: &str, request: &str) {
    match fasterby_core::ask_json(question, request) {
        Ok(answer) => {
            let answer: Value = serde_json::from_str(&answer).expect("answers are JSON");
            assert!(answer.is_object(), "{answer}");
        }
        Err(error) => {
            let error: Value = serde_json::from_str(&error).expect("errors are JSON");
            assert!(error["kind"].is_string() && error["field"].is_string(), "{error}");
            assert!(error["message"].as_str().is_some_and(|words| !words.is_empty()), "{error}");
        }
    }
}

/// The question that a byte stands for, `0` being the first.
pub fn question(byte: u8) -> &'static str {
    let questions = fasterby_core::questions::QUESTIONS;
    questions[usize::from(byte.wrapping_sub(b'0')) % questions.len()].id
}
