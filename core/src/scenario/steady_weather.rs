//! What the module of a first visit knows of later weather: nothing. It refuses a scenario that has one by the name of the field.

use super::{Conditions, Scenario};
use crate::inputs::error::{Error, Warning};
use crate::physics::air::WeatherChange;

impl Conditions {
    pub(super) fn move_later_weather(&mut self, _known: &Self) {}

    pub(super) fn warmest_c(&self) -> f64 {
        self.temperature_c.value
    }

    pub(super) fn strongest_wind_m_s(&self) -> f64 {
        self.wind_speed_m_s.value
    }
}

impl Scenario {
    pub(super) fn weather_change(&self) -> Option<WeatherChange> {
        None
    }

    pub(super) fn check_later_weather(
        &self,
        _path: &str,
        _warnings: &mut Vec<Warning>,
    ) -> Result<(), Error> {
        Ok(())
    }
}
