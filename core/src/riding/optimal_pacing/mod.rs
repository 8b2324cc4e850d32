//! The fastest power along a course that W′ balance allows, from the start to the line.
//!
//! The course is cut into pieces of one power each (`road`). A piece is integrated as whole rides are, with its derivatives
//! (`cell`; sitting up on steep ones, `sitting_up`), the powers are the solution of a nonlinear program (`program`) by an interior-point method (`interior_point`), and
//! what they give is ridden (`ride`, `bends`). From it come a plan of a few powers (`simple_plan`, begun at `landmarks`) and the
//! one that is best on average over riders who may be weaker or stronger than believed (`robust_plan`).
//!
//! Accuracy: within 0.02 s of direct collocation on the courses of the reference, and within 0.1 % on others
//! (`tests/oracle/pacing.py`). Where W′ comes back by the differential form the program has several local optima, which differ
//! by some tenths of a percent of the time at most; it is begun with little W′ left, where it comes back soonest, which
//! leads to the best of those found on random courses. That a position which fades with time fades the later along the road the
//! sooner the rider is there is left out of what the plan is optimised for, not of its time.

mod bends;
pub(crate) mod cell;
mod interior_point;
pub(crate) mod landmarks;
mod left_over;
mod program;
pub(crate) mod ride;
pub(crate) mod road;
pub(crate) mod robust_plan;
pub(crate) mod simple_plan;
pub(crate) mod sitting_up;

use crate::physiology::power_duration::Recovery;
use crate::riding::effort::Paced;
use crate::riding::integrated::Setup;
use interior_point::Program;
use program::{Bounds, UNITS};
pub(crate) use ride::{PlanRide, Rider, ride};
pub(crate) use road::Road;
use sitting_up::SitUp;

/// What the rider will do and how W′ comes back.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Allowed {
    /// How W′ comes back.
    pub(crate) recovery: Recovery,
    /// The least power, W; 0 where the rider may coast.
    pub(crate) least_w: f64,
    /// The greatest power, W.
    pub(crate) greatest_w: f64,
    /// How the rider sits up on steep climbs; `None` where not at all.
    pub(crate) sit_up: Option<SitUp>,
}

/// The fastest plan on a road.
#[derive(Clone, Debug)]
pub(crate) struct Fastest<'a> {
    /// The road.
    pub(crate) road: Road<'a>,
    /// The rider who rides it.
    pub(crate) rider: Rider,
    /// The ride that the plan gives, with the power on each piece.
    pub(crate) ride: PlanRide,
    /// The even effort on the same pieces, without sitting up.
    pub(crate) even: PlanRide,
    /// Whether the promised accuracy was reached.
    pub(crate) converged: bool,
}

/// W′ balance below 0 that counts as rounding, J.
pub(crate) const SPENT_J: f64 = 0.5;
/// What another power in a plan must save to be worth keeping in mind, s; assumed.
const WORTH_A_CUE_S: f64 = 1.0;

/// The fastest plan of a setup, never slower than its best even effort, which must lie between the least and the greatest power.
/// `None` where that effort cannot be ridden. A rider who sits up does so where that costs time, too: such a plan may be slower.
///
/// Where the solver reaches its cap of steps, its plan counts as far as W′ lasts, and the even effort where that is faster.
pub(crate) fn fastest<'a>(
    setup: &'a Setup,
    allowed: &Allowed,
    effort: Paced,
) -> Option<Fastest<'a>> {
    let mut road = Road::new(setup, effort.power_w);
    let mut rider = Rider {
        recovery: allowed.recovery,
        w_prime_j: setup.power.w_prime_j,
        threshold_w: setup.power.threshold_w(effort.time_s),
        left_share: f64::INFINITY,
    };
    let even = road.ridden_evenly(&rider, effort.power_w)?;
    let (begun_w, begun) = match &allowed.sit_up {
        None => (effort.power_w, even.clone()),
        Some(sit_up) => {
            road.sit_up(sit_up);
            let lasting_w =
                road.even_power_that_lasts_w(&rider, effort.power_w, allowed.least_w)?;
            (lasting_w, road.ridden_evenly(&rider, lasting_w)?)
        }
    };
    let mut program = Program::new(
        &mut road,
        Bounds {
            recovery: allowed.recovery,
            w_prime_j: rider.w_prime_j,
            threshold_w: rider.threshold_w,
            least_w: allowed.least_w,
            greatest_w: allowed.greatest_w,
        },
        &begun,
    );
    program.solve();
    rider.threshold_w = program.bounds.threshold_w;
    let converged = program.converged;
    let found_w: Vec<f64> = program
        .pieces
        .iter()
        .map(|piece| piece.power * UNITS.0)
        .collect();
    let beaten_s = match allowed.sit_up {
        None => even.time_s.min(effort.time_s),
        Some(_) => begun.time_s,
    };
    let ridden = as_far_as_w_prime_lasts(&road, &rider, begun_w, &found_w)
        .filter(|ridden| ridden.time_s < beaten_s)
        .unwrap_or(begun);
    Some(Fastest {
        road,
        rider,
        ride: ridden,
        even,
        converged,
    })
}

