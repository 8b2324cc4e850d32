//! The saved file: what riders write down, checked, and turned into the physics' own structs.

use std::fmt;
use std::rc::Rc;

use serde::de::{self, IgnoredAny, MapAccess, Visitor};
use serde::{Deserialize, Deserializer, Serialize, Serializer};

use crate::air::{self, Ground, Moisture, Wind};
use crate::bounds::{self, Field};
use crate::course;
use crate::draws::Unsure;
use crate::error::{Error, Kind, Warning, decimal};
use crate::position;
use crate::power_duration::{LongRide, PowerDuration};
use crate::quantity::{Known, Quantity};
use crate::resistance::{DragShape, Machine};
use crate::ride::{Setup, Start};

/// The version of the scenario that this code writes.
pub const VERSION: u64 = 1;

/// A rider, their positions, power, course and day. Every part may be left out; typical values fill in.
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
    /// The road.
    pub course: Course,
    /// The day.
    pub conditions: Conditions,
    /// The start.
    pub start: StartForm,
    /// The model's own error as a share of a finish time.
    pub model_error_share: Quantity,
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
            course: Course::default(),
            conditions: Conditions::default(),
            start: StartForm::default(),
            model_error_share: bounds::MODEL_ERROR_SHARE.chosen(),
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
        Self { total_mass_kg: bounds::TOTAL_MASS_KG.typical() }
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
}

impl Default for Bike {
    fn default() -> Self {
        Self {
            rolling_coefficient: bounds::ROLLING_COEFFICIENT.typical(),
            drivetrain_efficiency: bounds::DRIVETRAIN_EFFICIENCY.typical(),
            rotating_mass_kg: bounds::ROTATING_MASS_KG.typical(),
            bearing_drag_n: bounds::BEARING_DRAG_N.typical(),
            bearing_drag_n_s_per_m: bounds::BEARING_DRAG_N_S_PER_M.typical(),
            launch_force_n: bounds::LAUNCH_FORCE_N.typical(),
            lateral_m_s2: bounds::LATERAL_M_S2.typical(),
            braking_m_s2: bounds::BRAKING_M_S2.typical(),
        }
    }
}

/// A position on the bicycle.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(default, deny_unknown_fields)]
pub struct Position {
    /// What the rider calls it.
    pub name: String,
    /// Drag area when fresh, m².
    pub cda_m2: Quantity,
    /// Critical power in it over that of the power tests.
    pub cp_factor: Quantity,
    /// W′ in it over that of the power tests.
    pub w_prime_factor: Quantity,
    /// Axial drag area by yaw, over that at zero yaw.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub yaw_table: Vec<YawRow>,
    /// How drag area changes with air speed.
    pub speed_exponent: Quantity,
    /// The air speed at which drag area was measured, m/s.
    pub reference_airspeed_m_s: Quantity,
    /// How it is lost.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "types", ts(optional))]
    pub fade: Option<Fade>,
    /// How often it is left.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "types", ts(optional))]
    pub lapses: Option<Lapses>,
}

impl Default for Position {
    fn default() -> Self {
        Self {
            name: String::new(),
            cda_m2: bounds::CDA_M2.typical(),
            cp_factor: bounds::CP_FACTOR.typical(),
            w_prime_factor: bounds::W_PRIME_FACTOR.typical(),
            yaw_table: Vec::new(),
            speed_exponent: bounds::SPEED_EXPONENT.typical(),
            reference_airspeed_m_s: bounds::REFERENCE_AIRSPEED_M_S.typical(),
            fade: None,
            lapses: None,
        }
    }
}

/// One row of a yaw table.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub struct YawRow {
    /// Angle between the bicycle and the apparent wind, degrees.
    pub yaw_deg: f64,
    /// Axial drag area over that at zero yaw.
    pub ratio: f64,
}

/// A position that is lost.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(default, deny_unknown_fields)]
pub struct Fade {
    /// Drag area once it is lost, m².
    pub tired_cda_m2: Quantity,
    /// When it begins to go, s.
    pub begins_s: Quantity,
    /// When it has gone, s.
    pub complete_s: Quantity,
}

