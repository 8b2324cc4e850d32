//! Errors that all laps of a test have in common: no number of laps makes them smaller.
//!
//! Each is tried: the whole estimate is worked out again with the input one standard deviation higher and lower. With Crr held
//! and on a level road this gives `(F_air + F_roll)/F_air` for power, that plus 2 (and less) for speed, −1 for density,
//! `−m g/F_air` for Crr and for a missed grade.

use super::estimate::{Observation, Rolling, estimate};
use super::rig::Rig;

/// What one standard deviation of an input does to the drag area in the first place of the estimate, as a share of it: half the
/// difference between more and less of it. `None` where there is no estimate.
pub fn cda_share(
    observations: &[Observation],
    rolling: Rolling,
    axes: &[[f64; 2]],
    [less, base, more]: [&Rig; 3],
) -> Option<f64> {
    let area = |rig: &Rig| {
        let found = estimate(observations, rig, rolling, axes).ok()?;
        Some(found.cda_m2(0).value)
    };
    let share = 0.5 * (area(more)? - area(less)?) / area(base)?;
    share.is_finite().then_some(share)
}
