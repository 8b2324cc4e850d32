//! The questions: a request in, an answer out. One folder per question with its request and answer types, composed of the
//! layers below, all of which it may import; no algorithms. One line per question in [`ask`].

pub mod finish_time;
#[cfg(feature = "all")]
pub mod hold_or_fade;
#[cfg(feature = "all")]
pub mod leg_room;
#[cfg(feature = "all")]
pub mod next_gain;
#[cfg(feature = "all")]
pub mod power_curve;
pub mod power_or_drag;
pub mod request;
pub mod speed_for_watts;
mod tree;
#[cfg(feature = "all")]
pub mod which_position;

use serde::Serialize;

use crate::inputs::error::{Error, Kind};
use crate::inputs::fields::{FIELDS, Field};
use crate::inputs::sources::{SOURCES, Source};
use request::read;

/// The questions by their names.
pub const QUESTIONS: &[&str] = &[
    "speed-for-watts",
    "power-or-drag",
    "finish-time",
    #[cfg(feature = "all")]
    "hold-or-fade",
    #[cfg(feature = "all")]
    "power-curve",
    #[cfg(feature = "all")]
    "next-gain",
    #[cfg(feature = "all")]
    "leg-room",
    #[cfg(feature = "all")]
    "which-position",
];

/// Takes an answer, whatever its type: as JSON, as values of JavaScript, or to measure it.
pub trait Receive {
    /// What it makes of the answer.
    type Out;
    /// Receives one answer.
    fn receive<A: Serialize>(self, answer: &A) -> Self::Out;
}

/// Answers a question. The request is JSON: `{ "scenario": {...}, "with": {...} }`, both optional.
///
/// # Errors
/// A named error for every request that cannot be answered; see [`Kind`].
pub fn ask<R: Receive>(question: &str, request: &str, to: R) -> Result<R::Out, Error> {
    match question {
        "speed-for-watts" => {
            speed_for_watts::answer(read(request)?).map(|answer| to.receive(&answer))
        }
        "power-or-drag" => power_or_drag::answer(read(request)?).map(|answer| to.receive(&answer)),
        "finish-time" => finish_time::answer(read(request)?).map(|answer| to.receive(&answer)),
        #[cfg(feature = "all")]
        "hold-or-fade" => hold_or_fade::answer(read(request)?).map(|answer| to.receive(&answer)),
        #[cfg(feature = "all")]
        "power-curve" => power_curve::answer(read(request)?).map(|answer| to.receive(&answer)),
        #[cfg(feature = "all")]
        "next-gain" => next_gain::answer(read(request)?).map(|answer| to.receive(&answer)),
        #[cfg(feature = "all")]
        "leg-room" => leg_room::answer(read(request)?).map(|answer| to.receive(&answer)),
        #[cfg(feature = "all")]
        "which-position" => {
            which_position::answer(read(request)?).map(|answer| to.receive(&answer))
        }
        _ => {
            let known = QUESTIONS.join(", ");
            Err(Error::new(
                Kind::UnknownQuestion,
                "",
                format!("There is no such question; there are {known}."),
            ))
        }
    }
}

struct Json;

impl Receive for Json {
    type Out = serde_json::Result<String>;
    fn receive<A: Serialize>(self, answer: &A) -> Self::Out {
        serde_json::to_string(answer)
    }
}

/// [`ask`] with the answer, or the error, as JSON.
///
/// # Errors
/// The error as JSON.
pub fn ask_json(question: &str, request: &str) -> Result<String, String> {
    match ask(question, request, Json) {
        Ok(Ok(answer)) => Ok(answer),
        Ok(Err(error)) => Err(error.to_string()),
        Err(error) => Err(serde_json::to_string(&error).unwrap_or(error.message)),
    }
}

/// Every bound, default and its evidence.
pub fn fields() -> &'static [&'static Field] {
    FIELDS
}

/// Every citation.
pub fn sources() -> &'static [Source] {
    SOURCES
}
