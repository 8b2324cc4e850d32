//! The air the rider moves through: density, wind at rider height, apparent wind.

use crate::numerics::solve::within;

/// Zero of the Celsius scale, K.
pub const ZERO_CELSIUS_K: f64 = 273.15;
/// Standard gravity, m/s².
pub const STANDARD_GRAVITY_M_S2: f64 = 9.80665;
/// Fall of temperature with height in the standard atmosphere, K/m. Source: iso-2533.
const LAPSE_RATE_K_PER_M: f64 = 0.0065;
/// Gas constant of dry air in the standard atmosphere, J/(kg K). Source: iso-2533.
const DRY_AIR_GAS_CONSTANT: f64 = 287.053;
/// Pressure at sea level in the standard atmosphere, Pa. Source: iso-2533.
pub const STANDARD_PRESSURE_PA: f64 = 101_325.0;
/// Temperature at sea level in the standard atmosphere, K. Source: iso-2533.
const STANDARD_TEMPERATURE_K: f64 = 288.15;
/// Radius of the earth in the standard atmosphere, m. Source: iso-2533.
const EARTH_RADIUS_M: f64 = 6_356_766.0;
/// Density of the standard atmosphere at sea level, kg/m³. Source: iso-2533.
pub const STANDARD_DENSITY_KG_M3: f64 = 1.225;

/// Water vapour in the air, as a forecast gives it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Moisture {
    /// Relative humidity over water, 0 to 1.
    RelativeHumidity(f64),
    /// Dew point over water, °C.
    DewPointC(f64),
}

/// Saturation vapour pressure over water, Pa: `exp(A T² + B T + C + D/T)`, T in kelvin.
///
/// Source: picard-2008, equation A1.1. Within 0.007 % of IAPWS from 5 to 35 °C.
pub fn saturation_vapour_pressure_pa(temperature_c: f64) -> f64 {
    let t = temperature_c + ZERO_CELSIUS_K;
    (1.237_884_7e-5 * t * t - 1.912_131_6e-2 * t + 33.937_110_47 - 6.343_164_5e3 / t).exp()
}

/// How much more vapour air holds than empty space does: `α + βp + γt²`, p in Pa, t in °C.
///
/// Source: picard-2008, equation A1.2.
fn enhancement_factor(temperature_c: f64, pressure_pa: f64) -> f64 {
    1.000_62 + 3.14e-8 * pressure_pa + 5.6e-7 * temperature_c * temperature_c
}

/// Compressibility of moist air; `vapour` is its mole fraction.
///
/// Source: picard-2008, equation A1.4.
fn compressibility(temperature_c: f64, pressure_pa: f64, vapour: f64) -> f64 {
    let t = temperature_c;
    let p_over_t = pressure_pa / (t + ZERO_CELSIUS_K);
    let first = 1.581_23e-6 - 2.933_1e-8 * t
        + 1.104_3e-10 * t * t
        + (5.707e-6 - 2.051e-8 * t) * vapour
        + (1.989_8e-4 - 2.376e-6 * t) * vapour * vapour;
    let second = 1.83e-11 - 0.765e-8 * vapour * vapour;
    1.0 - p_over_t * first + p_over_t * p_over_t * second
}