impl Default for Fade {
    fn default() -> Self {
        Self {
            tired_cda_m2: bounds::FADE_TIRED_CDA_M2.typical(),
            begins_s: bounds::FADE_BEGINS_S.typical(),
            complete_s: bounds::FADE_COMPLETE_S.typical(),
        }
    }
}

/// A share of the time out of the position.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(default, deny_unknown_fields)]
pub struct Lapses {
    /// Share of the time, 0 to 1.
    pub share: Quantity,
    /// Drag area in a lapse, m².
    pub cda_m2: Quantity,
}

impl Default for Lapses {
    fn default() -> Self {
        Self { share: bounds::LAPSES_SHARE.typical(), cda_m2: bounds::LAPSES_CDA_M2.typical() }
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
    /// Watts lost for each e-fold of time in long rides.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "types", ts(optional))]
    pub long_ride_loss_w: Option<Quantity>,
    /// From when that counts, s.
    pub long_ride_from_s: Quantity,
}

impl Default for Power {
    fn default() -> Self {
        Self {
            cp_w: bounds::CP_W.typical(),
            w_prime_j: bounds::W_PRIME_J.typical(),
            peak_w: None,
            long_ride_loss_w: None,
            long_ride_from_s: bounds::LONG_RIDE_FROM_S.typical(),
        }
    }
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
    /// Points of a profile, by ascending distance.
    #[serde(deserialize_with = "points", skip_serializing_if = "Vec::is_empty")]
    pub points: Vec<Point>,
}

impl Default for Course {
    fn default() -> Self {
        Self {
            kind: CourseKind::Simple,
            distance_m: None,
            grade: None,
            bearing_deg: None,
            out_and_back: None,
            points: Vec::new(),
        }
    }
}

/// A point of a profile.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub struct Point {
    /// Along the road from the start, m.
    pub distance_m: f64,
    /// Above sea level, m.
    pub elevation_m: f64,
    /// The way the road leads from here on, degrees.
    #[serde(default)]
    pub bearing_deg: f64,
    /// Radius of the bend from here to the next point, m.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "types", ts(optional))]
    pub radius_m: Option<f64>,
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
    /// Of the course, m.
    pub altitude_m: Quantity,
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
}

impl Default for Conditions {
    fn default() -> Self {
        Self {
            temperature_c: bounds::TEMPERATURE_C.typical(),
            pressure_hpa: None,
            pressure_is: PressureIs::SeaLevel,
            altitude_m: bounds::ALTITUDE_M.chosen(),
            relative_humidity: None,
            dew_point_c: None,
            wind_speed_m_s: bounds::WIND_SPEED_M_S.chosen(),
            wind_from_deg: bounds::WIND_FROM_DEG.chosen(),
            wind_height_m: bounds::WIND_HEIGHT_M.chosen(),
            rider_height_m: bounds::RIDER_HEIGHT_M.chosen(),
            roughness_length_m: None,
            shelter_factor: None,
            latitude_deg: None,
        }
    }
}

/// The start: `"standing"`, `"rolling"` or `{ "speed_m_s": 8 }`.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[cfg_attr(feature = "types", ts(type = "\"standing\" | \"rolling\" | { speed_m_s: Quantity }"))]
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
                speed_m_s.map(StartForm::Speed).ok_or_else(|| de::Error::missing_field("speed_m_s"))
            }
        }
        deserializer.deserialize_any(Form)
    }
}

