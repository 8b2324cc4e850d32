//! What a ride leaves behind: samples, energy by cause, W′ balance.

use super::{Energy, Node, Ride, Sample, Setup, State, Track};
use crate::numerics::solve::within;
use crate::physics::resistance::Stretch;
use crate::physiology::power_duration::{Recovery, w_prime_balance_j};

/// Keeps samples, energy and W′ balance.
pub(super) struct Log<'a> {
    setup: &'a Setup,
    recovery: Recovery,
    threshold_w: f64,
    sample_at_m: &'a [f64],
    samples: Vec<Sample>,
    energy: Energy,
    balance_j: f64,
    least_j: f64,
    /// The last row of the yaw table, radians.
    last_yaw: Option<f64>,
    beyond_table_s: f64,
    start_u: Option<f64>,
    /// Stood at stops so far, s.
    stood_s: f64,
}

impl<'a> Log<'a> {
    pub(super) fn new(
        setup: &'a Setup,
        recovery: Recovery,
        riding_s: f64,
        sample_at_m: &'a [f64],
    ) -> Self {
        let w_prime_j = setup.power.w_prime_j;
        Self {
            setup,
            recovery,
            threshold_w: setup.power.threshold_w(riding_s),
            sample_at_m,
            samples: Vec::with_capacity(sample_at_m.len()),
            energy: Energy::default(),
            balance_j: w_prime_j,
            least_j: w_prime_j,
            last_yaw: setup.position.shape.last_yaw_deg().map(f64::to_radians),
            beyond_table_s: 0.0,
            start_u: None,
            stood_s: 0.0,
        }
    }

    fn balance_after(&self, power_w: f64, dt_s: f64) -> f64 {
        let above_w = power_w - self.threshold_w;
        w_prime_balance_j(
            self.recovery,
            self.balance_j,
            self.setup.power.w_prime_j,
            above_w,
            dt_s,
        )
    }

    pub(super) fn finish(mut self, end: State) -> Ride {
        let mass_kg = self.setup.machine.effective_mass_kg();
        self.energy.kinetic_j = mass_kg * (end.u - self.start_u.unwrap_or(end.u));
        Ride {
            time_s: end.time_s + self.stood_s,
            distance_m: end.distance_m,
            energy: self.energy,
            samples: self.samples,
            w_prime_left_j: self.balance_j,
            w_prime_least_j: self.least_j,
            beyond_table_share: self.beyond_table_s / end.time_s,
        }
    }
}

impl Track for Log<'_> {
    fn step(&mut self, stretch: &Stretch<'_>, from: State, to: State, nodes: &[Node]) {
        self.start_u.get_or_insert(from.u);
        let efficiency = self.setup.machine.drivetrain_efficiency;
        let mut road_j = 0.0;
        let mut resisted_j = 0.0;
        for node in nodes {
            let forces = stretch.forces_with_air(node.speed_m_s, node.air_n);
            let length_m = node.length_m;
            self.energy.air_j += length_m * forces.air_n;
            self.energy.rolling_j += length_m * forces.rolling_n;
            self.energy.climbing_j += length_m * forces.climbing_n;
            self.energy.bearings_j += length_m * forces.bearings_n;
            road_j += length_m * node.propulsion_n;
            resisted_j += length_m * forces.total_n();
            if self
                .last_yaw
                .is_some_and(|last_yaw| stretch.yaw(node.speed_m_s) > last_yaw)
                && node.speed_m_s > 0.0
            {
                self.beyond_table_s += length_m / node.speed_m_s;
            }
        }
        let kinetic_j = self.setup.machine.effective_mass_kg() * (to.u - from.u);
        let braked_j = road_j - resisted_j - kinetic_j;
        // Free motion closes to rounding; what a limit takes beyond that went into the brakes.
        if braked_j.abs() > 1e-9 * (road_j.abs() + kinetic_j.abs() + resisted_j.abs()) {
            self.energy.braking_j += braked_j;
        }
        let pedal_j = road_j / efficiency;
        self.energy.pedal_j += pedal_j;
        self.energy.drivetrain_j += pedal_j - road_j;

        let dt_s = to.time_s - from.time_s;
        let power_w = if dt_s > 0.0 { pedal_j / dt_s } else { 0.0 };
        while let Some(&distance_m) = self.sample_at_m.get(self.samples.len()) {
            if distance_m > to.distance_m {
                break;
            }
            let (time_s, speed_m_s) = between(from, to, distance_m);
            let w_prime_balance_j = self.balance_after(power_w, time_s - from.time_s);
            self.samples.push(Sample {
                distance_m,
                time_s: time_s + self.stood_s,
                speed_m_s,
                w_prime_balance_j,
            });
        }
        self.balance_j = self.balance_after(power_w, dt_s);
        self.least_j = self.least_j.min(self.balance_j);
    }

    fn stand(&mut self, time_s: f64) {
        self.stood_s += time_s;
    }
}

/// Time and speed between two states: time by cubic Hermite interpolation, kinetic energy linearly.
fn between(from: State, to: State, distance_m: f64) -> (f64, f64) {
    let length_m = to.distance_m - from.distance_m;
    let s = if length_m > 0.0 {
        within((distance_m - from.distance_m) / length_m, 0.0, 1.0)
    } else {
        1.0
    };
    let speed_m_s = (2.0 * (from.u + s * (to.u - from.u))).sqrt();
    if from.u <= 0.0 {
        let share = if to.u > 0.0 {
            speed_m_s / to.speed_m_s()
        } else {
            s
        };
        return (from.time_s + share * (to.time_s - from.time_s), speed_m_s);
    }
    if to.u <= 0.0 {
        // Braking to a standstill is even.
        let share = 1.0 - speed_m_s / from.speed_m_s();
        return (from.time_s + share * (to.time_s - from.time_s), speed_m_s);
    }
    let (m0, m1) = (length_m / from.speed_m_s(), length_m / to.speed_m_s());
    let (s2, s3) = (s * s, s * s * s);
    let time_s = (2.0 * s3 - 3.0 * s2 + 1.0) * from.time_s
        + (s3 - 2.0 * s2 + s) * m0
        + (3.0 * s2 - 2.0 * s3) * to.time_s
        + (s3 - s2) * m1;
    (time_s, speed_m_s)
}
