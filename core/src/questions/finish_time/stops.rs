//! What stops and feeding cost.

use serde::Serialize;

use crate::inputs::error::Error;
use crate::inputs::quantity::Figure;
use crate::riding::effort::{Effort, Paced, paced_from};
use crate::riding::integrated::{Setup, TimeModel};
use crate::scenario::Scenario;
use crate::scenario::propagation::{Case, Propagation, figure};
use crate::scenario::ride_errors::no_effort;

/// What stops and feeding cost, at an even effort with the power that is lost to the longer ride. The parts add up to the whole.
#[derive(Clone, Copy, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct StopsCost {
    /// How many stops there are on the way.
    pub number: usize,
    /// All that they cost, with the sitting up.
    pub costs_s: Figure,
    /// Standing.
    pub standing_s: Figure,
    /// Braking, and getting up to speed again.
    pub starting_again_s: Figure,
    /// What the weather changes by while the rider stands; negative where the rest is ridden in better weather for it.
    pub later_weather_s: Figure,
    /// Sitting up to eat and drink.
    pub sitting_up_s: Figure,
}

/// What they cost a ride of an effort; `None` where the rider neither stops nor sits up.
///
/// # Errors
/// Says why the ride without them cannot be ridden.
pub(super) fn stops_cost(
    inquiry: &Propagation<'_>,
    scenario: &Scenario,
    effort: Effort,
    power_w: f64,
) -> Result<Option<StopsCost>, Error> {
    if scenario.stops.is_none() && scenario.feeding.is_none() {
        return Ok(None);
    }
    let riding = scenario.riding_position;
    let outputs = |case: &Case<'_>, time_model: &dyn TimeModel| -> Result<[f64; 4], Error> {
        let effort = case.effort(effort);
        let time_s = |setup: &Setup| {
            paced_from(time_model, setup, effort, power_w)
                .map(|Paced { time_s, .. }| time_s)
                .map_err(no_effort)
        };
        let whole = case.setup(riding)?;
        let moving = whole.without_stops();
        let moving_s = time_s(&moving)?;
        let standing_s = whole.standing_s();
        let riding_s = time_s(&whole)? - standing_s;
        let in_no_time_s = match whole.weather_change {
            Some(_) => time_s(&whole.without_standing())?,
            None => riding_s,
        };
        Ok([
            standing_s,
            in_no_time_s - moving_s,
            riding_s - in_no_time_s,
            moving_s - time_s(&moving.in_position(moving.position.unfed()))?,
        ])
    };
    let spread = inquiry.spread(outputs)?;
    let stops = inquiry.base(|case| case.setup(riding))?;
    let distance_m = stops.course.distance_m();
    Ok(Some(StopsCost {
        number: stops.stops.map_or(0, |stops| stops.number(distance_m)),
        costs_s: figure(&spread, |o| o.iter().sum()),
        standing_s: figure(&spread, |o| o[0]),
        starting_again_s: figure(&spread, |o| o[1]),
        later_weather_s: figure(&spread, |o| o[2]),
        sitting_up_s: figure(&spread, |o| o[3]),
    }))
}
