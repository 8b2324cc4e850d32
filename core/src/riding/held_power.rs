//! How long a ride takes at the power that can be held for just that time.

use super::integrated::{Setup, TimeModel};

/// The time `t` of a ride at the power held for `t`: a fixed point, to a millionth. A percent of time moves the power by a
/// few hundredths of a percent, and that the time by a third of it, so that few steps are needed; `None` where they do not
/// settle or the rider stalls.
pub(crate) fn time_at_held_power_s(
    time_model: &dyn TimeModel,
    setup: &Setup,
    held_w: impl Fn(f64) -> f64,
    about_s: f64,
) -> Option<f64> {
    const STEPS: usize = 40;
    const SETTLED: f64 = 1e-6;
    let mut time_s = about_s;
    for _ in 0..STEPS {
        let power_w = held_w(setup.riding_s(time_s));
        let next_s = if power_w > 0.0 {
            time_model.time_s(setup, power_w).ok()?
        } else {
            return None;
        };
        if (next_s / time_s - 1.0).abs() < SETTLED {
            return Some(next_s);
        }
        time_s = next_s;
    }
    None
}
