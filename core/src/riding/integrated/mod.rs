//! A ride at constant power, followed metre by metre to the line.
//!
//! The state is kinetic energy per effective mass, `u = v²/2`, with distance along the road as the independent variable:
//! `du/dx = (min(η P / v, launch force) − F(v)) / m`, `dt/dx = 1/v`. Energy by cause is summed with the same weights as
//! the state, so that it closes to rounding.
//!
//! A ride: kinetic energy over distance by the classical fourth-order Runge–Kutta method, in steps of a fixed share of
//! the length in which speed relaxes, longer ones once it only follows a changing position, and one step to the end of a
//! stretch once it has settled. The launch is a quadrature over speed, where there is no singularity. Energy by cause is
//! summed with the same weights as the state and so closes to rounding. Bends cap speed from behind: a limit for each
//! stretch is worked out from the finish backwards. At a stop that limit ends at nothing, and what follows is a ride from rest.

pub(crate) mod bends;
mod log;

use std::rc::Rc;

use crate::numerics::solve::{gauss_points, root};
use crate::physics::air::{RoadWind, Weather, WeatherChange, Wind};
use crate::physics::course::{Course, Segment};
use crate::physics::position::Position;
use crate::physics::resistance::{Machine, Stretch};
use crate::physiology::power_duration::{PowerDuration, Recovery};
#[cfg(feature = "all")]
use crate::riding::stops::Stops;
use bends::{AT_ANY_SPEED, AT_REST, Limit, follow_limit, limits, settled_until_m, up_to_limit};
use log::Log;

/// How the ride begins.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Start {
    /// From rest.
    Standing,
    /// At the steady speed of the first metres.
    Rolling,
    /// At this speed, m/s.
    Speed(f64),
}

/// Everything a ride depends on but the power.
#[derive(Clone, Debug, PartialEq)]
pub struct Setup {
    /// Rider and bicycle.
    pub machine: Machine,
    /// The position ridden.
    pub position: Position,
    /// The road.
    pub course: Rc<Course>,
    /// Air density, kg/m³; at the start, where the weather changes.
    pub density_kg_m3: f64,
    /// Wind at rider height; at the start, where the weather changes.
    pub wind: Wind,
    /// How the weather changes on the way, if it does. No stretch of the course is long then.
    pub weather_change: Option<WeatherChange>,
    /// The start.
    pub start: Start,
    /// Where the rider stops on the way, and for how long.
    #[cfg(feature = "all")]
    pub stops: Option<Stops>,
    /// The rider's power–duration relation in this position.
    pub power: PowerDuration,
}

