//! Bends and stops: the limits they set from the finish backwards, and the ride along a limit.

use super::{Node, Rider, Slope, State, Track};
use crate::numerics::solve::{gauss_points, within};
use crate::physics::course::Segment;
use crate::physics::resistance::Machine;

/// The most kinetic energy that the bends allow on one stretch: `cap` all along, `exit` at its end, and no more before
/// the end than braking can shed.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Limit {
    cap: f64,
    exit: f64,
    end_m: f64,
    braking_m_s2: f64,
}

impl Limit {
    fn braking_line(&self, distance_m: f64) -> f64 {
        self.exit + self.braking_m_s2 * (self.end_m - distance_m).max(0.0)
    }

    pub(in crate::riding) fn at(&self, distance_m: f64) -> f64 {
        self.cap.min(self.braking_line(distance_m))
    }

    /// The distance before the end of the stretch within which a rider at this speed would have to brake, m.
    #[cfg(feature = "all")]
    pub(in crate::riding) fn braked_m(&self, speed_m_s: f64) -> f64 {
        let fastest = (0.5 * speed_m_s * speed_m_s).min(self.cap);
        (fastest - self.exit).max(0.0) / self.braking_m_s2
    }

    pub(in crate::riding) fn brakes(&self, distance_m: f64) -> bool {
        self.braking_line(distance_m) <= self.cap
    }
}

/// The most kinetic energy at the end of the last stretch: at the line there is no limit, at a stop nothing is left, m²/s².
pub(in crate::riding) const AT_ANY_SPEED: f64 = f64::INFINITY;
pub(super) const AT_REST: f64 = 0.0;

/// The limits of some stretches that begin at a distance, m, from their end backwards, where kinetic energy per effective mass is at
/// most `exit_u`, m²/s². None where nothing limits them.
pub(in crate::riding) fn limits(
    machine: &Machine,
    segments: &[Segment],
    from_m: f64,
    exit_u: f64,
) -> Vec<Limit> {
    let bends = segments.iter().any(|segment| segment.radius_m.is_some());
    if !bends && exit_u == AT_ANY_SPEED {
        return Vec::new();
    }
    let mut end_m = from_m + segments.iter().map(|segment| segment.length_m).sum::<f64>();
    let mut entry = exit_u;
    let mut limits: Vec<Limit> = segments
        .iter()
        .rev()
        .map(|segment| {
            let cap = segment.radius_m.map_or(f64::INFINITY, |radius_m| {
                0.5 * machine.lateral_m_s2 * radius_m
            });
            let limit = Limit {
                cap,
                exit: entry.min(cap),
                end_m,
                braking_m_s2: machine.braking_m_s2,
            };
            end_m -= segment.length_m;
            entry = limit.at(end_m);
            limit
        })
        .collect();
    limits.reverse();
    limits
}

/// How far a steady speed may be kept before the braking line, m.
pub(super) fn settled_until_m(state: &State, limit: &Limit) -> f64 {
    let meets_at_m = limit.end_m - (state.u - limit.exit).max(0.0) / limit.braking_m_s2;
    if state.u > limit.cap {
        0.0
    } else {
        meets_at_m - state.distance_m
    }
}

/// The part of a step before the rider meets a limit, by bisection to a tenth of a millimetre.
pub(super) fn up_to_limit(
    rider: &Rider<'_>,
    from: State,
    first: &Slope,
    h: f64,
    limit: &Limit,
) -> (State, [Node; 4]) {
    let (mut low, mut high) = (0.0, h);
    let mut best = (from, [Node::default(); 4]);
    while high - low > 1e-4 {
        let middle = 0.5 * (low + high);
        match rider.runge_kutta(from, first, middle) {
            Some((next, nodes)) if next.u <= limit.at(next.distance_m) => {
                best = (next, nodes);
                low = middle;
            }
            _ => high = middle,
        }
    }
    let (mut state, nodes) = best;
    state.u = limit.at(state.distance_m);
    (state, nodes)
}

/// Along a bend's limit: holds the bend's speed with as little power as that takes, or brakes for the next. False where
/// the rider would be slower than the limit anyway.
pub(super) fn follow_limit(
    rider: &Rider<'_>,
    state: &mut State,
    first: &Slope,
    limit: &Limit,
    end_m: f64,
    track: &mut impl Track,
) -> bool {
    /// The longest step while drag area changes: each goes by the mean drag area over its time.
    const LONGEST_M: f64 = 200.0;
    let left_m = end_m - state.distance_m;
    let mass_kg = rider.mass_kg;
    let u = limit.at(state.distance_m);
    let braking = limit.brakes(state.distance_m);
    let slope = if braking { -limit.braking_m_s2 } else { 0.0 };
    if first.du < slope {
        return false;
    }
    let until_braking_m = left_m - (limit.cap - limit.exit).max(0.0) / limit.braking_m_s2;
    let h = if braking {
        left_m
    } else {
        until_braking_m.min(left_m)
    };
    let unchanged_m = rider.unchanged_for_m(state, first.node.speed_m_s);
    let h = h.min(unchanged_m.unwrap_or(LONGEST_M));
    let h = if h > 1e-6 { h } else { left_m.min(1e-6) };
    // At a stop rounding may leave less than nothing.
    let after = (u + slope * h).max(0.0);
    let (v0, v1) = ((2.0 * u).sqrt(), (2.0 * after).sqrt());
    let time_s = state.time_s + 2.0 * h / (v0 + v1);
    let cda_m2 = rider.position.mean_cda_between_m2(state.time_s, time_s);
    let nodes = gauss_points(0.0, h).map(|(x, length_m)| {
        let speed_m_s = (2.0 * (u + slope * x)).sqrt();
        let air_n = rider.stretch.air_n(speed_m_s, cda_m2);
        let needed_n = air_n + rider.stretch.total_without_air_n(speed_m_s) + slope * mass_kg;
        Node {
            length_m,
            speed_m_s,
            propulsion_n: within(needed_n, 0.0, rider.propulsion_n(speed_m_s)),
            air_n,
        }
    });
    let next = State {
        distance_m: if h == left_m {
            end_m
        } else {
            state.distance_m + h
        },
        u: after,
        time_s,
    };
    track.step(&rider.stretch, *state, next, &nodes);
    *state = next;
    true
}