/// Points, refused beyond the most that are read so that no request holds the page up.
fn points<'de, D: Deserializer<'de>>(deserializer: D) -> Result<Vec<Point>, D::Error> {
    struct Points;
    impl<'de> Visitor<'de> for Points {
        type Value = Vec<Point>;
        fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
            f.write_str("a list of points")
        }
        fn visit_seq<A: de::SeqAccess<'de>>(self, mut list: A) -> Result<Vec<Point>, A::Error> {
            let mut points = Vec::new();
            while let Some(point) = list.next_element()? {
                if points.len() == bounds::MOST_POINTS {
                    return Err(de::Error::custom(format!(
                        "too large: at most {} points are read",
                        bounds::MOST_POINTS
                    )));
                }
                points.push(point);
            }
            Ok(points)
        }
    }
    deserializer.deserialize_seq(Points)
}

/// Sees every number of a scenario that the table of bounds knows, with the position's index where it has one.
pub trait Inspect {
    /// One number.
    fn number(&mut self, field: &'static Field, position: Option<usize>, quantity: &mut Quantity);
}

impl Scenario {
    /// Shows every uncertain number to `inspect`, always in the same order.
    pub fn inspect(&mut self, inspect: &mut impl Inspect) {
        let mut see = |field: &'static Field, quantity: &mut Quantity| inspect.number(field, None, quantity);
        see(&bounds::TOTAL_MASS_KG, &mut self.rider.total_mass_kg);
        let bike = &mut self.bike;
        see(&bounds::ROLLING_COEFFICIENT, &mut bike.rolling_coefficient);
        see(&bounds::DRIVETRAIN_EFFICIENCY, &mut bike.drivetrain_efficiency);
        see(&bounds::ROTATING_MASS_KG, &mut bike.rotating_mass_kg);
        see(&bounds::BEARING_DRAG_N, &mut bike.bearing_drag_n);
        see(&bounds::BEARING_DRAG_N_S_PER_M, &mut bike.bearing_drag_n_s_per_m);
        see(&bounds::LAUNCH_FORCE_N, &mut bike.launch_force_n);
        see(&bounds::LATERAL_M_S2, &mut bike.lateral_m_s2);
        see(&bounds::BRAKING_M_S2, &mut bike.braking_m_s2);
        let power = &mut self.power;
        see(&bounds::CP_W, &mut power.cp_w);
        see(&bounds::W_PRIME_J, &mut power.w_prime_j);
        power.peak_w.iter_mut().for_each(|q| see(&bounds::PEAK_W, q));
        power.long_ride_loss_w.iter_mut().for_each(|q| see(&bounds::LONG_RIDE_LOSS_W, q));
        see(&bounds::LONG_RIDE_FROM_S, &mut power.long_ride_from_s);
        let course = &mut self.course;
        course.distance_m.iter_mut().for_each(|q| see(&bounds::DISTANCE_M, q));
        course.grade.iter_mut().for_each(|q| see(&bounds::GRADE, q));
        course.bearing_deg.iter_mut().for_each(|q| see(&bounds::BEARING_DEG, q));
        let day = &mut self.conditions;
        see(&bounds::TEMPERATURE_C, &mut day.temperature_c);
        day.pressure_hpa.iter_mut().for_each(|q| see(&bounds::PRESSURE_HPA, q));
        see(&bounds::ALTITUDE_M, &mut day.altitude_m);
        day.relative_humidity.iter_mut().for_each(|q| see(&bounds::RELATIVE_HUMIDITY, q));
        day.dew_point_c.iter_mut().for_each(|q| see(&bounds::DEW_POINT_C, q));
        see(&bounds::WIND_SPEED_M_S, &mut day.wind_speed_m_s);
        see(&bounds::WIND_FROM_DEG, &mut day.wind_from_deg);
        see(&bounds::WIND_HEIGHT_M, &mut day.wind_height_m);
        see(&bounds::RIDER_HEIGHT_M, &mut day.rider_height_m);
        day.roughness_length_m.iter_mut().for_each(|q| see(&bounds::ROUGHNESS_LENGTH_M, q));
        day.shelter_factor.iter_mut().for_each(|q| see(&bounds::SHELTER_FACTOR, q));
        day.latitude_deg.iter_mut().for_each(|q| see(&bounds::LATITUDE_DEG, q));
        if let StartForm::Speed(speed_m_s) = &mut self.start {
            see(&bounds::START_SPEED_M_S, speed_m_s);
        }
        see(&bounds::MODEL_ERROR_SHARE, &mut self.model_error_share);
        for (i, position) in self.positions.iter_mut().enumerate() {
            let mut see = |field: &'static Field, quantity: &mut Quantity| inspect.number(field, Some(i), quantity);
            see(&bounds::CDA_M2, &mut position.cda_m2);
            see(&bounds::CP_FACTOR, &mut position.cp_factor);
            see(&bounds::W_PRIME_FACTOR, &mut position.w_prime_factor);
            see(&bounds::SPEED_EXPONENT, &mut position.speed_exponent);
            see(&bounds::REFERENCE_AIRSPEED_M_S, &mut position.reference_airspeed_m_s);
            if let Some(fade) = &mut position.fade {
                see(&bounds::FADE_TIRED_CDA_M2, &mut fade.tired_cda_m2);
                see(&bounds::FADE_BEGINS_S, &mut fade.begins_s);
                see(&bounds::FADE_COMPLETE_S, &mut fade.complete_s);
            }
            if let Some(lapses) = &mut position.lapses {
                see(&bounds::LAPSES_SHARE, &mut lapses.share);
                see(&bounds::LAPSES_CDA_M2, &mut lapses.cda_m2);
            }
        }
    }