impl Setup {
    /// A stretch of the course in the weather of a time, s after the start.
    #[inline]
    pub fn stretch(&self, segment: &Segment, time_s: f64) -> Stretch<'_> {
        let weather = self.weather_at(time_s);
        let wind = segment.heading.map_or(RoadWind::default(), |heading| {
            let RoadWind {
                head_m_s,
                cross_m_s,
            } = weather.wind.along(heading);
            RoadWind {
                head_m_s: segment.wind_share * head_m_s,
                cross_m_s: segment.wind_share * cross_m_s,
            }
        });
        Stretch::new(
            &self.machine,
            &self.position.shape,
            weather.density_kg_m3,
            wind,
            segment.slope,
        )
    }

    /// The weather at a time, s after the start.
    #[inline]
    pub(crate) fn weather_at(&self, time_s: f64) -> Weather {
        match &self.weather_change {
            Some(change) => change.at(time_s),
            None => Weather {
                wind: self.wind,
                density_kg_m3: self.density_kg_m3,
            },
        }
    }

    /// The same in the weather of its middle, for a rider who comes to it at this time with a speed, m/s.
    #[inline]
    pub(crate) fn stretch_from(
        &self,
        segment: &Segment,
        time_s: f64,
        speed_m_s: f64,
    ) -> Stretch<'_> {
        // From a standstill nobody knows how long it will take: there the weather is that of its beginning.
        const KNOWN_FROM_M_S: f64 = 1.0;
        let half_s = if self.weather_change.is_some() && speed_m_s > KNOWN_FROM_M_S {
            0.5 * segment.length_m / speed_m_s
        } else {
            0.0
        };
        self.stretch(segment, time_s + half_s)
    }

    /// The same setup with every weather of its ride made another one.
    #[cfg(feature = "all")]
    pub(crate) fn in_other_weather(&self, other: impl Fn(Weather) -> Weather) -> Self {
        let start = other(self.weather_at(0.0));
        Self {
            wind: start.wind,
            density_kg_m3: start.density_kg_m3,
            weather_change: self.weather_change.map(|change| change.of_each(other)),
            ..self.clone()
        }
    }

    /// The same setup for a rider who starts so much later, s.
    #[cfg(feature = "all")]
    pub(crate) fn starting_later(&self, by_s: f64) -> Self {
        let start = self.weather_at(by_s);
        Self {
            wind: start.wind,
            density_kg_m3: start.density_kg_m3,
            weather_change: self.weather_change.map(|change| WeatherChange {
                from_s: change.from_s - by_s,
                until_s: change.until_s - by_s,
                ..change
            }),
            ..self.clone()
        }
    }

    /// Head wind, m/s, where and when a ride passes, for ascending samples of it; `None` where the road does not say which way it
    /// leads.
    #[cfg(feature = "all")]
    pub(crate) fn head_winds_m_s(&self, samples: &[Sample]) -> Vec<Option<f64>> {
        let mut segments = self.course.segments.iter().peekable();
        let mut begins_m = 0.0;
        let head = |sample: &Sample| {
            while let Some(segment) = segments.peek() {
                let ends_m = begins_m + segment.length_m;
                if sample.distance_m < ends_m {
                    break;
                }
                begins_m = ends_m;
                segments.next();
            }
            // The last sample may lie at the line.
            let segment = segments.peek().copied().or(self.course.segments.last())?;
            let heading = segment.heading?;
            let wind = self.weather_at(sample.time_s).wind.along(heading);
            Some(segment.wind_share * wind.head_m_s)
        };
        samples.iter().map(head).collect()
    }

    /// The first stretch of the course, if there is one.
    pub fn first_stretch(&self) -> Option<Stretch<'_>> {
        self.course
            .segments
            .first()
            .map(|segment| self.stretch(segment, 0.0))
    }

    /// The same setup in another position.
    pub fn in_position(&self, position: Position) -> Self {
        Self {
            position,
            ..self.clone()
        }
    }
}

/// The rider comes to a stop: this power does not carry them over the course.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Stall {
    /// How far the rider got, m.
    pub distance_m: f64,
    /// What the road takes at a standstill, N, where that is more than the rider can ever push; `None` where it is the power
    /// that is too little.
    pub push_n: Option<f64>,
}

/// Something that gives finish times.
pub trait TimeModel {
    /// Finish time, s, at a constant power.
    ///
    /// # Errors
    /// [`Stall`] where the rider comes to a stop.
    fn time_s(&self, setup: &Setup, power_w: f64) -> Result<f64, Stall>;
}

/// The time model that integrates the ride to the line.
#[derive(Clone, Copy, Debug)]
pub struct Integrated;

impl TimeModel for Integrated {
    fn time_s(&self, setup: &Setup, power_w: f64) -> Result<f64, Stall> {
        time_s(setup, power_w)
    }
}

/// Energy of a ride by where it went, J. Pedal work equals the sum of all others.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Energy {
    /// Work at the pedals.
    pub pedal_j: f64,
    /// Lost in the drivetrain.
    pub drivetrain_j: f64,
    /// Into the air.
    pub air_j: f64,
    /// Into the tyres.
    pub rolling_j: f64,
    /// Into height; negative where the course falls.
    pub climbing_j: f64,
    /// Into the wheel bearings.
    pub bearings_j: f64,
    /// Into the brakes.
    pub braking_j: f64,
    /// Into speed: at the finish less at the start.
    pub kinetic_j: f64,
}

impl Energy {
    /// Share of the work against road load that went into the air.
    pub fn aero_share(&self) -> f64 {
        let load_j = self.air_j + self.rolling_j + self.climbing_j + self.bearings_j;
        if load_j == 0.0 {
            0.0
        } else {
            self.air_j / load_j
        }
    }
}

/// The ride as it stood at one distance.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Sample {
    /// Along the road from the start, m.
    pub distance_m: f64,
    /// Since the start, s.
    pub time_s: f64,
    /// Over the ground, m/s.
    pub speed_m_s: f64,
    /// W′ balance, J.
    pub w_prime_balance_j: f64,
}

