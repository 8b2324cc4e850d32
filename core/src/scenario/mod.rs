//! The saved file: its types, checks and versions, the physics' structs made from it, its uncertain inputs taken through any
//! calculation, and the calculations that need all of it: comparisons of positions, a season with changes, two set-ups of a
//! leg. May import every layer but `questions`.

mod check;
#[cfg(feature = "all")]
pub(crate) mod comparison;
#[cfg(feature = "all")]
pub mod course_edits;
#[cfg(feature = "all")]
pub mod course_files;
mod course_length;
#[cfg(feature = "all")]
pub(crate) mod course_line;
mod drag_tests;
#[cfg(feature = "all")]
pub mod drawn_course;
#[cfg(feature = "all")]
mod efforts;
#[cfg(feature = "all")]
mod event_courses;
mod fixed_times;
#[cfg(feature = "all")]
mod held;
mod inspect;
#[cfg(feature = "all")]
mod later_weather;
#[cfg(feature = "all")]
mod linked_course;
#[cfg(feature = "all")]
pub(crate) mod lower_bars;
mod physical;
mod position;
#[cfg(feature = "all")]
pub(crate) mod position_costs;
pub mod propagation;
#[cfg(feature = "all")]
pub mod recorded_course;
pub(crate) mod ride_doubts;
pub(crate) mod ride_errors;
#[cfg(feature = "all")]
mod riders;
mod roads;
#[cfg(feature = "all")]
pub(crate) mod season;
#[cfg(feature = "all")]
pub(crate) mod set_ups;
#[cfg(feature = "all")]
pub(crate) mod shared_drag_error;
mod simplify;
#[cfg(not(feature = "all"))]
mod steady_weather;
#[cfg(feature = "all")]
mod stops;
#[cfg(not(feature = "all"))]
mod unread;

use std::fmt;

use serde::de::{self, IgnoredAny, MapAccess, Visitor};
use serde::{Deserialize, Deserializer, Serialize, Serializer};

use crate::inputs::fields;
use crate::inputs::quantity::{Known, Quantity};
pub use check::{NO_BEARINGS, check_date, check_quantity, position_index, version_error};
#[cfg(feature = "all")]
pub use drag_tests::{DragTest, DragTestMethod};
pub use inspect::{Input, Inspect, Place, Ridden};
#[cfg(feature = "all")]
pub use later_weather::LaterWeather;
pub use position::{Equipment, Fade, FadeTest, Lapse, Position, YawRow};
pub use roads::Roads;
#[cfg(feature = "all")]
pub use stops::{Feeding, Stops};
#[cfg(not(feature = "all"))]
use unread::Unread as OwnCourse;

/// The version of the scenario that this code writes. Version 3 added the long-ride loss as a share of critical power, where
/// the wind was read, the power meter's bias and courses of an event's own.
pub const VERSION: u64 = 3;
/// The oldest version that is read. What later versions added may be left out, so older ones are read as they stand.
pub const OLDEST: u64 = 1;

/// A rider, their positions, power, course and day. Every part may be left out; typical values fill in.
///
/// ```
/// use fasterby_core::scenario::Scenario;
///
/// let scenario: Scenario = serde_json::from_str(r#"{ "fasterby": 3, "power": { "cp_w": 280 } }"#).expect("a scenario");
/// assert_eq!(scenario.power.cp_w.value, 280.0);
/// assert!(scenario.check().is_ok());
/// ```
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(default, deny_unknown_fields)]
pub struct Scenario {
    /// The version of this form.
    #[cfg_attr(feature = "types", ts(type = "number"))]
    pub fasterby: u64,
    /// What the rider calls it.
    pub title: String,
    /// The rider.
    pub rider: Rider,
    /// The bicycle.
    pub bike: Bike,
    /// The positions the rider has.
    pub positions: Vec<Position>,
    /// The one ridden, by its place in `positions`.
    pub riding_position: usize,
    /// What the rider can push.
    pub power: Power,
    /// The hard efforts that the rider has ridden.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub efforts: Vec<Effort>,
    /// The events that count.
    pub events: Vec<Event>,
    /// The road.
    pub course: Course,
    /// The day.
    pub conditions: Conditions,
    /// The start.
    pub start: StartForm,
    /// Stops on the way. The module of a first visit does not know them.
    #[cfg(feature = "all")]
    #[serde(skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "types", ts(optional))]
    pub stops: Option<Stops>,
    /// Eating and drinking on the way. The module of a first visit does not know it.
    #[cfg(feature = "all")]
    #[serde(skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "types", ts(optional))]
    pub feeding: Option<Feeding>,
    /// The model's own error as a share of a finish time.
    pub model_error_share: Quantity,
    /// Which courses the question at hand rides; never written.
    #[serde(skip)]
    #[cfg_attr(feature = "types", ts(skip))]
    pub roads: Roads,
}

