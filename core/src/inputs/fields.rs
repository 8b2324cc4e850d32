//! The one table of ranges, defaults and their evidence. It gives the check, the message, the control's range and the
//! generators of the property tests.

use serde::{Deserialize, Serialize};

use crate::inputs::error::{Error, Kind, Warning, decimal};
use crate::inputs::quantity::Quantity;

/// What a default or a range rests on.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "kebab-case")]
pub enum Evidence {
    /// A published figure; its key is in [`Field::source`].
    Published,
    /// What the trade does, without a source.
    CommonPractice,
    /// Remembered from the literature and not looked up again; never shown as published.
    FromMemory,
    /// Our own choice.
    Assumed,
}

/// One field of a request: its key, unit, ranges, default and what they rest on.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Field {
    /// The path without indices, such as `positions.cda_m2`.
    pub key: &'static str,
    /// The SI unit, or an empty text for a pure number.
    pub unit: &'static str,
    /// The least value accepted.
    pub min: f64,
    /// The greatest value accepted.
    pub max: f64,
    /// Below this the answer carries a warning.
    pub usual_min: f64,
    /// Above this the answer carries a warning.
    pub usual_max: f64,
    /// The typical value.
    pub default: f64,
    /// One standard deviation of the typical value.
    pub default_sd: f64,
    /// The step of one press of an arrow key.
    pub step: f64,
    /// What the default rests on.
    pub evidence: Evidence,
    /// The key of the citation, or an empty text.
    pub source: &'static str,
    /// One sentence on where the default and the ranges come from.
    pub note: &'static str,
}

impl Field {
    /// The typical value as an input.
    pub const fn typical(&self) -> Quantity {
        Quantity::typical(self.default, self.default_sd)
    }

    /// The typical value as a number that was chosen, such as a distance.
    pub const fn chosen(&self) -> Quantity {
        Quantity::exact(self.default)
    }

    /// Checks a number against the hard range.
    ///
    /// # Errors
    /// Names `path` (made only when needed) where the number is not finite or outside the range.
    pub fn check(&self, path: impl FnOnce() -> String, value: f64) -> Result<(), Error> {
        if (self.min..=self.max).contains(&value) {
            return Ok(());
        }
        let path = path();
        if !value.is_finite() {
            let message = format!("{path} is not a number that can be used.");
            return Err(Error::new(Kind::NotFinite, path, message));
        }
        Err(Error::out_of_range(
            path, value, self.min, self.max, self.unit,
        ))
    }

    /// A warning where the number is legal but unusual.
    pub fn doubt(&self, path: &str, value: f64) -> Option<Warning> {
        (!(self.usual_min..=self.usual_max).contains(&value)).then(|| {
            let (is, low, high) = (
                decimal(value),
                decimal(self.usual_min),
                decimal(self.usual_max),
            );
            let space = if self.unit.is_empty() { "" } else { " " };
            let message = format!(
                "{path} is {is}; it is usually from {low} to {high}{space}{}.",
                self.unit
            );
            Warning::new(path, "unusual", message)
        })
    }
}

macro_rules! fields {
    ($($name:ident = $key:literal, $unit:literal, $min:literal..$max:literal, $low:literal..$high:literal,
       $default:literal, $sd:literal, $step:literal, $evidence:ident, $source:literal, $note:literal;)*) => {
        $(
            #[doc = concat!("`", $key, "`: ", $note)]
            pub static $name: Field = Field {
                key: $key, unit: $unit, min: $min, max: $max, usual_min: $low, usual_max: $high, default: $default,
                default_sd: $sd, step: $step, evidence: Evidence::$evidence, source: $source, note: $note,
            };
        )*
        /// Every field, in the order of the scenario.
        pub static FIELDS: &[&Field] = &[$(&$name),*];
    };
}

