//! Reading a request: JSON to checked structs, every mistake named by its path.

use serde::de::{DeserializeOwned, IgnoredAny};
use serde::{Deserialize, Serialize};

use crate::bounds::{self, Field};
use crate::effort::{Effort, NoEffort};
use crate::error::{Error, Kind, Warning};
use crate::quantity::Quantity;
use crate::scenario::{Scenario, VERSION, check_quantity, version_error};

/// A checked request: the scenario, its warnings, and what the question asks with.
#[derive(Clone, Debug)]
pub struct Request<W> {
    /// The rider, course and day.
    pub scenario: Scenario,
    /// What the question itself takes.
    pub with: W,
    /// What is legal but doubtful.
    pub warnings: Vec<Warning>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Form<W: Default> {
    #[serde(default)]
    scenario: Scenario,
    #[serde(default)]
    with: W,
}

/// The version alone, so that a newer scenario is refused for being newer and not for a field it has.
#[derive(Deserialize)]
struct VersionForm {
    scenario: Option<VersionedForm>,
}

#[derive(Deserialize)]
struct VersionedForm {
    fasterby: Option<u64>,
    #[serde(flatten)]
    _rest: std::collections::BTreeMap<String, IgnoredAny>,
}

/// Reads and checks a request.
///
/// # Errors
/// [`Kind::TooLarge`] before anything is read; then the first mistake, by its path.
pub fn read<W: DeserializeOwned + Default>(text: &str) -> Result<Request<W>, Error> {
    if text.len() > bounds::MOST_REQUEST_BYTES {
        let message =
            format!("The request is larger than {} bytes, the most that is read.", bounds::MOST_REQUEST_BYTES);
        return Err(Error::new(Kind::TooLarge, "", message));
    }
    if let Some(version) = version_of(text)
        && version != VERSION
    {
        return Err(version_error(version));
    }
    let mut deserializer = serde_json::Deserializer::from_str(text);
    let form: Form<W> = serde_path_to_error::deserialize(&mut deserializer).map_err(named)?;
    deserializer.end().map_err(|error| Error::new(Kind::WrongType, "", plain(&error.to_string())))?;
    let warnings = form.scenario.check()?;
    Ok(Request { scenario: form.scenario, with: form.with, warnings })
}

fn version_of(text: &str) -> Option<u64> {
    serde_json::from_str::<VersionForm>(text).ok()?.scenario?.fasterby
}

/// A reader's error with its path, its kind read off its words.
fn named(error: serde_path_to_error::Error<serde_json::Error>) -> Error {
    let message = plain(&error.inner().to_string());
    let kind = match message.split(' ').next() {
        Some("unknown") if message.starts_with("unknown field") => Kind::UnknownField,
        Some("missing") => Kind::Missing,
        Some("too") => Kind::TooLarge,
        _ => Kind::WrongType,
    };
    let path = error.path().to_string();
    let field =
        match quoted(&message) {
            Some(name) if kind == Kind::Missing || (kind == Kind::UnknownField && !path.ends_with(name)) => {
                if path == "." { name.to_owned() } else { format!("{path}.{name}") }
            }
            _ if path == "." => String::new(),
            _ => path,
        };
    Error::new(kind, field, message)
}

/// A reader's message without its place in the text, as a sentence.
fn plain(message: &str) -> String {
    let end = message.find(" at line ").unwrap_or(message.len());
    // A long value is the caller's own and need not be sent back whole.
    let short: String = message[..end].chars().take(300).collect();
    format!("{short}.")
}

fn quoted(message: &str) -> Option<&str> {
    message.split('`').nth(1)
}

/// Which kind of effort.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum EffortKind {
    /// The best even effort.
    #[default]
    Even,
    /// A given power.
    Power,
    /// A given finish time.
    Time,
}

/// An effort as requests write it: `{ "kind": "even" }`, `{ "kind": "power", "power_w": 260 }`,
/// `{ "kind": "time", "time_s": 3600 }`.
#[derive(Clone, Copy, Debug, Default, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(default, deny_unknown_fields)]
pub struct EffortForm {
    /// Which kind.
    pub kind: EffortKind,
    /// W, for a given power.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "types", ts(optional))]
    pub power_w: Option<Quantity>,
    /// s, for a given finish time.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "types", ts(optional))]
    pub time_s: Option<f64>,
}

impl EffortForm {
    /// Checks the effort.
    ///
    /// # Errors
    /// Names the part of `with.effort` that is missing, misplaced or out of range.
    pub fn check(&self) -> Result<Effort, Error> {
        let misplaced = |name: &str| {
            let field = format!("with.effort.{name}");
            Error::new(Kind::Conflict, &field, format!("{field} does not belong to this kind of effort."))
        };
        match (self.kind, self.power_w, self.time_s) {
            (EffortKind::Even, None, None) => Ok(Effort::Even),
            (EffortKind::Power, Some(power_w), None) => {
                check_quantity(&bounds::POWER_W, "with.effort.power_w", &power_w)?;
                Ok(Effort::Power(power_w.value))
            }
            (EffortKind::Time, None, Some(time_s)) => {
                check_number(&bounds::TIME_S, "with.effort.time_s", time_s)?;
                Ok(Effort::Time(time_s))
            }
            (EffortKind::Even | EffortKind::Time, Some(_), _) => Err(misplaced("power_w")),
            (EffortKind::Even | EffortKind::Power, _, Some(_)) => Err(misplaced("time_s")),
            (EffortKind::Power, None, None) => Err(missing("with.effort.power_w")),
            (EffortKind::Time, None, None) => Err(missing("with.effort.time_s")),
        }
    }
}

/// A field that must be there.
pub fn missing(field: &str) -> Error {
    Error::new(Kind::Missing, field, format!("{field} is missing."))
}

/// Checks a plain number of the question's own.
///
/// # Errors
/// Names `path`.
pub fn check_number(field: &Field, path: &str, value: f64) -> Result<(), Error> {
    field.check(|| path.to_owned(), value)
}

/// An effort without an answer, as an error.
pub fn no_effort(reason: NoEffort) -> Error {
    match reason {
        NoEffort::Stalls(stall) => Error::impossible(
            "scenario.course",
            format!(
                "The rider comes to a stop after {:.0} m: too little power for this road and wind.",
                stall.distance_m
            ),
        ),
        NoEffort::OutOfReach => {
            Error::impossible("with.effort.time_s", "No power from 1 to 2500 W gives this time on this course.")
        }
        NoEffort::NothingSustainable => {
            Error::impossible("scenario.power", "This power curve falls to nothing before the finish.")
        }
    }
}