/// A ride in full.
#[derive(Clone, Debug, PartialEq)]
pub struct Ride {
    /// Finish time, s.
    pub time_s: f64,
    /// The course's length, m.
    pub distance_m: f64,
    /// Energy by cause.
    pub energy: Energy,
    /// The ride at the distances asked for.
    pub samples: Vec<Sample>,
    /// W′ balance at the finish, J; below 0 if the ride asks more than the rider has.
    pub w_prime_left_j: f64,
    /// The least W′ balance on the way, J.
    pub w_prime_least_j: f64,
    /// The share of the time in which the apparent wind comes from beyond the last row of the yaw table; 0 without a table.
    pub beyond_table_share: f64,
}

/// Steps a relaxation length is cut into: with it a ride agrees with an eighth-order reference within 1e-5, and mostly
/// within 1e-6.
const STEPS_PER_RELAXATION: f64 = 2.5;
/// As many times more where a yaw table has kinks to be stepped over.
const STEPS_OVER_KINKS: f64 = 3.0;
/// The same once speed follows a slowly changing steady one. The method is stable from 0.36 up.
const STEPS_FOLLOWING: f64 = 0.7;
/// Speed counts as following when what is left of the transient is this share of it.
const FOLLOWING: f64 = 2e-3;
/// Speed counts as settled when what is left of the transient is this share of it.
const SETTLED: f64 = 1e-11;
/// A stretch is cut into at most about this many steps once the rider follows the steady speed of a changing position;
/// a shorter relaxation than that is followed as steady.
const MOST_STEPS_A_STRETCH: f64 = 4000.0;
/// Below this speed and still slowing, the rider has stalled, m/s.
pub(crate) const STALL_M_S: f64 = 0.05;
/// Share by which speed may pass a bend's limit before it counts.
const CAP_SLACK: f64 = 1e-12;

/// Finish time, s, at a constant power.
///
/// # Errors
/// [`Stall`] where the rider comes to a stop.
pub fn time_s(setup: &Setup, power_w: f64) -> Result<f64, Stall> {
    let (end, stood_s) = follow(setup, power_w, &mut Untracked)?;
    Ok(end.time_s + stood_s)
}

/// A ride in full, with samples at ascending distances.
///
/// # Errors
/// [`Stall`] where the rider comes to a stop.
pub fn ride(
    setup: &Setup,
    power_w: f64,
    recovery: Recovery,
    sample_at_m: &[f64],
) -> Result<Ride, Stall> {
    let (end, _) = follow(setup, power_w, &mut Untracked)?;
    let mut log = Log::new(setup, recovery, end.time_s, sample_at_m);
    let (end, _) = follow(setup, power_w, &mut log)?;
    Ok(log.finish(end))
}

/// Where the rider is, and how fast.
#[derive(Clone, Copy, Debug)]
struct State {
    /// Along the road, m.
    distance_m: f64,
    /// Kinetic energy per effective mass, m²/s².
    u: f64,
    /// Ridden since the start, without the standing at stops, s.
    time_s: f64,
}

impl State {
    fn speed_m_s(&self) -> f64 {
        (2.0 * self.u).sqrt()
    }
}

/// One point inside a step: how much of the step's distance it stands for, and what was pushed there.
#[derive(Clone, Copy, Debug, Default)]
struct Node {
    length_m: f64,
    speed_m_s: f64,
    propulsion_n: f64,
    air_n: f64,
}

/// What the ride tells as it goes.
trait Track {
    /// A step from one state to the next on a stretch; `nodes` add up to its length.
    fn step(&mut self, stretch: &Stretch<'_>, from: State, to: State, nodes: &[Node]);
    /// The rider stands so long, s.
    fn stand(&mut self, time_s: f64);
}

/// Nobody listens: the finish time alone is wanted.
struct Untracked;

impl Track for Untracked {
    #[inline]
    fn step(&mut self, _: &Stretch<'_>, _: State, _: State, _: &[Node]) {}
    #[inline]
    fn stand(&mut self, _: f64) {}
}

/// The rider on one stretch of road.
struct Rider<'a> {
    position: &'a Position,
    stretch: Stretch<'a>,
    mass_kg: f64,
    per_mass: f64,
    road_power_w: f64,
    launch_n: f64,
    steps_per_relaxation: f64,
}

/// The slope of the state by distance at one point, with the forces behind it.
#[derive(Clone, Copy, Default)]
struct Slope {
    du: f64,
    dt: f64,
    node: Node,
}

impl Rider<'_> {
    fn stall(&self, state: &State) -> Stall {
        let needed_n = self
            .stretch
            .total_n(0.0, self.position.cda_at_m2(state.time_s));
        Stall {
            distance_m: state.distance_m,
            push_n: (needed_n >= self.launch_n).then_some(needed_n),
        }
    }

