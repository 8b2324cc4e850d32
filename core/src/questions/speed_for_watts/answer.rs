//! What the question answers.

use serde::Serialize;

use crate::inputs::error::Warning;
use crate::inputs::quantity::{Column, Figure};
use crate::numerics::solve::{spaced, within};
use crate::physics::resistance::Stretch;
use crate::scenario::propagation::Contribution;

/// Power by where it goes, W; together the power at the pedals.
#[derive(Clone, Copy, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Breakdown {
    /// Into the air; negative where the wind pushes.
    pub air: f64,
    /// Into the tyres.
    pub rolling: f64,
    /// Into the hill; negative downhill.
    pub climbing: f64,
    /// Into the wheel bearings.
    pub bearings: f64,
    /// Lost in the drivetrain.
    pub drivetrain: f64,
}

/// By how many percent speed changes for one percent of each.
#[derive(Clone, Copy, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Elasticities {
    /// Of power.
    pub power: f64,
    /// Of drag area.
    pub cda: f64,
    /// Of mass.
    pub mass: f64,
    /// Of the rolling-resistance coefficient.
    pub rolling: f64,
    /// Of air density.
    pub density: f64,
}

/// The same watts in other air.
#[derive(Clone, Copy, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct OtherAir {
    /// Density of the standard atmosphere at sea level, kg/m³.
    pub standard_density_kg_m3: f64,
    /// Speed in that, the wind as it is, m/s.
    pub standard_speed_m_s: f64,
    /// Speed in today's air without wind, m/s.
    pub still_speed_m_s: f64,
}

/// The answer.
#[derive(Clone, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Answer {
    /// Speed over the ground.
    pub speed_m_s: Figure,
    /// Power at the pedals.
    pub power_w: Figure,
    /// Where it goes.
    pub breakdown_w: Breakdown,
    /// Share of the road load that is air.
    pub aero_share: f64,
    /// What a percent of each input does to speed.
    pub elasticity: Elasticities,
    /// Density of the air.
    pub density_kg_m3: f64,
    /// Wind at rider height.
    pub rider_wind_m_s: f64,
    /// Its component against the rider.
    pub headwind_m_s: f64,
    /// Its component from the rider's right.
    pub crosswind_m_s: f64,
    /// Air speed the rider feels.
    pub apparent_wind_m_s: f64,
    /// Angle it comes at, degrees.
    pub yaw_deg: f64,
    /// Drag area ridden with, lapses counted.
    pub cda_m2: f64,
    /// What ten more watts would add to speed.
    pub next_10_w_m_s: Figure,
    /// The same watts in other air.
    pub other_air: OtherAir,
    /// Which inputs carry the doubt of the speed (or of the power, if a speed was asked for).
    pub surer: Vec<Contribution>,
    /// What is doubtful.
    pub warnings: Vec<Warning>,
    /// Curves.
    pub columns: Columns,
}

/// Curves over speed and over power.
#[derive(Clone, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Columns {
    /// Speeds, m/s.
    pub speed_m_s: Column,
    /// Power into the air at each speed, W.
    pub air_w: Column,
    /// Power into the tyres, W.
    pub rolling_w: Column,
    /// Power into the hill, W.
    pub climbing_w: Column,
    /// Power into the bearings, W.
    pub bearings_w: Column,
    /// Power lost in the drivetrain, W.
    pub drivetrain_w: Column,
    /// Powers, W.
    pub power_w: Column,
    /// Speed at each power, m/s.
    pub speed_at_power_m_s: Column,
    /// What ten more watts add to speed at each power, m/s.
    pub next_10_w_m_s: Column,
}

/// Ten watts, the step in which riders think of the next gain.
pub(super) const STEP_W: f64 = 10.0;
const CURVE_POINTS: usize = 61;

impl Columns {
    /// About a speed and the power that it takes.
    pub(super) fn new(
        stretch: &Stretch<'_>,
        cda_m2: f64,
        efficiency: f64,
        speed_m_s: f64,
        power_w: f64,
    ) -> Self {
        let top_m_s = (1.35 * speed_m_s).max(5.0);
        let speeds = spaced(0.0, top_m_s, CURVE_POINTS);
        let by = |part: &dyn Fn(f64) -> f64| speeds.iter().map(|&v| part(v)).collect::<Column>();
        let top_w = within(2.0 * power_w, 100.0, 2500.0);
        let powers = spaced(STEP_W, top_w, CURVE_POINTS);
        let at = |watts: f64| stretch.speed_m_s(watts * efficiency, cda_m2);
        Self {
            air_w: by(&|v| v * stretch.air_n(v, cda_m2)),
            rolling_w: by(&|v| v * stretch.forces_with_air(v, 0.0).rolling_n),
            climbing_w: by(&|v| v * stretch.forces_with_air(v, 0.0).climbing_n),
            bearings_w: by(&|v| v * stretch.forces_with_air(v, 0.0).bearings_n),
            drivetrain_w: by(&|v| {
                (v * stretch.total_n(v, cda_m2)).max(0.0) * (1.0 / efficiency - 1.0)
            }),
            speed_at_power_m_s: powers.iter().map(|&watts| at(watts)).collect(),
            next_10_w_m_s: powers
                .iter()
                .map(|&watts| at(watts + STEP_W) - at(watts))
                .collect(),
            speed_m_s: speeds.into(),
            power_w: powers.into(),
        }
    }
}
