//! The one error type: what is wrong, in which field of the request, and the range where there is one.

use std::fmt;

use serde::Serialize;

use crate::inputs::fields::{MOST_TEXT_BYTES, QuantityKind};
use crate::inputs::message::{self, Message};

/// What kind of thing is wrong with a request.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Kind {
    /// A number outside its hard range.
    OutOfRange,
    /// NaN or an infinity.
    NotFinite,
    /// A value of another type than the field holds.
    WrongType,
    /// A field that does not exist.
    UnknownField,
    /// A field that must be there.
    Missing,
    /// Two fields that contradict each other.
    Conflict,
    /// A question that does not exist.
    UnknownQuestion,
    /// A scenario written by a newer version.
    NewerVersion,
    /// More points, text or bytes than are read.
    TooLarge,
    /// A ride that cannot be ridden: the rider stalls, or no effort gives the time asked for.
    Impossible,
}

/// An error as a value: it names the field by its path in the request and says what would be right.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Error {
    /// What kind of thing is wrong.
    pub kind: Kind,
    /// The path in the request, such as `scenario.positions[0].cda_m2`; empty if it is the whole request.
    pub field: String,
    /// What is said of it.
    #[serde(flatten)]
    pub message: Message,
    /// The least value allowed, where there is a range.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "types", ts(optional))]
    pub min: Option<f64>,
    /// The greatest value allowed, where there is a range.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "types", ts(optional))]
    pub max: Option<f64>,
}

impl Error {
    /// An error without a range.
    pub fn new(kind: Kind, field: impl Into<String>, message: Message) -> Self {
        Self {
            kind,
            field: field.into(),
            message,
            min: None,
            max: None,
        }
    }

    /// A field that must be there.
    pub fn missing(field: impl Into<String>) -> Self {
        let field = field.into();
        let message = message::missing(&field);
        Self::new(Kind::Missing, field, message)
    }

    /// A number of some kind outside `min` to `max`.
    pub fn out_of_range(
        field: impl Into<String>,
        kind: QuantityKind,
        value: f64,
        min: f64,
        max: f64,
    ) -> Self {
        let field = field.into();
        Self {
            kind: Kind::OutOfRange,
            message: message::out_of_range(&field, (kind, value), (kind, min), (kind, max)),
            field,
            min: Some(min),
            max: Some(max),
        }
    }

    /// A list of more than `most` entries.
    pub(crate) fn too_many(field: impl Into<String>, most: usize) -> Self {
        let field = field.into();
        let message = message::too_many(&field, most);
        Self::new(Kind::TooLarge, field, message)
    }

    /// Checks that a text is no longer than a name or a note may be.
    pub(crate) fn check_text(text: &str, field: impl FnOnce() -> String) -> Result<(), Self> {
        if text.len() <= MOST_TEXT_BYTES {
            return Ok(());
        }
        let field = field();
        let message = message::too_long(&field, MOST_TEXT_BYTES);
        Err(Self::new(Kind::TooLarge, field, message))
    }

    /// Checks that an index is below a count.
    pub(crate) fn check_index(field: &str, index: usize, count: usize) -> Result<usize, Self> {
        if index < count {
            return Ok(index);
        }
        let last = count.saturating_sub(1) as f64;
        let kind = QuantityKind::Ratio;
        Err(Self::out_of_range(field, kind, index as f64, 0.0, last))
    }

    /// A ride that cannot be ridden.
    pub fn impossible(field: impl Into<String>, message: Message) -> Self {
        Self::new(Kind::Impossible, field, message)
    }

    /// A position that the scenario has not.
    pub(crate) fn no_such_position() -> Self {
        Self::impossible("scenario.positions", message::no_such_position())
    }

    /// An event that the scenario has not.
    #[cfg(feature = "all")]
    pub(crate) fn no_such_event() -> Self {
        Self::impossible("scenario.events", message::no_event())
    }

    /// Two fields of which only one may be given.
    pub fn not_both(field: impl Into<String>, other: &str) -> Self {
        let field = field.into();
        let message = message::not_both(&field, other);
        Self::new(Kind::Conflict, field, message)
    }
}

impl fmt::Display for Error {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.message.fmt(f)
    }
}

impl std::error::Error for Error {}

/// Something legal but doubtful, said beside the answer.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Warning {
    /// The path in the request that the doubt is about; empty if it is the whole answer.
    pub field: String,
    /// A word the page can look up, such as `extrapolated`.
    pub kind: &'static str,
    /// What is said of it.
    #[serde(flatten)]
    pub message: Message,
}

impl Warning {
    /// A warning about one field.
    pub fn new(field: impl Into<String>, kind: &'static str, message: Message) -> Self {
        Self {
            field: field.into(),
            kind,
            message,
        }
    }

    /// A warning whose kind is the name of what is said.
    pub fn of(field: impl Into<String>, message: Message) -> Self {
        Self::new(field, message.text, message)
    }
}
