//! A short piece of road that is ridden at one power: kinetic energy and time at its end, with derivatives.

use super::sitting_up::Upright;
use crate::numerics::second_order::Number;
use crate::physics::resistance::{Machine, Stretch};
use crate::riding::integrated::bends::Limit;

/// What turns power into motion on every piece of a course.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Drive {
    /// Share of pedal power that reaches the road.
    pub(crate) efficiency: f64,
    /// One over the mass that resists a change of speed, 1/kg.
    pub(crate) per_mass: f64,
    /// The most propulsive force, N.
    pub(crate) launch_n: f64,
}

impl Drive {
    /// Of a rider and bicycle.
    pub(crate) fn new(machine: &Machine) -> Self {
        Self {
            efficiency: machine.drivetrain_efficiency,
            per_mass: 1.0 / machine.effective_mass_kg(),
            launch_n: machine.launch_force_n,
        }
    }
}

/// A piece of road that is ridden at one power.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Cell<'a> {
    /// Where it begins, m from the start.
    pub(crate) from_m: f64,
    /// Its length, m.
    pub(crate) length_m: f64,
    /// Which stretch of the course it belongs to.
    pub(crate) segment: usize,
    /// The road.
    pub(crate) stretch: Stretch<'a>,
    /// Drag area there, m²; of a fading position, that of the time at which the rider comes by.
    pub(crate) cda_m2: f64,
    /// What the rider has who sits up there.
    pub(crate) upright: Option<Upright>,
    /// The bends' limit of speed, where the course has bends.
    pub(crate) limit: Option<Limit>,
    /// How many steps it is integrated in.
    pub(crate) steps: u32,
    /// Whether the first steps are the shorter ones, as they must be where the rider sets off from rest.
    pub(crate) graded: bool,
}

/// Steps a relaxation length is cut into: as fine as those of a whole ride at constant power.
const STEPS_PER_RELAXATION: f64 = 2.5;
/// The most steps of a piece.
const MOST_STEPS: f64 = 40.0;
/// Slower than this speed is not looked at when steps are chosen, m/s.
const SLOWEST_M_S: f64 = 0.5;
/// Steps of a piece that begins at rest.
const STEPS_FROM_REST: u32 = 28;
/// How strongly those are graded: the distance covered grows about with the cube of speed.
const GRADING: f64 = 2.5;

