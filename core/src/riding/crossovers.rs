//! Finish times against distance, and the distances at which two setups are equally fast.

use crate::numerics::solve::{root, spaced_log};
use crate::riding::effort::{NoEffort, TIME_ACCURACY};
use crate::riding::integrated::Setup;
use crate::riding::known_ride::{CURVE_ACCURACY, TIME_BY_DISTANCE, about_s, followed};

/// The distances that the curves span at least, m.
const CURVE_M: (f64, f64) = (5_000.0, 200_000.0);
/// Points of the curves: on a course of few segments, and of many.
const CURVE_POINTS: (usize, usize) = (33, 13);
/// From so many segments on a course is one of many.
const MANY_SEGMENTS: usize = 60;

/// Whether the course has many segments, so that each ride takes long.
pub(crate) fn is_many(setups: &[Setup]) -> bool {
    setups
        .first()
        .is_some_and(|setup| setup.course.segments.len() > MANY_SEGMENTS)
}

/// Finish times of every choice against distance.
pub(crate) struct TimesByDistance {
    pub(crate) distances_m: Vec<f64>,
    /// A row of choices for each distance.
    pub(crate) times_s: Vec<Vec<f64>>,
}

/// Where a choice and the reference are equally fast.
pub(crate) struct Crossing {
    pub(crate) choice: usize,
    pub(crate) distance_m: f64,
    /// How the choice's lead grows with distance there, s/m.
    pub(crate) slope_s_per_m: f64,
}

impl TimesByDistance {
    /// Rides every setup from the shortest of the distances to the longest, as far as all of them can be ridden.
    pub(crate) fn new(setups: &[Setup], distances_m: &[f64], reference: usize) -> Self {
        let points = if is_many(setups) {
            CURVE_POINTS.1
        } else {
            CURVE_POINTS.0
        };
        let events = || distances_m.iter().copied();
        let (shortest, longest) = (
            events().fold(CURVE_M.0, f64::min),
            events().fold(CURVE_M.1, f64::max),
        );
        let mut curve = Self {
            distances_m: Vec::new(),
            times_s: Vec::new(),
        };
        if setups.get(reference).is_none() {
            return curve;
        }
        for distance_m in spaced_log(shortest, longest, points) {
            let about_s = |choice: usize| match (curve.distances_m.last(), curve.times_s.last()) {
                (Some(before_m), Some(before_s)) => {
                    before_s[choice] * (distance_m / before_m).powf(TIME_BY_DISTANCE)
                }
                _ => about_s(distance_m),
            };
            let ridden = |(choice, setup)| {
                followed(setup, distance_m, about_s(choice), CURVE_ACCURACY).map(|ride| ride.time_s)
            };
            let times_s: Result<Vec<f64>, NoEffort> =
                setups.iter().enumerate().map(ridden).collect();
            let Ok(times_s) = times_s else { break };
            curve.distances_m.push(distance_m);
            curve.times_s.push(times_s);
        }
        curve
    }

    /// The least and the greatest distance.
    pub(crate) fn span(&self) -> Option<(f64, f64)> {
        Some((*self.distances_m.first()?, *self.distances_m.last()?))
    }

    /// Where each setup is as fast as the reference.
    pub(crate) fn crossovers(&self, setups: &[Setup], reference: usize) -> Vec<Crossing> {
        let Some(kept) = setups.get(reference) else {
            return Vec::new();
        };
        let mut crossings = Vec::new();
        for (choice, setup) in setups.iter().enumerate() {
            let leads: Vec<f64> = self
                .times_s
                .iter()
                .map(|row| row[reference] - row[choice])
                .collect();
            for (i, (ends_m, ends_s)) in self
                .distances_m
                .windows(2)
                .zip(leads.windows(2))
                .enumerate()
            {
                if ends_s[0] * ends_s[1] >= 0.0 {
                    continue;
                }
                let lead_s = |ln_m: f64| {
                    let distance_m = ln_m.exp();
                    let about_s = self.times_s[i][reference]
                        * (distance_m / ends_m[0]).powf(TIME_BY_DISTANCE);
                    let time_s = |setup| {
                        followed(setup, distance_m, about_s, TIME_ACCURACY).map(|ride| ride.time_s)
                    };
                    time_s(kept)
                        .and_then(|kept_s| Ok(kept_s - time_s(setup)?))
                        .unwrap_or(f64::NAN)
                };
                // Where the curve is so near to nought that its accuracy counts, its end is the crossing.
                let nearer_m = if ends_s[0].abs() < ends_s[1].abs() {
                    ends_m[0]
                } else {
                    ends_m[1]
                };
                let ln_m = root(lead_s, ends_m[0].ln(), ends_m[1].ln(), 1e-11)
                    .unwrap_or_else(|_| nearer_m.ln());
                const MOVED: f64 = 0.005;
                let distance_m = ln_m.exp();
                let slope_s_per_m =
                    (lead_s(ln_m + MOVED) - lead_s(ln_m - MOVED)) / (2.0 * MOVED * distance_m);
                if slope_s_per_m.is_finite() && slope_s_per_m != 0.0 {
                    crossings.push(Crossing {
                        choice,
                        distance_m,
                        slope_s_per_m,
                    });
                }
            }
        }
        crossings
    }
}
