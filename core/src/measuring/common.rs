//! Errors that all laps of a test have in common: no number of laps makes them smaller.
//!
//! Each is tried: the whole estimate is worked out again with the input a little higher and lower. With Crr held
//! and on a level road this gives `(F_air + F_roll)/F_air` for power, that plus 2 (and less) for speed, −1 for density,
//! `−m g/F_air` for Crr and for a missed grade.

use super::estimate::{Observation, Rolling, estimate};
use super::rig::Rig;

/// By how much an input is moved, in its standard deviations, where its effect is followed along the tangent.
pub const TANGENT: f64 = 0.01;

/// The drag area in every place of the estimate with another rig, m². `None` where there is no estimate.
pub fn cda_m2(
    observations: &[Observation],
    rolling: Rolling,
    axes: &[[f64; 2]],
    other: &Rig,
) -> Option<Vec<f64>> {
    let found = estimate(observations, other, rolling, axes).ok()?;
    let areas: Vec<f64> = (0..found.positions.len())
        .map(|place| found.cda_m2(place).value)
        .collect();
    areas.iter().all(|area| area.is_finite()).then_some(areas)
}
