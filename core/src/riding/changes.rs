//! Rides with power or drag area changed by shares, and changes that are worth the same.

use super::effort::{Effort, NoEffort, Paced, paced_from};
use super::integrated::{Integrated, Setup, TimeModel};
use crate::numerics::solve::root;

/// The widest drag change in which an equal is looked for.
const EQUAL_CDA: (f64, f64) = (-0.9, 3.0);
/// The widest power change in which an equal is looked for.
const EQUAL_POWER: (f64, f64) = (-0.9, 4.0);

/// The ride with shares more power and drag area, from a guess at the unchanged power: at even effort the whole power
/// curve is raised and the even effort solved anew.
///
/// # Errors
/// [`NoEffort`].
pub(crate) fn changed(
    time_model: &dyn TimeModel,
    setup: &Setup,
    effort: Effort,
    power_change: f64,
    cda_change: f64,
    guess_w: f64,
) -> Result<Paced, NoEffort> {
    let changed = changed_setup(setup, power_change, cda_change);
    let effort = match effort {
        Effort::Power(power_w) => Effort::Power(power_w * (1.0 + power_change)),
        other => other,
    };
    paced_from(time_model, &changed, effort, guess_w * (1.0 + power_change))
}

fn changed_setup(setup: &Setup, power_change: f64, cda_change: f64) -> Setup {
    let mut changed = setup.clone();
    if cda_change != 0.0 {
        changed.position = setup.position.clone().times(1.0 + cda_change);
    }
    changed.power = setup.power.scaled(1.0 + power_change, 1.0 + power_change);
    changed
}

/// The change of drag area, as a share, that brings a ride to a finish time; `None` if none within [`EQUAL_CDA`] does.
pub(crate) fn equal_cda(setup: &Setup, effort: Effort, base: Paced, target_s: f64) -> Option<f64> {
    let excess = |cda_change: f64| {
        changed(&Integrated, setup, effort, 0.0, cda_change, base.power_w)
            .map_or(f64::NAN, |ride| ride.time_s - target_s)
    };
    root(excess, EQUAL_CDA.0, EQUAL_CDA.1, 1e-10).ok()
}

/// The change of power, as a share, that brings a ride to a finish time; `None` if none within [`EQUAL_POWER`] does.
pub(crate) fn equal_power(
    setup: &Setup,
    effort: Effort,
    base: Paced,
    target_s: f64,
) -> Option<f64> {
    let excess = |power_change: f64| {
        changed(&Integrated, setup, effort, power_change, 0.0, base.power_w)
            .map_or(f64::NAN, |ride| ride.time_s - target_s)
    };
    root(excess, EQUAL_POWER.0, EQUAL_POWER.1, 1e-10).ok()
}
