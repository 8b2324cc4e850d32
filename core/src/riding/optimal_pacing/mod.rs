//! The fastest power along a course that W′ balance allows, from the start to the line.
//!
//! The course is cut into pieces of one power each. A piece is integrated as whole rides are, with its derivatives, and the
//! powers are found by an interior-point method. Drag area that changes with time, and the threshold of W′ in long
//! rides, which depends on the finish time, are taken from the plan before; a few rounds are enough.

mod bends;
pub(crate) mod cell;
mod interior_point;
mod program;
pub(crate) mod ride;
pub(crate) mod road;

use crate::riding::effort::Paced;
use crate::riding::integrated::Setup;
use crate::physiology::power_duration::Recovery;
use interior_point::Program;
pub(crate) use program::Bounds;
pub(crate) use ride::{PlanRide, Rider, ride};
pub(crate) use road::Road;

/// What the rider will do and how W′ comes back.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Allowed {
    pub(crate) recovery: Recovery,
    /// The least power, W; 0 where the rider may coast.
    pub(crate) least_w: f64,
    /// The greatest power, W.
    pub(crate) greatest_w: f64,
}

/// The fastest plan.
#[derive(Clone, Debug)]
pub(crate) struct Fastest {
    /// The power on each piece of the road, W.
    pub(crate) powers_w: Vec<f64>,
    /// The ride that it gives.
    pub(crate) ride: PlanRide,
    /// The power above which W′ is spent, W.
    pub(crate) threshold_w: f64,
    /// Newton steps in all.
    pub(crate) steps: usize,
    /// Whether the promised accuracy was reached.
    pub(crate) converged: bool,
}

/// The fastest plan of a setup, beside its best even effort. `None` where that cannot be ridden on the pieces of the road.
pub(crate) fn fastest<'a>(
    setup: &'a Setup,
    allowed: &Allowed,
    even: Paced,
) -> Option<(Road<'a>, Fastest)> {
    let mut road = Road::new(setup, even.power_w);
    let rider = Rider {
        recovery: allowed.recovery,
        w_prime_j: setup.power.w_prime_j,
        threshold_w: setup.power.threshold_w(even.time_s),
        left_share: f64::INFINITY,
    };
    let evenly = road.ridden_evenly(&rider, even.power_w)?;
    let bounds = Bounds {
        recovery: allowed.recovery,
        w_prime_j: rider.w_prime_j,
        threshold_w: rider.threshold_w,
        least_w: allowed.least_w,
        greatest_w: allowed.greatest_w,
    };
    let plan: Vec<(f64, f64, f64)> = evenly.passed[1..]
        .iter()
        .map(|passed| {
            let share = passed.w_prime_j / rider.w_prime_j;
            (even.power_w, passed.u, share.clamp(0.02, 0.98))
        })
        .collect();
    let worth_s = 0.36 * rider.w_prime_j / even.power_w;
    let energy_worth_s = worth_s * program::UNITS.1
        / (setup.machine.drivetrain_efficiency * rider.w_prime_j * road.drive.per_mass);
    let barrier_s = 0.02 * even.time_s / (6.0 * plan.len() as f64);
    let mut program = Program::new(&mut road, bounds, &plan, even.time_s, barrier_s, [energy_worth_s, worth_s]);
    program.solve(barrier_s);
    let (steps, converged, threshold_w) =
        (program.steps, program.converged, program.bounds.threshold_w);
    let powers_w: Vec<f64> = program
        .pieces
        .iter()
        .map(|piece| piece.power * program::UNITS.0)
        .collect();
    let rider = Rider { threshold_w, ..rider };
    let ridden = ride(&road, &rider, |k, _| powers_w[k])?;
    let best = Fastest {
        powers_w,
        ride: ridden,
        threshold_w,
        steps,
        converged,
    };
    Some((road, best))
}

impl Road<'_> {
    /// Chooses the steps of every piece for an even ride at a power, W, and rides it: first as if every piece were ridden at its
    /// steady speed.
    fn ridden_evenly(&mut self, rider: &Rider, power_w: f64) -> Option<PlanRide> {
        let drive = self.drive;
        let mut coming_m_s = (2.0 * self.start_u).sqrt();
        for cell in &mut self.cells {
            cell.choose_steps(&drive, coming_m_s, power_w);
            let road_power_w = power_w * drive.efficiency;
            coming_m_s = cell.stretch.speed_m_s(road_power_w, cell.cda_m2);
        }
        let first = ride(self, rider, |_, _| power_w)?;
        self.prepare(|k| at(&first, k));
        ride(self, rider, |_, _| power_w)
    }
}

