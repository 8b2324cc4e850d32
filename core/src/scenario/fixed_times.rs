//! Courses and events that go by time: how far the rider gets in it today, settled once for each request.
//!
//! The distance is that of the numbers as they stand (the means, the ridden position, the model's own error left out). From then on it
//! is a distance like any other: what is compared, drawn or moved rides it, in however much time that takes.

use std::rc::Rc;

use super::Scenario;
#[cfg(feature = "all")]
use super::ride_doubts::far_beyond;
use super::ride_errors::no_effort;
use crate::inputs::error::Error;
#[cfg(feature = "all")]
use crate::inputs::error::Warning;
use crate::inputs::fields;
use crate::inputs::message;
use crate::riding::effort::{Effort, NoEffort, reached};
use crate::riding::integrated::Integrated;

impl Scenario {
    /// Gives a course that goes by time its length: as far as an effort in the ridden position gets in it, to
    /// `riding::effort::POWER_ACCURACY`; an effort for a finish time is taken as the best even one. The course keeps its time too,
    /// which says that it was settled by it. Any other course stays as it is.
    ///
    /// # Errors
    /// Names the course's `duration_s` where that is less or more than a course may be long, and the power that cannot be held for
    /// so long.
    pub fn settle_course(&mut self, effort: Effort) -> Result<(), Error> {
        // The best guess at a speed before any ride is known.
        const USUAL_M_S: f64 = 11.0;
        let Some(duration_s) = self.course.duration_s else {
            return Ok(());
        };
        let mut distance_m = USUAL_M_S * duration_s;
        // Where the weather changes, the road is cut into pieces at the length that it has: then once more at about the right one.
        let times = if self.weather_change().is_some() {
            2
        } else {
            1
        };
        for _ in 0..times {
            self.course = self.course_of_length(distance_m);
            distance_m = self.reached_m(effort, duration_s)?;
        }
        self.course = self.course_of_length(distance_m);
        self.course.duration_s = Some(duration_s);
        Ok(())
    }

    /// How far an effort gets in a time on a course of this kind, m.
    fn reached_m(&self, effort: Effort, duration_s: f64) -> Result<f64, Error> {
        let setup = self
            .setup_on(self.riding_position, Rc::new(self.course()))
            .ok_or_else(Error::no_such_position)?;
        let (least_m, most_m) = (fields::DISTANCE_M.min, fields::DISTANCE_M.max);
        let reached_m = match reached(&Integrated, &setup, effort, duration_s) {
            Err(NoEffort::NothingSustainable) => {
                return Err(no_effort(NoEffort::NothingSustainable));
            }
            found => found.ok().map(|(_, distance_m)| distance_m),
        };
        reached_m
            .filter(|distance_m| (least_m..=most_m).contains(distance_m))
            .ok_or_else(|| {
                Error::impossible(
                    format!("{}.duration_s", self.course_path()),
                    message::fixed_time_out_of_reach(least_m, most_m),
                )
            })
    }

    /// Gives every event that goes by time its distance, as [`settle_course`](Self::settle_course) does for the best even effort on
    /// the event's course; one with a course of its own has that made longer or shorter. The event keeps its time too.
    ///
    /// # Errors
    /// As for a course, named at the event.
    #[cfg(feature = "all")]
    pub fn settle_events(&mut self) -> Result<(), Error> {
        for place in 0..self.events.len() {
            let Some(duration_s) = self.events[place].fixed_s() else {
                continue;
            };
            let Some(mut there) = self.on_event(place) else {
                continue;
            };
            there
                .settle_course(Effort::Even)
                .map_err(|error| self.cannot_ride_event(error, place))?;
            let event = &mut self.events[place];
            event.distance_m = Some(there.course.length_m());
            event.duration_s = Some(duration_s);
            if event.course.is_some() {
                there.course.duration_s = None;
                event.course = Some(there.course);
            }
        }
        Ok(())
    }

    /// What is said of the longest event that goes by time, or of another time, s, that is longer, where the power curve is a guess for so long.
    #[cfg(feature = "all")]
    pub(crate) fn beyond_fixed_times(&self, other_s: Option<f64>) -> Option<Warning> {
        let times_s = self.events.iter().filter_map(super::Event::fixed_s);
        times_s
            .chain(other_s)
            .max_by(f64::total_cmp)
            .and_then(far_beyond)
    }
}

#[cfg(feature = "all")]
impl super::Event {
    /// How long it lasts, s, if it goes by time: as it says itself, or its own course.
    pub fn fixed_s(&self) -> Option<f64> {
        self.duration_s
            .or_else(|| self.course.as_ref().and_then(|own| own.duration_s))
    }
}
