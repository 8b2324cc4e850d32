//! Where a rider stops on the way, and for how long.
//!
//! Stops are at places, not at times: how many there are then depends on the course alone, so that finish time changes smoothly
//! with power, drag and wind, as the search for an effort and the uncertainty of a time need. A rider brakes to a standstill, stands,
//! and starts again as from a standing start. What is called riding time is finish time less the standing: power, fade and W′ go by
//! it, the weather goes by the clock. Rest is not credited.

use super::integrated::Setup;
use crate::physics::course::Segment;

/// Stretches that are ridden without a stop, and how long the rider stands after them, s; `None` at the line.
pub(crate) type Leg = (Vec<Segment>, Option<f64>);

/// Stops at even distances.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Stops {
    /// The distance from the start to the first, and from each to the next, m.
    pub every_m: f64,
    /// How long the rider stands at each, s.
    pub standing_s: f64,
}

/// A stop nearer to the line than this, m, is the finish.
const AT_THE_LINE_M: f64 = 1.0;

impl Stops {
    /// How many there are on a course of a length, m.
    pub(crate) fn number(&self, distance_m: f64) -> usize {
        ((distance_m - AT_THE_LINE_M) / self.every_m).max(0.0) as usize
    }
}

impl Setup {
    /// The same ride without a stop.
    pub(crate) fn without_stops(&self) -> Self {
        Self {
            stops: None,
            ..self.clone()
        }
    }

    /// The same ride with stops that take no time.
    pub(crate) fn without_standing(&self) -> Self {
        let in_no_time = |stops| Stops {
            standing_s: 0.0,
            ..stops
        };
        Self {
            stops: self.stops.map(in_no_time),
            ..self.clone()
        }
    }

    /// How long the rider stands on the way, s.
    pub fn standing_s(&self) -> f64 {
        self.stops.map_or(0.0, |stops| {
            stops.number(self.course.distance_m()) as f64 * stops.standing_s
        })
    }

    /// Riding time, s, of a finish time: no less than a second, so that a time that is looked for stays a time.
    pub fn riding_s(&self, finish_s: f64) -> f64 {
        const LEAST_S: f64 = 1.0;
        match self.stops {
            Some(_) => (finish_s - self.standing_s()).max(LEAST_S),
            None => finish_s,
        }
    }

    /// The power that can be held for a ride of this finish time, W.
    pub fn sustainable_w(&self, finish_s: f64) -> f64 {
        self.power.sustainable_w(self.riding_s(finish_s))
    }

    /// Drag area averaged over a ride of this finish time, m².
    pub fn mean_cda_m2(&self, finish_s: f64) -> f64 {
        self.position.mean_cda_m2(self.riding_s(finish_s))
    }

    /// The course from stop to stop; `None` without stops.
    pub(crate) fn between_stops(&self) -> Option<Vec<Leg>> {
        let stops = self.stops?;
        let number = stops.number(self.course.distance_m());
        let places_m = (1..=number).map(|i| i as f64 * stops.every_m);
        let parts = self.course.between(places_m).into_iter().enumerate();
        let leg = |(i, segments)| (segments, (i < number).then_some(stops.standing_s));
        Some(parts.map(leg).collect())
    }

    /// One of the legs by its place: the whole course where there are no stops.
    pub(crate) fn leg<'a>(
        &'a self,
        legs: &'a Option<Vec<Leg>>,
        place: usize,
    ) -> (&'a [Segment], Option<f64>) {
        match legs.as_ref().and_then(|legs| legs.get(place)) {
            Some((segments, standing_s)) => (segments, *standing_s),
            None => (&self.course.segments, None),
        }
    }
}
