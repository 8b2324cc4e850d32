//! What power, drag area, mass and rolling resistance are worth in one another.

use serde::Serialize;

use super::integrated::{Setup, Stall, time_s};

/// What one thing is worth in another at the rider's own point: the amounts that cost the same time.
#[derive(Clone, Copy, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Exchange {
    /// Watts worth 0.001 m² of drag area.
    pub w_per_0_001_m2: f64,
    /// Square metres worth one watt.
    pub m2_per_w: f64,
    /// Watts worth one percent of drag area.
    pub w_per_cda_percent: f64,
    /// Watts worth a kilogram.
    pub w_per_kg: f64,
    /// Square metres worth a kilogram.
    pub m2_per_kg: f64,
    /// Watts worth 0.0001 of the rolling-resistance coefficient.
    pub w_per_0_0001_crr: f64,
    /// Square metres worth 0.0001 of the rolling-resistance coefficient.
    pub m2_per_0_0001_crr: f64,
    /// Seconds that one watt saves.
    pub s_per_w: f64,
    /// Seconds that 0.001 m² saves.
    pub s_per_0_001_m2: f64,
    /// Seconds that one percent of drag area saves.
    pub s_per_cda_percent: f64,
    /// Seconds that a kilogram saves.
    pub s_per_kg: f64,
    /// Seconds that 0.0001 of the rolling-resistance coefficient saves.
    pub s_per_0_0001_crr: f64,
}

/// Exchange rates by central differences of finish time at the same power, from rolling without any by the first watt; 0 where bends
/// alone set the time.
///
/// # Errors
/// [`Stall`] where a ride does not reach the finish.
pub(crate) fn exchange(setup: &Setup, power_w: f64) -> Result<Exchange, Stall> {
    const MOVED: f64 = 0.002;
    let by_power = if power_w > 0.0 {
        (time_s(setup, power_w * (1.0 + MOVED))? - time_s(setup, power_w * (1.0 - MOVED))?)
            / (2.0 * MOVED * power_w)
    } else {
        time_s(setup, 1.0)? - time_s(setup, 0.0)?
    };
    let slope = |change: &dyn Fn(&mut Setup, f64)| -> Result<f64, Stall> {
        let moved = |by: f64| {
            let mut moved = setup.clone();
            change(&mut moved, 1.0 + by);
            time_s(&moved, power_w)
        };
        Ok((moved(MOVED)? - moved(-MOVED)?) / (2.0 * MOVED))
    };
    let cda_m2 = setup.position.cda_m2;
    let by_cda =
        slope(&|moved, factor| moved.position = moved.position.clone().times(factor))? / cda_m2;
    let by_mass = slope(&|moved, factor| moved.machine.total_mass_kg *= factor)?
        / setup.machine.total_mass_kg;
    let by_rolling = slope(&|moved, factor| moved.machine.rolling_coefficient *= factor)?
        / setup.machine.rolling_coefficient;
    let rate = |one: f64, other: f64| if other == 0.0 { 0.0 } else { one / other };
    Ok(Exchange {
        w_per_0_001_m2: rate(0.001 * by_cda, -by_power),
        m2_per_w: rate(-by_power, by_cda),
        w_per_cda_percent: rate(0.01 * cda_m2 * by_cda, -by_power),
        w_per_kg: rate(by_mass, -by_power),
        m2_per_kg: rate(by_mass, by_cda),
        w_per_0_0001_crr: rate(0.0001 * by_rolling, -by_power),
        m2_per_0_0001_crr: rate(0.0001 * by_rolling, by_cda),
        s_per_w: -by_power,
        s_per_0_001_m2: 0.001 * by_cda,
        s_per_cda_percent: 0.01 * cda_m2 * by_cda,
        s_per_kg: by_mass,
        s_per_0_0001_crr: 0.0001 * by_rolling,
    })
}
