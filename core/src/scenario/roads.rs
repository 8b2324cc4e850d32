//! Which of a scenario's courses a question rides.

use super::Scenario;

/// Which of a scenario's courses are ridden, and whose `Scenario::course` is.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Roads {
    /// The scenario's alone.
    #[default]
    Usual,
    /// The scenario's, and those that events have of their own.
    AndEvents,
    /// That which the event of this place has of its own; it stands where the scenario's does.
    OfEvent(usize),
}

impl Scenario {
    /// The path of its course in the request.
    pub(crate) fn course_path(&self) -> String {
        match self.roads {
            Roads::OfEvent(place) => format!("scenario.events[{place}].course"),
            Roads::Usual | Roads::AndEvents => "scenario.course".to_owned(),
        }
    }
}