impl Default for Scenario {
    fn default() -> Self {
        Self {
            fasterby: VERSION,
            title: String::new(),
            rider: Rider::default(),
            bike: Bike::default(),
            positions: vec![Position::default()],
            riding_position: 0,
            power: Power::default(),
            efforts: Vec::new(),
            events: usual_events(),
            course: Course::default(),
            conditions: Conditions::default(),
            start: StartForm::default(),
            #[cfg(feature = "all")]
            stops: None,
            #[cfg(feature = "all")]
            feeding: None,
            model_error_share: fields::MODEL_ERROR_SHARE.chosen(),
            roads: Roads::default(),
        }
    }
}

/// The rider.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(default, deny_unknown_fields)]
pub struct Rider {
    /// Rider, bicycle and all they carry, kg.
    pub total_mass_kg: Quantity,
}

impl Default for Rider {
    fn default() -> Self {
        Self {
            total_mass_kg: fields::TOTAL_MASS_KG.typical(),
        }
    }
}

/// The bicycle.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(default, deny_unknown_fields)]
pub struct Bike {
    /// Crr.
    pub rolling_coefficient: Quantity,
    /// Share of pedal power that reaches the road.
    pub drivetrain_efficiency: Quantity,
    /// What the turning wheels add to the mass when speed changes, kg.
    pub rotating_mass_kg: Quantity,
    /// Constant part of bearing drag, N.
    pub bearing_drag_n: Quantity,
    /// Part of bearing drag that grows with speed, N s/m.
    pub bearing_drag_n_s_per_m: Quantity,
    /// The most propulsive force, N.
    pub launch_force_n: Quantity,
    /// The most sideways acceleration in a bend, m/s².
    pub lateral_m_s2: Quantity,
    /// Deceleration before a bend, m/s².
    pub braking_m_s2: Quantity,
    /// By what share the power meter reads high. It is common to every critical power and drag area that was measured.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "types", ts(optional))]
    pub power_meter_bias_share: Option<Quantity>,
}

impl Default for Bike {
    fn default() -> Self {
        Self {
            rolling_coefficient: fields::ROLLING_COEFFICIENT.typical(),
            drivetrain_efficiency: fields::DRIVETRAIN_EFFICIENCY.typical(),
            rotating_mass_kg: fields::ROTATING_MASS_KG.typical(),
            bearing_drag_n: fields::BEARING_DRAG_N.typical(),
            bearing_drag_n_s_per_m: fields::BEARING_DRAG_N_S_PER_M.typical(),
            launch_force_n: fields::LAUNCH_FORCE_N.typical(),
            lateral_m_s2: fields::LATERAL_M_S2.typical(),
            braking_m_s2: fields::BRAKING_M_S2.typical(),
            power_meter_bias_share: None,
        }
    }
}

/// What the rider can push.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(default, deny_unknown_fields)]
pub struct Power {
    /// Critical power, W.
    pub cp_w: Quantity,
    /// W′, J.
    pub w_prime_j: Quantity,
    /// Power at the first instant, W.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "types", ts(optional))]
    pub peak_w: Option<Quantity>,
    /// Share of critical power lost for each e-fold of time in long rides.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "types", ts(optional))]
    pub long_ride_loss_share: Option<Quantity>,
    /// The same in watts, as versions 1 and 2 wrote it; instead of the share.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "types", ts(optional))]
    pub long_ride_loss_w: Option<Quantity>,
    /// From when that counts, s.
    pub long_ride_from_s: Quantity,
    /// How the errors of critical power and W′ go together: a fit that puts one too high puts the other too low.
    #[serde(skip_serializing_if = "is_zero")]
    pub cp_w_prime_correlation: f64,
    /// Whether these watts were tested lower down than the course, and how they are lowered for it; the rider's own holds for
    /// those of every position too.
    #[serde(skip_serializing_if = "is_none")]
    pub altitude_loss: AltitudeLoss,
    /// How strongly this rider loses power with altitude, as a share of the published mean; the typical if left out.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "types", ts(optional))]
    pub altitude_response: Option<Quantity>,
}

