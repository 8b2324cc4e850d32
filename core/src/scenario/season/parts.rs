//! Candidates that move the same numbers, as parts of the search over all sets of them.

use super::changes::{Coordinate, Move};
use super::plan::Plan;
use crate::numerics::subsets::{Axis, Part};

/// The candidates by what they move together.
pub(crate) struct Parts {
    /// The parts, as [`crate::numerics::subsets`] takes them.
    pub(crate) parts: Vec<Part>,
    pub(super) coordinates: Vec<Vec<Coordinate>>,
    /// Which candidate each bit of a set stands for.
    pub(crate) order: Vec<usize>,
}

impl Parts {
    /// Candidates that move the same things make a part.
    pub(crate) fn new(plan: &Plan) -> Self {
        let own: Vec<Vec<Coordinate>> = plan
            .moves
            .iter()
            .map(|moves| moves.iter().map(Move::coordinate).collect())
            .collect();
        let mut label: Vec<usize> = (0..own.len()).collect();
        // Labels fall until those that share anything share the lowest.
        for _ in 0..own.len() {
            for a in 0..own.len() {
                for b in 0..own.len() {
                    if own[a].iter().any(|coordinate| own[b].contains(coordinate)) {
                        label[a] = label[a].min(label[b]);
                    }
                }
            }
        }
        let mut built: Vec<(Part, Vec<Coordinate>, Vec<usize>)> = (0..own.len())
            .map(|first| {
                (0..own.len())
                    .filter(|&c| label[c] == first)
                    .collect::<Vec<usize>>()
            })
            .filter(|members| !members.is_empty())
            .map(|members| {
                let mut coordinates: Vec<Coordinate> = Vec::new();
                for coordinate in members.iter().flat_map(|&c| &own[c]) {
                    if !coordinates.contains(coordinate) {
                        coordinates.push(*coordinate);
                    }
                }
                let axes = coordinates
                    .iter()
                    .map(|coordinate| axis(plan, *coordinate, &members))
                    .collect();
                (Part::new(members.len(), axes), coordinates, members)
            })
            .collect();
        // The last to be worked out costs the most for each of its points.
        built.sort_by_key(|(part, ..)| std::cmp::Reverse(part.points()));
        let mut parts = Self {
            parts: Vec::new(),
            coordinates: Vec::new(),
            order: Vec::new(),
        };
        for (part, coordinates, members) in built {
            parts.parts.push(part);
            parts.coordinates.push(coordinates);
            parts.order.extend(members);
        }
        parts
    }
}

/// What each set of a part's candidates makes of one coordinate.
fn axis(plan: &Plan, coordinate: Coordinate, members: &[usize]) -> Axis {
    let (start, smooth) = match coordinate {
        Coordinate::Added(target) => (plan.targets[target].value, plan.targets[target].smooth),
        Coordinate::Times(target) => (1.0, plan.targets[target].smooth),
        Coordinate::Position => (plan.riding_position as f64, false),
    };
    let mut values = vec![start];
    for &member in members {
        for at in 0..values.len() {
            let own = plan.moves[member]
                .iter()
                .filter(|one| one.coordinate() == coordinate);
            values.push(own.fold(values[at], |value, one| match *one {
                Move::Add(_, by) => value + by.value,
                Move::Scale(_, share) => value * (1.0 + share.value),
                Move::Ride(position) => position as f64,
            }));
        }
    }
    if smooth {
        Axis::smooth(values)
    } else {
        Axis::every(values)
    }
}