/// Density of moist air, kg/m³: `p Ma / (Z R T) · (1 − x_v (1 − Mv/Ma))` with 400 ppm of carbon dioxide.
///
/// Valid from 600 to 1100 hPa and 15 to 27 °C; outside it agrees within 1e-4 with real-gas mixtures from −5 to 40 °C,
/// so there is no branch.
///
/// Source: picard-2008 (CIPM-2007).
///
/// ```
/// use fasterby_core::air::{Moisture, STANDARD_PRESSURE_PA, density_kg_m3};
///
/// let dry = density_kg_m3(15.0, STANDARD_PRESSURE_PA, Moisture::RelativeHumidity(0.0));
/// assert!((dry - 1.225).abs() < 1e-3);
/// ```
pub fn density_kg_m3(temperature_c: f64, pressure_pa: f64, moisture: Moisture) -> f64 {
    const GAS_CONSTANT: f64 = 8.314_472;
    const DRY_AIR_KG_PER_MOL: f64 = 28.965_46e-3;
    const WATER_KG_PER_MOL: f64 = 18.015_28e-3;
    let vapour_pressure_pa = match moisture {
        Moisture::RelativeHumidity(share) => share * saturation_vapour_pressure_pa(temperature_c),
        Moisture::DewPointC(dew_point_c) => saturation_vapour_pressure_pa(dew_point_c),
    };
    let vapour = (vapour_pressure_pa * enhancement_factor(temperature_c, pressure_pa)
        / pressure_pa)
        .min(1.0);
    let kelvin = temperature_c + ZERO_CELSIUS_K;
    let dry = pressure_pa * DRY_AIR_KG_PER_MOL
        / (compressibility(temperature_c, pressure_pa, vapour) * GAS_CONSTANT * kelvin);
    dry * (1.0 - vapour * (1.0 - WATER_KG_PER_MOL / DRY_AIR_KG_PER_MOL))
}

/// Dew point over water, °C, of air with this relative humidity: the inverse of [`saturation_vapour_pressure_pa`] by
/// Newton's method, which converges from the warm side because the curve is convex. Relative humidity from 1e-6 to 1.
///
/// Accurate to 1e-9 °C; after 60 steps it returns the last one.
pub fn dew_point_c(temperature_c: f64, relative_humidity: f64) -> f64 {
    let target = within(relative_humidity, 1e-6, 1.0).ln()
        + saturation_vapour_pressure_pa(temperature_c).ln();
    let mut dew = temperature_c;
    for _ in 0..60 {
        let kelvin = dew + ZERO_CELSIUS_K;
        let slope =
            2.0 * 1.237_884_7e-5 * kelvin - 1.912_131_6e-2 + 6.343_164_5e3 / (kelvin * kelvin);
        let step = (saturation_vapour_pressure_pa(dew).ln() - target) / slope;
        dew -= step;
        if step.abs() < 1e-9 {
            break;
        }
    }
    dew
}

/// Pressure at the course from a pressure reduced to sea level: `p₀ (T / (T + L h))^(g / (R_d L))`, T at the course.
///
/// Source: iso-2533 for the constants. Equal at sea level, less above it.
pub fn course_pressure_pa(sea_level_pressure_pa: f64, altitude_m: f64, temperature_c: f64) -> f64 {
    let kelvin = temperature_c + ZERO_CELSIUS_K;
    let exponent = STANDARD_GRAVITY_M_S2 / (DRY_AIR_GAS_CONSTANT * LAPSE_RATE_K_PER_M);
    sea_level_pressure_pa * (kelvin / (kelvin + LAPSE_RATE_K_PER_M * altitude_m)).powf(exponent)
}

/// Pressure of the standard atmosphere at a height above sea level, below 11 km.
///
/// Source: iso-2533: `101325 (T / 288.15)^5.255876` with `T = 288.15 − 0.0065 H`, `H` the geopotential height.
pub fn standard_pressure_pa(altitude_m: f64) -> f64 {
    let geopotential_m = EARTH_RADIUS_M * altitude_m / (EARTH_RADIUS_M + altitude_m);
    let kelvin = STANDARD_TEMPERATURE_K - LAPSE_RATE_K_PER_M * geopotential_m;
    STANDARD_PRESSURE_PA * (kelvin / STANDARD_TEMPERATURE_K).powf(5.255_876_113)
}

/// The height above sea level, m, at which the standard atmosphere has a pressure: the inverse of [`standard_pressure_pa`].
pub fn standard_altitude_m(pressure_pa: f64) -> f64 {
    let kelvin =
        STANDARD_TEMPERATURE_K * (pressure_pa / STANDARD_PRESSURE_PA).powf(1.0 / 5.255_876_113);
    let geopotential_m = (STANDARD_TEMPERATURE_K - kelvin) / LAPSE_RATE_K_PER_M;
    EARTH_RADIUS_M * geopotential_m / (EARTH_RADIUS_M - geopotential_m)
}