    /// Checks every number and everything that numbers say together; what is legal but doubtful comes back as warnings.
    ///
    /// # Errors
    /// The first thing wrong, by its path from `scenario`.
    pub fn check(&self) -> Result<Vec<Warning>, Error> {
        struct Check {
            first: Option<Error>,
            warnings: Vec<Warning>,
        }
        impl Inspect for Check {
            fn number(&mut self, field: &'static Field, position: Option<usize>, quantity: &mut Quantity) {
                let path = path(field, position);
                if let Err(error) = check_quantity(field, &path, quantity) {
                    self.first.get_or_insert(error);
                } else {
                    self.warnings.extend(field.doubt(&path, quantity.value));
                }
            }
        }
        if self.fasterby != VERSION {
            return Err(version_error(self.fasterby));
        }
        let mut check = Check { first: None, warnings: Vec::new() };
        self.clone().inspect(&mut check);
        if let Some(error) = check.first {
            return Err(error);
        }
        self.check_positions()?;
        self.check_power()?;
        self.check_course()?;
        self.check_conditions(&mut check.warnings)?;
        Ok(check.warnings)
    }

    fn check_positions(&self) -> Result<(), Error> {
        let conflict = |field: &str, message: String| Err(Error::new(Kind::Conflict, field, message));
        if self.positions.is_empty() {
            return conflict("scenario.positions", "There is no position: give at least one.".into());
        }
        if self.positions.len() > bounds::MOST_POSITIONS {
            let message = format!("There are more than {} positions.", bounds::MOST_POSITIONS);
            return Err(Error::new(Kind::TooLarge, "scenario.positions", message));
        }
        position_index(self, self.riding_position, "scenario.riding_position")?;
        let texts = self.positions.iter().enumerate().map(|(i, p)| (format!("scenario.positions[{i}].name"), &p.name));
        for (field, text) in texts.chain([("scenario.title".to_owned(), &self.title)]) {
            if text.len() > bounds::MOST_TEXT_BYTES {
                let message = format!("{field} is longer than {} bytes.", bounds::MOST_TEXT_BYTES);
                return Err(Error::new(Kind::TooLarge, field, message));
            }
        }
        for (i, position) in self.positions.iter().enumerate() {
            if let Some(fade) = &position.fade
                && fade.complete_s.value < fade.begins_s.value
            {
                let field = format!("scenario.positions[{i}].fade.complete_s");
                return conflict(&field, format!("{field} must not be before begins_s."));
            }
            check_yaw_table(&position.yaw_table, &format!("scenario.positions[{i}].yaw_table"))?;
        }
        Ok(())
    }

