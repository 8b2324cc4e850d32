//! Stops and feeding on long rides: their types, their checks, and what a ride makes of them.

use serde::{Deserialize, Serialize};

use super::Scenario;
use super::check::conflict;
use super::inspect::{Inspect, Place};
use crate::inputs::error::Error;
use crate::inputs::fields;
use crate::inputs::message;
use crate::inputs::quantity::Quantity;
use crate::physics::position;
use crate::riding::stops;

/// Stops on the way, at even distances. They are at places rather than at times, so that how many there are depends on the course
/// alone. The rest at a stop is not credited: the power that can be held is that for the time of riding.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(default, deny_unknown_fields)]
pub struct Stops {
    /// The distance from the start to the first, and from each to the next, m. One at the line is the finish.
    pub every_m: f64,
    /// How long each takes standing, s. One who stands longer than planned does so at every stop: its error is common to all.
    pub time_s: Quantity,
}

/// Eating and drinking on the way, sitting up.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(default, deny_unknown_fields)]
pub struct Feeding {
    /// How often, s of riding.
    pub every_s: Quantity,
    /// For how long each time, s.
    pub time_s: Quantity,
    /// Drag area meanwhile, m²: that of the position where it is the larger.
    pub cda_m2: Quantity,
}

impl Default for Stops {
    fn default() -> Self {
        Self {
            every_m: fields::STOPS_EVERY_M.default,
            time_s: fields::STOPS_TIME_S.typical(),
        }
    }
}

impl Default for Feeding {
    fn default() -> Self {
        Self {
            every_s: fields::FEEDING_EVERY_S.typical(),
            time_s: fields::FEEDING_TIME_S.typical(),
            cda_m2: fields::FEEDING_CDA_M2.typical(),
        }
    }
}

impl Feeding {
    /// The share of the riding time spent on it.
    fn share(&self) -> f64 {
        // Draws may cross.
        (self.time_s.value / self.every_s.value).min(1.0)
    }
}

impl Scenario {
    /// Shows the numbers of stops and feeding to `inspect`.
    pub(super) fn inspect_stops(&mut self, inspect: &mut dyn Inspect) {
        let mut see = |field: &'static fields::Field, quantity: &mut Quantity| {
            inspect.number(field, Place::default(), quantity);
        };
        if let Some(stops) = &mut self.stops {
            see(&fields::STOPS_TIME_S, &mut stops.time_s);
        }
        if let Some(feeding) = &mut self.feeding {
            see(&fields::FEEDING_EVERY_S, &mut feeding.every_s);
            see(&fields::FEEDING_TIME_S, &mut feeding.time_s);
            see(&fields::FEEDING_CDA_M2, &mut feeding.cda_m2);
        }
    }

    /// Checks what numbers say together, and how far the stops are apart.
    ///
    /// # Errors
    /// Names what is wrong.
    pub(super) fn check_stops(&self) -> Result<(), Error> {
        if let Some(stops) = &self.stops {
            fields::STOPS_EVERY_M.check(|| "scenario.stops.every_m".into(), stops.every_m)?;
        }
        match &self.feeding {
            Some(feeding) if feeding.every_s.value <= feeding.time_s.value => {
                let field = "scenario.feeding.every_s";
                conflict(field, message::not_above(field, "scenario.feeding.time_s"))
            }
            _ => Ok(()),
        }
    }

    /// Where a ride stops.
    pub(super) fn stops_on_the_way(&self) -> Option<stops::Stops> {
        self.stops.as_ref().map(|stops| stops::Stops {
            every_m: stops.every_m,
            standing_s: stops.time_s.value,
        })
    }

    /// A position as it is ridden with eating and drinking, whose drag area moves with that of the position by the same factor.
    pub(super) fn fed(&self, position: position::Position, drag_scale: f64) -> position::Position {
        match &self.feeding {
            Some(feeding) => position.fed(feeding.share(), drag_scale * feeding.cda_m2.value),
            None => position,
        }
    }
}