    /// How far drag area stays what it is at a state, at a speed that stays, m: infinite without fade, `None` while it fades.
    #[inline]
    fn unchanged_for_m(&self, state: &State, speed_m_s: f64) -> Option<f64> {
        self.position
            .unchanged_until_s(state.time_s)
            .map(|until_s| (until_s - state.time_s) * speed_m_s)
    }

    #[inline]
    fn propulsion_n(&self, speed_m_s: f64) -> f64 {
        (self.road_power_w / speed_m_s).min(self.launch_n)
    }

    #[inline(always)]
    fn slope(&self, u: f64, time_s: f64) -> Slope {
        let speed_m_s = (2.0 * u).sqrt();
        let dt = 1.0 / speed_m_s;
        let cda_m2 = self.position.cda_at_m2(time_s);
        let air_n = self.stretch.air_n(speed_m_s, cda_m2);
        let free_n = self.road_power_w * dt;
        let propulsion_n = if free_n < self.launch_n {
            free_n
        } else {
            self.launch_n
        };
        let other_n = self.stretch.total_without_air_n(speed_m_s);
        let du = (propulsion_n - other_n - air_n) * self.per_mass;
        Slope {
            du,
            dt,
            node: Node {
                length_m: 0.0,
                speed_m_s,
                propulsion_n,
                air_n,
            },
        }
    }

    /// `−d(du/dx)/du` at a state, 1/m: the inverse of the length in which a difference in speed dies away. The slope of
    /// the air force is taken as that along the apparent wind, `2 F/(v + h)`, at most; close enough to choose steps by.
    #[inline(always)]
    fn relaxation_per_m(&self, at: &Slope) -> f64 {
        let Node {
            speed_m_s, air_n, ..
        } = at.node;
        let air_slope = 2.0 * air_n.abs() / self.stretch.air_along_m_s(speed_m_s).abs().max(0.1);
        (self.road_power_w * at.dt * at.dt + air_slope) * self.per_mass * at.dt
    }

    /// The slope a length further along a slope from a state. `None` if that leaves the positive speeds.
    #[inline(always)]
    fn stage(&self, from: State, slope: &Slope, length_m: f64) -> Option<Slope> {
        let u = from.u + length_m * slope.du;
        if u > 0.0 {
            Some(self.slope(u, from.time_s + length_m * slope.dt))
        } else {
            None
        }
    }

    /// A step of the classical fourth-order Runge–Kutta method. `None` if a stage leaves the positive speeds.
    #[inline(always)]
    fn runge_kutta(&self, from: State, first: &Slope, h: f64) -> Option<(State, [Node; 4])> {
        let half = 0.5 * h;
        let second = self.stage(from, first, half)?;
        let third = self.stage(from, &second, half)?;
        let fourth = self.stage(from, &third, h)?;
        let sixth = h / 6.0;
        let u = from.u + sixth * (first.du + 2.0 * (second.du + third.du) + fourth.du);
        let time_s = from.time_s + sixth * (first.dt + 2.0 * (second.dt + third.dt) + fourth.dt);
        let weighed = |slope: &Slope, length_m: f64| Node {
            length_m,
            ..slope.node
        };
        let nodes = [
            weighed(first, sixth),
            weighed(&second, 2.0 * sixth),
            weighed(&third, 2.0 * sixth),
            weighed(&fourth, sixth),
        ];
        (u > 0.0).then_some((
            State {
                distance_m: from.distance_m + h,
                u,
                time_s,
            },
            nodes,
        ))
    }

    /// From one speed to a higher one at the launch force, with speed as the independent variable: there is no
    /// singularity at rest. Five-point Gauss quadrature, exact to rounding over the short launch.
    fn launched(&self, from: State, to_m_s: f64) -> Option<(State, [Node; 5])> {
        let cda_m2 = self.position.cda_at_m2(from.time_s);
        let mut nodes = [Node::default(); 5];
        let (mut length_m, mut time_s) = (0.0, 0.0);
        for (node, (speed_m_s, weight)) in
            nodes.iter_mut().zip(gauss_points(from.speed_m_s(), to_m_s))
        {
            let air_n = self.stretch.air_n(speed_m_s, cda_m2);
            let net_n = self.launch_n - air_n - self.stretch.total_without_air_n(speed_m_s);
            if net_n <= 0.0 {
                return None;
            }
            let dt = weight * self.mass_kg / net_n;
            *node = Node {
                length_m: dt * speed_m_s,
                speed_m_s,
                propulsion_n: self.launch_n,
                air_n,
            };
            length_m += dt * speed_m_s;
            time_s += dt;
        }
        let distance_m = from.distance_m + length_m;
        Some((
            State {
                distance_m,
                u: 0.5 * to_m_s * to_m_s,
                time_s: from.time_s + time_s,
            },
            nodes,
        ))
    }
}