/// Gravity, m/s², by latitude (Somigliana's formula) less 3.086e-6 m/s² a metre of altitude.
///
/// Source: wgs-84.
pub fn gravity_m_s2(latitude_deg: f64, altitude_m: f64) -> f64 {
    let sin2 = latitude_deg.to_radians().sin().powi(2);
    9.780_325_335_9 * (1.0 + 0.001_931_852_652_41 * sin2)
        / (1.0 - 0.006_694_379_990_13 * sin2).sqrt()
        - 3.086e-6 * altitude_m
}

/// How wind near the ground follows from the forecast's.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Ground {
    /// Open land with this roughness length, m.
    RoughnessLengthM(f64),
    /// A stated share of the forecast's wind, where the law fails: suburb, wood, town.
    Shelter(f64),
}

/// Wind at rider height over the forecast's: `ln(z/z₀) / ln(z_w/z₀)` over open land, or the stated shelter.
///
/// Holds well above the ground only (z > 20 z₀). Never below 0.
///
/// Source: wieringa-1992 for the roughness lengths.
pub fn wind_factor(ground: Ground, rider_height_m: f64, wind_height_m: f64) -> f64 {
    match ground {
        Ground::Shelter(share) => share,
        Ground::RoughnessLengthM(z0) if wind_height_m > z0 => {
            ((rider_height_m / z0).ln() / (wind_height_m / z0).ln()).max(0.0)
        }
        Ground::RoughnessLengthM(_) => 0.0,
    }
}

/// Steady wind at rider height, as the components of the direction it comes from.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Wind {
    /// Component from the north, m/s.
    pub from_north_m_s: f64,
    /// Component from the east, m/s.
    pub from_east_m_s: f64,
}

impl Wind {
    /// Wind of this speed from this direction, degrees clockwise from north.
    pub fn new(speed_m_s: f64, from_deg: f64) -> Self {
        let (sin, cos) = from_deg.to_radians().sin_cos();
        Self {
            from_north_m_s: speed_m_s * cos,
            from_east_m_s: speed_m_s * sin,
        }
    }

    /// Head component (against the rider positive) and cross component (from the rider's right positive), m/s, on a
    /// road that leads along `heading`.
    pub fn along(self, heading: Heading) -> RoadWind {
        RoadWind {
            head_m_s: self.from_north_m_s * heading.north + self.from_east_m_s * heading.east,
            cross_m_s: self.from_east_m_s * heading.north - self.from_north_m_s * heading.east,
        }
    }
}

/// Wind and density of the air at one time.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Weather {
    /// Wind at rider height.
    pub wind: Wind,
    /// Density, kg/m³.
    pub density_kg_m3: f64,
}

#[cfg(feature = "all")]
impl Weather {
    /// The weather at a share of the way to another one: components of the wind and density change evenly.
    pub fn towards(self, other: Self, share: f64) -> Self {
        let between = |here: f64, there: f64| here + share * (there - here);
        Self {
            wind: Wind {
                from_north_m_s: between(self.wind.from_north_m_s, other.wind.from_north_m_s),
                from_east_m_s: between(self.wind.from_east_m_s, other.wind.from_east_m_s),
            },
            density_kg_m3: between(self.density_kg_m3, other.density_kg_m3),
        }
    }
}

/// Weather that changes evenly from one time to another, and stays as it is before and after.
#[cfg(feature = "all")]
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct WeatherChange {
    /// When it begins to change, s after the start of the ride; below 0 if it has begun by then.
    pub from_s: f64,
    /// When it has changed, s after the start; above `from_s`.
    pub until_s: f64,
    /// The weather before.
    pub before: Weather,
    /// The weather after.
    pub after: Weather,
}

#[cfg(feature = "all")]
impl WeatherChange {
    /// The weather at a time, s after the start of the ride.
    pub fn at(&self, time_s: f64) -> Weather {
        let share = (time_s - self.from_s) / (self.until_s - self.from_s);
        self.before.towards(self.after, share.clamp(0.0, 1.0))
    }

