//! What a position may cost in power before it loses.

use crate::numerics::solve::root;
use crate::riding::effort::{even_from, power_for_time_from_w};
use crate::riding::integrated::{Integrated, Setup};

/// The factor on critical power, peak and long-ride loss with which the best even effort of a setup takes a given time; its W′
/// stays.
///
/// The power for the time, then the root of `sustainable power at that time − it`, both to 1e-11.
pub(crate) fn tie_factor(setup: &Setup, time_s: f64, guess_w: f64) -> Option<f64> {
    const FACTORS: (f64, f64) = (0.01, 20.0);
    let power_w = power_for_time_from_w(&Integrated, setup, time_s, guess_w).ok()?;
    let riding_s = setup.riding_s(time_s);
    let excess = |factor: f64| setup.power.scaled(factor, 1.0).sustainable_w(riding_s) - power_w;
    root(excess, FACTORS.0, FACTORS.1, 1e-12).ok()
}

/// Seconds that one watt of critical power saves, by central differences.
pub(crate) fn seconds_per_watt(setup: &Setup, factor: f64) -> f64 {
    const MOVED: f64 = 0.005;
    let time_s = |by: f64| {
        let moved = Setup {
            power: setup.power.scaled(factor * by, 1.0),
            ..setup.clone()
        };
        even_from(&Integrated, &moved, moved.power.cp_w).map_or(f64::NAN, |ride| ride.time_s)
    };
    (time_s(1.0 - MOVED) - time_s(1.0 + MOVED)) / (2.0 * MOVED * factor * setup.power.cp_w)
}
