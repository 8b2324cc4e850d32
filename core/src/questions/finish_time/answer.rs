//! What the question answers.

use serde::Serialize;

use super::day::Day;
use super::stops::StopsCost;
use crate::inputs::error::Warning;
use crate::inputs::quantity::{Column, Figure};
use crate::riding::integrated::{Energy, Ride, Sample};
use crate::scenario::propagation::Contribution;

/// The ride at one distance.
#[derive(Clone, Copy, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Split {
    /// From the start, m.
    pub distance_m: f64,
    /// Since the start, s.
    pub time_s: f64,
    /// Mean speed since the split before, m/s.
    pub speed_m_s: f64,
    /// W′ balance, J.
    pub w_prime_balance_j: f64,
}

impl Split {
    /// Those of a ride, at its samples and at the finish.
    pub(super) fn of(ride: &Ride) -> Vec<Self> {
        let finish = Sample {
            distance_m: ride.distance_m,
            time_s: ride.time_s,
            speed_m_s: 0.0,
            w_prime_balance_j: ride.w_prime_left_j,
        };
        let (mut before_m, mut before_s) = (0.0, 0.0);
        let passed = ride
            .samples
            .iter()
            .filter(|sample| sample.distance_m < ride.distance_m - 0.5);
        passed
            .copied()
            .chain([finish])
            .map(|sample| {
                let speed_m_s = (sample.distance_m - before_m) / (sample.time_s - before_s);
                (before_m, before_s) = (sample.distance_m, sample.time_s);
                let Sample {
                    distance_m,
                    time_s,
                    w_prime_balance_j,
                    ..
                } = sample;
                Self {
                    distance_m,
                    time_s,
                    speed_m_s,
                    w_prime_balance_j,
                }
            })
            .collect()
    }
}

/// W′ left at the finish by each form of recovery, J.
#[derive(Clone, Copy, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct WPrimeForms {
    /// The form used: recovery slows as W′ fills.
    pub differential_j: f64,
    /// Nothing comes back.
    pub no_recovery_j: f64,
    /// All comes back, watt for watt.
    pub linear_j: f64,
}

/// Energy of the ride by where it went, J.
#[derive(Clone, Copy, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct EnergyByCause {
    /// Work at the pedals: the sum of all others.
    pub pedal: f64,
    /// Lost in the drivetrain.
    pub drivetrain: f64,
    /// Into the air.
    pub air: f64,
    /// Into the tyres.
    pub rolling: f64,
    /// Into height.
    pub climbing: f64,
    /// Into the wheel bearings.
    pub bearings: f64,
    /// Into the brakes.
    pub braking: f64,
    /// Into speed.
    pub kinetic: f64,
}

impl From<Energy> for EnergyByCause {
    fn from(energy: Energy) -> Self {
        Self {
            pedal: energy.pedal_j,
            drivetrain: energy.drivetrain_j,
            air: energy.air_j,
            rolling: energy.rolling_j,
            climbing: energy.climbing_j,
            bearings: energy.bearings_j,
            braking: energy.braking_j,
            kinetic: energy.kinetic_j,
        }
    }
}

/// The answer.
#[derive(Clone, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Answer {
    /// Finish time with all its doubt: the inputs' and the model's own.
    pub time_s: Figure,
    /// The chance that the finish time is at most the target, 0 to 1: of a normal distribution with that time's value and spread.
    /// `null` without a target.
    pub chance_of_target: Option<f64>,
    /// The inputs' share of that doubt, one standard deviation, s.
    pub input_sd_s: f64,
    /// The model's own share, one standard deviation, s.
    pub model_sd_s: f64,
    /// The inputs' share of the doubt of the distance, for a fixed time, m.
    pub input_sd_m: f64,
    /// The model's own share of it, m.
    pub model_sd_m: f64,
    /// The inputs' share of the doubt of the power, for a target time or an even effort, W.
    pub input_sd_w: f64,
    /// The model's own share of it, for a target time, W.
    pub model_sd_w: f64,
    /// How far.
    pub distance_m: Figure,
    /// The power ridden at.
    pub power_w: Figure,
    /// The power that this rider's curve allows for this time.
    pub sustainable_w: f64,
    /// Distance over time.
    pub average_speed_m_s: Figure,
    /// W′ balance at the finish; below 0 if the ride asks for more than the rider has.
    pub w_prime_left_j: f64,
    /// The least W′ balance on the way.
    pub w_prime_least_j: f64,
    /// W′ balance at the finish by each form of recovery.
    pub w_prime_forms: WPrimeForms,
    /// The ride at even distances and at the finish.
    pub splits: Vec<Split>,
    /// Where the work went.
    pub energy_j: EnergyByCause,
    /// Share of the work on the road that went into the air.
    pub aero_share: f64,
    /// Drag area averaged over the ride.
    pub mean_cda_m2: f64,
    /// Density of the air.
    pub density_kg_m3: f64,
    /// Wind at rider height.
    pub rider_wind_m_s: f64,
    /// Finish time at the same power in still air of the same density, if there is wind.
    pub still_time_s: Option<f64>,
    /// Finish time at the same power in the standard atmosphere's air at sea level, the wind as it is.
    pub standard_time_s: Option<f64>,
    /// What the day does to the ride, where it has wind or changes.
    pub day: Option<Day>,
    /// What stops and feeding cost, where there are any and the finish time was asked for.
    pub stops: Option<StopsCost>,
    /// Which inputs carry the doubt of what was asked for: the time, the distance, or the power that a target time needs.
    pub surer: Vec<Contribution>,
    /// What is doubtful.
    pub warnings: Vec<Warning>,
    /// Curves.
    pub columns: Columns,
}

/// Curves over distance: of the ride, and of other distances on a course of this kind.
#[derive(Clone, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Columns {
    /// Distances along the ride, m.
    pub along_m: Column,
    /// Speed there, m/s.
    pub along_speed_m_s: Column,
    /// W′ balance there, J.
    pub along_w_prime_j: Column,
    /// Lengths of course, evenly spaced in their logarithm, m.
    pub distance_m: Column,
    /// Time of the best even effort over each, s.
    pub time_s: Column,
    /// Average speed of that effort, m/s.
    pub average_speed_m_s: Column,
    /// Its power, W.
    pub power_w: Column,
}