fields! {
    TOTAL_MASS_KG = "rider.total_mass_kg", "kg", 30.0..250.0, 50.0..130.0, 82.0, 3.0, 0.5, FromMemory, "",
        "Rider, bicycle, clothes and bottles together; the default is a usual rider.";
    ROLLING_COEFFICIENT = "bike.rolling_coefficient", "", 0.0005..0.03, 0.002..0.008, 0.004, 0.0006, 0.0001, FromMemory, "",
        "Good asphalt is customarily 0.003 to 0.005; tyre, pressure and warmth change it by a factor of two.";
    DRIVETRAIN_EFFICIENCY = "bike.drivetrain_efficiency", "", 0.75..1.0, 0.95..0.99, 0.975, 0.01, 0.001, Published, "smit-2023",
        "A measured solo chain drive lost 2.1 ± 1.5 %; choose 1 if your meter sits in the wheel.";
    ROTATING_MASS_KG = "bike.rotating_mass_kg", "kg", 0.0..5.0, 0.8..2.5, 1.5, 0.3, 0.1, FromMemory, "",
        "The turning wheels weigh this much more when speed changes; both wheels of the 1998 model come to 1.45 kg.";
    BEARING_DRAG_N = "bike.bearing_drag_n", "N", 0.0..1.0, 0.0..0.3, 0.091, 0.0, 0.001, FromMemory, "martin-1998",
        "Constant part of the wheel bearings' drag in the 1998 road model.";
    BEARING_DRAG_N_S_PER_M = "bike.bearing_drag_n_s_per_m", "N s/m", 0.0..0.1, 0.0..0.03, 0.0087, 0.0, 0.0001, FromMemory, "martin-1998",
        "Part of the wheel bearings' drag that grows with speed in the 1998 road model.";
    LAUNCH_FORCE_N = "bike.launch_force_n", "N", 20.0..1000.0, 100.0..500.0, 250.0, 0.0, 10.0, Assumed, "",
        "The most a rider pushes the bicycle along with from rest; it matters for the first seconds only.";
    LATERAL_M_S2 = "bike.lateral_m_s2", "m/s²", 0.5..12.0, 2.0..6.0, 4.0, 0.0, 0.1, Assumed, "",
        "Sideways acceleration a rider accepts in a dry bend; it caps speed where the course has a radius.";
    BRAKING_M_S2 = "bike.braking_m_s2", "m/s²", 0.3..8.0, 1.0..5.0, 3.0, 0.0, 0.1, Assumed, "",
        "How hard a rider slows for a bend.";
    POWER_METER_BIAS_SHARE = "bike.power_meter_bias_share", "", -0.2..0.2, -0.05..0.05, 0.0, 0.03, 0.005, Published, "maier-2017",
        "By what share the power meter reads high: 54 meters of 9 makers were off by -0.9 ± 3.2 %. It counts for what was measured with it.";
    CDA_M2 = "positions.cda_m2", "m²", 0.1..0.8, 0.17..0.45, 0.24, 0.04, 0.001, Assumed, "padilla-2000",
        "On time-trial bars; published is 0.244 m², measured for one record rider in a tunnel. That a guess is worth ± 0.04 is assumed.";
    CP_FACTOR = "positions.cp_factor", "", 0.5..1.2, 0.85..1.03, 1.0, 0.0, 0.005, Assumed, "",
        "Critical power here as a share of the position your power was tested in; 1 if it was tested in this one.";
    W_PRIME_FACTOR = "positions.w_prime_factor", "", 0.3..1.5, 0.8..1.2, 1.0, 0.0, 0.01, Published, "kordi-2019",
        "Position lowered critical power and left W′ alone in seven trained riders.";
    SPEED_EXPONENT = "positions.speed_exponent", "", -1.0..1.0, -0.3..0.1, 0.0, 0.0, 0.01, Assumed, "",
        "How CdA changes with air speed; no single published figure, so 0 unless measured.";
    REFERENCE_AIRSPEED_M_S = "positions.reference_airspeed_m_s", "m/s", 3.0..30.0, 8.0..18.0, 12.0, 0.0, 0.1, Assumed, "",
        "The air speed at which CdA was measured; it matters only with a speed exponent.";
    FADE_TIRED_CDA_M2 = "positions.fade.tired_cda_m2", "m²", 0.1..0.8, 0.17..0.45, 0.27, 0.02, 0.001, Assumed, "",
        "CdA once the position is lost; no published figure was found, so film yourself and measure it.";
    FADE_BEGINS_S = "positions.fade.begins_s", "s", 0.0..200000.0, 0.0..100000.0, 1500.0, 300.0, 60.0, Assumed, "",
        "When the position begins to creep up.";
    FADE_COMPLETE_S = "positions.fade.complete_s", "s", 1.0..200000.0, 1.0..100000.0, 3000.0, 300.0, 60.0, Assumed, "",
        "When the position is wholly lost.";
    LAPSES_SHARE = "positions.lapses.share", "", 0.0..1.0, 0.0..0.5, 0.05, 0.03, 0.01, Assumed, "",
        "Share of the ride spent out of the position: head up or down, sitting up for a junction.";
    LAPSES_CDA_M2 = "positions.lapses.cda_m2", "m²", 0.1..0.8, 0.17..0.6, 0.28, 0.02, 0.001, Assumed, "",
        "CdA during a lapse.";
    FADE_TEST_FIRST_THIRD_CDA_M2 = "positions.fade_test.first_third_cda_m2", "m²", 0.1..0.8, 0.17..0.45, 0.24, 0.004, 0.001, Assumed, "",
        "Mean CdA over the first third of a steady test; its middle stands for the time at a sixth of the test.";
    FADE_TEST_LAST_THIRD_CDA_M2 = "positions.fade_test.last_third_cda_m2", "m²", 0.1..0.8, 0.17..0.45, 0.25, 0.004, 0.001, Assumed, "",
        "Mean CdA over the last third; the whole rise is one and a half times the difference of the thirds.";
    FADE_TEST_S = "positions.fade_test.test_s", "s", 60.0..200000.0, 300.0..20000.0, 1800.0, 0.0, 60.0, Assumed, "",
        "Length of the test; what happens to CdA after it is not known and taken to stay.";
    EQUIPMENT_CDA_CHANGE_M2 = "positions.equipment.cda_change_m2", "m²", -0.1..0.1, -0.03..0.03, 0.0, 0.003, 0.001, Assumed, "beaumont-2018",
        "What it adds to CdA; the shapes of time-trial helmets differed by less than 1.5 % with the head kept still.";
    EQUIPMENT_MASS_CHANGE_KG = "positions.equipment.mass_change_kg", "kg", -10.0..10.0, -2.0..2.0, 0.0, 0.0, 0.05, CommonPractice, "",
        "What it adds to the mass; weigh it.";
    CP_W = "power.cp_w", "W", 30.0..600.0, 100.0..450.0, 250.0, 30.0, 1.0, FromMemory, "",
        "Critical power; recreational cyclists are customarily put at 200 to 260 W.";
    W_PRIME_J = "power.w_prime_j", "J", 1000.0..60000.0, 5000.0..35000.0, 17000.0, 3500.0, 500.0, Published, "dynamic-parameter",
        "Work above critical power; twelve laboratory sets averaged 16.9 ± 3.2 kJ.";
    PEAK_W = "power.peak_w", "W", 100.0..3000.0, 400.0..1800.0, 900.0, 150.0, 10.0, FromMemory, "",
        "Power at the first instant of an all-out effort.";
    LONG_RIDE_LOSS_SHARE = "power.long_ride_loss_share", "", 0.0..0.4, 0.02..0.2, 0.09, 0.04, 0.005, Published, "four-and-twenty",
        "Share of critical power lost for each e-fold of time past half an hour; eight trained riders' 60-minute power implies 9 %, and the ± is assumed.";
    LONG_RIDE_LOSS_W = "power.long_ride_loss_w", "W", 0.0..150.0, 5.0..60.0, 22.0, 10.0, 1.0, Published, "four-and-twenty",
        "The long-ride loss in watts, as older files give it: 9 % of a critical power of 245 W.";
    LONG_RIDE_FROM_S = "power.long_ride_from_s", "s", 600.0..7200.0, 1200.0..3600.0, 1800.0, 0.0, 60.0, FromMemory, "puchowicz-2020",
        "From when the long-ride loss counts.";
    CP_W_PRIME_CORRELATION = "power.cp_w_prime_correlation", "", -0.999..0.999, -0.999..0.0, 0.0, 0.0, 0.01, Assumed, "",
        "How the errors of critical power and W′ go together; a fit of both to the same efforts gives it, and it is below 0.";
    ALTITUDE_RESPONSE = "power.altitude_response", "", 0.0..3.0, 0.3..2.0, 1.0, 0.4, 0.1, Published, "clark-2007",
        "How strongly you lose power with altitude: 1 is the mean of ten cyclists, who scattered by about 0.4 of it.";
    EFFORT_DURATION_S = "efforts.duration_s", "s", 1.0..200000.0, 60.0..20000.0, 720.0, 0.0, 10.0, CommonPractice, "",
        "How long a hard effort lasted.";
    EFFORT_POWER_W = "efforts.power_w", "W", 10.0..3000.0, 80.0..1500.0, 275.0, 5.0, 1.0, CommonPractice, "",
        "Mean power of a hard effort.";
    EVENT_DISTANCE_M = "events.distance_m", "m", 100.0..2000000.0, 1000.0..900000.0, 40233.6, 0.0, 1000.0, CommonPractice, "",
        "How far an event is; time trials are customarily held over 10, 25, 50 and 100 miles.";
    DISTANCE_M = "course.distance_m", "m", 100.0..2000000.0, 1000.0..900000.0, 40233.6, 0.0, 1000.0, CommonPractice, "",
        "Along the road; the default is 25 miles.";
    GRADE = "course.grade", "", -0.4..0.4, -0.15..0.15, 0.0, 0.0, 0.001, CommonPractice, "",
        "Rise over run.";
    BEARING_DEG = "course.bearing_deg", "°", -360.0..360.0, -360.0..360.0, 0.0, 0.0, 5.0, CommonPractice, "",
        "The way the road leads at the start, clockwise from north.";
    TURN_RADIUS_M = "course.turn_radius_m", "m", 2.0..60.0, 3.0..20.0, 5.0, 1.5, 0.5, Assumed, "",
        "Radius of the half circle in which an out-and-back course turns: 3 to 4 m across a road, 10 m or more round an island.";
    POINT_DISTANCE_M = "course.points.distance_m", "m", 0.0..2000000.0, 0.0..2000000.0, 0.0, 0.0, 10.0, CommonPractice, "",
        "Along the road from the start.";
    POINT_ELEVATION_M = "course.points.elevation_m", "m", -500.0..6000.0, -500.0..6000.0, 0.0, 0.0, 1.0, CommonPractice, "",
        "Above sea level.";
    POINT_BEARING_DEG = "course.points.bearing_deg", "°", -360.0..360.0, -360.0..360.0, 0.0, 0.0, 5.0, CommonPractice, "",
        "The way the road leads from this point on; left out, as at the point before.";
    POINT_RADIUS_M = "course.points.radius_m", "m", 2.0..100000.0, 2.0..100000.0, 100.0, 0.0, 1.0, CommonPractice, "",
        "Radius of the bend from this point to the next.";
    TEMPERATURE_C = "conditions.temperature_c", "°C", -30.0..55.0, -10.0..40.0, 15.0, 2.0, 1.0, Published, "iso-2533",
        "The default is the standard atmosphere's at sea level.";
    PRESSURE_HPA = "conditions.pressure_hpa", "hPa", 500.0..1100.0, 650.0..1050.0, 1013.25, 3.0, 1.0, Published, "iso-2533",
        "Left out, it is the standard atmosphere's at this altitude.";
    ALTITUDE_M = "conditions.altitude_m", "m", -500.0..6000.0, -100.0..3000.0, 0.0, 0.0, 10.0, CommonPractice, "",
        "Of the course above sea level; left out, the mean of the course's points.";
    RELATIVE_HUMIDITY = "conditions.relative_humidity", "", 0.0..1.0, 0.0..1.0, 0.5, 0.15, 0.01, CommonPractice, "",
        "At 20 °C the whole range moves density by 0.9 %.";
    DEW_POINT_C = "conditions.dew_point_c", "°C", -60.0..45.0, -30.0..30.0, 8.0, 1.0, 1.0, CommonPractice, "",
        "May stand in place of the humidity.";
    WIND_SPEED_M_S = "conditions.wind_speed_m_s", "m/s", 0.0..40.0, 0.0..12.0, 0.0, 0.0, 0.5, CommonPractice, "",
        "As the forecast gives it, at the wind's height.";
    WIND_FROM_DEG = "conditions.wind_from_deg", "°", -360.0..360.0, -360.0..360.0, 0.0, 0.0, 5.0, CommonPractice, "",
        "Where the wind comes from, clockwise from north.";
    WIND_HEIGHT_M = "conditions.wind_height_m", "m", 0.5..100.0, 1.0..10.0, 10.0, 0.0, 1.0, CommonPractice, "wieringa-1992",
        "Forecasts give the wind at 10 m.";
    RIDER_HEIGHT_M = "conditions.rider_height_m", "m", 0.6..2.5, 0.9..1.5, 1.2, 0.0, 0.1, Assumed, "",
        "Height at which the rider meets the wind.";
    ROUGHNESS_LENGTH_M = "conditions.roughness_length_m", "m", 0.0001..0.5, 0.0001..0.06, 0.03, 0.0, 0.01, Published, "wieringa-1992",
        "Of the land around: 0.03 open grass, 0.1 low crops, 0.25 hedges and trees; above 0.06 the law is only indicative at 1.2 m.";
    SHELTER_FACTOR = "conditions.shelter_factor", "", 0.0..1.5, 0.0..1.0, 0.4, 0.15, 0.05, Assumed, "",
        "Share of the forecast wind that reaches the rider; stands in for the roughness where the wind law fails.";
    LATITUDE_DEG = "conditions.latitude_deg", "°", -90.0..90.0, -90.0..90.0, 45.0, 0.0, 1.0, Published, "wgs-84",
        "Left out, gravity is the standard 9.80665 m/s².";
    START_SPEED_M_S = "start.speed_m_s", "m/s", 0.0..30.0, 0.0..20.0, 8.0, 0.0, 0.5, CommonPractice, "",
        "Speed at the line.";
    MODEL_ERROR_SHARE = "model_error_share", "", 0.0..0.2, 0.005..0.05, 0.03, 0.0, 0.005, Assumed, "romcke-2019",
        "The model's own error as a share of a finish time. Published models missed by 3.2 to 3.9 % on average outdoors, a standard deviation of 4 to 5 %; about 3 % of that is put down to their inputs, which count by themselves here.";
    YAW_DEG = "positions.yaw_table.yaw_deg", "°", 0.0..80.0, 0.0..30.0, 0.0, 0.0, 5.0, CommonPractice, "",
        "Angle between the bicycle and the apparent wind.";
    YAW_RATIO = "positions.yaw_table.ratio", "", 0.1..3.0, 0.7..1.3, 1.0, 0.0, 0.01, CommonPractice, "",
        "Axial drag area at this yaw over that at zero yaw.";
    POWER_W = "with.power_w", "W", 0.0..2500.0, 50.0..600.0, 250.0, 0.0, 1.0, CommonPractice, "",
        "Power at the pedals.";
    SPEED_M_S = "with.speed_m_s", "m/s", 0.1..40.0, 2.0..20.0, 11.0, 0.0, 0.1, CommonPractice, "",
        "Speed over the ground.";
    TIME_S = "with.time_s", "s", 10.0..1000000.0, 60.0..200000.0, 3600.0, 0.0, 10.0, CommonPractice, "",
        "A finish time to aim at.";
    TARGET_TIME_S = "with.target_time_s", "s", 10.0..1000000.0, 60.0..200000.0, 3600.0, 0.0, 10.0, CommonPractice, "",
        "A finish time whose chance is wanted.";
    HOLD_S = "with.hold_s", "s", 1.0..200000.0, 60.0..36000.0, 1200.0, 0.0, 60.0, CommonPractice, "",
        "How long a power is to be held.";
    TEST_ERROR_SHARE = "with.test_error_share", "", 0.001..0.2, 0.005..0.06, 0.02, 0.0, 0.001, Published, "four-and-twenty",
        "How well a hard effort repeats: 20-minute trials of eight trained riders to 1.3 %, 4-minute trials to 2.0 %.";
    FOR_TIME_S = "with.for_time_s", "s", 60.0..200000.0, 600.0..100000.0, 3600.0, 0.0, 60.0, CommonPractice, "",
        "A fixed time to ride for.";
    SPLIT_EVERY_M = "with.split_every_m", "m", 100.0..1000000.0, 500.0..100000.0, 8046.72, 0.0, 1000.0, CommonPractice, "",
        "Distance between splits; the default is 5 miles.";
    MAP_POWER_W = "with.map_power_w", "W", 20.0..2500.0, 50.0..600.0, 250.0, 0.0, 1.0, CommonPractice, "",
        "Ends of the powers that a map spans.";
    POWER_CHANGE = "with.power_change", "", -0.5..1.0, -0.2..0.2, 0.1, 0.0, 0.01, CommonPractice, "",
        "More power, as a share.";
    CDA_CHANGE = "with.cda_change", "", -0.5..0.5, -0.25..0.25, -0.1, 0.0, 0.01, CommonPractice, "",
        "Change of drag area, as a share; less is negative.";
    LOWER_BY_M2 = "with.lower_by_m2", "m²", -0.2..0.2, 0.0..0.06, 0.014, 0.003, 0.001, Assumed, "",
        "By how much one drag area lies below another, as one test of both gives it.";
    CHANGE_SHARE = "with.share", "", -0.9..2.0, -0.15..0.2, -0.03, 0.0, 0.005, Assumed, "",
        "By what share of itself a change moves a number; less is negative.";
    CHANCE = "with.chance", "", 0.0..1.0, 0.0..1.0, 0.7, 0.0, 0.05, Assumed, "",
        "The chance that something comes off, whatever becomes of the rest.";
    MONEY = "with.money", "", 0.0..1000000.0, 0.0..20000.0, 150.0, 0.0, 10.0, CommonPractice, "",
        "Money to spend, or what something costs, in your own currency.";
    HOURS_PER_WEEK = "with.hours_per_week", "h", 0.0..168.0, 0.0..20.0, 2.0, 0.0, 0.5, CommonPractice, "",
        "Hours to spend every week beyond what you do now, or what something takes every week.";
    HOURS_ONCE = "with.hours_once", "h", 0.0..10000.0, 0.0..200.0, 0.0, 0.0, 0.5, CommonPractice, "",
        "Hours that something takes once.";
    WEEKS = "with.weeks", "", 0.0..520.0, 0.0..52.0, 12.0, 0.0, 1.0, CommonPractice, "",
        "For how many weeks.";
    TIMES_RIDDEN = "with.times_ridden", "", 0.0..1000.0, 0.0..50.0, 1.0, 0.0, 1.0, CommonPractice, "",
        "How often an event is ridden.";
    RIDES_AT_ONCE = "with.rides_at_once", "", 1.0..1000000.0, 1.0..1000000.0, 50000.0, 0.0, 1000.0, Assumed, "",
        "The most rides that one asking works out.";
    STATURE_M = "with.stature_m", "m", 1.2..2.3, 1.5..2.05, 1.75, 0.01, 0.01, Assumed, "",
        "Standing height, from which segment lengths that are not given are guessed.";
    THIGH_M = "with.thigh_m", "m", 0.2..0.7, 0.33..0.53, 0.42875, 0.013, 0.005, FromMemory, "drillis-1966",
        "Hip joint to knee; left out, 0.245 of the stature ± 3 %: a guess.";
    SHANK_M = "with.shank_m", "m", 0.2..0.7, 0.33..0.53, 0.4305, 0.013, 0.005, FromMemory, "drillis-1966",
        "Knee to ankle; left out, 0.246 of the stature ± 3 %: a guess.";
    FOOT_M = "with.foot_m", "m", 0.05..0.3, 0.1..0.2, 0.14875, 0.0045, 0.005, Assumed, "",
        "Ankle to pedal axle; left out, 0.085 of the stature ± 3 %: a guess, and where the cleat sits decides.";
    TRUNK_M = "with.trunk_m", "m", 0.3..0.8, 0.42..0.62, 0.504, 0.015, 0.005, FromMemory, "drillis-1966",
        "Hip joint to shoulder joint; left out, 0.288 of the stature ± 3 %: a guess.";
    UPPER_ARM_M = "with.upper_arm_m", "m", 0.15..0.5, 0.26..0.4, 0.3255, 0.01, 0.005, FromMemory, "drillis-1966",
        "Shoulder joint down to the pads, the upper arm upright; left out, 0.186 of the stature ± 3 %: a guess.";
    HIP_ABOVE_SADDLE_M = "with.hip_above_saddle_m", "m", 0.0..0.15, 0.03..0.1, 0.065, 0.01, 0.005, Assumed, "",
        "The hip joint's centre beyond the top of the saddle, along the line from the crank's axle.";
    ANKLE_DEG = "with.ankle_deg", "°", 70.0..175.0, 100.0..150.0, 130.0, 5.0, 1.0, Assumed, "",
        "Between shank and the line from ankle to pedal, for an ankle that does not move.";
    FOOT_PITCH_DEG = "with.foot_pitch_deg", "°", 0.0..85.0, 25.0..65.0, 45.0, 5.0, 1.0, Assumed, "",
        "How far the line from ankle to pedal points below the horizontal, in the mean, for an ankle that moves.";
    FOOT_SWING_DEG = "with.foot_swing_deg", "°", 0.0..40.0, 0.0..25.0, 12.0, 4.0, 1.0, Assumed, "",
        "How far that line swings to either side of its mean over a turn.";
    CADENCE_RPM = "with.cadence_rpm", "rpm", 20.0..200.0, 60.0..120.0, 90.0, 0.0, 1.0, CommonPractice, "",
        "Turns of the crank a minute.";
    CRANK_M = "with.crank_m", "m", 0.1..0.22, 0.145..0.185, 0.17, 0.0, 0.0025, CommonPractice, "",
        "Axle to pedal axle.";
    SADDLE_HEIGHT_M = "with.saddle_height_m", "m", 0.4..1.05, 0.58..0.85, 0.72, 0.0, 0.001, FromMemory, "",
        "Crank's axle to the top of the saddle along the seat line; the default puts the saddle top at the classic 96 % of the hip's standing height above a pedal at the bottom.";
    SEAT_ANGLE_DEG = "with.seat_angle_deg", "°", 55.0..100.0, 68.0..86.0, 76.0, 0.0, 0.5, CommonPractice, "",
        "Effective: of the line from the crank's axle to the hip joint's centre, above the horizontal behind.";
    TORSO_DEG = "with.torso_deg", "°", -20.0..90.0, 0.0..40.0, 16.0, 1.0, 1.0, CommonPractice, "",
        "Of the line from hip joint to shoulder joint, above the horizontal; published tests used 0 to 24°.";
    BAR_DROP_M = "with.bar_drop_m", "m", -0.3..0.4, -0.05..0.25, 0.1, 0.0, 0.005, CommonPractice, "",
        "From the top of the saddle straight down to the height of the arm pads.";
    CDA_CORRELATION = "with.cda_correlation", "", 0.0..0.999, 0.0..0.999, 0.0, 0.0, 0.05, Assumed, "",
        "How the errors of several drag areas go together: nearly 1 for one test or one guess, 0 for tests that have nothing in common.";
    DRAWS = "with.draws", "", 0.0..100000.0, 0.0..100000.0, 10000.0, 0.0, 1000.0, CommonPractice, "",
        "How many draws a comparison takes; none leaves it at first order, and a course of very many points gets fewer.";
}

