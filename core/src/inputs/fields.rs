//! The one table of ranges, defaults and their evidence. It gives the check, the message, the control's range and the
//! generators of the property tests.

use serde::{Deserialize, Serialize};

use crate::inputs::error::{self, Error, Warning};
use crate::inputs::message;
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

/// What a field measures, which decides its SI unit and in which units a reader sees it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum QuantityKind {
    /// A distance along the road.
    Distance,
    /// Above sea level.
    Height,
    /// Over the ground or through the air.
    Speed,
    /// A wind speed.
    Wind,
    /// A time read as hours, minutes and seconds.
    Clock,
    /// A length on the bicycle.
    FitLength,
    /// A length of the body.
    BodyLength,
    /// Any other length.
    Length,
    /// Turns of the crank a minute.
    Cadence,
    /// An angle of a body or of a bicycle, to half a degree.
    JointAngle,
    /// Any other angle.
    Angle,
    /// A force for each metre per second.
    ForcePerSpeed,
    /// A working time.
    Hours,
    /// An acceleration.
    Acceleration,
    /// A drag area.
    Area,
    /// An air pressure.
    Pressure,
    /// A mass.
    Mass,
    /// A power.
    Power,
    /// An energy.
    Work,
    /// A force.
    Force,
    /// A temperature.
    Temperature,
    /// A time of day, counted from midnight.
    TimeOfDay,
    /// A time read in minutes.
    Duration,
    /// A share of something, read as a percentage.
    Share,
    /// A pure number.
    Ratio,
    /// A slope, read as a percentage.
    Grade,
    /// A small pure number.
    Coefficient,
}

impl QuantityKind {
    /// The SI unit, or an empty text for a pure number.
    pub const fn unit(self) -> &'static str {
        match self {
            Self::Distance | Self::Height | Self::FitLength | Self::BodyLength | Self::Length => {
                "m"
            }
            Self::Speed | Self::Wind => "m/s",
            Self::Clock | Self::Duration | Self::TimeOfDay => "s",
            Self::Cadence => "rpm",
            Self::JointAngle | Self::Angle => "°",
            Self::ForcePerSpeed => "N s/m",
            Self::Hours => "h",
            Self::Acceleration => "m/s²",
            Self::Area => "m²",
            Self::Pressure => "hPa",
            Self::Mass => "kg",
            Self::Power => "W",
            Self::Work => "J",
            Self::Force => "N",
            Self::Temperature => "°C",
            Self::Share | Self::Ratio | Self::Grade | Self::Coefficient => "",
        }
    }
}

/// Whether a scenario has a field without being told.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Included {
    /// Where its part is there and it is left out, the typical value counts: filling it in changes no answer.
    Always,
    /// A new scenario has it; where it is left out, it is absent.
    New,
    /// Only where it is given.
    Optional,
}

/// One field of a request: its key, unit, ranges, default and what they rest on.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Field {
    /// The path without indices, such as `positions.cda_m2`.
    pub key: &'static str,
    /// What it measures.
    pub kind: QuantityKind,
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
    /// Whether it is chosen rather than measured, so that nobody is asked for its ±.
    pub chosen: bool,
    /// Whether a scenario has it without being told.
    pub included: Included,
    /// What the default rests on.
    pub evidence: Evidence,
    /// The key of the citation, or an empty text.
    pub source: &'static str,
    /// One sentence on where the default and the ranges come from; among the tables under `notes`.
    #[serde(skip)]
    #[cfg_attr(feature = "types", ts(skip))]
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
    ///
    /// ```
    /// use fasterby_core::fields::CDA_M2;
    ///
    /// assert!(CDA_M2.check(|| "scenario.positions[0].cda_m2".into(), 0.24).is_ok());
    /// let error = CDA_M2.check(|| "scenario.positions[0].cda_m2".into(), 24.0).unwrap_err();
    /// assert_eq!((error.field.as_str(), error.max), ("scenario.positions[0].cda_m2", Some(CDA_M2.max)));
    /// ```
    pub fn check(&self, path: impl FnOnce() -> String, value: f64) -> Result<(), Error> {
        if (self.min..=self.max).contains(&value) {
            return Ok(());
        }
        let path = path();
        if !value.is_finite() {
            let message = message::not_a_number(&path);
            return Err(Error::new(error::Kind::NotFinite, path, message));
        }
        Err(Error::out_of_range(
            path, self.kind, value, self.min, self.max,
        ))
    }

    /// A warning where the number is legal but unusual.
    pub fn doubt(&self, path: &str, value: f64) -> Option<Warning> {
        (!(self.usual_min..=self.usual_max).contains(&value)).then(|| {
            let measured = |number| (self.kind, number);
            let (is, low, high) = (
                measured(value),
                measured(self.usual_min),
                measured(self.usual_max),
            );
            Warning::of(path, message::unusual(path, is, low, high))
        })
    }
}