    fn check_power(&self) -> Result<(), Error> {
        match self.power.peak_w {
            Some(peak_w) if peak_w.value <= self.power.cp_w.value => {
                let message = "scenario.power.peak_w must be above cp_w.";
                Err(Error::new(Kind::Conflict, "scenario.power.peak_w", message))
            }
            _ => Ok(()),
        }
    }

    fn check_course(&self) -> Result<(), Error> {
        let course = &self.course;
        let misplaced = |field: &str, kind: &str| {
            let message = format!("scenario.course.{field} does not belong to a {kind} course.");
            Err(Error::new(Kind::Conflict, format!("scenario.course.{field}"), message))
        };
        match course.kind {
            CourseKind::Simple if !course.points.is_empty() => misplaced("points", "simple"),
            CourseKind::Simple => Ok(()),
            CourseKind::Profile if course.distance_m.is_some() => misplaced("distance_m", "profile"),
            CourseKind::Profile if course.grade.is_some() => misplaced("grade", "profile"),
            CourseKind::Profile if course.bearing_deg.is_some() => misplaced("bearing_deg", "profile"),
            CourseKind::Profile if course.out_and_back.is_some() => misplaced("out_and_back", "profile"),
            CourseKind::Profile => check_points(&course.points),
        }
    }

    fn check_conditions(&self, warnings: &mut Vec<Warning>) -> Result<(), Error> {
        let day = &self.conditions;
        let conflict = |field: &str, message: &str| Err(Error::new(Kind::Conflict, field, message));
        if day.relative_humidity.is_some() && day.dew_point_c.is_some() {
            let message = "Give scenario.conditions.dew_point_c or relative_humidity, not both.";
            return conflict("scenario.conditions.dew_point_c", message);
        }
        if day.roughness_length_m.is_some() && day.shelter_factor.is_some() {
            let message = "Give scenario.conditions.shelter_factor or roughness_length_m, not both.";
            return conflict("scenario.conditions.shelter_factor", message);
        }
        // Forecasts round both to whole degrees or tenths.
        const ROUNDING_C: f64 = 0.2;
        if let Some(dew) = day.dew_point_c
            && dew.value > day.temperature_c.value + ROUNDING_C
        {
            let message = "scenario.conditions.dew_point_c is above the temperature, which cannot be.";
            return conflict("scenario.conditions.dew_point_c", message);
        }
        let roughness_m = day.roughness_length_m.map_or(bounds::ROUGHNESS_LENGTH_M.default, |q| q.value);
        if day.shelter_factor.is_none()
            && day.wind_speed_m_s.value > 0.0
            && day.rider_height_m.value < 20.0 * roughness_m
        {
            let message =
                "The wind law is only indicative so close to rough ground; a stated shelter may serve better.";
            warnings.push(Warning::new("scenario.conditions.roughness_length_m", "wind_law", message));
        }
        let pressure = self.course_pressure_pa();
        if !(50_000.0..=110_000.0).contains(&pressure) {
            let message = "The pressure at the course comes out beyond 500 to 1100 hPa.";
            return conflict("scenario.conditions.pressure_hpa", message);
        }
        Ok(())
    }

    fn course_pressure_pa(&self) -> f64 {
        let day = &self.conditions;
        match (day.pressure_hpa, day.pressure_is) {
            (None, _) => air::standard_pressure_pa(day.altitude_m.value),
            (Some(hpa), PressureIs::Course) => 100.0 * hpa.value,
            (Some(hpa), PressureIs::SeaLevel) => {
                air::course_pressure_pa(100.0 * hpa.value, day.altitude_m.value, day.temperature_c.value)
            }
        }
    }

    /// Density of the air at the course, kg/m³.
    pub fn density_kg_m3(&self) -> f64 {
        let day = &self.conditions;
        let moisture = match (day.dew_point_c, day.relative_humidity) {
            (Some(dew_point), _) => Moisture::DewPointC(dew_point.value.min(day.temperature_c.value)),
            (None, humidity) => {
                Moisture::RelativeHumidity(humidity.map_or(bounds::RELATIVE_HUMIDITY.default, |q| q.value))
            }
        };
        air::density_kg_m3(day.temperature_c.value, self.course_pressure_pa(), moisture)
    }

