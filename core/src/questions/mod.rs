//! The questions: a request in, an answer out. One folder per question: `with` what it takes, `answer` what it gives, `mod`
//! how that is composed of the layers below, all of which it may import; no algorithms. One line per question in [`ask`].

#[cfg(feature = "all")]
pub mod course;
#[cfg(feature = "all")]
pub mod drag_test;
#[cfg(feature = "all")]
pub mod finish_time;
#[cfg(feature = "all")]
pub mod hold_or_fade;
#[cfg(feature = "all")]
pub mod leg_room;
mod mistake;
#[cfg(feature = "all")]
pub mod next_gain;
#[cfg(feature = "all")]
pub mod power_curve;
pub mod power_or_drag;
pub mod request;
#[cfg(feature = "all")]
pub mod ride_plan;
pub mod speed_for_watts;
mod tree;
#[cfg(feature = "all")]
pub mod which_position;

use std::collections::BTreeMap;

use serde::Serialize;

use crate::inputs::error::{Error, Kind};
use crate::inputs::fields::{FIELDS, Field, MOST, Most};
use crate::inputs::message::{self, MESSAGES, Sentence};
use crate::inputs::published::{PUBLISHED, Published};
use crate::inputs::sources::{SOURCES, Source};
use crate::scenario::{Event, VERSION, usual_events, usual_metric_events};
use request::read;

/// Takes an answer, whatever its type: as JSON, as values of JavaScript, or to measure it.
pub trait Receive {
    /// What it makes of the answer.
    type Out;
    /// Receives one answer.
    fn receive<A: Serialize>(self, answer: &A) -> Self::Out;
}

/// A question of the table.
#[derive(Clone, Copy, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Question {
    /// Its name at the boundary.
    pub id: &'static str,
    /// The wasm module that answers it on a first visit.
    pub module: Module,
}

/// The core is compiled to two modules, so that a first visit fetches little.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Module {
    /// The small one, without the feature `all`.
    First,
    /// The one that answers every question.
    Whole,
}

macro_rules! questions {
    ($($(#[$only:meta])? $id:literal: $question:ident, $module:ident;)*) => {
        /// The questions, in the order in which they were added.
        pub const QUESTIONS: &[Question] = &[
            $($(#[$only])? Question { id: $id, module: Module::$module },)*
        ];

        /// Answers a question. The request is JSON: `{ "scenario": {...}, "with": {...} }`, both optional.
        ///
        /// # Errors
        /// A named error for every request that cannot be answered; see [`Kind`].
        pub fn ask<R: Receive>(question: &str, request: &str, to: R) -> Result<R::Out, Error> {
            ask_with_columns(question, request, &[], to)
        }

        /// [`ask`] with columns of numbers beside the text, in which `{ "column": N }` stands for the Nth of them wherever a
        /// list of numbers may stand. What is no number in a column is missing.
        ///
        /// # Errors
        /// As for [`ask`].
        pub fn ask_with_columns<R: Receive>(
            question: &str,
            request: &str,
            columns: &[Vec<f64>],
            to: R,
        ) -> Result<R::Out, Error> {
            match question {
                $($(#[$only])? $id => $question::answer(read(request, columns)?).map(|answer| to.receive(&answer)),)*
                _ => Err(no_such_question()),
            }
        }
    };
}

questions! {
    "speed-for-watts": speed_for_watts, First;
    "power-or-drag": power_or_drag, First;
    #[cfg(feature = "all")] "finish-time": finish_time, Whole;
    #[cfg(feature = "all")] "hold-or-fade": hold_or_fade, Whole;
    #[cfg(feature = "all")] "power-curve": power_curve, Whole;
    #[cfg(feature = "all")] "next-gain": next_gain, Whole;
    #[cfg(feature = "all")] "leg-room": leg_room, Whole;
    #[cfg(feature = "all")] "which-position": which_position, Whole;
    #[cfg(feature = "all")] "drag-test": drag_test, Whole;
    #[cfg(feature = "all")] "ride-plan": ride_plan, Whole;
    #[cfg(feature = "all")] "course": course, Whole;
}

fn no_such_question() -> Error {
    let known: Vec<&str> = QUESTIONS.iter().map(|question| question.id).collect();
    let known = known.join(", ");
    Error::new(Kind::UnknownQuestion, "", message::unknown_question(&known))
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
        Err(error) => Err(serde_json::to_string(&error).unwrap_or_else(|_| error.to_string())),
    }
}

/// What the page must know of the core before it asks: the build writes it into the page's scripts.
#[derive(Clone, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Tables {
    /// The questions and the module that answers each.
    pub questions: &'static [Question],
    /// Every field: bounds, default and its evidence.
    pub fields: &'static [&'static Field],
    /// What each field's default and ranges rest on, by its key.
    pub notes: BTreeMap<&'static str, &'static str>,
    /// Every citation.
    pub sources: &'static [Source],
    /// Every sentence that the core says, in English.
    pub messages: &'static [Sentence],
    /// Published figures that the page quotes.
    pub published: &'static Published,
    /// The most of each that is taken.
    pub most: &'static Most,
    /// The version of the scenario that is written.
    #[cfg_attr(feature = "types", ts(type = "number"))]
    pub scenario_version: u64,
    /// The events of a scenario that names none.
    pub usual_events: Vec<Event>,
    /// The same for riders whose distances are metric.
    pub usual_metric_events: Vec<Event>,
}

/// The tables.
pub fn tables() -> Tables {
    Tables {
        questions: QUESTIONS,
        fields: FIELDS,
        notes: FIELDS.iter().map(|field| (field.key, field.note)).collect(),
        sources: SOURCES,
        messages: MESSAGES,
        published: &PUBLISHED,
        most: &MOST,
        scenario_version: VERSION,
        usual_events: usual_events(),
        usual_metric_events: usual_metric_events(),
    }
}
