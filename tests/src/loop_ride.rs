//! The simulated test ride that drag estimation is checked with: nine laps of a circular loop, its hills and powers known.
//!
//! The loop, the ride and its noise are those of a description with acceptance bands worked out from 2,000 replicates of an
//! independent program; midpoint integration in steps of 0.05 s, recorded once a second.

use std::f64::consts::TAU;

use fasterby_core::columns::{Columns, Samples};
use fasterby_core::resistance::Machine;
use fasterby_core::rig::Rig;

/// Horizontal length of the loop, m.
const LOOP_M: f64 = 1600.0;
/// Once round the hilly loop along the road, m: the length of the curve, by quadrature.
const HILLY_PATH_M: f64 = 1_600.346_878_2;
const LAPS: usize = 9;
const STEP_S: f64 = 0.05;
const STEPS_IN_A_SECOND: usize = 20;
/// Power follows its target with this time constant, s.
const FOLLOWS_S: f64 = 8.0;

/// The drag area that was ridden with, m².
pub const TRUE_CDA_M2: f64 = 0.25;
/// The rolling coefficient that was ridden on.
pub const TRUE_ROLLING: f64 = 0.004;
/// The air's density, kg/m³.
pub const DENSITY_KG_M3: f64 = 1.2;

/// Rider and bicycle of the ride, with a rolling coefficient that may be another than the true one.
pub fn rig(rolling_coefficient: f64) -> Rig {
    let machine = Machine {
        total_mass_kg: 85.0,
        rotating_mass_kg: 1.2,
        rolling_coefficient,
        drivetrain_efficiency: 0.976,
        bearing_drag_n: 0.0,
        bearing_drag_n_s_per_m: 0.0,
        launch_force_n: 250.0,
        lateral_m_s2: 4.0,
        braking_m_s2: 3.0,
        gravity_m_s2: 9.80665,
    };
    Rig::new(machine, DENSITY_KG_M3)
}

/// What kind of ride.
#[derive(Clone, Copy, Debug)]
pub struct LoopRide {
    /// Whether the loop has its hills.
    pub hilly: bool,
    /// Target powers of the second, third, fourth … lap in turn, W.
    pub powers_w: [f64; 2],
    /// Speed of the wind, m/s.
    pub wind_m_s: f64,
    /// Where it comes from, radians from the heading at the start.
    pub wind_from_rad: f64,
    /// Whether the component across the road resists too, as it does where drag lies along the apparent wind. The description
    /// counts the head component alone.
    pub across: bool,
}

impl LoopRide {
    /// The main ride: hills, 150 and 300 W by turns, calm air.
    pub const MAIN: Self = Self {
        hilly: true,
        powers_w: [150.0, 300.0],
        wind_m_s: 0.0,
        wind_from_rad: 0.0,
        across: false,
    };
}

/// A ride as it was recorded.
#[derive(Clone, Debug, Default)]
pub struct Recorded {
    /// s.
    pub time_s: Vec<f64>,
    /// m/s.
    pub speed_m_s: Vec<f64>,
    /// W.
    pub power_w: Vec<f64>,
    /// m.
    pub elevation_m: Vec<f64>,
    /// m.
    pub distance_m: Vec<f64>,
    /// Degrees.
    pub bearing_deg: Vec<f64>,
    /// When each lap ends, s; the first is not counted.
    pub ends_s: Vec<f64>,
}

impl LoopRide {
    fn height_m(&self, x: f64) -> f64 {
        let angle = TAU * x / LOOP_M;
        match self.hilly {
            true => 6.0 * angle.sin() + 1.5 * (3.0 * angle + 0.7).sin(),
            false => 0.0,
        }
    }

    fn grade(&self, x: f64) -> f64 {
        let (k, angle) = (TAU / LOOP_M, TAU * x / LOOP_M);
        match self.hilly {
            true => k * (6.0 * angle.cos() + 4.5 * (3.0 * angle + 0.7).cos()),
            false => 0.0,
        }
    }

