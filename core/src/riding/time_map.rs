//! Finish times over power and drag area: ridden at 6 × 6 Chebyshev points and read off the polynomial through them.

use super::integrated::{Setup, time_s};
use crate::numerics::solve::{chebyshev_points, lagrange_weights, spaced};

/// The map is ridden at this many Chebyshev points each way and read off the polynomial through them. In logarithms finish
/// time is nearly a plane, so it is met within a hundredth of a second over the usual spans and within a second over
/// any.
const MAP_NODES: usize = 6;
/// Over the usual spans a straight line across a cell is a tenth of a pixel off the curve at most.
const MAP_POINTS: (usize, usize) = (21, 19);

/// Finish times, a row of powers for each drag area.
pub(crate) struct TimeMap {
    pub(crate) powers_w: Vec<f64>,
    pub(crate) areas_m2: Vec<f64>,
    /// Not a number where the rider does not reach the finish.
    pub(crate) times_s: Vec<f64>,
}

/// Finish times of a setup between two powers and two drag areas, its lost drag areas in proportion.
pub(crate) fn time_map(
    setup: &Setup,
    [low_w, high_w]: [f64; 2],
    [low_m2, high_m2]: [f64; 2],
) -> TimeMap {
    let power_nodes = chebyshev_points::<MAP_NODES>(low_w.ln(), high_w.ln());
    let cda_nodes = chebyshev_points::<MAP_NODES>(low_m2.ln(), high_m2.ln());
    let ridden = cda_nodes.map(|node| {
        let moved = setup.in_position(
            setup
                .position
                .clone()
                .times(node.exp() / setup.position.cda_m2),
        );
        power_nodes.map(|node| time_s(&moved, node.exp()).map_or(f64::NAN, f64::ln))
    });
    let powers = spaced(low_w, high_w, MAP_POINTS.0);
    let areas = spaced(low_m2, high_m2, MAP_POINTS.1);
    let logarithms = |values: &[f64]| values.iter().map(|value| value.ln()).collect::<Vec<f64>>();
    let power_weights = lagrange_weights(&power_nodes, &logarithms(&powers));
    let mut times = Vec::with_capacity(MAP_POINTS.0 * MAP_POINTS.1);
    for cda_weights in lagrange_weights(&cda_nodes, &logarithms(&areas)) {
        let row: [f64; MAP_NODES] = std::array::from_fn(|p| {
            ridden
                .iter()
                .zip(cda_weights)
                .map(|(times, weight)| weight * times[p])
                .sum()
        });
        times.extend(power_weights.iter().map(|weights| {
            weights
                .iter()
                .zip(row)
                .map(|(w, t)| w * t)
                .sum::<f64>()
                .exp()
        }));
    }
    TimeMap {
        powers_w: powers,
        areas_m2: areas,
        times_s: times,
    }
}