impl Cell<'_> {
    /// Chooses the steps, for a rider who comes at about this speed with about this power.
    pub(crate) fn choose_steps(&mut self, drive: &Drive, speed_m_s: f64, power_w: f64) {
        let launch_m_s = power_w * drive.efficiency / drive.launch_n;
        self.graded = speed_m_s <= launch_m_s;
        if self.graded {
            self.steps = STEPS_FROM_REST;
            return;
        }
        // Speed relaxes the sooner the slower it is.
        let steady_m_s = self
            .stretch
            .speed_m_s(power_w * drive.efficiency, self.cda_m2);
        let slow_m_s = speed_m_s.min(steady_m_s.max(launch_m_s)).max(SLOWEST_M_S);
        let air_slope = self.stretch.air_and_slope(slow_m_s, self.cda_m2).1;
        let pushing = power_w * drive.efficiency / (slow_m_s * slow_m_s);
        let relaxation = (pushing + air_slope.abs()) * drive.per_mass / slow_m_s;
        let steps = (STEPS_PER_RELAXATION * relaxation * self.length_m).ceil();
        self.steps = steps.clamp(1.0, MOST_STEPS) as u32;
    }

    /// The share of the piece that lies behind after so many of its steps.
    fn share(&self, step: u32) -> f64 {
        let even = f64::from(step) / f64::from(self.steps);
        if self.graded {
            even.powf(GRADING)
        } else {
            even
        }
    }

    /// Kinetic energy per effective mass (`u = v²/2`, m²/s²) and time, s, at the end of the piece, from the energy at its
    /// beginning and the power, W. `None` where the rider comes to a stop.
    ///
    /// The launch, in which the force at the pedals is the limit, counts as evenly accelerated: it takes half a second. From
    /// there on the classical fourth-order Runge–Kutta method, as for whole rides; agrees with them to 1e-6.
    pub(crate) fn through<N: Number>(&self, drive: &Drive, u: N, power: N) -> Option<(N, N)> {
        let road_power = power.times(drive.efficiency);
        let (u, time, behind_m) = self.launched(drive, u, road_power, self.length_m)?;
        let left = N::constant(self.length_m) - behind_m;
        if left.value() <= 0.0 {
            return Some((u, time));
        }
        let (mut u, mut time, mut before) = (u, time, 0.0);
        for step in 1..=self.steps {
            let behind = self.share(step);
            let h = left.times(behind - before);
            (u, time) = self.stepped(drive, u, time, road_power, h)?;
            before = behind;
        }
        Some((u, time))
    }

    /// From slower than the launch force is the limit up to where power is, or to the end of a length: energy, time and how
    /// far that went.
    fn launched<N: Number>(
        &self,
        drive: &Drive,
        u: N,
        road_power: N,
        length_m: f64,
    ) -> Option<(N, N, N)> {
        let nothing = N::constant(0.0);
        let to = road_power.times(1.0 / drive.launch_n);
        let to_u = (to * to).times(0.5);
        if u.value() >= to_u.value() {
            return (u.value() > 0.0).then_some((u, nothing, nothing));
        }
        let from_m_s = (2.0 * u.value()).sqrt();
        let middle_m_s = 0.5 * (from_m_s + to.value());
        let net_n = drive.launch_n - self.stretch.total_n(middle_m_s, self.cda_m2);
        let gain = net_n * drive.per_mass;
        if gain <= 0.0 {
            // A hill too steep for the launch force is ridden up as long as the speed lasts.
            return (u.value() > 0.0).then_some((u, nothing, nothing));
        }
        let length = (to_u - u).times(1.0 / gain);
        if length.value() > length_m {
            // The piece ends before.
            let after = u + N::constant(gain * length_m);
            let from = if from_m_s > 0.0 {
                u.times(2.0).sqrt()
            } else {
                nothing
            };
            let time = (after.times(2.0).sqrt() - from).times(1.0 / gain);
            return Some((after, time, N::constant(length_m)));
        }
        let from = if from_m_s > 0.0 {
            u.times(2.0).sqrt()
        } else {
            nothing
        };
        Some((to_u, (to - from).times(1.0 / gain), length))
    }

    /// One step of the Runge–Kutta method. `None` where the rider comes to a stop.
    #[inline(always)]
    fn stepped<N: Number>(
        &self,
        drive: &Drive,
        u: N,
        time: N,
        road_power: N,
        h: N,
    ) -> Option<(N, N)> {
        let slope = |u: N| {
            (u.value() > 0.0).then(|| {
                let speed = u.times(2.0).sqrt();
                let per_speed = speed.inverse();
                let driven = road_power * per_speed;
                let driven = if driven.value() > drive.launch_n {
                    N::constant(drive.launch_n)
                } else {
                    driven
                };
                let (force, first, second) = self
                    .stretch
                    .total_to_second_order(speed.value(), self.cda_m2);
                let resisted = speed.chain(force, first, second);
                ((driven - resisted).times(drive.per_mass), per_speed)
            })
        };
        let half = h.times(0.5);
        let (du1, dt1) = slope(u)?;
        let (du2, dt2) = slope(u + half * du1)?;
        let (du3, dt3) = slope(u + half * du2)?;
        let (du4, dt4) = slope(u + h * du3)?;
        let sixth = h.times(1.0 / 6.0);
        let after = u + sixth * (du1 + (du2 + du3).times(2.0) + du4);
        let later = time + sixth * (dt1 + (dt2 + dt3).times(2.0) + dt4);
        (after.value() > 0.0 && after.value().is_finite()).then_some((after, later))
    }
}
