//! Best even efforts over many distances and in many setups: each integrated once, rides near it read off the quasi-steady time
//! model.

use std::rc::Rc;

use crate::physics::course::Course;
use crate::riding::effort::{KnownEffort, NoEffort, Paced, TIME_ACCURACY, even_within};
use crate::riding::integrated::{Integrated, Setup};
use crate::riding::quasi_steady::{PIECE_M, QuasiSteady};

/// The course of a setup at another length.
pub(crate) fn at_length(setup: &Setup, distance_m: f64) -> Setup {
    Setup {
        course: Rc::new(setup.course.scaled_to(distance_m)),
        ..setup.clone()
    }
}

/// The best even effort over a distance, followed to the line: two rides are enough where about its time is known.
pub(crate) fn followed(
    setup: &Setup,
    distance_m: f64,
    about_s: f64,
    accuracy: f64,
) -> Result<Paced, NoEffort> {
    even_near(&at_length(setup, distance_m), about_s, accuracy)
}

/// The best even effort of a setup whose time is known about.
fn even_near(setup: &Setup, about_s: f64, accuracy: f64) -> Result<Paced, NoEffort> {
    even_within(
        &Integrated,
        setup,
        setup.power.sustainable_w(about_s.max(1.0)),
        accuracy,
    )
}

/// About the time of a distance before any ride is known, s.
pub(crate) fn about_s(distance_m: f64) -> f64 {
    distance_m / 11.0
}

/// How time grows with distance, about: a guess to begin with.
pub(crate) const TIME_BY_DISTANCE: f64 = 1.03;
/// Relative accuracy of the curves' times, a thousandth of a second in some hours.
pub(crate) const CURVE_ACCURACY: f64 = 1e-7;

/// The place of the usual road among those that choices are ridden on.
pub(crate) const USUAL_ROAD: usize = 0;

/// The best even effort of a choice over its course, integrated to the line, and what finds rides near it.
pub(crate) struct KnownRide {
    pub(crate) choice: usize,
    /// The road that it is ridden on: the usual one at some length, or one of several of other shapes, by its place.
    pub(crate) road: usize,
    pub(crate) distance_m: f64,
    pub(crate) course: Rc<Course>,
    pub(crate) ride: Paced,
    pub(crate) known: KnownEffort,
    pub(crate) time_model: QuasiSteady,
    /// What the followed ride takes more than the one of steady speeds, s.
    pub(crate) left_out_s: f64,
    /// About how many pieces the ride of steady speeds is made of.
    pub(crate) pieces: f64,
}

impl KnownRide {
    pub(crate) fn new(choice: usize, there: &Setup, road: usize) -> Result<Self, NoEffort> {
        let distance_m = there.course.distance_m();
        let ride = even_near(there, about_s(distance_m), TIME_ACCURACY)?;
        let time_model = QuasiSteady::default();
        let known = KnownEffort::new(&time_model, there, ride.power_w)?;
        let left_out_s = ride.time_s - known.time_s(&time_model, there)?;
        let fades = if there.position.fade.is_some() {
            distance_m / PIECE_M
        } else {
            0.0
        };
        let pieces = there.course.segments.len() as f64 + fades;
        Ok(Self {
            choice,
            road,
            distance_m,
            course: Rc::clone(&there.course),
            ride,
            known,
            time_model,
            left_out_s,
            pieces,
        })
    }
}