/// A text that only the tables need: without the feature `tables` it takes no room in a module.
pub(crate) const fn only_in_tables(text: &'static str) -> &'static str {
    if cfg!(feature = "tables") { text } else { "" }
}

macro_rules! fields {
    ($($name:ident {
        key: $key:literal, kind: $kind:ident,
        range: $min:literal..$max:literal, usual: $low:literal..$high:literal, default: $default:literal, sd: $sd:literal, step: $step:literal,
        chosen: $chosen:literal, included: $included:ident, evidence: $evidence:ident, source: $source:literal,
        note: $note:literal,
    })*) => {
        $(
            #[doc = concat!("`", $key, "`: ", $note)]
            pub static $name: Field = Field {
                key: $key,
                kind: QuantityKind::$kind,
                unit: QuantityKind::$kind.unit(),
                min: $min,
                max: $max,
                usual_min: $low,
                usual_max: $high,
                default: $default,
                default_sd: $sd,
                step: $step,
                chosen: $chosen,
                included: Included::$included,
                evidence: Evidence::$evidence,
                source: only_in_tables($source),
                note: only_in_tables($note),
            };
        )*
        /// Every field, in the order of the scenario.
        pub static FIELDS: &[&Field] = &[$(&$name),*];
    };
}

fields! {
    TOTAL_MASS_KG {
        key: "rider.total_mass_kg", kind: Mass,
        range: 30.0..250.0, usual: 50.0..130.0, default: 82.0, sd: 3.0, step: 0.5,
        chosen: false, included: Always, evidence: FromMemory, source: "",
        note: "Rider, bicycle, clothes and bottles together; the default is a usual rider.",
    }
    ROLLING_COEFFICIENT {
        key: "bike.rolling_coefficient", kind: Coefficient,
        range: 0.0005..0.03, usual: 0.002..0.008, default: 0.004, sd: 0.0006, step: 0.0001,
        chosen: false, included: Always, evidence: FromMemory, source: "",
        note: "Good asphalt is customarily 0.003 to 0.005; tyre, pressure and warmth change it by a factor of two.",
    }
    DRIVETRAIN_EFFICIENCY {
        key: "bike.drivetrain_efficiency", kind: Share,
        range: 0.75..1.0, usual: 0.95..0.99, default: 0.975, sd: 0.01, step: 0.001,
        chosen: false, included: Always, evidence: Published, source: "smit-2023",
        note: "A measured solo chain drive lost 2.1 ± 1.5 %; choose 1 if your meter sits in the wheel.",
    }
    ROTATING_MASS_KG {
        key: "bike.rotating_mass_kg", kind: Mass,
        range: 0.0..5.0, usual: 0.8..2.5, default: 1.5, sd: 0.3, step: 0.1,
        chosen: false, included: Always, evidence: FromMemory, source: "",
        note: "The turning wheels weigh this much more when speed changes; both wheels of the 1998 model come to 1.45 kg.",
    }
    BEARING_DRAG_N {
        key: "bike.bearing_drag_n", kind: Force,
        range: 0.0..1.0, usual: 0.0..0.3, default: 0.091, sd: 0.0, step: 0.001,
        chosen: true, included: Always, evidence: FromMemory, source: "martin-1998",
        note: "Constant part of the wheel bearings' drag in the 1998 road model.",
    }
    BEARING_DRAG_N_S_PER_M {
        key: "bike.bearing_drag_n_s_per_m", kind: ForcePerSpeed,
        range: 0.0..0.1, usual: 0.0..0.03, default: 0.0087, sd: 0.0, step: 0.0001,
        chosen: true, included: Always, evidence: FromMemory, source: "martin-1998",
        note: "Part of the wheel bearings' drag that grows with speed in the 1998 road model.",
    }
    LAUNCH_FORCE_N {
        key: "bike.launch_force_n", kind: Force,
        range: 20.0..1000.0, usual: 100.0..500.0, default: 250.0, sd: 0.0, step: 10.0,
        chosen: true, included: Always, evidence: Assumed, source: "",
        note: "The most a rider pushes the bicycle along with from rest; it matters for the first seconds only.",
    }
    LATERAL_M_S2 {
        key: "bike.lateral_m_s2", kind: Acceleration,
        range: 0.5..12.0, usual: 2.0..6.0, default: 4.0, sd: 0.0, step: 0.1,
        chosen: true, included: Always, evidence: Assumed, source: "",
        note: "Sideways acceleration a rider accepts in a dry bend; it caps speed where the course has a radius.",
    }
    BRAKING_M_S2 {
        key: "bike.braking_m_s2", kind: Acceleration,
        range: 0.3..8.0, usual: 1.0..5.0, default: 3.0, sd: 0.0, step: 0.1,
        chosen: true, included: Always, evidence: Assumed, source: "",
        note: "How hard a rider slows for a bend.",
    }
    POWER_METER_BIAS_SHARE {
        key: "bike.power_meter_bias_share", kind: Share,
        range: -0.2..0.2, usual: -0.05..0.05, default: 0.0, sd: 0.03, step: 0.005,
        chosen: false, included: New, evidence: Published, source: "maier-2017",
        note: "By what share the power meter reads high: 54 meters of 9 makers were off by -0.9 ± 3.2 %. It counts for what was measured with it.",
    }
    CDA_M2 {
        key: "positions.cda_m2", kind: Area,
        range: 0.1..0.8, usual: 0.17..0.45, default: 0.24, sd: 0.04, step: 0.001,
        chosen: false, included: Always, evidence: Assumed, source: "padilla-2000",
        note: "On time-trial bars; published is 0.244 m², measured for one record rider in a tunnel. That a guess is worth ± 0.04 is assumed.",
    }
    CP_FACTOR {
        key: "positions.cp_factor", kind: Ratio,
        range: 0.5..1.2, usual: 0.85..1.03, default: 1.0, sd: 0.0, step: 0.005,
        chosen: false, included: Always, evidence: Assumed, source: "",
        note: "Critical power here as a share of the position your power was tested in; 1 if it was tested in this one.",
    }
    W_PRIME_FACTOR {
        key: "positions.w_prime_factor", kind: Ratio,
        range: 0.3..1.5, usual: 0.8..1.2, default: 1.0, sd: 0.0, step: 0.01,
        chosen: false, included: Always, evidence: Published, source: "kordi-2019",
        note: "Position lowered critical power and left W′ alone in seven trained riders.",
    }
    SPEED_EXPONENT {
        key: "positions.speed_exponent", kind: Ratio,
        range: -1.0..1.0, usual: -0.3..0.1, default: 0.0, sd: 0.0, step: 0.01,
        chosen: false, included: Optional, evidence: Assumed, source: "",
        note: "How CdA changes with air speed; no single published figure, so 0 unless measured.",
    }
    REFERENCE_AIRSPEED_M_S {
        key: "positions.reference_airspeed_m_s", kind: Speed,
        range: 3.0..30.0, usual: 8.0..18.0, default: 12.0, sd: 0.0, step: 0.1,
        chosen: true, included: Optional, evidence: Assumed, source: "",
        note: "The air speed at which CdA was measured; it matters only with a speed exponent.",
    }
    FADE_TIRED_CDA_M2 {
        key: "positions.fade.tired_cda_m2", kind: Area,
        range: 0.1..0.8, usual: 0.17..0.45, default: 0.27, sd: 0.02, step: 0.001,
        chosen: false, included: Always, evidence: Assumed, source: "",
        note: "CdA once the position is lost; no published figure was found, so film yourself and measure it.",
    }
    FADE_BEGINS_S {
        key: "positions.fade.begins_s", kind: Duration,
        range: 0.0..200000.0, usual: 0.0..100000.0, default: 1500.0, sd: 300.0, step: 60.0,
        chosen: false, included: Always, evidence: Assumed, source: "",
        note: "When the position starts to slip.",
    }
    FADE_COMPLETE_S {
        key: "positions.fade.complete_s", kind: Duration,
        range: 1.0..200000.0, usual: 1.0..100000.0, default: 3000.0, sd: 300.0, step: 60.0,
        chosen: false, included: Always, evidence: Assumed, source: "",
        note: "When the position is fully lost.",
    }
    LAPSES_SHARE {
        key: "positions.lapses.share", kind: Share,
        range: 0.0..1.0, usual: 0.0..0.5, default: 0.05, sd: 0.03, step: 0.01,
        chosen: false, included: Always, evidence: Assumed, source: "",
        note: "Share of the ride spent out of the position: head up or down, sitting up for a junction.",
    }
    LAPSES_CDA_M2 {
        key: "positions.lapses.cda_m2", kind: Area,
        range: 0.1..0.8, usual: 0.17..0.6, default: 0.28, sd: 0.02, step: 0.001,
        chosen: false, included: Always, evidence: Assumed, source: "",
        note: "CdA during a lapse.",
    }
    FADE_TEST_FIRST_THIRD_CDA_M2 {
        key: "positions.fade_test.first_third_cda_m2", kind: Area,
        range: 0.1..0.8, usual: 0.17..0.45, default: 0.24, sd: 0.004, step: 0.001,
        chosen: false, included: Always, evidence: Assumed, source: "",
        note: "Mean CdA over the first third of a steady test; its middle stands for the time at a sixth of the test.",
    }
    FADE_TEST_LAST_THIRD_CDA_M2 {
        key: "positions.fade_test.last_third_cda_m2", kind: Area,
        range: 0.1..0.8, usual: 0.17..0.45, default: 0.25, sd: 0.004, step: 0.001,
        chosen: false, included: Always, evidence: Assumed, source: "",
        note: "Mean CdA over the last third; the whole rise is one and a half times the difference of the thirds.",
    }
    FADE_TEST_S {
        key: "positions.fade_test.test_s", kind: Duration,
        range: 60.0..200000.0, usual: 300.0..20000.0, default: 1800.0, sd: 0.0, step: 60.0,
        chosen: false, included: Always, evidence: Assumed, source: "",
        note: "Length of the test; what happens to CdA after it is not known and taken to stay.",
    }
    DRAG_TEST_CDA_M2 {
        key: "positions.drag_tests.cda_m2", kind: Area,
        range: 0.1..0.8, usual: 0.17..0.45, default: 0.24, sd: 0.0, step: 0.001,
        chosen: false, included: Optional, evidence: Assumed, source: "",
        note: "The CdA that a kept test gave.",
    }
    DRAG_TEST_SD_M2 {
        key: "positions.drag_tests.sd_m2", kind: Area,
        range: 0.00001..0.4, usual: 0.0005..0.02, default: 0.004, sd: 0.0, step: 0.001,
        chosen: false, included: Optional, evidence: Assumed, source: "",
        note: "One standard deviation of a kept test's own error, as its laps scattered.",
    }
    DRAG_TEST_SHARED_SD_M2 {
        key: "positions.drag_tests.shared_sd_m2", kind: Area,
        range: 0.0..0.4, usual: 0.0..0.03, default: 0.005, sd: 0.0, step: 0.001,
        chosen: false, included: Optional, evidence: Assumed, source: "",
        note: "One standard deviation of what tests by one rider have in common, such as the mass and the rolling resistance.",
    }
    EQUIPMENT_CDA_CHANGE_M2 {
        key: "positions.equipment.cda_change_m2", kind: Area,
        range: -0.1..0.1, usual: -0.03..0.03, default: 0.0, sd: 0.003, step: 0.001,
        chosen: false, included: Optional, evidence: Assumed, source: "beaumont-2018",
        note: "What it adds to CdA; the shapes of time-trial helmets differed by less than 1.5 % with the head kept still.",
    }
    EQUIPMENT_MASS_CHANGE_KG {
        key: "positions.equipment.mass_change_kg", kind: Mass,
        range: -10.0..10.0, usual: -2.0..2.0, default: 0.0, sd: 0.0, step: 0.05,
        chosen: false, included: Optional, evidence: CommonPractice, source: "",
        note: "What it adds to the mass; weigh it.",
    }
    CP_W {
        key: "power.cp_w", kind: Power,
        range: 30.0..600.0, usual: 100.0..450.0, default: 250.0, sd: 30.0, step: 1.0,
        chosen: false, included: Always, evidence: FromMemory, source: "",
        note: "Critical power; recreational cyclists are customarily put at 200 to 260 W.",
    }
    W_PRIME_J {
        key: "power.w_prime_j", kind: Work,
        range: 1000.0..60000.0, usual: 5000.0..35000.0, default: 17000.0, sd: 3500.0, step: 500.0,
        chosen: false, included: Always, evidence: Published, source: "dynamic-parameter",
        note: "Work above critical power; twelve laboratory sets averaged 16.9 ± 3.2 kJ.",
    }
    PEAK_W {
        key: "power.peak_w", kind: Power,
        range: 100.0..3000.0, usual: 400.0..1800.0, default: 900.0, sd: 150.0, step: 10.0,
        chosen: false, included: Optional, evidence: FromMemory, source: "",
        note: "Power at the first instant of an all-out effort.",
    }
    LONG_RIDE_LOSS_SHARE {
        key: "power.long_ride_loss_share", kind: Share,
        range: 0.0..0.4, usual: 0.02..0.2, default: 0.09, sd: 0.04, step: 0.005,
        chosen: false, included: New, evidence: Published, source: "four-and-twenty",
        note: "Share of critical power lost each time the ride grows 2.7-fold past half an hour; eight trained riders' 60-minute power implies 9 %, and the ± is assumed.",
    }
    LONG_RIDE_LOSS_W {
        key: "power.long_ride_loss_w", kind: Power,
        range: 0.0..150.0, usual: 5.0..60.0, default: 22.0, sd: 10.0, step: 1.0,
        chosen: false, included: Optional, evidence: Published, source: "four-and-twenty",
        note: "The long-ride loss in watts, as older files give it: 9 % of a critical power of 245 W.",
    }
    LONG_RIDE_FROM_S {
        key: "power.long_ride_from_s", kind: Duration,
        range: 600.0..7200.0, usual: 1200.0..3600.0, default: 1800.0, sd: 0.0, step: 60.0,
        chosen: true, included: Always, evidence: FromMemory, source: "puchowicz-2020",
        note: "From when the long-ride loss counts.",
    }
    CP_W_PRIME_CORRELATION {
        key: "power.cp_w_prime_correlation", kind: Ratio,
        range: -0.999..0.999, usual: -0.999..0.0, default: 0.0, sd: 0.0, step: 0.01,
        chosen: false, included: Optional, evidence: Assumed, source: "",
        note: "How the errors of critical power and W′ go together; a fit of both to the same efforts gives it, and it is below 0.",
    }
    ALTITUDE_RESPONSE {
        key: "power.altitude_response", kind: Ratio,
        range: 0.0..3.0, usual: 0.3..2.0, default: 1.0, sd: 0.4, step: 0.1,
        chosen: false, included: Optional, evidence: Published, source: "clark-2007",
        note: "How strongly you lose power with altitude: 1 is the mean of ten cyclists, who scattered by about 0.4 of it.",
    }
    EFFORT_DURATION_S {
        key: "efforts.duration_s", kind: Duration,
        range: 1.0..200000.0, usual: 60.0..20000.0, default: 720.0, sd: 0.0, step: 10.0,
        chosen: false, included: Optional, evidence: CommonPractice, source: "",
        note: "How long a hard effort lasted.",
    }
    EFFORT_POWER_W {
        key: "efforts.power_w", kind: Power,
        range: 10.0..3000.0, usual: 80.0..1500.0, default: 275.0, sd: 5.0, step: 1.0,
        chosen: false, included: Optional, evidence: CommonPractice, source: "",
        note: "Mean power of a hard effort.",
    }
    EVENT_DISTANCE_M {
        key: "events.distance_m", kind: Distance,
        range: 100.0..2000000.0, usual: 1000.0..900000.0, default: 40233.6, sd: 0.0, step: 1000.0,
        chosen: true, included: Optional, evidence: CommonPractice, source: "",
        note: "How far an event is; time trials are customarily held over 10, 25, 50 and 100 miles.",
    }
    EVENT_DURATION_S {
        key: "events.duration_s", kind: Clock,
        range: 60.0..200000.0, usual: 600.0..90000.0, default: 43200.0, sd: 0.0, step: 3600.0,
        chosen: true, included: Optional, evidence: CommonPractice, source: "",
        note: "How long an event lasts that goes by time: whoever gets furthest wins. 12 and 24 hours are customary.",
    }
    COURSE_DURATION_S {
        key: "course.duration_s", kind: Clock,
        range: 60.0..200000.0, usual: 600.0..90000.0, default: 43200.0, sd: 0.0, step: 3600.0,
        chosen: true, included: Optional, evidence: CommonPractice, source: "",
        note: "How long the ride lasts, for a course that goes by time and not by distance.",
    }
    DISTANCE_M {
        key: "course.distance_m", kind: Distance,
        range: 100.0..2000000.0, usual: 1000.0..900000.0, default: 40233.6, sd: 0.0, step: 1000.0,
        chosen: true, included: Always, evidence: CommonPractice, source: "",
        note: "Along the road; the default is 25 miles.",
    }
    GRADE {
        key: "course.grade", kind: Grade,
        range: -0.4..0.4, usual: -0.15..0.15, default: 0.0, sd: 0.0, step: 0.001,
        chosen: true, included: Always, evidence: CommonPractice, source: "",
        note: "Rise over run.",
    }
    BEARING_DEG {
        key: "course.bearing_deg", kind: Angle,
        range: -360.0..360.0, usual: -360.0..360.0, default: 0.0, sd: 0.0, step: 5.0,
        chosen: true, included: Always, evidence: CommonPractice, source: "",
        note: "The way the road leads at the start, clockwise from north.",
    }
    TURN_RADIUS_M {
        key: "course.turn_radius_m", kind: Length,
        range: 2.0..60.0, usual: 3.0..20.0, default: 5.0, sd: 1.5, step: 0.5,
        chosen: false, included: Optional, evidence: Assumed, source: "",
        note: "Radius of the half circle in which an out-and-back course turns: 3 to 4 m across a road, 10 m or more round an island.",
    }
    POINT_DISTANCE_M {
        key: "course.points.distance_m", kind: Distance,
        range: 0.0..2000000.0, usual: 0.0..2000000.0, default: 0.0, sd: 0.0, step: 10.0,
        chosen: true, included: Optional, evidence: CommonPractice, source: "",
        note: "Along the road from the start.",
    }
    POINT_ELEVATION_M {
        key: "course.points.elevation_m", kind: Height,
        range: -500.0..6000.0, usual: -500.0..6000.0, default: 0.0, sd: 0.0, step: 1.0,
        chosen: false, included: Optional, evidence: CommonPractice, source: "",
        note: "Above sea level.",
    }
    POINT_BEARING_DEG {
        key: "course.points.bearing_deg", kind: Angle,
        range: -360.0..360.0, usual: -360.0..360.0, default: 0.0, sd: 0.0, step: 5.0,
        chosen: true, included: Optional, evidence: CommonPractice, source: "",
        note: "The way the road leads from this point on; left out, as at the point before.",
    }
    POINT_RADIUS_M {
        key: "course.points.radius_m", kind: Length,
        range: 2.0..100000.0, usual: 2.0..100000.0, default: 100.0, sd: 0.0, step: 1.0,
        chosen: false, included: Optional, evidence: CommonPractice, source: "",
        note: "Radius of the bend from this point to the next.",
    }
    POINT_WIND_SHARE {
        key: "course.points.wind_share", kind: Share,
        range: 0.0..1.0, usual: 0.0..1.0, default: 1.0, sd: 0.0, step: 0.05,
        chosen: false, included: Optional, evidence: Assumed, source: "",
        note: "Share of the wind along the course that reaches you from this point to the next: less beside hedges, in a wood or between houses.",
    }
    TEMPERATURE_C {
        key: "conditions.temperature_c", kind: Temperature,
        range: -30.0..55.0, usual: -10.0..40.0, default: 15.0, sd: 2.0, step: 1.0,
        chosen: false, included: Always, evidence: Published, source: "iso-2533",
        note: "The default is the standard atmosphere's at sea level.",
    }
    PRESSURE_HPA {
        key: "conditions.pressure_hpa", kind: Pressure,
        range: 500.0..1100.0, usual: 650.0..1050.0, default: 1013.25, sd: 3.0, step: 1.0,
        chosen: false, included: New, evidence: Published, source: "iso-2533",
        note: "Left out, it is the standard atmosphere's at this altitude.",
    }
    ALTITUDE_M {
        key: "conditions.altitude_m", kind: Height,
        range: -500.0..6000.0, usual: -100.0..3000.0, default: 0.0, sd: 0.0, step: 10.0,
        chosen: true, included: Optional, evidence: CommonPractice, source: "",
        note: "Of the course above sea level; left out, the mean of the course's points.",
    }
    RELATIVE_HUMIDITY {
        key: "conditions.relative_humidity", kind: Share,
        range: 0.0..1.0, usual: 0.0..1.0, default: 0.5, sd: 0.15, step: 0.01,
        chosen: false, included: Always, evidence: CommonPractice, source: "",
        note: "At 20 °C the whole range moves density by 0.9 %.",
    }
    DEW_POINT_C {
        key: "conditions.dew_point_c", kind: Temperature,
        range: -60.0..45.0, usual: -30.0..30.0, default: 8.0, sd: 1.0, step: 1.0,
        chosen: false, included: Optional, evidence: CommonPractice, source: "",
        note: "May stand in place of the humidity.",
    }
    WIND_SPEED_M_S {
        key: "conditions.wind_speed_m_s", kind: Wind,
        range: 0.0..40.0, usual: 0.0..12.0, default: 0.0, sd: 0.0, step: 0.5,
        chosen: false, included: Always, evidence: CommonPractice, source: "",
        note: "As the forecast gives it, at the wind's height.",
    }
    WIND_FROM_DEG {
        key: "conditions.wind_from_deg", kind: Angle,
        range: -360.0..360.0, usual: -360.0..360.0, default: 0.0, sd: 0.0, step: 5.0,
        chosen: false, included: Always, evidence: CommonPractice, source: "",
        note: "Where the wind comes from, clockwise from north.",
    }
    WIND_HEIGHT_M {
        key: "conditions.wind_height_m", kind: Length,
        range: 0.5..100.0, usual: 1.0..10.0, default: 10.0, sd: 0.0, step: 1.0,
        chosen: true, included: Always, evidence: CommonPractice, source: "wieringa-1992",
        note: "Forecasts give the wind at 10 m.",
    }
    RIDER_HEIGHT_M {
        key: "conditions.rider_height_m", kind: Length,
        range: 0.6..2.5, usual: 0.9..1.5, default: 1.2, sd: 0.0, step: 0.1,
        chosen: false, included: Always, evidence: Assumed, source: "",
        note: "Height at which the rider meets the wind.",
    }
    ROUGHNESS_LENGTH_M {
        key: "conditions.roughness_length_m", kind: Length,
        range: 0.0001..0.5, usual: 0.0001..0.06, default: 0.03, sd: 0.0, step: 0.01,
        chosen: false, included: Always, evidence: Published, source: "wieringa-1992",
        note: "Of the land around: 0.03 open grass, 0.1 low crops, 0.25 hedges and trees; above 0.06 the wind at 1.2 m is only a rough guess.",
    }
    SHELTER_FACTOR {
        key: "conditions.shelter_factor", kind: Ratio,
        range: 0.0..1.5, usual: 0.0..1.0, default: 0.4, sd: 0.15, step: 0.05,
        chosen: false, included: Optional, evidence: Assumed, source: "",
        note: "Share of the forecast wind that reaches the rider; stands in for the roughness where the wind law fails.",
    }
    LATITUDE_DEG {
        key: "conditions.latitude_deg", kind: Angle,
        range: -90.0..90.0, usual: -90.0..90.0, default: 45.0, sd: 0.0, step: 1.0,
        chosen: true, included: Optional, evidence: Published, source: "wgs-84",
        note: "Left out, gravity is the standard 9.80665 m/s².",
    }
    FIRST_AT_S {
        key: "conditions.later.first_at_s", kind: TimeOfDay,
        range: 0.0..172800.0, usual: 0.0..172800.0, default: 25200.0, sd: 0.0, step: 900.0,
        chosen: true, included: Optional, evidence: CommonPractice, source: "",
        note: "The time of day of the first forecast.",
    }
    LATER_AT_S {
        key: "conditions.later.at_s", kind: TimeOfDay,
        range: 0.0..172800.0, usual: 0.0..172800.0, default: 36000.0, sd: 0.0, step: 900.0,
        chosen: true, included: Optional, evidence: CommonPractice, source: "",
        note: "The time of day of the later forecast.",
    }
    START_AT_S {
        key: "conditions.later.start_at_s", kind: TimeOfDay,
        range: 0.0..172800.0, usual: 0.0..172800.0, default: 28800.0, sd: 0.0, step: 900.0,
        chosen: true, included: Optional, evidence: CommonPractice, source: "",
        note: "When the ride begins.",
    }
    START_SPEED_M_S {
        key: "start.speed_m_s", kind: Speed,
        range: 0.0..30.0, usual: 0.0..20.0, default: 8.0, sd: 0.0, step: 0.5,
        chosen: false, included: Optional, evidence: CommonPractice, source: "",
        note: "Speed at the line.",
    }
    STOPS_EVERY_M {
        key: "stops.every_m", kind: Distance,
        range: 1000.0..2000000.0, usual: 10000.0..300000.0, default: 50000.0, sd: 0.0, step: 5000.0,
        chosen: true, included: Always, evidence: Assumed, source: "",
        note: "How far the stops are apart, from the start on; one at the line is the finish.",
    }
    STOPS_TIME_S {
        key: "stops.time_s", kind: Clock,
        range: 0.0..36000.0, usual: 10.0..3600.0, default: 120.0, sd: 60.0, step: 10.0,
        chosen: false, included: Always, evidence: Assumed, source: "",
        note: "How long each stop takes standing. Whoever stands longer than planned is taken to do so at every stop.",
    }
    FEEDING_EVERY_S {
        key: "feeding.every_s", kind: Duration,
        range: 60.0..36000.0, usual: 300.0..7200.0, default: 1200.0, sd: 0.0, step: 60.0,
        chosen: true, included: Always, evidence: Assumed, source: "",
        note: "How often the rider eats or drinks on the move, by riding time.",
    }
    FEEDING_TIME_S {
        key: "feeding.time_s", kind: Clock,
        range: 0.0..600.0, usual: 2.0..60.0, default: 10.0, sd: 5.0, step: 1.0,
        chosen: false, included: Always, evidence: Assumed, source: "",
        note: "For how long the rider sits up each time.",
    }
    FEEDING_CDA_M2 {
        key: "feeding.cda_m2", kind: Area,
        range: 0.1..0.8, usual: 0.17..0.6, default: 0.33, sd: 0.03, step: 0.001,
        chosen: false, included: Always, evidence: FromMemory, source: "jeukendrup-2001",
        note: "CdA while sitting up to eat or drink: between hands on the drops, about 0.31 m², and on the hoods, about 0.36 m². Never less than in the position itself.",
    }
    MODEL_ERROR_SHARE {
        key: "model_error_share", kind: Share,
        range: 0.0..0.2, usual: 0.005..0.05, default: 0.03, sd: 0.0, step: 0.005,
        chosen: false, included: Always, evidence: Assumed, source: "romcke-2019",
        note: "The model's own error as a share of a finish time. Published models missed by 3.2 to 3.9 % on average outdoors, a standard deviation of 4 to 5 %; about 3 % of that is put down to their inputs, which count by themselves here.",
    }
    YAW_DEG {
        key: "positions.yaw_table.yaw_deg", kind: Angle,
        range: 0.0..80.0, usual: 0.0..30.0, default: 0.0, sd: 0.0, step: 5.0,
        chosen: false, included: Optional, evidence: CommonPractice, source: "",
        note: "Angle between the bicycle and the apparent wind.",
    }
    YAW_RATIO {
        key: "positions.yaw_table.ratio", kind: Ratio,
        range: 0.1..3.0, usual: 0.7..1.3, default: 1.0, sd: 0.0, step: 0.01,
        chosen: false, included: Optional, evidence: CommonPractice, source: "",
        note: "Axial drag area at this yaw over that at zero yaw.",
    }
    POWER_W {
        key: "with.power_w", kind: Power,
        range: 0.0..2500.0, usual: 50.0..600.0, default: 250.0, sd: 0.0, step: 1.0,
        chosen: false, included: Optional, evidence: CommonPractice, source: "",
        note: "Power at the pedals.",
    }
    SPEED_M_S {
        key: "with.speed_m_s", kind: Speed,
        range: 0.1..40.0, usual: 2.0..20.0, default: 11.0, sd: 0.0, step: 0.1,
        chosen: false, included: Optional, evidence: CommonPractice, source: "",
        note: "Speed over the ground.",
    }
    TIME_S {
        key: "with.time_s", kind: Clock,
        range: 10.0..1000000.0, usual: 60.0..200000.0, default: 3600.0, sd: 0.0, step: 10.0,
        chosen: false, included: Optional, evidence: CommonPractice, source: "",
        note: "A finish time to aim at.",
    }
    TARGET_TIME_S {
        key: "with.target_time_s", kind: Clock,
        range: 10.0..1000000.0, usual: 60.0..200000.0, default: 3600.0, sd: 0.0, step: 10.0,
        chosen: false, included: Optional, evidence: CommonPractice, source: "",
        note: "A finish time whose chance is wanted.",
    }
    OTHER_START_AT_S {
        key: "with.other_start_at_s", kind: TimeOfDay,
        range: 0.0..172800.0, usual: 0.0..172800.0, default: 36000.0, sd: 0.0, step: 900.0,
        chosen: true, included: Optional, evidence: CommonPractice, source: "",
        note: "Another start on the same day, to compare with.",
    }
    HOLD_S {
        key: "with.hold_s", kind: Duration,
        range: 1.0..200000.0, usual: 60.0..36000.0, default: 1200.0, sd: 0.0, step: 60.0,
        chosen: false, included: Optional, evidence: CommonPractice, source: "",
        note: "How long a power is to be held.",
    }
    TEST_ERROR_SHARE {
        key: "with.test_error_share", kind: Share,
        range: 0.001..0.2, usual: 0.005..0.06, default: 0.02, sd: 0.0, step: 0.001,
        chosen: false, included: Optional, evidence: Published, source: "four-and-twenty",
        note: "How well a hard effort repeats: 20-minute trials of eight trained riders to 1.3 %, 4-minute trials to 2.0 %.",
    }
    FOR_TIME_S {
        key: "with.for_time_s", kind: Duration,
        range: 60.0..200000.0, usual: 600.0..100000.0, default: 3600.0, sd: 0.0, step: 60.0,
        chosen: false, included: Optional, evidence: CommonPractice, source: "",
        note: "A fixed time to ride for.",
    }
    SPLIT_EVERY_M {
        key: "with.split_every_m", kind: Length,
        range: 100.0..1000000.0, usual: 500.0..100000.0, default: 8046.72, sd: 0.0, step: 1000.0,
        chosen: false, included: Optional, evidence: CommonPractice, source: "",
        note: "Distance between splits; the default is 5 miles.",
    }
    MAP_POWER_W {
        key: "with.map_power_w", kind: Power,
        range: 20.0..2500.0, usual: 50.0..600.0, default: 250.0, sd: 0.0, step: 1.0,
        chosen: false, included: Optional, evidence: CommonPractice, source: "",
        note: "Ends of the powers that a map spans.",
    }
    POWER_CHANGE {
        key: "with.power_change", kind: Share,
        range: -0.5..1.0, usual: -0.2..0.2, default: 0.1, sd: 0.0, step: 0.01,
        chosen: false, included: Optional, evidence: CommonPractice, source: "",
        note: "More power, as a share.",
    }
    CDA_CHANGE {
        key: "with.cda_change", kind: Share,
        range: -0.5..0.5, usual: -0.25..0.25, default: -0.1, sd: 0.0, step: 0.01,
        chosen: false, included: Optional, evidence: CommonPractice, source: "",
        note: "Change of drag area, as a share; less is negative.",
    }
    LOWER_BY_M2 {
        key: "with.lower_by_m2", kind: Area,
        range: -0.2..0.2, usual: 0.0..0.06, default: 0.014, sd: 0.003, step: 0.001,
        chosen: false, included: Optional, evidence: Assumed, source: "",
        note: "By how much one drag area lies below another, as one test of both gives it.",
    }
    CHANGE_SHARE {
        key: "with.share", kind: Share,
        range: -0.9..2.0, usual: -0.15..0.2, default: -0.03, sd: 0.0, step: 0.005,
        chosen: false, included: Optional, evidence: Assumed, source: "",
        note: "By what share of itself a change moves a number; less is negative.",
    }
    CHANCE {
        key: "with.chance", kind: Ratio,
        range: 0.0..1.0, usual: 0.0..1.0, default: 0.7, sd: 0.0, step: 0.05,
        chosen: false, included: Optional, evidence: Assumed, source: "",
        note: "The chance that something comes off, whatever becomes of the rest.",
    }
    MONEY {
        key: "with.money", kind: Ratio,
        range: 0.0..1000000.0, usual: 0.0..20000.0, default: 150.0, sd: 0.0, step: 10.0,
        chosen: false, included: Optional, evidence: CommonPractice, source: "",
        note: "Money to spend, or what something costs, in your own currency.",
    }
    HOURS_PER_WEEK {
        key: "with.hours_per_week", kind: Hours,
        range: 0.0..168.0, usual: 0.0..20.0, default: 2.0, sd: 0.0, step: 0.5,
        chosen: false, included: Optional, evidence: CommonPractice, source: "",
        note: "Hours to spend every week beyond what you do now, or what something takes every week.",
    }
    HOURS_ONCE {
        key: "with.hours_once", kind: Hours,
        range: 0.0..10000.0, usual: 0.0..200.0, default: 0.0, sd: 0.0, step: 0.5,
        chosen: false, included: Optional, evidence: CommonPractice, source: "",
        note: "Hours that something takes once.",
    }
    WEEKS {
        key: "with.weeks", kind: Ratio,
        range: 0.0..520.0, usual: 0.0..52.0, default: 12.0, sd: 0.0, step: 1.0,
        chosen: false, included: Optional, evidence: CommonPractice, source: "",
        note: "For how many weeks.",
    }
    TIMES_RIDDEN {
        key: "with.times_ridden", kind: Ratio,
        range: 0.0..1000.0, usual: 0.0..50.0, default: 1.0, sd: 0.0, step: 1.0,
        chosen: false, included: Optional, evidence: CommonPractice, source: "",
        note: "How often an event is ridden.",
    }
    RIDES_AT_ONCE {
        key: "with.rides_at_once", kind: Ratio,
        range: 1.0..1000000.0, usual: 1.0..1000000.0, default: 50000.0, sd: 0.0, step: 1000.0,
        chosen: false, included: Optional, evidence: Assumed, source: "",
        note: "The most rides that one request works out.",
    }
    STATURE_M {
        key: "with.stature_m", kind: BodyLength,
        range: 1.2..2.3, usual: 1.5..2.05, default: 1.75, sd: 0.01, step: 0.01,
        chosen: false, included: Optional, evidence: Assumed, source: "",
        note: "Standing height, from which segment lengths that are not given are guessed.",
    }
    THIGH_M {
        key: "with.thigh_m", kind: BodyLength,
        range: 0.2..0.7, usual: 0.33..0.53, default: 0.42875, sd: 0.013, step: 0.005,
        chosen: false, included: Optional, evidence: FromMemory, source: "drillis-1966",
        note: "Hip joint to knee; left out, 0.245 of the stature ± 3 %: a guess.",
    }
    SHANK_M {
        key: "with.shank_m", kind: BodyLength,
        range: 0.2..0.7, usual: 0.33..0.53, default: 0.4305, sd: 0.013, step: 0.005,
        chosen: false, included: Optional, evidence: FromMemory, source: "drillis-1966",
        note: "Knee to ankle; left out, 0.246 of the stature ± 3 %: a guess.",
    }
    FOOT_M {
        key: "with.foot_m", kind: BodyLength,
        range: 0.05..0.3, usual: 0.1..0.2, default: 0.14875, sd: 0.0045, step: 0.005,
        chosen: false, included: Optional, evidence: Assumed, source: "",
        note: "Ankle to pedal axle; left out, 0.085 of the stature ± 3 %: a guess, and where the cleat sits decides.",
    }
    TRUNK_M {
        key: "with.trunk_m", kind: BodyLength,
        range: 0.3..0.8, usual: 0.42..0.62, default: 0.504, sd: 0.015, step: 0.005,
        chosen: false, included: Optional, evidence: FromMemory, source: "drillis-1966",
        note: "Hip joint to shoulder joint; left out, 0.288 of the stature ± 3 %: a guess.",
    }
    UPPER_ARM_M {
        key: "with.upper_arm_m", kind: BodyLength,
        range: 0.15..0.5, usual: 0.26..0.4, default: 0.3255, sd: 0.01, step: 0.005,
        chosen: false, included: Optional, evidence: FromMemory, source: "drillis-1966",
        note: "Shoulder joint down to the pads, the upper arm upright; left out, 0.186 of the stature ± 3 %: a guess.",
    }
    HIP_ABOVE_SADDLE_M {
        key: "with.hip_above_saddle_m", kind: FitLength,
        range: 0.0..0.15, usual: 0.03..0.1, default: 0.065, sd: 0.01, step: 0.005,
        chosen: false, included: Optional, evidence: Assumed, source: "",
        note: "The hip joint's centre beyond the top of the saddle, along the line from the crank's axle.",
    }
    ANKLE_DEG {
        key: "with.ankle_deg", kind: JointAngle,
        range: 70.0..175.0, usual: 100.0..150.0, default: 130.0, sd: 5.0, step: 1.0,
        chosen: false, included: Optional, evidence: Assumed, source: "",
        note: "Between shank and the line from ankle to pedal, for an ankle that does not move.",
    }
    FOOT_PITCH_DEG {
        key: "with.foot_pitch_deg", kind: JointAngle,
        range: 0.0..85.0, usual: 25.0..65.0, default: 45.0, sd: 5.0, step: 1.0,
        chosen: false, included: Optional, evidence: Assumed, source: "",
        note: "How far the line from ankle to pedal points below the horizontal, in the mean, for an ankle that moves.",
    }
    FOOT_SWING_DEG {
        key: "with.foot_swing_deg", kind: JointAngle,
        range: 0.0..40.0, usual: 0.0..25.0, default: 12.0, sd: 4.0, step: 1.0,
        chosen: false, included: Optional, evidence: Assumed, source: "",
        note: "How far that line swings to either side of its mean over a turn.",
    }
    CADENCE_RPM {
        key: "with.cadence_rpm", kind: Cadence,
        range: 20.0..200.0, usual: 60.0..120.0, default: 90.0, sd: 0.0, step: 1.0,
        chosen: false, included: Optional, evidence: CommonPractice, source: "",
        note: "Turns of the crank a minute.",
    }
    CRANK_M {
        key: "with.crank_m", kind: FitLength,
        range: 0.1..0.22, usual: 0.145..0.185, default: 0.17, sd: 0.0, step: 0.0025,
        chosen: false, included: Optional, evidence: CommonPractice, source: "",
        note: "Axle to pedal axle.",
    }
    SADDLE_HEIGHT_M {
        key: "with.saddle_height_m", kind: FitLength,
        range: 0.4..1.05, usual: 0.58..0.85, default: 0.72, sd: 0.0, step: 0.001,
        chosen: false, included: Optional, evidence: FromMemory, source: "",
        note: "Crank's axle to the top of the saddle along the seat line; the default puts the saddle top at the classic 96 % of the hip's standing height above a pedal at the bottom.",
    }
    SEAT_ANGLE_DEG {
        key: "with.seat_angle_deg", kind: JointAngle,
        range: 55.0..100.0, usual: 68.0..86.0, default: 76.0, sd: 0.0, step: 0.5,
        chosen: false, included: Optional, evidence: CommonPractice, source: "",
        note: "Effective: of the line from the crank's axle to the hip joint's centre, above the horizontal behind.",
    }
    TORSO_DEG {
        key: "with.torso_deg", kind: JointAngle,
        range: -20.0..90.0, usual: 0.0..40.0, default: 16.0, sd: 1.0, step: 1.0,
        chosen: false, included: Optional, evidence: CommonPractice, source: "",
        note: "Of the line from hip joint to shoulder joint, above the horizontal; published tests used 0 to 24°.",
    }
    BAR_DROP_M {
        key: "with.bar_drop_m", kind: FitLength,
        range: -0.3..0.4, usual: -0.05..0.25, default: 0.1, sd: 0.0, step: 0.005,
        chosen: false, included: Optional, evidence: CommonPractice, source: "",
        note: "From the top of the saddle straight down to the height of the arm pads.",
    }
    CDA_CORRELATION {
        key: "with.cda_correlation", kind: Ratio,
        range: 0.0..0.999, usual: 0.0..0.999, default: 0.0, sd: 0.0, step: 0.05,
        chosen: false, included: Optional, evidence: Assumed, source: "",
        note: "How the errors of several drag areas go together: nearly 1 for one test or one guess, 0 for tests that have nothing in common.",
    }
    WIND_HEAD_M_S {
        key: "with.wind_head_m_s", kind: Wind,
        range: -30.0..30.0, usual: -8.0..8.0, default: 0.0, sd: 0.0, step: 0.1,
        chosen: false, included: Optional, evidence: CommonPractice, source: "",
        note: "Head wind at the height of the rider during a run; a tail wind is negative.",
    }
    COAST_DOWN_S {
        key: "with.coast_down_time_s", kind: Clock,
        range: 1.0..3600.0, usual: 5.0..180.0, default: 30.0, sd: 0.0, step: 0.1,
        chosen: false, included: Optional, evidence: CommonPractice, source: "",
        note: "How long a coast-down took from its first speed to its last.",
    }
    COAST_DOWN_M {
        key: "with.coast_down_distance_m", kind: Length,
        range: 1.0..20000.0, usual: 30.0..1500.0, default: 300.0, sd: 0.0, step: 1.0,
        chosen: false, included: Optional, evidence: CommonPractice, source: "",
        note: "How far a coast-down went from its first speed to its last.",
    }
    RULE_BRAKING_M_S2 {
        key: "with.rules.braking_m_s2", kind: Acceleration,
        range: 0.1..1000.0, usual: 0.4..3.0, default: 0.8, sd: 0.0, step: 0.1,
        chosen: true, included: Optional, evidence: Assumed, source: "",
        note: "Slowing down by more than this, beyond what the slope explains, counts as braking; drag alone takes 0.3 to 0.5.",
    }
    RULE_STOPPED_M_S {
        key: "with.rules.stopped_m_s", kind: Speed,
        range: 0.0..20.0, usual: 0.0..5.0, default: 1.5, sd: 0.0, step: 0.1,
        chosen: true, included: Optional, evidence: Assumed, source: "",
        note: "Slower than this counts as a stop.",
    }
    RULE_ACCELERATING_M_S2 {
        key: "with.rules.accelerating_m_s2", kind: Acceleration,
        range: 0.01..1000.0, usual: 0.1..2.0, default: 0.3, sd: 0.0, step: 0.05,
        chosen: true, included: Optional, evidence: Assumed, source: "",
        note: "Gaining speed by more than this without power, beyond what the slope explains, counts as a gap in the power meter's record.",
    }
    RULE_BRIDGED_S {
        key: "with.rules.bridged_s", kind: Clock,
        range: 0.0..600.0, usual: 0.0..15.0, default: 5.0, sd: 0.0, step: 1.0,
        chosen: true, included: Optional, evidence: Assumed, source: "",
        note: "A gap in a record up to this long is bridged by a straight line.",
    }
    RULE_ALLOWED_S {
        key: "with.rules.allowed_s", kind: Clock,
        range: 0.0..100000.0, usual: 0.0..30.0, default: 0.0, sd: 0.0, step: 1.0,
        chosen: true, included: Optional, evidence: Assumed, source: "",
        note: "A lap of which no more than this is unusable is kept.",
    }
    SPEED_ERROR_SHARE {
        key: "with.speed_error_share", kind: Share,
        range: 0.0..0.2, usual: 0.0..0.03, default: 0.005, sd: 0.0, step: 0.001,
        chosen: false, included: Optional, evidence: Assumed, source: "",
        note: "How uncertain the scale of every speed is: 0.5 % is a wheel whose circumference was measured to a centimetre.",
    }
    FILMED_SHARE {
        key: "with.film.share", kind: Share,
        range: 0.0..1.0, usual: 0.0..1.0, default: 0.0, sd: 0.0, step: 0.01,
        chosen: false, included: Optional, evidence: CommonPractice, source: "",
        note: "Share of the time that a film shows the rider so.",
    }
    DIFFERENCE_SHARE {
        key: "with.plan.difference_share", kind: Share,
        range: 0.001..0.5, usual: 0.005..0.1, default: 0.02, sd: 0.0, step: 0.005,
        chosen: true, included: Optional, evidence: CommonPractice, source: "",
        note: "The difference between two positions that a test is to show, as a share of the drag area.",
    }
    RUN_CV_SHARE {
        key: "with.plan.run_cv_share", kind: Share,
        range: 0.0005..0.2, usual: 0.005..0.04, default: 0.015, sd: 0.0, step: 0.001,
        chosen: false, included: Optional, evidence: Assumed, source: "",
        note: "How well the drag area of one run repeats; a test of your own tells.",
    }
    TEST_POWER {
        key: "with.plan.power", kind: Ratio,
        range: 0.1..0.999, usual: 0.5..0.99, default: 0.8, sd: 0.0, step: 0.05,
        chosen: true, included: Optional, evidence: CommonPractice, source: "",
        note: "How often a test is to show a difference that is there; 4 times in 5 is customary.",
    }
    TEST_RUNS {
        key: "with.plan.runs", kind: Ratio,
        range: 2.0..1000.0, usual: 2.0..40.0, default: 6.0, sd: 0.0, step: 1.0,
        chosen: true, included: Optional, evidence: CommonPractice, source: "",
        note: "How many runs you mean to do in each position.",
    }
    SMOOTH_M {
        key: "with.smooth_m", kind: Length,
        range: 0.0..2000.0, usual: 0.0..500.0, default: 100.0, sd: 0.0, step: 10.0,
        chosen: true, included: Optional, evidence: Assumed, source: "",
        note: "Heights are averaged over so many metres each way, since barometers and maps err by metres and every wiggle adds to the climb.",
    }
    FROM_M {
        key: "with.from_m", kind: Distance,
        range: 0.0..2000000.0, usual: 0.0..900000.0, default: 0.0, sd: 0.0, step: 100.0,
        chosen: true, included: Optional, evidence: CommonPractice, source: "",
        note: "Where the course begins on the recorded road.",
    }
    TO_M {
        key: "with.to_m", kind: Distance,
        range: 0.0..2000000.0, usual: 0.0..900000.0, default: 40000.0, sd: 0.0, step: 100.0,
        chosen: true, included: Optional, evidence: CommonPractice, source: "",
        note: "Where the course ends on the recorded road; left out, at its end.",
    }
    TIMES {
        key: "with.times", kind: Ratio,
        range: 1.0..50.0, usual: 1.0..20.0, default: 1.0, sd: 0.0, step: 1.0,
        chosen: true, included: Optional, evidence: CommonPractice, source: "",
        note: "How often the course is ridden, lap after lap.",
    }
    COURSE_POINTS {
        key: "with.most_points", kind: Ratio,
        range: 10.0..2500.0, usual: 20.0..2500.0, default: 2500.0, sd: 0.0, step: 10.0,
        chosen: true, included: Optional, evidence: CommonPractice, source: "",
        note: "How many points of the course are kept at most, so that it fits into a link.",
    }
    LEAST_W {
        key: "with.least_w", kind: Power,
        range: 0.0..1000.0, usual: 0.0..250.0, default: 0.0, sd: 0.0, step: 5.0,
        chosen: true, included: Optional, evidence: CommonPractice, source: "",
        note: "The least power of a plan; at 0 you may coast.",
    }
    GREATEST_W {
        key: "with.greatest_w", kind: Power,
        range: 20.0..2500.0, usual: 150.0..1200.0, default: 600.0, sd: 0.0, step: 10.0,
        chosen: true, included: Optional, evidence: Assumed, source: "",
        note: "The greatest power of a plan, such as you would push out of a bend.",
    }
    TARGETS {
        key: "with.targets", kind: Ratio,
        range: 1.0..8.0, usual: 1.0..8.0, default: 5.0, sd: 0.0, step: 1.0,
        chosen: true, included: Optional, evidence: CommonPractice, source: "",
        note: "How many powers you are ready to remember.",
    }
    ROUND_W {
        key: "with.round_w", kind: Power,
        range: 1.0..50.0, usual: 1.0..20.0, default: 5.0, sd: 0.0, step: 1.0,
        chosen: true, included: Optional, evidence: CommonPractice, source: "",
        note: "The powers of a plan are multiples of this; nobody holds a power to a watt.",
    }
    SIT_UP_FROM_GRADE {
        key: "with.sit_up.from_grade", kind: Grade,
        range: 0.01..0.4, usual: 0.03..0.15, default: 0.06, sd: 0.0, step: 0.005,
        chosen: true, included: Always, evidence: Assumed, source: "",
        note: "You sit up where the road climbs as steeply as this, or more steeply.",
    }
    SIT_UP_CDA_M2 {
        key: "with.sit_up.cda_m2", kind: Area,
        range: 0.1..0.8, usual: 0.17..0.6, default: 0.33, sd: 0.03, step: 0.001,
        chosen: false, included: Always, evidence: FromMemory, source: "jeukendrup-2001",
        note: "CdA while sitting up: between hands on the drops, about 0.31 m², and on the hoods, about 0.36 m². Never less than in the position itself.",
    }
    SIT_UP_CP_GAIN_SHARE {
        key: "with.sit_up.cp_gain_share", kind: Share,
        range: 0.0..0.3, usual: 0.0..0.1, default: 0.03, sd: 0.02, step: 0.005,
        chosen: false, included: Always, evidence: Assumed, source: "kordi-2019",
        note: "How much more critical power you have sitting up than in your position. In a study it was more on the hoods; how much it is for you, only a test tells.",
    }
    AFTER_RUNNING_OUT_SHARE {
        key: "with.after_running_out_share", kind: Share,
        range: 0.3..1.0, usual: 0.7..1.0, default: 0.93, sd: 0.0, step: 0.01,
        chosen: true, included: Optional, evidence: Published, source: "dynamic-parameter",
        note: "What you hold after your W′ has run out, as a share of critical power: in a second all-out test, a minute after the first, the end power was 7 % lower. That it stays so to the finish is assumed.",
    }
    RIDERS {
        key: "with.riders", kind: Ratio,
        range: 0.0..5000.0, usual: 0.0..5000.0, default: 0.0, sd: 0.0, step: 100.0,
        chosen: true, included: Optional, evidence: CommonPractice, source: "",
        note: "How many riders with another critical power and W′ ride both plans; none unless asked for.",
    }
    DRAWS {
        key: "with.draws", kind: Ratio,
        range: 0.0..100000.0, usual: 0.0..100000.0, default: 10000.0, sd: 0.0, step: 1000.0,
        chosen: false, included: Optional, evidence: CommonPractice, source: "",
        note: "How many tries a comparison takes. With none, its ± is worked out for small changes; a course of very many points gets fewer.",
    }
}

/// An error in standard deviations that is common to several numbers. It is no field: nobody gives it.
pub static COMMON_ERROR: Field = Field {
    key: "",
    kind: QuantityKind::Ratio,
    chosen: false,
    included: Included::Optional,
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
/// Points of a course lie at least this far apart, m: closer than surveys are accurate, grades are noise.
pub const CLOSEST_POINTS_M: f64 = 0.1;
/// The most points a course holds.
pub const MOST_POINTS: usize = 20_000;
/// The most points of a course that are ridden; a longer one is simplified.
pub const MOST_POINTS_RIDDEN: usize = 2_500;
/// The most kinds of lapse that a position or a piece of equipment has.
pub const MOST_LAPSES: usize = 8;
/// The most pieces of equipment that a position chooses between.
pub const MOST_EQUIPMENT: usize = 12;
/// The most recordings of one drag test.
pub const MOST_RECORDINGS: usize = 60;
/// The most laps, runs and coast-downs of a drag test, each.
pub const MOST_DRAG_ROWS: usize = 500;
/// The most tests of one position.
pub const MOST_DRAG_TESTS: usize = 40;
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

/// The most of each that is taken, for who counts them before they are asked.
#[derive(Clone, Copy, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Most {
    /// Kinds of lapse of a position or a piece of equipment.
    pub lapses: usize,
    /// Pieces of equipment of a position.
    pub equipment: usize,
    /// Recordings of a drag test.
    pub recordings: usize,
    /// Laps, runs and coast-downs of a drag test, each.
    pub drag_rows: usize,
    /// Kept tests of a position.
    pub drag_tests: usize,
    /// Efforts of a scenario.
    pub efforts: usize,
    /// Events of a scenario.
    pub events: usize,
    /// Bytes of a request.
    pub request_bytes: usize,
}

/// The most of each that is taken.
pub static MOST: Most = Most {
    lapses: MOST_LAPSES,
    equipment: MOST_EQUIPMENT,
    recordings: MOST_RECORDINGS,
    drag_rows: MOST_DRAG_ROWS,
    drag_tests: MOST_DRAG_TESTS,
    efforts: MOST_EFFORTS,
    events: MOST_EVENTS,
    request_bytes: MOST_REQUEST_BYTES,
};

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