    /// Wind at rider height, m/s.
    pub fn rider_wind_m_s(&self) -> f64 {
        let day = &self.conditions;
        let ground = match (day.shelter_factor, day.roughness_length_m) {
            (Some(share), _) => Ground::Shelter(share.value),
            (None, z0) => Ground::RoughnessLengthM(z0.map_or(bounds::ROUGHNESS_LENGTH_M.default, |q| q.value)),
        };
        day.wind_speed_m_s.value * air::wind_factor(ground, day.rider_height_m.value, day.wind_height_m.value)
    }

    /// The rider and bicycle as the physics takes them.
    pub fn machine(&self) -> Machine {
        let (bike, day) = (&self.bike, &self.conditions);
        Machine {
            total_mass_kg: self.rider.total_mass_kg.value,
            rotating_mass_kg: bike.rotating_mass_kg.value,
            rolling_coefficient: bike.rolling_coefficient.value,
            drivetrain_efficiency: bike.drivetrain_efficiency.value,
            bearing_drag_n: bike.bearing_drag_n.value,
            bearing_drag_n_s_per_m: bike.bearing_drag_n_s_per_m.value,
            launch_force_n: bike.launch_force_n.value,
            lateral_m_s2: bike.lateral_m_s2.value,
            braking_m_s2: bike.braking_m_s2.value,
            gravity_m_s2: day
                .latitude_deg
                .map_or(air::STANDARD_GRAVITY_M_S2, |latitude| air::gravity_m_s2(latitude.value, day.altitude_m.value)),
        }
    }

    /// The course as the physics takes it.
    pub fn course(&self) -> course::Course {
        let course = &self.course;
        let or = |quantity: Option<Quantity>, field: &Field| quantity.map_or(field.default, |q| q.value);
        match course.kind {
            CourseKind::Simple => course::Course::simple(
                or(course.distance_m, &bounds::DISTANCE_M),
                or(course.grade, &bounds::GRADE),
                or(course.bearing_deg, &bounds::BEARING_DEG),
                course.out_and_back.unwrap_or(false),
            ),
            CourseKind::Profile => {
                let points: Vec<course::Point> = course
                    .points
                    .iter()
                    .map(|p| course::Point {
                        distance_m: p.distance_m,
                        elevation_m: p.elevation_m,
                        bearing_deg: p.bearing_deg,
                        radius_m: p.radius_m,
                    })
                    .collect();
                course::Course::profile(&points)
            }
        }
    }

    /// The rider's power–duration relation as tested.
    pub fn power_duration(&self) -> PowerDuration {
        let power = &self.power;
        PowerDuration {
            cp_w: power.cp_w.value,
            w_prime_j: power.w_prime_j.value,
            peak_w: power.peak_w.map(|q| q.value.max(power.cp_w.value * 1.001)),
            long_ride: power
                .long_ride_loss_w
                .map(|loss| LongRide { loss_w: loss.value, from_s: power.long_ride_from_s.value }),
        }
    }

    /// The ride in one of the positions, on a course that has been made already. `None` for an index without a position.
    pub fn setup_on(&self, position: usize, course: Rc<course::Course>) -> Option<Setup> {
        let position = self.positions.get(position)?;
        let power = self.power_duration().scaled(position.cp_factor.value, position.w_prime_factor.value);
        Some(Setup {
            machine: self.machine(),
            position: position.physical(),
            course,
            density_kg_m3: self.density_kg_m3(),
            wind: Wind::new(self.rider_wind_m_s(), self.conditions.wind_from_deg.value),
            start: match self.start {
                StartForm::Standing => Start::Standing,
                StartForm::Rolling => Start::Rolling,
                StartForm::Speed(speed) => Start::Speed(speed.value),
            },
            power,
        })
    }