/// A plan, or the nearest one to it between it and an even power that W′ lasts for. `None` if there is none.
fn as_far_as_w_prime_lasts(
    road: &Road<'_>,
    rider: &Rider,
    even_w: f64,
    powers_w: &[f64],
) -> Option<PlanRide> {
    const HALVINGS: usize = 12;
    let mixed = |share: f64| {
        let ridden = ride(road, rider, |k, _| even_w + share * (powers_w[k] - even_w))?;
        (ridden.w_prime_least_j >= -SPENT_J).then_some(ridden)
    };
    if let Some(whole) = mixed(1.0) {
        return Some(whole);
    }
    let (mut low, mut high, mut best) = (0.0, 1.0, None);
    for _ in 0..HALVINGS {
        let middle = 0.5 * (low + high);
        match mixed(middle) {
            Some(lasts) => (low, best) = (middle, Some(lasts)),
            None => high = middle,
        }
    }
    best
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
        self.prepare(|k| {
            let passed = first.passed.get(k).or(first.passed.last());
            passed.map_or((0.0, 0.0, 0.0), |p| (p.time_s, p.u, p.power_w))
        });
        ride(self, rider, |_, _| power_w)
    }

    /// The greatest even power, W, up to one and no less than another, that W′ lasts for to the finish, to a thousandth of what lies
    /// between the first and the threshold. `None` where there is none.
    fn even_power_that_lasts_w(&self, rider: &Rider, most_w: f64, least_w: f64) -> Option<f64> {
        const HALVINGS: usize = 10;
        let lasts = |power_w: f64| {
            ride(self, rider, |_, _| power_w).is_some_and(|it| it.w_prime_least_j >= -SPENT_J)
        };
        let least_w = least_w.max(rider.threshold_w.min(most_w));
        if lasts(most_w) {
            return Some(most_w);
        }
        if !lasts(least_w) {
            return None;
        }
        let (mut low_w, mut high_w) = (least_w, most_w);
        for _ in 0..HALVINGS {
            let middle_w = 0.5 * (low_w + high_w);
            if lasts(middle_w) {
                low_w = middle_w;
            } else {
                high_w = middle_w;
            }
        }
        Some(low_w)
    }
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
                feeding: None,
            },
            course: Rc::new(course),
            density_kg_m3: 1.2,
            weather_change: None,
            wind,
            start: Start::Speed(8.0),
            stops: None,
            power: PowerDuration {
                cp_w: 280.0,
                w_prime_j: 18_000.0,
                peak_w: None,
                long_ride: None,
            },
        }
    }

    fn windy() -> Setup {
        setup(
            Course::simple(20_000.0, 0.0, 0.0, true),
            Wind::new(4.0, 0.0),
        )
    }

    fn hilly() -> Setup {
        let point = |distance_m, elevation_m| Point {
            distance_m,
            elevation_m,
            bearing_deg: 0.0,
            radius_m: None,
            wind_share: 1.0,
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

    const ALLOWED: Allowed = Allowed {
        recovery: Recovery::Differential,
        least_w: 0.0,
        greatest_w: 600.0,
        sit_up: None,
    };

    /// A road of many short stretches up and down, with a wind that comes from everywhere in turn.
    fn rolling(seed: u64, stretches: u32) -> Setup {
        let mut random = fastrand::Rng::with_seed(seed);
        let mut between = |a: f64, b: f64| a + (b - a) * random.f64();
        let (mut elevation_m, mut grade) = (300.0, 0.0);
        let points: Vec<Point> = (0..=stretches)
            .map(|i| {
                grade = 0.8 * grade + between(-0.02, 0.02);
                elevation_m += 100.0 * grade;
                Point {
                    distance_m: 100.0 * f64::from(i),
                    elevation_m,
                    bearing_deg: 3.0 * f64::from(i),
                    radius_m: None,
                    wind_share: 1.0,
                }
            })
            .collect();
        let mut rolling = setup(Course::profile(&points), Wind::new(3.0, 100.0));
        rolling.start = Start::Standing;
        rolling
    }

    #[test]
    fn the_solver_reaches_its_accuracy_on_roads_of_every_length() {
        for (seed, stretches) in [(1, 30), (2, 150), (3, 400), (4, 1800)] {
            let setup = rolling(seed, stretches);
            let even = paced(&Integrated, &setup, Effort::Even).unwrap();
            for recovery in [Recovery::Differential, Recovery::None, Recovery::Linear] {
                let allowed = Allowed {
                    recovery,
                    ..ALLOWED
                };
                let plan = fastest(&setup, &allowed, even).unwrap();
                assert!(plan.converged, "{stretches} stretches, {recovery:?}");
                assert!(
                    plan.ride.time_s <= even.time_s,
                    "{stretches} stretches, {recovery:?}"
                );
                assert!(
                    plan.ride.w_prime_least_j >= -SPENT_J,
                    "{:?}",
                    plan.ride.w_prime_least_j
                );
            }
        }
    }

    #[test]
    fn an_even_ride_on_the_pieces_takes_as_long_as_an_integrated_one() {
        // The launch counts as evenly accelerated, which is good to a few thousandths of a second.
        const ALIKE: f64 = 1e-5;
        for setup in [windy(), hilly(), rolling(5, 100)] {
            let even = paced(&Integrated, &setup, Effort::Even).unwrap();
            let plan = fastest(&setup, &ALLOWED, even).unwrap();
            let share = plan.even.time_s / even.time_s - 1.0;
            assert!(share.abs() < ALIKE, "{share:e}");
        }
    }

    #[test]
    fn riders_who_ride_on_alone_arrive_when_they_would_on_their_own() {
        use super::robust_plan::on_average;
        use super::simple_plan::{Style, power_at_w, simple_plan};
        let setup = hilly();
        let even = paced(&Integrated, &setup, Effort::Even).unwrap();
        let plan = fastest(&setup, &ALLOWED, even).unwrap();
        let style = Style {
            targets: 5,
            round_w: 5.0,
            powers_w: (0.0, 600.0),
        };
        let cues = simple_plan(&plan, &style).unwrap();
        let riders: Vec<Rider> = [-0.06, -0.02, 0.0, 0.03]
            .map(|share| Rider {
                threshold_w: plan.rider.threshold_w * (1.0 + share),
                left_share: 0.93,
                ..plan.rider
            })
            .to_vec();
        let alone: Vec<PlanRide> = riders
            .iter()
            .map(|rider| ride(&plan.road, rider, |cell, _| power_at_w(&cues, cell)).unwrap())
            .collect();
        let mean_s = alone.iter().map(|ride| ride.time_s).sum::<f64>() / riders.len() as f64;
        let run_out = alone.iter().filter(|ride| ride.ran_out_m.is_some()).count();
        let together = on_average(&plan.road, &riders, &cues).unwrap();
        assert!(
            (together.time_s - mean_s).abs() < 1e-6,
            "{together:?} {mean_s}"
        );
        assert_eq!(together.run_out_share, run_out as f64 / riders.len() as f64);
        assert!(run_out >= 2, "the weaker riders run out");
    }
}