/// What altitude takes from power.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum AltitudeLoss {
    /// Nothing: the watts are those of the course's altitude.
    #[default]
    None,
    /// What ten cyclists lost over five minutes (clark-2007).
    Published,
}

fn is_none(loss: &AltitudeLoss) -> bool {
    *loss == AltitudeLoss::None
}

fn is_zero(number: &f64) -> bool {
    *number == 0.0
}

impl Default for Power {
    fn default() -> Self {
        Self {
            cp_w: fields::CP_W.typical(),
            w_prime_j: fields::W_PRIME_J.typical(),
            peak_w: None,
            long_ride_loss_share: None,
            long_ride_loss_w: None,
            long_ride_from_s: fields::LONG_RIDE_FROM_S.typical(),
            cp_w_prime_correlation: fields::CP_W_PRIME_CORRELATION.default,
            altitude_loss: AltitudeLoss::None,
            altitude_response: None,
        }
    }
}

/// A hard effort that was ridden: how long, and how hard.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub struct Effort {
    /// How long it lasted, s.
    pub duration_s: Quantity,
    /// Mean power, W.
    pub power_w: Quantity,
    /// The position that it was ridden in, by its place; the ridden one if left out.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "types", ts(optional))]
    pub position: Option<usize>,
    /// The day, as `2026-05-01`.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "types", ts(optional))]
    pub date: Option<String>,
    /// Whether it was ridden indoors.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "types", ts(optional))]
    pub indoors: Option<bool>,
}

/// The course that an event has of its own. A first visit rides no event.
#[cfg(feature = "all")]
type OwnCourse = Course;

/// An event that counts.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub struct Event {
    /// What the rider calls it; empty if it goes by its distance.
    #[serde(default)]
    pub name: String,
    /// How far it is, m: the scenario's course is made longer or shorter to it. With a course of its own it may be left out, or is
    /// that course's length to a metre.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "types", ts(optional))]
    pub distance_m: Option<f64>,
    /// How long it lasts, s, instead of a distance: it is as far as the rider gets in that time today (`Scenario::settle_events`). Its
    /// own course, or else the scenario's, is made longer or shorter to that.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "types", ts(optional))]
    pub duration_s: Option<f64>,
    /// The course that it has of its own.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "types", ts(optional))]
    pub course: Option<OwnCourse>,
}

/// The distances that time trials are customarily held over: 10, 25, 50 and 100 miles (common practice, no source).
pub fn usual_events() -> Vec<Event> {
    const MILE_M: f64 = 1609.344;
    events_over([10.0, 25.0, 50.0, 100.0].map(|miles| MILE_M * miles))
}

/// The same where distances are metric: 10, 20, 40, 90 and 180 km (common practice, no source).
pub fn usual_metric_events() -> Vec<Event> {
    const KILOMETRE_M: f64 = 1000.0;
    events_over([10.0, 20.0, 40.0, 90.0, 180.0].map(|kilometres| KILOMETRE_M * kilometres))
}

fn events_over<const COUNT: usize>(distances_m: [f64; COUNT]) -> Vec<Event> {
    distances_m
        .map(|distance_m| Event {
            name: String::new(),
            distance_m: Some(distance_m),
            duration_s: None,
            course: None,
        })
        .into()
}

/// Which kind of course.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum CourseKind {
    /// One grade and bearing.
    #[default]
    Simple,
    /// Surveyed points.
    Profile,
}

/// What is made of the way the road leads.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum HeadingForm {
    /// It is left out, and with it the wind: the ride is in calm air of the same density.
    Ignore,
}

/// The road.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(default, deny_unknown_fields)]
pub struct Course {
    /// Which kind.
    pub kind: CourseKind,
    /// Its length, m; of a simple course.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "types", ts(optional))]
    pub distance_m: Option<Quantity>,
    /// How long the ride lasts, s, instead of a length: it is as long as the rider gets in that time today
    /// (`Scenario::settle_course`). A profile is made longer or shorter to that.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "types", ts(optional))]
    pub duration_s: Option<f64>,
    /// Rise over run; of a simple course.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "types", ts(optional))]
    pub grade: Option<Quantity>,
    /// The way it leads at the start, degrees; of a simple course.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "types", ts(optional))]
    pub bearing_deg: Option<Quantity>,
    /// Whether it comes back the way it went; of a simple course.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "types", ts(optional))]
    pub out_and_back: Option<bool>,
    /// Radius of the half circle in which an out-and-back course turns, m; of a simple course. Left out, the rider turns at full
    /// speed, which nobody does.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "types", ts(optional))]
    pub turn_radius_m: Option<Quantity>,
    /// Whether the wind's direction is left out, so that the ride is in calm air.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "types", ts(optional))]
    pub heading: Option<HeadingForm>,
    /// Points of a profile, by ascending distance.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub points: Vec<Point>,
}