/// Time, energy and power where a piece begins; past the last one, at the finish.
fn at(ride: &PlanRide, k: usize) -> (f64, f64, f64) {
    let passed = ride.passed.get(k).or(ride.passed.last());
    passed.map_or((0.0, 0.0, 0.0), |p| (p.time_s, p.u, p.power_w))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::physics::air::Wind;
    use crate::physics::course::{Course, Point};
    use crate::physics::position::Position;
    use crate::physics::resistance::{DragShape, Machine};
    use crate::physiology::power_duration::PowerDuration;
    use crate::riding::effort::{Effort, paced};
    use crate::riding::integrated::{Integrated, Start};
    use std::rc::Rc;

    fn setup(course: Course, wind: Wind) -> Setup {
        Setup {
            machine: Machine {
                total_mass_kg: 82.0,
                rotating_mass_kg: 0.0,
                rolling_coefficient: 0.004,
                drivetrain_efficiency: 0.975,
                bearing_drag_n: 0.0,
                bearing_drag_n_s_per_m: 0.0,
                launch_force_n: 250.0,
                lateral_m_s2: 4.0,
                braking_m_s2: 3.0,
                gravity_m_s2: 9.80665,
            },
            position: Position {
                cda_m2: 0.25,
                shape: DragShape::default(),
                cp_factor: 1.0,
                w_prime_factor: 1.0,
                fade: None,
                lapses: None,
            },
            course: Rc::new(course),
            density_kg_m3: 1.2,
            wind,
            start: Start::Speed(8.0),
            power: PowerDuration {
                cp_w: 280.0,
                w_prime_j: 18_000.0,
                peak_w: None,
                long_ride: None,
            },
        }
    }

    fn windy() -> Setup {
        setup(Course::simple(20_000.0, 0.0, 0.0, true), Wind::new(4.0, 0.0))
    }

    fn hilly() -> Setup {
        let point = |distance_m, elevation_m| Point {
            distance_m,
            elevation_m,
            bearing_deg: 0.0,
            radius_m: None,
        };
        let points = [
            point(0.0, 0.0),
            point(3000.0, 0.0),
            point(5000.0, 100.0),
            point(7000.0, 0.0),
            point(10_000.0, 0.0),
        ];
        setup(Course::profile(&points), Wind::new(0.0, 0.0))
    }

    #[test]
    fn golden() {
        for (setup, recovery, want_s) in [
            (windy(), Recovery::Differential, 1761.3305),
            (windy(), Recovery::None, 1761.3305),
            (windy(), Recovery::Linear, 1761.3305),
            (hilly(), Recovery::Differential, 915.9052),
            (hilly(), Recovery::None, 920.5272),
            (hilly(), Recovery::Linear, 908.8745),
        ] {
            let even = paced(&Integrated, &setup, Effort::Even).unwrap();
            let allowed = Allowed {
                recovery,
                least_w: 0.0,
                greatest_w: 600.0,
            };
            let clock = std::time::Instant::now();
            let (road, plan) = fastest(&setup, &allowed, even).unwrap();
            println!(
                "{recovery:?} even {:.3} W {:.4} s; {} cells, T {:.4} want {want_s} diff {:+.4} least {:.3} steps {} conv {} in {:?}",
                even.power_w,
                even.time_s,
                road.cells.len(),
                plan.ride.time_s,
                plan.ride.time_s - want_s,
                plan.ride.w_prime_least_j,
                plan.steps,
                plan.converged,
                clock.elapsed()
            );
        }
    }

    #[test]
    fn stress() {
        let mut rng = fastrand::Rng::with_seed(5);
        for case in 0..60 {
            let only = std::env::var("CASE").ok().and_then(|c| c.parse::<usize>().ok());
            let mut r = |a: f64, b: f64| a + (b - a) * rng.f64();
            let n = [30, 200, 1000, 2000][case % 4];
            let length = r(5_000.0, if case % 3 == 0 { 180_000.0 } else { 60_000.0 });
            let hill = [0.0, 0.02, 0.05, 0.09][(case / 4) % 4];
            let bends = case % 5 == 0;
            let mut elevation = 100.0;
            let mut grade: f64 = 0.0;
            let mut bearing = 0.0;
            let step = length / n as f64;
            let points: Vec<Point> = (0..=n)
                .map(|i| {
                    grade = (0.8 * grade + 0.6 * hill * r(-1.0, 1.0)).clamp(-0.15, 0.15);
                    bearing += r(-30.0, 30.0);
                    let p = Point {
                        distance_m: i as f64 * step,
                        elevation_m: elevation,
                        bearing_deg: bearing,
                        radius_m: (bends && step < 100.0 && r(0.0, 1.0) < 0.08).then(|| r(8.0, 40.0)),
                    };
                    elevation += grade * step;
                    p
                })
                .collect();
            let mut s = setup(Course::profile(&points), Wind::new(r(0.0, 9.0), r(0.0, 360.0)));
            s.power.cp_w = r(160.0, 400.0);
            s.power.w_prime_j = r(6000.0, 30000.0);
            if case % 2 == 0 {
                s.power.long_ride = Some(crate::physiology::power_duration::LongRide { loss_w: 0.09 * s.power.cp_w, from_s: 1800.0 });
            }
            if case % 7 == 0 {
                s.position.fade = Some(crate::physics::position::Fade { tired_cda_m2: 0.29, begins_s: 1200.0, complete_s: 3000.0 });
            }
            if case % 6 == 1 {
                s.position.shape = DragShape { yaw_table: vec![(0.0, 1.0), (5.0, 0.99), (10.0, 0.95), (15.0, 0.93), (20.0, 0.97)], speed_exponent: 0.0, reference_airspeed_m_s: 12.0 };
            }
            s.start = [Start::Standing, Start::Rolling, Start::Speed(3.0)][case % 3];
            s.machine.rotating_mass_kg = 1.5;
            let recovery = [Recovery::Differential, Recovery::Differential, Recovery::None, Recovery::Linear][(case / 3) % 4];
            if only.is_some_and(|only| only != case) { continue; }
            let Ok(even) = paced(&Integrated, &s, Effort::Even) else { println!("{case}: no even"); continue };
            let allowed = Allowed { recovery, least_w: 0.0, greatest_w: (2.2 * even.power_w).max(600.0) };
            let clock = std::time::Instant::now();
            let Some((road, plan)) = fastest(&s, &allowed, even) else { println!("{case}: none"); continue };
            let took = clock.elapsed();
            println!("{case:2} n {n} {:.0} km hill {hill} bends {bends} {recovery:?} even {:.1} W {:.2} s; {} cells, T {:.3} saved {:+.3} least {:.3} steps {} conv {} in {took:?}",
                length / 1000.0, even.power_w, even.time_s, road.cells.len(), plan.ride.time_s, even.time_s - plan.ride.time_s, plan.ride.w_prime_least_j, plan.steps, plan.converged);
        }
    }
}