/// Follows a ride at constant power to the line; the state there, and how long the rider stood on the way, s.
fn follow(setup: &Setup, power_w: f64, track: &mut impl Track) -> Result<(State, f64), Stall> {
    let road_power_w = power_w * setup.machine.drivetrain_efficiency;
    let mut state = State {
        distance_m: 0.0,
        u: start_u(setup, road_power_w),
        time_s: 0.0,
    };
    let mut way = Way {
        setup,
        road_power_w,
        stood_s: 0.0,
    };
    let legs = setup.between_stops();
    for leg in 0.. {
        let (segments, standing_s) = setup.leg(&legs, leg);
        let exit_u = if standing_s.is_some() {
            AT_REST
        } else {
            AT_ANY_SPEED
        };
        way.ride(segments, exit_u, &mut state, track)?;
        let Some(standing_s) = standing_s else {
            break;
        };
        state.u = 0.0;
        way.stood_s += standing_s;
        track.stand(standing_s);
    }
    Ok((state, way.stood_s))
}

/// What stays the same along a ride from one stop to the next.
struct Way<'a> {
    setup: &'a Setup,
    road_power_w: f64,
    /// Stood so far, s.
    stood_s: f64,
}

impl Way<'_> {
    /// Rides some stretches to their end, where kinetic energy per effective mass is at most `exit_u`, m²/s².
    fn ride(
        &self,
        segments: &[Segment],
        exit_u: f64,
        state: &mut State,
        track: &mut impl Track,
    ) -> Result<(), Stall> {
        let (setup, machine) = (self.setup, &self.setup.machine);
        let smooth = setup.position.shape.yaw_table.is_empty();
        let steps_per_relaxation = if smooth {
            STEPS_PER_RELAXATION
        } else {
            STEPS_OVER_KINKS * STEPS_PER_RELAXATION
        };
        let limits = limits(machine, segments, state.distance_m, exit_u);
        let mut end_m = state.distance_m;
        for (i, segment) in segments.iter().enumerate() {
            end_m += segment.length_m;
            let clock_s = state.time_s + self.stood_s;
            let rider = Rider {
                position: &setup.position,
                stretch: setup.stretch_from(segment, clock_s, state.speed_m_s()),
                mass_kg: machine.effective_mass_kg(),
                per_mass: 1.0 / machine.effective_mass_kg(),
                road_power_w: self.road_power_w,
                launch_n: machine.launch_force_n,
                steps_per_relaxation,
            };
            let limit = limits.get(i);
            if let Some(limit) = limit {
                state.u = state.u.min(limit.at(state.distance_m));
            }
            ride_stretch(&rider, state, end_m, limit, track)?;
            state.distance_m = end_m;
        }
        Ok(())
    }
}

fn start_u(setup: &Setup, road_power_w: f64) -> f64 {
    let speed_m_s = match setup.start {
        Start::Standing => 0.0,
        Start::Speed(speed_m_s) => speed_m_s,
        Start::Rolling => setup.first_stretch().map_or(0.0, |stretch| {
            stretch.speed_m_s(road_power_w, setup.position.cda_at_m2(0.0))
        }),
    };
    0.5 * speed_m_s * speed_m_s
}