impl Default for Course {
    fn default() -> Self {
        Self {
            kind: CourseKind::Simple,
            distance_m: None,
            duration_s: None,
            grade: None,
            bearing_deg: None,
            out_and_back: None,
            turn_radius_m: None,
            heading: None,
            points: Vec::new(),
        }
    }
}

/// A point of a profile.
#[derive(Clone, Copy, Debug, Default, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub struct Point {
    /// Along the road from the start, m.
    pub distance_m: f64,
    /// Above sea level, m.
    pub elevation_m: f64,
    /// The way the road leads from here on, degrees; left out, as at the point before. Without any, the wind is left out.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "types", ts(optional))]
    pub bearing_deg: Option<f64>,
    /// Radius of the bend from here to the next point, m.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "types", ts(optional))]
    pub radius_m: Option<f64>,
    /// The share of the wind along the course that reaches the rider from here to the next point, 0 to 1: less beside hedges, in a
    /// wood or between houses. Left out, all of it does.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "types", ts(optional))]
    pub wind_share: Option<f64>,
}

/// Where a pressure holds.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum PressureIs {
    /// Reduced to sea level, as forecasts are.
    #[default]
    SeaLevel,
    /// At the course, as a barometer on the spot shows.
    Course,
}

/// Where the wind was read.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum WindIs {
    /// In a forecast, or guessed: without a ± of its own it is uncertain, see [`Conditions::with_forecast_uncertainty`].
    #[default]
    Forecast,
    /// Measured at the roadside: as certain as it says.
    Roadside,
}

/// The day.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(default, deny_unknown_fields)]
pub struct Conditions {
    /// At the course, °C.
    pub temperature_c: Quantity,
    /// hPa; left out, the standard atmosphere's at this altitude.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "types", ts(optional))]
    pub pressure_hpa: Option<Quantity>,
    /// Where that pressure holds.
    pub pressure_is: PressureIs,
    /// Of the course, m; left out, the mean elevation of its points, or 0 for a simple course.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "types", ts(optional))]
    pub altitude_m: Option<Quantity>,
    /// 0 to 1.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "types", ts(optional))]
    pub relative_humidity: Option<Quantity>,
    /// In place of the humidity, °C.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "types", ts(optional))]
    pub dew_point_c: Option<Quantity>,
    /// As forecast, m/s.
    pub wind_speed_m_s: Quantity,
    /// Where it comes from, degrees.
    pub wind_from_deg: Quantity,
    /// Where it was read.
    #[serde(skip_serializing_if = "is_forecast")]
    pub wind_is: WindIs,
    /// Height of the forecast wind, m.
    pub wind_height_m: Quantity,
    /// Height at which the rider meets it, m.
    pub rider_height_m: Quantity,
    /// Of the land around, m.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "types", ts(optional))]
    pub roughness_length_m: Option<Quantity>,
    /// In place of the roughness: the share of the wind that reaches the rider.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "types", ts(optional))]
    pub shelter_factor: Option<Quantity>,
    /// For gravity, degrees.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "types", ts(optional))]
    pub latitude_deg: Option<Quantity>,
    /// How the weather changes in the course of the day. The module of a first visit does not know it.
    #[cfg(feature = "all")]
    #[serde(skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "types", ts(optional))]
    pub later: Option<LaterWeather>,
}

impl Default for Conditions {
    fn default() -> Self {
        Self {
            temperature_c: fields::TEMPERATURE_C.typical(),
            pressure_hpa: None,
            pressure_is: PressureIs::SeaLevel,
            altitude_m: None,
            relative_humidity: None,
            dew_point_c: None,
            wind_speed_m_s: fields::WIND_SPEED_M_S.chosen(),
            wind_from_deg: fields::WIND_FROM_DEG.chosen(),
            wind_is: WindIs::Forecast,
            wind_height_m: fields::WIND_HEIGHT_M.chosen(),
            rider_height_m: fields::RIDER_HEIGHT_M.chosen(),
            roughness_length_m: None,
            shelter_factor: None,
            latitude_deg: None,
            #[cfg(feature = "all")]
            later: None,
        }
    }
}

