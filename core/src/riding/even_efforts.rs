//! The best even effort against distance, on courses of one kind.

use std::rc::Rc;

use super::effort::even_from;
use super::integrated::{Integrated, Setup};
use crate::numerics::solve::spaced_log;

/// Points of the curve over distance: fewer where each costs a ride over many stretches.
const DISTANCE_POINTS: (usize, usize) = (41, 13);
const MANY_SEGMENTS: usize = 60;
/// The distances of the curve, m: from a short hill climb to a day's ride.
const CURVE_M: (f64, f64) = (2_000.0, 400_000.0);

/// The best even effort against distance, as far as the power curve carries it.
#[derive(Default)]
pub(crate) struct EvenEfforts {
    pub(crate) distances_m: Vec<f64>,
    pub(crate) times_s: Vec<f64>,
    pub(crate) powers_w: Vec<f64>,
}

impl EvenEfforts {
    /// The average speed of each, m/s.
    pub(crate) fn average_speeds_m_s(&self) -> Vec<f64> {
        let each = self.distances_m.iter().zip(&self.times_s);
        each.map(|(distance_m, time_s)| distance_m / time_s)
            .collect()
    }
}

/// Each effort guessed from the one before; ends at the first distance that cannot be ridden.
pub(crate) fn even_efforts(setup: &Setup) -> EvenEfforts {
    let points = if setup.course.segments.len() > MANY_SEGMENTS {
        DISTANCE_POINTS.1
    } else {
        DISTANCE_POINTS.0
    };
    let own_m = setup.course.distance_m();
    let mut scaled = setup.clone();
    let mut guess_w = setup.power.sustainable_w(CURVE_M.0 / 11.0);
    let mut curve = EvenEfforts::default();
    for distance_m in spaced_log(
        CURVE_M.0.min(0.5 * own_m),
        CURVE_M.1.max(1.5 * own_m),
        points,
    ) {
        scaled.course = Rc::new(setup.course.scaled_to(distance_m));
        let Ok(paced) = even_from(&Integrated, &scaled, guess_w) else {
            break;
        };
        guess_w = paced.power_w;
        curve.distances_m.push(distance_m);
        curve.times_s.push(paced.time_s);
        curve.powers_w.push(paced.power_w);
    }
    curve
}