    /// The numbers that are not known exactly and can matter to a ride in one of `positions`, with their paths.
    pub fn unsure(&self, positions: &[usize]) -> Vec<Input> {
        struct Collect<'a> {
            positions: &'a [usize],
            inputs: Vec<Input>,
        }
        impl Inspect for Collect<'_> {
            fn number(&mut self, field: &'static Field, position: Option<usize>, quantity: &mut Quantity) {
                if matters(field, position, quantity, self.positions) {
                    let &mut Quantity { value, sd, source } = quantity;
                    let unsure = Unsure { value, sd, min: field.min, max: field.max };
                    self.inputs.push(Input { path: path(field, position), known: source, unsure });
                }
            }
        }
        let mut collect = Collect { positions, inputs: Vec::new() };
        self.clone().inspect(&mut collect);
        collect.inputs
    }

    /// Sets the numbers that [`Self::unsure`] lists, in its order.
    pub fn set_unsure(&mut self, positions: &[usize], values: &[f64]) {
        struct Set<'a> {
            positions: &'a [usize],
            values: std::slice::Iter<'a, f64>,
        }
        impl Inspect for Set<'_> {
            fn number(&mut self, field: &'static Field, position: Option<usize>, quantity: &mut Quantity) {
                if matters(field, position, quantity, self.positions)
                    && let Some(&value) = self.values.next()
                {
                    quantity.value = value;
                }
            }
        }
        self.inspect(&mut Set { positions, values: values.iter() });
    }
}

impl Position {
    /// The position as the physics takes it.
    pub fn physical(&self) -> position::Position {
        position::Position {
            cda_m2: self.cda_m2.value,
            shape: DragShape {
                yaw_table: self.yaw_table.iter().map(|row| (row.yaw_deg, row.ratio)).collect(),
                speed_exponent: self.speed_exponent.value,
                reference_airspeed_m_s: self.reference_airspeed_m_s.value,
            },
            cp_factor: self.cp_factor.value,
            w_prime_factor: self.w_prime_factor.value,
            fade: self.fade.as_ref().map(|fade| position::Fade {
                tired_cda_m2: fade.tired_cda_m2.value,
                begins_s: fade.begins_s.value,
                // Draws may cross.
                complete_s: fade.complete_s.value.max(fade.begins_s.value),
            }),
            lapses: self
                .lapses
                .as_ref()
                .map(|lapses| position::Lapses { share: lapses.share.value, cda_m2: lapses.cda_m2.value }),
        }
    }
}

/// A number that is not known exactly, by its path in the request.
#[derive(Clone, Debug, PartialEq)]
pub struct Input {
    /// The path, such as `scenario.positions[0].cda_m2`.
    pub path: String,
    /// How it is known.
    pub known: Known,
    /// Its value and spread.
    pub unsure: Unsure,
}

/// Whether a number is unsure and moves a ride in one of these positions. The model's own error is kept apart.
fn matters(field: &Field, position: Option<usize>, quantity: &Quantity, positions: &[usize]) -> bool {
    quantity.sd > 0.0
        && position.is_none_or(|i| positions.contains(&i))
        && !std::ptr::eq(field, &raw const bounds::MODEL_ERROR_SHARE)
}

/// The path of a field in a request.
fn path(field: &Field, position: Option<usize>) -> String {
    match position {
        Some(i) => format!("scenario.{}", field.key.replacen("positions", &format!("positions[{i}]"), 1)),
        None => format!("scenario.{}", field.key),
    }
}

/// Checks a value and its standard deviation.
///
/// # Errors
/// Names `path` or its `sd`.
pub fn check_quantity(field: &Field, path: &str, quantity: &Quantity) -> Result<(), Error> {
    field.check(|| path.to_owned(), quantity.value)?;
    let widest = field.max - field.min;
    let sd_path = format!("{path}.sd");
    if !quantity.sd.is_finite() {
        return Err(Error::new(Kind::NotFinite, &sd_path, format!("{sd_path} is not a number that can be used.")));
    }
    if !(0.0..=widest).contains(&quantity.sd) {
        return Err(Error::out_of_range(sd_path, quantity.sd, 0.0, widest, field.unit));
    }
    Ok(())
}