    /// Acceleration along the road, m/s², and the horizontal share of the way.
    fn moves(&self, x: f64, v: f64, power_w: f64) -> (f64, f64) {
        let rig = rig(TRUE_ROLLING);
        let grade = self.grade(x);
        let level = 1.0 / grade.hypot(1.0);
        let from_ahead = TAU * x / LOOP_M - self.wind_from_rad;
        let through = v + self.wind_m_s * from_ahead.cos();
        let across = match self.across {
            true => self.wind_m_s * from_ahead.sin(),
            false => 0.0,
        };
        let air_n = 0.5 * DENSITY_KG_M3 * TRUE_CDA_M2 * through.hypot(across) * through;
        let road_n = rig.weight_n() * level * (TRUE_ROLLING + grade);
        let push_n = rig.machine.drivetrain_efficiency * power_w / v;
        (
            (push_n - air_n - road_n) / rig.machine.effective_mass_kg(),
            level,
        )
    }

    /// Rides.
    pub fn ride(&self) -> Recorded {
        let mut ride = Recorded::default();
        let (mut x, mut s, mut v, mut power_w) = (0.0, 0.0, 8.0, 220.0);
        let path_m = if self.hilly { HILLY_PATH_M } else { LOOP_M };
        for step in 0.. {
            if step % STEPS_IN_A_SECOND == 0 {
                ride.time_s.push(step as f64 * STEP_S);
                ride.speed_m_s.push(v);
                ride.power_w.push(power_w);
                ride.elevation_m.push(self.height_m(x));
                ride.distance_m.push(s);
                ride.bearing_deg.push((x / LOOP_M * 360.0) % 360.0);
                if s > LAPS as f64 * path_m {
                    break;
                }
            }
            let lap = (x / LOOP_M) as usize;
            let target_w = match lap {
                0 => 220.0,
                _ => self.powers_w[(lap - 1) % 2],
            };
            let (a, level) = self.moves(x, v, power_w);
            let half_s = 0.5 * STEP_S;
            let middle_w = power_w + (target_w - power_w) / FOLLOWS_S * half_s;
            let (middle_v, middle_x) = (v + a * half_s, x + v * level * half_s);
            let (a, level) = self.moves(middle_x, middle_v, middle_w);
            v += a * STEP_S;
            x += middle_v * level * STEP_S;
            s += middle_v * STEP_S;
            power_w += (target_w - middle_w) / FOLLOWS_S * STEP_S;
        }
        ride.ends_s = (1..=LAPS)
            .map(|lap| ride.time_at(lap as f64 * path_m))
            .collect();
        ride
    }
}

/// How a recording differs from the ride.
#[derive(Clone, Copy, Debug)]
pub struct Noise {
    /// Of each power, as a share.
    pub power_share: f64,
    /// Of each speed, m/s.
    pub speed_m_s: f64,
    /// Of a lap's powers together, as a share.
    pub drift_share: f64,
    /// By what share the meter reads high.
    pub bias_share: f64,
}

impl Noise {
    /// That of the main test.
    pub const MAIN: Self = Self {
        power_share: 0.015,
        speed_m_s: 0.03,
        drift_share: 0.005,
        bias_share: 0.0,
    };
}

impl Recorded {
    fn time_at(&self, distance_m: f64) -> f64 {
        let next = self
            .distance_m
            .partition_point(|&s| s < distance_m)
            .clamp(1, self.distance_m.len() - 1);
        let (a, b) = (self.distance_m[next - 1], self.distance_m[next]);
        let share = (distance_m - a) / (b - a);
        self.time_s[next - 1] + share * (self.time_s[next] - self.time_s[next - 1])
    }

    /// The same ride with noise; `normal` gives standard normal numbers.
    pub fn noisy(&self, noise: &Noise, normal: &mut dyn FnMut() -> f64) -> Self {
        let mut noisy = self.clone();
        let drifts: Vec<f64> = (0..=self.ends_s.len())
            .map(|_| noise.drift_share * normal())
            .collect();
        for i in 0..self.time_s.len() {
            let lap = self
                .ends_s
                .partition_point(|&end_s| end_s <= self.time_s[i]);
            noisy.power_w[i] *= (1.0 + noise.bias_share)
                * (1.0 + drifts[lap])
                * (1.0 + noise.power_share * normal());
            noisy.speed_m_s[i] += noise.speed_m_s * normal();
        }
        noisy
    }

    /// Its columns.
    pub fn columns(&self) -> Columns {
        Columns {
            time_s: Samples(self.time_s.clone()),
            speed_m_s: Samples(self.speed_m_s.clone()),
            power_w: Samples(self.power_w.clone()),
            distance_m: Samples(self.distance_m.clone()),
            elevation_m: Samples(self.elevation_m.clone()),
            bearing_deg: Samples(self.bearing_deg.clone()),
        }
    }
}