/// One standard deviation of a forecast wind's speed, as a share of it (assumed).
const FORECAST_SPEED_SHARE: f64 = 0.3;
/// One standard deviation of a forecast wind's direction, degrees (assumed).
const FORECAST_DIRECTION_DEG: f64 = 20.0;
/// One standard deviation of the roughness length of the land around, as a share of it (assumed: named kinds of land lie a
/// factor of two to three apart).
const ROUGHNESS_SHARE: f64 = 0.6;

impl Conditions {
    /// The same day with what a forecast leaves open. A wind from a forecast that was given without a ± is uncertain by 30 % in
    /// speed and 20° in direction, and so is the share of it that reaches the rider: by 60 % of the roughness length, or by
    /// the usual ± of a shelter. What has a ± keeps it, and a calm stays a calm.
    #[must_use]
    pub fn with_forecast_uncertainty(mut self) -> Self {
        if self.wind_is == WindIs::Roadside || self.wind_speed_m_s.value == 0.0 {
            return self;
        }
        let uncertain = |quantity: &mut Quantity, sd: f64| {
            if quantity.sd == 0.0 {
                *quantity = Quantity {
                    sd,
                    source: Known::Estimated,
                    ..*quantity
                };
            }
        };
        let speed_m_s = self.wind_speed_m_s.value;
        uncertain(&mut self.wind_speed_m_s, FORECAST_SPEED_SHARE * speed_m_s);
        uncertain(&mut self.wind_from_deg, FORECAST_DIRECTION_DEG);
        match &mut self.shelter_factor {
            Some(shelter) => uncertain(shelter, fields::SHELTER_FACTOR.default_sd),
            None => {
                let roughness = self
                    .roughness_length_m
                    .get_or_insert(fields::ROUGHNESS_LENGTH_M.chosen());
                let length_m = roughness.value;
                uncertain(roughness, ROUGHNESS_SHARE * length_m);
            }
        }
        self
    }
}

fn is_forecast(wind_is: &WindIs) -> bool {
    *wind_is == WindIs::Forecast
}

/// The start: `"standing"`, `"rolling"` or `{ "speed_m_s": 8 }`.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[cfg_attr(
    feature = "types",
    ts(type = "\"standing\" | \"rolling\" | { speed_m_s: Quantity }")
)]
pub enum StartForm {
    /// From rest.
    #[default]
    Standing,
    /// At the steady speed of the first metres.
    Rolling,
    /// At a given speed.
    Speed(Quantity),
}

impl Serialize for StartForm {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        #[derive(Serialize)]
        struct Speed {
            speed_m_s: Quantity,
        }
        match self {
            Self::Standing => serializer.serialize_str("standing"),
            Self::Rolling => serializer.serialize_str("rolling"),
            &Self::Speed(speed_m_s) => Speed { speed_m_s }.serialize(serializer),
        }
    }
}

impl<'de> Deserialize<'de> for StartForm {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        struct Form;
        impl<'de> Visitor<'de> for Form {
            type Value = StartForm;
            fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
                f.write_str("\"standing\", \"rolling\" or { speed_m_s }")
            }
            fn visit_str<E: de::Error>(self, text: &str) -> Result<StartForm, E> {
                match text {
                    "standing" => Ok(StartForm::Standing),
                    "rolling" => Ok(StartForm::Rolling),
                    other => Err(de::Error::unknown_variant(other, &["standing", "rolling"])),
                }
            }
            fn visit_map<A: MapAccess<'de>>(self, mut map: A) -> Result<StartForm, A::Error> {
                let mut speed_m_s = None;
                while let Some(key) = map.next_key::<String>()? {
                    if key != "speed_m_s" {
                        map.next_value::<IgnoredAny>()?;
                        return Err(de::Error::unknown_field(&key, &["speed_m_s"]));
                    }
                    speed_m_s = Some(map.next_value()?);
                }
                speed_m_s
                    .map(StartForm::Speed)
                    .ok_or_else(|| de::Error::missing_field("speed_m_s"))
            }
        }
        deserializer.deserialize_any(Form)
    }
}