fn ride_stretch(
    rider: &Rider<'_>,
    state: &mut State,
    end_m: f64,
    limit: Option<&Limit>,
    track: &mut impl Track,
) -> Result<(), Stall> {
    launch(rider, state, end_m, track)?;
    let longest_m = (end_m - state.distance_m) / MOST_STEPS_A_STRETCH;
    while state.distance_m < end_m {
        let left_m = end_m - state.distance_m;
        let first = rider.slope(state.u, state.time_s);
        let speed_m_s = first.node.speed_m_s;
        if let Some(limit) = limit
            && state.u >= limit.at(state.distance_m) * (1.0 - CAP_SLACK)
            && follow_limit(rider, state, &first, limit, end_m, track)
        {
            continue;
        }
        if speed_m_s < STALL_M_S && first.du <= 0.0 {
            return Err(rider.stall(state));
        }
        let relaxation = rider.relaxation_per_m(&first);
        let transient = (first.du / relaxation).abs() / state.u;
        let unchanged_m = rider.unchanged_for_m(state, speed_m_s);
        if transient < SETTLED
            && let Some(unchanged_m) = unchanged_m
        {
            let h = left_m.min(unchanged_m);
            let h = limit.map_or(h, |limit| h.min(settled_until_m(state, limit)));
            if h > 0.0 {
                settle(
                    rider,
                    state,
                    state.u + first.du / relaxation,
                    h,
                    left_m,
                    track,
                );
                continue;
            }
        }
        let finest = rider.steps_per_relaxation;
        let steps = STEPS_FOLLOWING + (finest - STEPS_FOLLOWING) * (transient / FOLLOWING).min(1.0);
        let mut h = 1.0 / (steps * relaxation + finest * first.du.abs() / state.u);
        if h < longest_m && transient < FOLLOWING && unchanged_m.is_none() {
            let cda_m2 = rider.position.cda_at_m2(state.time_s);
            let steady = rider.stretch.speed_m_s(rider.road_power_w, cda_m2);
            if steady < STALL_M_S {
                return Err(rider.stall(state));
            }
            settle(
                rider,
                state,
                0.5 * steady * steady,
                longest_m.min(left_m),
                left_m,
                track,
            );
            continue;
        }
        // A sliver left over would cost a whole step.
        if left_m < h * 1.1 {
            h = left_m;
        } else {
            // A branch foretold is quicker than a selection, which waits for the divisions that `h` takes.
            std::hint::cold_path();
        }
        let (next, nodes) = loop {
            match rider.runge_kutta(*state, &first, h) {
                Some(step) => break step,
                // A step that is no number ends here too.
                None if h.is_nan() || h < 1e-9 => return Err(rider.stall(state)),
                None => h *= 0.5,
            }
        };
        let (next, nodes) = match limit {
            Some(limit) if next.u > limit.at(next.distance_m) => {
                up_to_limit(rider, *state, &first, h, limit)
            }
            _ => (next, nodes),
        };
        track.step(&rider.stretch, *state, next, &nodes);
        *state = if h == left_m && next.distance_m > end_m - 1e-6 {
            State {
                distance_m: end_m,
                ..next
            }
        } else {
            next
        };
        if !state.u.is_finite() {
            return Err(rider.stall(state));
        }
    }
    Ok(())
}

/// From a standstill, or from slower than the launch force is the limit, up to where power is.
fn launch(
    rider: &Rider<'_>,
    state: &mut State,
    end_m: f64,
    track: &mut impl Track,
) -> Result<(), Stall> {
    let power_limited_m_s = rider.road_power_w / rider.launch_n;
    let speed_m_s = state.speed_m_s();
    if speed_m_s >= power_limited_m_s {
        return if state.u > 0.0 {
            Ok(())
        } else {
            Err(rider.stall(state))
        };
    }
    let stall = rider.stall(state);
    let (mut next, mut nodes) = rider.launched(*state, power_limited_m_s).ok_or(stall)?;
    if next.distance_m > end_m {
        let overshoot_m = |to_m_s: f64| {
            rider
                .launched(*state, to_m_s)
                .map_or(f64::NAN, |(s, _)| s.distance_m - end_m)
        };
        let to_m_s = root(overshoot_m, speed_m_s, power_limited_m_s, 1e-14).map_err(|_| stall)?;
        (next, nodes) = rider.launched(*state, to_m_s).ok_or(stall)?;
        next.distance_m = end_m;
    }
    track.step(&rider.stretch, *state, next, &nodes);
    *state = next;
    Ok(())
}

/// One step at a steady speed.
fn settle(
    rider: &Rider<'_>,
    state: &mut State,
    u: f64,
    h: f64,
    left_m: f64,
    track: &mut impl Track,
) {
    let slope = rider.slope(u, state.time_s);
    let time_s = state.time_s + h * slope.dt;
    let distance_m = if h == left_m {
        state.distance_m + left_m
    } else {
        state.distance_m + h
    };
    let next = State {
        distance_m,
        u,
        time_s,
    };
    track.step(
        &rider.stretch,
        *state,
        next,
        &[Node {
            length_m: h,
            ..slope.node
        }],
    );
    *state = next;
}
