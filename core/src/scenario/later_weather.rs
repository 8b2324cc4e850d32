//! The forecast for a later time of the day: its type, its checks, and how the weather changes from the start of a ride on.

use serde::{Deserialize, Serialize};

use super::check::conflict;
use super::{Conditions, Scenario};
use crate::inputs::error::{Error, Warning};
use crate::inputs::fields;
use crate::inputs::message;
use crate::inputs::quantity::Quantity;
use crate::physics::air::WeatherChange;

/// The forecast for a later time of the day, and when the ride begins. The weather changes evenly from the day's own numbers, which
/// hold until `first_at_s`, to these, which hold from `at_s` on; the wind by its components.
///
/// These numbers have no ± of their own: a forecast that is wrong at first is taken to be as wrong later, in the wind's speed by the
/// same share, in its direction, the temperature and the pressure by the same amount (assumed).
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub struct LaterWeather {
    /// The time of day of the day's own numbers, s after midnight.
    pub first_at_s: f64,
    /// The time of day of these numbers, s after midnight before the ride; above `first_at_s`.
    pub at_s: f64,
    /// When the ride begins, s after midnight.
    pub start_at_s: f64,
    /// As forecast, m/s.
    pub wind_speed_m_s: f64,
    /// Where the wind comes from, degrees.
    pub wind_from_deg: f64,
    /// At the course, °C.
    pub temperature_c: f64,
    /// hPa, where the day's own pressure holds; left out, the pressure stays.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "types", ts(optional))]
    pub pressure_hpa: Option<f64>,
}

impl LaterWeather {
    /// These numbers where the day's own have moved from what is known of them.
    fn moved(self, known: &Conditions, moved: &Conditions) -> Self {
        let (was, is) = (known.wind_speed_m_s.value, moved.wind_speed_m_s.value);
        let by = |was: Quantity, is: Quantity| is.value - was.value;
        let pressure_by_hpa = match (known.pressure_hpa, moved.pressure_hpa) {
            (Some(was), Some(is)) => by(was, is),
            _ => 0.0,
        };
        Self {
            wind_speed_m_s: self.wind_speed_m_s * if was > 0.0 { is / was } else { 1.0 },
            wind_from_deg: self.wind_from_deg + by(known.wind_from_deg, moved.wind_from_deg),
            temperature_c: self.temperature_c + by(known.temperature_c, moved.temperature_c),
            pressure_hpa: self.pressure_hpa.map(|hpa| hpa + pressure_by_hpa),
            ..self
        }
    }
}

impl Conditions {
    /// Moves the later weather as far as the day's own has moved from what is known of it.
    pub(super) fn move_later_weather(&mut self, known: &Self) {
        if let Some(later) = known.later {
            self.later = Some(later.moved(known, self));
        }
    }

    /// The warmest of the day, °C.
    pub(super) fn warmest_c(&self) -> f64 {
        let now_c = self.temperature_c.value;
        self.later
            .map_or(now_c, |later| later.temperature_c.max(now_c))
    }

    /// The day as it is later; `None` where it does not change.
    fn later_on(&self) -> Option<Self> {
        let later = self.later?;
        let at = |quantity: Quantity, value: f64| Quantity { value, ..quantity };
        Some(Self {
            wind_speed_m_s: at(self.wind_speed_m_s, later.wind_speed_m_s),
            wind_from_deg: at(self.wind_from_deg, later.wind_from_deg),
            temperature_c: at(self.temperature_c, later.temperature_c),
            pressure_hpa: later
                .pressure_hpa
                .map(Quantity::exact)
                .or(self.pressure_hpa),
            ..self.clone()
        })
    }

    /// The strongest wind of the day, m/s, as forecast.
    pub(super) fn strongest_wind_m_s(&self) -> f64 {
        let later_m_s = self.later.map_or(0.0, |later| later.wind_speed_m_s);
        self.wind_speed_m_s.value.max(later_m_s)
    }
}

impl Scenario {
    /// How the weather changes from the start of the ride on, if it does.
    pub(super) fn weather_change(&self) -> Option<WeatherChange> {
        let day = &self.conditions;
        let later = day.later?;
        Some(WeatherChange {
            from_s: later.first_at_s - later.start_at_s,
            until_s: later.at_s - later.start_at_s,
            before: self.weather_on(day),
            after: self.weather_on(&day.later_on()?),
        })
    }

    /// Checks the later weather by the same bounds as the day's own, and says what it leaves open.
    ///
    /// # Errors
    /// Names what is wrong from `path` on.
    pub(super) fn check_later_weather(
        &self,
        path: &str,
        warnings: &mut Vec<Warning>,
    ) -> Result<(), Error> {
        let day = &self.conditions;
        let (Some(later), Some(later_on)) = (day.later, day.later_on()) else {
            return Ok(());
        };
        let numbers = [
            ("first_at_s", &fields::FIRST_AT_S, Some(later.first_at_s)),
            ("at_s", &fields::LATER_AT_S, Some(later.at_s)),
            ("start_at_s", &fields::START_AT_S, Some(later.start_at_s)),
            (
                "wind_speed_m_s",
                &fields::WIND_SPEED_M_S,
                Some(later.wind_speed_m_s),
            ),
            (
                "wind_from_deg",
                &fields::WIND_FROM_DEG,
                Some(later.wind_from_deg),
            ),
            (
                "temperature_c",
                &fields::TEMPERATURE_C,
                Some(later.temperature_c),
            ),
            ("pressure_hpa", &fields::PRESSURE_HPA, later.pressure_hpa),
        ];
        for (name, field, value) in numbers {
            if let Some(value) = value {
                field.check(|| format!("{path}.{name}"), value)?;
            }
        }
        if later.at_s <= later.first_at_s {
            let field = format!("{path}.at_s");
            let other = format!("{path}.first_at_s");
            return conflict(&field, message::not_above(&field, &other));
        }
        if day.wind_speed_m_s.value == 0.0 && later.wind_speed_m_s > 0.0 {
            let field = format!("{path}.wind_speed_m_s");
            warnings.push(Warning::of(field, message::calm_at_first()));
        }
        self.check_pressure(&later_on, &format!("{path}.pressure_hpa"))
    }
}
