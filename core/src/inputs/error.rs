//! The one error type: what is wrong, in which field of the request, and the range where there is one.

use std::fmt;

use serde::Serialize;

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
    /// One sentence for people.
    pub message: String,
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
    pub fn new(kind: Kind, field: impl Into<String>, message: impl Into<String>) -> Self {
        Self {
            kind,
            field: field.into(),
            message: message.into(),
            min: None,
            max: None,
        }
    }

    /// A number outside `min` to `max`.
    pub fn out_of_range(
        field: impl Into<String>,
        value: f64,
        min: f64,
        max: f64,
        unit: &str,
    ) -> Self {
        let field = field.into();
        let space = if unit.is_empty() { "" } else { " " };
        let (is, low, high) = (decimal(value), decimal(min), decimal(max));
        Self {
            kind: Kind::OutOfRange,
            message: format!("{field} is {is}; it runs from {low} to {high}{space}{unit}."),
            field,
            min: Some(min),
            max: Some(max),
        }
    }

    /// A ride that cannot be ridden.
    pub fn impossible(field: impl Into<String>, message: impl Into<String>) -> Self {
        Self::new(Kind::Impossible, field, message)
    }
}

impl fmt::Display for Error {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.message)
    }
}

impl std::error::Error for Error {}

/// Formats a number for a message: the shortest text that reads back as it. The writer of JSON is linked already, and the
/// standard library's costs the module sixteen kilobytes.
pub fn decimal(number: f64) -> String {
    let text = serde_json::Number::from_f64(number)
        .map_or("not a number".to_owned(), |number| number.to_string());
    text.strip_suffix(".0").map(str::to_owned).unwrap_or(text)
}

/// Something legal but doubtful, said beside the answer.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Warning {
    /// The path in the request that the doubt is about; empty if it is the whole answer.
    pub field: String,
    /// A word the page can look up, such as `extrapolated`.
    pub kind: &'static str,
    /// One sentence for people.
    pub message: String,
}

impl Warning {
    /// A warning about one field.
    pub fn new(field: impl Into<String>, kind: &'static str, message: impl Into<String>) -> Self {
        Self {
            field: field.into(),
            kind,
            message: message.into(),
        }
    }
}
