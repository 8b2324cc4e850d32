//! The courses that events are ridden on: their own, or the scenario's made longer or shorter.

use super::{Course, Event, Roads, Scenario};
use crate::inputs::error::{Error, Warning};
use crate::inputs::fields;
use crate::inputs::message;

impl Event {
    /// How far it is, m: the length of its own course, or as given. Of an event that goes by time, once that is settled.
    pub fn length_m(&self) -> f64 {
        match &self.course {
            Some(course) => course.length_m(),
            None => self.distance_m.unwrap_or(fields::EVENT_DISTANCE_M.default),
        }
    }
}

impl Scenario {
    /// The scenario on the course of one of its events, which it names no longer: on the event's own, or on its own course made
    /// longer or shorter. The day is the same for all: a given altitude holds there too, else each profile's points tell. One that
    /// goes by time hands its time to the course, to be settled there, unless its distance is known already.
    /// `None` for a place without an event.
    pub fn on_event(&self, place: usize) -> Option<Self> {
        let event = self.events.get(place)?;
        let unsettled_s = event.duration_s.filter(|_| event.distance_m.is_none());
        Some(match (&event.course, unsettled_s) {
            (Some(own), unsettled_s) => {
                let own = Course {
                    duration_s: unsettled_s.or(own.duration_s),
                    ..own.clone()
                };
                self.on_course(own, Roads::OfEvent(place))
            }
            (None, Some(duration_s)) => {
                let lasting = Course {
                    distance_m: None,
                    duration_s: Some(duration_s),
                    ..self.course.clone()
                };
                self.on_course(lasting, Roads::Usual)
            }
            (None, None) => self.stretched_to(event.length_m()),
        })
    }

    /// The scenario on its own course at another length: slopes and headings stay, and so does the mean elevation of its points.
    pub(crate) fn stretched_to(&self, distance_m: f64) -> Self {
        self.on_course(self.course_of_length(distance_m), Roads::Usual)
    }

    /// The scenario without its events, on a course. Their courses may be long, and a draw has no need of them.
    fn on_course(&self, course: Course, roads: Roads) -> Self {
        Self {
            fasterby: self.fasterby,
            title: String::new(),
            rider: self.rider.clone(),
            bike: self.bike.clone(),
            positions: self.positions.clone(),
            riding_position: self.riding_position,
            power: self.power.clone(),
            efforts: Vec::new(),
            events: Vec::new(),
            course,
            conditions: self.conditions.clone(),
            start: self.start,
            stops: self.stops,
            feeding: self.feeding,
            model_error_share: self.model_error_share,
            roads,
        }
    }

    /// What is doubtful about the courses that events have of their own, for the questions that ride them. What holds of the
    /// scenario's course in the same words is not said again.
    pub(crate) fn event_doubts(&self) -> Vec<Warning> {
        let mut known = Vec::new();
        self.doubt_road(&mut known);
        let mut doubts = Vec::new();
        for place in self.own_courses() {
            let Some(there) = self.on_event(place) else {
                continue;
            };
            let mut own = Vec::new();
            there.doubt_road(&mut own);
            let new = own.into_iter().filter(|doubt| {
                known
                    .iter()
                    .all(|other| other.message != doubt.message || other.field != doubt.field)
            });
            doubts.extend(new.map(|doubt| Warning {
                message: message::at_event(doubt.message, place + 1),
                ..doubt
            }));
        }
        doubts
    }

    /// The events that have a course of their own, by their places.
    pub(crate) fn own_courses(&self) -> impl Iterator<Item = usize> + '_ {
        (0..self.events.len()).filter(|&place| self.events[place].course.is_some())
    }

    /// What cannot be ridden at an event, named at it.
    pub(crate) fn cannot_ride_event(&self, error: Error, place: usize) -> Error {
        let part = match self.events.get(place) {
            Some(event) if event.duration_s.is_some() => "duration_s",
            Some(event) if event.course.is_some() => "course",
            _ => "distance_m",
        };
        Error {
            field: format!("scenario.events[{place}].{part}"),
            message: message::at_event(error.message, place + 1),
            ..error
        }
    }
}