/// An error in standard deviations that is common to several numbers. It is no field: nobody gives it.
pub static COMMON_ERROR: Field = Field {
    key: "",
    min: -6.0,
    max: 6.0,
    usual_min: -6.0,
    usual_max: 6.0,
    default: 0.0,
    default_sd: 1.0,
    step: 1.0,
    unit: "",
    evidence: Evidence::Assumed,
    source: "",
    note: "",
};

/// The most positions a scenario holds.
pub const MOST_POSITIONS: usize = 50;
/// The most points a course holds.
pub const MOST_POINTS: usize = 20_000;
/// The most points of a course that are ridden; a longer one is simplified.
pub const MOST_POINTS_RIDDEN: usize = 2_500;
/// The most kinds of lapse that a position or a piece of equipment has.
pub const MOST_LAPSES: usize = 8;
/// The most pieces of equipment that a position chooses between.
pub const MOST_EQUIPMENT: usize = 12;
/// The most efforts a scenario holds.
pub const MOST_EFFORTS: usize = 200;
/// The most events a scenario holds.
pub const MOST_EVENTS: usize = 12;
/// The most rows a yaw table holds.
pub const MOST_YAW_ROWS: usize = 40;
/// The longest title or name, in bytes.
pub const MOST_TEXT_BYTES: usize = 400;
/// The longest request that is read, in bytes of JSON.
pub const MOST_REQUEST_BYTES: usize = 8_000_000;

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_default_lies_in_its_usual_range_and_that_in_the_hard_one() {
        for field in FIELDS {
            assert!(
                field.min <= field.usual_min && field.usual_max <= field.max,
                "{}",
                field.key
            );
            assert!(
                (field.min..=field.max).contains(&field.default),
                "{}",
                field.key
            );
            assert!(field.step > 0.0 && field.default_sd >= 0.0, "{}", field.key);
        }
    }

    #[test]
    fn every_published_default_names_a_source_that_exists() {
        for field in FIELDS {
            let known =
                field.source.is_empty() || crate::inputs::sources::find(field.source).is_some();
            assert!(known, "{} cites {}", field.key, field.source);
            assert!(
                field.evidence != Evidence::Published || !field.source.is_empty(),
                "{}",
                field.key
            );
        }
    }

    #[test]
    fn keys_are_unique() {
        let mut keys: Vec<_> = FIELDS.iter().map(|field| field.key).collect();
        keys.sort_unstable();
        keys.dedup();
        assert_eq!(keys.len(), FIELDS.len());
    }
}
