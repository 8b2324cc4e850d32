//! Reading a request: JSON to checked structs, every mistake named by its path.

use serde::de::DeserializeOwned;
use serde::{Deserialize, Serialize};
use serde_json::Value;

use super::mistake::Mistake;
use super::tree::Node;
use crate::inputs::error::{Error, Kind, Warning};
use crate::inputs::fields::{self, Field};
use crate::inputs::message;
use crate::inputs::quantity::Quantity;
use crate::riding::effort::Effort;
#[cfg(feature = "all")]
use crate::scenario::Roads;
use crate::scenario::{OLDEST, Scenario, VERSION, check_quantity, version_error};

/// The path of the scenario's own course.
#[cfg(feature = "all")]
const COURSE: &str = "scenario.course";

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

/// Answers on the course of one of the scenario's events: its own, or the scenario's made longer or shorter.
///
/// # Errors
/// Names `with.event` where there is no such event, and as `answer` does; what is wrong with the course at the event's.
#[cfg(feature = "all")]
pub(super) fn on_event<W, A>(
    mut request: Request<W>,
    place: usize,
    answer: impl FnOnce(Request<W>) -> Result<A, Error>,
) -> Result<A, Error> {
    let Request {
        scenario, warnings, ..
    } = &mut request;
    Error::check_index("with.event", place, scenario.events.len())?;
    let goes_by_time = scenario.events[place].duration_s.is_some();
    let mut doubts = Vec::new();
    scenario.doubt_road(&mut doubts);
    warnings.retain(|warning| !doubts.contains(warning));
    if let Some(there) = scenario.on_event(place) {
        *scenario = there;
    }
    let path = scenario.course_path();
    if scenario.roads != Roads::Usual {
        warnings.retain(|warning| !warning.field.starts_with(COURSE));
    }
    scenario.doubt_road(warnings);
    warnings.extend(scenario.simplify_course(fields::MOST_POINTS_RIDDEN));
    answer(request).map_err(|error| match error.field.as_str() {
        COURSE => Error {
            field: path,
            ..error
        },
        field if goes_by_time && field.strip_prefix(path.as_str()) == Some(".duration_s") => {
            Error {
                field: format!("scenario.events[{place}].duration_s"),
                ..error
            }
        }
        _ => error,
    })
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Form<W: Default> {
    #[serde(default)]
    scenario: Scenario,
    #[serde(default)]
    with: W,
}

/// Reads and checks a request; in its text `{ "column": N }` stands for the Nth of the columns beside it.
///
/// # Errors
/// [`Kind::TooLarge`] before anything is read; then the first mistake, by its path.
pub fn read<W: DeserializeOwned + Default>(
    text: &str,
    columns: &[Vec<f64>],
) -> Result<Request<W>, Error> {
    if text.len() > fields::MOST_REQUEST_BYTES {
        let message = message::too_large(fields::MOST_REQUEST_BYTES);
        return Err(Error::new(Kind::TooLarge, "", message));
    }
    // Some editors begin a file with the mark of its byte order.
    let text = text.strip_prefix('\u{feff}').unwrap_or(text);
    let tree: Value = serde_json::from_str(text).map_err(not_json)?;
    // A newer scenario is refused for being newer, not for a field that it has.
    if let Some(version) = tree["scenario"]["fasterby"].as_u64()
        && !(OLDEST..=VERSION).contains(&version)
    {
        return Err(version_error(version));
    }
    let node = Node {
        value: &tree,
        columns,
    };
    let Form { mut scenario, with } = Form::<W>::deserialize(node).map_err(Mistake::into_error)?;
    let mut warnings = scenario.check()?;
    warnings.extend(scenario.simplify_course(fields::MOST_POINTS_RIDDEN));
    scenario.conditions = scenario.conditions.with_forecast_uncertainty();
    Ok(Request {
        scenario,
        with,
        warnings,
    })
}

/// What the parser says, without the place in the text.
fn not_json(error: serde_json::Error) -> Error {
    let why = error.to_string();
    let why = why.split(" at line ").next().unwrap_or_default();
    Error::new(Kind::WrongType, "", message::not_json(why))
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
            let message = message::effort_without(&field);
            Error::new(Kind::Conflict, field, message)
        };
        match (self.kind, self.power_w, self.time_s) {
            (EffortKind::Even, None, None) => Ok(Effort::Even),
            (EffortKind::Power, Some(power_w), None) => {
                check_quantity(&fields::POWER_W, "with.effort.power_w", &power_w)?;
                Ok(Effort::Power(power_w.value))
            }
            (EffortKind::Time, None, Some(time_s)) => {
                check_number(&fields::TIME_S, "with.effort.time_s", time_s)?;
                Ok(Effort::Time(time_s))
            }
            (EffortKind::Even | EffortKind::Time, Some(_), _) => Err(misplaced("power_w")),
            (EffortKind::Even | EffortKind::Power, _, Some(_)) => Err(misplaced("time_s")),
            (EffortKind::Power, None, None) => Err(Error::missing("with.effort.power_w")),
            (EffortKind::Time, None, None) => Err(Error::missing("with.effort.time_s")),
        }
    }

    /// Checks an effort at which finish times are compared: a given time compares nothing.
    ///
    /// # Errors
    /// As [`check`](Self::check), and names `with.effort.kind` of a given time.
    pub(super) fn check_comparing(&self) -> Result<Effort, Error> {
        match self.check()? {
            Effort::Time(_) => {
                let message = message::fixed_time_compares_nothing();
                Err(Error::new(Kind::Conflict, "with.effort.kind", message))
            }
            effort => Ok(effort),
        }
    }
}

/// Checks a plain number of the question's own.
///
/// # Errors
/// Names `path`.
pub fn check_number(field: &Field, path: &str, value: f64) -> Result<(), Error> {
    field.check(|| path.to_owned(), value)
}