    /// Another change at the same times.
    pub(crate) fn of_each(self, other: impl Fn(Weather) -> Weather) -> Self {
        Self {
            before: other(self.before),
            after: other(self.after),
            ..self
        }
    }
}

/// The module of a first visit knows weather that stays.
#[cfg(not(feature = "all"))]
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum WeatherChange {}

#[cfg(not(feature = "all"))]
impl WeatherChange {
    pub(crate) fn at(&self, _time_s: f64) -> Weather {
        match *self {}
    }
}

/// The way a road leads, as a unit vector.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Heading {
    /// Cosine of the bearing.
    pub north: f64,
    /// Sine of the bearing.
    pub east: f64,
}

/// The way from one bearing to another by the shorter side, degrees clockwise, -180 to 180.
pub(crate) fn turn_deg(from_deg: f64, to_deg: f64) -> f64 {
    (to_deg - from_deg + 540.0).rem_euclid(360.0) - 180.0
}

impl Heading {
    /// From a bearing, degrees clockwise from north.
    pub fn new(bearing_deg: f64) -> Self {
        let (east, north) = bearing_deg.to_radians().sin_cos();
        Self { north, east }
    }

    /// As a bearing, degrees clockwise from north, 0 to 360; of a longer or shorter vector too.
    #[cfg(feature = "all")]
    pub fn bearing_deg(self) -> f64 {
        let degrees = self.east.atan2(self.north).to_degrees();
        if degrees < 0.0 {
            degrees + 360.0
        } else {
            degrees
        }
    }

    /// The other way.
    pub fn reversed(self) -> Self {
        Self {
            north: -self.north,
            east: -self.east,
        }
    }
}

/// Wind as it meets one stretch of road.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct RoadWind {
    /// Against the rider positive, m/s.
    pub head_m_s: f64,
    /// From the rider's right positive, m/s.
    pub cross_m_s: f64,
}

/// Apparent wind, m/s, and yaw, radians: `hypot(v + h, c)` and `atan2(c, v + h)`.
pub fn apparent_wind(speed_m_s: f64, wind: RoadWind) -> (f64, f64) {
    let along = speed_m_s + wind.head_m_s;
    (along.hypot(wind.cross_m_s), wind.cross_m_s.atan2(along))
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Newton's method on a smooth curve ends at rounding; density follows vapour pressure with a factor below 0.01.
    const SAME_DENSITY: f64 = 1e-12;

    #[test]
    fn density_from_a_dew_point_equals_density_from_the_humidity_that_gives_it() {
        for (t, h) in [(-5.0, 0.8), (10.0, 0.2), (20.0, 0.5), (35.0, 1.0)] {
            let by_humidity = density_kg_m3(t, 1e5, Moisture::RelativeHumidity(h));
            let by_dew_point = density_kg_m3(t, 1e5, Moisture::DewPointC(dew_point_c(t, h)));
            assert!(
                (by_humidity / by_dew_point - 1.0).abs() < SAME_DENSITY,
                "{t} {h}"
            );
        }
    }

    #[test]
    fn pressure_falls_with_height_and_is_unchanged_at_sea_level() {
        assert_eq!(course_pressure_pa(101_325.0, 0.0, 15.0), 101_325.0);
        assert!(course_pressure_pa(101_325.0, 10.0, 15.0) < 101_325.0);
        assert_eq!(standard_pressure_pa(0.0), STANDARD_PRESSURE_PA);
        assert!((standard_altitude_m(standard_pressure_pa(2200.0)) - 2200.0).abs() < 1e-6);
    }

    #[test]
    fn wind_from_ahead_is_a_head_wind_and_from_the_right_a_positive_cross_wind() {
        let north = Heading::new(0.0);
        let head = Wind::new(3.0, 0.0).along(north);
        let right = Wind::new(3.0, 90.0).along(north);
        assert!((head.head_m_s - 3.0).abs() < 1e-15 && head.cross_m_s.abs() < 1e-15);
        assert!((right.cross_m_s - 3.0).abs() < 1e-15 && right.head_m_s.abs() < 1e-15);
    }
}
