//! Which of a scenario's courses a question rides; the module of a first visit rides no event's.

use super::Scenario;

/// Which of a scenario's courses are ridden, and whose `Scenario::course` is.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Roads {
    /// The scenario's alone.
    #[default]
    Usual,
    /// The scenario's, and those that events have of their own.
    #[cfg(feature = "all")]
    AndEvents,
    /// That which the event of this place has of its own; it stands where the scenario's does.
    #[cfg(feature = "all")]
    OfEvent(usize),
}

impl Scenario {
    /// The path of its course in the request.
    pub(crate) fn course_path(&self) -> String {
        match self.event_of_course() {
            Some(place) => format!("scenario.events[{place}].course"),
            None => "scenario.course".to_owned(),
        }
    }

    /// The event whose own course it is.
    pub(super) fn event_of_course(&self) -> Option<usize> {
        match self.roads {
            #[cfg(feature = "all")]
            Roads::OfEvent(place) => Some(place),
            _ => None,
        }
    }
}