/// Checks that an index names a position.
///
/// # Errors
/// Names `field`.
pub fn position_index(scenario: &Scenario, index: usize, field: &str) -> Result<usize, Error> {
    let count = scenario.positions.len();
    if index < count {
        return Ok(index);
    }
    Err(Error::out_of_range(field, index as f64, 0.0, count.saturating_sub(1) as f64, ""))
}

fn check_yaw_table(rows: &[YawRow], path: &str) -> Result<(), Error> {
    if rows.len() > bounds::MOST_YAW_ROWS {
        let message = format!("{path} has more than {} rows.", bounds::MOST_YAW_ROWS);
        return Err(Error::new(Kind::TooLarge, path, message));
    }
    for (i, row) in rows.iter().enumerate() {
        bounds::YAW_DEG.check(|| format!("{path}[{i}].yaw_deg"), row.yaw_deg)?;
        bounds::YAW_RATIO.check(|| format!("{path}[{i}].ratio"), row.ratio)?;
        if i > 0 && row.yaw_deg <= rows[i - 1].yaw_deg {
            let field = format!("{path}[{i}].yaw_deg");
            return Err(Error::new(Kind::Conflict, &field, format!("{field} must be larger than the row before.")));
        }
    }
    Ok(())
}

fn check_points(points: &[Point]) -> Result<(), Error> {
    let path = "scenario.course.points";
    if points.len() < 2 {
        return Err(Error::new(Kind::Missing, path, "A profile needs at least two points."));
    }
    for (i, point) in points.iter().enumerate() {
        bounds::POINT_DISTANCE_M.check(|| format!("{path}[{i}].distance_m"), point.distance_m)?;
        bounds::POINT_ELEVATION_M.check(|| format!("{path}[{i}].elevation_m"), point.elevation_m)?;
        bounds::POINT_BEARING_DEG.check(|| format!("{path}[{i}].bearing_deg"), point.bearing_deg)?;
        if let Some(radius_m) = point.radius_m {
            bounds::POINT_RADIUS_M.check(|| format!("{path}[{i}].radius_m"), radius_m)?;
        }
        let Some(before) = i.checked_sub(1).and_then(|before| points.get(before)) else { continue };
        // Closer points than survey accuracy give grades that are noise.
        const CLOSEST_M: f64 = 0.1;
        if point.distance_m < before.distance_m + CLOSEST_M {
            let field = format!("{path}[{i}].distance_m");
            let message = format!("{field} must be at least 0.1 m beyond the point before.");
            return Err(Error::new(Kind::Conflict, field, message));
        }
        let grade = (point.elevation_m - before.elevation_m) / (point.distance_m - before.distance_m);
        if !(bounds::GRADE.min..=bounds::GRADE.max).contains(&grade) {
            let message =
                format!("The road to point {i} rises by {} %, more than is ridden.", decimal((100.0 * grade).round()));
            return Err(Error {
                min: Some(bounds::GRADE.min),
                max: Some(bounds::GRADE.max),
                ..Error::new(Kind::OutOfRange, format!("{path}[{i}].elevation_m"), message)
            });
        }
    }
    let length_m = points[points.len() - 1].distance_m - points[0].distance_m;
    bounds::DISTANCE_M.check(|| path.to_owned(), length_m)
}

/// What is said of a scenario of another version.
pub fn version_error(version: u64) -> Error {
    let (kind, message) = if version > VERSION {
        (
            Kind::NewerVersion,
            format!(
                "This was saved by a newer version ({version}); this one reads version {VERSION}. It is left as it is."
            ),
        )
    } else {
        (Kind::OutOfRange, format!("scenario.fasterby is {version}; the oldest version is {VERSION}."))
    };
    Error::new(kind, "scenario.fasterby", message)
}
