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

/// The most rounds of drag area, threshold and plan; two or three are usual where either moves, one where neither does.
const MOST_ROUNDS: usize = 8;
/// A finish time that moves by less than this from round to round has settled, s.
const SETTLED_S: f64 = 1e-4;

/// The fastest plan of a setup, beside its best even effort. `None` where that cannot be ridden on the pieces of the road.
pub(crate) fn fastest<'a>(
    setup: &'a Setup,
    allowed: &Allowed,
    even: Paced,
) -> Option<(Road<'a>, Fastest)> {
    let mut road = Road::new(setup, even.power_w);
    let mut event_s = even.time_s;
    let mut rider = Rider {
        recovery: allowed.recovery,
        w_prime_j: setup.power.w_prime_j,
        threshold_w: setup.power.threshold_w(event_s),
        left_share: f64::INFINITY,
    };
    road.prepare(|_| (0.0, 0.5 * 64.0, even.power_w));
    let mut evenly = ride(&road, &rider, |_, _| even.power_w)?;
    road.prepare(|k| at(&evenly, k));
    evenly = ride(&road, &rider, |_, _| even.power_w)?;
    let mut best = Fastest {
        powers_w: vec![even.power_w; road.cells.len()],
        ride: evenly.clone(),
        threshold_w: rider.threshold_w,
        steps: 0,
        converged: false,
    };
    for _ in 0..MOST_ROUNDS {
        rider.threshold_w = setup.power.threshold_w(event_s);
        let bounds = Bounds {
            recovery: allowed.recovery,
            w_prime_j: setup.power.w_prime_j,
            threshold_w: rider.threshold_w,
            least_w: allowed.least_w,
            greatest_w: allowed.greatest_w,
        };
        // A little below the even effort there is room on every side.
        const BELOW: f64 = 0.98;
        let begin = ride(&road, &rider, |_, _| BELOW * even.power_w)?;
        let plan: Vec<(f64, f64, f64)> = begin.passed[1..]
            .iter()
            .map(|passed| {
                let share = passed.w_prime_j / rider.w_prime_j;
                (BELOW * even.power_w, passed.u, share.clamp(0.02, 0.98))
            })
            .collect();
        let worth_s = 0.36 * rider.w_prime_j / even.power_w;
        let energy_worth_s = worth_s * program::UNITS.1
            / (setup.machine.drivetrain_efficiency * rider.w_prime_j * road.drive.per_mass);
        let barrier_s = 0.02 * even.time_s / (6.0 * plan.len() as f64);
        let mut program = Program::new(
            &road,
            bounds,
            &plan,
            barrier_s,
            [energy_worth_s, worth_s],
        );
        program.solve(barrier_s);
        let (steps, converged) = (best.steps + program.steps, program.converged);
        let powers_w: Vec<f64> = program
            .pieces
            .iter()
            .map(|piece| piece.power * program::UNITS.0)
            .collect();
        let ridden = ride(&road, &rider, |k, _| powers_w[k])?;
        let moved_s = (ridden.time_s - event_s).abs();
        event_s = ridden.time_s;
        best = Fastest {
            powers_w,
            ride: ridden,
            threshold_w: rider.threshold_w,
            steps,
            converged,
        };
        let fixed = setup.position.fade.is_none() && setup.power.long_ride.is_none();
        if fixed || moved_s < SETTLED_S {
            break;
        }
        road.prepare(|k| at(&best.ride, k));
    }
    Some((road, best))
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
}
